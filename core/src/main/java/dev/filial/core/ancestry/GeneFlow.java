package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The genotypes behind some plants, numbered 0 to size − 1 with parents before offspring, and what
 * each has of its parents. A ramet or a certain apomict is no node of its own but its source again;
 * one with doubled chromosomes is.
 */
final class GeneFlow {

  static final int UNKNOWN = Pedigree.UNKNOWN;

  /** One way a genotype may have come about, parents by node. */
  sealed interface Way {
    double share();

    /** Two gametes; a parent is {@link #UNKNOWN} where nobody knows it. */
    record Cross(double share, int seed, int seedSets, int pollen, int pollenSets) implements Way {
      int ploidy() {
        return seedSets + pollenSets;
      }

      double seedWeight() {
        return (double) seedSets / ploidy();
      }

      double pollenWeight() {
        return (double) pollenSets / ploidy();
      }
    }

    /** Another genotype again, each allele twice if its chromosomes were doubled. */
    record Copy(double share, int of, boolean doubled) implements Way {}
  }

  private static final Way[] NONE = new Way[0];

  private final Pedigree pedigree;
  private final int[] plant;
  private final int[] node;
  private final int[] seed;
  private final int[] pollen;

  /** For those that are neither founders nor plain crosses. */
  private final Way[] @Nullable [] ways;

  private GeneFlow(Pedigree pedigree, BitSet members) {
    this.pedigree = pedigree;
    int size = members.cardinality();
    plant = new int[size];
    node = new int[pedigree.size()];
    seed = new int[size];
    pollen = new int[size];
    ways = new Way[size][];
    Arrays.fill(node, UNKNOWN);
    int i = 0;
    for (int p = members.nextSetBit(0); p >= 0; p = members.nextSetBit(p + 1)) {
      plant[i] = p;
      node[p] = i;
      fill(i, p);
      i++;
    }
  }

  /** All genotypes behind the plants, their own included. */
  static GeneFlow behind(Pedigree pedigree, int... plants) {
    BitSet members = new BitSet();
    int last = -1;
    for (int asked : plants) {
      int genotype = genotype(pedigree, asked);
      members.set(genotype);
      last = Math.max(last, genotype);
    }
    for (int p = last; p >= 0; p = p == 0 ? -1 : members.previousSetBit(p - 1)) {
      setParents(pedigree, p, members);
    }
    return new GeneFlow(pedigree, members);
  }

  /** All genotypes of a pedigree that are a parent of any plant in it. */
  static GeneFlow ofParents(Pedigree pedigree) {
    BitSet members = new BitSet(pedigree.size());
    for (int p = 0; p < pedigree.size(); p++) {
      if (genotype(pedigree, p) == p) {
        setParents(pedigree, p, members);
      }
    }
    return new GeneFlow(pedigree, members);
  }

  private static void setParents(Pedigree pedigree, int plant, BitSet members) {
    if (pedigree.isPlainCross(plant)) {
      set(pedigree, pedigree.seedParent(plant), members);
      set(pedigree, pedigree.pollenParent(plant), members);
    } else {
      for (int parent : pedigree.parents(plant)) {
        set(pedigree, parent, members);
      }
    }
  }

  private static void set(Pedigree pedigree, int parent, BitSet members) {
    if (parent != UNKNOWN) {
      members.set(genotype(pedigree, parent));
    }
  }

  /** The plant whose genotype this one is; of a doubled ramet, the ramet. */
  static int genotype(Pedigree pedigree, int plant) {
    int here = plant;
    while (true) {
      if (pedigree.isPlainCross(here) || pedigree.isFounder(here)) {
        return here;
      }
      if (pedigree.isRamet(here)) {
        if (pedigree.isDoubled(here)) {
          return here;
        }
        here = pedigree.rametOf(here);
      } else if (pedigree.caseCount(here) == 1
          && pedigree.descents(here).get(0) instanceof Descent.Copy copy) {
        here = copy.of();
      } else {
        return here;
      }
    }
  }

