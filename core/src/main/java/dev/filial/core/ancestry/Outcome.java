package dev.filial.core.ancestry;

import dev.filial.core.ancestry.GenerationClass.Alternative;
import dev.filial.core.ancestry.GenerationClass.Mixture;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BinaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * The lineages a plant may have, each under the choices it hangs on.
 *
 * <p>A choice says which case a plant of several cases came about by. Two parents that hang on the
 * same choice must agree on it, so a doubtful plant selfed is not crossed with what it might have
 * been instead.
 */
record Outcome(List<Way> ways) {

  /** More ways than this and the class is no help to anybody. */
  private static final int MOST_WAYS = 256;

  /** As many are looked through, to see whether they are all of one class. */
  private static final int MOST_LOOKED_THROUGH = 4096;

  /**
   * A lineage and what it hangs on.
   *
   * @param choices the plant that has several cases, to the case taken and its share
   * @param lineage what the plant is then
   */
  record Way(Map<Integer, Choice> choices, Lineage lineage) {
    Fraction share() {
      Fraction share = Fraction.ONE;
      for (Choice choice : choices.values()) {
        share = share.times(choice.share());
      }
      return share;
    }
  }

  /** The number of a case, and its share. */
  record Choice(int number, Fraction share) {}

  static Outcome certain(Lineage lineage) {
    return new Outcome(List.of(new Way(Map.of(), lineage)));
  }

  /** What comes of two parents. */
  static Outcome cross(Outcome seed, Outcome pollen, int plant, BinaryOperator<Lineage> rule) {
    List<Way> ways = new ArrayList<>();
    for (Way s : seed.ways) {
      for (Way p : pollen.ways) {
        if (s.choices.isEmpty() && p.choices.isEmpty()) {
          return certain(rule.apply(s.lineage, p.lineage));
        }
        Map<Integer, Choice> both = agreed(s.choices, p.choices);
        if (both != null) {
          ways.add(new Way(both, rule.apply(s.lineage, p.lineage)));
        }
        if (ways.size() > MOST_LOOKED_THROUGH) {
          return tooMany(plant);
        }
      }
    }
    return few(ways, plant);
  }

  /** What comes of a plant's own cases, each with its outcome. */
  static Outcome ofCases(List<Outcome> cases, List<Fraction> shares, int plant) {
    List<Way> ways = new ArrayList<>();
    for (int k = 0; k < cases.size(); k++) {
      for (Way way : cases.get(k).ways) {
        Map<Integer, Choice> choices = new TreeMap<>(way.choices);
        choices.put(plant, new Choice(k, shares.get(k)));
        ways.add(new Way(choices, way.lineage));
      }
    }
    return few(ways, plant);
  }

  private static Outcome settled(List<Way> ways) {
    Lineage first = ways.get(0).lineage;
    boolean same = ways.stream().allMatch(way -> way.lineage.equals(first));
    return same ? certain(first) : new Outcome(ways);
  }

  private static Outcome few(List<Way> ways, int plant) {
    return ways.size() > MOST_WAYS ? alikeInClass(ways, plant) : settled(ways);
  }

  /**
   * Where the ways are too many to be kept apart: their class if it is one, whichever of the plants
   * of a taxon it came about by; which they were is then no longer known.
   */
  private static Outcome alikeInClass(List<Way> ways, int plant) {
    Lineage first = ways.get(0).lineage;
    GenerationClass common = whicheverPlants(first.generation());
    for (Way way : ways) {
      Lineage other = way.lineage;
      if (!whicheverPlants(other.generation()).equals(common)
          || !other.sources().equals(first.sources())
          || other.least() != first.least()
          || other.most() != first.most()) {
        return tooMany(plant);
      }
    }
    return certain(
        new Lineage(
            common,
            plant,
            Pedigree.UNKNOWN,
            Pedigree.UNKNOWN,
            Pedigree.UNKNOWN,
            Pedigree.UNKNOWN,
            first.sources(),
            first.least(),
            first.most()));
  }

  private static GenerationClass whicheverPlants(GenerationClass generation) {
    return generation instanceof GenerationClass.Backcross bc
        ? new GenerationClass.Backcross(
            bc.generation(),
            bc.recurrent(),
            bc.donor(),
            Recurrent.NOT_KNOWN,
            bc.filial(),
            bc.last(),
            bc.steps())
        : generation;
  }

  private static Outcome tooMany(int plant) {
    return certain(
        Lineage.unclassified(
            "too many plants behind it may have come about in several ways", plant));
  }

  /** The choices of both, or null if they contradict each other. */
  private static @Nullable Map<Integer, Choice> agreed(
      Map<Integer, Choice> one, Map<Integer, Choice> other) {
    Map<Integer, Choice> both = new TreeMap<>(one);
    for (Map.Entry<Integer, Choice> entry : other.entrySet()) {
      Choice held = both.put(entry.getKey(), entry.getValue());
      if (held != null && held.number() != entry.getValue().number()) {
        return null;
      }
    }
    return both;
  }

  /** The class, or the classes with their shares. */
  GenerationClass generation() {
    if (ways.size() == 1) {
      return ways.get(0).lineage.settled();
    }
    Map<GenerationClass, Fraction> classes = new LinkedHashMap<>();
    for (Way way : ways) {
      classes.merge(way.lineage.settled(), way.share(), Fraction::plus);
    }
    if (classes.size() == 1) {
      return classes.keySet().iterator().next();
    }
    List<Alternative> alternatives = new ArrayList<>();
    classes.forEach((generation, share) -> alternatives.add(new Alternative(share, generation)));
    alternatives.sort((one, other) -> other.share().compareTo(one.share()));
    return new Mixture(alternatives);
  }
}
