package dev.filial.core.inference;

import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.StatedGeneration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The plants of a pedigree as genotypes: each clone once, in the ways in which it may have come
 * about, with plants that a stated generation stands for in between. Parents have lower numbers
 * than their offspring.
 */
final class Lineages {

  private final Pedigree pedigree;
  private final FounderPriors priors;
  private final Assumptions assumptions;
  private final List<List<Way>> ways = new ArrayList<>();
  private final List<Form> forms = new ArrayList<>();
  private final int[] numbers;
  private final Map<String, Integer> cultivars = new HashMap<>();
  private final Map<String, Integer> others = new HashMap<>();
  private final Map<Integer, String> drawings = new HashMap<>();
  private final Map<Integer, List<Integer>> casesOfWays = new HashMap<>();

  private Lineages(Pedigree pedigree, FounderPriors priors, Assumptions assumptions) {
    this.pedigree = pedigree;
    this.priors = priors;
    this.assumptions = assumptions;
    this.numbers = new int[pedigree.size()];
    Arrays.fill(numbers, -1);
  }

  /**
   * Of these plants and all behind them.
   *
   * @throws IllegalArgumentException if a plant's genes cannot be reckoned with; the message names
   *     it and says why
   */
  static Lineages of(
      Pedigree pedigree, FounderPriors priors, Assumptions assumptions, BitSet plants) {
    Lineages lineages = new Lineages(pedigree, priors, assumptions);
    for (int plant = plants.nextSetBit(0); plant >= 0; plant = plants.nextSetBit(plant + 1)) {
      lineages.add(plant);
    }
    return lineages;
  }

  int size() {
    return ways.size();
  }

  /** How many alleles are drawn from taxa, and so how finely unknown frequencies matter. */
  int draws() {
    int draws = 2;
    for (List<Way> its : ways) {
      for (Way way : its) {
        draws += drawnSets(way);
      }
    }
    return draws;
  }

  /** How many alleles each seedling of a family draws from taxa, in the way in which it is most. */
  static int draws(List<Way> family) {
    return family.stream().mapToInt(Lineages::drawnSets).max().orElse(0);
  }

  private static int drawnSets(Way way) {
    if (way instanceof Way.Union union) {
      return drawnSets(union.egg()) + drawnSets(union.grain());
    }
    return way instanceof Way.Twice twice ? drawnSets(twice.gamete()) : 0;
  }

  private static int drawnSets(Gift gift) {
    return gift instanceof Gift.Drawn ? gift.form().sets() : 0;
  }

  List<Way> ways(int number) {
    return ways.get(number);
  }

  Form form(int number) {
    return forms.get(number);
  }

  /** The number of the genotype of a plant of the pedigree. */
  int number(String plant) {
    return numbers[pedigree.indexOf(plant)];
  }

  /**
   * In which ways seedlings of the family of a plant came about. What repeats another plant for
   * certain has that one's genotype and number, but its family are the seeds of that one.
   */
  List<Way> family(String plant) {
    int at = pedigree.indexOf(plant);
    while (pedigree.isRamet(at) && !pedigree.isDoubled(at) && !isDoubtful(pedigree.code(at))) {
      at = pedigree.rametOf(at);
    }
    List<Descent> descents = pedigree.descents(at);
    if (!isDoubtful(pedigree.code(at))
        && descents.size() == 1
        && descents.get(0) instanceof Descent.Copy copy
        && !isOfMixedLot(copy)) {
      return List.of(new Way.Again(1, numbers[copy.of()]));
    }
    return ways.get(numbers[at]);
  }

  private boolean isDoubtful(String code) {
    return assumptions.unknownOrigin().contains(code) || assumptions.sports().contains(code);
  }

  /** What the drawing of this plant's pollen parent is called, if it is shared with others. */
  Optional<String> drawing(int number) {
    return Optional.ofNullable(drawings.get(number));
  }

  /** A seedling that nobody raised yet. */
  int cross(int seed, int pollen) {
    return added(List.of(new Way.Union(1, ofPlant(seed, -1), ofPlant(pollen, -1))));
  }

  private int added(List<Way> its) {
    Form form = formOf(its.get(0));
    for (Way way : its) {
      Form here = formOf(way);
      if (!form.equals(here)) {
        throw new IllegalArgumentException(
            "a plant may have "
                + form.sets()
                + " chromosome sets or "
                + here.sets()
                + ", by the way it came about, and odds are not reckoned over both; say which way"
                + " it was");
      }
    }
    ways.add(List.copyOf(its));
    forms.add(form);
    return ways.size() - 1;
  }

