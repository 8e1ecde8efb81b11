package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.Proportion.Interval;
import org.junit.jupiter.api.Test;

class ProportionTest {

  /** By R 4.2.2, binom.test and prop.test without correction. */
  @Test
  void eighteenOfTwentyFive() {
    Interval exact = new Proportion(18, 25).exact(0.95);
    assertThat(exact.lower()).isCloseTo(0.5061231782, within(1e-9));
    assertThat(exact.upper()).isCloseTo(0.8792833115, within(1e-9));

    Interval score = new Proportion(18, 25).score(0.95);
    assertThat(score.lower()).isCloseTo(0.5242339481, within(1e-9));
    assertThat(score.upper()).isCloseTo(0.8571614615, within(1e-9));
  }

  @Test
  void noneAndAllHaveAnOpenEnd() {
    assertThat(new Proportion(0, 10).exact(0.95).lower()).isZero();
    assertThat(new Proportion(10, 10).exact(0.95).upper()).isEqualTo(1);
    // The rule of three: none of n leaves about 3/n open.
    assertThat(new Proportion(0, 100).exact(0.90).upper()).isCloseTo(0.03, within(0.001));
  }

  @Test
  void whatIsNoProportionIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Proportion(3, 2))
        .withMessage("3 of 2 is no proportion; it is 0 or more out of 1 or more");
    assertThatIllegalArgumentException().isThrownBy(() -> new Proportion(1, 2).exact(95));
  }
}
