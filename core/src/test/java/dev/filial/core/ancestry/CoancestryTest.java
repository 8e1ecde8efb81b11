package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Relationship and inbreeding, against values from outside the project. */
class CoancestryTest {

  private static final double EXACT = 1e-12;

  private final List<PlantRecord> records = new ArrayList<>();

  private void founders(String... codes) {
    for (String code : codes) {
      records.add(PlantRecord.pure(code, "E. laui"));
    }
  }

  private void cross(String code, String seed, String pollen) {
    records.add(PlantRecord.cross(code, seed, pollen));
  }

  private double theta(String one, String other) {
    Pedigree pedigree = Pedigree.of(records);
    return Coancestry.of(pedigree).between(pedigree.indexOf(one), pedigree.indexOf(other));
  }

  private double inbreeding(String code) {
    Pedigree pedigree = Pedigree.of(records);
    return Coancestry.of(pedigree).inbreeding(pedigree.indexOf(code));
  }

  /** Wright 1922, American Naturalist 56:330-338, as in standard reference works. */
  @Test
  void closeKinHaveWrightsCoefficients() {
    founders("A", "B", "C", "D", "E");
    cross("sib1", "A", "B");
    cross("sib2", "A", "B");
    cross("sib3", "C", "D");
    cross("sib4", "C", "D");
    cross("half", "A", "C");
    cross("cousin1", "sib1", "E");
    cross("cousin2", "sib2", "C");
    cross("double1", "sib1", "sib3");
    cross("double2", "sib2", "sib4");
    assertThat(theta("A", "sib1")).as("parent and offspring").isEqualTo(1 / 4.0);
    assertThat(theta("sib1", "sib2")).as("full sibs").isEqualTo(1 / 4.0);
    assertThat(theta("sib1", "half")).as("half sibs").isEqualTo(1 / 8.0);
    assertThat(theta("sib2", "cousin1")).as("uncle and niece").isEqualTo(1 / 8.0);
    assertThat(theta("cousin1", "cousin2")).as("first cousins").isEqualTo(1 / 16.0);
    assertThat(theta("double1", "double2")).as("double first cousins").isEqualTo(1 / 8.0);
    assertThat(theta("A", "A")).as("a plant with itself").isEqualTo(1 / 2.0);
    assertThat(theta("A", "E")).isZero();
  }

  /** Falconer and Mackay 1996, table 5.1 (from memory; the recursions agree). */
  @Test
  void selfingHalvesWhatIsLeftOfHeterozygosity() {
    founders("G0");
    for (int t = 1; t <= 6; t++) {
      cross("G" + t, "G" + (t - 1), "G" + (t - 1));
      assertThat(inbreeding("G" + t)).isEqualTo(1 - Math.pow(0.5, t));
    }
  }

  /** Falconer and Mackay 1996, table 5.1 (from memory), F(t) = (1 + 2F(t−1) + F(t−2))/4. */
  @Test
  void fullSibMatingFollowsFalconersTable() {
    double[] table = {0.25, 0.375, 0.5, 0.59375, 0.671875, 0.734375, 0.78515625, 0.826171875};
    founders("x0", "y0");
    cross("x1", "x0", "y0");
    cross("y1", "x0", "y0");
    for (int t = 0; t < table.length; t++) {
      int last = t + 1;
      cross("x" + (last + 1), "x" + last, "y" + last);
      cross("y" + (last + 1), "y" + last, "x" + last);
      assertThat(inbreeding("x" + (last + 1))).isEqualTo(table[t]);
    }
  }

  /** Falconer and Mackay 1996, table 5.1 (from memory), F(t) = (1 + 6F(t−1) + F(t−2))/8. */
  @Test
  void halfSibMatingFollowsFalconersTable() {
    double[] table = {0.125, 0.21875, 0.3046875, 0.380859375};
    // One pollen parent a generation, on its half sisters, each of whom has another seed parent.
    int sisters = 8;
    founders("m0");
    for (int k = 0; k < sisters; k++) {
      founders("f0." + k);
    }
    for (int t = 1; t <= table.length + 1; t++) {
      cross("m" + t, "f" + (t - 1) + ".0", "m" + (t - 1));
      for (int k = 0; k < sisters - t; k++) {
        cross("f" + t + "." + k, "f" + (t - 1) + "." + (k + 1), "m" + (t - 1));
      }
      assertThat(inbreeding("m" + t)).isEqualTo(t == 1 ? 0 : table[t - 2]);
    }
  }

