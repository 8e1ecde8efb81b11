package dev.filial.core.answer;

import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.Odds;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.JointOdds;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.trial.GoodnessOfFit;
import dev.filial.core.trial.Ratio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the record that must be wrong: smallest sets of entries that cannot all be true under the
 * laws of heredity, with what would explain each; and entries that are possible, but hardly likely.
 */
public final class MistakesQuestion {

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
    DoubtedEntries doubted = new DoubtedEntries(view, genes, evidence, odds);
    Set<String> notes = new LinkedHashSet<>();
    if (scenario.assuming() != null) {
      notes.add("Taken for granted: " + scenario.assuming() + ".");
    }
    List<Mistakes.Contradiction> contradictions = ReckoningTelling.told(doubted::contradictions);
    List<Mistakes.Unlikely> unlikely =
        contradictions.isEmpty()
            ? ReckoningTelling.told(() -> unlikely(scenario.odds(), genes, evidence, notes))
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
    Influences.note(odds).ifPresent(notes::add);
    int tried = 0;
    int skipped = 0;
    for (Evidence finding : evidence.all()) {
      if (tried++ >= Influences.MOST_ENTRIES) {
        break;
      }
      List<Evidence> others =
          evidence.all().stream().filter(other -> !other.equals(finding)).toList();
      PedigreeOdds without = odds.withEvidence(others);
      double chance;
      if (finding instanceof Evidence.Counted counted && counted.seedlings() > 1) {
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
    TraitModel model = genes.model(counted.trait());
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
}
