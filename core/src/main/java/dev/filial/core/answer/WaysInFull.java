package dev.filial.core.answer;

import dev.filial.core.answer.NextCrosses.Plant;
import dev.filial.core.inference.JointOdds;
import dev.filial.core.plan.Candidate;
import dev.filial.core.plan.Goal;
import dev.filial.core.plan.PlanChances;
import dev.filial.core.plan.PlanGenes;
import dev.filial.core.plan.PlanSearch;
import dev.filial.core.plan.Sowing;
import dev.filial.core.trial.Proportion;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The best of the ways that were found, each reckoned in full: the parents of a first cross with
 * the odds of both together, and the fewest seeds over all that they may be.
 */
final class WaysInFull {

  /**
   * A longer way that takes more seeds than a shorter one is not shown; by the mean odds alone, and
   * an even division between the seasons, it may look worse than it is by not more than this.
   */
  private static final double HARDLY_BETTER = 0.6;

  private final PlanGenes genes;
  private final List<Candidate> candidates;
  private final Goal goal;
  private final List<Plant> parents;
  private final GeneEvidence.Scenario scenario;
  private final double certain;
  private final List<Proportion> counted = new ArrayList<>();
  private final Map<List<String>, JointOdds> together = new HashMap<>();
  private int reckoned;
  private @Nullable IllegalArgumentException tooMany;

  /**
   * Of ways among these plants.
   *
   * @param candidates what the plants most likely carry, in the same order
   */
  WaysInFull(
      PlanGenes genes,
      List<Candidate> candidates,
      Goal goal,
      List<Plant> parents,
      GeneEvidence.Scenario scenario,
      List<SeedRate> rates) {
    this.genes = genes;
    this.candidates = candidates;
    this.goal = goal;
    this.parents = parents;
    this.scenario = scenario;
    double all = 1;
    for (SeedRate rate : rates) {
      if (rate.counted().isPresent()) {
        counted.add(rate.counted().get());
      } else {
        all *= rate.share().toDouble();
      }
    }
    this.certain = all;
  }

  /**
   * A way with its chances and its seeds.
   *
   * @param sowing the fewest seeds; empty if it cannot give the wanted one, or takes too many
   */
  record Reckoned(
      PlanSearch.Found way, PlanChances chances, Optional<Sowing> sowing, List<JointOdds> odds) {

    /** What the odds of those together leaned on, a sentence each. */
    List<String> leaning() {
      return odds.stream()
          .flatMap(one -> ReckoningTelling.leaning(one.reckoning()).stream())
          .distinct()
          .toList();
    }

    Sowing sown() {
      return sowing.orElseThrow();
    }
  }

  /** How many were reckoned so far. */
  int reckoned() {
    return reckoned;
  }

  /**
   * The best first; a longer way only if it takes fewer seeds than all shorter ones.
   *
   * @param ways those of fewest seasons first, then of least cost
   * @param different of each number of seasons, ways of so many different costs are reckoned
   * @throws IllegalArgumentException if there are ways, and all of them take more seeds than can be
   *     reckoned with
   */
  List<Reckoned> best(List<PlanSearch.Found> ways, long different) {
    List<Reckoned> all = new ArrayList<>();
    long fewest = Long.MAX_VALUE;
    int most = ways.stream().mapToInt(way -> way.path().seasons()).max().orElse(0);
    for (int season = 1; season <= most; season++) {
      int of = season;
      double worth = fewest / HARDLY_BETTER;
      List<Reckoned> these =
          ways.stream()
              .filter(way -> way.path().seasons() == of && way.cost() < worth)
              .filter(new FewOfEach(different)::takes)
              .map(this::reckoned)
              .toList();
      all.addAll(these);
      for (Reckoned one : these) {
        if (one.sowing().isPresent() && one.sown().reached()) {
          fewest = Math.min(fewest, one.sown().total());
        }
      }
    }
    List<Reckoned> best = unbeaten(all);
    if (best.isEmpty() && tooMany != null) {
      throw tooMany;
    }
    return best;
  }

  private Reckoned reckoned(PlanSearch.Found way) {
    reckoned++;
    JointOdds joint = joint(way.path().seed(), way.path().pollen());
    Optional<JointOdds> beside =
        way.path().beside().map(other -> joint(other.seed(), other.pollen()));
    List<JointOdds> odds = new ArrayList<>(List.of(joint));
    beside.ifPresent(odds::add);
    PlanChances chances =
        PlanChances.of(
            genes, way.path(), both(joint), beside.map(this::both).orElse(List.of()), candidates);
    Optional<Sowing> sowing = Optional.empty();
    List<Double> each = chances.seasonChances();
    if (each.get(each.size() - 1) == 0) {
      return new Reckoned(way, chances, sowing, odds); // by the odds of both they cannot give it
    }
    try {
      sowing = Optional.of(Sowing.of(chances, goal, certain, counted));
    } catch (IllegalArgumentException e) {
      tooMany = e; // more seed than anybody sows
    }
    return new Reckoned(way, chances, sowing, odds);
  }

  private JointOdds joint(int one, int other) {
    String seed = parents.get(one).code().text();
    String pollen = parents.get(other).code().text();
    return together.computeIfAbsent(
        List.of(seed, pollen),
        any -> ReckoningTelling.told(() -> scenario.odds().jointly(seed, pollen)));
  }

  private List<PlanChances.Both> both(JointOdds joint) {
    List<PlanChances.Both> both = new ArrayList<>();
    for (JointOdds.Pair pair : joint.pairs()) {
      both.add(
          new PlanChances.Both(
              genes.number(pair.first()).orElseThrow(),
              genes.number(pair.second()).orElseThrow(),
              pair.chance()));
    }
    return both;
  }

  private static List<Reckoned> unbeaten(List<Reckoned> all) {
    List<Reckoned> sorted = new ArrayList<>(all);
    sorted.removeIf(one -> one.sowing().isEmpty());
    sorted.sort(
        Comparator.comparingInt((Reckoned one) -> one.way().path().seasons())
            .thenComparing(one -> !one.sown().reached())
            .thenComparingDouble(one -> one.sown().reached() ? 0 : -one.sown().reachable())
            .thenComparingLong(one -> one.sown().total())
            .thenComparingDouble(one -> one.way().inbreeding()));
    List<Reckoned> best = new ArrayList<>();
    for (Reckoned one : sorted) {
      boolean beaten =
          best.stream()
              .anyMatch(
                  other ->
                      other.way().path().seasons() < one.way().path().seasons()
                          && (other.sown().reached() || !one.sown().reached())
                          && other.sown().total() <= one.sown().total());
      if (!beaten) {
        best.add(one);
      }
    }
    return best;
  }
}
