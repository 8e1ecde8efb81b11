package dev.filial.core.answer;

import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Observed;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.ProfileStated.Pairing;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Everything a register says that bears on some genes: what plants and families showed, what is
 * stated of them, the pedigree that ties them together, and what is known of their taxa.
 */
final class GeneEvidence {

  private final RegisterView view;
  private final GenesInPlay genes;
  private final Weighing weighing;
  private final RegisterPedigree behind;
  private final Pedigree pedigree;
  private final List<Evidence> findings;
  private final Set<String> sports;
  private final List<String> notes;

  private GeneEvidence(
      RegisterView view,
      GenesInPlay genes,
      Weighing weighing,
      RegisterPedigree behind,
      Pedigree pedigree,
      SeenOfGenes seen,
      List<String> notes) {
    this.view = view;
    this.genes = genes;
    this.weighing = weighing;
    this.behind = behind;
    this.pedigree = pedigree;
    this.findings = List.copyOf(seen.evidence());
    this.sports = Set.copyOf(seen.sports());
    this.notes = List.copyOf(new LinkedHashSet<>(notes));
  }

  /**
   * That bears on the genes of some traits.
   *
   * @param asked plants, crosses, lots or pots that are asked about, each once
   */
  static GeneEvidence of(
      RegisterView view, GenesInPlay genes, Weighing weighing, Collection<Code> asked) {
    SeenOfGenes seen = SeenOfGenes.in(view, genes);
    Set<Code> roots = new LinkedHashSet<>(asked);
    roots.addAll(seen.plants());
    RegisterPedigree behind = RegisterPedigree.of(view, roots, false);
    List<String> notes = new ArrayList<>(seen.notes());
    // Doubts elsewhere in the register are not doubts about what was asked.
    notes.addAll(LineageNotes.of(view, view.lineage(asked).values(), asked));
    ofStrangers(view, genes, weighing).ifPresent(notes::add);
    Pedigree pedigree = RefusedPollen.left(view, behind, notes);
    return new GeneEvidence(view, genes, weighing, behind, pedigree, seen, notes);
  }

  /** The traits asked about and those looked at whose genes lie on the same chromosomes. */
  static List<String> withLinked(RegisterView view, List<String> traits) {
    Set<String> all = new LinkedHashSet<>();
    traits.forEach(trait -> all.add(view.requiredTrait(trait).trait()));
    for (TraitDeclared other : view.traits()) {
      if (view.model(Subject.trait(other.trait()).key()).isPresent()
          && isLookedAt(view, other.trait())
          && all.stream().noneMatch(other.trait()::equals)) {
        List<String> both = new ArrayList<>(traits);
        both.add(other.trait());
        GenesInPlay together = GenesInPlay.of(view, both, MapFunction.HALDANE, false);
        Set<Locus> own = new HashSet<>();
        for (int i = 0; i < together.models().size() - 1; i++) {
          own.addAll(together.models().get(i).loci());
        }
        List<Locus> others = together.models().get(together.models().size() - 1).loci();
        if (together.genome().groups().stream()
            .anyMatch(
                group ->
                    group.loci().stream().anyMatch(own::contains)
                        && group.loci().stream().anyMatch(others::contains))) {
          all.add(other.trait());
        }
      }
    }
    return List.copyOf(all);
  }

  /** A gene nobody looked at tells nothing of those beside it. */
  private static boolean isLookedAt(RegisterView view, String trait) {
    return view.entriesMentioning(Subject.trait(trait)).stream()
        .flatMap(entry -> view.effective(entry).stream())
        .anyMatch(said -> said instanceof Observed || said instanceof Tallied);
  }

  Pedigree pedigree() {
    return pedigree;
  }

  RegisterPedigree behind() {
    return behind;
  }

  /** Offsets that are sports for one of the traits, and so of a genotype of their own. */
  Set<String> sports() {
    return sports;
  }

  List<Evidence> all() {
    return findings;
  }

  List<String> notes() {
    return notes;
  }

  /**
   * One way of reckoning.
   *
   * @param assuming what had to be assumed; null if nothing
   * @param tetraploids how tetraploids form their gametes in it
   */
  record Scenario(@Nullable String assuming, PedigreeOdds odds, Meiosis tetraploids) {

