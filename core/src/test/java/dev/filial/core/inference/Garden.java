package dev.filial.core.inference;

import static dev.filial.core.heredity.Meiosis.tetrasomic;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Seedling;
import dev.filial.core.pedigree.Standing;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * Some plants at random with what was seen of them, and what is known of their taxa: to be told to
 * the library, and to be enumerated in plain terms by {@link Enumerated}.
 */
final class Garden {

  /** A taxon the plants below are of. */
  static final String LAUI = "Echeveria laui";

  /** Another. */
  static final String ALBA = "Echeveria alba";

  /** The taxon nobody knows. */
  static final String NOBODYS = FounderPriors.UNKNOWN;

  /** The genotype that dies where one does. */
  static final String DIES = "TT";

  /** The number that stands for pollen of nobody knows what. */
  static final int UNKNOWN = -1;

  /** A way in which a seedling came about; a copy has the plant it repeats as its seed parent. */
  record Way(Fraction share, int seed, int pollen, boolean copy) {}

  /**
   * A plant.
   *
   * @param taxon of a founder, else empty
   * @param again the number of the plant this is a ramet or a certain apomict of, or -1
   */
  record Plant(String code, Optional<String> taxon, int again, boolean ramet, List<Way> ways) {
    Plant {
      ways = List.copyOf(ways);
    }
  }

  /**
   * What genes there are.
   *
   * @param textbook how they are handed on
   * @param genome the same, as the library is told
   * @param traits those that are looked at, each called as its locus
   * @param sets of how many chromosome sets all plants are
   */
  record Kind(Textbook textbook, Genome genome, List<String> traits, int sets, Meiosis meiosis) {}

  private static final Locus TIPS = Locus.of("tips", "T", "t");

  /** One locus of diploids. */
  static Kind diploid() {
    return new Kind(
        Textbook.DIPLOID, Genome.unlinked(TIPS), List.of("tips"), 2, tetrasomic(Fraction.ZERO));
  }

  /** Two linked loci of diploids. */
  static Kind linked(Fraction recombination) {
    return new Kind(
        Textbook.linked(recombination.toDouble()),
        Genome.of(LinkageGroup.of(TIPS, recombination, Locus.of("wax", "W", "w"))),
        List.of("tips", "wax"),
        2,
        tetrasomic(Fraction.ZERO));
  }

  /** One locus of autotetraploids. */
  static Kind tetraploid(Fraction doubleReduction) {
    return new Kind(
        Textbook.tetraploid(doubleReduction.toDouble()),
        Genome.unlinked(TIPS),
        List.of("tips"),
        4,
        tetrasomic(doubleReduction));
  }

  /** A gene of the cytoplasm. */
  static Kind cytoplasm() {
    return new Kind(
        Textbook.CYTOPLASM,
        Genome.unlinked(Locus.cytoplasmic("tips", "T", "t")),
        List.of("tips"),
        2,
        tetrasomic(Fraction.ZERO));
  }

  final Kind kind;
  final Textbook textbook;
  final List<Plant> plants = new ArrayList<>();
  final List<Evidence> seen = new ArrayList<>();

  /** Seedlings of one fruit with one pollinator; the first of them is the key. */
  final Map<Integer, Set<Integer>> fruits = new LinkedHashMap<>();

  final Map<String, Fraction[]> dominant = new LinkedHashMap<>();
  final Map<String, Fraction> inbreeding = new LinkedHashMap<>();

  /** By trait: how often a plant with the dominant allele shows it. */
  final Map<String, Fraction> penetrance = new LinkedHashMap<>();

  double misread;

  /** Whether diploids of TT die as seedlings. */
  boolean lethal;

  Garden(Kind kind) {
    this.kind = kind;
    this.textbook = kind.textbook();
  }

  /** The states of a trait, the dominant one first. */
  static List<String> states(String trait) {
    return trait.equals("tips") ? List.of("red", "plain") : List.of("waxed", "bare");
  }

  /** The plant whose genotype that plant has. */
  int genet(int plant) {
    int genet = plant;
    while (plants.get(genet).again() >= 0) {
      genet = plants.get(genet).again();
    }
    return genet;
  }

  int number(String code) {
    for (int i = 0; i < plants.size(); i++) {
      if (plants.get(i).code().equals(code)) {
        return i;
      }
    }
    throw new IllegalArgumentException(code);
  }

  /** The fruit a plant is of, named by its first seedling; -1 if of none. */
  int fruit(int plant) {
    for (Map.Entry<Integer, Set<Integer>> fruit : fruits.entrySet()) {
      if (fruit.getValue().contains(plant)) {
        return fruit.getKey();
      }
    }
    return -1;
  }

  // At random.

