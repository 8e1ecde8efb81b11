package dev.filial.core.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.trial.MidParent.Family;
import dev.filial.core.trial.MidParent.Line;
import dev.filial.core.trial.MidParent.Prediction;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;

class MidParentTest {

  private static final double TENTH = 1e-9;

  /**
   * Diameters of sweet peas, hundredths of an inch, seven packets of selfed seed: Galton, Natural
   * Inheritance, 1889; means as in the data set {@code peas} of the R package psychTools. By R
   * 4.2.2, lm and predict: {@code core/src/test/reference/published_families.R}.
   */
  @Test
  void galtonsSweetPeasAreAThirdAsFarFromTheMean() {
    double[] means = {15.3, 16.0, 15.6, 16.3, 16.0, 17.3, 17.5};
    List<Family> packets = new ArrayList<>();
    for (int i = 0; i < means.length; i++) {
      packets.add(Family.ofParents(15 + i, 15 + i, means[i], 100));
    }
    MidParent regression = MidParent.of(packets);

    Line line = regression.line();
    assertThat(line.slope()).isCloseTo(0.3428571429, within(TENTH));
    assertThat(line.slopeError()).isCloseTo(0.0763985255, within(TENTH));
    assertThat(line.intercept()).isCloseTo(10.1142857143, within(TENTH));
    assertThat(line.interceptError()).isCloseTo(1.3836361442, within(TENTH));
    assertThat(line.residualDeviation()).isCloseTo(0.4042629978, within(TENTH));
    assertThat(line.families()).isEqualTo(7);
    assertThat(line.degreesOfFreedom()).isEqualTo(5);

    Prediction next = regression.predict(22, 1, 0.95);
    assertThat(next.mean()).isCloseTo(17.6571428571, within(TENTH));
    assertThat(next.meanError()).isCloseTo(0.3416645927, within(TENTH));
    assertThat(next.lower()).isCloseTo(16.2965222958, within(1e-8));
    assertThat(next.upper()).isCloseTo(19.0177634185, within(1e-8));
    assertThat(next.familyError())
        .isCloseTo(Math.hypot(next.meanError(), line.residualDeviation()), within(TENTH));
    assertThat(next.beyond()).isTrue();
    assertThat(regression.predict(21, 1, 0.95).beyond()).isFalse();
  }

  /**
   * Heights of 928 adult children by their mid-parents, inches: Galton 1886, Regression towards
   * mediocrity in hereditary stature, the table as in the data set {@code galton} of the R package
   * psychTools, added up for each mid-parent by the same script. By size the line is that of all
   * children one by one, slope 0.6463.
   */
  @Test
  void galtonsStaturesByFamiliesAndBySize() {
    double[] midParents = {64, 64.5, 65.5, 66.5, 67.5, 68.5, 69.5, 70.5, 71.5, 72.5, 73};
    int[] sizes = {14, 23, 66, 78, 211, 219, 183, 68, 43, 19, 4};
    double[] sums = {
      914.3, 1504.1, 4402.7, 5230.6, 14261.2, 14896.3, 12573.1, 4732.6, 3013.6, 1365.8, 291.8
    };
    List<Family> families = new ArrayList<>();
    for (int i = 0; i < sums.length; i++) {
      families.add(new Family(midParents[i], sums[i] / sizes[i], sizes[i]));
    }

    MidParent weighted = MidParent.bySize(families);
    assertThat(weighted.line().slope()).isCloseTo(0.6462905820, within(TENTH));
    assertThat(weighted.line().slopeError()).isCloseTo(0.0491226552, within(TENTH));
    assertThat(weighted.line().intercept()).isCloseTo(23.9415301804, within(1e-8));
    assertThat(weighted.line().interceptError()).isCloseTo(3.3566268731, within(1e-8));
    assertThat(weighted.line().residualDeviation()).isCloseTo(2.6731742708, within(TENTH));
    Prediction ten = weighted.predict(70, 10, 0.95);
    assertThat(ten.mean()).isCloseTo(69.1818709200, within(TENTH));
    assertThat(ten.meanError()).isCloseTo(0.1208591084, within(TENTH));
    assertThat(ten.lower()).isCloseTo(67.2501516271, within(1e-8));
    assertThat(ten.upper()).isCloseTo(71.1135902128, within(1e-8));

    MidParent plain = MidParent.of(families);
    assertThat(plain.line().slope()).isCloseTo(0.7628709840, within(TENTH));
    assertThat(plain.line().slopeError()).isCloseTo(0.0546298192, within(TENTH));
    assertThat(plain.line().intercept()).isCloseTo(16.2249794355, within(1e-8));
    assertThat(plain.line().interceptError()).isCloseTo(3.7457840402, within(1e-8));
    assertThat(plain.line().residualDeviation()).isCloseTo(0.5476622346, within(TENTH));
    Prediction one = plain.predict(70, 10, 0.95);
    assertThat(one.mean()).isCloseTo(69.6259483127, within(TENTH));
    assertThat(one.meanError()).isCloseTo(0.1843411481, within(TENTH));
    assertThat(one.lower()).isCloseTo(68.3187510883, within(1e-8));
    assertThat(one.upper()).isCloseTo(70.9331455370, within(1e-8));
  }

