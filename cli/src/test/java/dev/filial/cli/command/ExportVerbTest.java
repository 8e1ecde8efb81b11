package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A grower hands on plants, crosses, the pedigree, and the whole book. */
class ExportVerbTest {

  @TempDir Path folder;

  private BenchStory bench;

  /** 26-001 to 26-003 are plants, 26-004 the cross of the first two with seedling 1. */
  @BeforeEach
  void aBench() {
    bench = new BenchStory(folder);
    bench.type(
        "plant",
        "Echeveria laui",
        "--field",
        "XM 014",
        "--locality",
        "Barranca Secreta",
        "--from",
        "Lena Muster",
        "--donor-code",
        "L 7",
        "--date",
        "2026-01");
    bench.done("plant", "Echeveria cf. agavoides", "--name", "=1+1", "--date", "2026");
    bench.cautioned(
        "no room on the tag", "plant", "--name", "Mystery <\"\uD83C\uDF35\"> " + "x".repeat(300));
    bench.type("cross", "26-001", "26-002", "--date", "2026-02-01", "--unprotected");
    bench.done("number", "26-004", "1");
  }

  private static void requireRefused(Outcome outcome, int status, String... words) {
    assertThat(outcome.status()).as(outcome.err()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().replaceAll("\\s+", " ")).contains(words);
  }

  /** The row of a code, by column; only the last cells of these rows have commas in them. */
  private Map<String, String> row(String code, String... words) {
    Outcome outcome = bench.type(words);
    assertThat(outcome.status()).as(outcome.err()).isZero();
    List<List<String>> rows = new ArrayList<>();
    outcome.out().lines().forEach(line -> rows.add(List.of(line.split(",", -1))));
    Map<String, String> cells = new LinkedHashMap<>();
    for (List<String> row : rows) {
      if (row.contains(code)) {
        for (int i = 0; i < rows.get(0).size(); i++) {
          cells.put(rows.get(0).get(i), row.get(i));
        }
        return cells;
      }
    }
    throw new AssertionError(code + " is not in\n" + outcome.out());
  }

  @Test
  void aPlantTravelsWithTheMarkAndTheDonorsCodeButWithoutPeopleAndPlaces() {
    Map<String, String> row = row("KB 26-001M", "export", "plants", "26-001");
    assertThat(row)
        .containsEntry("donor's code", "L 7")
        .containsEntry("field number", "XM 014")
        .containsEntry("since", "2026-01")
        .containsEntry("donor", "")
        .containsEntry("locality", "");
    Outcome told = bench.type("export", "plants", "--localities", "--people");
    assertThat(told.out()).contains("Barranca Secreta", "Lena Muster");
    assertThat(told.err()).contains("thieves", "CITES");
    for (String form : List.of("plants", "passport", "occurrences", "crosses", "graphml", "dot")) {
      assertThat(bench.type("export", form).out())
          .as(form)
          .contains("KB 26-001M")
          .doesNotContain("Barranca", "Lena", "Klara");
    }
  }

  @Test
  void doubtTravelsWithTheSeedling() {
    Map<String, String> row = row("KB 26-004R-1", "export", "plants", "26-004");
    assertThat(row)
        .containsEntry("seed parent", "KB 26-001M")
        .containsEntry("pollen parent", "KB 26-002N")
        .containsEntry("generation", "F1");
    assertThat(row.get("doubts"))
        .contains("unprotected flowers", "doubts further back in its pedigree");
    assertThat(row("KB 26-002N", "export", "occurrences"))
        .containsEntry("identificationQualifier", "cf. agavoides")
        .containsEntry("scientificName", "Echeveria agavoides");
  }

  @Test
  void aPassportHasWhatAGenebankAsksFor() {
    Map<String, String> wild =
        row("KB 26-001M", "export", "passport", "--institute", "DEU999", "--people");
    assertThat(wild)
        .containsEntry("INSTCODE", "DEU999")
        .containsEntry("COLLNUMB", "XM 014")
        .containsEntry("GENUS", "Echeveria")
        .containsEntry("SPECIES", "laui")
        .containsEntry("ACQDATE", "202601--")
        .containsEntry("SAMPSTAT", "100")
        .containsEntry("DONORNAME", "Lena Muster")
        .containsEntry("DONORNUMB", "L 7")
        .containsEntry("STORAGE", "20");
    assertThat(row("KB 26-004R-1", "export", "passport"))
        .containsEntry("SAMPSTAT", "412")
        .containsEntry("ANCEST", "Echeveria laui XM 014/Echeveria agavoides");
  }

