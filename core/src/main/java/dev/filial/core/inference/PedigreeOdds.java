package dev.filial.core.inference;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.factor.Bearing;
import dev.filial.core.inference.factor.BlockSampler;
import dev.filial.core.inference.factor.Calibrated;
import dev.filial.core.inference.factor.Elimination;
import dev.filial.core.inference.factor.FactorGraph;
import dev.filial.core.inference.factor.Sampled;
import dev.filial.core.inference.factor.TooTangledException;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The odds of everything unseen in a pedigree, given what was seen: exact, by elimination over its
 * factor graph (Cannings, Thompson and Skolnick 1978, Advances in Applied Probability 10:26-61;
 * Lauritzen and Spiegelhalter 1988, Journal of the Royal Statistical Society B 50:157-224), loops
 * and all. Immutable; not to be shared between threads, as it keeps tables it made.
 *
 * <p>Only what can matter is worked through: the plants asked about, those of which something was
 * seen, and all behind them. A clone is one genotype. Founders are draws from their taxa by {@link
 * FounderPriors}, in Hardy-Weinberg proportions and linkage equilibrium. How a genotype shows is
 * drawn once for all ramets of a clone; misreading is drawn for each sighting. Cost: exponential in
 * the width of the pedigree's graph, which is reckoned before it is paid.
 */
public final class PedigreeOdds {

  /** So many numbers in all tables together are gone through unless another bound is set. */
  public static final long USUAL_BOUND = 1L << 25;

  /** No rule is exact for what is divided by; it is worked out as finely as for so many draws. */
  private static final int DIVIDED = 64;

  /**
   * So many numbers are drawn together where odds are sampled. Larger blocks lessen the error of a
   * draw far less than they slow it.
   */
  private static final long DRAWN_TOGETHER = 1L << 15;

  /** So many runs are drawn, and have to agree. */
  private static final int RUNS = 3;

  /** What runs may differ by beside their errors. */
  private static final double AGREED = 0.01;

  private final Pedigree pedigree;
  private final GenomeStates states;
  private final List<TraitModel> models;
  private final List<TraitModel> losses;
  private final FounderPriors priors;
  private final List<Evidence> findings;
  private final Assumptions assumptions;
  private final double misread;
  private final long bound;
  private final int sweeps;
  private final long seed;
  private @Nullable EveryPlant every;

  private PedigreeOdds(
      Pedigree pedigree,
      GenomeStates states,
      List<TraitModel> models,
      List<TraitModel> losses,
      FounderPriors priors,
      List<Evidence> findings,
      Assumptions assumptions,
      double misread,
      long bound,
      int sweeps,
      long seed) {
    this.pedigree = pedigree;
    this.states = states;
    this.models = models;
    this.losses = losses;
    this.priors = priors;
    this.findings = findings;
    this.assumptions = assumptions;
    this.misread = misread;
    this.bound = bound;
    this.sweeps = sweeps;
    this.seed = seed;
  }

  /**
   * Of that pedigree.
   *
   * @param models the tables of the traits that were seen or are asked about
   * @throws IllegalArgumentException if a table depends on a gene that is not of the genome
   */
  public static PedigreeOdds of(Pedigree pedigree, Genome genome, List<TraitModel> models) {
    models.forEach(model -> model.loci().forEach(locus -> genome.locus(locus.name())));
    return new PedigreeOdds(
        pedigree,
        GenomeStates.of(genome),
        List.copyOf(models),
        List.of(),
        FounderPriors.none(),
        List.of(),
        Assumptions.plain(),
        0,
        USUAL_BOUND,
        0,
        1);
  }

  /** The same of another pedigree, with the same genes, evidence and assumptions. */
  public PedigreeOdds withPedigree(Pedigree other) {
    return new PedigreeOdds(
        other, states, models, losses, priors, findings, assumptions, misread, bound, sweeps, seed);
  }

  /** The same with what is known of the taxa. */
  public PedigreeOdds withPriors(FounderPriors known) {
    return new PedigreeOdds(
        pedigree,
        states,
        models,
        losses,
        known,
        findings,
        assumptions,
        misread,
        bound,
        sweeps,
        seed);
  }

  /** The same with what was seen, in place of what was seen before. */
  public PedigreeOdds withEvidence(List<Evidence> seen) {
    return new PedigreeOdds(
        pedigree,
        states,
        models,
        losses,
        priors,
        List.copyOf(seen),
        assumptions,
        misread,
        bound,
        sweeps,
        seed);
  }

