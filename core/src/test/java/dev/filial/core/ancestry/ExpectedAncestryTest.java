package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What is in a seedling, by hand. */
class ExpectedAncestryTest {

  private static final PlantRecord AGAVOIDES = PlantRecord.pure("A", "E. agavoides");
  private static final PlantRecord LAUI = PlantRecord.pure("L", "E. laui");

  private static ExpectedAncestry ask(String code, PlantRecord... records) {
    return ExpectedAncestry.of(Pedigree.of(List.of(records)), code);
  }

  private static Shares shares(String taxon, Fraction share, String other, Fraction rest) {
    return new Shares(
        new TreeMap<>(Map.of(taxon, share, other, rest)), Fraction.ONE.minus(share).minus(rest));
  }

  @Test
  void eachParentOfAnF1GivesAHalf() {
    ExpectedAncestry f1 = ask("F1", AGAVOIDES, LAUI, PlantRecord.cross("F1", "A", "L"));
    assertThat(f1.shares())
        .isEqualTo(shares("E. agavoides", Fraction.HALF, "E. laui", Fraction.HALF));
    assertThat(f1.shares().text()).isEqualTo("E. agavoides 50 %, E. laui 50 %");
    assertThat(f1.seedLine().text()).isEqualTo("F1 <- A (E. agavoides)");
  }

  @Test
  void backcrossToAgavoidesTwiceIsSevenEighths() {
    ExpectedAncestry bc2 =
        ask(
            "BC2",
            AGAVOIDES,
            LAUI,
            PlantRecord.cross("F1", "L", "A"),
            PlantRecord.cross("BC1", "A", "F1"),
            PlantRecord.cross("BC2", "BC1", "A"));
    assertThat(bc2.shares().of("E. agavoides")).isEqualTo(Fraction.of(7, 8));
    assertThat(bc2.shares().unknown()).isEqualTo(Fraction.ZERO);
    assertThat(bc2.shares().of("E. elegans")).isEqualTo(Fraction.ZERO);
  }

  @Test
  void aLongSeedParentLineIsToldByItsEnds() {
    List<PlantRecord> selfed = new ArrayList<>(List.of(AGAVOIDES, LAUI));
    selfed.add(PlantRecord.cross("F1", "A", "L"));
    for (int k = 2; k <= 30; k++) {
      selfed.add(PlantRecord.selfing("F" + k, "F" + (k - 1)));
    }
    Pedigree pedigree = Pedigree.of(selfed);
    assertThat(SeedLine.of(pedigree, "F30").line()).hasSize(31);
    assertThat(SeedLine.of(pedigree, "F30").text())
        .isEqualTo(
            "F30 <- F29 <- F28 <- F27 <- F26 <- F25 <- F24 <- F23 <- F22 <- F21 <- F20 <- F19 <- … 15"
                + " more … <- F3 <- F2 <- F1 <- A (E. agavoides)");
    assertThat(SeedLine.of(pedigree, "F23").text()).doesNotContain("…");
  }

  @Test
  void thirtyBackcrossesAreExact() {
    List<PlantRecord> records = new ArrayList<>(List.of(AGAVOIDES, LAUI));
    records.add(PlantRecord.cross("BC0", "A", "L"));
    for (int i = 1; i <= 30; i++) {
      records.add(PlantRecord.cross("BC" + i, "BC" + (i - 1), "A"));
    }
    Shares shares = ExpectedAncestry.of(Pedigree.of(records), "BC30").shares();
    assertThat(shares.of("E. laui"))
        .isEqualTo(new Fraction(BigInteger.ONE, BigInteger.TWO.pow(31)));
  }

  /** A hundred generations outgrow a machine's whole numbers, and come to be exact all the same. */
  @Test
  void aHundredBackcrossesAreExact() {
    List<PlantRecord> records = new ArrayList<>(List.of(AGAVOIDES, LAUI));
    records.add(PlantRecord.pure("P", "E. pulvinata"));
    records.add(PlantRecord.cross("BC0", "A", "L"));
    for (int i = 1; i <= 100; i++) {
      records.add(PlantRecord.cross("BC" + i, "BC" + (i - 1), "A"));
    }
    records.add(PlantRecord.cross("end", "BC100", "P"));
    records.add(PlantRecord.cross("mixed", "BC30", "BC100"));
    Pedigree pedigree = Pedigree.of(records);
    assertThat(ExpectedAncestry.of(pedigree, "end").shares().of("E. laui"))
        .isEqualTo(new Fraction(BigInteger.ONE, BigInteger.TWO.pow(102)));
    assertThat(ExpectedAncestry.of(pedigree, "end").shares().of("E. pulvinata"))
        .isEqualTo(Fraction.HALF);
    assertThat(ExpectedAncestry.of(pedigree, "mixed").shares().of("E. laui"))
        .isEqualTo(
            new Fraction(BigInteger.TWO.pow(70).add(BigInteger.ONE), BigInteger.TWO.pow(102)));
  }

