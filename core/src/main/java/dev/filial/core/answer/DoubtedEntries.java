package dev.filial.core.answer;

import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.inference.conflict.SmallestConflict;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Item;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.commons.math3.special.Gamma;
import org.jspecify.annotations.Nullable;

/** The entries that may be wrong, and what is left if some of them are not believed. */
final class DoubtedEntries {

  /** So many contradictions are listed at once. */
  private static final int MOST_CONTRADICTIONS = 10;

  private final RegisterView view;
  private final GenesInPlay genes;
  private final GeneEvidence evidence;
  private final PedigreeOdds odds;
  private final List<Long> entries = new ArrayList<>();
  private final Map<Long, List<Evidence>> findings = new TreeMap<>();
  private final Map<Long, Set<String>> origins = new TreeMap<>();
  private final Map<Long, List<String>> profiles = new TreeMap<>();

  DoubtedEntries(RegisterView view, GenesInPlay genes, GeneEvidence evidence, PedigreeOdds odds) {
    this.view = view;
    this.genes = genes;
    this.evidence = evidence;
    this.odds = odds;
    for (Evidence finding : evidence.all()) {
      findings
          .computeIfAbsent(Long.parseLong(finding.source()), any -> new ArrayList<>())
          .add(finding);
    }
    Pedigree pedigree = evidence.pedigree();
    for (int plant = 0; plant < pedigree.size(); plant++) {
      String name = pedigree.code(plant);
      Optional<Item> origin = evidence.behind().family(name);
      if (origin.isEmpty()) {
        origin = evidence.behind().item(name);
      }
      origin.ifPresent(
          item -> origins.computeIfAbsent(item.entry(), any -> new LinkedHashSet<>()).add(name));
    }
    for (String taxon : pedigree.taxa()) {
      for (String name : TaxonProfile.upwards(view, taxon)) {
        for (long entry : view.entriesOn(Subject.taxon(name))) {
          if (view.effective(entry).orElse(null) instanceof ProfileStated profile
              && genes.genome().loci().stream()
                  .anyMatch(locus -> profile.frequencies().containsKey(locus.name()))) {
            profiles.computeIfAbsent(entry, any -> new ArrayList<>()).add(taxon);
          }
        }
      }
    }
    Set<Long> all = new TreeSet<>(findings.keySet());
    all.addAll(origins.keySet());
    all.addAll(profiles.keySet());
    entries.addAll(all);
  }

  List<Mistakes.Contradiction> contradictions() {
    List<Mistakes.Contradiction> contradictions = new ArrayList<>();
    if (believing(Set.copyOf(entries)).isPossible()) {
      return contradictions;
    }
    List<SmallestConflict.Found> found =
        SmallestConflict.of(entries.size(), kept -> believing(entriesOf(kept)).isPossible())
            .findAll(MOST_CONTRADICTIONS);
    for (int i = 0; i < found.size(); i++) {
      Set<Long> others = new HashSet<>();
      for (int j = 0; j < found.size(); j++) {
        if (j != i) {
          others.addAll(entriesOf(found.get(j).things()));
        }
      }
      Set<Long> these = entriesOf(found.get(i).things());
      contradictions.add(
          new Mistakes.Contradiction(
              these.stream().sorted().map(entry -> Said.of(view, entry)).toList(),
              found.get(i).provenSmallest(),
              mends(these, others)));
    }
    return contradictions;
  }

  private Set<Long> entriesOf(BitSet things) {
    Set<Long> some = new LinkedHashSet<>();
    things.stream().forEach(thing -> some.add(entries.get(thing)));
    return some;
  }

  /** What holds if only these entries are believed. */
  private PedigreeOdds believing(Set<Long> believed) {
    List<Evidence> seen = new ArrayList<>();
    findings.forEach(
        (entry, its) -> {
          if (believed.contains(entry)) {
            seen.addAll(its);
          }
        });
    Set<String> unknown = new HashSet<>();
    origins.forEach(
        (entry, plants) -> {
          if (!believed.contains(entry)) {
            unknown.addAll(plants);
          }
        });
    Set<String> silent = new HashSet<>();
    profiles.forEach(
        (entry, taxa) -> {
          if (!believed.contains(entry)) {
            silent.addAll(taxa);
          }
        });
    PedigreeOdds left = odds.withEvidence(seen);
    if (!unknown.isEmpty()) {
      left = left.withUnknownOrigin(unknown);
    }
    return silent.isEmpty() ? left : left.withPriors(without(silent));
  }

  private FounderPriors without(Set<String> taxa) {
    FounderPriors known = evidence.priors();
    FounderPriors kept = FounderPriors.none();
    List<String> all = new ArrayList<>(evidence.pedigree().taxa());
    all.add(FounderPriors.UNKNOWN);
    for (String taxon : all) {
      if (!taxa.contains(taxon)) {
        for (Locus locus : genes.genome().loci()) {
          Optional<Map<String, Fraction>> its = known.frequencies(taxon, locus.name());
          if (its.isPresent()) {
            kept = kept.withFrequencies(taxon, locus.name(), its.get());
          }
        }
      }
    }
    return kept;
  }

  /** A mistake and the logarithm of how likely everything is with it. */
  private record Weighed(long entry, String words, double log) {}

