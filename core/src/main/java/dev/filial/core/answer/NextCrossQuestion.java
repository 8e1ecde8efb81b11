package dev.filial.core.answer;

import dev.filial.core.ancestry.CoancestryMatrix;
import dev.filial.core.ancestry.ExpectedShares;
import dev.filial.core.answer.NextCrosses.LeftOut;
import dev.filial.core.answer.NextCrosses.Part;
import dev.filial.core.answer.NextCrosses.Plan;
import dev.filial.core.answer.NextCrosses.Plant;
import dev.filial.core.answer.NextCrosses.Season;
import dev.filial.core.answer.NextCrosses.Side;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.inference.EveryPlant;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.plan.Candidate;
import dev.filial.core.plan.Goal;
import dev.filial.core.plan.PlanGenes;
import dev.filial.core.plan.PlanSearch;
import dev.filial.core.plan.Relations;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Which plants of a register to cross for a seedling that is wanted, this season and the next ones,
 * how many seeds each season takes, and what it costs in relatedness.
 */
public final class NextCrossQuestion {

  /** As many as stand in a short answer. */
  public static final int USUALLY_SHOWN = 10;

  /** A plant that is as wanted so surely counts as one that is. */
  private static final double SURELY = 0.99;

  /** So many ways are reckoned in full for each one that is shown. */
  private static final int RECKONED = 3;

  private final RegisterView view;
  private final Wanted wanted;
  private final int seasons;
  private final List<Code> from;
  private final double mostInbred;
  private final Map<String, Fraction> shares;
  private final int shown;
  private final Weighing weighing;

  private NextCrossQuestion(
      RegisterView view,
      Wanted wanted,
      int seasons,
      List<Code> from,
      double mostInbred,
      Map<String, Fraction> shares,
      int shown,
      Weighing weighing) {
    this.view = view;
    this.wanted = wanted;
    this.seasons = seasons;
    this.from = List.copyOf(from);
    this.mostInbred = mostInbred;
    this.shares = new LinkedHashMap<>(shares);
    this.shown = shown;
    this.weighing = weighing;
  }

  /** For that seedling, up to two seasons ahead, of all plants that stand here. */
  public static NextCrossQuestion of(RegisterView view, Wanted wanted) {
    return new NextCrossQuestion(
        view, wanted, 2, List.of(), 1, Map.of(), USUALLY_SHOWN, Weighing.PLAIN);
  }

  /**
   * The same so many seasons ahead.
   *
   * @param number 1 to 3
   * @throws RegisterRefusal if it is not
   */
  public NextCrossQuestion withSeasons(int number) {
    if (number < 1 || number > 3) {
      throw new RegisterRefusal(
          number + " seasons ahead; plans are made for 1, 2 or 3 seasons of crossing");
    }
    return new NextCrossQuestion(view, wanted, number, from, mostInbred, shares, shown, weighing);
  }

  /** The same with what was seen weighed in that way; nothing is sampled here. */
  public NextCrossQuestion weighing(Weighing other) {
    return new NextCrossQuestion(view, wanted, seasons, from, mostInbred, shares, shown, other);
  }

  /** The same of these plants only; of all that stand here if none is named. */
  public NextCrossQuestion of(List<Code> plants) {
    return new NextCrossQuestion(
        view, wanted, seasons, plants, mostInbred, shares, shown, weighing);
  }

  /**
   * The same with seedlings at the end that are inbred by no more than that.
   *
   * @param coefficient 0 to 1
   */
  public NextCrossQuestion withMostInbred(double coefficient) {
    return new NextCrossQuestion(view, wanted, seasons, from, coefficient, shares, shown, weighing);
  }

  /**
   * The same with seedlings at the end that have at least that expected share of a taxon, those
   * within it counted in.
   *
   * @param taxon its name, as it is written on a label
   */
  public NextCrossQuestion withShare(String taxon, Fraction least) {
    Map<String, Fraction> all = new LinkedHashMap<>(shares);
    String name = TaxonReading.in(view).read(taxon).text();
    all.put(view.accepted(name).name(), least);
    return new NextCrossQuestion(view, wanted, seasons, from, mostInbred, all, shown, weighing);
  }