  /** Plants at random, known frequencies of both taxa and of nobody's, and something seen. */
  static Garden random(SplittableRandom random, Kind kind, int most) {
    Garden garden = new Garden(kind);
    List<String> traits = kind.traits();
    for (String taxon : List.of(LAUI, ALBA, NOBODYS)) {
      Fraction[] each = new Fraction[traits.size()];
      for (int i = 0; i < each.length; i++) {
        each[i] = Fraction.of(1 + random.nextInt(9), 10);
      }
      garden.dominant.put(taxon, each);
    }
    if (garden.textbook.inbreeds() && random.nextInt(2) == 0) {
      garden.inbreeding.put(LAUI, Fraction.of(random.nextInt(5), 4));
    }
    for (String trait : traits) {
      garden.penetrance.put(trait, Fraction.of(random.nextInt(2) == 0 ? 10 : 7, 10));
    }
    garden.misread = random.nextInt(3) == 0 ? 0 : 0.05;
    int n = 3 + random.nextInt(most - 2);
    for (int i = 0; i < n; i++) {
      garden.grow(random);
    }
    int findings = random.nextInt(6);
    for (int i = 0; i < findings; i++) {
      garden.look(random, traits);
    }
    return garden;
  }

  private void grow(SplittableRandom random) {
    int n = plants.size();
    String code = "p" + n;
    int how = n < 2 ? 0 : random.nextInt(20);
    if (how < 2) {
      plants.add(
          new Plant(
              code,
              Optional.of(List.of(LAUI, LAUI, ALBA, NOBODYS).get(random.nextInt(4))),
              -1,
              false,
              List.of()));
    } else if (how < 4) {
      plants.add(new Plant(code, Optional.empty(), random.nextInt(n), true, List.of()));
    } else if (how < 5) {
      plants.add(new Plant(code, Optional.empty(), random.nextInt(n), false, List.of()));
    } else if (how < 14) {
      Way way = new Way(Fraction.ONE, random.nextInt(n), random.nextInt(n), false);
      plants.add(new Plant(code, Optional.empty(), -1, false, List.of(way)));
    } else if (how < 18 || !anotherOfAFruit(random, code)) {
      plants.add(new Plant(code, Optional.empty(), -1, false, byAnything(random, n)));
    }
  }

  /** A stranger who pollinates a whole fruit is one plant, which these gardens have not. */
  private static boolean isByAStranger(Way way) {
    return way.pollen() == UNKNOWN && !way.copy();
  }

  private boolean anotherOfAFruit(SplittableRandom random, String code) {
    for (int i = 0; i < plants.size(); i++) {
      if (plants.get(i).ways().size() > 1
          && plants.get(i).ways().stream().noneMatch(Garden::isByAStranger)
          && random.nextInt(2) == 0) {
        int first = fruit(i) >= 0 ? fruit(i) : i;
        Set<Integer> fruit = fruits.computeIfAbsent(first, any -> new LinkedHashSet<>());
        fruit.add(i);
        fruit.add(plants.size());
        plants.add(new Plant(code, Optional.empty(), -1, false, plants.get(i).ways()));
        return true;
      }
    }
    return false;
  }

  /**
   * Open pollination: candidates, the plant itself among them or not, nobody's pollen, apomixis.
   */
  private static List<Way> byAnything(SplittableRandom random, int n) {
    int seed = random.nextInt(n);
    Set<Integer> candidates = new LinkedHashSet<>();
    for (int i = 0; i < 2; i++) {
      candidates.add(random.nextInt(n));
    }
    boolean nobodys = random.nextInt(2) == 0;
    boolean apomict = random.nextInt(4) == 0;
    List<Way> ways = new ArrayList<>();
    Fraction left = Fraction.ONE;
    for (int candidate : candidates) {
      Fraction share = left.times(Fraction.of(1 + random.nextInt(3), 5));
      ways.add(new Way(share, seed, candidate, false));
      left = left.minus(share);
    }
    if (apomict) {
      Fraction share = left.times(Fraction.HALF);
      ways.add(new Way(share, seed, UNKNOWN, true));
      left = left.minus(share);
    }
    if (nobodys) {
      ways.add(new Way(left, seed, UNKNOWN, false));
    } else {
      Way first = ways.remove(0);
      ways.add(0, new Way(first.share().plus(left), first.seed(), first.pollen(), first.copy()));
    }
    return ways;
  }

