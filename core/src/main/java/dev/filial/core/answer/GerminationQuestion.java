package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.trial.GerminationCurve;
import dev.filial.core.trial.LikeCrosses;
import dev.filial.core.trial.Proportion;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * How much seed came up, and when, by what sowings have in common.
 *
 * <p>Only sowings whose seeds and seedlings were counted exactly are reckoned with; the others are
 * named, with why. Times are of those that were not all up at the first count already. Numbers are
 * read as seeds to sow reads them ({@link RecordedRates}).
 */
public final class GerminationQuestion {

  /** Sowings that differ so much come up by chance once in twenty times. */
  static final double DOUBTFUL = 0.05;

  private final RegisterView view;
  private final @Nullable Code what;
  private final By by;
  private final double certainty;

  private GerminationQuestion(RegisterView view, @Nullable Code what, By by, double certainty) {
    this.view = view;
    this.what = what;
    this.by = by;
    this.certainty = certainty;
  }

  /** By what sowings are put together. */
  public enum By {
    /** Each by itself. */
    SOWING,
    /** Seed of one lot. */
    LOT,
    /** Seed of one species, or of crosses of the same species either way round. */
    SPECIES,
    /** Seed of one cross or packet. */
    CROSS,
    /** Sown on one medium. */
    MEDIUM,
    /** What was done to the seed up to the day it was sown. */
    TREATMENT,
    /** How old the seed was when it was sown. */
    AGE
  }

  /** Asks {@code view} about all its sowings, each by itself, with a certainty of 0.95. */
  public static GerminationQuestion of(RegisterView view) {
    return new GerminationQuestion(view, null, By.SOWING, 0.95);
  }

  /** The same about a cross, packet, lot, sowing or pot; null for all sowings. */
  public GerminationQuestion about(@Nullable Code asked) {
    return new GerminationQuestion(view, asked, by, certainty);
  }

  /** The same with sowings put together so. */
  public GerminationQuestion by(By together) {
    return new GerminationQuestion(view, what, together, certainty);
  }

  /**
   * The same with that certainty of the intervals, between 0 and 1.
   *
   * @throws IllegalArgumentException if it is not
   */
  public GerminationQuestion withCertainty(double sure) {
    if (!(sure > 0 && sure < 1)) {
      throw new IllegalArgumentException(
          "a certainty of " + sure + "; it lies between 0 and 1, as 0.95");
    }
    return new GerminationQuestion(view, what, by, sure);
  }

  /**
   * A count on the curve.
   *
   * @param day in days from sowing
   * @param newly how many had come up since the count before
   * @param up how many had come up by then
   * @param share of the seeds sown, 0 to 1
   */
  public record Point(int day, int newly, int up, double share) {}

  /**
   * When seed came up, each seedling dated to the count that found it.
   *
   * @param sowings how many sowings this is of
   * @param seeds how many seeds they had
   * @param meanDays the mean germination time in days; null if nothing came up
   * @param deviationDays its standard deviation in days; null if fewer than two came up
   * @param halfDays T50, the days until half of those that came up at all were up, of several
   *     sowings or pots on the line between days on which all were counted; null if nothing came up
   * @param halfByFirstCount whether half were up at the first count already, of several sowings or
   *     pots at the first of all: {@code halfDays} is then the day of that count, and an upper
   *     bound
   * @param speed the speed of germination by Maguire, in seedlings a day; null if some were up on
   *     the day of sowing
   * @param curve the counts, from the first on
   */
  public record Times(
      int sowings,
      int seeds,
      @Nullable Double meanDays,
      @Nullable Double deviationDays,
      @Nullable Double halfDays,
      boolean halfByFirstCount,
      @Nullable Double speed,
      List<Point> curve) {}

