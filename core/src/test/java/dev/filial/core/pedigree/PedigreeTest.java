package dev.filial.core.pedigree;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The arrays say what the records said, parents first. */
class PedigreeTest {

  private static final PlantRecord AGAVOIDES = PlantRecord.pure("26-001", "E. agavoides");
  private static final PlantRecord LAUI = PlantRecord.pure("26-002", "E. laui");
  private static final PlantRecord HYBRID = PlantRecord.cross("27-001", "26-001", "26-002");

  @Test
  void parentsStandBeforeTheirOffspringWhateverTheOrderOfTheRecords() {
    Pedigree pedigree =
        Pedigree.of(List.of(PlantRecord.selfing("28-001", "27-001"), HYBRID, LAUI, AGAVOIDES));
    assertThat(pedigree.size()).isEqualTo(4);
    assertThat(pedigree.levels()).isEqualTo(3);
    assertThat(pedigree.code(3)).isEqualTo("28-001");
    int hybrid = pedigree.indexOf("27-001");
    assertThat(pedigree.seedParent(hybrid)).isEqualTo(pedigree.indexOf("26-001"));
    assertThat(pedigree.pollenParent(hybrid)).isEqualTo(pedigree.indexOf("26-002"));
    assertThat(pedigree.level(hybrid)).isEqualTo(1);
    assertThat(pedigree.level(3)).isEqualTo(2);
    assertThat(pedigree.level(pedigree.indexOf("26-002"))).isZero();
    assertThat(pedigree.cases(3)).containsExactly(Case.selfing(Fraction.ONE, "27-001"));
  }

