package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun;
import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.cli.screen.DisplayWidth;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class LocalityVerbsTest {

  @TempDir Path folder;

  private BenchStory bench;

  /** 26-001 and 26-002 of FO 12, 26-003 of FO 14. */
  @BeforeEach
  void threePlantsOfTwoNumbers() {
    bench = new BenchStory(folder);
    plant("FO 12", "--name", "Rosa");
    plant("FO 12");
    plant("FO 14");
  }

  private void plant(String number, String... more) {
    List<String> words = new ArrayList<>(List.of("plant", "Echeveria laui"));
    words.addAll(List.of("--field", number, "--date", "2026-01-01"));
    words.addAll(List.of(more));
    bench.done(words.toArray(String[]::new));
  }

  private String cross(String seed, String... more) {
    List<String> words = new ArrayList<>(List.of("cross", seed));
    words.addAll(List.of(more));
    words.addAll(List.of("--date", "2026-02-01"));
    return bench.type(words.toArray(String[]::new)).out();
  }

  /** What was said, all that stands apart or wraps as one line. */
  private String said(String... words) {
    return bench.done(words).replaceAll("\\s+", " ");
  }

  private String complaint(String... words) {
    Outcome outcome = bench.type(words);
    assertThat(outcome.status()).isIn(1, 2);
    assertThat(outcome.out()).isEmpty();
    return outcome.err().replace("\n", " ");
  }

  @Test
  void openPollinationEndsTheLineUnlessTheFlowersWereBagged() {
    cross("26-001", "--open");
    cross("26-001", "26-002", "--bagged");
    cross("26-001", "26-002", "--unprotected");

    assertThat(said("locality", "26-004"))
        .startsWith("26-004R: that it is true to FO 12 is not certain. ")
        .contains("2026-02-01")
        .contains("nobody knows whose pollen it was");
    assertThat(bench.done("locality", "26-005")).isEqualTo("26-005T is true to FO 12.\n");
    assertThat(said("locality", "26-006")).contains("a bee may have come");
  }

  @Test
  void twoNumbersOfOnePopulationKeepTheLineOnceThatIsSaid() {
    cross("26-001", "26-003", "--bagged");
    assertThat(said("locality", "26-004"))
        .startsWith("26-004R is true to no field number.")
        .contains("26-003P is of FO 14");

    assertThat(bench.done("population", "FO 12", "FO 14", "--remark", "the same slope"))
        .isEqualTo(
            """
            Entry 6: the field numbers FO 12, FO 14 are one population.
            Next: what is true to it: filial locality 'FO 12'
            """);

    assertThat(bench.done("locality", "26-004"))
        .isEqualTo(
            """
            26-004R is true to FO 12, FO 14.
            one population  FO 12, FO 14
            """);
    assertThat(said("locality", "FO", "14"))
        .startsWith("3 plants, pots and lots come of FO 14: 3 are true to it")
        .contains("entry 6 the field numbers FO 12, FO 14 are one population");
    assertThat(bench.done("undo")).contains("FO 12, FO 14");
    assertThat(said("locality", "26-004")).contains("true to no field number");
  }

  @Test
  void aNumberThatNothingBearsIsTakenWithAWarning() {
    Outcome outcome = bench.type("population", "FO 12", "FO12");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.err()).contains("nothing here came under the field number FO12");
  }

  @Test
  void onePopulationTakesTwoNumbers() {
    assertThat(complaint("population", "FO 12"))
        .contains("with which field number is FO 12 one population?")
        .contains("each in quotes");
    assertThat(complaint("population", "FO 12", "FO 12 ")).contains("FO 12 is named twice");
  }

  @Test
  void aReportTellsWhatIsTrueAndThroughWhichCrossTheOthersAreNot() {
    cross("26-001", "26-003", "--bagged");
    bench.done("number", "26-004", "4", "--date", "2026-03-01");

    assertThat(bench.done("locality", "fo", "12"))
        .isEqualTo(
            """
            6 plants, pots and lots come of FO 12: 2 are true to it, 0 are not certain, 4
            are not true.
            true to it        kind   what it is
            ────────────────  ─────  ──────────────
            26-001M, 26-002N  plant  Echeveria laui
            verdict   since       through                                    which
            ────────  ──────────  ─────────────────────────────────────────  ───────────────
            not true  2026-02-01  26-004R, 26-001M × 26-003P: 26-003P is of  26-004R-1 to -4
                                  FO 14
            """);
    JsonNode json = bench.json("locality", "FO 12");
    assertThat(json.get("fieldNumber").stringValue()).isEqualTo("FO 12");
    assertThat(json.at("/things/5/verdict").stringValue()).isEqualTo("not_true");
    assertThat(json.at("/things/5/lost/made").stringValue()).isEqualTo("26-004R");
    assertThat(json.at("/things/5/lost/since").stringValue()).isEqualTo("2026-02-01");
  }

  @Test
  void withoutANumberAllAreCounted() {
    cross("26-001", "26-003", "--bagged");
    bench.done("number", "26-004", "4", "--date", "2026-03-01");

    assertThat(bench.done("locality"))
        .isEqualTo(
            """
            Plants, pots and seed lots that come of each field number:
            field number  true  not certain  not true
            ────────────  ────  ───────────  ────────
            FO 12            2            0         4
            FO 14            1            0         4
            Next: which they are, and since when: filial locality NUMBER
            """);
    assertThat(bench.json("locality").at("/numbers/0/isTrue").asInt()).isEqualTo(2);
  }

  @Test
  void aPlantIsAskedForByItsNameToo() {
    assertThat(bench.done("locality", "rosa")).isEqualTo("26-001M is true to FO 12.\n");
    assertThat(bench.json("locality", "rosa").at("/trueTo/0").stringValue()).isEqualTo("FO 12");
  }

  @Test
  void whatIsNotThereIsRefusedWithWhatIs() {
    assertThat(complaint("locality", "FO", "99"))
        .contains("nothing here came under the field number \"FO 99\"")
        .contains("the numbers are FO 12, FO 14");
    assertThat(complaint("locality", "26-099")).contains("26-099").contains("not in this register");
  }

  @Test
  void noLineIsWiderThanTheWindow() {
    cross("26-001", "26-003", "--unprotected");
    bench.done("harvest", "26-004", "40", "--date", "2026-03-01");
    for (String columns : List.of("24", "40", "80")) {
      for (String[] words :
          List.of(
              new String[] {"locality"},
              new String[] {"locality", "FO 12"},
              new String[] {"locality", "26-004"})) {
        Outcome outcome = new CommandLineRun().in(folder).env("COLUMNS", columns).run(words);
        assertThat(outcome.status()).isZero();
        assertThat(outcome.out().lines())
            .allMatch(line -> DisplayWidth.of(line) <= Integer.parseInt(columns));
      }
    }
  }
}
