package dev.filial.core.answer;

import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.List;

/** Parents in the order of hybrid formulas, the seed parent before the pollen parent. */
final class SeedFirst {

  private SeedFirst() {}

  /**
   * The parents of each way in which a plant may have come about, or the plant it is a copy of;
   * {@link Pedigree#UNKNOWN} for a parent nobody knows.
   */
  static List<Integer> parents(Pedigree pedigree, int plant) {
    List<Integer> parents = new ArrayList<>();
    if (pedigree.isRamet(plant)) {
      parents.add(pedigree.rametOf(plant));
    }
    for (Descent descent : pedigree.descents(plant)) {
      if (descent instanceof Descent.Sexual cross) {
        parents.add(cross.seed());
        parents.add(cross.pollen());
      } else if (descent instanceof Descent.Copy copy) {
        parents.add(copy.of());
      }
    }
    return parents;
  }
}
