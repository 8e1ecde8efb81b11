package dev.filial.core.answer;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.GenotypeOdds;
import dev.filial.core.inference.JointOdds;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.inference.StateOdds;
import dev.filial.core.inference.TestCross;
import dev.filial.core.name.Code;
import dev.filial.core.number.Decimal;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What plants most likely carry, and what a cross of two will throw then, given everything that was
 * seen of them, of what came of them and of all behind them.
 */
public final class LikelyGenesQuestion {

  private final RegisterView view;
  private final List<String> traits;
  private final Weighing weighing;
  private final double sureness;
  private final boolean why;

  private LikelyGenesQuestion(
      RegisterView view, List<String> traits, Weighing weighing, double sureness, boolean why) {
    this.view = view;
    this.traits = List.copyOf(traits);
    this.weighing = weighing;
    this.sureness = sureness;
    this.why = why;
  }

  /**
   * About the genes of these traits, all of them together.
   *
   * @throws RegisterRefusal if none is named
   */
  public static LikelyGenesQuestion of(RegisterView view, List<String> traits) {
    if (traits.isEmpty()) {
      throw new RegisterRefusal("say of which trait the genes are asked");
    }
    return new LikelyGenesQuestion(view, traits, Weighing.PLAIN, 0.95, false);
  }

  /** The same with what was seen weighed in that way. */
  public LikelyGenesQuestion weighing(Weighing other) {
    return new LikelyGenesQuestion(view, traits, other, sureness, why);
  }

  /**
   * The same with test crosses that settle it so surely.
   *
   * @param other above 0 and below 1
   * @throws IllegalArgumentException if it is not
   */
  public LikelyGenesQuestion settling(double other) {
    if (!(other > 0 && other < 1)) {
      throw new IllegalArgumentException(
          "a sureness of "
              + Decimal.text(other, 3)
              + "; nothing is surer than 1, and 0 takes no seedlings: give one between, as 95%");
    }
    return new LikelyGenesQuestion(view, traits, weighing, other, why);
  }

  /** The same with the entries that moved the odds. */
  public LikelyGenesQuestion saysWhy() {
    return new LikelyGenesQuestion(view, traits, weighing, sureness, true);
  }

  /**
   * What a plant carries; of a cross, a lot or a pot, what one seedling of it does.
   *
   * @throws RegisterRefusal if a trait has no model, what is recorded cannot all be true, or the
   *     odds would cost too much; the message says what would help
   */
  public LikelyGenes ask(Code plant) {
    Code code = Things.required(view, plant).code();
    GenesInPlay genes = genes();
    GeneEvidence evidence = GeneEvidence.of(view, genes, weighing, List.of(code));
    String name = evidence.behind().asked().get(0);
    List<LikelyGenes.Way> ways = new ArrayList<>();
    Set<String> notes = new LinkedHashSet<>();
    List<GeneEvidence.Scenario> scenarios = evidence.scenarios();
    for (GeneEvidence.Scenario scenario : scenarios) {
      ways.add(
          ReckoningTelling.told(
              () -> {
                GenotypeOdds odds = scenario.odds().genotype(name);
                notes.addAll(ReckoningTelling.leaning(odds.reckoning()));
                return way(genes, scenario, name, odds);
              }));
    }
    notes.addAll(evidence.notes());
    notes.addAll(ReckoningTelling.noted(genes));
    List<Influence> influences =
        why
            ? ReckoningTelling.told(() -> influences(scenarios.get(0).odds(), name, notes))
            : List.of();
    return new LikelyGenes(code.text(), asked(), ways, influences, List.copyOf(notes));
  }

  private List<Influence> influences(PedigreeOdds odds, String name, Set<String> notes) {
    Genotype likeliest = odds.genotype(name).genotypes().get(0).genotype();
    return Influences.of(view, heard(odds, name), some -> some.genotype(name).of(likeliest), notes);
  }

  /**
   * What two plants carry together, and what their cross will throw; a selfing if both are one.
   *
   * @throws RegisterRefusal as {@link #ask(Code)}, or if one is no single plant
   */
  public LikelyCross ask(Code seed, Code pollen) {
    Code one = Things.required(view, seed).code();
    Code other = Things.required(view, pollen).code();
    GenesInPlay genes = genes();
    Set<Code> asked = new LinkedHashSet<>(List.of(one, other));
    GeneEvidence evidence = GeneEvidence.of(view, genes, weighing, asked);
    List<LikelyCross.Way> ways = new ArrayList<>();
    Set<String> notes = new LinkedHashSet<>();
    List<GeneEvidence.Scenario> scenarios = evidence.scenarios();
    for (GeneEvidence.Scenario scenario : scenarios) {
      ways.add(
          ReckoningTelling.told(
              () -> {
                JointOdds both = scenario.odds().jointly(one.text(), other.text());
                notes.addAll(ReckoningTelling.leaning(both.reckoning()));
                List<LikelyCross.OfTrait> shows = new ArrayList<>();
                for (String trait : asked()) {
                  StateOdds states = scenario.odds().cross(one.text(), other.text(), trait);
                  shows.add(new LikelyCross.OfTrait(trait, states(states)));
                }
                return new LikelyCross.Way(
                    scenario.assuming(),
                    both.pairs().stream()
                        .map(
                            pair ->
                                new LikelyCross.Pair(
                                    pair.first().text(), pair.second().text(), pair.chance()))
                        .toList(),
                    shows,
                    both.reckoning().isExact());
              }));
    }
    notes.addAll(evidence.notes());
    notes.addAll(ReckoningTelling.noted(genes));
    if (!one.isGroup() && !other.isGroup()) {
      CloseCross.of(view, one, other).map(CloseCross::sentence).ifPresent(notes::add);
    }
    String trait = asked().get(0);
    List<String> states = genes.models().get(0).states();
    String last = states.get(states.size() - 1);
    List<Influence> influences =
        why
            ? ReckoningTelling.told(
                () ->
                    Influences.of(
                        view,
                        heard(scenarios.get(0).odds(), one.text(), other.text()),
                        some -> some.cross(one.text(), other.text(), trait).of(last),
                        notes))
            : List.of();
    return new LikelyCross(one.text(), other.text(), ways, influences, List.copyOf(notes));
  }

