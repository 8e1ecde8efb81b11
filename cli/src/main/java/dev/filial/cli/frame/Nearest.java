package dev.filial.cli.frame;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class Nearest {

  private Nearest() {}

  /**
   * The candidate nearest to what was typed: the one it begins, or one a slip or two away
   * (insertion, deletion, replacement or swap of neighbours); nothing if none is near.
   */
  public static Optional<String> of(String typed, Collection<String> candidates) {
    String word = typed.toLowerCase(Locale.ROOT);
    // Two slips in a short word make any word of any other.
    int tolerance = Math.max(1, Math.min(2, word.length() / 3));
    return candidates.stream()
        .filter(candidate -> candidate.startsWith(word) || distance(word, candidate) <= tolerance)
        .min(Comparator.comparingInt(candidate -> distance(word, candidate)));
  }

  /** The optimal string alignment distance. */
  private static int distance(String one, String other) {
    int[][] cost = new int[one.length() + 1][other.length() + 1];
    for (int i = 0; i <= one.length(); i++) {
      for (int j = 0; j <= other.length(); j++) {
        if (i == 0 || j == 0) {
          cost[i][j] = i + j;
          continue;
        }
        int replaced = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int least = Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1);
        least = Math.min(least, cost[i - 1][j - 1] + replaced);
        boolean swapped =
            i > 1
                && j > 1
                && one.charAt(i - 1) == other.charAt(j - 2)
                && one.charAt(i - 2) == other.charAt(j - 1);
        cost[i][j] = swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
      }
    }
    return cost[one.length()][other.length()];
  }
}