  /** The same with tables nobody asked about by which seedlings die. */
  public PedigreeOdds withLosses(List<TraitModel> killing) {
    return new PedigreeOdds(
        pedigree,
        states,
        models,
        List.copyOf(killing),
        priors,
        findings,
        assumptions,
        misread,
        bound,
        sweeps,
        seed);
  }

  /**
   * The same with states misread now and then, any other of the trait's being written down.
   *
   * @param rate how often, 0 to below 1
   * @throws IllegalArgumentException if it is not
   */
  public PedigreeOdds withMisreading(double rate) {
    if (!(rate >= 0 && rate < 1)) {
      throw new IllegalArgumentException(
          "states misread with a chance of " + rate + "; it is 0 or more and below 1");
    }
    return new PedigreeOdds(
        pedigree, states, models, losses, priors, findings, assumptions, rate, bound, sweeps, seed);
  }

  /**
   * The same with tetraploids that make gametes in that way: {@link Meiosis.Tetrasomic} (without
   * this, and without double reduction), or {@link Meiosis#REDUCED} for two subgenomes that do not
   * pair with each other.
   *
   * @throws IllegalArgumentException if it is any other
   */
  public PedigreeOdds withTetraploids(Meiosis meiosis) {
    if (!(meiosis instanceof Meiosis.Tetrasomic || meiosis instanceof Meiosis.Reduced)) {
      throw new IllegalArgumentException(
          "tetraploids make gametes of half their sets: tetrasomic or disomic");
    }
    return assuming(assumptions.withTetraploids(meiosis));
  }

  /** The same with plants that are ramets by the pedigree but sports: of unknown genotype. */
  public PedigreeOdds withSports(Set<String> plants) {
    return assuming(assumptions.withSports(plants));
  }

  /**
   * The same with one way drawn for all of these seedlings, which are of one family: one pollinator
   * for a whole fruit, in place of one for each seed.
   *
   * @param plants their codes
   */
  public PedigreeOdds withOnePollinator(Set<String> plants) {
    return assuming(assumptions.withOnePollinator(plants, String.join(" ", plants)));
  }

  /** The same with these seedlings sired by one plant nobody knows, whatever is recorded. */
  public PedigreeOdds withOtherPollen(Set<String> plants) {
    return assuming(assumptions.withOtherPollen(plants, String.join(" ", plants)));
  }

  /** The same with nothing taken from the pedigree of where these plants come from. */
  public PedigreeOdds withUnknownOrigin(Set<String> plants) {
    return assuming(assumptions.withUnknownOrigin(plants));
  }

  private PedigreeOdds assuming(Assumptions other) {
    return new PedigreeOdds(
        pedigree, states, models, losses, priors, findings, other, misread, bound, sweeps, seed);
  }

  /**
   * The same with another bound.
   *
   * @param entries how many numbers all tables may have together, 1 or more
   */
  public PedigreeOdds withBound(long entries) {
    return new PedigreeOdds(
        pedigree,
        states,
        models,
        losses,
        priors,
        findings,
        assumptions,
        misread,
        entries,
        sweeps,
        seed);
  }

  /**
   * The same, sampling what is past the bound: three runs, which have to agree, or there is no
   * answer ({@link UnsteadyDrawsException}).
   *
   * @param times how often everything is drawn anew, 1 or more; 0 to refuse instead
   * @param dice what the draws begin with; the same gives the same answer
   */
  public PedigreeOdds withSampling(int times, long dice) {
    return new PedigreeOdds(
        pedigree,
        states,
        models,
        losses,
        priors,
        findings,
        assumptions,
        misread,
        bound,
        times,
        dice);
  }

  /** The genes. */
  public Genome genome() {
    return states.genome();
  }

  /** The tables of the traits. */
  public List<TraitModel> models() {
    return models;
  }

  /** The pedigree. */
  public Pedigree pedigree() {
    return pedigree;
  }

  /** What was seen. */
  public List<Evidence> evidence() {
    return findings;
  }

  /**
   * What a plant carries.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   * @throws ImpossibleFindingsException if what was seen has no chance
   * @throws TangledPedigreeException if it would cost too much and is not to be sampled
   * @throws IllegalArgumentException if a plant's odds are not reckoned: of more sets than four, or
   *     gametes of sets nobody stated
   */
  public GenotypeOdds genotype(String plant) {
    Built built = build(List.of(plant), null);
    int number = built.lineages.number(plant);
    int[] asked = built.all(number);
    Answer answer = answer(built, asked);
    List<GenotypeOdds.Chance> chances = new ArrayList<>();
    eachPossible(
        built,
        asked,
        answer,
        (state, chance, error) ->
            chances.add(
                new GenotypeOdds.Chance(
                    states.genotype(built.lineages.form(number), state), chance, error)));
    return new GenotypeOdds(plant, chances, answer.reckoning());
  }