  private void look(SplittableRandom random, List<String> traits) {
    int plant = random.nextInt(plants.size());
    String code = plants.get(plant).code();
    String trait = traits.get(random.nextInt(traits.size()));
    String source = "finding " + seen.size();
    int what = random.nextInt(20);
    if (what < 10) {
      String state = states(trait).get(random.nextInt(2));
      boolean picked =
          random.nextInt(3) == 0 && seen.stream().noneMatch(other -> isPicked(other, plant));
      seen.add(new Evidence.Shown(code, trait, state, picked, source));
    } else if (what < 14) {
      String genotype = textbook.text(random.nextInt(textbook.genotypes()));
      seen.add(Evidence.Carried.of(code, genome().genotype(genotype), source));
    } else if (plants.get(genet(plant)).taxon().isEmpty()) {
      Map<String, Long> counts = new LinkedHashMap<>();
      for (String state : states(trait)) {
        counts.put(state, (long) random.nextInt(6));
      }
      seen.add(new Evidence.Counted(code, trait, counts, source));
    }
  }

  private boolean isPicked(Evidence other, int plant) {
    return other instanceof Evidence.Shown shown
        && shown.picked()
        && genet(number(shown.plant())) == genet(plant);
  }

  // As it is told to the library.

  Genome genome() {
    return kind.genome();
  }

  /** What the library is told of these plants, all of them. */
  PedigreeOdds odds() {
    return odds(records(), seen);
  }

  PedigreeOdds odds(List<PlantRecord> records, List<Evidence> findings) {
    PedigreeOdds odds =
        PedigreeOdds.of(Pedigree.of(records), genome(), models())
            .withPriors(priors())
            .withMisreading(misread)
            .withEvidence(findings)
            .withTetraploids(kind.meiosis());
    for (Set<Integer> fruit : fruits.values()) {
      Set<String> codes = new LinkedHashSet<>();
      fruit.forEach(plant -> codes.add(plants.get(plant).code()));
      odds = odds.withOnePollinator(codes);
    }
    return odds;
  }

  List<TraitModel> models() {
    return kind.traits().stream()
        .map(
            trait ->
                TraitModel.dominant(trait, genome().locus(trait), states(trait))
                    .withPenetrance(
                        states(trait).get(0), penetrance.get(trait), states(trait).get(1)))
        .map(model -> lethal ? model.withLethal(Pattern.read(genome().loci(), DIES)) : model)
        .toList();
  }

  FounderPriors priors() {
    FounderPriors priors = FounderPriors.none();
    for (Map.Entry<String, Fraction[]> taxon : dominant.entrySet()) {
      for (int i = 0; i < kind.traits().size(); i++) {
        Locus locus = genome().locus(kind.traits().get(i));
        Fraction p = taxon.getValue()[i];
        priors =
            priors.withFrequencies(
                taxon.getKey(),
                locus.name(),
                Map.of(locus.alleles().get(0), p, locus.alleles().get(1), Fraction.ONE.minus(p)));
      }
    }
    for (Map.Entry<String, Fraction> taxon : inbreeding.entrySet()) {
      priors = priors.withInbreeding(taxon.getKey(), taxon.getValue());
    }
    return priors;
  }

  List<PlantRecord> records() {
    return plants.stream().map(this::plantRecord).toList();
  }

  private PlantRecord plantRecord(Plant plant) {
    if (plant.again() >= 0) {
      String of = plants.get(plant.again()).code();
      return plant.ramet()
          ? PlantRecord.ramet(plant.code(), of)
          : PlantRecord.apomict(plant.code(), of);
    }
    if (plant.taxon().isPresent()) {
      String taxon = plant.taxon().get();
      return new PlantRecord(
          plant.code(),
          taxon.equals(NOBODYS)
              ? new Founder(
                  Makeup.unknown(), kind.sets(), Standing.UNKNOWN, Optional.empty(), null, null)
              : Founder.pure(taxon, kind.sets()));
    }
    return new PlantRecord(
        plant.code(), new Seedling(plant.ways().stream().map(this::told).toList()));
  }

  /** A way as the library calls it. */
  Case told(Way way) {
    String seed = plants.get(way.seed()).code();
    if (way.copy()) {
      return Case.apomict(way.share(), seed);
    }
    return way.pollen() == UNKNOWN
        ? Case.unknownPollen(way.share(), Route.OPEN_POLLINATION, seed)
        : Case.cross(way.share(), Route.OPEN_POLLINATION, seed, plants.get(way.pollen()).code());
  }

  /** All of it in words, for a check that fails. */
  @Override
  public String toString() {
    StringBuilder text =
        new StringBuilder("misread " + misread + ", shows " + penetrance + ", lethal " + lethal);
    dominant.forEach((taxon, p) -> text.append("\n").append(taxon).append(Arrays.toString(p)));
    text.append("\ninbred ").append(inbreeding).append(", fruits ").append(fruits.values());
    records().forEach(record -> text.append("\n").append(record));
    seen.forEach(finding -> text.append("\n").append(finding));
    return text.append("\n").toString();
  }
}