  /**
   * Sowings put together.
   *
   * @param label what they have in common
   * @param sowings which
   * @param seeds how many seeds were sown
   * @param up how many came up
   * @param share the germination percentage as a share, 0 to 1
   * @param lower the lower end of its score interval
   * @param upper the upper end
   * @param differing the chance that sowings alike would differ as much as these do; null for one,
   *     or where all came up or none
   * @param times when they came up; null if no sowing of them tells
   */
  public record Group(
      String label,
      List<Code> sowings,
      int seeds,
      int up,
      double share,
      double lower,
      double upper,
      @Nullable Double differing,
      @Nullable Times times) {

    /** Whether its sowings differ more than by chance, so that the interval is too narrow. */
    public boolean differ() {
      return differing != null && differing < DOUBTFUL;
    }
  }

  /**
   * What could not be reckoned with.
   *
   * @param why why not, without a full stop
   * @param codes which sowings; of survival pots and seedlings too
   */
  public record LeftOut(String why, List<Code> codes) {}

  /**
   * How seed came up.
   *
   * @param what what was asked about; null for the whole register
   * @param by by what sowings are put together
   * @param certainty how sure the intervals are
   * @param groups the sowings put together, in order
   * @param all all of them together; null if nothing can be reckoned with
   * @param leftOut the sowings that are in no percentage
   * @param withoutTimes those that are in the percentages, but not in the times and the curve
   * @param notes what to bear in mind, a sentence each
   */
  public record Germination(
      @Nullable Code what,
      By by,
      double certainty,
      List<Group> groups,
      @Nullable Group all,
      List<LeftOut> leftOut,
      List<LeftOut> withoutTimes,
      List<String> notes) {}

  /**
   * How seed came up. Time in proportion to the sowings and what was entered of them.
   *
   * @throws RegisterRefusal if the register has no such code or nothing of it was sown
   */
  public Germination ask() {
    List<Sown> sowings = SowingsMeant.of(view, what);
    SowingLabels labels = SowingLabels.of(view, by);
    Map<SowingLabels.Label, List<Emergence>> groups = new TreeMap<>();
    List<Emergence> all = new ArrayList<>();
    Map<Emergence.Doubt, List<Code>> doubts = new EnumMap<>(Emergence.Doubt.class);
    List<Code> undated = new ArrayList<>();
    List<Code> once = new ArrayList<>();
    List<Code> fallen = new ArrayList<>();
    long sinceItCame = 0;
    for (Sown sown : sowings) {
      Emergence read = Emergence.of(view, sown);
      Emergence.Doubt doubt = read.doubt();
      if (doubt != null) {
        doubts.computeIfAbsent(doubt, any -> new ArrayList<>()).add(sown.sowing());
        continue;
      }
      all.add(read);
      groups.computeIfAbsent(labels.of(sown), any -> new ArrayList<>()).add(read);
      if (read.curve().isEmpty()) {
        undated.add(sown.sowing());
      } else if (read.curve().get().isAllAtFirstCount()) {
        once.add(sown.sowing());
      }
      if (read.fell()) {
        fallen.add(sown.sowing());
      }
      if (by == By.AGE && SeedAge.of(view, sown).map(SeedAge::sinceItCame).orElse(false)) {
        sinceItCame++;
      }
    }
    List<Group> told = new ArrayList<>();
    groups.forEach((label, in) -> told.add(group(label.text(), in, certainty)));
    return new Germination(
        what == null ? null : Things.required(view, what).code(),
        by,
        certainty,
        List.copyOf(told),
        all.isEmpty() ? null : group("all", all, certainty),
        leftOut(doubts),
        withoutTimes(undated, once),
        notes(told, fallen, sinceItCame));
  }

  private static List<LeftOut> withoutTimes(List<Code> undated, List<Code> once) {
    List<LeftOut> without = new ArrayList<>();
    if (!once.isEmpty()) {
      without.add(new LeftOut("all that came up were up at the first count", List.copyOf(once)));
    }
    if (!undated.isEmpty()) {
      without.add(
          new LeftOut(
              "the day of sowing or of a count is not known to the day", List.copyOf(undated)));
    }
    return List.copyOf(without);
  }