  private List<Mistakes.Mend> mends(Set<Long> these, Set<Long> others) {
    Set<Long> believed = new HashSet<>(entries);
    believed.removeAll(others);
    List<Weighed> weighed = new ArrayList<>();
    Set<String> plants = new LinkedHashSet<>();
    for (long entry : these) {
      List<Evidence> its = findings.getOrDefault(entry, List.of());
      if (!its.isEmpty()) {
        Set<Long> rest = new HashSet<>(believed);
        rest.remove(entry);
        double log = believing(rest).logLikelihood();
        for (Evidence finding : its) {
          log += logOfMistake(finding);
          plants.add(finding.plant());
        }
        add(weighed, entry, misread(its.get(0)), log);
      }
      Set<String> born = origins.getOrDefault(entry, Set.of());
      born.forEach(plants::add);
      if (isCross(born)) {
        add(
            weighed,
            entry,
            "the pollen of "
                + family(born)
                + " was another plant's: a bee was faster, or a tag was swapped on the flower",
            believing(believed).withOtherPollen(born).logLikelihood());
        add(
            weighed,
            entry,
            "the seedlings under "
                + family(born)
                + " are not of this cross: other seed was sown, or it was written the wrong way"
                + " round",
            believing(believed).withUnknownOrigin(born).logLikelihood());
      }
      if (profiles.containsKey(entry)) {
        Set<Long> rest = new HashSet<>(believed);
        rest.remove(entry);
        add(
            weighed,
            entry,
            "the profile is wrong: not all plants of the taxon are so",
            believing(rest).logLikelihood());
      }
    }
    for (String plant : plants) {
      Optional<Item> item = evidence.behind().item(plant).filter(one -> one.kind().isPlant());
      if (item.isPresent()) {
        boolean acquired = evidence.pedigree().isFounder(evidence.pedigree().indexOf(plant));
        add(
            weighed,
            item.get().entry(),
            acquired
                ? plant + " is not the kind of plant it was entered as"
                : "the tag " + plant + " stands with another plant than it was written for",
            believing(believed).withUnknownOrigin(Set.of(plant)).logLikelihood());
      }
    }
    double most = weighed.stream().mapToDouble(Weighed::log).max().orElse(Double.NEGATIVE_INFINITY);
    double sum = weighed.stream().mapToDouble(one -> Math.exp(one.log() - most)).sum();
    return weighed.stream()
        .sorted(Comparator.comparingDouble(Weighed::log).reversed())
        .map(one -> new Mistakes.Mend(one.entry(), one.words(), Math.exp(one.log() - most) / sum))
        .toList();
  }

  private static void add(List<Weighed> weighed, long entry, String words, double log) {
    if (log > Double.NEGATIVE_INFINITY) {
      weighed.add(new Weighed(entry, words, log));
    }
  }

  /** Anything else was as likely to be written down. */
  private double logOfMistake(Evidence finding) {
    if (finding instanceof Evidence.Shown shown) {
      return -Math.log(states(shown.trait()) - 1.0);
    }
    if (finding instanceof Evidence.Counted counted) {
      // Any counts of so many seedlings alike; in how many orders they can be counted is left out
      // of a likelihood, and so it is here.
      long all = counted.seedlings();
      int states = states(counted.trait());
      double ways = logFactorial(all + states - 1) - logFactorial(all) - logFactorial(states - 1);
      double orders = logFactorial(all);
      for (long number : counted.counts().values()) {
        orders -= logFactorial(number);
      }
      return -ways - orders;
    }
    return -logOfGenotypes((Evidence.Carried) finding);
  }

  private static double logFactorial(long number) {
    return Gamma.logGamma(number + 1.0);
  }

  /** Of how many genotypes of a diploid the stated one is one. */
  private double logOfGenotypes(Evidence.Carried stated) {
    List<Locus> loci =
        stated.whole().isPresent()
            ? genes.genome().loci()
            : stated.patterns().stream().map(Pattern::locus).toList();
    double log = 0;
    for (Locus locus : loci) {
      double alleles = locus.alleles().size();
      log += Math.log(locus.isCytoplasmic() ? alleles : alleles * (alleles + 1) / 2);
    }
    return log;
  }

  private int states(String trait) {
    return genes.model(trait).states().size();
  }

  private static String misread(Evidence finding) {
    if (finding instanceof Evidence.Shown shown) {
      return "what " + shown.plant() + " shows was misread or written down wrong";
    }
    return finding instanceof Evidence.Counted counted
        ? "the seedlings of " + counted.plant() + " were counted wrong"
        : "what " + finding.plant() + " carries was stated wrong";
  }

  /** Whether these are seedlings of a cross whose pollen is recorded. */
  private boolean isCross(Set<String> plants) {
    Pedigree pedigree = evidence.pedigree();
    return !plants.isEmpty()
        && plants.stream()
            .mapToInt(pedigree::indexOf)
            .allMatch(plant -> pedigree.caseCount(plant) > 0 && pedigree.pollenParent(plant) >= 0);
  }

  private String family(Set<String> plants) {
    @Nullable Code code = null;
    for (String plant : plants) {
      code = evidence.behind().family(plant).map(Item::code).orElse(code);
    }
    return code == null ? plants.iterator().next() : code.text();
  }
}
