package dev.filial.core.inference;

import dev.filial.core.inference.factor.BlockSampler;
import dev.filial.core.inference.factor.Calibrated;
import dev.filial.core.inference.factor.Elimination;
import dev.filial.core.inference.factor.FactorGraph;
import dev.filial.core.inference.factor.Sampled;
import dev.filial.core.inference.factor.StuckException;
import dev.filial.core.inference.factor.TooTangledException;
import java.util.ArrayList;
import java.util.List;

/**
 * How much is done for an answer.
 *
 * @param bound how many numbers all tables may have together
 * @param sweeps how often everything is drawn anew past that bound; 0 to refuse instead
 * @param dice what the draws begin with
 */
record Effort(long bound, int sweeps, long dice) {

  /**
   * So many numbers are drawn together where odds are sampled. Larger blocks lessen the error of a
   * draw far less than they slow it.
   */
  private static final long DRAWN_TOGETHER = 1L << 15;

  /** So many runs are drawn, and have to agree. */
  private static final int RUNS = 3;

  /** What runs may differ by beside their errors. */
  private static final double AGREED = 0.01;

  Effort withBound(long entries) {
    return new Effort(entries, sweeps, dice);
  }

  Effort withSampling(int times, long start) {
    return new Effort(bound, times, start);
  }

  /** The chances of the states of some variables together, the last fastest, and their errors. */
  static final class Solved {
    private final double[] chances;
    private final double[] errors;
    private final Elimination plan;
    private final int sweeps;

    Solved(double[] chances, double[] errors, Elimination plan, int sweeps) {
      this.chances = chances;
      this.errors = errors;
      this.plan = plan;
      this.sweeps = sweeps;
    }

    int cells() {
      return chances.length;
    }

    double chance(int cell) {
      return chances[cell];
    }

    double error(int cell) {
      return errors[cell];
    }

    Elimination plan() {
      return plan;
    }

    /** How often everything was drawn; 0 if the chances are exact. */
    int sweeps() {
      return sweeps;
    }
  }

  /**
   * The chances of some variables together: exact within the bound, else drawn if that is wanted.
   *
   * @throws ImpossibleFindingsException if nothing is possible
   * @throws TangledPedigreeException if it would cost too much and is not to be drawn
   * @throws UnsteadyDrawsException if it is to be drawn, and cannot be, or the runs do not agree
   */
  Solved solve(FactorGraph graph, int... asked) {
    Elimination plan = Elimination.of(graph, asked);
    if (plan.entries() > bound && sweeps > 0) {
      return sampled(graph, plan, asked);
    }
    Calibrated done = run(plan);
    if (!done.isPossible()) {
      throw new ImpossibleFindingsException();
    }
    double[] joint = done.joint();
    return new Solved(joint, new double[joint.length], plan, 0);
  }

  /**
   * Works a plan through, exactly.
   *
   * @throws TangledPedigreeException if it would cost too much
   */
  Calibrated run(Elimination plan) {
    try {
      return plan.run(bound);
    } catch (TooTangledException e) {
      throw new TangledPedigreeException(e);
    }
  }

  /**
   * Several runs that begin apart: what one run cannot see of itself, that it never left a corner,
   * shows where they differ.
   */
  private Solved sampled(FactorGraph graph, Elimination plan, int... asked) {
    long whole = 1;
    for (int variable : asked) {
      whole = Math.min(whole * graph.states(variable), bound);
    }
    long together = Math.min(bound, Math.max(DRAWN_TOGETHER, 8 * whole));
    BlockSampler sampler = BlockSampler.of(graph).withBound(together).withSweeps(sweeps);
    List<double[]> joints = new ArrayList<>();
    List<double[]> within = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      Sampled drawn = run(sampler.withSeed(RUNS * dice + run), asked);
      joints.add(drawn.joint());
      within.add(drawn.standardErrors());
    }
    int cells = joints.get(0).length;
    double[] chances = new double[cells];
    double[] errors = new double[cells];
    for (int cell = 0; cell < cells; cell++) {
      double least = 1;
      double most = 0;
      double square = 0;
      for (int run = 0; run < RUNS; run++) {
        double chance = joints.get(run)[cell];
        least = Math.min(least, chance);
        most = Math.max(most, chance);
        square += within.get(run)[cell] * within.get(run)[cell];
        chances[cell] += chance / RUNS;
      }
      errors[cell] = Math.sqrt(square) / RUNS;
      if (most - least > AGREED + 6 * Math.sqrt(square)) {
        throw new UnsteadyDrawsException(least, most);
      }
    }
    return new Solved(chances, errors, plan, sweeps);
  }

  private static Sampled run(BlockSampler sampler, int... asked) {
    try {
      return sampler.run(asked);
    } catch (StuckException e) {
      throw new UnsteadyDrawsException(e);
    }
  }
}
