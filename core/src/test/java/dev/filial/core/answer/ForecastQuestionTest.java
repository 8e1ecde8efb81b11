package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.ELEGANS;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.ForecastQuestion.Forecast;
import dev.filial.core.answer.ForecastQuestion.Likeness;
import dev.filial.core.answer.ForecastQuestion.OfMeasure;
import dev.filial.core.answer.ForecastQuestion.OfStates;
import dev.filial.core.name.Code;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.trial.LikeCrosses;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What a cross may bring where no gene is known. */
class ForecastQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);

  private void bloom() {
    bench.say(new TraitDeclared("bloom", List.of("thick", "thin"), null, null, null, null));
  }

  private void tallied(Code cross, long thick, long thin) {
    Code sowing = bench.sowing(bench.harvest(cross), "2025-10-01", 1);
    bench.say(
        new Tallied(
            sowing,
            "bloom",
            Map.of("thick", thick, "thin", thin),
            PartialDate.parse("2026-01-01"),
            null));
  }

  private Forecast ask(String trait, Code seed, Code pollen) {
    return ForecastQuestion.of(bench.store).ask(trait, seed, pollen);
  }

  private OfStates states(Code seed, Code pollen) {
    return Objects.requireNonNull(ask("bloom", seed, pollen).states());
  }

  @Test
  void crossesOfTheSameTwoPlantsEitherWayRoundAndOfTheirOffsetsAreLike() {
    bloom();
    Code one = bench.cross(laui, agavoides);
    Code reciprocal = bench.cross(agavoides, laui);
    Code ofOffset = bench.cross(bench.offset(laui, false), agavoides);
    tallied(one, 12, 4);
    tallied(reciprocal, 10, 6);
    tallied(ofOffset, 11, 5);

    OfStates found = states(laui, agavoides);
    assertThat(found.likeness()).isEqualTo(Likeness.SAME_PLANTS);
    assertThat(found.families()).containsExactlyInAnyOrder(one, reciprocal, ofOffset);
    assertThat(found.seedlings()).isEqualTo(48);
    assertThat(found.states().get(0).share()).isCloseTo(33 / 48.0, within(1e-12));
    assertThat(found.basis()).isEqualTo(LikeCrosses.Basis.FAMILIES_ALIKE);
  }

  @Test
  void withoutTheSamePlantsThoseOfTheSameTaxaMustDo() {
    bloom();
    Code family = bench.cross(bench.plant(LAUI), bench.plant(AGAVOIDES));
    tallied(family, 12, 4);

    OfStates found = states(laui, agavoides);
    assertThat(found.likeness()).isEqualTo(Likeness.SAME_TAXA);
    assertThat(found.basis()).isEqualTo(LikeCrosses.Basis.ONE_FAMILY);
    assertThatThrownBy(() -> states(laui, bench.plant(ELEGANS)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("nothing to forecast from");
  }

  @Test
  void familiesThatDifferWidenTheRange() {
    bloom();
    tallied(bench.cross(laui, agavoides), 20, 0);
    tallied(bench.cross(laui, agavoides), 10, 10);
    tallied(bench.cross(laui, agavoides), 2, 18);

    OfStates found = states(laui, agavoides);
    assertThat(found.basis()).isEqualTo(LikeCrosses.Basis.FAMILIES_DIFFER);
    assertThat(found.states().get(0).fewest()).isLessThan(3);
    assertThat(Objects.requireNonNull(found.differing())).isLessThan(1e-6);
  }

  @Test
  void aSizeFollowsTheMeanOfTheParents() {
    bench.say(new TraitDeclared("width", List.of(), null, null, "mm", null));
    // Three families whose means lie on a line through their parents' means.
    Code[] parents = {bench.plant(LAUI), bench.plant(LAUI), bench.plant(LAUI), bench.plant(LAUI)};
    String[] widths = {"40", "60", "80", "100"};
    for (int i = 0; i < parents.length; i++) {
      bench.showed(parents[i], "width", widths[i]);
    }
    for (int i = 0; i < 3; i++) {
      Code cross = bench.cross(parents[i], parents[i + 1]);
      bench.showed(bench.seedling(cross), "width", Integer.toString(55 + 10 * i));
      bench.showed(bench.seedling(cross), "width", Integer.toString(57 + 10 * i));
    }

    OfMeasure found = Objects.requireNonNull(ask("width", parents[0], parents[3]).measure());
    assertThat(found.midParent()).isEqualTo(70);
    assertThat(found.families()).hasSize(3);
    assertThat(found.line().slope()).isCloseTo(0.5, within(1e-12));
    assertThat(found.prediction().mean()).isCloseTo(66, within(1e-12));
  }

  @Test
  void parentsThatWereNeverMeasuredAreNamed() {
    bench.say(new TraitDeclared("width", List.of(), null, null, "mm", null));
    assertThatThrownBy(() -> ask("width", laui, agavoides))
        .hasMessageContaining(laui.text() + " was never measured for width");
    assertThatThrownBy(() -> ForecastQuestion.of(bench.store).forNext(0))
        .hasMessageContaining("ask for 1 or more");
    assertThatThrownBy(() -> ForecastQuestion.of(bench.store).withCertainty(1))
        .hasMessageContaining("between 0 and 1");
  }
}
