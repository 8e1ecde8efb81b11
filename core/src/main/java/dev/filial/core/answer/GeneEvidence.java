package dev.filial.core.answer;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Seedling;
import dev.filial.core.register.DeclaredGenome;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Item;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.ProfileStated.Pairing;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tallied;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
 *
 * <p>Each seedling counts once for a trait: numbered before its pot, a pot before its sowing, the
 * latest day first. A seedling that was seen by itself is taken out of the tally that counted it.
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
      Reading reading) {
    this.view = view;
    this.genes = genes;
    this.weighing = weighing;
    this.behind = behind;
    this.pedigree = pedigree;
    this.findings = List.copyOf(reading.findings);
    this.sports = Set.copyOf(reading.sports);
    this.notes = List.copyOf(new LinkedHashSet<>(reading.notes));
  }

  /**
   * That bears on the genes of some traits.
   *
   * @param asked plants, crosses, lots or pots that are asked about, each once
   */
  static GeneEvidence of(
      RegisterView view, GenesInPlay genes, Weighing weighing, Collection<Code> asked) {
    Reading reading = new Reading(view, genes);
    reading.read();
    Set<Code> roots = new LinkedHashSet<>(asked);
    roots.addAll(reading.plants);
    RegisterPedigree behind = RegisterPedigree.of(view, roots, false);
    if (!asked.isEmpty()) {
      reading.notes.addAll(RegisterPedigree.of(view, asked, false).notes());
    }
    Pedigree pedigree = new Refusals(view, behind, reading.notes).applied();
    return new GeneEvidence(view, genes, weighing, behind, pedigree, reading);
  }

  /** The traits asked about and those looked at whose genes lie on the same chromosomes. */
  static List<String> withLinked(RegisterView view, List<String> traits) {
    Set<String> all = new LinkedHashSet<>();
    traits.forEach(trait -> all.add(view.requiredTrait(trait).trait()));
    for (var other : view.traits()) {
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
   */
  record Scenario(@Nullable String assuming, PedigreeOdds odds) {}

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
      return List.of(new Scenario(null, odds));
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
          new Scenario(
              stated
                  ? null
                  : "any two of the four chromosomes of tetraploids pair (tetrasomic, double"
                      + " reduction "
                      + doubleReduction
                      + ")",
              odds.withTetraploids(Meiosis.tetrasomic(doubleReduction))));
    }
    if (!stated || pairings.contains(Pairing.DISOMIC)) {
      ways.add(
          new Scenario(
              stated
                  ? null
                  : "the chromosomes of tetraploids pair only within each of two subgenomes"
                      + " (disomic)",
              odds.withTetraploids(Meiosis.REDUCED)));
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

  /** Gathers what was seen and stated. */
  private static final class Reading {
    private final RegisterView view;
    private final GenesInPlay genes;
    private final List<Evidence> findings = new ArrayList<>();
    private final Set<Code> plants = new LinkedHashSet<>();
    private final Set<String> sports = new HashSet<>();
    private final List<String> notes = new ArrayList<>();

    Reading(RegisterView view, GenesInPlay genes) {
      this.view = view;
      this.genes = genes;
    }

    void read() {
      for (TraitModel model : genes.models()) {
        ofTrait(model);
      }
      for (Locus locus : genes.genome().loci()) {
        for (long entry : view.entriesMentioning(Subject.locus(locus.name()))) {
          if (view.effective(entry).orElse(null) instanceof GenotypeStated stated
              && isFirst(stated, locus)) {
            stated(entry, stated);
          }
        }
      }
    }

    /** An entry that states several genes is read once. */
    private boolean isFirst(GenotypeStated stated, Locus locus) {
      return genes.genome().loci().stream()
          .filter(one -> stated.loci().contains(one.name()))
          .findFirst()
          .filter(locus::equals)
          .isPresent();
    }

    private void stated(long entry, GenotypeStated stated) {
      plants.add(stated.code());
      Genome genome = genes.genome();
      List<Locus> named =
          genome.loci().stream().filter(locus -> stated.loci().contains(locus.name())).toList();
      boolean whole = named.size() == genome.loci().size() && stated.loci().size() == named.size();
      List<Pattern> patterns = new ArrayList<>();
      if (!whole) {
        // Some of the genes, or more than are asked about: their alleles hold, but not how they
        // lie together.
        Genome ofThese = DeclaredGenome.of(view, stated.loci(), MapFunction.HALDANE);
        Genotype read = ofThese.genotype(stated.genotype());
        for (Locus locus : named) {
          patterns.add(new Pattern(locus, read.alleles(ofThese.locus(locus.name())), false));
        }
      }
      findings.add(
          new Evidence.Carried(
              stated.code().text(),
              patterns,
              whole ? Optional.of(genome.genotype(stated.genotype())) : Optional.empty(),
              Long.toString(entry)));
    }

    private void ofTrait(TraitModel model) {
      LastSeen seen = LastSeen.of(view, model.trait());
      Set<Code> looked = new LinkedHashSet<>();
      Set<Code> families = new LinkedHashSet<>();
      for (long entry : view.entriesMentioning(Subject.trait(model.trait()))) {
        Statement statement = view.effective(entry).orElse(null);
        if (statement instanceof Observed observed) {
          looked.add(observed.code());
        } else if (statement instanceof Tallied tallied) {
          families.add(tallied.code().whole());
        }
      }
      Map<Code, Tallies> tallies = new LinkedHashMap<>();
      Map<Code, Map<String, Long>> left = new LinkedHashMap<>();
      for (Code family : families) {
        List<Code> pots = new ArrayList<>();
        for (Code code : view.codesUnder(family)) {
          if ((code.isGroup() || code.isSowing()) && view.item(code).isPresent()) {
            pots.add(code);
          }
        }
        pots.sort(null);
        Tallies its = Tallies.of(view, seen, pots);
        its.chosen()
            .forEach(
                (pot, tally) -> {
                  tallies.put(pot, its);
                  left.put(pot, new LinkedHashMap<>(tally.counts()));
                });
        notes.addAll(its.notes());
      }
      for (Code code : looked) {
        seen.last(code).ifPresent(sighting -> looked(model, seen, code, sighting, tallies, left));
      }
      left.forEach(
          (pot, counts) -> {
            Tallies its = tallies.get(pot);
            if (its != null && counts.values().stream().anyMatch(number -> number > 0)) {
              plants.add(pot.whole());
              findings.add(
                  new Evidence.Counted(
                      pot.whole().text(), model.trait(), counts, Long.toString(its.entry(pot))));
            }
          });
    }

    private void looked(
        TraitModel model,
        LastSeen seen,
        Code code,
        LastSeen.Sighting sighting,
        Map<Code, Tallies> tallies,
        Map<Code, Map<String, Long>> left) {
      Optional<Item> item = view.item(code);
      if (item.isEmpty()) {
        return;
      }
      String source = Long.toString(sighting.entry());
      if (!item.get().kind().isPlant()) {
        // One of a pot, without a number: a seedling of its family, unless the pot was tallied.
        boolean tallied =
            tallies.entrySet().stream()
                .anyMatch(pot -> pot.getValue().filledThrough(code).contains(pot.getKey()));
        if (!tallied && !item.get().kind().equals(Item.Kind.LOT)) {
          plants.add(code.whole());
          findings.add(
              new Evidence.Counted(
                  code.whole().text(), model.trait(), Map.of(sighting.value(), 1L), source));
        }
        return;
      }
      plants.add(code);
      if (Clone.isSport(view, code, model.trait())) {
        sports.add(code.text());
      }
      boolean picked = seen.isPicked(item.get());
      if (code.isSeedling()
          && view.effective(item.get().entry()).orElse(null) instanceof Numbered numbered) {
        Optional<Code> tally = tallyWith(numbered, tallies, left);
        if (tally.isPresent()) {
          picked = false;
          Map<String, Long> counts = left.getOrDefault(tally.get(), Map.of());
          long still = counts.getOrDefault(sighting.value(), 0L);
          if (still > 0) {
            counts.put(sighting.value(), still - 1);
          } else {
            notes.add(
                code.text()
                    + " showed "
                    + sighting.value()
                    + ", and the tally of "
                    + tally.get().text()
                    + " has none such left to take it out of: it may count twice.");
          }
        }
      }
      findings.add(
          new Evidence.Shown(code.text(), model.trait(), sighting.value(), picked, source));
    }

    /** The pot whose tally counted a numbered seedling too: a tally counts all. */
    private Optional<Code> tallyWith(
        Numbered numbered, Map<Code, Tallies> tallies, Map<Code, Map<String, Long>> left) {
      for (Map.Entry<Code, Tallies> pot : tallies.entrySet()) {
        boolean same =
            pot.getKey().whole().equals(numbered.from().whole())
                && (numbered.from().isWhole()
                    || pot.getValue().filledThrough(numbered.from()).contains(pot.getKey()));
        if (same && left.containsKey(pot.getKey())) {
          return Optional.of(pot.getKey());
        }
      }
      return Optional.empty();
    }
  }

  /** Pollen that a style refuses drops out of a mix, and the rest is rescaled. */
  private static final class Refusals {
    private final RegisterView view;
    private final RegisterPedigree behind;
    private final List<String> notes;

    Refusals(RegisterView view, RegisterPedigree behind, List<String> notes) {
      this.view = view;
      this.behind = behind;
      this.notes = notes;
    }

    Pedigree applied() {
      Pedigree pedigree = behind.pedigree();
      if (view.loci().stream().noneMatch(LocusDeclared::incompatibility)) {
        return pedigree;
      }
      List<PlantRecord> records = new ArrayList<>();
      boolean changed = false;
      for (int plant = 0; plant < pedigree.size(); plant++) {
        PlantRecord record = pedigree.plantRecord(plant);
        List<Case> cases = pedigree.cases(plant);
        List<Case> weighed = weighed(record.code(), cases);
        boolean other = !weighed.equals(cases);
        changed |= other;
        records.add(other ? new PlantRecord(record.code(), new Seedling(weighed)) : record);
      }
      return changed ? Pedigree.of(records) : pedigree;
    }

    private List<Case> weighed(String code, List<Case> cases) {
      List<Fraction> shares = new ArrayList<>();
      Fraction before = Fraction.ZERO;
      Fraction after = Fraction.ZERO;
      boolean any = false;
      for (Case one : cases) {
        Fraction through =
            one instanceof Case.Sexual sexual
                    && (one.route() == Route.OPEN_POLLINATION || one.route() == Route.POLLEN_MIX)
                ? through(code, sexual)
                : Fraction.ONE;
        boolean mixed = one.route() == Route.OPEN_POLLINATION || one.route() == Route.POLLEN_MIX;
        any |= !through.isOne();
        before = before.plus(mixed ? one.share() : Fraction.ZERO);
        after = after.plus(mixed ? one.share().times(through) : Fraction.ZERO);
        shares.add(through);
      }
      if (!any || after.isZero()) {
        return cases;
      }
      List<Case> weighed = new ArrayList<>();
      for (int i = 0; i < cases.size(); i++) {
        Case one = cases.get(i);
        if (one instanceof Case.Sexual sexual
            && (one.route() == Route.OPEN_POLLINATION || one.route() == Route.POLLEN_MIX)) {
          Fraction share = one.share().times(shares.get(i)).times(before).dividedBy(after);
          if (!share.isZero()) {
            weighed.add(new Case.Sexual(share, one.route(), sexual.seed(), sexual.pollen()));
          }
        } else {
          weighed.add(one);
        }
      }
      return weighed;
    }

    private Fraction through(String code, Case.Sexual sexual) {
      String seed = sexual.seed().parent();
      String pollen = sexual.pollen().parent();
      if (seed == null || pollen == null) {
        return Fraction.ONE;
      }
      Optional<Code> style = behind.item(seed).map(Item::code);
      Optional<Code> grain = behind.item(pollen).map(Item::code);
      if (style.isEmpty() || grain.isEmpty()) {
        return Fraction.ONE;
      }
      Optional<Fraction> through = CompatibilityQuestion.through(view, style.get(), grain.get());
      if (through.isPresent() && !through.get().isOne()) {
        notes.add(
            "Of the pollen of "
                + pollen
                + " on "
                + seed
                + " only "
                + through.get().toPercent(1)
                + " comes through, by its S alleles; its share in "
                + behind.family(code).map(family -> family.code().text()).orElse(code)
                + " is reckoned so.");
      }
      return through.orElse(Fraction.ONE);
    }
  }
}
