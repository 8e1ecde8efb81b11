package dev.filial.core.inference.factor;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * What a graph that is past any exact answer says of some of its variables, estimated by drawing:
 * blocked Gibbs sampling (Jensen, Kong and Kjærulff, International Journal of Human-Computer
 * Studies 42, 1995). Some variables, others each time, are held; all the rest is one block, as
 * large as exact work within the bound permits, and is drawn anew, exactly, given those held
 * (forward filtering, backward sampling). The asked variables are in every large block, so that
 * what is averaged is not whether a state was drawn but how likely it was.
 *
 * <p>Four chains start from possible assignments found at random and by search. The same seed gives
 * the same result. If zeros in the tables part what is possible into islands between which no block
 * leads, a chain stays on its island; chains that then differ show in the standard errors, but
 * nothing shows if all started on the same one.
 *
 * <p>A sweep costs a few times the bound, or the cost of the whole graph if that is less.
 */
public final class BlockSampler {

  private static final int CHAINS = 4;
  private static final int BATCHES_OF_A_CHAIN = 10;
  private static final int FEWEST_SWEEPS = 40;

  private final FactorGraph graph;
  private final long bound;
  private final long seed;
  private final int sweeps;
  private final int burnIn;

  private BlockSampler(FactorGraph graph, long bound, long seed, int sweeps, int burnIn) {
    this.graph = graph;
    this.bound = bound;
    this.seed = seed;
    this.sweeps = sweeps;
    this.burnIn = burnIn;
  }

  /**
   * With blocks of up to 50,000 entries, seed 1, 2000 sweeps, and 50 for each chain before them.
   */
  public static BlockSampler of(FactorGraph graph) {
    return new BlockSampler(graph, 50_000, 1, 2000, 50);
  }

  /**
   * With another bound on the entries of one block's tables.
   *
   * @throws IllegalArgumentException if it is not positive
   */
  public BlockSampler withBound(long bound) {
    if (bound < 1) {
      throw new IllegalArgumentException("a bound is positive, not " + bound);
    }
    return new BlockSampler(graph, bound, seed, sweeps, burnIn);
  }

  /** With another seed. */
  public BlockSampler withSeed(long seed) {
    return new BlockSampler(graph, bound, seed, sweeps, burnIn);
  }

  /**
   * With another number of sweeps, of all chains together.
   *
   * @throws IllegalArgumentException if they are fewer than 40, too few for a standard error
   */
  public BlockSampler withSweeps(int sweeps) {
    if (sweeps < FEWEST_SWEEPS) {
      throw new IllegalArgumentException(
          "there are at least " + FEWEST_SWEEPS + " sweeps, not " + sweeps);
    }
    return new BlockSampler(graph, bound, seed, sweeps, burnIn);
  }

  /**
   * With another number of sweeps that each chain makes before they count.
   *
   * @throws IllegalArgumentException if it is negative
   */
  public BlockSampler withBurnIn(int burnIn) {
    if (burnIn < 0) {
      throw new IllegalArgumentException("sweeps before the others are not " + burnIn);
    }
    return new BlockSampler(graph, bound, seed, sweeps, burnIn);
  }

