package dev.filial.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Outcome;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** How much a test cross tells, against sums done by hand and by SciPy. */
class TestCrossTest {

  private static final Offset<Double> ROUNDING = within(1e-12);

  /** As many digits as the reference is quoted with. */
  private static final Offset<Double> QUOTED = within(5e-11);

  private static final Locus A = Locus.of("tips", "T", "t");
  private static final Genome GENOME = Genome.unlinked(A);
  private static final TraitModel TIPS = TraitModel.dominant("tips", A, List.of("red", "plain"));

  private static GenotypeOdds may(Genome genome, Object... genotypesAndChances) {
    List<GenotypeOdds.Chance> chances = new ArrayList<>();
    for (int i = 0; i < genotypesAndChances.length; i += 2) {
      chances.add(
          new GenotypeOdds.Chance(
              genome.genotype((String) genotypesAndChances[i]),
              (double) genotypesAndChances[i + 1],
              0));
    }
    return new GenotypeOdds("doubtful", chances, new Reckoning(0, 0, 0, 0, List.of()));
  }

  /** A red seedling of two carriers: a carrier with two to one. */
  private static TestCross ofACarrier(TraitModel model) {
    return TestCross.of(
        may(GENOME, "Tt", 2.0 / 3, "TT", 1.0 / 3), Meiosis.REDUCED, GENOME.genotype("tt"), model);
  }

  @Test
  void nothingSownTellsNothing() {
    TestCross cross = ofACarrier(TIPS);
    assertThat(cross.possibilities()).isEqualTo(2);
    // log2(3) - 2/3 bits of 2:1; without a seedling one would name the carrier and err once in
    // three.
    assertThat(cross.bits()).isEqualTo(Math.log(3) / Math.log(2) - 2.0 / 3, ROUNDING);
    assertThat(cross.after(0).seedlings()).isZero();
    assertThat(cross.after(0).bits()).isEqualTo(0, ROUNDING);
    assertThat(cross.after(0).doubt()).isEqualTo(1.0 / 3, ROUNDING);
  }

  /**
   * One plain seedling settles it. n red ones come of a carrier with (½)^n, so that (⅔)(½)^n stands
   * against ⅓: after one seedling both are even and the doubt is still ⅓; after more the red ones
   * are taken for those of TT, and what is wrong is (⅔)(½)^n.
   */
  @Property(tries = 40)
  void doubtHalvesWithEachRedSeedling(@ForAll @IntRange(min = 1, max = 40) int n) {
    double allRedOfACarrier = 2.0 / 3 * Math.pow(0.5, n);
    TestCross.Expected after = ofACarrier(TIPS).after(n);
    assertThat(after.doubt()).isEqualTo(allRedOfACarrier, ROUNDING);
    // What is left unknown is left where all were red, as often as that is.
    double all = allRedOfACarrier + 1.0 / 3;
    double left = all * entropy(allRedOfACarrier / all);
    assertThat(after.bits()).isEqualTo(entropy(1.0 / 3) - left, ROUNDING);
  }

  private static double entropy(double chance) {
    return -(chance * Math.log(chance) + (1 - chance) * Math.log(1 - chance)) / Math.log(2);
  }

