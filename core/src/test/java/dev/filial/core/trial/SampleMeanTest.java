package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Values by R 4.2.2, in core/src/test/reference/germination.R. */
class SampleMeanTest {

  /** Hours of sleep gained with a drug: Student 1908, Biometrika 6:1-25, as in R's sleep data. */
  @Test
  void theSleepOfStudentsPatients() {
    SampleMean mean = SampleMean.of(List.of(0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0));

    assertThat(mean.mean()).isCloseTo(0.75, within(1e-12));
    assertThat(mean.deviation().orElseThrow()).isCloseTo(1.7890096578, within(1e-9));
    assertThat(mean.interval(0.95).orElseThrow().lower()).isCloseTo(-0.5297804135, within(1e-9));
    assertThat(mean.interval(0.95).orElseThrow().upper()).isCloseTo(2.0297804135, within(1e-9));
    assertThat(mean.least()).isEqualTo(-1.6);
    assertThat(mean.most()).isEqualTo(3.7);
  }

  @Test
  void fourWidthsAndWhatTheyAreOffFromForty() {
    SampleMean mean = SampleMean.of(List.of(41.0, 44.0, 38.0, 52.0));

    assertThat(mean.interval(0.95).orElseThrow().less(40).lower())
        .isCloseTo(34.1695679557 - 40, within(1e-9));
    assertThat(mean.error().orElseThrow()).isCloseTo(6.0207972894 / 2, within(1e-9));
  }

  @Test
  void oneAloneHasNoSpread() {
    assertThat(SampleMean.of(List.of(41.0)).deviation()).isEmpty();
    assertThat(SampleMean.of(List.of(41.0)).interval(0.95)).isEmpty();
    assertThatIllegalArgumentException().isThrownBy(() -> SampleMean.of(List.of()));
  }

  /** Two scores of 1 to 5 tell next to nothing, and no mean is below 1. */
  @Test
  void theRangeOfAMeanEndsWhereTheScaleDoes() {
    assertThat(new SampleMean.Ends(-9.71, 15.71).within(1, 5)).isEqualTo(new SampleMean.Ends(1, 5));
    assertThat(new SampleMean.Ends(2, 3).within(1, 5)).isEqualTo(new SampleMean.Ends(2, 3));
  }
}