  private Form formOf(Way way) {
    if (way instanceof Way.Union union) {
      return GenomeStates.joined(union.egg().form(), union.grain().form());
    }
    if (way instanceof Way.Twice twice) {
      return GenomeStates.joined(twice.gamete().form(), twice.gamete().form());
    }
    if (way instanceof Way.Doubled doubled) {
      return ofSets(2 * forms.get(doubled.plant()).sets());
    }
    return forms.get(((Way.Again) way).plant());
  }

  private Form ofSets(int sets) {
    return new Form(sets, sets == 4 && assumptions.isDisomic());
  }

  private Form gameteOfSets(int sets) {
    return new Form(sets, sets == 2 && assumptions.isDisomic());
  }

  private void add(int plant) {
    String code = pedigree.code(plant);
    try {
      numbers[plant] = numberOf(plant, code);
    } catch (IllegalArgumentException e) {
      throw new IllegalArgumentException(code + ": " + e.getMessage(), e);
    }
    if (assumptions.onePollinator().containsKey(code)) {
      drawings.put(numbers[plant], assumptions.onePollinator().get(code));
    }
  }

  private int numberOf(int plant, String code) {
    if (isDoubtful(code)) {
      int sets = pedigree.ploidy(plant);
      boolean doubted = assumptions.unknownOrigin().contains(code);
      return founder(doubted ? FounderPriors.DOUBTED : FounderPriors.UNKNOWN, sets == 0 ? 2 : sets);
    }
    if (pedigree.isRamet(plant)) {
      int source = numbers[pedigree.rametOf(plant)];
      return pedigree.isDoubled(plant) ? added(List.of(new Way.Doubled(1, source))) : source;
    }
    Founder founder = pedigree.founder(plant);
    if (founder != null) {
      if (founder.cultivar() == null) {
        return founder(founder);
      }
      String name = founder.makeup().shares().keySet() + " '" + founder.cultivar() + "'";
      Integer known = cultivars.get(name);
      if (known == null) {
        known = founder(founder);
        cultivars.put(name, known);
      }
      return known;
    }
    List<Descent> descents = pedigree.descents(plant);
    if (descents.size() == 1 && descents.get(0) instanceof Descent.Copy copy) {
      return numbers[copy.of()];
    }
    List<Way> its = new ArrayList<>();
    List<Integer> cases = new ArrayList<>();
    for (int i = 0; i < descents.size(); i++) {
      for (Way way : ways(descents.get(i), code)) {
        its.add(way);
        cases.add(i);
      }
    }
    int number = added(its);
    if (its.size() > descents.size()) {
      casesOfWays.put(number, cases);
    }
    return number;
  }

  /**
   * In which of its cases a plant of several came about, by the number of its way: a case whose
   * seed was of several kinds itself is as many ways.
   */
  int caseOf(int number, int way) {
    List<Integer> cases = casesOfWays.get(number);
    return cases == null ? way : cases.get(way);
  }

  /**
   * Seed of a mixed lot is not the seedling that stands for its cross, but another such: it came
   * about in the same ways, and each seed of the lot by itself.
   */
  private List<Way> ways(Descent descent, String code) {
    if (descent instanceof Descent.Copy copy && isOfMixedLot(copy)) {
      double share = descent.share().toDouble();
      return ways.get(numbers[copy.of()]).stream()
          .map(way -> way.sharing(share * way.share()))
          .toList();
    }
    return List.of(way(descent, code));
  }

  /** A cultivar's plants are one genotype, from whatever lot. */
  private boolean isOfMixedLot(Descent.Copy copy) {
    Founder founder = pedigree.founder(copy.of());
    return copy.route() == Route.LOT_SHARE && (founder == null || founder.cultivar() == null);
  }

  private Way way(Descent descent, String code) {
    double share = descent.share().toDouble();
    if (descent instanceof Descent.Copy copy) {
      return new Way.Again(share, numbers[copy.of()]);
    }
    Descent.Sexual sexual = (Descent.Sexual) descent;
    Gift egg = gift(sexual.seed(), sexual.seedSets());
    String stranger = assumptions.otherPollen().get(code);
    if (stranger == null && sexual.pollen() == Pedigree.UNKNOWN) {
      // One pollinator of a whole fruit is one plant, though nobody knows which.
      stranger = assumptions.onePollinator().get(code);
    }
    if (stranger == null) {
      return new Way.Union(share, egg, gift(sexual.pollen(), sexual.pollenSets()));
    }
    Integer other = others.get(stranger);
    if (other == null) {
      other = founder(FounderPriors.UNKNOWN, 2 * sexual.pollenSets());
      others.put(stranger, other);
    }
    return new Way.Union(share, egg, ofPlant(other, sexual.pollenSets()));
  }

