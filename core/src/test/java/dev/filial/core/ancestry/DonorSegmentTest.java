package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DonorSegmentTest {

  private static final DonorSegment MIDDLE = DonorSegment.of(0.5, 0.5);

  /**
   * Stam and Zeven 1981, Euphytica 30:227-238, abstract, from memory: 32 cM still hang on in the
   * BC6 around a gene in the middle of a chromosome of 100 cM.
   */
  @Test
  void thirtyTwoCentimorgansHangOnAfterSixBackcrosses() {
    assertThat(MIDDLE.after(6).mean()).isCloseTo(0.32, within(0.005));
    // 2 (1 − e^−3)/6.
    assertThat(MIDDLE.after(6).mean()).isCloseTo(0.3167376439, within(1e-10));
    assertThat(MIDDLE.after(6).meanLeft()).isEqualTo(MIDDLE.after(6).mean() / 2);
  }

  @Test
  void ofAnF1TheWholeChromosomeIsTheDonors() {
    DonorSegment whole = DonorSegment.of(0.3, 0.9);

    assertThat(whole.backcrosses()).isZero();
    assertThat(whole.mean()).isEqualTo(0.3 + 0.9).isEqualTo(whole.chromosome());
    assertThat(whole.standardDeviation()).isZero();
    assertThat(whole.chanceWhole()).isEqualTo(1);
    assertThat(whole.chanceAtMost(1.19)).isZero();
    assertThat(whole.chanceAtMost(1.2)).isEqualTo(1);
    assertThat(whole.interval(0.9)).isEqualTo(new DonorSegment.Interval(1.2, 1.2));
    assertThat(whole.quantile(0)).isEqualTo(1.2);
    assertThat(whole.meanElsewhere()).isZero();
    assertThat(whole.backcrossesToMean(1.2)).hasValue(0);
  }

  /** Of a gene at the end one side is all there is: an exponential cut off at the other end. */
  @Test
  void aGeneAtTheEndHasOneSide() {
    DonorSegment end = DonorSegment.of(0, 1).after(3);

    assertThat(end.meanLeft()).isZero();
    assertThat(end.chanceLeftWhole()).isEqualTo(1);
    assertThat(end.chanceAtMost(0.2)).isCloseTo(1 - Math.exp(-0.6), within(1e-15));
    assertThat(end.quantile(0.5)).isCloseTo(Math.log(2) / 3, within(1e-14));
    assertThat(end.quantile(0.96)).isEqualTo(1);
    assertThat(end.chanceWhole()).isEqualTo(end.chanceRightWhole()).isEqualTo(Math.exp(-3));
  }

  /** On a chromosome without end the two sides are exponential: a gamma of shape 2. */
  @Test
  void farFromTheEndsItIsTheSumOfTwoExponentials() {
    DonorSegment far = DonorSegment.of(40, 50).after(10);

    assertThat(far.mean()).isCloseTo(0.2, within(1e-14));
    assertThat(far.standardDeviation()).isCloseTo(Math.sqrt(2) / 10, within(1e-14));
    for (double s : new double[] {0.01, 0.1, 0.5, 2}) {
      assertThat(far.chanceAtMost(s))
          .isCloseTo(1 - Math.exp(-10 * s) * (1 + 10 * s), within(1e-14));
    }
  }

  /** The mean is the integral of the chance of a longer piece, and so is half the mean square. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.5, 6", "0.2, 1.3, 2", "0, 0.8, 4", "0.05, 0.9, 1", "0.001, 0.002, 3"})
  void momentsAreIntegralsOfTheChances(double left, double right, int t) {
    DonorSegment piece = DonorSegment.of(left, right).after(t);
    int steps = 200_000;
    double width = piece.chromosome() / steps;
    double mean = 0;
    double square = 0;
    for (int i = 0; i < steps; i++) {
      double s = (i + 0.5) * width;
      double longer = 1 - piece.chanceAtMost(s);
      mean += longer * width;
      square += 2 * s * longer * width;
    }

    assertThat(piece.mean()).isCloseTo(mean, within(1e-9));
    assertThat(piece.standardDeviation()).isCloseTo(Math.sqrt(square - mean * mean), within(1e-6));
  }

  /** Chromosomes crossed over place by place, the gene held; all within four standard errors. */
  @ParameterizedTest
  @CsvSource({"0.5, 0.5, 6", "0.3, 0.9, 2", "0, 1.5, 3", "0.7, 0.1, 1"})
  void simulatedChromosomesAgree(double left, double right, int t) {
    DonorSegment piece = DonorSegment.of(left, right).after(t);
    Random random = new Random(19810230);
    int times = 40_000;
    double[] lengths = new double[times];
    double sum = 0;
    double square = 0;
    double elsewhere = 0;
    double elsewhereSquare = 0;
    int whole = 0;
    for (int i = 0; i < times; i++) {
      Strand strand = Strand.whole(left, right);
      for (int meiosis = 0; meiosis < t; meiosis++) {
        strand = strand.handedOn(random);
      }
      lengths[i] = strand.attached();
      sum += lengths[i];
      square += lengths[i] * lengths[i];
      double rest = strand.donors() - strand.attached();
      elsewhere += rest;
      elsewhereSquare += rest * rest;
      whole += lengths[i] > left + right - 1e-12 ? 1 : 0;
    }
    double mean = sum / times;
    double sd = Math.sqrt(square / times - mean * mean);
    double error = piece.standardDeviation() / Math.sqrt(times);
    double restMean = elsewhere / times;
    double restError = Math.sqrt((elsewhereSquare / times - restMean * restMean) / times);

    assertThat(mean).isCloseTo(piece.mean(), within(4 * error));
    assertThat(sd).isCloseTo(piece.standardDeviation(), within(4 * error));
    assertThat(restMean).isCloseTo(piece.meanElsewhere(), within(4 * restError));
    assertThat(whole / (double) times)
        .isCloseTo(piece.chanceWhole(), within(2.0 / Math.sqrt(times)));
    for (int tenth = 1; tenth < 10; tenth++) {
      double most = piece.chromosome() * tenth / 10;
      double share = Arrays.stream(lengths).filter(s -> s <= most).count() / (double) times;
      assertThat(share).isCloseTo(piece.chanceAtMost(most), within(2.0 / Math.sqrt(times)));
    }
  }

  /** What of a chromosome is the donor's: places where that changes, from 0, the gene at left. */
  private static final class Strand {
    private final double gene;
    private final double end;
    private final double[] changes;
    private final boolean donorAtStart;

    private Strand(double gene, double end, double[] changes, boolean donorAtStart) {
      this.gene = gene;
      this.end = end;
      this.changes = changes;
      this.donorAtStart = donorAtStart;
    }

    static Strand whole(double left, double right) {
      return new Strand(left, left + right, new double[0], true);
    }

    private boolean isDonor(double place) {
      int before = 0;
      for (double change : changes) {
        before += change <= place ? 1 : 0;
      }
      return donorAtStart == (before % 2 == 0);
    }

    /** A gamete with the donor's gene, of this strand beside one of the recurrent parent. */
    Strand handedOn(Random random) {
      double[] crossovers = new double[64];
      int count = 0;
      for (double at = exponential(random); at < end; at += exponential(random)) {
        crossovers[count++] = at;
      }
      double[] sorted = Arrays.copyOf(crossovers, count);
      boolean mineAtStart = Arrays.stream(sorted).filter(at -> at <= gene).count() % 2 == 0;
      double[] all = new double[count + changes.length];
      System.arraycopy(sorted, 0, all, 0, count);
      System.arraycopy(changes, 0, all, count, changes.length);
      Arrays.sort(all);
      double[] kept = new double[all.length];
      int changed = 0;
      boolean start = mineAtStart && donorAtStart;
      boolean now = start;
      for (double place : all) {
        boolean mine =
            mineAtStart == (Arrays.stream(sorted).filter(at -> at <= place).count() % 2 == 0);
        boolean next = mine && isDonor(place);
        if (next != now) {
          kept[changed++] = place;
          now = next;
        }
      }
      return new Strand(gene, end, Arrays.copyOf(kept, changed), start);
    }

    private static double exponential(Random random) {
      return -Math.log(1 - random.nextDouble());
    }

    /** The length of the donor's that the gene lies in. */
    double attached() {
      double from = 0;
      double to = end;
      for (double change : changes) {
        if (change <= gene) {
          from = change;
        } else {
          to = Math.min(to, change);
        }
      }
      return to - from;
    }

    /** All that is the donor's. */
    double donors() {
      double sum = 0;
      double from = 0;
      boolean now = donorAtStart;
      for (double change : changes) {
        sum += now ? change - from : 0;
        from = change;
        now = !now;
      }
      return sum + (now ? end - from : 0);
    }
  }

  /**
   * After one meiosis: half of what lies at x hangs on or lies loose, ∫ ½(1 + e^−2x) over a side.
   */
  @Test
  void afterOneBackcrossTheLoosePartIsKnown() {
    DonorSegment once = DonorSegment.of(0, 1).after(1);

    double all = 0.5 + (1 - Math.exp(-2)) / 4;
    assertThat(once.meanElsewhere()).isCloseTo(all - (1 - Math.exp(-1)), within(1e-15));
    assertThat(DonorSegment.of(50, 50).after(1_000).meanElsewhere()).isBetween(0.0, 1e-3);
  }

  @Test
  void howManyBackcrossesAreEnough() {
    assertThat(MIDDLE.backcrossesToMean(0.32)).hasValue(6);
    assertThat(MIDDLE.backcrossesToMean(0.31)).hasValue(7);
    // On the average 20 cM take 10; to be 90 % sure of it, more.
    assertThat(MIDDLE.backcrossesToMean(0.2)).hasValue(10);
    int sure = MIDDLE.backcrossesTo(0.2, 0.9).orElseThrow();
    assertThat(MIDDLE.after(sure).chanceAtMost(0.2)).isGreaterThanOrEqualTo(0.9);
    assertThat(MIDDLE.after(sure - 1).chanceAtMost(0.2)).isLessThan(0.9);
    assertThat(MIDDLE.backcrossesToMean(0.001)).isEmpty();
    assertThat(MIDDLE.backcrossesTo(0.001, 0.9)).isEmpty();
    assertThat(MIDDLE.backcrossesToMean(5)).hasValue(0);
  }

  @Test
  void whatCannotBeReckonedIsNamed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DonorSegment.of(0, 0))
        .withMessageStartingWith("a chromosome of no length on either side of the gene");
    for (double wrong : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> DonorSegment.of(0.5, wrong))
          .withMessage(
              "an end of the chromosome " + wrong + " morgans from the gene; it is 0 or more");
      assertThatIllegalArgumentException().isThrownBy(() -> DonorSegment.of(wrong, 0.5));
    }
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DonorSegment.of(60, 60))
        .withMessage("a chromosome of 120.0 morgans; at most 100.0 are reckoned with");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> MIDDLE.after(-1))
        .withMessage("-1 backcrosses; 0, for the F1, to 1000 are reckoned with");
    assertThatIllegalArgumentException().isThrownBy(() -> MIDDLE.after(1001));
    assertThatIllegalArgumentException().isThrownBy(() -> MIDDLE.chanceAtMost(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> MIDDLE.quantile(1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> MIDDLE.interval(1));
    assertThatIllegalArgumentException().isThrownBy(() -> MIDDLE.backcrossesToMean(0));
    assertThatIllegalArgumentException().isThrownBy(() -> MIDDLE.backcrossesTo(0.1, 0));
  }

  @Property
  void theMeanFallsWithEachBackcrossAndStaysOnTheChromosome(
      @ForAll @DoubleRange(min = 0, max = 5) double left,
      @ForAll @DoubleRange(min = 0.01, max = 5) double right,
      @ForAll @IntRange(min = 0, max = 999) int t) {
    DonorSegment before = DonorSegment.of(left, right).after(t);
    DonorSegment after = before.after(t + 1);

    assertThat(after.mean()).isLessThan(before.mean());
    assertThat(before.mean()).isBetween(0.0, before.chromosome());
    assertThat(after.mean()).isLessThanOrEqualTo(2.0 / (t + 1));
    assertThat(before.mean() + before.meanElsewhere())
        .isLessThanOrEqualTo(before.chromosome() + 1e-12);
  }

  @Property
  void quantileAndChanceAreInverses(
      @ForAll @DoubleRange(min = 0, max = 5) double left,
      @ForAll @DoubleRange(min = 0.01, max = 5) double right,
      @ForAll @IntRange(min = 1, max = 1000) int t,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double chance) {
    DonorSegment piece = DonorSegment.of(left, right).after(t);

    double length = piece.quantile(chance);
    if (length < piece.chromosome()) {
      assertThat(piece.chanceAtMost(length)).isCloseTo(chance, within(1e-9));
    } else {
      assertThat(1 - piece.chanceWhole()).isLessThanOrEqualTo(chance + 1e-9);
    }
  }

  @Property
  void theChanceRisesWithTheLengthAndWithEachBackcross(
      @ForAll @DoubleRange(min = 0, max = 3) double left,
      @ForAll @DoubleRange(min = 0.01, max = 3) double right,
      @ForAll @IntRange(min = 0, max = 200) int t,
      @ForAll @DoubleRange(min = 0, max = 7) double one,
      @ForAll @DoubleRange(min = 0, max = 7) double other) {
    DonorSegment piece = DonorSegment.of(left, right).after(t);

    double lower = piece.chanceAtMost(Math.min(one, other));
    double upper = piece.chanceAtMost(Math.max(one, other));
    assertThat(lower).isBetween(0.0, upper + 1e-14);
    assertThat(upper).isLessThanOrEqualTo(1);
    assertThat(piece.after(t + 1).chanceAtMost(one))
        .isGreaterThanOrEqualTo(piece.chanceAtMost(one) - 1e-14);
  }

  @Property
  void swappingTheSidesChangesNothing(
      @ForAll @DoubleRange(min = 0, max = 3) double left,
      @ForAll @DoubleRange(min = 0.01, max = 3) double right,
      @ForAll @IntRange(min = 0, max = 200) int t,
      @ForAll @DoubleRange(min = 0, max = 7) double length) {
    DonorSegment piece = DonorSegment.of(left, right).after(t);
    DonorSegment swapped = DonorSegment.of(right, left).after(t);

    assertThat(swapped.chanceAtMost(length)).isEqualTo(piece.chanceAtMost(length));
    assertThat(swapped.mean()).isEqualTo(piece.mean());
    assertThat(swapped.standardDeviation()).isEqualTo(piece.standardDeviation());
    assertThat(swapped.interval(0.9)).isEqualTo(piece.interval(0.9));
    assertThat(swapped.meanLeft()).isEqualTo(piece.meanRight());
    assertThat(swapped.chanceLeftWhole()).isEqualTo(piece.chanceRightWhole());
  }
}
