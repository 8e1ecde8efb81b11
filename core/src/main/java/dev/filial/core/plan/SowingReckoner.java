package dev.filial.core.plan;

import dev.filial.core.plan.Chances.Branch;
import dev.filial.core.plan.Setting.Tries;
import dev.filial.core.trial.Proportion;
import dev.filial.core.trial.SeedsToSow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the fewest seeds of one way: all that it may come to is laid out once, each part in arrays,
 * and gone through for one set of numbers after the other.
 *
 * <p>Numbers of seeds stand by season; those of a cross beside the first one behind them all.
 */
final class SowingReckoner {

  /** More seeds are sown by nobody. */
  private static final int MOST = 1_000_000;

  /** Of large numbers not each one is tried, but so many between them. */
  private static final int STEPS = 1000;

  /** As many seeds as it may take. */
  private static final int ENDLESS = Integer.MAX_VALUE;

  /** Of more the binomial is summed by the beta function. */
  private static final int FEW = 16;

  /** The seasons, the first one first. */
  private final List<Stage> stages = new ArrayList<>();

  private final int seasons;
  private final int numbers;
  private final Goal goal;
  private final double certain;
  private final List<Proportion> counted;
  private final List<Optional<Setting>> settings;
  private final Map<List<Number>, Double> tails = new HashMap<>();
  private final Map<List<Integer>, Tries> tries = new HashMap<>();

  /** All that may be in one season. */
  private static final class Stage {
    private final List<Double> shares = new ArrayList<>();
    private final List<Double> sharesBeside = new ArrayList<>();
    private double[][] weights = {};
    private int[][] main = {};
    private int[][] beside = {};
    private int[][] next = {};
    private int each = 1;
  }

  SowingReckoner(PlanChances chances, Goal goal, double certain, List<Proportion> counted) {
    this.seasons = chances.seasonChances().size();
    this.goal = goal;
    this.certain = certain;
    this.counted = counted;
    this.settings = chances.settings();
    List<Chances> now = List.of(chances.root());
    for (int season = 0; season < seasons; season++) {
      Stage stage = new Stage();
      now = laidOut(stage, now);
      stages.add(stage);
    }
    this.numbers = seasons + (chances.chanceBeside().isPresent() ? 1 : 0);
  }

  /** How many numbers of seeds there are: one a season, and one of a cross beside the first. */
  int numbers() {
    return numbers;
  }

  /** Whether two crosses are made in the first season. */
  boolean isDouble() {
    return numbers > seasons;
  }

  /** The parts of the season after. */
  private static List<Chances> laidOut(Stage stage, List<Chances> nodes) {
    int size = nodes.size();
    stage.weights = new double[size][];
    stage.main = new int[size][];
    stage.beside = new int[size][];
    stage.next = new int[size][];
    Map<Chances, Integer> after = new LinkedHashMap<>();
    Map<Double, Integer> shares = new LinkedHashMap<>();
    Map<Double, Integer> sharesBeside = new LinkedHashMap<>();
    for (int node = 0; node < size; node++) {
      Chances chances = nodes.get(node);
      stage.each = Math.max(stage.each, chances.each());
      List<Branch> branches =
          chances.branches().stream().filter(branch -> branch.share() > 0).toList();
      int many = branches.size();
      stage.weights[node] = new double[many];
      stage.main[node] = new int[many];
      stage.beside[node] = new int[many];
      stage.next[node] = new int[many];
      for (int i = 0; i < many; i++) {
        Branch branch = branches.get(i);
        stage.weights[node][i] = branch.weight();
        stage.main[node][i] = numbered(shares, branch.main().share());
        stage.beside[node][i] = numbered(sharesBeside, branch.beside().share());
        stage.next[node][i] = numbered(after, branch.next());
      }
    }
    stage.shares.addAll(shares.keySet());
    stage.sharesBeside.addAll(sharesBeside.keySet());
    return List.copyOf(after.keySet());
  }

  private static <T> int numbered(Map<T, Integer> numbers, T one) {
    return numbers.computeIfAbsent(one, any -> numbers.size());
  }