  /**
   * The same with so many plans.
   *
   * @param number 1 or more
   * @throws RegisterRefusal if it is not
   */
  public NextCrossQuestion showing(int number) {
    if (number < 1) {
      throw new RegisterRefusal(number + " plans to show; ask for 1 or more");
    }
    return new NextCrossQuestion(view, wanted, seasons, from, mostInbred, shares, number, weighing);
  }

  /**
   * The answer.
   *
   * @throws RegisterRefusal if a trait has no model, what is recorded of it cannot all be true, or
   *     the odds would cost too much; the message says what would help
   * @throws IllegalArgumentException if what is wanted cannot be read, or a number lies outside its
   *     range
   */
  public NextCrosses ask() {
    List<String> traits = TraitsWanted.of(view, wanted);
    GenesInPlay genes =
        GenesInPlay.of(view, GeneEvidence.withLinked(view, traits), MapFunction.HALDANE, false);
    Wish wish = wanted.wish(genes);
    List<TraitModel> looked = genes.models().subList(0, traits.size());
    PlantsHere found = PlantsHere.of(view, from);
    Map<String, Integer> leftOut = new LinkedHashMap<>();
    if (found.gone() > 0) {
      leftOut.put("no longer here, or never were", found.gone());
    }
    List<Item> here = found.plants();
    String what = wanted.words(genes, wish);
    if (here.isEmpty()) {
      return answer(
          what,
          0,
          leftOut,
          List.of(),
          0,
          List.of(),
          0,
          List.of(),
          PlanTelling.method(seasons, 0, !genes.genome().isExact()));
    }
    List<Code> codes = here.stream().map(Item::code).toList();
    GeneEvidence evidence = GeneEvidence.of(view, genes, weighing, codes);
    return new Answering(genes, wish, looked, evidence, codes, leftOut).among(here, what);
  }

  private NextCrosses answer(
      String what,
      int parents,
      Map<String, Integer> leftOut,
      List<Plant> already,
      int refused,
      List<Plan> plans,
      int further,
      List<String> notes,
      List<String> method) {
    return new NextCrosses(
        what,
        wanted.atLeast(),
        wanted.certainty(),
        wanted.rates(),
        seasons,
        parents,
        leftOut.entrySet().stream().map(one -> new LeftOut(one.getKey(), one.getValue())).toList(),
        already,
        refused,
        plans,
        further,
        notes,
        method);
  }

  /** The candidates, what they carry, and what comes of them. */
  private final class Answering {
    private final GenesInPlay genes;
    private final Wish wish;
    private final List<TraitModel> looked;
    private final GeneEvidence evidence;
    private final GeneEvidence.Scenario scenario;
    private final Map<String, Integer> leftOut;
    private final Set<String> notes = new LinkedHashSet<>();

    Answering(
        GenesInPlay genes,
        Wish wish,
        List<TraitModel> looked,
        GeneEvidence evidence,
        List<Code> here,
        Map<String, Integer> leftOut) {
      this.genes = genes;
      this.wish = wish;
      this.looked = looked;
      this.evidence = evidence;
      List<GeneEvidence.Scenario> ways = evidence.scenarios();
      this.scenario = ways.get(0);
      this.leftOut = leftOut;
      notes.addAll(evidence.notes());
      // Doubts about plants that are in no plan are not doubts about the answer.
      notes.removeAll(PlanTelling.doubts(view, here));
      notes.addAll(ReckoningTelling.noted(genes));
      if (ways.size() > 1) {
        notes.add("Reckoned as if " + scenario.assuming() + ", which nobody stated.");
      }
    }