  private static PedigreeOdds heard(PedigreeOdds odds, String... plants) {
    return odds.withEvidence(odds.bearingOn(List.of(plants)));
  }

  private GenesInPlay genes() {
    return GenesInPlay.of(view, GeneEvidence.withLinked(view, traits), MapFunction.HALDANE, false);
  }

  private List<String> asked() {
    return traits.stream().map(trait -> view.requiredTrait(trait).trait()).distinct().toList();
  }

  private LikelyGenes.Way way(
      GenesInPlay genes, GeneEvidence.Scenario scenario, String name, GenotypeOdds odds) {
    List<TraitModel> wanted = genes.models().subList(0, asked().size());
    Set<Locus> loci = new LinkedHashSet<>();
    wanted.forEach(model -> loci.addAll(model.loci()));
    List<LikelyGenes.Carried> carried = new ArrayList<>();
    for (Locus locus : loci) {
      for (String allele : locus.alleles()) {
        carried.add(new LikelyGenes.Carried(locus.name(), allele, odds.carries(locus, allele)));
      }
    }
    List<LikelyGenes.OfTrait> of = new ArrayList<>();
    for (TraitModel model : wanted) {
      StateOdds states = scenario.odds().states(name, model.trait());
      of.add(
          new LikelyGenes.OfTrait(
              model.trait(),
              states(states),
              breedsTrue(odds, model),
              test(odds, model, scenario.tetraploids())));
    }
    return new LikelyGenes.Way(
        scenario.assuming(),
        odds.genotypes().stream()
            .map(one -> new LikelyGenes.Genes(one.genotype().text(), one.chance(), one.error()))
            .toList(),
        carried,
        of,
        odds.reckoning().findings(),
        odds.reckoning().isExact(),
        odds.reckoning().width());
  }

  private static List<LikelyGenes.State> states(StateOdds odds) {
    return odds.states().stream()
        .map(one -> new LikelyGenes.State(one.state(), one.chance()))
        .toList();
  }

  private static @Nullable Double breedsTrue(GenotypeOdds odds, TraitModel model) {
    try {
      return odds.breedsTrue(model);
    } catch (IllegalArgumentException e) {
      return null; // of triploids it is not reckoned
    }
  }

  private LikelyGenes.@Nullable Test test(
      GenotypeOdds odds, TraitModel model, Meiosis tetraploids) {
    int ploidy = odds.genotypes().get(0).genotype().ploidy();
    Optional<Genotype> tester = tester(odds.genotypes().get(0).genotype().genome(), ploidy);
    boolean nuclear = model.loci().stream().noneMatch(Locus::isCytoplasmic);
    if (ploidy == 3 || tester.isEmpty() || !nuclear) {
      return null;
    }
    boolean disomic = odds.genotypes().get(0).genotype().isDisomic();
    Meiosis meiosis = ploidy == 4 && !disomic ? tetraploids : Meiosis.REDUCED;
    TestCross cross;
    try {
      cross = TestCross.of(odds, meiosis, tester.get(), model);
    } catch (IllegalArgumentException e) {
      return null; // linked genes of polyploids, tables that leave something out
    }
    boolean tellsNothing = cross.possibilities() < 2 && cross.alike().isEmpty();
    if (tellsNothing || cross.after(0).wrong() <= 1 - sureness) {
      return null;
    }
    return new LikelyGenes.Test(
        tester.get().text(),
        sureness,
        cross.atMost() < sureness ? null : number(cross.seedlingsFor(sureness)),
        cross.bits(),
        cross.alike(),
        cross.atMost(),
        number(cross.seedlingsToPart(sureness)));
  }

  private static @Nullable Integer number(OptionalInt seedlings) {
    return seedlings.isPresent() ? (Integer) seedlings.getAsInt() : null;
  }

  /** Of every gene the last, most recessive allele alone. */
  private static Optional<Genotype> tester(Genome genome, int ploidy) {
    List<String> groups = new ArrayList<>();
    for (LinkageGroup group : genome.groups()) {
      List<String> symbols =
          group.loci().stream()
              .map(locus -> locus.alleles().get(locus.alleles().size() - 1))
              .toList();
      boolean shortOnes = symbols.stream().allMatch(symbol -> symbol.length() == 1);
      String haplotype = String.join(shortOnes ? "" : ".", symbols);
      int copies = group.loci().get(0).isCytoplasmic() ? 1 : ploidy;
      groups.add(String.join("/", Collections.nCopies(copies, haplotype)));
    }
    try {
      return Optional.of(genome.genotype(String.join(" ", groups)));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