  private static List<String> notes(List<Group> groups, List<Code> fallen, long sinceItCame) {
    List<String> notes = new ArrayList<>();
    List<String> differing =
        groups.stream().filter(Group::differ).map(group -> '"' + group.label() + '"').toList();
    if (!differing.isEmpty()) {
      notes.add(
          "Sowings differ more than by chance within "
              + String.join("; ", differing)
              + "; the interval there is too narrow for the next sowing.");
    }
    if (!fallen.isEmpty()) {
      notes.add(
          "Fewer were counted to have come up later than before in "
              + codes(fallen)
              + "; what came up came up, so the larger number stands.");
    }
    if (sinceItCame > 0) {
      notes.add(
          (sinceItCame == 1
                  ? "The seed of 1 sowing is aged"
                  : "The seed of " + sinceItCame + " sowings is aged")
              + " from the day it came, for its harvest is not known; it may be older.");
    }
    return List.copyOf(notes);
  }

  static String codes(List<Code> codes) {
    return String.join(", ", codes.stream().map(Code::text).toList());
  }

  static List<LeftOut> leftOut(Map<Emergence.Doubt, List<Code>> doubts) {
    List<LeftOut> leftOut = new ArrayList<>();
    doubts.forEach((doubt, codes) -> leftOut.add(new LeftOut(why(doubt), List.copyOf(codes))));
    return List.copyOf(leftOut);
  }

  private static String why(Emergence.Doubt doubt) {
    return switch (doubt) {
      case NOT_COUNTED -> "what came up was not counted";
      case STILL_COMING_UP ->
          "counted only in the first " + Emergence.DAYS_TO_COME_UP + " days, while still coming up";
      case SEEDS_GUESSED -> "how many were sown is a guess";
      case SEEDLINGS_GUESSED -> "how many came up is a guess";
      case MORE_THAN_SOWN -> "more came up than was sown";
      case NONE_SOWN -> "no seed was sown";
      case TOO_MANY -> "more seeds than can be reckoned with";
    };
  }

  /** Puts sowings together, none of which is in doubt. */
  static Group group(String label, List<Emergence> sowings, double certainty) {
    long seeds = 0;
    long up = 0;
    List<Code> codes = new ArrayList<>();
    List<long[]> each = new ArrayList<>();
    List<GerminationCurve> dated = new ArrayList<>();
    List<GerminationCurve> pots = new ArrayList<>();
    for (Emergence one : sowings) {
      seeds += one.seeds();
      up += one.up();
      codes.add(one.sown().sowing());
      each.add(new long[] {one.up(), one.seeds() - one.up()});
      GerminationCurve its = one.curve().orElse(null);
      if (its != null && !its.isAllAtFirstCount()) {
        dated.add(its);
        pots.addAll(one.potByPot());
      }
    }
    if (seeds > Integer.MAX_VALUE) {
      throw new RegisterRefusal(seeds + " seeds were sown, more than can be reckoned with");
    }
    Proportion share = new Proportion((int) up, (int) seeds);
    Proportion.Interval ends = share.score(certainty);
    return new Group(
        label,
        List.copyOf(codes),
        share.all(),
        share.some(),
        share.share(),
        ends.lower(),
        ends.upper(),
        LikeCrosses.of(each).differences().map(LikeCrosses.Differences::p).orElse(null),
        dated.isEmpty() ? null : times(dated, pots));
  }

  private static Times times(List<GerminationCurve> sowings, List<GerminationCurve> pots) {
    GerminationCurve curve = sowings.stream().reduce(GerminationCurve::plus).orElseThrow();
    GerminationCurve.HalfTime half = GerminationCurve.halfTime(pots).orElse(null);
    return new Times(
        sowings.size(),
        curve.sown(),
        curve.meanTime().isPresent() ? curve.meanTime().getAsDouble() : null,
        curve.deviation().isPresent() ? curve.deviation().getAsDouble() : null,
        half == null ? null : half.days(),
        half != null && half.byFirstCount(),
        curve.speed().isPresent() ? curve.speed().getAsDouble() : null,
        curve.steps().stream()
            .map(
                step ->
                    new Point(
                        step.day(), step.newly(), step.up(), (double) step.up() / curve.sown()))
            .toList());
  }
}