  /**
   * What two plants carry, together.
   *
   * @throws RuntimeException as {@link #genotype}
   */
  public JointOdds jointly(String first, String second) {
    Built built = build(List.of(first, second), null);
    int one = built.lineages.number(first);
    int other = built.lineages.number(second);
    int[] asked = one == other ? built.all(one) : both(built.all(one), built.all(other));
    Answer answer = answer(built, asked);
    int groups = states.genome().groups().size();
    List<JointOdds.Pair> pairs = new ArrayList<>();
    eachPossible(
        built,
        asked,
        answer,
        (state, chance, error) ->
            pairs.add(
                new JointOdds.Pair(
                    states.genotype(built.lineages.form(one), Arrays.copyOf(state, groups)),
                    states.genotype(
                        built.lineages.form(other),
                        Arrays.copyOfRange(state, one == other ? 0 : groups, state.length)),
                    chance,
                    error)));
    return new JointOdds(first, second, pairs, answer.reckoning());
  }

  /**
   * What a plant shows or will show of a trait; of one already looked at, what it really showed.
   *
   * @throws RuntimeException as {@link #genotype}
   */
  public StateOdds states(String plant, String trait) {
    Built built = build(List.of(plant), trait);
    int number = built.lineages.number(plant);
    return stateOdds(built, trait, built.shownOf(number, trait));
  }

  /**
   * What seedlings of a cross of two plants will show of a trait, the parents' genotypes being as
   * likely as what was seen makes them; a selfing if both are one.
   *
   * @throws RuntimeException as {@link #genotype}
   */
  public StateOdds cross(String seed, String pollen, String trait) {
    Built built = build(List.of(seed, pollen), null, seed, pollen);
    return stateOdds(built, trait, built.network.appearance(built.crossed, trait, List.of()));
  }