  @Test
  void sevenSeedlingsMakeItNinetyNinePercentSureOfTwoToOne() {
    // (⅔)(½)^6 = 1/96 is above 1 in 100, and (⅔)(½)^7 = 1/192 below; 1 in 20 takes (⅔)(½)^4 = 1/24.
    assertThat(ofACarrier(TIPS).seedlingsFor(0.99)).hasValue(7);
    assertThat(ofACarrier(TIPS).seedlingsFor(0.989)).hasValue(6);
    assertThat(ofACarrier(TIPS).seedlingsFor(0.95)).hasValue(4);
    // Two in three is as sure as it is already.
    assertThat(ofACarrier(TIPS).seedlingsFor(0.6)).hasValue(0);
    assertThatThrownBy(() -> ofACarrier(TIPS).seedlingsFor(1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * Where red shows only four times in five, plain seedlings settle nothing: Tt gives red with 2/5
   * and TT with 4/5. SciPy 1.17.1, {@code core/src/test/reference/test_crosses.py}:
   *
   * <pre>
   * penetrance     1 0.1088485374 0.3333333333
   * penetrance     5 0.4172445264 0.1456000000
   * penetrance    20 0.8209144742 0.0247335060
   * </pre>
   */
  @Test
  void poorPenetranceTakesMoreSeedlings() {
    TestCross cross = ofACarrier(TIPS.withPenetrance("red", Fraction.of(4, 5), "plain"));
    assertThat(cross.after(1)).satisfies(is(0.1088485374, 0.3333333333));
    assertThat(cross.after(5)).satisfies(is(0.4172445264, 0.1456000000));
    assertThat(cross.after(20)).satisfies(is(0.8209144742, 0.0247335060));
  }

  /**
   * A tetraploid by tttt: simplex 1:1, duplex 5:1, triplex and quadruplex all red, unless there is
   * double reduction. SciPy 1.17.1, {@code core/src/test/reference/test_crosses.py}:
   *
   * <pre>
   * tetraploid     1 0.2162713980 0.5000000000
   * tetraploid     8 0.9737417657 0.1680369799
   * tetraploid    40 1.5419551838 0.0066947614
   * doubling       8 0.8882755488 0.3056951404
   * wrong one      8 0.2680369799
   * </pre>
   */
  @Test
  void aTetraploidsDosesArePartedByItsTestCross() {
    TestCross cross =
        TestCross.of(
            may(GENOME, "Tttt", 0.4, "TTtt", 0.3, "TTTt", 0.2, "TTTT", 0.1),
            Meiosis.tetrasomic(Fraction.ZERO),
            GENOME.genotype("tttt"),
            TIPS);
    // No seedling of TTTt lacks T where no gamete has one allele twice, nor of TTTT.
    assertThat(cross.possibilities()).isEqualTo(3);
    assertThat(cross.after(1)).satisfies(is(0.2162713980, 0.5000000000));
    assertThat(cross.after(8)).satisfies(is(0.9737417657, 0.1680369799));
    assertThat(cross.after(40)).satisfies(is(1.5419551838, 0.0066947614));
    // Of 0.4, 0.3, 0.2 and 0.1 the last two are one; the likelier is named, and wrong in 0.1.
    assertThat(cross.alike()).containsExactly(List.of("TTTt", "TTTT"));
    assertThat(cross.atMost()).isEqualTo(0.9, ROUNDING);
    assertThat(cross.after(8).wrong()).isCloseTo(0.2680369799, QUOTED);
    assertThat(cross.seedlingsFor(0.91)).isEmpty();
    assertThat(cross.seedlingsToPart(0.91)).isPresent();
    TestCross doubling =
        TestCross.of(
            may(GENOME, "Tttt", 0.4, "TTtt", 0.3, "TTTt", 0.2, "TTTT", 0.1),
            Meiosis.tetrasomic(Fraction.of(1, 7)),
            GENOME.genotype("tttt"),
            TIPS);
    assertThat(doubling.possibilities()).isEqualTo(4);
    assertThat(doubling.alike()).isEmpty();
    assertThat(doubling.atMost()).isEqualTo(1);
    assertThat(doubling.after(8)).satisfies(is(0.8882755488, 0.3056951404));
  }

  /**
   * An intermediate trait, by its heterozygote: three states, counted in a trinomial. SciPy 1.17.1,
   * {@code core/src/test/reference/test_crosses.py}:
   *
   * <pre>
   * three states   1 0.2500000000 0.5000000000
   * three states   6 0.9963910150 0.1701660156
   * </pre>
   */
  @Test
  void threeStatesFallAsATrinomial() {
    TraitModel shade = TraitModel.intermediate("shade", A, List.of("dark", "mid", "pale"));
    TestCross cross =
        TestCross.of(
            may(GENOME, "TT", 0.25, "Tt", 0.5, "tt", 0.25),
            Meiosis.REDUCED,
            GENOME.genotype("Tt"),
            shade);
    assertThat(cross.possibilities()).isEqualTo(3);
    assertThat(cross.after(1)).satisfies(is(0.2500000000, 0.5000000000));
    assertThat(cross.after(6)).satisfies(is(0.9963910150, 0.1701660156));
  }

  /** Coupling and repulsion of linked genes look alike to a cross that shows one of them alone. */
  @Test
  void aCrossThatShowsOneGeneDoesNotPartThePhases() {
    Locus wax = Locus.of("wax", "W", "w");
    Genome linked = Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), wax));
    GenotypeOdds phases = may(linked, "TW/tw", 0.5, "Tw/tW", 0.5);
    TestCross blind = TestCross.of(phases, Meiosis.REDUCED, linked.genotype("tw/tw"), TIPS);
    assertThat(blind.possibilities()).isEqualTo(1);
    assertThat(blind.bits()).isEqualTo(0, ROUNDING);
    assertThat(blind.after(30).doubt()).isEqualTo(0, ROUNDING);
    // A table that shows both together sees 9:1:1:9 against 1:9:9:1, and one seedling is wrong
    // about the phase as often as it is recombined.
    TraitModel both =
        new TraitModel(
            "both",
            List.of("like", "unlike"),
            List.of(
                row("T_ W_", "like"), row("T_ ww", "unlike"),
                row("tt W_", "unlike"), row("tt ww", "like")));
    TestCross sees = TestCross.of(phases, Meiosis.REDUCED, linked.genotype("tw/tw"), both);
    assertThat(sees.possibilities()).isEqualTo(2);
    assertThat(sees.after(1).doubt()).isEqualTo(0.1, ROUNDING);
    // Of three two or more recombined: 3(1/100)(9/10) + 1/1000.
    assertThat(sees.after(3).doubt()).isEqualTo(0.028, ROUNDING);
  }

  private static TraitModel.Row row(String patterns, String state) {
    return new TraitModel.Row(
        Pattern.read(List.of(A, Locus.of("wax", "W", "w")), patterns), Outcome.of(state));
  }

  private static Consumer<TestCross.Expected> is(double bits, double doubt) {
    return expected -> {
      assertThat(expected.bits()).as("bits").isCloseTo(bits, QUOTED);
      assertThat(expected.doubt()).as("doubt").isCloseTo(doubt, QUOTED);
    };
  }
}
