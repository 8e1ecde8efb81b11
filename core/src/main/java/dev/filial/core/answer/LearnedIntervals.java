package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Lengths as the register's own dates show them; only days known to the day count.
 *
 * <ul>
 *   <li>coming up: from sowing to the first count that found something, of nine sowings in ten;
 *       those of which nothing came up are not among them;
 *   <li>ripening: from pollination to the first harvest of each cross, the median;
 *   <li>flowering: from the first open flower to the last, the median.
 * </ul>
 *
 * The others are choices of the grower's, and are not learned. That nine in ten are waited for is
 * common practice, no source.
 */
final class LearnedIntervals {

  private static final double NINE_IN_TEN = 0.9;

  private final RegisterView view;
  private final TaxaBehind taxa;
  private final Map<Interval, Map<String, List<Long>>> cases = new EnumMap<>(Interval.class);

  LearnedIntervals(RegisterView view) {
    this.view = view;
    this.taxa = TaxaBehind.in(view);
  }

  /** The length for a taxon, or for all if the name is empty; empty if too few cases are known. */
  Optional<IntervalDays> days(Interval interval, String taxon, int enough) {
    List<Long> days = cases.computeIfAbsent(interval, this::learn).getOrDefault(taxon, List.of());
    if (days.size() < enough) {
      return Optional.empty();
    }
    List<Long> sorted = new ArrayList<>(days);
    Collections.sort(sorted);
    long length =
        interval == Interval.COMING_UP
            ? sorted.get((int) Math.ceil(NINE_IN_TEN * sorted.size()) - 1)
            : median(sorted);
    return Optional.of(
        new IntervalDays(
            (int) Math.max(1, Math.min(length, Integer.MAX_VALUE)),
            IntervalDays.Whence.LEARNED,
            taxon.isEmpty() ? null : taxon,
            days.size()));
  }

  /** The middle one; of an even number the mean of the two in the middle, rounded up. */
  private static long median(List<Long> sorted) {
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half) + 1) / 2;
  }

  /** Whether enough is known of any taxon, beside all. */
  boolean isOfTaxa(Interval interval, int enough) {
    return cases.computeIfAbsent(interval, this::learn).entrySet().stream()
        .anyMatch(one -> !one.getKey().isEmpty() && one.getValue().size() >= enough);
  }

  private Map<String, List<Long>> learn(Interval interval) {
    Map<String, List<Long>> found = new HashMap<>();
    switch (interval) {
      case COMING_UP -> comingUp(found);
      case RIPENING -> ripening(found);
      case FLOWERING -> flowering(found);
      case COUNTING, LOOKING_INTO, OPENING, SEED_AGEING, POLLEN_AGEING, TAG_FADING -> {}
    }
    return found;
  }

  private void add(
      Map<String, List<Long>> found, Code code, @Nullable LocalDate from, @Nullable LocalDate to) {
    if (from == null || to == null || to.isBefore(from)) {
      return;
    }
    long days = ChronoUnit.DAYS.between(from, to);
    found.computeIfAbsent("", any -> new ArrayList<>()).add(days);
    TaxonName common = taxa.of(code).common();
    if (common != null) {
      for (String name : TaxonProfile.upwards(view, common.text())) {
        found.computeIfAbsent(name, any -> new ArrayList<>()).add(days);
      }
    }
  }

  private void comingUp(Map<String, List<Long>> found) {
    for (Item item : view.items(Set.of(Item.Kind.SOWING))) {
      if (view.effective(item.entry()).orElse(null) instanceof Sown sown) {
        List<Code> pots = new ArrayList<>(List.of(sown.sowing()));
        sown.groups().forEach(filled -> pots.add(filled.group()));
        add(found, sown.sowing(), day(sown.date()), firstUp(pots));
      }
    }
  }

  private @Nullable LocalDate firstUp(List<Code> pots) {
    LocalDate first = null;
    for (Code pot : pots) {
      for (long entry : view.entriesOn(Subject.of(pot))) {
        Statement statement = view.effective(entry).orElseThrow();
        if (statement instanceof Counted counted && isUp(counted, pot)) {
          LocalDate day = day(counted.date());
          first = day != null && (first == null || day.isBefore(first)) ? day : first;
        }
      }
    }
    return first;
  }

  private static boolean isUp(Counted counted, Code pot) {
    for (Counted.Reading reading : counted.readings()) {
      Count count = reading.germinated() == null ? reading.alive() : reading.germinated();
      if (reading.code().equals(pot) && count != null && count.size().orElse(1) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Each cross is one case, by its first harvest, however many harvests it gave. */
  private void ripening(Map<String, List<Long>> found) {
    Map<Code, LocalDate> first = new LinkedHashMap<>();
    for (Item lot : view.items(Set.of(Item.Kind.LOT))) {
      if (view.effective(lot.entry()).orElse(null) instanceof Harvested harvest) {
        LocalDate day = day(harvest.date());
        if (day != null) {
          first.merge(lot.code().whole(), day, (one, other) -> one.isBefore(other) ? one : other);
        }
      }
    }
    first.forEach(
        (code, day) -> {
          Optional<Item> cross = view.item(code);
          if (cross.isPresent()
              && view.effective(cross.get().entry()).orElse(null)
                  instanceof Pollinated pollinated) {
            add(found, pollinated.seedParent(), day(pollinated.date()), day);
          }
        });
  }

  private void flowering(Map<String, List<Long>> found) {
    for (Item plant : ThingsTold.of(view, Flowered.class)) {
      if (!plant.kind().isPlant()) {
        continue; // in a pot they are several, and one may open when another is over
      }
      // By the day, since a season is often entered at its end; the first open flower counts.
      TreeMap<LocalDate, Bloom> seen = new TreeMap<>();
      for (long entry : view.entriesOn(Subject.of(plant.code()))) {
        if (view.effective(entry).orElse(null) instanceof Flowered flowered) {
          LocalDate day = day(flowered.date());
          if (day != null) {
            seen.put(day, flowered.bloom());
          }
        }
      }
      LocalDate open = null;
      for (Map.Entry<LocalDate, Bloom> one : seen.entrySet()) {
        if (one.getValue() == Bloom.OVER) {
          add(found, plant.code(), open, one.getKey());
          open = null;
        } else if (open == null) {
          open = one.getKey();
        }
      }
    }
  }

  /** Only what is known to the day. */
  private static @Nullable LocalDate day(@Nullable PartialDate date) {
    return date != null && date.earliest().equals(date.latest()) ? date.earliest() : null;
  }
}
