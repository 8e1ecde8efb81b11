package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.Linkage.Phase;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class LinkageTest {

  /**
   * Maize, starchy and sugary, green and white base leaf: Fisher, Statistical Methods for Research
   * Workers, the worked example; Fisher and Balmukand 1928. Recomputed with R 4.2.2.
   */
  @Test
  void fishersMaizeInRepulsion() {
    Linkage linkage = Linkage.inF2(Phase.REPULSION, 1997, 906, 904, 32);

    assertThat(linkage.theta()).isCloseTo(0.0357123022, within(1e-9));
    assertThat(linkage.thetaStandardError()).isCloseTo(0.0058384232, within(1e-9));
    assertThat(linkage.recombination()).isCloseTo(0.1889769887, within(1e-9));
    // The square's error carried to its root.
    assertThat(linkage.standardError()).isCloseTo(0.0058384232 / (2 * 0.1889769887), within(1e-8));
    assertThat(linkage.lod()).isGreaterThan(3);
  }

  /** Sweet pea, flower colour and pollen shape: Punnett's larger series, counts from memory. */
  @Test
  void punnettsSweetPeasInCoupling() {
    Linkage linkage = Linkage.inF2(Phase.COUPLING, 4831, 390, 393, 1338);

    assertThat(linkage.theta()).isCloseTo(0.7743079889, within(1e-9));
    assertThat(linkage.recombination()).isCloseTo(0.1200522806, within(1e-9));
  }

  /** Maize, Hutchison's test crosses, counts from memory; ratios by R 4.2.2. */
  @Test
  void hutchisonsTestCrosses() {
    assertThat(Linkage.inBackcross(4032 + 4035, 149 + 152).recombination())
        .isCloseTo(0.0359703633, within(1e-9));
    assertThat(Linkage.inBackcross(21379 + 21096, 638 + 672).recombination())
        .isCloseTo(0.0299189220, within(1e-9));
  }

  /** Ten of ten parental: LOD is 10 log10 2 = 3.0103, the textbook's least number. */
  @Test
  void tenGametesWithoutRecombinationAreALodOfThree() {
    Linkage linkage = Linkage.inBackcross(10, 0);

    assertThat(linkage.recombination()).isZero();
    assertThat(linkage.lod()).isCloseTo(10 * Math.log10(2), within(1e-12));
  }

  @Test
  void independentLociAreHalfRecombined() {
    Linkage linkage = Linkage.inF2(Phase.COUPLING, 900, 300, 300, 100);

    assertThat(linkage.recombination()).isCloseTo(0.5, within(1e-12));
    assertThat(linkage.lod()).isCloseTo(0, within(1e-9));
  }

  /** Whatever was counted, the estimate is where the likelihood is greatest on a fine grid. */
  @Property(tries = 200)
  void noOtherRecombinationIsLikelier(
      @ForAll Phase phase,
      @ForAll @IntRange(max = 90) int both,
      @ForAll @IntRange(max = 40) int first,
      @ForAll @IntRange(max = 40) int second,
      @ForAll @IntRange(min = 1, max = 40) int neither) {
    Linkage linkage = Linkage.inF2(phase, both, first, second, neither);

    double best = logLikelihood(phase, linkage.recombination(), both, first + second, neither);
    for (int step = 1; step <= 500; step++) {
      assertThat(logLikelihood(phase, step / 1000.0, both, first + second, neither))
          .isLessThanOrEqualTo(best + 1e-9);
    }
  }

  private static double logLikelihood(Phase phase, double r, int both, int one, int neither) {
    double theta = phase == Phase.COUPLING ? (1 - r) * (1 - r) : r * r;
    return both * Math.log((2 + theta) / 4)
        + (one == 0 ? 0 : one * Math.log((1 - theta) / 4))
        + neither * Math.log(theta / 4);
  }

  /** Three to one of both together is no recombination at all, whatever rounding makes of it. */
  @Property
  void allParentalInCouplingIsNoRecombination(@ForAll @IntRange(min = 1) int neither) {
    Linkage linkage = Linkage.inF2(Phase.COUPLING, 3L * neither, 0, 0, neither);

    assertThat(linkage.recombination()).isCloseTo(0, within(1e-12));
    assertThat(linkage.standardError()).isCloseTo(0, within(1e-7));
    assertThat(linkage.lod()).isPositive();
  }

  /**
   * No plant recessive in both says little in repulsion: the error tends to one by the root of n.
   */
  @Test
  void noneRecessiveInBothLeavesRepulsionUnsure() {
    Linkage linkage = Linkage.inF2(Phase.REPULSION, 50, 25, 25, 0);

    assertThat(linkage.recombination()).isZero();
    assertThat(linkage.standardError()).isCloseTo(0.1, within(1e-12));
  }

  /** One such in a thousand million: 2/499,999,999, less 3.2e-17 of the next order, by hand. */
  @Test
  void oneInAVeryLargeFamilyKeepsItsDigits() {
    Linkage linkage = Linkage.inF2(Phase.REPULSION, 500_000_000, 250_000_000, 249_999_999, 1);

    assertThat(linkage.theta()).isCloseTo(3.999999976e-9, within(1e-17));
  }

  @Property
  void whateverWasCountedEveryFigureIsANumber(
      @ForAll Phase phase,
      @ForAll @IntRange(max = 5) int both,
      @ForAll @IntRange(max = 5) int first,
      @ForAll @IntRange(max = 5) int second,
      @ForAll @IntRange(max = 5) int neither) {
    Assume.that(both + first + second + neither > 0);
    Linkage linkage = Linkage.inF2(phase, both, first, second, neither);

    assertThat(linkage.recombination()).isBetween(0.0, 0.5);
    assertThat(linkage.theta()).isBetween(0.0, 1.0);
    assertThat(linkage.standardError()).isFinite();
    assertThat(linkage.thetaStandardError()).isFinite();
    assertThat(linkage.lod()).isFinite().isNotNegative();
  }

  @Test
  void countsThatAreNoneAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Linkage.inF2(Phase.COUPLING, 1, 2, -3, 4))
        .withMessage("a count of -3; counts are 0 or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Linkage.inF2(Phase.REPULSION, 0, 0, 0, 0))
        .withMessage("a family of none; there is nothing to test");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Linkage.inBackcross(4, -1))
        .withMessage("a count of -1; counts are 0 or more");
    assertThatIllegalArgumentException().isThrownBy(() -> Linkage.inBackcross(0, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Linkage.sharesInF2(Phase.COUPLING, 1.2))
        .withMessage("a recombination of 1.2; it lies from 0 to 1");
  }
}
