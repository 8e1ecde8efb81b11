package dev.filial.core.answer;

import dev.filial.core.answer.NextCrosses.Instead;
import dev.filial.core.answer.NextCrosses.Plan;
import dev.filial.core.answer.NextCrosses.Plant;
import dev.filial.core.answer.NextCrosses.Season;
import dev.filial.core.answer.NextCrosses.Side;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts plans together that differ by nothing but one of the two plants they begin with: sister
 * seedlings of which the same is known do equally well, and ten of them would fill a list.
 */
final class AlikePlans {

  /** Chances and shares of such plans are the same up to the order in which they were added up. */
  private static final double ALIKE = 1e-9;

  private AlikePlans() {}

  /** The first of each kind, in their order, with the plants that do as well. */
  static List<Plan> together(List<Plan> plans) {
    List<Kind> kinds = new ArrayList<>();
    for (Plan plan : plans) {
      if (kinds.stream().noneMatch(kind -> kind.takes(plan))) {
        kinds.add(new Kind(plan));
      }
    }
    return kinds.stream().map(Kind::plan).toList();
  }

  private static final class Kind {
    private final Plan first;
    private final Set<String> notes = new LinkedHashSet<>();
    private final List<Plant> others = new ArrayList<>();

    /** The plant that the others stand for, once there are any. */
    private Optional<Plant> replaced = Optional.empty();

    Kind(Plan first) {
      this.first = first;
      notes.addAll(first.notes());
    }

    boolean takes(Plan plan) {
      Season begun = first.seasons().get(0);
      Season other = plan.seasons().get(0);
      NextCrosses.Beside beside = begun.beside();
      NextCrosses.Beside its = other.beside();
      return takes(plan, begun.pollen(), other.pollen())
          || takes(plan, begun.seed(), other.seed())
          || (beside != null
              && its != null
              && (takes(plan, beside.pollen(), its.pollen())
                  || takes(plan, beside.seed(), its.seed())));
    }

    private boolean takes(Plan plan, Side mine, Side its) {
      Plant old = mine.plant();
      Plant fresh = its.plant();
      if (old == null
          || fresh == null
          || old.equals(fresh)
          || !replaced.orElse(old).equals(old)
          || !isAlike(plan, its, mine)) {
        return false;
      }
      replaced = Optional.of(old);
      others.add(fresh);
      notes.addAll(plan.notes());
      return true;
    }

    private boolean isAlike(Plan plan, Side its, Side mine) {
      boolean alike =
          plan.total() == first.total()
              && plan.reached() == first.reached()
              && near(plan.certainty(), first.certainty())
              && near(plan.reachable(), first.reachable())
              && near(plan.inbreeding(), first.inbreeding())
              && plan.seasons().size() == first.seasons().size();
      for (int i = 0; alike && i < plan.shares().size(); i++) {
        alike = near(plan.shares().get(i).share(), first.shares().get(i).share());
      }
      for (int i = 0; alike && i < plan.seasons().size(); i++) {
        alike = isAlike(plan.seasons().get(i), first.seasons().get(i), its, mine);
      }
      return alike;
    }

    private static boolean isAlike(Season season, Season other, Side its, Side mine) {
      NextCrosses.Beside beside = season.beside();
      NextCrosses.Beside second = other.beside();
      if (season.seed().equals(mine)
          || season.pollen().equals(mine)
          || (beside != null && (beside.seed().equals(mine) || beside.pollen().equals(mine)))) {
        return false; // the one plant and the other, and not the one for the other
      }
      Season with =
          new Season(
              replaced(season.seed(), its, mine),
              replaced(season.pollen(), its, mine),
              season.backcross(),
              season.keep(),
              season.all(),
              other.chance(),
              season.seeds(),
              season.kept(),
              season.spare(),
              season.pairs(),
              other.setting(),
              beside == null
                  ? null
                  : new NextCrosses.Beside(
                      replaced(beside.seed(), its, mine),
                      replaced(beside.pollen(), its, mine),
                      beside.keep(),
                      beside.all(),
                      second == null ? beside.chance() : second.chance(),
                      beside.seeds(),
                      beside.kept()));
      return with.equals(other)
          && near(season.chance(), other.chance())
          && near(season.setting(), other.setting())
          && (beside == null || second == null || near(beside.chance(), second.chance()));
    }

    private static Side replaced(Side side, Side its, Side mine) {
      return side.equals(its) ? mine : side;
    }

    private static boolean near(@Nullable Double one, @Nullable Double other) {
      if (one == null || other == null) {
        return Objects.equals(one, other);
      }
      return near(one.doubleValue(), other.doubleValue());
    }

    private static boolean near(double one, double other) {
      return Math.abs(one - other) < ALIKE;
    }

    Plan plan() {
      return replaced
          .map(
              plant ->
                  new Plan(
                      first.seasons(),
                      new Instead(plant, others),
                      first.total(),
                      first.certainty(),
                      first.reached(),
                      first.reachable(),
                      first.inbreeding(),
                      first.shares(),
                      List.copyOf(notes)))
          .orElse(first);
    }
  }
}