  private Gift gift(int plant, int sets) {
    return plant == Pedigree.UNKNOWN
        ? new Gift.Drawn(FounderPriors.UNKNOWN, gameteOfSets(sets))
        : ofPlant(numbers[plant], sets);
  }

  /**
   * A gamete of a plant.
   *
   * @param sets how many sets it has; below 0 for half of the plant's
   */
  private Gift ofPlant(int number, int sets) {
    Form plant = forms.get(number);
    Meiosis meiosis;
    if (plant.sets() == 3) {
      if (sets < 0) {
        throw new IllegalArgumentException(
            "a triploid's gametes have one set or two, and it is not said which");
      }
      meiosis = new Meiosis.OfTriploid(sets);
    } else if (sets >= 0 && 2 * sets != plant.sets()) {
      throw new IllegalArgumentException(
          "a gamete of "
              + sets
              + " chromosome sets came from a plant of "
              + plant.sets()
              + ", and how such a gamete formed is not stated; odds over the pedigree are reckoned"
              + " for gametes of half the sets");
    } else {
      meiosis = plant.sets() == 4 && !plant.apart() ? assumptions.tetraploids() : Meiosis.REDUCED;
    }
    return new Gift.Of(number, plant, meiosis, GenomeStates.gameteOf(plant, meiosis));
  }

  private int founder(Founder founder) {
    Optional<StatedGeneration> stated = founder.stated();
    if (stated.isPresent() && founder.ploidy() % 2 == 0) {
      return stated(stated.get(), founder.ploidy());
    }
    Map<String, Double> taxa = new HashMap<>();
    founder.makeup().shares().forEach((taxon, share) -> taxa.put(taxon, share.toDouble()));
    if (!founder.makeup().unknownShare().isZero()) {
      taxa.put(FounderPriors.UNKNOWN, founder.makeup().unknownShare().toDouble());
    }
    if (taxa.size() == 1) {
      return founder(taxa.keySet().iterator().next(), founder.ploidy());
    }
    if (founder.ploidy() != 2) {
      throw new IllegalArgumentException(
          "a hybrid of stated shares with "
              + founder.ploidy()
              + " chromosome sets has no odds here; state its generation, or its parents");
    }
    // Two independent draws from the mixture: each set is of one of the taxa.
    List<Way> its = new ArrayList<>();
    taxa.forEach(
        (egg, ofEggs) ->
            taxa.forEach(
                (grain, ofGrains) ->
                    its.add(new Way.Union(ofEggs * ofGrains, drawn(egg, 1), drawn(grain, 1)))));
    return added(its);
  }

  private Gift drawn(String taxon, int sets) {
    return new Gift.Drawn(taxon, gameteOfSets(sets));
  }

  private int founder(String taxon, int sets) {
    double inbred = priors.inbreeding(taxon).toDouble();
    if (sets % 2 != 0) {
      return added(List.of(new Way.Union(1, drawn(taxon, sets / 2 + 1), drawn(taxon, sets / 2))));
    }
    Gift gamete = drawn(taxon, sets / 2);
    if (inbred == 0 || sets != 2) {
      return added(List.of(new Way.Union(1, gamete, gamete)));
    }
    List<Way> its = new ArrayList<>(List.of(new Way.Twice(inbred, gamete)));
    if (inbred < 1) {
      its.add(new Way.Union(1 - inbred, gamete, gamete));
    }
    return added(its);
  }

  /** Plants that stand for the generations a donor stated. */
  private int stated(StatedGeneration generation, int sets) {
    Gift first = drawn(generation.first(), sets / 2);
    Gift second = drawn(generation.second(), sets / 2);
    // Which of the two bore the seed is not stated.
    int plant =
        added(List.of(new Way.Union(0.5, first, second), new Way.Union(0.5, second, first)));
    int selfings;
    if (generation instanceof StatedGeneration.Backcross back) {
      for (int i = 0; i < back.generation(); i++) {
        plant = added(List.of(new Way.Union(1, ofPlant(plant, -1), first)));
      }
      selfings = back.filial() - 1;
    } else {
      selfings = ((StatedGeneration.Filial) generation).generation() - 1;
    }
    for (int i = 0; i < selfings; i++) {
      plant = added(List.of(new Way.Union(1, ofPlant(plant, -1), ofPlant(plant, -1))));
    }
    return plant;
  }
}
