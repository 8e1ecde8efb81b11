package dev.filial.core.inference.factor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/** The rounds of a sampler: in each, every variable is in a block at least once. */
final class Blocks {

  private static final int ROUNDS = 4;
  private static final int MOST_IN_A_ROUND = 6;

  /**
   * One round: first blocks with the asked variables in them, then the variables they leave out.
   */
  record Round(List<Block> large, List<Block> small) {}

  private final Reduced reduced;
  private final int[][] neighbours;
  private final int[] asked;
  private final boolean[] isAsked;
  private final double bound;
  private final SplittableRandom random;
  private final int[] timesTaken;
  private final int[] local;
  private double cap;

  private Blocks(Reduced reduced, int[] asked, double bound, SplittableRandom random) {
    this.reduced = reduced;
    this.asked = asked;
    this.bound = bound;
    this.random = random;
    int n = reduced.states.length;
    int[][] scopes = Arrays.copyOf(reduced.scopes, reduced.scopes.length + 1);
    scopes[reduced.scopes.length] = asked;
    neighbours = GreedyOrder.neighbours(n, scopes);
    isAsked = new boolean[n];
    for (int v : asked) {
      isAsked[v] = true;
    }
    timesTaken = new int[n];
    local = new int[n];
    Arrays.fill(local, -1);
    cap = Math.min(bound, GreedyOrder.LARGEST_ARRAY);
  }

  /**
   * Plans the rounds.
   *
   * @param asked variables that are never out of a large block, in the order in which they are last
   */
  static List<Round> rounds(Reduced reduced, int[] asked, double bound, SplittableRandom random) {
    Blocks blocks = new Blocks(reduced, asked, bound, random);
    List<Round> rounds = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      Round round = blocks.round();
      rounds.add(round);
      if (round.large().size() == 1 && round.small().isEmpty()) {
        break;
      }
    }
    return List.copyOf(rounds);
  }

  private Round round() {
    int n = reduced.states.length;
    boolean[] covered = new boolean[n];
    int left = n;
    List<Block> large = new ArrayList<>();
    do {
      Block block = large();
      large.add(block);
      for (int v : block.variables()) {
        if (!covered[v]) {
          covered[v] = true;
          left--;
        }
      }
    } while (left > 0 && large.size() < MOST_IN_A_ROUND);
    List<Block> small = new ArrayList<>();
    for (int v = 0; v < n; v++) {
      if (!covered[v]) {
        Block block = block(new int[] {v}, new int[0], Double.MAX_VALUE / 4);
        if (block != null) {
          small.add(block);
        }
      }
    }
    return new Round(List.copyOf(large), List.copyOf(small));
  }

  private Block large() {
    while (true) {
      boolean[] taken =
          GreedyOrder.cutset(reduced.states, neighbours, isAsked, cap, timesTaken, random);
      int count = 0;
      for (boolean out : taken) {
        count += out ? 0 : 1;
      }
      int[] variables = new int[count];
      for (int v = taken.length - 1; v >= 0; v--) {
        if (!taken[v]) {
          variables[--count] = v;
        }
      }
      boolean smallest = cap <= 1;
      Block block = block(variables, asked, smallest ? Double.MAX_VALUE / 4 : bound);
      if (block != null) {
        return block;
      }
      // Each table is within the bound, but there are too many of them.
      cap = smallest ? cap : Math.max(1, cap / 3);
    }
  }

  private @Nullable Block block(int[] variables, int[] last, double allowed) {
    for (int i = 0; i < variables.length; i++) {
      local[variables[i]] = i;
    }
    int[] factors = new int[reduced.scopes.length];
    int count = 0;
    for (int f = 0; f < factors.length; f++) {
      for (int v : reduced.scopes[f]) {
        if (local[v] >= 0) {
          factors[count++] = f;
          break;
        }
      }
    }
    Block block = Block.of(reduced, variables, local, Arrays.copyOf(factors, count), last, allowed);
    for (int v : variables) {
      local[v] = -1;
    }
    return block;
  }
}
