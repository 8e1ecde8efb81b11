package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.answer.NextCrosses.Part;
import dev.filial.core.answer.NextCrosses.Plan;
import dev.filial.core.answer.NextCrosses.Plant;
import dev.filial.core.answer.NextCrosses.Season;
import dev.filial.core.answer.NextCrosses.Side;
import dev.filial.core.name.Code;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans that differ by one of the plants they begin with are told once. */
class AlikePlansTest {

  private static final Plant ROSA = plant(1);
  private static final Plant LILO = plant(2);
  private static final Plant ANNA = plant(3);
  private static final Plant NOVA = plant(4);

  private static Plant plant(int number) {
    return new Plant(Code.of(24, number), "Echeveria laui", List.of());
  }

  private static Side side(Plant plant) {
    return new Side(Part.PLANT, plant);
  }

  private static Season season(Side seed, Side pollen, double chance) {
    return new Season(seed, pollen, false, "edge red", false, chance, 7, 1, 0, false, null, null);
  }

  private static Plan plan(Season... seasons) {
    return new Plan(List.of(seasons), null, 7, 0.95, true, 1, 0.125, List.of(), List.of());
  }

  private static Plan cross(Plant seed, Plant pollen, double chance) {
    return plan(season(side(seed), side(pollen), chance));
  }

  @Test
  void sistersOfWhichTheSameIsKnownStandBesideTheFirst() {
    List<Plan> told =
        AlikePlans.together(
            List.of(
                cross(ROSA, LILO, 0.5), cross(ROSA, ANNA, 0.5 + 1e-13), cross(ROSA, NOVA, 0.25)));
    assertThat(told).hasSize(2);
    assertThat(told.get(0).instead()).isEqualTo(new NextCrosses.Instead(LILO, List.of(ANNA)));
    assertThat(told.get(0).seasons().get(0).pollen().plant()).isEqualTo(LILO);
    assertThat(told.get(1).instead()).isNull();
  }

  @Test
  void onlyOneOfTheTwoParentsIsReplaced() {
    List<Plan> told =
        AlikePlans.together(
            List.of(cross(ROSA, LILO, 0.5), cross(ANNA, LILO, 0.5), cross(ROSA, NOVA, 0.5)));
    assertThat(told).hasSize(2);
    assertThat(told.get(0).instead()).isEqualTo(new NextCrosses.Instead(ROSA, List.of(ANNA)));
    assertThat(told.get(1).seasons().get(0).pollen().plant()).isEqualTo(NOVA);
  }

  @Test
  void aPlantThatComesBackIsReplacedEachTime() {
    Side kept = new Side(Part.KEPT, null);
    Plan back = plan(season(side(ROSA), side(LILO), 1), season(kept, side(LILO), 0.5));
    Plan likewise = plan(season(side(ROSA), side(ANNA), 1), season(kept, side(ANNA), 0.5));
    Plan other = plan(season(side(ROSA), side(ANNA), 1), season(kept, side(LILO), 0.5));
    List<Plan> told = AlikePlans.together(List.of(back, likewise, other));
    assertThat(told).hasSize(2);
    assertThat(told.get(0).instead()).isEqualTo(new NextCrosses.Instead(LILO, List.of(ANNA)));
  }

  @Test
  void selfingsOfSistersAreAlikeToo() {
    List<Plan> told =
        AlikePlans.together(List.of(cross(LILO, LILO, 0.25), cross(ANNA, ANNA, 0.25)));
    assertThat(told).hasSize(1);
    assertThat(told.get(0).instead()).isEqualTo(new NextCrosses.Instead(LILO, List.of(ANNA)));
  }
}
