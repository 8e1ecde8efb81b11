package dev.filial.core.benchmark;

import dev.filial.core.pedigree.Pedigree;
import java.util.Random;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The plants of a society's register: twenty overlapping generations. A plant's parents are of the
 * generation before it, and in one case of four of the one before that.
 */
final class Society {

  static final int GENERATIONS = 20;
  static final int PARENTS = 100;

  private static final long SEED = 20_261_125;

  private Society() {}

  /**
   * A pedigree of so many plants.
   *
   * @param parents how many of each generation have offspring; 0 if all of them have: each is then
   *     the seed parent of one plant of the next
   */
  static Pedigree of(int plants, int parents) {
    Random random = new Random(SEED);
    int size = plants / GENERATIONS;
    int[][] chosen = new int[GENERATIONS][];
    String[] codes = new String[plants];
    @Nullable String[] seed = new String[plants];
    @Nullable String[] pollen = new String[plants];
    @Nullable String[] taxa = new String[plants];
    for (int generation = 0; generation < GENERATIONS; generation++) {
      int first = generation * size;
      for (int i = first; i < first + size; i++) {
        codes[i] = "P" + i;
        if (generation == 0) {
          taxa[i] = "Echeveria laui";
        } else {
          seed[i] =
              codes[
                  parents == 0
                      ? chosen[generation - 1][i - first]
                      : parent(chosen, generation, random)];
          pollen[i] = codes[parent(chosen, generation, random)];
        }
      }
      chosen[generation] =
          parents == 0
              ? IntStream.range(first, first + size).toArray()
              : random.ints(first, first + size).distinct().limit(parents).toArray();
    }
    return Pedigree.ofParents(codes, seed, pollen, taxa);
  }

  private static int parent(int[][] chosen, int generation, Random random) {
    int[] of = chosen[generation - (generation > 1 && random.nextInt(4) == 0 ? 2 : 1)];
    return of[random.nextInt(of.length)];
  }
}
