package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.trial.GerminationCurve;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What the counts of one sowing say of what came up: the one reading that percentages, curves and
 * the rates behind seeds to sow have in common.
 *
 * <p>A count says how many had come up by its day, in all. So the largest number that was counted
 * stands, whatever a later one says; and seedlings that stand there, with those that were taken out
 * before, are proof of as many. The last count decides whether it was a count at all: after a guess
 * nobody knows. Of a sowing in several pots the counts of the sowing as a whole are taken, or those
 * of its pots together where all were counted, whichever found more.
 */
final class Emergence {

  /** Seed counted earlier than this after sowing is still coming up. Common practice, no source. */
  static final int DAYS_TO_COME_UP = 14;

  /** Why no share of the seeds can be worked out. */
  enum Doubt {
    /** Nobody counted what came up. */
    NOT_COUNTED,
    /** It was only counted while seed was still coming up. */
    STILL_COMING_UP,
    /** How many were sown is a guess, or worked out from a weight. */
    SEEDS_GUESSED,
    /** The last count of what came up is a guess. */
    SEEDLINGS_GUESSED,
    /** More came up than was sown: two seedlings out of some seeds, or a wrong count. */
    MORE_THAN_SOWN,
    /** No seed was sown. */
    NONE_SOWN,
    /** More seeds than can be reckoned with. */
    TOO_MANY
  }

  private final Sown sown;
  private final @Nullable Doubt doubt;
  private final @Nullable Series series;
  private final OptionalLong alive;

  private Emergence(Sown sown, @Nullable Doubt doubt, @Nullable Series series, OptionalLong alive) {
    this.sown = sown;
    this.doubt = doubt;
    this.series = series;
    this.alive = alive;
  }

  /**
   * How one sowing or pot was counted.
   *
   * @param up how many came up in all
   * @param newly how many came up since the count before, by the day, in days from sowing
   * @param pots the same of each pot that was counted by itself
   * @param dated whether all that came up are in {@code newly}
   * @param fell whether a later count was lower than an earlier one
   */
  private record Series(
      long up,
      SortedMap<Integer, Long> newly,
      List<SortedMap<Integer, Long>> pots,
      boolean dated,
      boolean fell) {

    Series plus(Series other) {
      SortedMap<Integer, Long> both = new TreeMap<>(newly);
      other.newly.forEach((day, number) -> both.merge(day, number, Long::sum));
      List<SortedMap<Integer, Long>> all = new ArrayList<>(pots);
      all.addAll(other.pots);
      return new Series(up + other.up, both, all, dated && other.dated, fell || other.fell);
    }
  }

  /** One entry about a pot. */
  private record About(long day, boolean exact, Statement statement) {}

  /** Reads the counts of a sowing. */
  static Emergence of(RegisterView view, Sown sown) {
    List<Code> pots = new ArrayList<>();
    sown.groups().forEach(filled -> pots.add(filled.group()));
    long ripe =
        sown.date() == null ? Long.MIN_VALUE : sown.date().latest().toEpochDay() + DAYS_TO_COME_UP;
    Reader reader = new Reader(view, sown, ripe);
    Map<Code, List<About>> about = new TreeMap<>();
    about.put(sown.sowing(), reader.about(sown.sowing()));
    pots.forEach(pot -> about.put(pot, reader.about(pot)));
    OptionalLong alive = reader.alive(about, pots);

    Optional<Series> whole = reader.series(sown.sowing(), about);
    Optional<Series> together = pots.isEmpty() ? Optional.empty() : Optional.of(reader.none());
    for (Code pot : pots) {
      Optional<Series> one = reader.series(pot, about);
      together = together.flatMap(sum -> one.map(sum::plus));
    }
    Optional<Series> more =
        whole.isPresent() && together.isPresent() && together.get().up() <= whole.get().up()
            ? whole
            : together.or(() -> whole);
    Doubt doubt = doubt(sown, more, reader, about);
    return new Emergence(sown, doubt, more.orElse(null), alive);
  }

  private static @Nullable Doubt doubt(
      Sown sown, Optional<Series> series, Reader reader, Map<Code, List<About>> about) {
    if (!sown.seeds().isExact()) {
      return Doubt.SEEDS_GUESSED;
    }
    long seeds = sown.seeds().size().orElseThrow();
    if (seeds == 0) {
      return Doubt.NONE_SOWN;
    }
    if (seeds > Integer.MAX_VALUE) {
      return Doubt.TOO_MANY;
    }
    if (series.isEmpty()) {
      return reader.why(about);
    }
    return series.get().up() > seeds ? Doubt.MORE_THAN_SOWN : null;
  }

