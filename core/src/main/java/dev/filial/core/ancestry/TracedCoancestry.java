package dev.filial.core.ancestry;

import java.util.Arrays;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;

/**
 * Coancestries of any number of genotypes from θ = T D Tᵀ without writing θ down: each pair of
 * parents is traced back once (Meuwissen and Luo 1992, Genetics Selection Evolution 24:305-313),
 * the pairs of a level side by side. Memory is linear in the genotypes; time is the genotypes
 * behind each pair, summed over the pairs.
 */
final class TracedCoancestry implements Kin {

  private static final int CHUNK = 64;

  private final GeneFlow flow;
  private final SetPairs sets;
  private final double[] inbreeding;
  private final double[] self;

  /** What a genotype adds that is not its parents': the diagonal of D. */
  private final double[] own;

  private final ConcurrentLinkedQueue<Trace> idle = new ConcurrentLinkedQueue<>();

  private TracedCoancestry(GeneFlow flow, SetPairs sets) {
    this.flow = flow;
    this.sets = sets;
    inbreeding = new double[flow.size()];
    self = new double[flow.size()];
    own = new double[flow.size()];
  }

  static TracedCoancestry of(GeneFlow flow, SetPairs sets) {
    TracedCoancestry result = new TracedCoancestry(flow, sets);
    int[] starts = flow.levelStarts();
    for (int level = 0; level + 1 < starts.length; level++) {
      result.fillLevel(starts[level], starts[level + 1]);
    }
    return result;
  }

  private void fillLevel(int from, int to) {
    long[] pairs = new long[to - from];
    int plain = 0;
    for (int i = from; i < to; i++) {
      if (flow.isFounder(i)) {
        self[i] = 1.0 / flow.ploidy(i);
        own[i] = self[i];
      } else if (flow.isPlain(i)) {
        pairs[plain++] = pair(flow.seed(i), flow.pollen(i));
      } else {
        fillMixed(i);
      }
    }
    long[] each = distinct(Arrays.copyOf(pairs, plain));
    double[] theta = ofPairs(each);
    for (int i = from; i < to; i++) {
      if (!flow.isFounder(i) && flow.isPlain(i)) {
        int seed = flow.seed(i);
        int pollen = flow.pollen(i);
        inbreeding[i] = theta[Arrays.binarySearch(each, pair(seed, pollen))];
        self[i] = SetPairs.self(inbreeding[i], 2);
        own[i] = 0.5 - 0.25 * (selfOf(seed) + selfOf(pollen));
      }
    }
  }

  private double selfOf(int node) {
    return node < 0 ? 0 : self[node];
  }

  /** Own part of a plant of several ways, or of unlike gametes: what its parents do not explain. */
  private void fillMixed(int i) {
    GeneFlow.Way[] ways = flow.ways(i);
    inbreeding[i] = sets.inbreeding(ways, this);
    self[i] = sets.self(ways, this);
    Trace trace = trace();
    trace.addParents(i, 1);
    trace.run();
    own[i] = self[i] - trace.quadratic(own);
    idle.add(trace);
  }

  /** A pair of nodes as one number, whichever is which. */
  static long pair(int a, int b) {
    return ((long) (Math.min(a, b) + 1) << 32) | (Math.max(a, b) + 1);
  }

  /** The numbers, each once, in order. */
  static long[] distinct(long[] pairs) {
    Arrays.parallelSort(pairs);
    int kept = 0;
    for (int k = 0; k < pairs.length; k++) {
      if (k == 0 || pairs[k] != pairs[k - 1]) {
        pairs[kept++] = pairs[k];
      }
    }
    return Arrays.copyOf(pairs, kept);
  }

  /** The coancestries of many pairs. */
  double[] ofPairs(long[] pairs) {
    double[] theta = new double[pairs.length];
    int chunks = (pairs.length + CHUNK - 1) / CHUNK;
    IntStream.range(0, chunks)
        .parallel()
        .forEach(
            chunk -> {
              Trace trace = trace();
              int to = Math.min(pairs.length, (chunk + 1) * CHUNK);
              for (int k = chunk * CHUNK; k < to; k++) {
                theta[k] =
                    between((int) (pairs[k] >>> 32) - 1, (int) (pairs[k] & 0xffffffffL) - 1, trace);
              }
              idle.add(trace);
            });
    return theta;
  }

  private Trace trace() {
    Trace trace = idle.poll();
    return trace == null ? new Trace(flow) : trace;
  }

  @Override
  public double between(int a, int b) {
    Trace trace = trace();
    double theta = between(a, b, trace);
    idle.add(trace);
    return theta;
  }

  /** Of the sum of two rows, the square holds each with itself and the pair twice. */
  private double between(int a, int b, Trace trace) {
    if (a < 0 || b < 0) {
      return 0;
    }
    if (a == b) {
      return self[a];
    }
    trace.add(a, 0.5);
    trace.add(b, 0.5);
    trace.run();
    // Never below 0 but for rounding.
    return Math.max(0, 2 * trace.quadratic(own) - 0.5 * (self[a] + self[b]));
  }

  @Override
  public double inbreeding(int node) {
    return inbreeding[node];
  }

  @Override
  public double self(int node) {
    return self[node];
  }

  /** One column of T D Tᵀ: back along T, times D, and down again (Colleau 2002). */
  @Override
  public void row(int node, double[] out) {
    Arrays.fill(out, 0);
    Trace trace = trace();
    trace.add(node, 1);
    trace.run();
    for (int k = 0; k < trace.count(); k++) {
      out[trace.node(k)] = trace.part(k) * own[trace.node(k)];
    }
    idle.add(trace);
    for (int i = 0; i < flow.size(); i++) {
      int young = i;
      flow.eachParent(
          i,
          (parent, weight) -> {
            if (parent >= 0) {
              out[young] += weight * out[parent];
            }
          });
    }
  }
}