  /**
   * Backcrossing to one and the same plant that is not inbred: F = 1/4, 3/8, 7/16, 15/32 …, F(t) =
   * (1 + 2F(t−1))/4 (Falconer and Mackay 1996, table 5.1, from memory; the recursion agrees).
   */
  @Test
  void backcrossingToOnePlantTendsToAHalf() {
    founders("A", "B");
    cross("X0", "A", "B");
    double expected = 0;
    for (int t = 1; t <= 5; t++) {
      cross("X" + t, "X" + (t - 1), "A");
      expected = (1 + 2 * expected) / 4;
      assertThat(inbreeding("X" + t)).isEqualTo(expected);
    }
    assertThat(expected).isEqualTo(0.484375);
  }

  /** Henderson 1976, Biometrics 32:69-83, as worked in animal breeding handbooks (from memory). */
  @Test
  void hendersonsSixHaveHisRelationshipMatrix() {
    double[][] a = {
      {1, 0, .5, .5, .5, .25},
      {0, 1, .5, 0, .25, .625},
      {.5, .5, 1, .25, .625, .5625},
      {.5, 0, .25, 1, .625, .3125},
      {.5, .25, .625, .625, 1.125, .6875},
      {.25, .625, .5625, .3125, .6875, 1.125}
    };
    founders("1", "2");
    cross("3", "1", "2");
    records.add(PlantRecord.openPollinated("4", "1"));
    cross("5", "4", "3");
    cross("6", "5", "2");
    Pedigree pedigree = Pedigree.of(records);
    int[] six = IntStream.rangeClosed(1, 6).map(i -> pedigree.indexOf("" + i)).toArray();
    CoancestryMatrix matrix = Coancestry.of(pedigree).matrix(six);
    double sum = 0;
    for (int i = 0; i < 6; i++) {
      assertThat(matrix.code(i)).isEqualTo("" + (i + 1));
      for (int j = 0; j < 6; j++) {
        assertThat(2 * matrix.between(i, j)).isEqualTo(a[i][j]);
        sum += a[i][j] / 2;
      }
    }
    assertThat(matrix.mean()).isCloseTo(sum / 36, within(EXACT));
  }

  /**
   * The Shorthorn bull Roan Gauntlet, by whose pedigree Wright 1922 (American Naturalist
   * 56:330-338) explains the coefficient: Champion of England is his grandsire through his dam and,
   * by Grand Duke of Gloster and by Mimulus, twice his great-grandsire through his sire. Two paths
   * of three steps between the parents, (1/2)⁴ each. Pedigree and value from memory.
   */
  @Test
  void roanGauntletIsAnEighthInbred() {
    founders("Champion of England", "dam of Grand Duke", "dam of Mimulus", "Carmine");
    cross("Grand Duke of Gloster", "dam of Grand Duke", "Champion of England");
    cross("Mimulus", "dam of Mimulus", "Champion of England");
    cross("Royal Duke of Gloster", "Mimulus", "Grand Duke of Gloster");
    cross("Princess Royal", "Carmine", "Champion of England");
    cross("Roan Gauntlet", "Princess Royal", "Royal Duke of Gloster");
    assertThat(inbreeding("Roan Gauntlet")).isEqualTo(0.125);
  }

  /** 1−F′ = (1−F)(5/6 − α/3) (Haldane 1930, Journal of Genetics 22:359-372, from memory). */
  @Test
  void selfedAutotetraploidsLoseASixthAGeneration() {
    records.add(PlantRecord.pure("T0", "E. laui", 4));
    double[] withoutAlpha = {1 / 6.0, 11 / 36.0, 91 / 216.0};
    double left = 1;
    double alpha = 1 / 7.0;
    for (int t = 1; t <= 3; t++) {
      cross("T" + t, "T" + (t - 1), "T" + (t - 1));
      assertThat(inbreeding("T" + t)).isCloseTo(withoutAlpha[t - 1], within(EXACT));
      left *= 5 / 6.0 - alpha / 3;
      Pedigree pedigree = Pedigree.of(records);
      assertThat(
              Coancestry.of(pedigree)
                  .withDoubleReduction(alpha)
                  .inbreeding(pedigree.indexOf("T" + t)))
          .isCloseTo(1 - left, within(EXACT));
    }
  }