  /** The sowing. */
  Sown sown() {
    return sown;
  }

  /** Why no share of the seeds can be worked out; null if it can. */
  @Nullable Doubt doubt() {
    return doubt;
  }

  /** How many seeds were sown, where there is no doubt. */
  int seeds() {
    return (int) sown.seeds().size().orElseThrow();
  }

  /** How many came up, where there is no doubt. */
  int up() {
    return (int) counted().up();
  }

  /** Whether a later count was lower than an earlier one, where there is no doubt. */
  boolean fell() {
    return counted().fell();
  }

  /** How many were alive at the last count, if they were counted exactly. */
  OptionalLong alive() {
    return alive;
  }

  /**
   * How they came up over the days, each seedling dated to the count of its pot that found it,
   * where there is no doubt; empty if the day of the sowing is not known, or that of a count that
   * found more than those before. Of pots counted on different days each stands at its own last
   * count, so that between them fewer are in it than were up.
   */
  Optional<GerminationCurve> curve() {
    if (doubt != null || !counted().dated() || !isDay(sown.date())) {
      return Optional.empty();
    }
    return Optional.of(GerminationCurve.ofNewly(seeds(), byDay(counted().newly())));
  }

  /**
   * The curve of each pot that was counted by itself, or that of the sowing counted as a whole;
   * none where {@link #curve} is empty. They tell when, and not how large a share: seeds that did
   * not come up may be left out of them.
   */
  List<GerminationCurve> potByPot() {
    return curve().isEmpty()
        ? List.of()
        : counted().pots().stream().map(Emergence::ofThoseThatCameUp).toList();
  }

  private static GerminationCurve ofThoseThatCameUp(SortedMap<Integer, Long> newly) {
    int up = newly.values().stream().mapToInt(Long::intValue).sum();
    return GerminationCurve.ofNewly(Math.max(1, up), byDay(newly));
  }

  private static Map<Integer, Integer> byDay(SortedMap<Integer, Long> newly) {
    Map<Integer, Integer> numbers = new TreeMap<>();
    newly.forEach((day, number) -> numbers.put(day, number.intValue()));
    return numbers;
  }

  private Series counted() {
    if (series == null || doubt != null) {
      throw new IllegalStateException(sown.sowing().text() + ": " + doubt);
    }
    return series;
  }

  static boolean isDay(@Nullable PartialDate date) {
    return date != null && date.day() != 0;
  }

  /** Reads the entries about the pots of one sowing. */
  private static final class Reader {
    private final RegisterView view;
    private final Sown sown;
    private final @Nullable LocalDate from;
    private final long ripe;

    /** One entry may speak of all the pots of a bag. */
    private final Map<Long, Statement> read = new HashMap<>();

    Reader(RegisterView view, Sown sown, long ripe) {
      this.view = view;
      this.sown = sown;
      PartialDate date = sown.date();
      this.from = date != null && date.day() != 0 ? date.earliest() : null;
      this.ripe = ripe;
    }

    Series none() {
      return new Series(0, new TreeMap<>(), List.of(), true, false);
    }

    /** By day, on one day in order of entry; what has no day stands where it was entered. */
    List<About> about(Code pot) {
      List<About> all = new ArrayList<>();
      long latest = Long.MIN_VALUE;
      for (long entry : view.entriesOn(Subject.of(pot))) {
        Statement statement =
            read.computeIfAbsent(entry, number -> view.effective(number).orElseThrow());
        PartialDate date = statement.date();
        long day = date == null ? latest : date.latest().toEpochDay();
        latest = Math.max(latest, day);
        all.add(new About(day, isDay(date), statement));
      }
      all.sort(Comparator.comparingLong(About::day));
      return all;
    }

    /** Counts made when all had time to come up; those without a day are taken for such. */
    private boolean isRipe(About about) {
      return about.statement().date() == null || about.day() >= ripe;
    }

    private static Optional<Counted.Reading> reading(About about, Code pot) {
      return about.statement() instanceof Counted counted
          ? counted.readings().stream().filter(one -> one.code().equals(pot)).findFirst()
          : Optional.empty();
    }

