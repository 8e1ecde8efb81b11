package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.weighted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.PlantsBehindQuestion.Parent;
import dev.filial.core.answer.PlantsBehindQuestion.Part;
import dev.filial.core.answer.PlantsBehindQuestion.Plant;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Pollen;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlantsBehindQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(Determination.of(LAUI), "KB 12", "Rosa");
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code colorata = bench.plant(COLORATA);
  private final Code f1 = bench.seedling(bench.cross(laui, agavoides));

  private PlantsBehind ask(Code code) {
    return PlantsBehindQuestion.of(bench.store).ask(code);
  }

  private static String text(Parent parent) {
    return parent.offspring()
        + " "
        + parent.role().text()
        + " "
        + parent.parent()
        + (parent.isCertain() ? "" : " " + parent.share() + " " + parent.ways());
  }

  @Test
  void anAncestorReachedByTwoWaysIsThereOnce() {
    Code f2 = bench.seedling(bench.selfed(f1));
    Code back = bench.cross(f2, f1);

    PlantsBehind behind = ask(back);

    assertThat(behind.plants().stream().map(Plant::name))
        .containsExactly(laui.text(), agavoides.text(), f1.text(), f2.text(), back.text());
    assertThat(behind.parents().stream().map(PlantsBehindQuestionTest::text))
        .containsExactly(
            f1.text() + " seed parent " + laui.text(),
            f1.text() + " pollen parent " + agavoides.text(),
            f2.text() + " selfed " + f1.text(),
            back.text() + " seed parent " + f2.text(),
            back.text() + " pollen parent " + f1.text());
    assertThat(behind.plants().get(0).what()).isEqualTo("Echeveria laui KB 12");
    assertThat(behind.plants().get(0).names()).containsExactly("Rosa");
    assertThat(behind.plants().get(3).generation()).isEqualTo("F2");
  }

  @Test
  void theParentOfEveryWayIsOneLineAndThoseOfSomeWaysHaveTheirShare() {
    Code open =
        bench
            .pollination(f1, new Pollen.Open(weighted(laui, 1, colorata, 1), Fraction.of(1, 2)))
            .made();

    PlantsBehind behind = ask(open);

    assertThat(behind.parents().stream().skip(2).map(PlantsBehindQuestionTest::text))
        .containsExactly(
            open.text() + " seed parent " + f1.text(),
            open.text() + " pollen parent " + laui.text() + " 1/4 [open pollination]",
            open.text() + " pollen parent " + colorata.text() + " 1/4 [open pollination]",
            open.text() + " pollen parent null 1/2 [open pollination]");
    // Half of the egg's, and a quarter of half of the pollen's each; half of the pollen is unknown.
    assertThat(behind.plants().get(behind.plants().size() - 1).parts())
        .containsExactlyInAnyOrder(
            new Part(AGAVOIDES, 0.25),
            new Part(LAUI, 0.375),
            new Part(COLORATA, 0.125),
            new Part("unknown", 0.25));
    assertThat(behind.taxa()).containsExactly(LAUI, AGAVOIDES, COLORATA);
  }

  @Test
  void accidentalSelfsMakeTheSeedParentADoubtfulPollenParentToo() {
    Code cross =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).shares("1/10", "0", "1/5").made();

    assertThat(ask(cross).parents().stream().map(PlantsBehindQuestionTest::text))
        .containsExactly(
            cross.text() + " seed parent " + laui.text() + " 4/5 [cross, selfing]",
            cross.text() + " pollen parent " + agavoides.text() + " 7/10 [cross]",
            cross.text() + " pollen parent " + laui.text() + " 1/10 [selfing]",
            cross.text() + " a repeat of " + laui.text() + " 1/5 [apomixis]");
  }

  @Test
  void theBoundOnGenerationsCountsTheShortestWay() {
    Code f2 = bench.seedling(bench.selfed(f1));
    Code back = bench.cross(f2, f1);

    PlantsBehind near = PlantsBehindQuestion.of(bench.store).withGenerations(1).ask(back);

    assertThat(near.plants().stream().map(Plant::name))
        .containsExactly(f1.text(), f2.text(), back.text());
    assertThat(near.plants().stream().map(Plant::cut)).containsExactly(true, true, false);
    assertThat(near.parents()).hasSize(2);
    assertThatThrownBy(() -> PlantsBehindQuestion.of(bench.store).withGenerations(0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("1 generation or more");
  }

  @Test
  void aPlantThatWasAcquiredStandsAlone() {
    PlantsBehind alone = ask(colorata);

    assertThat(alone.plants()).singleElement().extracting(Plant::cut).isEqualTo(false);
    assertThat(alone.parents()).isEmpty();
    assertThat(alone.taxa()).isEqualTo(List.of(COLORATA));
  }
}
