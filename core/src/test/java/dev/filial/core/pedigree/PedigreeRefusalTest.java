package dev.filial.core.pedigree;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What cannot be a pedigree is refused, naming the plants and the remedy. */
class PedigreeRefusalTest {

  private static void refused(String message, PlantRecord... records) {
    assertThatThrownBy(() -> Pedigree.of(List.of(records)))
        .isInstanceOf(PedigreeException.class)
        .hasMessage(message);
  }

  @Test
  void twoPlantsOfOneCode() {
    refused(
        "two plants have the code 26-001; give one of them another code",
        PlantRecord.pure("26-001", "E. x"),
        PlantRecord.pure("26-001", "E. y"));
  }

  @Test
  void aParentNobodyRecorded() {
    refused(
        "26-002 has 26-009 as a parent, but no plant of that code is recorded; add 26-009, or"
            + " correct the code",
        PlantRecord.pure("26-001", "E. x"),
        PlantRecord.cross("26-002", "26-001", "26-009"));
  }

  @Test
  void aPlantAmongItsOwnAncestorsIsExplainedByTheShortestLoop() {
    refused(
        "26-004C is its own ancestor: 26-004C <- 26-009K <- 26-004C (offspring <- parent);"
            + " correct a parent of one of them",
        PlantRecord.pure("A", "E. x"),
        PlantRecord.cross("26-004C", "26-009K", "long3"),
        PlantRecord.cross("26-009K", "A", "26-004C"),
        PlantRecord.cross("long1", "A", "26-004C"),
        PlantRecord.cross("long2", "A", "long1"),
        PlantRecord.cross("long3", "A", "long2"),
        PlantRecord.selfing("below", "26-004C"));
  }

  @Test
  void aPlantThatIsItsOwnParent() {
    refused(
        "26-004C is its own ancestor: 26-004C <- 26-004C (offspring <- parent);"
            + " correct a parent of one of them",
        PlantRecord.pure("A", "E. x"),
        PlantRecord.cross("26-004C", "A", "26-004C"));
  }

  @Test
  void aLoopThroughAMixtureAndARamet() {
    refused(
        "A is its own ancestor: A <- R <- A (offspring <- parent); correct a parent of one of them",
        PlantRecord.seedling(
            "A",
            Case.unknownPollen(Fraction.HALF, Route.STRAY, "B"),
            Case.cross(Fraction.HALF, Route.CROSS, "B", "R")),
        PlantRecord.pure("B", "E. x"),
        PlantRecord.ramet("R", "A"));
  }

  @Test
  void aLoopOfTwentyThousandPlantsIsStillExplained() {
    List<PlantRecord> records = new ArrayList<>();
    int n = 20_000;
    for (int i = 0; i < n; i++) {
      records.add(PlantRecord.selfing("S" + i, "S" + (i + 1) % n));
    }
    assertThatThrownBy(() -> Pedigree.of(records))
        .isInstanceOf(PedigreeException.class)
        .hasMessageContaining("S0 is its own ancestor: S0 <- S1 <- S2");
  }

  @Test
  void sharesThatDoNotSumToOne() {
    assertThatThrownBy(
            () ->
                PlantRecord.seedling(
                    "C",
                    Case.selfing(Fraction.of(1, 10), "A"),
                    Case.cross(Fraction.of(8, 10), Route.CROSS, "A", "B")))
        .isInstanceOf(PedigreeException.class)
        .hasMessageContaining("C: ")
        .hasMessageContaining("sum to 9/10, not to 1");
    assertThatThrownBy(() -> Case.selfing(Fraction.ZERO, "A"))
        .isInstanceOf(PedigreeException.class)
        .hasMessageContaining("above 0");
  }

  @Test
  void anOddPloidyHasNoHalf() {
    refused(
        "C, pollen parent of D, has an odd ploidy (3x), of which there is no half; state how many"
            + " chromosome sets its gamete brought",
        PlantRecord.pure("A", "E. x", 4),
        PlantRecord.pure("B", "E. y"),
        PlantRecord.cross("C", "A", "B"),
        PlantRecord.cross("D", "B", "C"));
  }

  @Test
  void aPloidyThatDiffersBetweenCasesHasNoHalfEither() {
    refused(
        "C, seed parent of D, has a ploidy that differs between its cases; state how many"
            + " chromosome sets its gamete brought",
        PlantRecord.pure("A", "E. x", 4),
        PlantRecord.pure("B", "E. y"),
        PlantRecord.seedling(
            "C",
            Case.selfing(Fraction.HALF, "A"),
            Case.cross(Fraction.HALF, Route.STRAY, "A", "B")),
        PlantRecord.openPollinated("D", "C"));
  }

  @Test
  void aGameteWithMoreSetsThanItsParent() {
    refused(
        "A, seed parent of B, is said to have given 3 chromosome sets, but it has only 2; state at"
            + " most that, or correct its ploidy",
        PlantRecord.pure("A", "E. x"),
        PlantRecord.cross("B", Gamete.unreduced("A", 3), Gamete.unknown()));
  }

  @Test
  void doublingAgainAndAgain() {
    List<PlantRecord> records = new ArrayList<>(List.of(PlantRecord.pure("D0", "E. x")));
    for (int i = 1; i < 12; i++) {
      records.add(PlantRecord.doubled("D" + i, "D" + (i - 1)));
    }
    assertThatThrownBy(() -> Pedigree.of(records))
        .isInstanceOf(PedigreeException.class)
        .hasMessageContaining("D10 would have 2048 chromosome sets");
  }

  @Test
  void foundersThatContradictThemselves() {
    assertThatThrownBy(
            () -> Makeup.of(Map.of("E. x", Fraction.of(3, 4), "E. y", Fraction.of(1, 2))))
        .isInstanceOf(PedigreeException.class)
        .hasMessageContaining("sum to 5/4, more than 1");
    assertThatThrownBy(() -> Makeup.of(Map.of("E. x", Fraction.of(-1, 4))))
        .isInstanceOf(PedigreeException.class);
    assertThatThrownBy(() -> Founder.pure("E. x", 0)).hasMessageContaining("ploidy of 0");
    assertThatThrownBy(() -> Founder.pure("E. x").withStated(StatedGeneration.f1("a", "b")))
        .hasMessageContaining("no hybrid");
    assertThatThrownBy(
            () -> new Founder(Makeup.unknown(), 2, Standing.PURE, Optional.empty(), null, null))
        .hasMessageContaining("wholly of one taxon");
    assertThatThrownBy(() -> StatedGeneration.f1("E. x", "E. x")).hasMessageContaining("two taxa");
    assertThatThrownBy(() -> PlantRecord.pure(" ", "E. x")).hasMessageContaining("blank");
  }

  @Test
  void askingForAPlantThatIsNotThere() {
    assertThatThrownBy(() -> Pedigree.of(List.of()).indexOf("26-001"))
        .hasMessageContaining("no plant of the code 26-001");
  }
}