  /** Denominators of 2, 3 and 5 beside each other. */
  @Test
  void unlikeDenominatorsAreBroughtTogether() {
    Shares shares =
        ask(
                "X",
                PlantRecord.hybrid(
                    "H",
                    Makeup.of(
                        Map.of("E. agavoides", Fraction.of(2, 3), "E. laui", Fraction.of(1, 3)))),
                PlantRecord.hybrid("G", Makeup.of(Map.of("E. agavoides", Fraction.of(3, 5)))),
                PlantRecord.cross("X", "H", "G"))
            .shares();
    assertThat(shares.of("E. agavoides")).isEqualTo(Fraction.of(19, 30));
    assertThat(shares.of("E. laui")).isEqualTo(Fraction.of(1, 6));
    assertThat(shares.unknown()).isEqualTo(Fraction.of(1, 5));
  }

  /** An egg that was not reduced says nothing of the bee's pollen, which is taken to be reduced. */
  @Test
  void unknownPollenOnAnUnreducedEggIsReduced() {
    ExpectedAncestry triploid =
        ask("T", LAUI, PlantRecord.cross("T", Gamete.unreduced("L", 2), Gamete.unknown()));
    assertThat(triploid.shares().of("E. laui")).isEqualTo(Fraction.of(2, 3));
    assertThat(triploid.shares().unknown()).isEqualTo(Fraction.of(1, 3));
  }

  @Test
  void aTetraploidSeedParentGivesTwoThirds() {
    ExpectedAncestry triploid =
        ask("T", PlantRecord.pure("A", "E. agavoides", 4), LAUI, PlantRecord.cross("T", "A", "L"));
    assertThat(triploid.shares().of("E. agavoides")).isEqualTo(Fraction.of(2, 3));
    assertThat(triploid.cases().get(0).ploidy()).isEqualTo(3);
  }

  @Test
  void anUnreducedGameteCountsWhatItCarried() {
    ExpectedAncestry triploid =
        ask("T", AGAVOIDES, LAUI, PlantRecord.cross("T", Gamete.unreduced("A", 2), Gamete.of("L")));
    assertThat(triploid.shares().of("E. agavoides")).isEqualTo(Fraction.of(2, 3));
  }

  @Test
  void unknownPollenIsAnUnknownShare() {
    ExpectedAncestry open = ask("O", AGAVOIDES, PlantRecord.openPollinated("O", "A"));
    assertThat(open.shares().of("E. agavoides")).isEqualTo(Fraction.HALF);
    assertThat(open.shares().unknown()).isEqualTo(Fraction.HALF);
    assertThat(open.shares().text()).isEqualTo("E. agavoides 50 %, unknown 50 %");
  }

  @Test
  void candidatesSpreadThePollenByWeightAndTheCasesAreListed() {
    ExpectedAncestry mixed =
        ask(
            "M",
            AGAVOIDES,
            LAUI,
            PlantRecord.pure("E", "E. elegans"),
            PlantRecord.seedling(
                "M",
                Case.cross(Fraction.of(3, 5), Route.OPEN_POLLINATION, "A", "L"),
                Case.cross(Fraction.of(1, 5), Route.OPEN_POLLINATION, "A", "E"),
                Case.unknownPollen(Fraction.of(1, 5), Route.OPEN_POLLINATION, "A")));
    assertThat(mixed.shares().of("E. laui")).isEqualTo(Fraction.of(3, 10));
    assertThat(mixed.shares().of("E. elegans")).isEqualTo(Fraction.of(1, 10));
    assertThat(mixed.shares().unknown()).isEqualTo(Fraction.of(1, 10));
    assertThat(mixed.cases())
        .extracting(ExpectedAncestry.CaseShares::pollen)
        .containsExactly("L", "E", null);
    assertThat(mixed.cases().get(0).shares())
        .isEqualTo(shares("E. agavoides", Fraction.HALF, "E. laui", Fraction.HALF));
    assertThat(mixed.seedLine().text()).isEqualTo("M <- A (E. agavoides)");
  }