    private @Nullable Count lastUp(Code pot, List<About> about, boolean ripeOnly) {
      Count last = null;
      for (About one : about) {
        Count count = reading(one, pot).map(Counted.Reading::germinated).orElse(null);
        if (count != null && (!ripeOnly || isRipe(one))) {
          last = count;
        }
      }
      return last;
    }

    /** How a pot was counted; empty unless its last count is an exact one. */
    Optional<Series> series(Code pot, Map<Code, List<About>> all) {
      List<About> about = all.getOrDefault(pot, List.of());
      Count last = lastUp(pot, about, true);
      if (last == null || !last.isExact()) {
        return Optional.empty();
      }
      SortedMap<Integer, Long> newly = new TreeMap<>();
      long up = 0;
      long dated = 0;
      long left = 0;
      long counted = 0;
      boolean fell = false;
      for (About one : about) {
        left += taken(one.statement(), pot);
        Optional<Counted.Reading> reading = reading(one, pot);
        if (reading.isEmpty()) {
          continue;
        }
        long found = exact(reading.get().germinated());
        long standing = exact(reading.get().alive());
        fell |= found >= 0 && found < counted;
        counted = Math.max(counted, found);
        up = Math.max(up, Math.max(found, standing < 0 ? -1 : standing + left));
        if (one.exact() && up >= dated && from != null && Math.max(found, standing) >= 0) {
          long days = ChronoUnit.DAYS.between(from, LocalDate.ofEpochDay(one.day()));
          if (days >= 0) {
            newly.merge((int) days, up - dated, Long::sum);
            dated = up;
          }
        }
      }
      return Optional.of(new Series(up, newly, List.of(newly), dated == up, fell));
    }

    private static long exact(@Nullable Count count) {
      return count != null && count.isExact() ? count.size().orElseThrow() : -1;
    }

    /** How many an entry took out of a pot, dead or alive, as far as it was counted. */
    private static long taken(Statement statement, Code pot) {
      if (statement instanceof Potted potted && potted.from().equals(pot)) {
        return Math.max(0, exact(potted.count()));
      }
      if (statement instanceof Numbered numbered && numbered.from().equals(pot)) {
        return numbered.last() - numbered.first() + 1L;
      }
      return statement instanceof FateRecorded fate && !fate.fate().isHere()
          ? Math.max(0, exact(fate.count()))
          : 0;
    }

    /** Why the sowing has no count to go by. */
    Doubt why(Map<Code, List<About>> all) {
      boolean early = false;
      for (Map.Entry<Code, List<About>> pot : all.entrySet()) {
        Count last = lastUp(pot.getKey(), pot.getValue(), true);
        if (last != null && !last.isExact()) {
          return Doubt.SEEDLINGS_GUESSED;
        }
        early |= last == null && lastUp(pot.getKey(), pot.getValue(), false) != null;
      }
      return early ? Doubt.STILL_COMING_UP : Doubt.NOT_COUNTED;
    }

    /**
     * How many were alive at the last count of the sowing as a whole, else of all its pots; empty
     * where seedlings went elsewhere, so that fewer standing here says nothing of how many live.
     */
    OptionalLong alive(Map<Code, List<About>> all, List<Code> pots) {
      for (Map.Entry<Code, List<About>> pot : all.entrySet()) {
        if (pot.getValue().stream().anyMatch(one -> isTakenFrom(one.statement(), pot.getKey()))) {
          return OptionalLong.empty();
        }
      }
      OptionalLong whole = lastAlive(sown.sowing(), all);
      if (whole.isPresent() || pots.isEmpty()) {
        return whole;
      }
      long sum = 0;
      for (Code pot : pots) {
        OptionalLong one = lastAlive(pot, all);
        if (one.isEmpty()) {
          return one;
        }
        sum += one.getAsLong();
      }
      return OptionalLong.of(sum);
    }

    private OptionalLong lastAlive(Code pot, Map<Code, List<About>> all) {
      Count last = null;
      for (About one : all.getOrDefault(pot, List.of())) {
        Count count = reading(one, pot).map(Counted.Reading::alive).orElse(null);
        if (count != null && isRipe(one)) {
          last = count;
        }
      }
      return last != null && last.isExact() ? last.size() : OptionalLong.empty();
    }

    private static boolean isTakenFrom(Statement statement, Code pot) {
      return (statement instanceof Potted potted && potted.from().equals(pot))
          || statement instanceof Numbered
          || (statement instanceof FateRecorded fate && fate.fate() != Fate.DEAD);
    }
  }
}
