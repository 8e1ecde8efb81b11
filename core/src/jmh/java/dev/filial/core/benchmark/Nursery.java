package dev.filial.core.benchmark;

import dev.filial.core.pedigree.PlantRecord;
import java.util.Random;

/**
 * A made-up nursery of a million plants: 40,000 founders of 12 taxa, then 20 generations of 48,000
 * seedlings, each of two parents drawn at random from the generation before; in shuffled order, every
 * code a string of its own as if read from a file.
 */
final class Nursery {

  static final int FOUNDERS = 40_000;
  static final int GENERATIONS = 20;
  static final int A_GENERATION = 48_000;
  static final int PLANTS = FOUNDERS + GENERATIONS * A_GENERATION;
  static final int TAXA = 12;

  final String[] codes = new String[PLANTS];
  final String[] seed = new String[PLANTS];
  final String[] pollen = new String[PLANTS];
  final String[] taxa = new String[PLANTS];

  /** The nursery that this number gives. */
  Nursery(long number) {
    Random random = new Random(number);
    int[] place = new int[PLANTS];
    for (int i = 0; i < PLANTS; i++) {
      int other = random.nextInt(i + 1);
      place[i] = place[other];
      place[other] = i;
    }
    // Filled in shuffled order, so that strings lie in memory in the order of the records.
    for (int row = 0; row < PLANTS; row++) {
      int plant = place[row];
      codes[row] = code(plant);
      if (plant < FOUNDERS) {
        taxa[row] = "Taxon " + (char) ('A' + plant % TAXA);
      } else {
        int generation = (plant - FOUNDERS) / A_GENERATION;
        int from = generation == 0 ? 0 : FOUNDERS + (generation - 1) * A_GENERATION;
        int count = generation == 0 ? FOUNDERS : A_GENERATION;
        seed[row] = code(from + random.nextInt(count));
        pollen[row] = code(from + random.nextInt(count));
      }
    }
  }

  private static String code(int plant) {
    int year = plant < FOUNDERS ? 0 : 1 + (plant - FOUNDERS) / A_GENERATION;
    int number = plant < FOUNDERS ? plant : (plant - FOUNDERS) % A_GENERATION;
    int digits = year * 100_000 + number;
    String text = Integer.toString(10_000_000 + digits).substring(1);
    return text.substring(0, 2)
        + '-'
        + text.substring(2)
        + "ACDEHJKLMNPRTVWXY".charAt(digits % 17);
  }

  /** The same nursery as records. */
  PlantRecord[] records() {
    PlantRecord[] records = new PlantRecord[PLANTS];
    for (int i = 0; i < PLANTS; i++) {
      records[i] =
          seed[i] == null
              ? PlantRecord.pure(codes[i], taxa[i])
              : PlantRecord.cross(codes[i], seed[i], pollen[i]);
    }
    return records;
  }
}
