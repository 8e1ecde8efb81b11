package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.ComparisonQuestion.Comparison;
import dev.filial.core.answer.GerminationQuestion.By;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.trial.TwoProportions.Method;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two ways of sowing held against each other. */
class ComparisonQuestionTest {

  private final SownBench sown = new SownBench();
  private final InventedBench bench = sown.bench;
  private final Code laui = bench.plant(LAUI);
  private final Code cross = bench.cross(laui, bench.plant(AGAVOIDES));
  private final Code lot = bench.harvest(cross);

  private Code on(Code seed, String medium, String seeds, String up) {
    Code sowing = sown.sown(seed, "2025-10-01", seeds, 0, medium);
    sown.counted(sowing, "2025-11-01", up, null);
    return sowing;
  }

  @Test
  void twoSowingsByChiSquare() {
    Code one = on(lot, "pumice", "20", "16");
    Code other = on(lot, "peat", "20", "12");

    Comparison found = ComparisonQuestion.of(bench.store).ask(one, other);
    // 28 of 40 came up, so 12 are expected not to in both, 6 in each; values by R in germination.R.
    assertThat(found.leastExpected()).isEqualTo(6);
    assertThat(found.method()).isEqualTo(Method.CHI_SQUARE);
    assertThat(found.chiSquare()).isCloseTo(1.9047619048, within(1e-9));
    assertThat(found.p()).isCloseTo(0.1675462775, within(1e-9));
    assertThat(found.difference()).isCloseTo(0.2, within(1e-12));
    assertThat(found.lower()).isCloseTo(-0.0819478742, within(1e-9));
    assertThat(found.upper()).isCloseTo(0.4445200387, within(1e-9));
    assertThat(found.notes()).hasSize(1);
    assertThat(found.notes().get(0)).startsWith("One sowing stands against one");
  }

  @Test
  void fewSeedsByTheExactTest() {
    on(lot, "pumice", "10", "9");
    on(lot, "peat", "10", "3");

    Comparison found =
        ComparisonQuestion.of(bench.store).within(cross).ask(By.MEDIUM, "PUMICE", "pea");
    assertThat(found.method()).isEqualTo(Method.EXACT);
    assertThat(found.chiSquare()).isNull();
    assertThat(found.p()).isCloseTo(0.0197666111, within(1e-9));
    assertThat(found.one().label()).isEqualTo("pumice");
    assertThat(found.other().label()).isEqualTo("peat");
  }

  @Test
  void otherSeedOnEitherSideIsSaid() {
    Code colorata = bench.harvest(bench.cross(laui, bench.plant(COLORATA)));
    on(lot, "pumice", "10", "9");
    on(lot, "pumice", "10", "8");
    on(colorata, "peat", "10", "3");

    assertThat(ComparisonQuestion.of(bench.store).ask(By.MEDIUM, "pumice", "peat").notes())
        .containsExactly(
            "The two sides are not of the same crosses and packets, so it may be the seed that"
                + " makes the difference.");
  }

  @Test
  void whatIsNotCountedIsLeftOutAndAloneIsRefused() {
    Code counted = on(lot, "pumice", "10", "9");
    Code guessed = on(lot, "pumice", "~10", "9");
    on(lot, "peat", "10", "3");

    Comparison found = ComparisonQuestion.of(bench.store).ask(By.MEDIUM, "pumice", "peat");
    assertThat(found.one().seeds()).isEqualTo(10);
    assertThat(found.leftOut())
        .containsExactly(
            new GerminationQuestion.LeftOut("how many were sown is a guess", List.of(guessed)));
    assertThatThrownBy(() -> ComparisonQuestion.of(bench.store).ask(counted, guessed))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("can be reckoned with: " + guessed.text() + ", how many were sown");
  }

  @Test
  void sidesThatShareASowingOrAreNotThereAreRefused() {
    Code sowing = on(lot, "pumice", "10", "9");
    on(lot, "pumice and sand", "10", "9");

    assertThatThrownBy(() -> ComparisonQuestion.of(bench.store).ask(cross, sowing))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("have " + sowing.text() + " in common");
    assertThatThrownBy(() -> ComparisonQuestion.of(bench.store).ask(By.MEDIUM, "bark", "pumice"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("no sowing has \"bark\"; there are: pumice; pumice and sand");
    assertThatThrownBy(() -> ComparisonQuestion.of(bench.store).ask(By.MEDIUM, "pum", "sand"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("\"pum\" may be several of them; there are: pumice; pumice and sand");
  }
}
