package dev.filial.core.answer;

import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.Odds;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.FounderPriors;
import dev.filial.core.inference.JointOdds;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.inference.conflict.SmallestConflict;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Item;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.trial.GoodnessOfFit;
import dev.filial.core.trial.Ratio;
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
import org.jspecify.annotations.Nullable;

/**
 * Finds the record that must be wrong: smallest sets of entries that cannot all be true under the
 * laws of heredity, with what would explain each; and entries that are possible, but hardly likely.
 */
public final class MistakesQuestion {

  /** So many contradictions are listed at once. */
  private static final int MOST_CONTRADICTIONS = 10;

  private final RegisterView view;
  private final List<String> traits;
  private final Weighing weighing;
  private final double below;

  private MistakesQuestion(
      RegisterView view, List<String> traits, Weighing weighing, double below) {
    this.view = view;
    this.traits = List.copyOf(traits);
    this.weighing = weighing;
    this.below = below;
  }

  /**
   * In what is recorded of these traits.
   *
   * @throws RegisterRefusal if none is named
   */
  public static MistakesQuestion of(RegisterView view, List<String> traits) {
    if (traits.isEmpty()) {
      throw new RegisterRefusal("say of which trait the records are to be looked through");
    }
    return new MistakesQuestion(view, traits, Weighing.PLAIN, 0.01);
  }

  /** The same with what was seen weighed in that way; nothing is misread in a contradiction. */
  public MistakesQuestion weighing(Weighing other) {
    return new MistakesQuestion(view, traits, other, below);
  }

  /**
   * The same with entries listed that had a chance below this.
   *
   * @param chance 0 to 1
   */
  public MistakesQuestion below(double chance) {
    return new MistakesQuestion(view, traits, weighing, chance);
  }

  /**
   * Looks through them.
   *
   * @throws RegisterRefusal if a trait has no model, or the odds would cost too much
   */
  public Mistakes ask() {
    GenesInPlay genes =
        GenesInPlay.of(view, GeneEvidence.withLinked(view, traits), MapFunction.HALDANE, false);
    GeneEvidence evidence = GeneEvidence.of(view, genes, weighing, List.of());
    GeneEvidence.Scenario scenario = evidence.scenarios().get(0);
    PedigreeOdds odds = scenario.odds().withMisreading(0);
    Book book = new Book(view, genes, evidence, odds);
    Set<String> notes = new LinkedHashSet<>();
    if (scenario.assuming() != null) {
      notes.add("Taken for granted: " + scenario.assuming() + ".");
    }
    List<Mistakes.Contradiction> contradictions = LikelyGenesQuestion.told(book::contradictions);
    List<Mistakes.Unlikely> unlikely =
        contradictions.isEmpty()
            ? LikelyGenesQuestion.told(() -> unlikely(scenario.odds(), genes, evidence, notes))
            : List.of();
    notes.addAll(evidence.notes());
    return new Mistakes(
        genes.models().stream().map(model -> model.trait()).toList(),
        evidence.all().size(),
        contradictions,
        unlikely,
        below,
        List.copyOf(notes));
  }

  /** What was seen against what everything else made likely. */
  private List<Mistakes.Unlikely> unlikely(
      PedigreeOdds odds, GenesInPlay genes, GeneEvidence evidence, Set<String> notes) {
    List<Mistakes.Unlikely> found = new ArrayList<>();
    double all = odds.logLikelihood();
    int tried = 0;
    int skipped = 0;
    for (Evidence finding : evidence.all()) {
      if (tried++ >= Influences.MOST_ENTRIES) {
        notes.add("Only the first " + Influences.MOST_ENTRIES + " entries were weighed.");
        break;
      }
      List<Evidence> others =
          evidence.all().stream().filter(other -> !other.equals(finding)).toList();
      PedigreeOdds without = odds.withEvidence(others);
      double chance;
      if (finding instanceof Evidence.Counted counted && seedlings(counted) > 1) {
        Optional<Double> p = surprise(without, genes, evidence.pedigree(), counted);
        if (p.isEmpty()) {
          skipped++;
          continue;
        }
        chance = p.get();
      } else if (finding instanceof Evidence.Shown shown && shown.picked()) {
        continue; // it was looked for
      } else {
        chance = Math.exp(all - without.logLikelihood());
      }
      if (chance < below) {
        found.add(new Mistakes.Unlikely(Said.of(view, Long.parseLong(finding.source())), chance));
      }
    }
    if (skipped > 0) {
      notes.add(
          skipped
              + (skipped == 1 ? " tally is" : " tallies are")
              + " not weighed by itself, its seedlings having come about in several ways.");
    }
    found.sort(Comparator.comparingDouble(Mistakes.Unlikely::chance));
    return found;
  }

