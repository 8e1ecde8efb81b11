package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Interval;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Promises;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedKept;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The seed tin: what is left of each seed lot, how sure that is, how old, promised to whom. */
public final class TinQuestion {

  /** How it is known how many seeds are left. */
  public enum Sureness {
    /** Somebody counted. */
    COUNTED,
    /** Worked out from a weight. */
    WEIGHED,
    /** Somebody guessed, or a guess was taken from a count. */
    GUESSED,
    /** There is no number. */
    NOT_KNOWN
  }

  private final RegisterView view;
  private final LocalDate day;

  private TinQuestion(RegisterView view, LocalDate day) {
    this.view = view;
    this.day = day;
  }

  /** Asks {@code view}, the age of seed being that on {@code day}. */
  public static TinQuestion of(RegisterView view, LocalDate day) {
    return new TinQuestion(view, day);
  }

  /**
   * What is promised of a lot.
   *
   * @param to to whom
   * @param count how many; the unknown count for all of it
   */
  public record Promise(String to, Count count) {}

  /**
   * A seed lot of which something is left.
   *
   * @param lot its code
   * @param what its taxon or parents
   * @param left how many seeds are left
   * @param sureness how that is known
   * @param since the day it was harvested, of a mixed packet that of its oldest part; of seed that
   *     came, the day it came; null when not known
   * @param harvested whether that is the day of the harvest
   * @param age how many days old it is at least; null when not known
   * @param keeps how long that usually is, and where that is known from
   * @param old whether it is older than that
   * @param place where it is kept, or null
   * @param keeping how it is kept, or null
   * @param promises what is promised of it and not given yet
   * @param free how many are left beyond what is promised, never more than are left
   */
  public record Line(
      Code lot,
      String what,
      Count left,
      Sureness sureness,
      @Nullable PartialDate since,
      boolean harvested,
      @Nullable Long age,
      IntervalDays keeps,
      boolean old,
      @Nullable String place,
      @Nullable String keeping,
      List<Promise> promises,
      Count free) {}

  /** All lots in which seed is left, in order of entry. One pass over all lots. */
  public List<Line> ask() {
    Intervals intervals = Intervals.in(view);
    TaxaBehind taxa = TaxaBehind.in(view);
    List<Line> lines = new ArrayList<>();
    for (Item item : view.items(EnumSet.of(Item.Kind.LOT))) {
      if (item.sameAs() == null && Holdings.isHere(item)) {
        IntervalDays keeps =
            intervals.daysOf(Interval.SEED_AGEING, () -> taxa.of(item.code()).one());
        lines.add(line(item, keeps));
      }
    }
    return List.copyOf(lines);
  }

  private Line line(Item item, IntervalDays keeps) {
    Count left = item.count() == null ? Count.unknown() : item.count();
    Written written = written(item.code());
    Optional<SeedBegun> begun = SeedBegun.of(view, item.code());
    PartialDate since = begun.map(SeedBegun::first).orElse(null);
    Long age =
        since == null
            ? null
            : Long.valueOf(Math.max(0, ChronoUnit.DAYS.between(since.latest(), day)));
    List<Promise> promises =
        Promises.of(view, item.code()).stream()
            .map(open -> new Promise(open.to(), open.count()))
            .toList();
    return new Line(
        item.code(),
        Describing.of(view, item),
        left,
        sureness(left, written.weighed()),
        since,
        begun.isPresent() && !begun.get().came(),
        age,
        keeps,
        age != null && age > keeps.days(),
        item.place(),
        written.keeping(),
        promises,
        free(left, promises));
  }

  private static Sureness sureness(Count left, boolean weighed) {
    if (left.isExact()) {
      return Sureness.COUNTED;
    }
    if (left.size().isEmpty()) {
      return Sureness.NOT_KNOWN;
    }
    return weighed ? Sureness.WEIGHED : Sureness.GUESSED;
  }

  /** What is promised without a number is all of it. */
  private static Count free(Count left, List<Promise> promises) {
    Count free = left;
    for (Promise promise : promises) {
      if (promise.count().equals(Count.unknown())) {
        return Count.of(0);
      }
      free = free.less(promise.count());
    }
    return free;
  }

  /**
   * @param weighed whether the number there is was last worked out from a weight
   * @param keeping how it is kept, as said last, or null
   */
  private record Written(boolean weighed, @Nullable String keeping) {}

  private Written written(Code lot) {
    boolean weighed = false;
    String keeping = null;
    for (Statement statement : inOrder(lot)) {
      if (statement instanceof Harvested harvest && harvest.lot().equals(lot)) {
        weighed = harvest.count().size().isEmpty() && harvest.seeds().size().isPresent();
      } else if (statement instanceof SeedKept kept) {
        weighed = kept.seeds() == null ? weighed : kept.left() == null;
        keeping = kept.keeping() == null ? keeping : kept.keeping();
      }
    }
    return new Written(weighed, keeping);
  }

  /** What was written of a lot, in order of its days; what has no day after all that has one. */
  private List<Statement> inOrder(Code lot) {
    List<Statement> statements = new ArrayList<>();
    for (long entry : view.entriesOn(Subject.of(lot))) {
      view.effective(entry).ifPresent(statements::add);
    }
    statements.sort(
        Comparator.comparing(
            (Statement statement) ->
                statement.date() == null ? LocalDate.MAX : statement.date().latest()));
    return statements;
  }
}