  /**
   * Estimates the joint distribution of some variables.
   *
   * @param asked each once, in the order of the table that is wanted
   * @throws IllegalArgumentException if a variable is unknown or named twice, or if the table of
   *     the asked variables alone is past the bound
   * @throws IllegalStateException if nothing is possible, or no possible assignment was found to
   *     start from
   * @throws StuckException if a table that ties its variables to each other cannot be drawn whole
   */
  public Sampled run(int... asked) {
    graph.requireDistinct(asked);
    double whole = 1;
    for (int v : asked) {
      whole *= graph.states(v);
    }
    if (whole > Math.min((double) bound, GreedyOrder.LARGEST_ARRAY)) {
      throw new IllegalArgumentException(
          "the table asked for has " + whole + " entries, and " + bound + " are allowed");
    }
    Reduced reduced = Reduced.of(graph);
    if (!reduced.possible) {
      throw new IllegalStateException("nothing is possible here, so there is no place to start");
    }
    SplittableRandom random = new SplittableRandom(seed);
    int[] last = lastFirst(reduced, asked);
    List<Blocks.Round> rounds = Blocks.rounds(reduced, last, (double) bound, random.split());
    int[][] neighbours = GreedyOrder.neighbours(reduced.states.length, reduced.scopes);
    int size = 1;
    for (int v : last) {
      size *= reduced.states[v];
    }
    Tally tally = new Tally(reduced.states, size);
    for (int chain = 0; chain < CHAINS; chain++) {
      SplittableRandom own = random.split();
      int[] assignment = Start.find(reduced, neighbours, own);
      int share = sweeps / CHAINS + (chain < sweeps % CHAINS ? 1 : 0);
      for (int s = -burnIn; s < share; s++) {
        if (s >= 0) {
          int batch = (int) ((long) s * BATCHES_OF_A_CHAIN / share);
          tally.turnTo(chain * BATCHES_OF_A_CHAIN + batch);
        }
        sweep(rounds.get(own.nextInt(rounds.size())), assignment, own, s >= 0 ? tally : null);
      }
    }
    return tally.sampled(reduced, asked, sweeps);
  }

  private static void sweep(
      Blocks.Round round, int[] assignment, SplittableRandom random, @Nullable Tally tally) {
    for (Block block : round.large()) {
      CliqueTree.Collected collected = block.collect(assignment);
      if (tally != null) {
        tally.add(block.lastTable(collected));
      }
      block.draw(collected, assignment, random);
    }
    for (Block block : round.small()) {
      block.draw(block.collect(assignment), assignment, random);
    }
    if (tally != null) {
      tally.count(assignment);
    }
  }

  private static int[] lastFirst(Reduced reduced, int[] asked) {
    int count = 0;
    int[] last = new int[asked.length];
    for (int i = asked.length - 1; i >= 0; i--) {
      if (reduced.remaining[asked[i]] >= 0) {
        last[count++] = reduced.remaining[asked[i]];
      }
    }
    return Arrays.copyOf(last, count);
  }

  /** Sums while sampling. */
  private static final class Tally {

    private final double[] sums;
    private final double[] means;
    private final double[] squares;
    private final int[][] counts;
    private int added;
    private int batch;
    private int batches;

    Tally(int[] states, int size) {
      sums = new double[size];
      means = new double[size];
      squares = new double[size];
      counts = new int[states.length][];
      for (int v = 0; v < states.length; v++) {
        counts[v] = new int[states[v]];
      }
    }

    void turnTo(int next) {
      if (next != batch) {
        closeBatch();
        batch = next;
      }
    }

    /** Takes the mean of a batch into the mean of means and the squares around it (Welford). */
    private void closeBatch() {
      batches++;
      for (int i = 0; i < sums.length; i++) {
        double mean = sums[i] / added;
        double before = mean - means[i];
        means[i] += before / batches;
        squares[i] += before * (mean - means[i]);
        sums[i] = 0;
      }
      added = 0;
    }

    void add(double[] joint) {
      for (int i = 0; i < sums.length; i++) {
        sums[i] += joint[i];
      }
      added++;
    }

    void count(int[] assignment) {
      for (int v = 0; v < assignment.length; v++) {
        counts[v][assignment[v]]++;
      }
    }

    Sampled sampled(Reduced reduced, int[] asked, int sweeps) {
      closeBatch();
      double[] errors = new double[squares.length];
      for (int i = 0; i < errors.length; i++) {
        errors[i] = Math.sqrt(squares[i] / (batches * (batches - 1.0)));
      }
      return new Sampled(
          reduced,
          Expansion.joint(reduced, asked, means),
          Expansion.joint(reduced, asked, errors),
          sweeps,
          counts);
    }
  }
}