  /** The chance that the way succeeds with such numbers, 0 to 1. */
  double success(int[] seeds, int[] keep) {
    double[] after = {};
    for (int season = seasons - 1; season >= 0; season--) {
      after = values(season, seeds, keep, after);
    }
    return after[0];
  }

  /** How likely each part of a season comes to the wanted ones. */
  private double[] values(int season, int[] seeds, int[] keep, double[] after) {
    Stage stage = stages.get(season);
    boolean last = season == seasons - 1;
    int most = last ? 1 : keep[season];
    int each = last ? goal.atLeast() : stage.each;
    Tries tries = last ? Tries.ofAll(1) : tries(season, most);
    double[][] enough = enough(stage.shares, each, tries.tried(), seeds[season]);
    boolean two = season == 0 && isDouble();
    double[][] enoughBeside =
        two ? enough(stage.sharesBeside, 1, tries.tried(), seeds[seasons]) : new double[0][];
    double[] values = new double[stage.weights.length];
    for (int node = 0; node < values.length; node++) {
      double sum = 0;
      double[] weights = stage.weights[node];
      for (int i = 0; i < weights.length; i++) {
        double[] coming = enough[stage.main[node][i]];
        if (last) {
          sum += weights[i] * coming[0];
          continue;
        }
        if (two) {
          double[] beside = enoughBeside[stage.beside[node][i]];
          double[] both = coming.clone();
          for (int kept = 0; kept < both.length; kept++) {
            both[kept] *= beside[kept];
          }
          coming = both;
        }
        sum += weights[i] * carriedOn(tries.set(coming), after[stage.next[node][i]]);
      }
      values[node] = sum;
    }
    return values;
  }

  private Tries tries(int season, int kept) {
    return settings
        .get(season)
        .map(
            setting ->
                tries.computeIfAbsent(
                    List.of(season, kept), any -> setting.until(kept, goal.failingUntried())))
        .orElseGet(() -> Tries.ofAll(kept));
  }

  /** How many to keep beyond those to go on with, as far as so many are likely to come up. */
  private List<Integer> spare(int[] seeds, int[] keep) {
    List<Integer> spare = new ArrayList<>();
    for (int season = 0; season < keep.length; season++) {
      Stage stage = stages.get(season);
      int most = tries(season, keep[season]).tried();
      while (most > keep[season]
          && (seldom(most * stage.each, seeds[season], stage.shares)
              || (season == 0 && isDouble() && seldom(most, seeds[seasons], stage.sharesBeside)))) {
        most--;
      }
      spare.add(most - keep[season]);
    }
    return spare;
  }

  private boolean seldom(int coming, int seeds, List<Double> shares) {
    double most = shares.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return tail(coming, seeds, most) < goal.failingUntried();
  }

  /** Of fewer than are to be kept those that came up are carried on all the same. */
  private static double carriedOn(double[] coming, double onwards) {
    if (onwards == 0) {
      return 0;
    }
    double failing = 0;
    double left = 1;
    double before = 1;
    for (double enough : coming) {
      failing += (before - enough) * left;
      before = enough;
      left *= 1 - onwards;
    }
    return 1 - failing - before * left;
  }

  /** By share, how likely one, two and so on of them come, {@code each} seedlings for one. */
  private double[][] enough(List<Double> shares, int each, int most, int seeds) {
    double[][] enough = new double[shares.size()][most];
    for (int i = 0; i < enough.length; i++) {
      for (int kept = 0; kept < most; kept++) {
        enough[i][kept] = tail((kept + 1) * each, seeds, shares.get(i));
      }
    }
    return enough;
  }

  private double tail(int atLeast, int seeds, double share) {
    if (seeds == ENDLESS) {
      return 1;
    }
    if (seeds < atLeast) {
      return 0;
    }
    double comes = Math.min(1, share * certain);
    if (counted.isEmpty() && atLeast <= FEW) {
      return binomial(atLeast, seeds, comes);
    }
    return tails.computeIfAbsent(
        List.of(atLeast, seeds, share),
        any -> {
          SeedsToSow sowing = SeedsToSow.of(comes);
          for (Proportion rate : counted) {
            sowing = sowing.withRate(rate);
          }
          return sowing.chanceOf(atLeast, seeds);
        });
  }