    /** Odds of what is assumed, by gametes that form so. */
    private static Scenario of(@Nullable String assuming, PedigreeOdds odds, Meiosis tetraploids) {
      return new Scenario(assuming, odds.withTetraploids(tetraploids), tetraploids);
    }
  }

  /** In every way that has to be assumed; tetraploids whose pairing nobody stated make two. */
  List<Scenario> scenarios() {
    PedigreeOdds odds =
        PedigreeOdds.of(pedigree, genes.genome(), genes.models())
            .withLosses(genes.losses())
            .withPriors(priors())
            .withEvidence(findings)
            .withSports(sports)
            .withMisreading(weighing.misread())
            .withSampling(weighing.sweeps(), weighing.dice());
    boolean tetraploid = false;
    Set<String> taxa = new TreeSet<>();
    for (int plant = 0; plant < pedigree.size(); plant++) {
      tetraploid |= pedigree.ploidy(plant) == 4;
      Founder founder = pedigree.founder(plant);
      if (founder != null && founder.ploidy() == 4) {
        taxa.addAll(founder.makeup().shares().keySet());
      }
    }
    if (!tetraploid) {
      return List.of(new Scenario(null, odds, Meiosis.REDUCED));
    }
    if (taxa.isEmpty()) {
      taxa.addAll(pedigree.taxa()); // tetraploid by doubling
    }
    Set<Pairing> pairings = new HashSet<>();
    Set<Fraction> doubling = new TreeSet<>();
    boolean stated = true;
    for (String taxon : taxa) {
      Optional<ProfileStated> profile = TaxonProfile.of(view, taxon);
      Optional<Pairing> pairing = profile.map(ProfileStated::pairing);
      pairing.ifPresent(pairings::add);
      stated &= pairing.isPresent();
      profile.map(ProfileStated::doubleReduction).ifPresent(doubling::add);
    }
    stated &= pairings.size() == 1 && doubling.size() <= 1;
    Fraction doubleReduction = doubling.isEmpty() ? Fraction.ZERO : doubling.iterator().next();
    List<Scenario> ways = new ArrayList<>();
    if (!stated || pairings.contains(Pairing.TETRASOMIC)) {
      ways.add(
          Scenario.of(
              stated
                  ? null
                  : "any two of the four chromosomes of tetraploids pair (tetrasomic, double"
                      + " reduction "
                      + doubleReduction
                      + ")",
              odds,
              Meiosis.tetrasomic(doubleReduction)));
    }
    if (!stated || pairings.contains(Pairing.DISOMIC)) {
      ways.add(
          Scenario.of(
              stated
                  ? null
                  : "the chromosomes of tetraploids pair only within each of two subgenomes"
                      + " (disomic)",
              odds,
              Meiosis.REDUCED));
    }
    return ways;
  }

  FounderPriors priors() {
    FounderPriors priors = FounderPriors.none();
    Set<String> taxa = new TreeSet<>(pedigree.taxa());
    for (String taxon : taxa) {
      priors = with(priors, taxon, taxon);
    }
    return weighing.strangers() == null
        ? priors
        : with(priors, FounderPriors.UNKNOWN, weighing.strangers());
  }

  /** That nothing is known of what strangers are said to be. */
  private static Optional<String> ofStrangers(
      RegisterView view, GenesInPlay genes, Weighing weighing) {
    return Optional.ofNullable(weighing.strangers())
        .filter(
            taxon -> {
              Set<String> stated =
                  TaxonProfile.of(view, taxon)
                      .map(profile -> profile.frequencies().keySet())
                      .orElse(Set.of());
              return genes.genome().loci().stream().noneMatch(gene -> stated.contains(gene.name()));
            })
        .map(
            taxon ->
                "Nothing is stated of these genes in "
                    + taxon
                    + ", so that strangers are of it tells nothing; give it a profile.");
  }

  /** Priors with what the profile of a taxon says, under another name if need be. */
  FounderPriors with(FounderPriors priors, String name, String taxon) {
    FounderPriors all = priors;
    Optional<ProfileStated> profile = TaxonProfile.of(view, taxon);
    for (Locus locus : genes.genome().loci()) {
      Map<String, Fraction> its =
          profile.map(said -> said.frequencies().get(locus.name())).orElse(null);
      if (its != null) {
        all = all.withFrequencies(name, locus.name(), its);
      }
    }
    return all;
  }
}