  @Test
  void aTetraploidByADiploidIsATriploid() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                PlantRecord.pure("A", "E. x", 4),
                PlantRecord.pure("B", "E. y"),
                PlantRecord.cross("C", "A", "B"),
                PlantRecord.cross("D", Gamete.unreduced("C", 3), Gamete.of("B"))));
    assertThat(pedigree.ploidy(pedigree.indexOf("C"))).isEqualTo(3);
    assertThat(pedigree.ploidy(pedigree.indexOf("D"))).isEqualTo(4);
    assertThat(pedigree.descents(pedigree.indexOf("C")))
        .containsExactly(
            new Descent.Sexual(
                Fraction.ONE, Route.CROSS, pedigree.indexOf("A"), 2, pedigree.indexOf("B"), 1));
    assertThat(pedigree.seedParent(pedigree.indexOf("C"))).isEqualTo(pedigree.indexOf("A"));
  }

  @Test
  void colchicineDoublesTheSetsAndAnOffsetKeepsThem() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                AGAVOIDES,
                PlantRecord.ramet("offset", "26-001"),
                PlantRecord.doubled("doubled", "offset"),
                PlantRecord.apomict("apomict", "doubled")));
    assertThat(pedigree.ploidy(pedigree.indexOf("offset"))).isEqualTo(2);
    assertThat(pedigree.ploidy(pedigree.indexOf("apomict"))).isEqualTo(4);
    assertThat(pedigree.isDoubled(pedigree.indexOf("doubled"))).isTrue();
    assertThat(pedigree.isDoubled(pedigree.indexOf("offset"))).isFalse();
    assertThat(pedigree.genet(pedigree.indexOf("apomict"))).isEqualTo(pedigree.indexOf("26-001"));
    assertThat(pedigree.genet(pedigree.indexOf("26-001"))).isEqualTo(pedigree.indexOf("26-001"));
  }

  @Test
  void casesOfDifferentPloidyLeaveThePloidyOpen() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                PlantRecord.pure("A", "E. x", 4),
                PlantRecord.pure("B", "E. y"),
                PlantRecord.seedling(
                    "C",
                    Case.selfing(Fraction.of(1, 10), "A"),
                    Case.cross(Fraction.of(9, 10), Route.CROSS, "A", "B")),
                PlantRecord.cross("D", Gamete.unreduced("C", 2), Gamete.of("A"))));
    assertThat(pedigree.ploidy(pedigree.indexOf("C"))).isZero();
    assertThat(pedigree.ploidy(pedigree.indexOf("D"))).isEqualTo(4);
  }

  @Test
  void openPollinationKeepsTheSeedParentThatAllCasesShare() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                AGAVOIDES,
                LAUI,
                PlantRecord.openPollinated("O", "26-001"),
                PlantRecord.seedling(
                    "M",
                    Case.cross(Fraction.of(1, 2), Route.OPEN_POLLINATION, "26-001", "26-002"),
                    Case.unknownPollen(Fraction.of(1, 2), Route.OPEN_POLLINATION, "26-001"))));
    int open = pedigree.indexOf("O");
    assertThat(pedigree.pollenParent(open)).isEqualTo(Pedigree.UNKNOWN);
    assertThat(pedigree.cases(open).get(0).route()).isEqualTo(Route.OPEN_POLLINATION);
    int mixed = pedigree.indexOf("M");
    assertThat(pedigree.seedParent(mixed)).isEqualTo(pedigree.indexOf("26-001"));
    assertThat(pedigree.pollenParent(mixed)).isEqualTo(Pedigree.UNKNOWN);
    assertThat(pedigree.caseCount(mixed)).isEqualTo(2);
    assertThat(pedigree.parents(mixed)).hasSize(2);
    assertThat(pedigree.hasUnknown()).isTrue();
  }

  @Test
  void thePedigreeOfOnePlantHoldsItsAncestorsOnly() {
    Pedigree all =
        Pedigree.of(
            List.of(
                AGAVOIDES,
                LAUI,
                HYBRID,
                PlantRecord.pure("26-003", "E. elegans"),
                PlantRecord.ramet("offset", "27-001"),
                PlantRecord.cross("28-001", "offset", "26-001")));
    Pedigree one = all.ancestorsOf("28-001");
    assertThat(one.size()).isEqualTo(5);
    assertThat(one.contains("26-003")).isFalse();
    assertThat(one.plantRecord(one.indexOf("28-001")))
        .isEqualTo(PlantRecord.cross("28-001", "offset", "26-001"));
    assertThat(one.taxa()).containsExactly("E. agavoides", "E. laui");
  }

  @Test
  void columnsGiveTheSamePedigreeAsRecords() {
    Pedigree columns =
        Pedigree.ofParents(
            new String[] {"F2", "F1", "A", "B", "O"},
            new String[] {"F1", "A", null, null, "F1"},
            new String[] {"F1", "B", null, null, null},
            new String[] {null, null, "E. x", "E. y", null});
    Pedigree records =
        Pedigree.of(
            List.of(
                PlantRecord.pure("A", "E. x"),
                PlantRecord.pure("B", "E. y"),
                PlantRecord.cross("F1", "A", "B"),
                PlantRecord.selfing("F2", "F1"),
                PlantRecord.openPollinated("O", "F1")));
    for (int i = 0; i < 5; i++) {
      String code = columns.code(i);
      assertThat(columns.plantRecord(i)).isEqualTo(records.plantRecord(records.indexOf(code)));
    }
  }

  @Test
  void aSelfingLineOfAHundredThousandGenerationsIsBuiltFromItsEnd() {
    int generations = 100_000;
    List<PlantRecord> records = new ArrayList<>();
    for (int i = generations; i > 0; i--) {
      records.add(PlantRecord.selfing("S" + i, "S" + (i - 1)));
    }
    records.add(PlantRecord.pure("S0", "E. x"));
    Pedigree pedigree = Pedigree.of(records);
    assertThat(pedigree.levels()).isEqualTo(generations + 1);
    assertThat(pedigree.code(generations)).isEqualTo("S" + generations);
    assertThat(pedigree.ancestors(generations).cardinality()).isEqualTo(generations + 1);
  }

  @Test
  void aHundredThousandCodesAreAllFoundAgain() {
    List<PlantRecord> records = new ArrayList<>();
    for (int i = 0; i < 50_000; i++) {
      records.add(PlantRecord.pure("F" + i, "E. x"));
      records.add(PlantRecord.cross("S" + i, "F" + i, "F" + (i * 7 % 50_000)));
    }
    Collections.shuffle(records, new Random(7));
    Pedigree pedigree = Pedigree.of(records);
    HashSet<Integer> seen = new HashSet<>();
    for (PlantRecord plant : records) {
      int index = pedigree.indexOf(plant.code());
      assertThat(pedigree.code(index)).isEqualTo(plant.code());
      seen.add(index);
    }
    assertThat(seen).hasSize(100_000);
    assertThat(pedigree.contains("F50000")).isFalse();
  }

  @Test
  void codesOfOneHashAreToldApart() {
    assertThat("Aa".hashCode()).isEqualTo("BB".hashCode());
    Pedigree pedigree =
        Pedigree.of(List.of(PlantRecord.pure("Aa", "E. x"), PlantRecord.pure("BB", "E. y")));
    assertThat(pedigree.code(pedigree.indexOf("BB"))).isEqualTo("BB");
    assertThat(pedigree.code(pedigree.indexOf("Aa"))).isEqualTo("Aa");
  }

  @Test
  void noPlantsAreAPedigreeToo() {
    Pedigree pedigree = Pedigree.of(List.of());
    assertThat(pedigree.size()).isZero();
    assertThat(pedigree.levels()).isZero();
    assertThat(pedigree.taxa()).isEmpty();
  }
}