  private static double binomial(int atLeast, int seeds, double comes) {
    if (comes >= 1) {
      return 1;
    }
    double none = Math.log1p(-comes) * seeds;
    if (atLeast == 1) {
      return -Math.expm1(none);
    }
    double term = Math.exp(none);
    double fewer = 0;
    for (int k = 0; k < atLeast; k++) {
      fewer += term;
      term *= (double) (seeds - k) / (k + 1) * comes / (1 - comes);
    }
    return Math.max(0, 1 - fewer);
  }

  /**
   * The fewest seeds.
   *
   * @throws IllegalArgumentException if that are more than {@link #MOST}
   */
  Sowing fewest() {
    int[] most = new int[seasons - 1];
    for (int season = 0; season < most.length; season++) {
      most[season] = mostKept(season);
    }
    double reachable = success(endless(), most);
    boolean reached = reachable > goal.certainty();
    double target = reached ? goal.certainty() : Sowing.NEARLY * reachable;
    long best = Long.MAX_VALUE;
    int[] bestSeeds = new int[0];
    int[] bestKeep = new int[0];
    for (int[] keep : keeps()) {
      if (success(endless(), keep) <= target || !mayTakeFewer(keep, target, best)) {
        continue;
      }
      int[] seeds = numbers > 2 ? bySteps(keep, target, best) : ofTwo(keep, target, best);
      if (seeds.length > 0 && total(seeds, keep) < best) {
        best = total(seeds, keep);
        bestSeeds = seeds;
        bestKeep = keep;
      }
    }
    if (bestSeeds.length == 0) {
      throw new IllegalArgumentException(
          "more than " + MOST + " seeds would be needed; be less certain, or ask for fewer");
    }
    return new Sowing(
        list(bestSeeds).subList(0, seasons),
        isDouble() ? bestSeeds[seasons] : 0,
        list(bestKeep),
        spare(bestSeeds, bestKeep),
        best,
        success(bestSeeds, bestKeep),
        reachable,
        reached);
  }

  private int[] endless() {
    int[] endless = new int[numbers];
    Arrays.fill(endless, ENDLESS);
    return endless;
  }

  /** Each season takes at least what it takes if no other could fail. */
  private boolean mayTakeFewer(int[] keep, double target, long than) {
    int[] least = endless();
    for (int number = 0; number < numbers; number++) {
      least[number] = fewest(number, endless(), keep, target, 1);
      if (least[number] > MOST) {
        return false;
      }
    }
    return total(least, keep) < than;
  }

  /** What is kept of the first of three seasons goes on into several plants again. */
  private int mostKept(int season) {
    return seasons == 3 && season == 0 ? Sowing.MOST_KEPT / 2 : Sowing.MOST_KEPT;
  }

  private List<int[]> keeps() {
    List<int[]> all = new ArrayList<>(List.of(new int[seasons - 1]));
    for (int season = 0; season < seasons - 1; season++) {
      List<int[]> more = new ArrayList<>();
      for (int[] keep : all) {
        for (int kept = 1; kept <= mostKept(season); kept++) {
          int[] next = keep.clone();
          next[season] = kept;
          more.add(next);
        }
      }
      all = more;
    }
    return all;
  }

  private static List<Integer> list(int[] numbers) {
    return Arrays.stream(numbers).boxed().toList();
  }

  private long total(int[] seeds, int[] keep) {
    long total = isDouble() ? seeds[seasons] : 0;
    long plants = 1;
    for (int season = 0; season < seasons; season++) {
      total += plants * seeds[season];
      plants *= season < keep.length ? keep[season] : 1;
    }
    return total;
  }