  @Test
  void apomictsAndSelfsWeighWithTheIntendedCross() {
    ExpectedAncestry sown =
        ask(
            "M",
            AGAVOIDES,
            LAUI,
            PlantRecord.seedling(
                "M",
                Case.cross(Fraction.of(8, 10), Route.CROSS, "A", "L"),
                Case.selfing(Fraction.of(1, 10), "A"),
                Case.apomict(Fraction.of(1, 10), "A")));
    assertThat(sown.shares())
        .isEqualTo(shares("E. agavoides", Fraction.of(6, 10), "E. laui", Fraction.of(4, 10)));
    assertThat(sown.cases().get(2).copy()).isTrue();
    assertThat(sown.cases().get(2).seed()).isEqualTo("A");
    assertThat(sown.seedLine().unknown()).isEqualTo(Fraction.ZERO);
  }

  @Test
  void statedFractionsAreHandedOnWithTheirUnknownRest() {
    ExpectedAncestry seedling =
        ask(
            "S",
            PlantRecord.hybrid("H", Makeup.of(Map.of("E. laui", Fraction.of(3, 4)))),
            AGAVOIDES,
            PlantRecord.cross("S", "H", "A"));
    assertThat(seedling.shares())
        .isEqualTo(shares("E. laui", Fraction.of(3, 8), "E. agavoides", Fraction.of(1, 2)));
    assertThat(seedling.shares().unknown()).isEqualTo(Fraction.of(1, 8));
    assertThat(seedling.seedLine().text()).isEqualTo("S <- H (cytoplasm of an unknown taxon)");
  }

  @Test
  void aPlantThatMayBeOneOfTwoHasTheirCytoplasmByShare() {
    ExpectedAncestry lost =
        ask(
            "S",
            AGAVOIDES,
            LAUI,
            PlantRecord.seedling(
                "lost",
                new Case.Copy(Fraction.of(3, 4), Route.IDENTITY, "A"),
                new Case.Copy(Fraction.of(1, 4), Route.IDENTITY, "L")),
            PlantRecord.selfing("S", "lost"));
    assertThat(lost.shares().of("E. laui")).isEqualTo(Fraction.of(1, 4));
    assertThat(lost.seedLine().line()).containsExactly("S", "lost");
    assertThat(lost.seedLine().text())
        .isEqualTo("S <- lost <- L (E. laui) 25 % or A (E. agavoides) 75 %");
  }

  @Test
  void theSeedLineEndsWhereTheSeedParentIsUnknown() {
    SeedLine line =
        ask("S", AGAVOIDES, PlantRecord.cross("S", Gamete.unknown(), Gamete.of("A"))).seedLine();
    assertThat(line.unknown()).isEqualTo(Fraction.ONE);
    assertThat(line.text()).isEqualTo("S <- unknown");
  }

  @Test
  void aDoubtThatMakesNoDifferenceToTheCytoplasmLeavesItCertain() {
    SeedLine line =
        ask(
                "S",
                AGAVOIDES,
                PlantRecord.selfing("A1", "A"),
                PlantRecord.selfing("A2", "A"),
                PlantRecord.seedling(
                    "S",
                    new Case.Copy(Fraction.HALF, Route.IDENTITY, "A1"),
                    new Case.Copy(Fraction.HALF, Route.IDENTITY, "A2")))
            .seedLine();
    assertThat(line.sources())
        .containsExactly(new SeedLine.Source("A", "E. agavoides", Fraction.ONE));
    assertThat(line.line()).containsExactly("S");
    assertThat(line.text()).isEqualTo("S <- … <- A (E. agavoides)");
  }

  @Test
  void aSelfingLineOfAHundredThousandGenerationsIsAnswered() {
    List<PlantRecord> records = new ArrayList<>(List.of(AGAVOIDES, LAUI));
    records.add(PlantRecord.cross("S0", "A", "L"));
    for (int i = 1; i <= 100_000; i++) {
      records.add(PlantRecord.selfing("S" + i, "S" + (i - 1)));
    }
    Pedigree pedigree = Pedigree.of(records);
    ExpectedAncestry last = ExpectedAncestry.of(pedigree, "S100000");
    assertThat(last.shares().of("E. laui")).isEqualTo(Fraction.HALF);
    assertThat(last.seedLine().line()).hasSize(100_002);
    assertThat(GenerationClassifier.of(pedigree).classOf("S100000").text())
        .isEqualTo("F100001 of E. agavoides × E. laui, by selfing");
    assertThat(ExpectedShares.of(pedigree).share(pedigree.size() - 1, "E. laui"))
        .isCloseTo(0.5, within(1e-12));
  }
}
