package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeedsToSowTest {

  private static final int[] WANTED = {1, 2, 3, 4, 5, 6, 8, 10, 15};

  /**
   * Sedcole 1977, Crop Science 17:667-668, rows recomputed with the exact binomial in R 4.2.2; the
   * columns are 1, 2, 3, 4, 5, 6, 8, 10 and 15 plants wanted.
   */
  @ParameterizedTest
  @CsvSource({
    "0.95, 2, 5 8 11 13 16 18 23 28 40",
    "0.95, 4, 11 18 23 29 34 40 50 60 84",
    "0.95, 8, 23 37 49 60 71 82 103 123 172",
    "0.95, 16, 47 75 99 122 144 166 208 248 347",
    "0.99, 2, 7 11 14 17 19 22 27 33 45",
    "0.99, 4, 17 24 31 37 43 49 60 70 96",
    "0.99, 16, 72 104 132 158 182 206 252 296 402",
    "0.99, 64, 293 423 535 640 739 835 1020 1198 1623"
  })
  void sedcolesTable(double certainty, int oneIn, String row) {
    String[] expected = row.split(" ", -1);
    for (int i = 0; i < WANTED.length; i++) {
      assertThat(SeedsToSow.of(1.0 / oneIn).seeds(WANTED[i], certainty))
          .as("%s of one in %s at %s", WANTED[i], oneIn, certainty)
          .isEqualTo(Integer.parseInt(expected[i]));
    }
  }

  /**
   * Three of a quarter at 95 %, 18 of 25 having germinated: by R 4.2.2, the beta-binomial under a
   * flat prior summed; the share alone would say 33.
   */
  @Test
  void aCountedGerminationNeedsMoreSeedThanItsShareSays() {
    SeedsToSow quarter = SeedsToSow.of(0.25);

    assertThat(quarter.withRate(new Proportion(18, 25)).seeds(3, 0.95)).isEqualTo(35);
    assertThat(quarter.withRate(18 / 25.0).seeds(3, 0.95)).isEqualTo(33);
  }

  /** Fisher 1936: ten seeds of a heterozygote show no recessive with chance 0.75 to the tenth. */
  @Test
  void tenSeedsMayMissTheRecessive() {
    assertThat(1 - SeedsToSow.of(0.25).chanceOf(1, 10)).isCloseTo(0.0563135, within(1e-7));
  }

  @Test
  void aRateCountedOverAndOverIsAsGoodAsKnown() {
    SeedsToSow known = SeedsToSow.of(0.25).withRate(0.72);
    SeedsToSow counted = SeedsToSow.of(0.25).withRate(new Proportion(720_000, 1_000_000));

    assertThat(counted.chanceOf(3, 33)).isCloseTo(known.chanceOf(3, 33), within(1e-5));
  }

  /** Of seed that all but surely germinates and lives, the counts after both rates are summed. */
  @Test
  void twoCountedRatesAreDrawnOneAfterTheOther() {
    SeedsToSow twice =
        SeedsToSow.of(1).withRate(new Proportion(1, 2)).withRate(new Proportion(1, 2));

    // From one seed: the mean of each rate is a half, so a quarter.
    assertThat(twice.chanceOf(1, 1)).isCloseTo(0.25, within(1e-12));
    // From two: E[1 − (1 − pq)²] = 2 E[p]E[q] − E[p²]E[q²], of Beta(2, 2) 0.5 and 0.3.
    assertThat(twice.chanceOf(1, 2)).isCloseTo(2 * 0.25 - 0.3 * 0.3, within(1e-12));
  }

  @Property
  void moreSeedNeverMakesItLessLikely(
      @ForAll @IntRange(min = 1, max = 20) int wanted,
      @ForAll @IntRange(min = 1, max = 200) int seeds,
      @ForAll @IntRange(min = 1, max = 64) int oneIn,
      @ForAll @IntRange(max = 30) int up) {
    SeedsToSow sow = SeedsToSow.of(1.0 / oneIn).withRate(new Proportion(up, 30));

    assertThat(sow.chanceOf(wanted, seeds + 1))
        .isGreaterThanOrEqualTo(sow.chanceOf(wanted, seeds) - 1e-12);
    assertThat(sow.chanceOf(wanted + 1, seeds)).isLessThanOrEqualTo(sow.chanceOf(wanted, seeds));
  }

  @Test
  void whatCannotBeAnsweredIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SeedsToSow.of(0))
        .withMessageStartingWith("a chance of the wanted type of 0.0; it lies above 0");
    assertThatIllegalArgumentException().isThrownBy(() -> SeedsToSow.of(1).withRate(1.5));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SeedsToSow.of(0.5).seeds(0, 0.95))
        .withMessageStartingWith("at least 0 wanted; ask for 1 or more");
    assertThatIllegalArgumentException().isThrownBy(() -> SeedsToSow.of(0.5).seeds(1, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SeedsToSow.of(1e-12).seeds(1, 0.95))
        .withMessageStartingWith("more than 10000000 seeds would be needed");
  }
}