  /**
   * The fewest of that number with the others as they are; {@link #MOST} + 1 for too many.
   *
   * @param near where it is looked for first, 1 or more
   */
  private int fewest(int number, int[] seeds, int[] keep, double target, int near) {
    int[] with = seeds.clone();
    int enough = Math.min(MOST, near);
    int tooFew = 0;
    int step = 1;
    while (!isEnough(number, enough, with, keep, target)) {
      if (enough >= MOST) {
        return MOST + 1;
      }
      tooFew = enough;
      enough = (int) Math.min(MOST, (long) enough + step);
      step = Math.min(MOST, step * 2);
    }
    step = 1;
    while (tooFew == 0 && enough > 1) {
      int tried = Math.max(1, enough - step);
      if (!isEnough(number, tried, with, keep, target)) {
        tooFew = tried;
      } else {
        enough = tried;
        step *= 2;
      }
    }
    while (enough - tooFew > 1) {
      int middle = (enough + tooFew) >>> 1;
      if (isEnough(number, middle, with, keep, target)) {
        enough = middle;
      } else {
        tooFew = middle;
      }
    }
    return enough;
  }

  private boolean isEnough(int number, int of, int[] with, int[] keep, double target) {
    with[number] = of;
    return success(with, keep) >= target;
  }

  private int[] ofTwo(int[] keep, double target, long below) {
    int[] seeds = endless();
    if (seasons == 1) {
      seeds[0] = fewest(0, seeds, keep, target, 1);
      return seeds[0] > MOST ? new int[0] : seeds;
    }
    int least = fewest(0, seeds, keep, target, 1);
    if (least > MOST) {
      return new int[0];
    }
    int[] best = new int[0];
    long fewest = below;
    int last = -1;
    int step = Math.max(1, least / STEPS);
    for (int first = least; first <= MOST && first + (long) keep[0] < fewest; first += step) {
      seeds[0] = first;
      if (last < 0) {
        last = fewest(1, seeds, keep, target, 1);
        if (last > MOST) {
          last = -1;
          continue;
        }
      } else {
        last = fewer(seeds, keep, target, last);
      }
      seeds[1] = last;
      if (total(seeds, keep) < fewest) {
        fewest = total(seeds, keep);
        best = seeds.clone();
        step = Math.max(1, (int) (fewest / (2L * STEPS)));
      }
    }
    return best;
  }

  /** Walks the last season's number down as long as it is enough. */
  private int fewer(int[] seeds, int[] keep, double target, int from) {
    int last = from;
    int step = Math.max(1, from / STEPS);
    while (last - step >= 1) {
      seeds[1] = last - step;
      if (success(seeds, keep) < target) {
        break;
      }
      last -= step;
    }
    return last;
  }

  /** An even division of what may fail, then better by steps; the last season by the others. */
  private int[] bySteps(int[] keep, double target, long below) {
    int last = seasons - 1;
    double reachable = success(endless(), keep);
    double spare = reachable - (reachable - target) / numbers;
    int[] seeds = endless();
    for (int number = 0; number < numbers; number++) {
      seeds[number] = fewest(number, endless(), keep, spare, 1);
      if (seeds[number] > MOST) {
        return new int[0];
      }
    }
    long fewest = Long.MAX_VALUE;
    int[] best = new int[0];
    int widest = 0;
    for (int number = 0; number < numbers; number++) {
      widest = Math.max(widest, number == last ? 0 : seeds[number]);
    }
    for (int step = Math.max(1, widest / 4); ; step /= 2) {
      boolean better = true;
      while (better) {
        better = false;
        for (int[] tried : around(seeds, Math.max(1, step), last)) {
          tried[last] = fewest(last, tried, keep, target, seeds[last]);
          if (tried[last] <= MOST && total(tried, keep) < fewest) {
            fewest = total(tried, keep);
            best = tried;
            better = true;
          }
        }
        if (better) {
          seeds = best.clone();
        }
        if (fewest / 2 > below) {
          return best;
        }
      }
      if (step <= 1) {
        return best;
      }
    }
  }

  /** All numbers a step more or less, or as they are, but that of the last season. */
  private static List<int[]> around(int[] seeds, int step, int last) {
    List<int[]> all = new ArrayList<>(List.of(seeds.clone()));
    for (int number = 0; number < seeds.length; number++) {
      if (number == last) {
        continue;
      }
      List<int[]> more = new ArrayList<>();
      for (int[] one : all) {
        for (int by = -1; by <= 1; by++) {
          int[] next = one.clone();
          next[number] += by * step;
          if (next[number] >= 1) {
            more.add(next);
          }
        }
      }
      all = more;
    }
    return all;
  }
}
