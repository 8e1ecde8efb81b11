package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FamiliesTest {

  /** Mendel 1866, all seven characters of the pea; by R 4.2.2. */
  @Test
  void mendelsSevenCharactersAgree() {
    Families families =
        Families.test(
            Ratio.of(3, 1),
            List.of(
                new long[] {5474, 1850},
                new long[] {6022, 2001},
                new long[] {705, 224},
                new long[] {882, 299},
                new long[] {428, 152},
                new long[] {651, 207},
                new long[] {787, 277}));

    assertThat(families.pooled().statistic()).isCloseTo(0.1095746280, within(1e-9));
    assertThat(families.pooled().p()).isCloseTo(0.7406289364, within(1e-9));
    assertThat(families.heterogeneity()).isCloseTo(2.0292935379, within(1e-9));
    assertThat(families.heterogeneityDegreesOfFreedom()).isEqualTo(6);
    assertThat(families.heterogeneityP()).isCloseTo(0.9169848469, within(1e-9));
    assertThat(families.totalDegreesOfFreedom()).isEqualTo(7);
  }

  @Test
  void familiesThatDifferShowItThoughTheirSumFits() {
    Families families =
        Families.test(Ratio.of(1, 1), List.of(new long[] {40, 10}, new long[] {10, 40}));

    assertThat(families.pooled().p()).isEqualTo(1);
    assertThat(families.heterogeneityP()).isLessThan(1e-6);
  }

  /**
   * SciPy 1.17.1, {@code power_divergence(..., lambda_="log-likelihood")}: G of 31:9 against 3:1 is
   * 0.1364797332, of 20:20 11.5072828981, of their sums 51:29 4.9737554643; what is left over,
   * 6.6700071669, has p 0.0098048794 by {@code chi2.sf} with one degree of freedom.
   */
  @Test
  void askedForGAllIsTestedByG() {
    List<long[]> families = List.of(new long[] {31, 9}, new long[] {20, 20});
    Families byG = Families.test(Ratio.of(3, 1), families, Optional.of(Fit.Method.G));
    assertThat(byG.method()).isEqualTo(Fit.Method.G);
    assertThat(byG.families().get(0).statistic()).isCloseTo(0.1364797332, within(1e-9));
    assertThat(byG.total()).isCloseTo(0.1364797332 + 11.5072828981, within(1e-9));
    assertThat(byG.pooled().statistic()).isCloseTo(4.9737554643, within(1e-9));
    assertThat(byG.pooled().p()).isCloseTo(0.0257347124, within(1e-9));
    assertThat(byG.heterogeneity()).isCloseTo(6.6700071669, within(1e-9));
    assertThat(byG.heterogeneityP()).isCloseTo(0.0098048794, within(1e-9));
  }

  /**
   * SciPy 1.17.1: of 80 with 3/4, binomial probabilities no larger than that of 51 sum to
   * 0.0272708071; chi-square of the sums is 5.4, of the families 2/15 and 40/3, by hand.
   */
  @Test
  void anExactTestIsOfTheSumsAndNotOfHowFamiliesDiffer() {
    List<long[]> families = List.of(new long[] {31, 9}, new long[] {20, 20});
    Families exact = Families.test(Ratio.of(3, 1), families, Optional.of(Fit.Method.EXACT));
    assertThat(exact.pooled().method()).isEqualTo(Fit.Method.EXACT);
    assertThat(exact.pooled().p()).isCloseTo(0.0272708071, within(1e-9));
    assertThat(exact.method()).isEqualTo(Fit.Method.CHI_SQUARE);
    assertThat(exact.heterogeneity()).isCloseTo(2.0 / 15 + 40.0 / 3 - 5.4, within(1e-9));
    // So many that their outcomes are not summed.
    List<long[]> many = List.of(new long[] {3_000_000_000L, 1_000_000_000L}, new long[] {3, 1});
    Fit rough = Families.test(Ratio.of(3, 1), many, Optional.of(Fit.Method.EXACT)).pooled();
    assertThat(rough.method()).isEqualTo(Fit.Method.CHI_SQUARE);
    assertThat(rough.why()).contains("too many outcomes");
  }

  @Test
  void oneFamilyIsNoneToCompare() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Families.test(Ratio.of(1, 1), List.of(new long[] {4, 1})))
        .withMessageStartingWith("1 families; two or more");
  }
}
