package dev.filial.core.answer;

import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * How long things take here: as stated in the register; else as its own dates show, once there are
 * {@value #ENOUGH} of them; else as is common practice. What is known of a species goes before what
 * is known of its genus, and that before what is known of all; of one taxon what was stated goes
 * before what was learned.
 */
public final class Intervals {

  /** How many cases of its own a register learns a length from. Common practice, no source. */
  public static final int ENOUGH = 5;

  private static final String ALL = "";

  private final RegisterView view;
  private final LearnedIntervals learned;
  private final Map<Interval, Map<String, Integer>> stated = new EnumMap<>(Interval.class);

  private Intervals(RegisterView view) {
    this.view = view;
    this.learned = new LearnedIntervals(view);
  }

  /** Reads what {@code view} holds. */
  public static Intervals in(RegisterView view) {
    return new Intervals(view);
  }

  /**
   * How long it takes for a taxon: by the name it is read as, its species, its genus and what it
   * was said to count into; null for what no taxon is known of.
   */
  public IntervalDays days(Interval interval, @Nullable TaxonName taxon) {
    return daysOf(interval, () -> Optional.ofNullable(taxon));
  }

  /** The same; the taxon is asked for only where something is known of one at all. */
  IntervalDays daysOf(Interval interval, Supplier<Optional<TaxonName>> taxon) {
    Set<String> statedOf = stated.computeIfAbsent(interval, this::read).keySet();
    boolean ofTaxa =
        statedOf.size() > (statedOf.contains(ALL) ? 1 : 0) || learned.isOfTaxa(interval, ENOUGH);
    List<String> names = new ArrayList<>();
    if (ofTaxa) {
      taxon
          .get()
          .ifPresent(name -> names.addAll(TaxonProfile.upwards(view, name.unqualified().text())));
    }
    names.add(ALL);
    for (String name : names) {
      Optional<IntervalDays> known =
          stated(interval, name).or(() -> learned.days(interval, name, ENOUGH));
      if (known.isPresent()) {
        return known.get();
      }
    }
    return new IntervalDays(interval.usualDays(), IntervalDays.Whence.COMMON_PRACTICE, null, 0);
  }

  private Optional<IntervalDays> stated(Interval interval, String name) {
    Integer days =
        stated.computeIfAbsent(interval, this::read).get(name.equals(ALL) ? ALL : key(name));
    return Optional.ofNullable(days)
        .map(
            found ->
                new IntervalDays(
                    found, IntervalDays.Whence.STATED, name.equals(ALL) ? null : name, 0));
  }

  /** What was stated last of each taxon, under the name it is read as now. */
  private Map<String, Integer> read(Interval interval) {
    Map<String, Integer> days = new HashMap<>();
    for (long entry : view.entriesOn(Subject.of(interval))) {
      if (view.effective(entry).orElse(null) instanceof IntervalStated said) {
        days.put(said.taxon() == null ? ALL : key(accepted(said.taxon())), said.days());
      }
    }
    return days;
  }

  private String accepted(String name) {
    Taxon taxon = view.accepted(name);
    return taxon.name();
  }

  private static String key(String name) {
    return Subject.taxon(name).key();
  }
}
