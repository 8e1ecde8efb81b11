package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The figures in docs/ancestry.md are what the library answers. */
class HandbookTest {

  private static final Pedigree BENCH =
      Pedigree.of(
          List.of(
              PlantRecord.pure("26-001", "agavoides"),
              PlantRecord.pure("26-002", "laui"),
              PlantRecord.pure("26-003", "gigantea", 4),
              PlantRecord.pure("26-004", "Echeveria elegans"),
              PlantRecord.pure("26-005", "setosa"),
              PlantRecord.cross("27-001", "26-001", "26-002"),
              PlantRecord.cross("27-002", "26-003", "26-002"),
              PlantRecord.seedling(
                  "27-003",
                  Case.cross(Fraction.of(9, 10), Route.CROSS, "26-002", "26-001"),
                  Case.selfing(Fraction.of(1, 10), "26-002")),
              PlantRecord.cross("27-004", "26-004", "26-005"),
              PlantRecord.cross("28-001", "27-001", "26-001"),
              PlantRecord.selfing("28-002", "27-001"),
              PlantRecord.cross("28-003", "27-001", "26-004"),
              PlantRecord.cross("28-004", "27-001", "27-004"),
              PlantRecord.selfing("28-005", "27-003"),
              PlantRecord.cross("29-001", "28-001", "26-001"),
              PlantRecord.selfing("29-002", "28-002"),
              PlantRecord.selfing("29-003", "28-001"),
              PlantRecord.cross("29-004", "28-001", "26-002"),
              PlantRecord.cross("30-001", "28-002", "29-002")));

  private static String shares(String code) {
    return ExpectedAncestry.of(BENCH, code).shares().text();
  }

  @Test
  void theWorkedExampleIsWhatIsAnswered() throws IOException {
    assertThat(shares("27-001")).isEqualTo("agavoides 50 %, laui 50 %");
    assertThat(shares("28-001")).isEqualTo("agavoides 75 %, laui 25 %");
    assertThat(shares("29-001")).isEqualTo("agavoides 87.5 %, laui 12.5 %");
    assertThat(shares("27-002")).isEqualTo("gigantea 66.67 %, laui 33.33 %");
    assertThat(shares("27-003")).isEqualTo("laui 55 %, agavoides 45 %");
    String page = page();
    for (String code : List.of("27-001", "28-001", "29-001", "27-002", "27-003")) {
      assertThat(page).contains("**" + shares(code) + "**");
    }
  }

  @Test
  void theTableOfGenerationsIsWhatIsAnswered() throws IOException {
    GenerationClassifier classes = GenerationClassifier.of(BENCH);
    Map<String, String> rows =
        Map.of(
            "26-001", "pure",
            "27-001", "F1",
            "28-002", "F2",
            "29-002", "F3",
            "30-001", "F2 × F3",
            "28-001", "BC1",
            "29-001", "BC2",
            "29-003", "BC1F2",
            "28-003", "three-way",
            "28-004", "double cross");
    List<String> lines = page().lines().toList();
    rows.forEach(
        (code, label) -> {
          assertThat(classes.classOf(code).label()).isEqualTo(label);
          assertThat(lines)
              .anyMatch(line -> line.startsWith("| " + label) && line.contains("| " + code));
        });
    assertThat(classes.classOf("29-004").label()).isEqualTo("complex");
    assertThat(classes.classOf("28-005").text())
        .isEqualTo("90 % F2 of laui × agavoides, by selfing; or 10 % pure laui, raised from seed");
  }

  private static String page() throws IOException {
    return Files.readString(Path.of("..", "docs", "ancestry.md"));
  }
}
