package dev.filial.core.pedigree;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Notation;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pedigrees to notation and back. */
class NotationOfTest {

  private static String notation(String code, PlantRecord... records) {
    return NotationOf.of(Pedigree.of(List.of(records)), code, NotationOf.Names.byTaxon()).text();
  }

  private static final PlantRecord AGAVOIDES = PlantRecord.pure("A", "E. agavoides");
  private static final PlantRecord LAUI = PlantRecord.pure("L", "E. laui");
  private static final PlantRecord F1 = PlantRecord.cross("F1", "A", "L");

  @Test
  void theSeedParentStandsLeft() {
    assertThat(notation("F1", AGAVOIDES, LAUI, F1)).isEqualTo("E. agavoides/E. laui");
    assertThat(notation("X", AGAVOIDES, LAUI, F1, PlantRecord.cross("X", "L", "F1")))
        .isEqualTo("E. laui//E. agavoides/E. laui");
    assertThat(notation("A", AGAVOIDES)).isEqualTo("E. agavoides");
  }

  @Test
  void anOffsetStandsAsItsPlant() {
    PlantRecord offset = PlantRecord.ramet("offset", "F1");
    assertThat(notation("offset", AGAVOIDES, LAUI, F1, offset)).isEqualTo("E. agavoides/E. laui");
    assertThat(notation("X", AGAVOIDES, LAUI, F1, offset, PlantRecord.cross("X", "offset", "A")))
        .isEqualTo("E. agavoides/E. laui//E. agavoides");
  }

  @Test
  void whatIsNotCertainIsASource() {
    PlantRecord doubtful =
        PlantRecord.seedling(
            "M",
            Case.selfing(Fraction.HALF, "A"),
            Case.cross(Fraction.HALF, Route.CROSS, "A", "L"));
    assertThat(notation("X", AGAVOIDES, LAUI, doubtful, PlantRecord.cross("X", "M", "L")))
        .isEqualTo("M/E. laui");
    assertThat(notation("O", AGAVOIDES, PlantRecord.openPollinated("O", "A")))
        .isEqualTo("E. agavoides/unknown");
  }

  @Test
  void aSelfingLineOfTenThousandGenerationsIsOneNodeAGeneration() {
    List<PlantRecord> records = new ArrayList<>(List.of(PlantRecord.pure("S0", "E. laui")));
    for (int i = 1; i <= 10_000; i++) {
      records.add(PlantRecord.selfing("S" + i, "S" + (i - 1)));
    }
    Notation notation = NotationOf.of(Pedigree.of(records), "S10000", NotationOf.Names.byTaxon());
    assertThat(notation.nodes()).hasSize(10_001);
  }

  @Test
  void aNotationReadGivesEachSourceOnceAndEachCrossAPlant() {
    List<PlantRecord> records =
        PedigreeFromNotation.records(Notation.parse("cross 1/B//cross 1/3/D"));
    assertThat(records)
        .containsExactlyInAnyOrder(
            PlantRecord.pure("cross 1", "cross 1"),
            PlantRecord.pure("B", "B"),
            PlantRecord.pure("D", "D"),
            PlantRecord.cross("cross 2", "cross 1", "B"),
            PlantRecord.cross("cross 3", "cross 2", "cross 1"),
            PlantRecord.cross("cross 4", "cross 3", "D"));
    assertThat(records.get(records.size() - 1).code()).isEqualTo("cross 4");
  }
}