  @Test
  void noNameIsRunByASpreadsheet() {
    assertThat(bench.type("export", "plants").out()).contains(",'=1+1,").doesNotContain(",=1+1");
  }

  @Test
  void theWholeBookIsReadBackDigestForDigest() throws IOException {
    Outcome outcome = bench.type("export", "entries", "--to", "book.jsonl");
    assertThat(outcome.err()).contains("the whole book");
    assertThat(bench.done("import", "book.jsonl", "--register", "copy").replaceAll("\\s+", " "))
        .contains("each exactly as it was");
    bench.type("export", "entries", "--to", "again.jsonl", "--register", "copy");
    assertThat(Files.readString(folder.resolve("again.jsonl")))
        .isEqualTo(Files.readString(folder.resolve("book.jsonl")));
  }

  @Test
  void thePedigreeBehindASeedlingIsThreePlants() {
    String dot = bench.done("export", "dot", "26-004-1");
    assertThat(dot)
        .contains("\"KB 26-001M\" -> \"KB 26-004R-1\" [ role=\"seed\"")
        .contains("\"KB 26-002N\" -> \"KB 26-004R-1\" [ role=\"pollen\"")
        .doesNotContain("Mystery");
    assertThat(bench.done("export", "graphml")).contains("Mystery &lt;");
  }

  @Test
  void whatIsInAFileComesWithWhatToDoWithItNext() {
    assertThat(next("plants")).contains("spreadsheet", "filial give CODE --to NAME");
    assertThat(next("passport")).contains("spreadsheet");
    assertThat(next("occurrences")).contains("spreadsheet");
    assertThat(next("crosses")).contains("spreadsheet").doesNotContain("filial give");
    assertThat(next("graphml")).contains("GraphML", "filial draw CODE");
    assertThat(next("dot")).endsWith("dot -Tsvg -O 'of dot'");
    assertThat(next("entries")).endsWith("filial import 'of entries' --register NEW");
  }

  private String next(String form) {
    String told = bench.type("export", form, "--to", "of " + form).out().replaceAll("\\s+", " ");
    assertThat(told).contains(" Next: ");
    return told.substring(told.indexOf(" Next: ")).strip();
  }

  @Test
  void whatWasWrittenWhereIsAnsweredAsJson() {
    Outcome outcome = bench.type("export", "crosses", "--to", "crosses.csv", "--json");
    JsonNode json = JsonMapper.shared().readTree(outcome.out());
    assertThat(json.get("rows").intValue()).isEqualTo(1);
    assertThat(json.get("file").stringValue()).isEqualTo("crosses.csv");
    requireRefused(bench.type("export", "crosses", "--json"), 2, "Add --to FILE");
  }

  @Test
  void whatCannotBeIsRefusedAndLeavesNoFile() throws IOException {
    requireRefused(bench.type("export", "excel"), 2, "\"excel\" is none of entries, plants");
    requireRefused(bench.type("export", "plants", "26-099"), 1, "26-099");
    requireRefused(bench.type("export", "entries", "26-001"), 2, "the whole book");
    requireRefused(bench.type("export", "crosses", "--people"), 2, "crosses tells neither");
    requireRefused(bench.type("export", "dot", "--institute", "DEU999"), 2, "no place for it");
    requireRefused(bench.type("export", "passport", "--institute", "mine"), 2, "as DEU999");
    requireRefused(
        bench.type("export", "crosses", "26-001", "--to", "none.csv"), 1, "there is no cross");
    assertThat(folder.resolve("none.csv")).doesNotExist();
    Files.writeString(folder.resolve("old.csv"), "mine");
    requireRefused(bench.type("export", "plants", "--to", "old.csv"), 3, "is there already");
    assertThat(Files.readString(folder.resolve("old.csv"))).isEqualTo("mine");
  }

  @Test
  void anEmptyRegisterHasNothingToHandOn() {
    bench.done("start", "EM", "--grower", "Emil", "--register", "empty");
    for (String form : List.of("plants", "crosses", "passport", "occurrences", "graphml", "dot")) {
      requireRefused(bench.type("export", form, "--register", "empty"), 1, "there is no");
    }
    assertThat(bench.type("export", "entries", "--register", "empty").out().lines()).hasSize(1);
  }

  @Test
  void whatIsGoneIsLeftOutAndSaidSo() {
    bench.type("died", "26-003");
    Outcome outcome = bench.type("export", "plants");
    assertThat(outcome.out()).doesNotContain("26-003P");
    assertThat(outcome.err()).contains("--all");
    assertThat(bench.type("export", "plants", "--all").out()).contains("26-003");
  }
}