  @Test
  void aTriploidOfTwoSetsFromOneParentIsInbredByItsTetraploidParentsGamete() {
    // The gamete of two sets comes of a doubled diploid, whose four sets are two and two alike.
    founders("A", "B");
    records.add(PlantRecord.doubled("AA", "A"));
    records.add(PlantRecord.cross("T", Gamete.of("AA"), Gamete.of("B")));
    // Two of the doubled plant's four are copies of one set with the chance 1/3; of the triploid's
    // three pairs of sets one is within that gamete.
    assertThat(inbreeding("AA")).isCloseTo(1 / 3.0, within(EXACT));
    assertThat(inbreeding("T")).isCloseTo(1 / 9.0, within(EXACT));
    assertThat(theta("A", "AA")).isEqualTo(0.5);
    assertThat(theta("A", "T")).isCloseTo(2 / 3.0 * 0.5, within(EXACT));
  }

  @Test
  void anOffsetIsThePlantItWasTakenFrom() {
    founders("A", "B");
    records.add(PlantRecord.ramet("A'", "A"));
    cross("X", "A", "B");
    cross("Y", "A'", "B");
    cross("Z", "A'", "A");
    assertThat(theta("A", "A'")).isEqualTo(theta("A", "A"));
    assertThat(theta("X", "Y")).isEqualTo(0.25);
    assertThat(inbreeding("Z")).as("a plant on its own offset is a selfing").isEqualTo(0.5);
  }

  @Test
  void waysAPlantMayHaveComeAboutAreCountedByShare() {
    founders("A", "B");
    records.add(
        PlantRecord.seedling(
            "X",
            Case.cross(Fraction.of(3, 4), Route.CROSS, "A", "B"),
            Case.selfing(Fraction.of(1, 4), "A")));
    assertThat(inbreeding("X")).isEqualTo(1 / 4.0 * 0.5);
    assertThat(theta("X", "A")).isEqualTo(3 / 4.0 * 0.25 + 1 / 4.0 * 0.5);
    Pedigree pedigree = Pedigree.of(records);
    assertThat(pedigree.contains("X")).isTrue();
  }

  @Test
  void seedlingsOfACrossAreAsInbredAsTheirParentsAreAkin() {
    founders("A", "B");
    cross("X", "A", "B");
    cross("Y", "A", "B");
    records.add(PlantRecord.pure("T", "E. laui", 4));
    records.add(PlantRecord.cross("3x", Gamete.of("T"), Gamete.of("A")));
    Pedigree pedigree = Pedigree.of(records);
    Coancestry kin = Coancestry.of(pedigree);
    assertThat(kin.inbreedingOfSeedlings(pedigree.indexOf("X"), pedigree.indexOf("Y")))
        .isEqualTo(0.25);
    assertThat(kin.inbreedingOfSeedlings(pedigree.indexOf("T"), pedigree.indexOf("T")))
        .isCloseTo(1 / 6.0, within(EXACT));
    assertThatThrownBy(
            () -> kin.inbreedingOfSeedlings(pedigree.indexOf("A"), pedigree.indexOf("3x")))
        .isInstanceOf(PedigreeException.class)
        .hasMessage(
            "3x has 3 chromosome sets, of which there is no half; state how many its gamete brings");
  }

  @Test
  void aMatrixOfTooManySaysHowManyAndOffersRows() {
    founders("A");
    Coancestry kin = Coancestry.of(Pedigree.of(records));
    assertThatThrownBy(() -> kin.matrix(new int[20_000]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            "a matrix of 20000 plants would take 1525 MiB, and is made for at most 10000 plants;"
                + " choose fewer, or take it row by row");
    double[] sum = {0};
    kin.eachRow((k, row) -> sum[0] += row[k] + row[row.length - 1], new int[20_000]);
    assertThat(sum[0]).isEqualTo(20_000);
  }

  @Test
  void doubleReductionHasALimit() {
    founders("A");
    assertThatThrownBy(() -> Coancestry.of(Pedigree.of(records)).withDoubleReduction(0.2))
        .hasMessage("a double reduction of 0.2; it lies between 0 and 1/6");
  }

  @Test
  void anEmptyPedigreeHasNobodyInbred() {
    assertThat(Coancestry.of(Pedigree.of(List.of())).inbreeding()).isEmpty();
  }
}