  private StateOdds stateOdds(Built built, String trait, int variable) {
    Answer answer = answer(built, new int[] {variable});
    List<String> names = built.network.model(trait).states();
    List<StateOdds.Chance> chances = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      chances.add(new StateOdds.Chance(names.get(i), answer.chances()[i], answer.errors()[i]));
    }
    return new StateOdds(trait, chances, answer.reckoning());
  }

  /**
   * In which of its recorded ways a plant came about: whose pollen it was, which of several plants
   * it is.
   *
   * @throws IllegalArgumentException if there is only one way, or as {@link #genotype}
   */
  public WayOdds ways(String plant) {
    List<Case> cases = pedigree.cases(pedigree.genet(pedigree.indexOf(plant)));
    if (cases.size() < 2) {
      throw new IllegalArgumentException(
          plant + " is recorded to have come about in one way, so there is nothing to choose from");
    }
    Built built = build(List.of(plant), null);
    Answer answer = answer(built, new int[] {built.network.selector(built.lineages.number(plant))});
    List<WayOdds.Chance> ways = new ArrayList<>();
    for (int i = 0; i < cases.size(); i++) {
      ways.add(
          new WayOdds.Chance(
              cases.get(i),
              cases.get(i).share().toDouble(),
              answer.chances()[i],
              answer.errors()[i]));
    }
    return new WayOdds(plant, ways, answer.reckoning());
  }

  /**
   * The natural logarithm of how likely all that was seen is, but for a constant that depends on
   * the findings alone (in how many orders seedlings can be counted); negative infinity if it is
   * impossible.
   *
   * @throws RuntimeException as {@link #genotype}, save that what is impossible is an answer
   */
  public double logLikelihood() {
    Built built = build(List.of(), null);
    FactorGraph graph = built.network.graph();
    if (graph.variables() == 0) {
      return 0;
    }
    Calibrated done = run(Elimination.of(graph, 0));
    return done.isPossible()
        ? done.logWeight() + built.network.logConstant()
        : Double.NEGATIVE_INFINITY;
  }

  /** Whether what was seen has any chance at all. */
  public boolean isPossible() {
    return logLikelihood() > Double.NEGATIVE_INFINITY;
  }

  /**
   * The odds of every plant of the pedigree in one pass, which is made once and kept.
   *
   * @throws RuntimeException as {@link #genotype}
   */
  public EveryPlant everyPlant() {
    if (every == null) {
      every = workedOut();
    }
    return every;
  }

  private EveryPlant workedOut() {
    Built built =
        build(IntStream.range(0, pedigree.size()).mapToObj(pedigree::code).toList(), null);
    FactorGraph graph = built.network.graph();
    Elimination plan = Elimination.of(graph);
    Calibrated done = run(plan);
    if (!done.isPossible()) {
      throw new ImpossibleFindingsException();
    }
    int[] variables = IntStream.range(0, graph.variables()).toArray();
    return new EveryPlant(
        pedigree,
        states,
        built.lineages,
        built.network,
        done,
        reckoning(built, graph, plan, 0, variables));
  }

  // How it is done.

  /** A network with what it was made for. */
  private static final class Built {
    final Lineages lineages;
    final Network network;
    final int groups;
    final int crossed;
    final int heard;
    final Map<Integer, Integer> shown = new HashMap<>();

    Built(Lineages lineages, Network network, int groups, int crossed, int heard) {
      this.lineages = lineages;
      this.network = network;
      this.groups = groups;
      this.crossed = crossed;
      this.heard = heard;
    }

    int[] all(int plant) {
      return IntStream.range(0, groups).map(group -> network.variable(plant, group)).toArray();
    }

    int shownOf(int plant, String trait) {
      Integer known = shown.get(plant);
      return known == null ? network.appearance(plant, trait, List.of()) : known;
    }
  }

  private record Seen(int plant, String trait) {}

  /**
   * What was seen that can bear on some plants: of those they are tied to by descent, of clones, of
   * plants of taxa whose frequencies are unknown.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   */
  public List<Evidence> bearingOn(List<String> plants) {
    BitSet asked = new BitSet();
    plants.forEach(plant -> asked.set(pedigree.indexOf(plant)));
    BitSet with =
        Connected.with(
            pedigree, priors, states.genome(), assumptions, behind(plants, findings), asked);
    return findings.stream()
        .filter(finding -> with.get(pedigree.indexOf(finding.plant())))
        .toList();
  }

  private BitSet behind(List<String> plants, List<Evidence> heard) {
    BitSet behind = new BitSet();
    plants.forEach(plant -> behind.set(pedigree.indexOf(plant)));
    heard.forEach(finding -> behind.set(pedigree.indexOf(finding.plant())));
    // Parents have lower indices: one pass downwards meets each plant once.
    for (int i = behind.length() - 1; i >= 0; i = behind.previousSetBit(i - 1)) {
      for (int parent : pedigree.parents(i)) {
        behind.set(parent);
      }
    }
    return behind;
  }

  private Built build(List<String> asked, @Nullable String shownTrait, String... parents) {
    List<Evidence> heard = asked.isEmpty() ? findings : bearingOn(asked);
    BitSet behind = behind(asked, heard);
    Lineages lineages = Lineages.of(pedigree, priors, assumptions, behind);
    int crossed =
        parents.length == 0
            ? -1
            : lineages.cross(lineages.number(parents[0]), lineages.number(parents[1]));
    List<TraitModel> killing = new ArrayList<>(losses);
    models.stream().filter(TraitModel::touchesLife).forEach(killing::add);
    Network network =
        new Network(
            states,
            models,
            killing,
            priors,
            misread,
            lineages,
            unnumbered(lineages, heard, !killing.isEmpty()));
    BitSet needed = new BitSet();
    asked.forEach(plant -> needed.set(lineages.number(plant)));
    if (crossed >= 0) {
      needed.set(crossed);
    }
    Map<Seen, List<String>> sightings = new LinkedHashMap<>();
    Map<Integer, Evidence.Shown> picked = new HashMap<>();
    for (Evidence finding : heard) {
      int number = lineages.number(finding.plant());
      if (finding instanceof Evidence.Counted) {
        lineages.family(finding.plant()).forEach(way -> Network.parents(way, needed));
        continue;
      }
      needed.set(number);
      if (finding instanceof Evidence.Shown shown) {
        sightings
            .computeIfAbsent(new Seen(number, shown.trait()), any -> new ArrayList<>())
            .add(shown.state());
        if (shown.picked()) {
          picked.putIfAbsent(number, shown);
        }
      }
    }
    BitSet entered = network.behind(needed);
    network.enter(entered);
    network.noticed(entered, picked);
    Built built =
        new Built(lineages, network, states.genome().groups().size(), crossed, heard.size());
    sightings.forEach(
        (seen, shownStates) -> {
          if (seen.trait().equals(shownTrait) && seen.plant() == lineages.number(asked.get(0))) {
            built.shown.put(
                seen.plant(), network.appearance(seen.plant(), seen.trait(), shownStates));
          } else {
            network.shown(seen.plant(), seen.trait(), shownStates);
          }
        });
    for (Evidence finding : heard) {
      if (finding instanceof Evidence.Carried carried) {
        network.carried(lineages.number(finding.plant()), carried);
      } else if (finding instanceof Evidence.Counted counted) {
        network.counted(
            lineages.number(finding.plant()), lineages.family(finding.plant()), counted);
      }
    }
    return built;
  }

  /** How many alleles are drawn from taxa by seedlings that are no plants of the network. */
  private static int unnumbered(Lineages lineages, List<Evidence> heard, boolean losses) {
    double draws = losses ? DIVIDED : 0;
    for (Evidence finding : heard) {
      if (finding instanceof Evidence.Counted counted) {
        int each = Lineages.draws(lineages.family(finding.plant()));
        for (long count : counted.counts().values()) {
          draws += (double) count * each;
        }
      } else if (finding instanceof Evidence.Shown shown && shown.picked()) {
        int each = Lineages.draws(lineages.ways(lineages.number(finding.plant())));
        draws += each > 0 ? DIVIDED : 0;
      }
    }
    return (int) Math.min(draws, 1e9);
  }

  /** The chances of what was asked. */
  private static final class Answer {
    private final double[] chances;
    private final double[] errors;
    private final Reckoning reckoning;

    Answer(double[] chances, double[] errors, Reckoning reckoning) {
      this.chances = chances;
      this.errors = errors;
      this.reckoning = reckoning;
    }

    double[] chances() {
      return chances;
    }

    double[] errors() {
      return errors;
    }

    Reckoning reckoning() {
      return reckoning;
    }
  }

  private Answer answer(Built built, int[] asked) {
    FactorGraph graph = built.network.graph();
    Elimination plan = Elimination.of(graph, asked);
    if (plan.entries() > bound && sweeps > 0) {
      long whole = 1;
      for (int variable : asked) {
        whole = Math.min(whole * graph.states(variable), bound);
      }
      long together = Math.min(bound, Math.max(DRAWN_TOGETHER, 8 * whole));
      return sampled(
          BlockSampler.of(graph).withBound(together).withSweeps(sweeps),
          asked,
          reckoning(built, graph, plan, sweeps, asked));
    }
    Calibrated done = run(plan);
    if (!done.isPossible()) {
      throw new ImpossibleFindingsException();
    }
    double[] joint = done.joint();
    return new Answer(joint, new double[joint.length], reckoning(built, graph, plan, 0, asked));
  }

  /**
   * Several runs that begin apart: what one run cannot see of itself, that it never left a corner,
   * shows where they differ.
   */
  private Answer sampled(BlockSampler sampler, int[] asked, Reckoning reckoning) {
    List<Sampled> runs = new ArrayList<>();
    for (int run = 0; run < RUNS; run++) {
      runs.add(sampler.withSeed(RUNS * seed + run).run(asked));
    }
    int cells = runs.get(0).joint().length;
    double[] chances = new double[cells];
    double[] errors = new double[cells];
    for (int cell = 0; cell < cells; cell++) {
      double least = 1;
      double most = 0;
      double square = 0;
      for (Sampled run : runs) {
        double chance = run.joint()[cell];
        least = Math.min(least, chance);
        most = Math.max(most, chance);
        square += run.standardErrors()[cell] * run.standardErrors()[cell];
        chances[cell] += chance / RUNS;
      }
      errors[cell] = Math.sqrt(square) / RUNS;
      if (most - least > AGREED + 6 * Math.sqrt(square)) {
        throw new UnsteadyDrawsException(least, most);
      }
    }
    return new Answer(chances, errors, reckoning);
  }

  private Calibrated run(Elimination plan) {
    try {
      return plan.run(bound);
    } catch (TooTangledException e) {
      throw new TangledPedigreeException(e);
    }
  }

  private static Reckoning reckoning(
      Built built, FactorGraph graph, Elimination plan, int sweeps, int... asked) {
    return new Reckoning(
        built.heard,
        plan.width(),
        plan.entries(),
        sweeps,
        built.network.leanedOn(Bearing.on(graph, asked)));
  }

  private interface Possible {
    void at(int[] state, double chance, double error);
  }

  private static void eachPossible(Built built, int[] asked, Answer answer, Possible each) {
    for (int cell = 0; cell < answer.chances().length; cell++) {
      if (answer.chances()[cell] > 0) {
        int[] state = new int[asked.length];
        int rest = cell;
        for (int i = asked.length - 1; i >= 0; i--) {
          int size = built.network.size(asked[i]);
          state[i] = rest % size;
          rest /= size;
        }
        each.at(state, answer.chances()[cell], answer.errors()[cell]);
      }
    }
  }

  private static int[] both(int[] one, int[] other) {
    int[] both = Arrays.copyOf(one, one.length + other.length);
    System.arraycopy(other, 0, both, one.length, other.length);
    return both;
  }
}