  @Property(tries = 300)
  void pointsOnALineGiveThatLine(
      @ForAll @Size(min = 3, max = 12) @UniqueElements
          List<@IntRange(max = 500) Integer> midParents,
      @ForAll @DoubleRange(min = -5, max = 5) double slope,
      @ForAll @DoubleRange(min = -100, max = 100) double intercept,
      @ForAll @IntRange(min = -200, max = 700) int at) {
    List<Family> families = new ArrayList<>();
    for (int midParent : midParents) {
      families.add(new Family(midParent, intercept + slope * midParent, 1 + midParent % 7));
    }
    for (MidParent regression : List.of(MidParent.of(families), MidParent.bySize(families))) {
      assertThat(regression.line().slope()).isCloseTo(slope, within(1e-9));
      assertThat(regression.line().intercept()).isCloseTo(intercept, within(1e-8));
      assertThat(regression.line().residualDeviation()).isCloseTo(0, within(1e-9));
      Prediction next = regression.predict(at, 3, 0.95);
      assertThat(next.mean()).isCloseTo(intercept + slope * at, within(1e-8));
    }
  }

  @Property(tries = 200)
  void aSurerIntervalHoldsTheLessSure(
      @ForAll @Size(min = 3, max = 8) @UniqueElements List<@IntRange(max = 50) Integer> midParents,
      @ForAll @Size(8) List<@IntRange(max = 50) Integer> means,
      @ForAll @IntRange(max = 60) int at) {
    List<Family> families = new ArrayList<>();
    for (int i = 0; i < midParents.size(); i++) {
      families.add(new Family(midParents.get(i), means.get(i), 1 + i));
    }
    MidParent regression = MidParent.of(families);
    Prediction inner = regression.predict(at, 1, 0.01);
    for (double certainty : new double[] {0.2, 0.5, 0.8, 0.95, 0.999}) {
      Prediction outer = regression.predict(at, 1, certainty);
      assertThat(outer.lower()).isLessThanOrEqualTo(inner.lower());
      assertThat(outer.upper()).isGreaterThanOrEqualTo(inner.upper());
      inner = outer;
    }
  }

  @Property(tries = 200)
  void familiesOfOneSizeAreAsGoodAsUnweighted(
      @ForAll @Size(min = 3, max = 8) @UniqueElements List<@IntRange(max = 50) Integer> midParents,
      @ForAll @Size(8) List<@IntRange(max = 50) Integer> means,
      @ForAll @IntRange(min = 1, max = 40) int size) {
    List<Family> families = new ArrayList<>();
    for (int i = 0; i < midParents.size(); i++) {
      families.add(new Family(midParents.get(i), means.get(i), size));
    }
    Prediction plain = MidParent.of(families).predict(25, size, 0.9);
    Prediction weighted = MidParent.bySize(families).predict(25, size, 0.9);
    assertThat(weighted.mean()).isCloseTo(plain.mean(), within(1e-8));
    assertThat(weighted.familyError()).isCloseTo(plain.familyError(), within(1e-8));
    assertThat(weighted.lower()).isCloseTo(plain.lower(), within(1e-6));
  }

  @Test
  void whatIsNoLineIsNamed() {
    Family family = new Family(10, 9, 5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MidParent.of(List.of(family, new Family(12, 11, 5))))
        .withMessage("2 families; a line and how far families stray from it need 3 or more");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MidParent.of(List.of(family, family, family)))
        .withMessage("all mid-parents are 10.0; a line needs families whose mid-parents differ");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Family(10, Double.NaN, 5))
        .withMessage(
            "a family of 5 with a mean of NaN from a mid-parent of 10.0; give numbers, and a size"
                + " of 1 or more");
    assertThatIllegalArgumentException().isThrownBy(() -> new Family(10, 9, 0));
    MidParent line = MidParent.of(List.of(family, family, new Family(12, 11, 5)));
    assertThatIllegalArgumentException().isThrownBy(() -> line.predict(11, 1, 95));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> line.predict(Double.POSITIVE_INFINITY, 1, 0.95))
        .withMessageStartingWith("a family of 1 from a mid-parent of Infinity");
  }
}
