package dev.filial.core.inference;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.factor.Calibrated;
import dev.filial.core.inference.factor.Elimination;
import dev.filial.core.inference.factor.FactorGraph;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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

  private final Genetics genetics;
  private final Beliefs beliefs;
  private final List<Evidence> evidence;
  private final Effort effort;
  private @Nullable EveryPlant every;

  private PedigreeOdds(Genetics genetics, Beliefs beliefs, List<Evidence> evidence, Effort effort) {
    this.genetics = genetics;
    this.beliefs = beliefs;
    this.evidence = List.copyOf(evidence);
    this.effort = effort;
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
        new Genetics(pedigree, GenomeStates.of(genome), models, List.of()),
        new Beliefs(FounderPriors.none(), Assumptions.plain(), 0),
        List.of(),
        new Effort(USUAL_BOUND, 0, 1));
  }

  /** The same of another pedigree, with the same genes, evidence and assumptions. */
  public PedigreeOdds withPedigree(Pedigree other) {
    return of(new Genetics(other, genetics.states(), genetics.models(), genetics.losses()));
  }

  /** The same with tables nobody asked about by which seedlings die. */
  public PedigreeOdds withLosses(List<TraitModel> killing) {
    return of(new Genetics(genetics.pedigree(), genetics.states(), genetics.models(), killing));
  }

  private PedigreeOdds of(Genetics other) {
    return new PedigreeOdds(other, beliefs, evidence, effort);
  }

  /** The same with what was seen, in place of what was seen before. */
  public PedigreeOdds withEvidence(List<Evidence> seen) {
    return new PedigreeOdds(genetics, beliefs, seen, effort);
  }

  /** The same with what is known of the taxa. */
  public PedigreeOdds withPriors(FounderPriors known) {
    return believing(beliefs.withPriors(known));
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
    return believing(beliefs.withMisread(rate));
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
    return assuming(assumptions().withTetraploids(meiosis));
  }

  /** The same with plants that are ramets by the pedigree but sports: of unknown genotype. */
  public PedigreeOdds withSports(Set<String> plants) {
    return assuming(assumptions().withSports(plants));
  }

  /**
   * The same with one way drawn for all of these seedlings, which are of one family: one pollinator
   * for a whole fruit, in place of one for each seed.
   *
   * @param plants their codes
   */
  public PedigreeOdds withOnePollinator(Set<String> plants) {
    return assuming(assumptions().withOnePollinator(plants, String.join(" ", plants)));
  }

  /** The same with these seedlings sired by one plant nobody knows, whatever is recorded. */
  public PedigreeOdds withOtherPollen(Set<String> plants) {
    return assuming(assumptions().withOtherPollen(plants, String.join(" ", plants)));
  }

  /** The same with nothing taken from the pedigree of where these plants come from. */
  public PedigreeOdds withUnknownOrigin(Set<String> plants) {
    return assuming(assumptions().withUnknownOrigin(plants));
  }

  private Assumptions assumptions() {
    return beliefs.assumptions();
  }

  private PedigreeOdds assuming(Assumptions other) {
    return believing(beliefs.withAssumptions(other));
  }

  private PedigreeOdds believing(Beliefs other) {
    return new PedigreeOdds(genetics, other, evidence, effort);
  }

  /**
   * The same with another bound.
   *
   * @param entries how many numbers all tables may have together, 1 or more
   */
  public PedigreeOdds withBound(long entries) {
    return new PedigreeOdds(genetics, beliefs, evidence, effort.withBound(entries));
  }

  /**
   * The same, sampling what is past the bound: three runs, which have to agree, or there is no
   * answer ({@link UnsteadyDrawsException}).
   *
   * @param times how often everything is drawn anew in each run, 40 or more; 0 to refuse instead
   * @param dice what the draws begin with; the same gives the same answer
   */
  public PedigreeOdds withSampling(int times, long dice) {
    return new PedigreeOdds(genetics, beliefs, evidence, effort.withSampling(times, dice));
  }

  /** What was seen. */
  public List<Evidence> evidence() {
    return evidence;
  }

  /**
   * What was seen that can bear on some plants: of those they are tied to by descent, of clones, of
   * plants of taxa whose frequencies are unknown.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   */
  public List<Evidence> bearingOn(List<String> plants) {
    return AskedNetwork.bearingOn(genetics, beliefs, evidence, plants);
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
    AskedNetwork network = ask("", plant);
    int number = network.number(plant);
    int[] asked = network.genotype(number);
    FactorGraph graph = network.graph();
    Effort.Solved solved = effort.solve(graph, asked);
    List<GenotypeOdds.Chance> chances = new ArrayList<>();
    eachPossible(
        graph,
        asked,
        solved,
        (state, chance, error) ->
            chances.add(new GenotypeOdds.Chance(genotype(network, number, state), chance, error)));
    return new GenotypeOdds(plant, chances, reckoning(network, graph, solved, asked));
  }

  /**
   * What two plants carry, together.
   *
   * @throws RuntimeException as {@link #genotype}
   */
  public JointOdds jointly(String first, String second) {
    AskedNetwork network = ask("", first, second);
    int one = network.number(first);
    int other = network.number(second);
    int[] asked =
        one == other
            ? network.genotype(one)
            : IntStream.concat(
                    Arrays.stream(network.genotype(one)), Arrays.stream(network.genotype(other)))
                .toArray();
    FactorGraph graph = network.graph();
    Effort.Solved solved = effort.solve(graph, asked);
    int groups = genetics.groups();
    List<JointOdds.Pair> pairs = new ArrayList<>();
    eachPossible(
        graph,
        asked,
        solved,
        (state, chance, error) ->
            pairs.add(
                new JointOdds.Pair(
                    genotype(network, one, Arrays.copyOf(state, groups)),
                    genotype(
                        network,
                        other,
                        Arrays.copyOfRange(state, state.length - groups, state.length)),
                    chance,
                    error)));
    return new JointOdds(first, second, pairs, reckoning(network, graph, solved, asked));
  }

  private Genotype genotype(AskedNetwork network, int number, int[] state) {
    return genetics.states().genotype(network.lineages().form(number), state);
  }

  /**
   * What a plant shows or will show of a trait; of one already looked at, what it really showed.
   *
   * @throws RuntimeException as {@link #genotype}
   */
  public StateOdds states(String plant, String trait) {
    AskedNetwork network = ask(trait, plant);
    return stateOdds(network, trait, network.number(plant));
  }

  /**
   * What seedlings of a cross of two plants will show of a trait, the parents' genotypes being as
   * likely as what was seen makes them; a selfing if both are one.
   *
   * @throws RuntimeException as {@link #genotype}
   */
  public StateOdds cross(String seed, String pollen, String trait) {
    AskedNetwork network = ask("", seed, pollen);
    return stateOdds(network, trait, network.cross(seed, pollen));
  }

  private StateOdds stateOdds(AskedNetwork network, String trait, int number) {
    int variable = network.appearance(number, trait);
    FactorGraph graph = network.graph();
    Effort.Solved solved = effort.solve(graph, variable);
    List<String> names = genetics.model(trait).states();
    List<StateOdds.Chance> chances = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      chances.add(new StateOdds.Chance(names.get(i), solved.chance(i), solved.error(i)));
    }
    return new StateOdds(trait, chances, reckoning(network, graph, solved, variable));
  }

  /**
   * In which of its recorded ways a plant came about: whose pollen it was, which of several plants
   * it is.
   *
   * @throws IllegalArgumentException if there is only one way, or as {@link #genotype}
   */
  public WayOdds ways(String plant) {
    Pedigree pedigree = genetics.pedigree();
    List<Case> cases = pedigree.cases(pedigree.genet(pedigree.indexOf(plant)));
    if (cases.size() < 2) {
      throw new IllegalArgumentException(
          plant + " is recorded to have come about in one way, so there is nothing to choose from");
    }
    AskedNetwork network = ask("", plant);
    int number = network.number(plant);
    int variable = network.way(number);
    FactorGraph graph = network.graph();
    Effort.Solved solved = effort.solve(graph, variable);
    double[] after = new double[cases.size()];
    double[] error = new double[cases.size()];
    for (int way = 0; way < graph.states(variable); way++) {
      int of = network.lineages().caseOf(number, way);
      // Of ways of one case the errors are added: it is at most as much.
      after[of] += solved.chance(way);
      error[of] += solved.error(way);
    }
    List<WayOdds.Chance> ways = new ArrayList<>();
    for (int i = 0; i < cases.size(); i++) {
      ways.add(
          new WayOdds.Chance(cases.get(i), cases.get(i).share().toDouble(), after[i], error[i]));
    }
    return new WayOdds(plant, ways, reckoning(network, graph, solved, variable));
  }

  /**
   * The natural logarithm of how likely all that was seen is, but for a constant that depends on
   * the findings alone (in how many orders seedlings can be counted); negative infinity if it is
   * impossible.
   *
   * @throws RuntimeException as {@link #genotype}, save that what is impossible is an answer
   */
  public double logLikelihood() {
    AskedNetwork network = ask("");
    FactorGraph graph = network.graph();
    if (graph.variables() == 0) {
      return 0;
    }
    Calibrated done = effort.run(Elimination.of(graph, 0));
    return done.isPossible() ? done.logWeight() + network.logConstant() : Double.NEGATIVE_INFINITY;
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
    Pedigree pedigree = genetics.pedigree();
    String[] plants =
        IntStream.range(0, pedigree.size()).mapToObj(pedigree::code).toArray(String[]::new);
    AskedNetwork network = ask("", plants);
    FactorGraph graph = network.graph();
    Elimination plan = Elimination.of(graph);
    Calibrated done = effort.run(plan);
    if (!done.isPossible()) {
      throw new ImpossibleFindingsException();
    }
    int[] all = IntStream.range(0, graph.variables()).toArray();
    return new EveryPlant(
        List.of(plants), genetics.states(), network, done, network.reckoning(graph, plan, 0, all));
  }

  /** The network of some plants; of the trait named the first one's appearance is left out. */
  private AskedNetwork ask(String later, String... plants) {
    return AskedNetwork.of(genetics, beliefs, evidence, List.of(plants), later);
  }

  private static Reckoning reckoning(
      AskedNetwork network, FactorGraph graph, Effort.Solved solved, int... asked) {
    return network.reckoning(graph, solved.plan(), solved.sweeps(), asked);
  }

  private interface Possible {
    void at(int[] state, double chance, double error);
  }

  private static void eachPossible(
      FactorGraph graph, int[] asked, Effort.Solved solved, Possible each) {
    for (int cell = 0; cell < solved.cells(); cell++) {
      if (solved.chance(cell) > 0) {
        int[] state = new int[asked.length];
        int rest = cell;
        for (int i = asked.length - 1; i >= 0; i--) {
          int size = graph.states(asked[i]);
          state[i] = rest % size;
          rest /= size;
        }
        each.at(state, solved.chance(cell), solved.error(cell));
      }
    }
  }
}
