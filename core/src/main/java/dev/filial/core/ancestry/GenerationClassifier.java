package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Tells which generation a plant is, from the plants behind it.
 *
 * <p>F1: two pure parents of different sources. Fn: both parents F(n−1) of the same two sources, by
 * selfing, sib cross or between families, told apart. BC1 to T: an F1 crossed with T, whichever
 * bore the seed; BCn to T: BC(n−1) to T crossed with T. BCnFm: m − 1 generations of selfing or sib
 * cross after. Three-way: an F1 with a third source. Double cross: two F1s of four sources.
 * Anything else of known plants is complex and described. A hybrid of stated fractions has no class
 * unless its generation was stated, nor have its offspring, and a plant of a hybrid taxon is never
 * pure. Ramets have the class of their plant, and so have copies such as apomicts. Where a plant
 * may have come about in several ways it has the class all ways agree on, or else each with its
 * share.
 *
 * <p>Each ancestor is looked at once, without recursion.
 */
public final class GenerationClassifier {

  private final Pedigree pedigree;
  private final Level level;

  private GenerationClassifier(Pedigree pedigree, Level level) {
    this.pedigree = pedigree;
    this.level = level;
  }

  /** A classifier over taxa. */
  public static GenerationClassifier of(Pedigree pedigree) {
    return new GenerationClassifier(pedigree, Level.TAXON);
  }

  /** A classifier of the same pedigree over sources of another level. */
  public GenerationClassifier by(Level other) {
    return new GenerationClassifier(pedigree, other);
  }

  /**
   * The class of the plant of this code.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   */
  public GenerationClass classOf(String code) {
    int plant = pedigree.indexOf(code);
    return new Pass(pedigree.ancestors(plant)).known(plant).generation();
  }

  /** The class of every plant, by index. */
  public List<GenerationClass> all() {
    BitSet every = new BitSet(pedigree.size());
    every.set(0, pedigree.size());
    Pass pass = new Pass(every);
    List<GenerationClass> classes = new ArrayList<>(pedigree.size());
    for (int plant = 0; plant < pedigree.size(); plant++) {
      classes.add(pass.known(plant).generation());
    }
    return classes;
  }

  /** One way through some plants, parents first. */
  private final class Pass {
    private final Map<Integer, Outcome> known = new HashMap<>();

    Pass(BitSet plants) {
      for (int i = plants.nextSetBit(0); i >= 0; i = plants.nextSetBit(i + 1)) {
        known.put(i, outcome(i));
      }
    }

    Outcome known(int plant) {
      return Objects.requireNonNull(known.get(plant), "parents stand before their offspring");
    }

    private Outcome outcome(int plant) {
      Founder founder = pedigree.founder(plant);
      if (founder != null) {
        String code = pedigree.code(plant);
        return Outcome.certain(Lineage.founder(founder, plant, code, level));
      }
      if (pedigree.isRamet(plant)) {
        return known(pedigree.rametOf(plant));
      }
      List<Descent> descents = pedigree.descents(plant);
      if (descents.size() == 1) {
        return outcome(plant, descents.get(0));
      }
      List<Outcome> cases = new ArrayList<>();
      List<Fraction> shares = new ArrayList<>();
      for (Descent descent : descents) {
        cases.add(outcome(plant, descent));
        shares.add(descent.share());
      }
      return Outcome.ofCases(cases, shares, plant);
    }

    private Outcome outcome(int plant, Descent descent) {
      if (descent instanceof Descent.Copy copy) {
        return known(copy.of());
      }
      Descent.Sexual cross = (Descent.Sexual) descent;
      return Outcome.cross(
          parent(cross.seed(), "seed", plant),
          parent(cross.pollen(), "pollen", plant),
          plant,
          (seed, pollen) -> Crossing.of(level, seed, pollen, plant));
    }

    private Outcome parent(int parent, String role, int offspring) {
      if (parent != Pedigree.UNKNOWN) {
        return known(parent);
      }
      String reason = "the " + role + " parent of " + pedigree.code(offspring) + " is unknown";
      return Outcome.certain(Lineage.unclassified(reason, Pedigree.UNKNOWN));
    }
  }
}
