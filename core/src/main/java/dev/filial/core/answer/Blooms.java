package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The flowerings of plants, made up from the single days on which they were seen.
 *
 * <p>A plant seen open again within the days its kind usually flowers is in the same flowering
 * still; later it is another, and the one before is taken to have lasted as long as usual. Seen to
 * be over, it ends the flowering it was last seen in, if that was within half a year. What has no
 * day is left out, and so is a plant seen to be over that nobody saw open.
 */
final class Blooms {

  private static final int HALF_A_YEAR = 183;

  private final RegisterView view;
  private final Intervals intervals;
  private final TaxaBehind taxa;

  private Blooms(RegisterView view, Intervals intervals, TaxaBehind taxa) {
    this.view = view;
    this.intervals = intervals;
    this.taxa = taxa;
  }

  static Blooms in(RegisterView view) {
    return new Blooms(view, Intervals.in(view), TaxaBehind.in(view));
  }

  /**
   * A plant that was seen in flower, or a pot in which one was.
   *
   * @param item it
   * @param usual how long its kind stays in flower
   * @param spans its flowerings, the earliest first
   */
  record Bloomer(Item item, IntervalDays usual, List<BloomSpan> spans) {

    /** Its flowering on that day. */
    Optional<BloomSpan> on(LocalDate day) {
      return spans.stream().filter(span -> span.covers(day)).findFirst();
    }
  }

  /** Everything that was ever seen in flower, in order of entry. */
  List<Bloomer> all() {
    List<Bloomer> all = new ArrayList<>();
    ThingsTold.of(view, Flowered.class).stream()
        .flatMap(item -> view.resolved(item.code()).stream())
        .distinct()
        .sorted(Item.IN_ORDER)
        .forEach(item -> of(item).ifPresent(all::add));
    return all;
  }

  /** One plant; empty if nobody saw it in flower. */
  Optional<Bloomer> of(Item item) {
    List<Flowered> seen = new ArrayList<>();
    gather(item.code(), seen);
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    IntervalDays usual = intervals.daysOf(Interval.FLOWERING, () -> taxa.of(item.code()).one());
    List<BloomSpan> spans = spans(seen, usual.days());
    return spans.isEmpty() ? Optional.empty() : Optional.of(new Bloomer(item, usual, spans));
  }

  private void gather(Code code, List<Flowered> seen) {
    for (long entry : view.entriesOn(Subject.of(code))) {
      Statement statement = view.effective(entry).orElse(null);
      if (statement instanceof Flowered flowered && flowered.date() != null) {
        seen.add(flowered);
      } else if (statement instanceof Joined joined && joined.keep().equals(code)) {
        gather(joined.other(), seen);
      }
    }
  }

  private static LocalDate first(Flowered seen) {
    return Objects.requireNonNull(seen.date()).earliest();
  }

  private static LocalDate last(Flowered seen) {
    return Objects.requireNonNull(seen.date()).latest();
  }

  private static List<BloomSpan> spans(List<Flowered> seen, int usual) {
    List<Flowered> inOrder = new ArrayList<>(seen);
    inOrder.sort(
        Comparator.comparing(Blooms::first)
            .thenComparing(Blooms::last)
            .thenComparing(Flowered::bloom));
    List<BloomSpan> spans = new ArrayList<>();
    for (Flowered flowered : inOrder) {
      BloomSpan now = spans.isEmpty() ? null : spans.get(spans.size() - 1);
      if (flowered.bloom() == Bloom.OPEN) {
        if (now != null && !now.seenOver() && !first(flowered).isAfter(now.last())) {
          spans.set(spans.size() - 1, seenAgain(now, last(flowered), usual));
        } else {
          spans.add(
              new BloomSpan(
                  Objects.requireNonNull(flowered.date()),
                  first(flowered),
                  last(flowered),
                  last(flowered).plusDays(usual),
                  false));
        }
      } else if (now != null
          && !now.seenOver()
          && ChronoUnit.DAYS.between(now.lastSeen(), last(flowered)) <= HALF_A_YEAR) {
        spans.set(spans.size() - 1, over(now, last(flowered)));
      }
    }
    return List.copyOf(spans);
  }

  private static BloomSpan seenAgain(BloomSpan now, LocalDate day, int usual) {
    LocalDate lastSeen = day.isAfter(now.lastSeen()) ? day : now.lastSeen();
    return new BloomSpan(now.since(), now.first(), lastSeen, lastSeen.plusDays(usual), false);
  }

  /** A plant seen open and over on one day was open on that day. */
  private static BloomSpan over(BloomSpan now, LocalDate day) {
    LocalDate before = day.minusDays(1);
    LocalDate last = before.isBefore(now.lastSeen()) ? now.lastSeen() : before;
    return new BloomSpan(now.since(), now.first(), now.lastSeen(), last, true);
  }

  /** Whether it stood here, alive, on that day. */
  static boolean isHere(Item item, LocalDate day) {
    return !item.neverHeld()
        && (item.fate().isHere() || (item.until() != null && item.until().latest().isAfter(day)));
  }
}
