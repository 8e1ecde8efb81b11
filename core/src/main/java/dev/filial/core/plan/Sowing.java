package dev.filial.core.plan;

import dev.filial.core.plan.Chances.Branch;
import dev.filial.core.trial.Proportion;
import dev.filial.core.trial.SeedsToSow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How many seeds to sow in each season, and how many seedlings to keep, so that the wanted one is
 * had in the end with a stated certainty: the fewest seeds in all.
 *
 * <p>What is uncertain of a plant is not drawn anew for each of its seeds. Of parents that are so
 * or so with weights w the chance of at least one is the sum of w·(1 − (1 − p)ⁿ), never 1 − (1 −
 * mean p)ⁿ; where one of them cannot give it at all no number of seeds makes it sure, and keeping
 * several seedlings, each sown of by itself, may. Several wanted seedlings have to come of one and
 * the same last cross. For one season and two the fewest seeds are found by going through all
 * numbers, in steps of a thousandth where there are many; for three by steps from an even division
 * of the certainty, so that another division may save a few.
 *
 * @param seeds how many to sow in each season, of each plant kept in the season before
 * @param keep how many to keep of each season but the last; pairs where sibs are crossed
 * @param total all seeds of all seasons together
 * @param certainty how sure the wanted seedlings then are
 * @param reachable how sure they can be, however many are sown and kept, up to {@value #MOST_KEPT}
 *     kept
 * @param reached whether {@code certainty} is what was asked for
 */
public record Sowing(
    List<Integer> seeds,
    List<Integer> keep,
    long total,
    double certainty,
    double reachable,
    boolean reached) {

  /** More seedlings of one kind are not kept. */
  public static final int MOST_KEPT = 8;

  /** Short of what can be had by this share of it, the numbers stay finite. */
  private static final double NEARLY = 0.95;

  private static final int MOST = 1_000_000;

  private static final int STEPS = 1000;

  /** Copies the lists. */
  public Sowing {
    seeds = List.copyOf(seeds);
    keep = List.copyOf(keep);
  }

  /**
   * For that way.
   *
   * @param certain the shares of seeds that come through, taken as certain, multiplied
   * @param counted those that were counted
   * @throws IllegalArgumentException if more seeds would be needed than can be reckoned with, or a
   *     number lies outside its range
   */
  public static Sowing of(
      PlanChances chances, Goal goal, double certain, List<Proportion> counted) {
    return new Reckoner(chances, goal, certain, counted).fewest();
  }

  /** The chance that a way succeeds with such numbers of seeds, 0 to 1. */
  public static double success(
      PlanChances chances, int atLeast, List<Integer> seeds, List<Integer> keep) {
    return new Reckoner(chances, Goal.of(atLeast, NEARLY), 1, List.of())
        .success(
            seeds.stream().mapToInt(Integer::intValue).toArray(),
            keep.stream().mapToInt(Integer::intValue).toArray());
  }

  private static final class Reckoner {
    private static final int ENDLESS = Integer.MAX_VALUE;

    /** Of more the binomial is summed by the beta function. */
    private static final int FEW = 16;

    private final Chances root;
    private final int seasons;
    private final Goal goal;
    private final double certain;
    private final List<Proportion> counted;
    private final Map<List<Number>, Double> tails = new HashMap<>();

    Reckoner(PlanChances chances, Goal goal, double certain, List<Proportion> counted) {
      this.root = chances.root();
      this.seasons = chances.seasonChances().size();
      this.goal = goal;
      this.certain = certain;
      this.counted = counted;
    }

    double success(int[] seeds, int[] keep) {
      return value(root, 0, seeds, keep);
    }

    private double value(Chances chances, int season, int[] seeds, int[] keep) {
      double sum = 0;
      for (Branch branch : chances.branches()) {
        if (branch.share() > 0) {
          sum += branch.weight() * value(branch, chances.each(), season, seeds, keep);
        }
      }
      return sum;
    }

    private double value(Branch branch, int each, int season, int[] seeds, int[] keep) {
      if (season == seasons - 1) {
        return tail(goal.atLeast(), seeds[season], branch.share());
      }
      double onwards = value(branch.next(), season + 1, seeds, keep);
      if (onwards == 0) {
        return 0;
      }
      // Of fewer than are to be kept those that came up are carried on all the same.
      double failing = 0;
      double left = 1;
      double before = 1;
      for (int kept = 1; kept <= keep[season]; kept++) {
        double enough = tail(kept * each, seeds[season], branch.share());
        failing += (before - enough) * left;
        before = enough;
        left *= 1 - onwards;
      }
      return 1 - failing - before * left;
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

    Sowing fewest() {
      int[] endless = new int[seasons];
      Arrays.fill(endless, ENDLESS);
      int[] most = new int[seasons - 1];
      for (int season = 0; season < most.length; season++) {
        most[season] = mostKept(season);
      }
      double reachable = success(endless, most);
      boolean reached = reachable > goal.certainty();
      double target = reached ? goal.certainty() : NEARLY * reachable;
      long best = Long.MAX_VALUE;
      int[] bestSeeds = new int[0];
      int[] bestKeep = new int[0];
      for (int[] keep : keeps()) {
        if (success(endless, keep) <= target) {
          continue;
        }
        int[] seeds = seasons == 3 ? ofThree(keep, target, best) : ofTwo(keep, target, best);
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
          list(bestSeeds), list(bestKeep), best, success(bestSeeds, bestKeep), reachable, reached);
    }

    /** What is kept of the first of three seasons goes on into several plants again. */
    private int mostKept(int season) {
      return seasons == 3 && season == 0 ? MOST_KEPT / 2 : MOST_KEPT;
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

    private static long total(int[] seeds, int[] keep) {
      long total = 0;
      long plants = 1;
      for (int season = 0; season < seeds.length; season++) {
        total += plants * seeds[season];
        plants *= season < keep.length ? keep[season] : 1;
      }
      return total;
    }

    /** The fewest of that season with the others as they are; {@link #MOST} + 1 for too many. */
    private int fewest(int season, int[] seeds, int[] keep, double target) {
      int[] with = seeds.clone();
      int enough = 1;
      with[season] = enough;
      while (success(with, keep) < target) {
        if (enough >= MOST) {
          return MOST + 1;
        }
        enough = Math.min(MOST, enough * 2);
        with[season] = enough;
      }
      int tooFew = enough / 2;
      while (enough - tooFew > 1) {
        int middle = (enough + tooFew) >>> 1;
        with[season] = middle;
        if (success(with, keep) < target) {
          tooFew = middle;
        } else {
          enough = middle;
        }
      }
      return enough;
    }

    private int[] ofTwo(int[] keep, double target, long below) {
      int[] seeds = new int[seasons];
      Arrays.fill(seeds, ENDLESS);
      if (seasons == 1) {
        seeds[0] = fewest(0, seeds, keep, target);
        return seeds[0] > MOST ? new int[0] : seeds;
      }
      int least = fewest(0, seeds, keep, target);
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
          seeds[1] = 1;
          last = fewest(1, seeds, keep, target);
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

    private int[] ofThree(int[] keep, double target, long below) {
      int[] seeds = new int[3];
      Arrays.fill(seeds, ENDLESS);
      double reachable = success(seeds, keep);
      // An even division of what may fail, then better by steps.
      for (int season = 0; season < 3; season++) {
        int[] alone = new int[3];
        Arrays.fill(alone, ENDLESS);
        double spare = reachable - (reachable - target) / 3;
        seeds[season] = fewest(season, alone, keep, spare);
        if (seeds[season] > MOST) {
          return new int[0];
        }
      }
      long fewest = Long.MAX_VALUE;
      int[] best = new int[0];
      for (int step = Math.max(1, seeds[0] / 4); ; step /= 2) {
        boolean better = true;
        while (better) {
          better = false;
          for (int[] start : around(seeds, Math.max(1, step))) {
            int[] tried = start.clone();
            tried[2] = fewest(2, tried, keep, target);
            if (tried[2] <= MOST && total(tried, keep) < fewest) {
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

    private static List<int[]> around(int[] seeds, int step) {
      List<int[]> all = new ArrayList<>();
      for (int first = -1; first <= 1; first++) {
        for (int second = -1; second <= 1; second++) {
          if (seeds[0] + first * step >= 1 && seeds[1] + second * step >= 1) {
            all.add(new int[] {seeds[0] + first * step, seeds[1] + second * step, seeds[2]});
          }
        }
      }
      return all;
    }
  }
}
