package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
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

  @Test
  void oneFamilyIsNoneToCompare() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Families.test(Ratio.of(1, 1), List.of(new long[] {4, 1})))
        .withMessageStartingWith("1 families; two or more");
  }
}
