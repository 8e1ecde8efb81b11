package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Pedigree;
import java.util.List;
import java.util.Random;

/**
 * One locus of a pedigree by chance: each founder's sets bear an allele of their own, as does each
 * gamete of a plant nobody knows, and gametes take sets of their parent without putting back.
 */
final class DroppedAlleles {

  private final Random random;
  private int next;

  DroppedAlleles(Random random) {
    this.random = random;
  }

  int[][] of(Pedigree pedigree) {
    int[][] alleles = new int[pedigree.size()][];
    for (int i = 0; i < alleles.length; i++) {
      if (pedigree.isFounder(i)) {
        alleles[i] = fresh(pedigree.ploidy(i));
      } else if (pedigree.isRamet(i)) {
        alleles[i] = alleles[pedigree.rametOf(i)];
      } else {
        Descent way = chosen(pedigree.descents(i));
        if (way instanceof Descent.Sexual cross) {
          alleles[i] = new int[cross.ploidy()];
          take(alleles, cross.seed(), cross.seedSets(), alleles[i], 0);
          take(alleles, cross.pollen(), cross.pollenSets(), alleles[i], cross.seedSets());
        } else {
          alleles[i] = alleles[((Descent.Copy) way).of()];
        }
      }
    }
    return alleles;
  }

  private Descent chosen(List<Descent> ways) {
    double left = random.nextDouble();
    for (Descent way : ways) {
      left -= way.share().toDouble();
      if (left < 0) {
        return way;
      }
    }
    return ways.get(ways.size() - 1);
  }

  private int[] fresh(int sets) {
    int[] alleles = new int[sets];
    for (int i = 0; i < sets; i++) {
      alleles[i] = next++;
    }
    return alleles;
  }

  private void take(int[][] alleles, int parent, int sets, int[] out, int at) {
    int[] from = (parent < 0 ? fresh(sets) : alleles[parent]).clone();
    for (int k = 0; k < sets; k++) {
      int pick = k + random.nextInt(from.length - k);
      out[at + k] = from[pick];
      from[pick] = from[k];
    }
  }
}