  private void fill(int i, int p) {
    seed[i] = UNKNOWN;
    pollen[i] = UNKNOWN;
    if (pedigree.isPlainCross(p) && pedigree.ploidy(p) == 2) {
      seed[i] = nodeOf(pedigree.seedParent(p));
      pollen[i] = nodeOf(pedigree.pollenParent(p));
    } else if (!pedigree.isFounder(p)) {
      ways[i] = waysOf(p);
    }
  }

  /** The ways a plant that is no founder may have come about; its parents have to be nodes. */
  Way[] waysOf(int p) {
    if (pedigree.isRamet(p)) {
      return new Way[] {new Way.Copy(1, nodeOf(pedigree.rametOf(p)), pedigree.isDoubled(p))};
    }
    List<Way> all = new ArrayList<>();
    for (Descent descent : pedigree.descents(p)) {
      double share = descent.share().toDouble();
      if (descent instanceof Descent.Sexual cross) {
        all.add(
            new Way.Cross(
                share,
                nodeOf(cross.seed()),
                cross.seedSets(),
                nodeOf(cross.pollen()),
                cross.pollenSets()));
      } else if (descent instanceof Descent.Copy copy) {
        all.add(new Way.Copy(share, nodeOf(copy.of()), false));
      }
    }
    return all.toArray(NONE);
  }

  Pedigree pedigree() {
    return pedigree;
  }

  int size() {
    return plant.length;
  }

  /** The pedigree's index of a node. */
  int plant(int i) {
    return plant[i];
  }

  /** The node a plant's genotype is, or {@link #UNKNOWN} if it is none of these or not known. */
  int nodeOf(int p) {
    return p == UNKNOWN ? UNKNOWN : node[genotype(pedigree, p)];
  }

  int ploidy(int i) {
    return pedigree.ploidy(plant[i]);
  }

  boolean isFounder(int i) {
    return pedigree.isFounder(plant[i]);
  }

  /** Whether the node is a founder or comes of one cross of two ordinary gametes of one set. */
  boolean isPlain(int i) {
    return ways[i] == null;
  }

  /** The seed parent of a plain cross; {@link #UNKNOWN} if not known, and for founders. */
  int seed(int i) {
    return seed[i];
  }

  /** The pollen parent of a plain cross; {@link #UNKNOWN} if not known, and for founders. */
  int pollen(int i) {
    return pollen[i];
  }

  /** The ways of a node that is not plain. */
  Way[] ways(int i) {
    Way @Nullable [] its = ways[i];
    return its == null ? NONE : its;
  }

  /** What takes the parents of a genotype. */
  interface ParentReader {
    /**
     * Takes a parent.
     *
     * @param parent a node, or {@link #UNKNOWN}
     * @param weight how likely a random allele is of it
     */
    void read(int parent, double weight);
  }

  /**
   * The parents of a genotype, or what it may repeat, by what share of it they gave; one may come
   * several times. None of a founder.
   */
  void eachParent(int i, ParentReader reader) {
    if (ways[i] != null) {
      eachParent(ways(i), reader);
    } else if (!isFounder(i)) {
      reader.read(seed[i], 0.5);
      reader.read(pollen[i], 0.5);
    }
  }

  static void eachParent(Way[] ways, ParentReader reader) {
    for (Way way : ways) {
      if (way instanceof Way.Cross cross) {
        reader.read(cross.seed(), cross.share() * cross.seedWeight());
        reader.read(cross.pollen(), cross.share() * cross.pollenWeight());
      } else if (way instanceof Way.Copy copy) {
        reader.read(copy.of(), copy.share());
      }
    }
  }

  /** Where the nodes of each level of the pedigree start; one entry more than there are levels. */
  int[] levelStarts() {
    int levels = pedigree.levels();
    int[] starts = new int[levels + 1];
    int i = 0;
    for (int level = 0; level < levels; level++) {
      while (i < plant.length && plant[i] < pedigree.levelStart(level)) {
        i++;
      }
      starts[level] = i;
    }
    starts[levels] = plant.length;
    return starts;
  }
}