    NextCrosses among(List<Item> here, String what) {
      List<Plant> plants = plants(here);
      EveryPlant every = ReckoningTelling.told(() -> scenario.odds().everyPlant());
      PlanGenes tables = PlanGenes.of(every.states(), looked, genes.losses(), wish);
      List<double[]> carried = new ArrayList<>();
      for (Plant plant : plants) {
        carried.add(carried(tables, every, plant));
      }
      KinBehind kin = KinBehind.of(view, plants.stream().map(Plant::code).toList());
      notes.addAll(kin.kinNotes());
      double[][] made = shares(kin);
      int asked = 0;
      for (String taxon : shares.keySet()) {
        int which = asked++;
        if (Arrays.stream(made).allMatch(its -> its[which] == 0)) {
          notes.add("No plant here has any expected share of " + taxon + ".");
        }
      }
      CoancestryMatrix matrix = kin.coancestry().matrix(kin.plants());
      List<Plant> already = new ArrayList<>();
      List<Integer> kept = new ArrayList<>();
      for (int i = 0; i < plants.size(); i++) {
        boolean is = isWanted(tables, carried.get(i), 2 * matrix.between(i, i) - 1, made[i]);
        if (is) {
          already.add(plants.get(i));
        }
        if (!is || !from.isEmpty()) {
          kept.add(i);
        }
      }
      return plans(what, tables, plants, carried, already, kept, matrix, made);
    }

    private NextCrosses plans(
        String what,
        PlanGenes tables,
        List<Plant> plants,
        List<double[]> carried,
        List<Plant> already,
        List<Integer> kept,
        CoancestryMatrix matrix,
        double[][] made) {
      List<Plant> parents = kept.stream().map(plants::get).toList();
      Refusals refusals = Refusals.of(view, parents, genes, evidence.pedigree());
      notes.addAll(refusals.notes());
      List<Candidate> candidates = new ArrayList<>();
      double[][] coancestry = new double[kept.size()][kept.size()];
      double[][] own = new double[kept.size()][];
      for (int i = 0; i < kept.size(); i++) {
        Plant plant = parents.get(i);
        Candidate candidate =
            Candidate.of(plant.code().text(), carried.get(kept.get(i)))
                .withSelfing(!refusals.isRefused(plant, plant));
        candidates.add(refusals.handedOn(plant).map(candidate::withAlleles).orElse(candidate));
        for (int j = 0; j < kept.size(); j++) {
          coancestry[i][j] = matrix.between(kept.get(i), kept.get(j));
        }
        own[i] = made[kept.get(i)];
      }
      Goal goal =
          new Goal(wanted.atLeast(), wanted.certainty(), mostInbred, shareList(Fraction::toDouble));
      Relations relations = Relations.of(coancestry, own);
      PlanSearch search =
          PlanSearch.of(tables, candidates, relations, goal)
              .withSeasons(seasons)
              .withComing(
                  wanted.rates().stream()
                      .mapToDouble(rate -> rate.share().toDouble())
                      .reduce(1, (one, other) -> one * other))
              .withSeedSetting(
                  (seed, pollen) -> !refusals.isRefused(parents.get(seed), parents.get(pollen)));
      List<PlanSearch.Found> ways = search.ways();
      WaysInFull full = new WaysInFull(tables, candidates, goal, parents, scenario, wanted.rates());
      List<WaysInFull.Reckoned> best = full.best(ways, (long) RECKONED * shown);
      PlanTelling telling =
          new PlanTelling(
              view, tables, looked, parents, relations, refusals, shares, wanted.atLeast());
      List<Plan> alike =
          AlikePlans.together(
              best.stream()
                  .map(one -> telling.plan(one.way(), one.chances(), one.sown(), one.leaning()))
                  .toList());
      List<Plan> plans = alike.subList(0, Math.min(shown, alike.size()));
      Set<Object> firsts = new HashSet<>();
      for (PlanSearch.Found way : ways) {
        firsts.add(
            List.of(
                new Side(Part.PLANT, parents.get(way.path().seed())),
                new Side(Part.PLANT, parents.get(way.path().pollen()))));
      }
      for (Plan plan : plans) {
        firstCrosses(plan).forEach(firsts::remove);
      }
      return answer(
          what,
          parents.size(),
          leftOut,
          already,
          search.refused(),
          plans,
          firsts.size(),
          List.copyOf(notes),
          PlanTelling.method(seasons, full.reckoned(), !genes.genome().isExact()));
    }