  private static long seedlings(Evidence.Counted counted) {
    return counted.counts().values().stream().mapToLong(Long::longValue).sum();
  }

  /**
   * How likely counts at least as unlikely were, over what the parents may be by all else; of a
   * family of two recorded plants.
   */
  private static Optional<Double> surprise(
      PedigreeOdds without, GenesInPlay genes, Pedigree pedigree, Evidence.Counted counted) {
    int plant = pedigree.indexOf(counted.plant());
    int seed = pedigree.seedParent(plant);
    int pollen = pedigree.pollenParent(plant);
    if (pedigree.caseCount(plant) != 1 || seed < 0 || pollen < 0 || pedigree.ploidy(plant) != 2) {
      return Optional.empty();
    }
    JointOdds both = without.jointly(pedigree.code(seed), pedigree.code(pollen));
    var model =
        genes.models().stream()
            .filter(one -> one.trait().equals(counted.trait()))
            .findFirst()
            .orElseThrow();
    double sum = 0;
    for (JointOdds.Pair pair : both.pairs()) {
      Odds odds = Cross.of(pair.first(), pair.second()).odds(model);
      List<Fraction> shares = new ArrayList<>();
      List<Long> counts = new ArrayList<>();
      boolean impossible = false;
      for (String state : model.states()) {
        Fraction chance = odds.chanceOf(state);
        long number = counted.counts().getOrDefault(state, 0L);
        if (chance.isZero()) {
          impossible |= number > 0;
        } else {
          shares.add(chance);
          counts.add(number);
        }
      }
      if (!impossible) {
        sum +=
            pair.chance()
                * (shares.size() == 1
                    ? 1
                    : GoodnessOfFit.of(Ratio.of(shares))
                        .test(counts.stream().mapToLong(Long::longValue).toArray())
                        .p());
      }
    }
    return Optional.of(sum);
  }

  /** The entries that may be wrong, and what is left if some of them are not believed. */
  private static final class Book {
    private final RegisterView view;
    private final GenesInPlay genes;
    private final GeneEvidence evidence;
    private final PedigreeOdds odds;
    private final List<Long> entries = new ArrayList<>();
    private final Map<Long, List<Evidence>> findings = new TreeMap<>();
    private final Map<Long, Set<String>> origins = new TreeMap<>();
    private final Map<Long, List<String>> profiles = new TreeMap<>();

    Book(RegisterView view, GenesInPlay genes, GeneEvidence evidence, PedigreeOdds odds) {
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
      Set<Long> all = new java.util.TreeSet<>(findings.keySet());
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
      double most =
          weighed.stream().mapToDouble(Weighed::log).max().orElse(Double.NEGATIVE_INFINITY);
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

    /** Something else was as likely to be written down as anything else. */
    private double logOfMistake(Evidence finding) {
      if (finding instanceof Evidence.Shown shown) {
        return -Math.log(states(shown.trait()) - 1.0);
      }
      if (finding instanceof Evidence.Counted counted) {
        // Any counts of so many seedlings alike; what is left out elsewhere, in how many orders
        // they can be counted, is left out here too.
        long all = seedlings(counted);
        double ways = 0;
        int states = states(counted.trait());
        for (int i = 1; i < states; i++) {
          ways += Math.log((double) (all + i)) - Math.log(i);
        }
        double orders = logFactorial(all);
        for (long number : counted.counts().values()) {
          orders -= logFactorial(number);
        }
        return -ways - orders;
      }
      return -Math.log(3);
    }

    private static double logFactorial(long number) {
      double log = 0;
      for (long i = 2; i <= number; i++) {
        log += Math.log((double) i);
      }
      return log;
    }

    private int states(String trait) {
      return genes.models().stream()
          .filter(model -> model.trait().equals(trait))
          .findFirst()
          .orElseThrow()
          .states()
          .size();
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
              .allMatch(
                  plant -> pedigree.caseCount(plant) > 0 && pedigree.pollenParent(plant) >= 0);
    }

    private String family(Set<String> plants) {
      @Nullable Code code = null;
      for (String plant : plants) {
        code = evidence.behind().family(plant).map(Item::code).orElse(code);
      }
      return code == null ? plants.iterator().next() : code.text();
    }
  }
}
