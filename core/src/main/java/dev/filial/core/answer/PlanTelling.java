package dev.filial.core.answer;

import dev.filial.core.answer.NextCrosses.Part;
import dev.filial.core.answer.NextCrosses.Plan;
import dev.filial.core.answer.NextCrosses.Plant;
import dev.filial.core.answer.NextCrosses.Season;
import dev.filial.core.answer.NextCrosses.Side;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.plan.CrossPath;
import dev.filial.core.plan.Mate;
import dev.filial.core.plan.PlanChances;
import dev.filial.core.plan.PlanGenes;
import dev.filial.core.plan.PlanSearch;
import dev.filial.core.plan.Relations;
import dev.filial.core.plan.Setting;
import dev.filial.core.plan.Sowing;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Tells a plan by the plants of the register: who is crossed with whom in each season, and what is
 * kept.
 *
 * @param genes by which seedlings are told apart
 * @param looked the traits they are told apart by, in the order of their appearances
 * @param parents the plants, as ways number them
 * @param relations of these
 * @param refusals which of them refuse whose pollen
 * @param shares the taxa that shares were asked of, with the least share
 * @param atLeast how many are wanted
 */
record PlanTelling(
    RegisterView view,
    PlanGenes genes,
    List<TraitModel> looked,
    List<Plant> parents,
    Relations relations,
    Refusals refusals,
    Map<String, Fraction> shares,
    int atLeast) {

  /** As likely counts as certain: it was added up. */
  private static final double SURE = 1 - 1e-9;

  /**
   * How it was reckoned, a sentence each.
   *
   * @param seasons how many seasons ahead was looked
   * @param reckoned how many plans were reckoned in full
   * @param byMap whether map distances were turned into recombination
   */
  static List<String> method(int seasons, int reckoned, boolean byMap) {
    List<String> method = new ArrayList<>();
    method.add(
        "What each plant most likely carries was worked out from everything that was seen, for all"
            + " of them in one go; ways were compared by the mean of what parents may carry.");
    if (seasons > 1) {
      method.add(
          "After the first season a kept seedling is selfed, crossed with a sib that shows the same,"
              + " or crossed with any of these plants; or two crosses are made in the first season,"
              + " and what is kept of one is crossed with what is kept of the other. Of each first"
              + " cross only the best way is shown, and a way of more seasons only if it takes fewer"
              + " seeds.");
    }
    if (seasons > 2) {
      method.add(
          "For the third season not every kept seedling was followed: a beam of the "
              + PlanSearch.BEAM
              + " best of the first season was, and as many pairs of them.");
    }
    if (reckoned > 0) {
      method.add(
          "The best "
              + reckoned
              + " were reckoned in full: the parents of each first cross with the odds of both"
              + " together, and seeds counted over all that they may be, since seeds of one plant"
              + " share what it is.");
    }
    if (byMap) {
      method.add("Map distances were turned into recombination by Haldane's function.");
    }
    return method;
  }

  /** What is doubtful of plants and of those behind them, a sentence each. */
  static List<String> doubts(RegisterView view, Collection<Code> plants) {
    return LineageNotes.of(view, view.lineage(plants).values(), plants);
  }

  /**
   * A plan.
   *
   * @param way the way it goes
   * @param leaning what its odds leaned on, a sentence each
   */
  Plan plan(PlanSearch.Found way, PlanChances chances, Sowing sowing, List<String> leaning) {
    CrossPath path = way.path();
    List<Season> told = new ArrayList<>();
    for (int season = 0; season < path.seasons(); season++) {
      boolean last = season == path.seasons() - 1;
      double chance = chances.seasonChances().get(season);
      Side[] sides = sides(path, season);
      CrossPath.Later later = last ? null : path.later().get(season);
      told.add(
          new Season(
              sides[0],
              sides[1],
              isBackcross(path, season),
              later == null ? "the wanted ones" : looks(genes.appearances().get(later.keep())),
              chance > SURE,
              chance,
              sowing.seeds().get(season),
              last ? atLeast : sowing.keep().get(season),
              last ? 0 : sowing.spare().get(season),
              later != null && later.mate() instanceof Mate.Sib,
              season == 0 ? null : setting(chances, season),
              season == 0 ? beside(path, chances, sowing) : null));
    }
    double[] made = relations.shares(path);
    List<NextCrosses.Share> asked = new ArrayList<>();
    int k = 0;
    for (Map.Entry<String, Fraction> share : shares.entrySet()) {
      asked.add(new NextCrosses.Share(share.getKey(), share.getValue(), made[k++]));
    }
    return new Plan(
        told,
        null,
        sowing.total(),
        sowing.certainty(),
        sowing.reached(),
        sowing.reachable(),
        way.inbreeding(),
        asked,
        leaning(told, leaning, refusals.leaning(path, parents, chances.settings())));
  }

  private static @Nullable Double setting(PlanChances chances, int season) {
    return chances.settings().get(season - 1).map(Setting::mean).orElse(null);
  }

  private NextCrosses.@Nullable Beside beside(CrossPath path, PlanChances chances, Sowing sowing) {
    Mate.OtherCross other = path.beside().orElse(null);
    if (other == null) {
      return null;
    }
    double chance = chances.chanceBeside().orElseThrow();
    return new NextCrosses.Beside(
        new Side(Part.PLANT, parents.get(other.seed())),
        new Side(Part.PLANT, parents.get(other.pollen())),
        looks(genes.appearances().get(other.keep())),
        chance > SURE,
        chance,
        sowing.beside(),
        sowing.keep().get(0));
  }

  /** What was taken for granted of the plants of a plan. */
  private List<String> leaning(List<Season> told, List<String> odds, List<String> setting) {
    Set<Code> plants = new LinkedHashSet<>();
    for (Season season : told) {
      List<Side> sides = new ArrayList<>(List.of(season.seed(), season.pollen()));
      NextCrosses.Beside beside = season.beside();
      if (beside != null) {
        sides.addAll(List.of(beside.seed(), beside.pollen()));
      }
      sides.stream()
          .map(Side::plant)
          .flatMap(Stream::ofNullable)
          .forEach(plant -> plants.add(plant.code()));
    }
    List<String> all = new ArrayList<>(odds);
    all.addAll(setting);
    all.addAll(doubts(view, plants));
    return all;
  }

  private String looks(List<String> states) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < states.size(); i++) {
      words.add(looked.get(i).trait() + " " + states.get(i));
    }
    return String.join(", ", words);
  }

  private Side[] sides(CrossPath path, int season) {
    if (season == 0) {
      return new Side[] {
        new Side(Part.PLANT, parents.get(path.seed())),
        new Side(Part.PLANT, parents.get(path.pollen()))
      };
    }
    Side kept = new Side(Part.KEPT, null);
    Mate mate = path.later().get(season - 1).mate();
    if (mate instanceof Mate.Plant plant) {
      Side other = new Side(Part.PLANT, parents.get(plant.candidate()));
      return plant.asSeed() ? new Side[] {other, kept} : new Side[] {kept, other};
    }
    if (mate instanceof Mate.OtherCross cross) {
      Side other = new Side(Part.OTHER, null);
      return cross.asSeed() ? new Side[] {other, kept} : new Side[] {kept, other};
    }
    return new Side[] {kept, mate instanceof Mate.Sib ? new Side(Part.SIB, null) : kept};
  }

  private static boolean isBackcross(CrossPath path, int season) {
    if (season == 0 || !(path.later().get(season - 1).mate() instanceof Mate.Plant plant)) {
      return false;
    }
    if (season == 1) {
      return plant.candidate() == path.seed() || plant.candidate() == path.pollen();
    }
    return path.later().get(season - 2).mate() instanceof Mate.Plant before
        && before.candidate() == plant.candidate();
  }
}
