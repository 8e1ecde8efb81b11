package dev.filial.core.inference.factor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
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
   * Plans the rounds. A table that rules something out ties its variables to each other: drawn one
   * at a time, given the others, they may never leave the state that they began in. So each such
   * table is whole in some large block.
   *
   * @param asked variables that are never out of a large block, in the order in which they are last
   * @throws StuckException if a table that ties variables fits into no block
   */
  static List<Round> rounds(Reduced reduced, int[] asked, double bound, SplittableRandom random) {
    Blocks blocks = new Blocks(reduced, asked, bound, random);
    List<Round> rounds = new ArrayList<>();
    for (int i = 0; i < ROUNDS; i++) {
      Round round = blocks.round();
      rounds.add(round);
      if (round.large().size() == 1 && round.small().isEmpty()) {
        return List.copyOf(rounds);
      }
    }
    List<Block> more = blocks.loosening(rounds);
    if (!more.isEmpty()) {
      // Each in a round of its own, after those of the first: a sweep stays as short as it was.
      Round first = rounds.get(0);
      for (Block block : more) {
        List<Block> large = new ArrayList<>(first.large());
        large.add(block);
        rounds.add(new Round(List.copyOf(large), first.small()));
      }
    }
    return List.copyOf(rounds);
  }

  /** Blocks that hold the tying tables which no block of these rounds holds whole. */
  private List<Block> loosening(List<Round> rounds) {
    List<BitSet> inside = new ArrayList<>();
    rounds.forEach(round -> round.large().forEach(block -> inside.add(in(block))));
    List<Block> more = new ArrayList<>();
    for (int f = 0; f < reduced.scopes.length; f++) {
      int[] scope = reduced.scopes[f];
      if (scope.length > 1
          && ties(reduced.tables[f])
          && inside.stream().noneMatch(block -> holds(block, scope))) {
        boolean[] kept = isAsked.clone();
        for (int v : scope) {
          kept[v] = true;
        }
        Block block = large(kept);
        if (block == null || !holds(in(block), scope)) {
          throw new StuckException(reduced.tables[f].length, bound);
        }
        more.add(block);
        inside.add(in(block));
      }
    }
    return more;
  }

  private static BitSet in(Block block) {
    BitSet variables = new BitSet();
    for (int v : block.variables()) {
      variables.set(v);
    }
    return variables;
  }

  private static boolean holds(BitSet block, int[] scope) {
    for (int v : scope) {
      if (!block.get(v)) {
        return false;
      }
    }
    return true;
  }

  private static boolean ties(double[] table) {
    for (double weight : table) {
      if (weight == 0) {
        return true;
      }
    }
    return false;
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
    Block block = large(isAsked);
    if (block != null) {
      return block;
    }
    return Objects.requireNonNull(block(asked, asked, Double.MAX_VALUE / 4));
  }

  /**
   * A large block.
   *
   * @param kept variables that are in it for certain; the asked ones are among them
   * @return null if the tables over these alone are past the bound
   */
  private @Nullable Block large(boolean[] kept) {
    while (true) {
      boolean[] taken =
          GreedyOrder.cutset(reduced.states, neighbours, kept, cap, timesTaken, random);
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
      Block block = block(variables, asked, bound);
      if (block != null || cap <= 1) {
        return block;
      }
      // Each table is within the bound, but there are too many of them.
      cap = Math.max(1, cap / 3);
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
