package dev.filial.core.pedigree;

import dev.filial.core.name.Notation;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The pedigree of a plant in the notation of Purdy and others 1968, as {@code A/B//C}.
 *
 * <p>Ramets and certain copies stand as the plant they repeat. What is no certain cross of two
 * plants ends the notation there and is a source, under a name the caller decides: founders,
 * unknown parents, and plants that may have come about in several ways. Ploidy and unreduced
 * gametes cannot be said in the notation.
 */
public final class NotationOf {

  private NotationOf() {}

  /** What the sources of a pedigree are called. */
  public interface Names {

    /** The name of a founder. */
    String founder(String code, Founder founder);

    /** The name of a plant that may have come about in several ways. */
    String mixture(String code, List<Case> cases);

    /** The name of the unknown seed or pollen parent of a plant. */
    String unknownParent(String offspring);

    /**
     * A pure founder by its taxon and any other by its code; a mixture by its code; an unknown
     * parent as {@code unknown}.
     */
    static Names byTaxon() {
      return new Names() {
        @Override
        public String founder(String code, Founder founder) {
          return founder.standing() == Standing.PURE ? founder.makeup().shares().firstKey() : code;
        }

        @Override
        public String mixture(String code, List<Case> cases) {
          return code;
        }

        @Override
        public String unknownParent(String offspring) {
          return "unknown";
        }
      };
    }
  }

  /**
   * The pedigree of the plant of this code. Every ancestor is one node, however often it is a
   * parent.
   *
   * @throws PedigreeException if there is no such plant
   * @throws IllegalArgumentException if a name given is blank or cannot stand in a notation
   */
  public static Notation of(Pedigree pedigree, String code, Names names) {
    int plant = pedigree.genet(pedigree.indexOf(code));
    BitSet needed = needed(pedigree, plant);
    Notation.Builder builder = new Notation.Builder();
    Map<Integer, Integer> nodes = new HashMap<>();
    for (int i = needed.nextSetBit(0); i >= 0; i = needed.nextSetBit(i + 1)) {
      nodes.put(i, node(pedigree, i, names, builder, nodes));
    }
    return builder.build();
  }

  /** The genotypes on the certain ways back from the plant. */
  private static BitSet needed(Pedigree pedigree, int plant) {
    BitSet needed = new BitSet(plant + 1);
    needed.set(plant);
    for (int i = plant; i >= 0; i = needed.previousSetBit(i - 1)) {
      if (pedigree.caseCount(i) == 1
          && pedigree.descents(i).get(0) instanceof Descent.Sexual cross) {
        if (cross.seed() >= 0) {
          needed.set(pedigree.genet(cross.seed()));
        }
        if (cross.pollen() >= 0) {
          needed.set(pedigree.genet(cross.pollen()));
        }
      }
    }
    return needed;
  }

  private static int node(
      Pedigree pedigree,
      int plant,
      Names names,
      Notation.Builder builder,
      Map<Integer, Integer> nodes) {
    Founder founder = pedigree.founder(plant);
    String code = pedigree.code(plant);
    if (founder != null) {
      return builder.source(names.founder(code, founder));
    }
    if (pedigree.caseCount(plant) > 1) {
      return builder.source(names.mixture(code, pedigree.cases(plant)));
    }
    Descent.Sexual cross = (Descent.Sexual) pedigree.descents(plant).get(0);
    int seed = parent(pedigree, cross.seed(), code, names, builder, nodes);
    int pollen = parent(pedigree, cross.pollen(), code, names, builder, nodes);
    return builder.cross(seed, pollen);
  }

  private static int parent(
      Pedigree pedigree,
      int parent,
      String offspring,
      Names names,
      Notation.Builder builder,
      Map<Integer, Integer> nodes) {
    Integer node = parent < 0 ? null : nodes.get(pedigree.genet(parent));
    return node == null ? builder.source(names.unknownParent(offspring)) : node;
  }
}