    /** The crosses that a plan may begin with. */
    private static List<List<Side>> firstCrosses(Plan plan) {
      Season first = plan.seasons().get(0);
      List<List<Side>> crosses = new ArrayList<>(List.of(List.of(first.seed(), first.pollen())));
      NextCrosses.Beside beside = first.beside();
      if (beside != null) {
        crosses.add(List.of(beside.seed(), beside.pollen()));
      }
      NextCrosses.Instead instead = plan.instead();
      if (instead != null) {
        Side replaced = new Side(Part.PLANT, instead.of());
        for (List<Side> cross : List.copyOf(crosses)) {
          for (Plant plant : instead.plants()) {
            Side side = new Side(Part.PLANT, plant);
            crosses.add(cross.stream().map(one -> one.equals(replaced) ? side : one).toList());
          }
        }
      }
      return crosses;
    }

    /** The plants that can be parents, one for each clone. */
    private List<Plant> plants(List<Item> here) {
      Pedigree pedigree = evidence.pedigree();
      Map<Integer, List<Item>> clones = new LinkedHashMap<>();
      for (Item item : here) {
        int index = pedigree.indexOf(item.code().text());
        if (pedigree.ploidy(index) != 2) {
          leftOut.merge("not of two chromosome sets", 1, Integer::sum);
          continue;
        }
        clones.computeIfAbsent(clone(pedigree, index), any -> new ArrayList<>()).add(item);
      }
      List<Plant> plants = new ArrayList<>();
      for (List<Item> clone : clones.values()) {
        Item first = clone.get(0);
        plants.add(
            new Plant(
                first.code(),
                Describing.of(view, first),
                clone.stream().skip(1).map(Item::code).toList()));
      }
      return plants;
    }

    /** The plant whose genotype this one has: offsets of a sport have the sport's. */
    private int clone(Pedigree pedigree, int plant) {
      int source = plant;
      while (!isSport(pedigree, source) && pedigree.isRamet(source)) {
        source = pedigree.rametOf(source);
      }
      return isSport(pedigree, source) ? source : pedigree.genet(source);
    }

    private boolean isSport(Pedigree pedigree, int plant) {
      return evidence.sports().contains(pedigree.code(plant));
    }

    private double[] carried(PlanGenes tables, EveryPlant every, Plant plant) {
      int groups = genes.genome().groups().size();
      double[][] odds = new double[groups][];
      for (int group = 0; group < groups; group++) {
        odds[group] = every.odds(plant.code().text(), group);
      }
      return tables.together(odds);
    }

    private boolean isWanted(PlanGenes tables, double[] odds, double inbreeding, double[] made) {
      double chance = 0;
      for (int n = 0; n < odds.length; n++) {
        chance += odds[n] * tables.chanceOf(n);
      }
      boolean is = chance >= SURELY && inbreeding <= mostInbred + 1e-9;
      List<Double> least = shareList(Fraction::toDouble);
      for (int i = 0; i < made.length; i++) {
        is &= made[i] >= least.get(i) - 1e-9;
      }
      return is;
    }

    private <T> List<T> shareList(Function<Fraction, T> as) {
      return shares.values().stream().map(as).toList();
    }

    /** Of each plant the expected share of each taxon asked of. */
    private double[][] shares(KinBehind kin) {
      ExpectedShares expected = ExpectedShares.of(kin.pedigree());
      List<List<String>> counted = new ArrayList<>();
      for (String taxon : shares.keySet()) {
        counted.add(
            expected.taxa().stream()
                .filter(one -> TaxonProfile.upwards(view, one).contains(taxon))
                .toList());
      }
      int[] plants = kin.plants();
      double[][] made = new double[plants.length][counted.size()];
      for (int i = 0; i < plants.length; i++) {
        for (int k = 0; k < counted.size(); k++) {
          for (String taxon : counted.get(k)) {
            made[i][k] += expected.share(plants[i], taxon);
          }
        }
      }
      return made;
    }
  }
}
