package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.cli.screen.DisplayWidth;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The questions, asked of the demo bench. */
class AskVerbsTest {

  @TempDir Path folder;

  private DemoStory demo;

  @BeforeEach
  void theDemoBench() throws IOException {
    demo = new DemoStory(folder);
  }

  private void refused(int status, String because, String... words) {
    assertThat(demo.refused(status, words)).contains(because.replaceAll("\\s+", " "));
  }

  @Test
  void showTellsAllThatIsKnownAndWhatToAskNext() {
    assertThat(demo.told("show", "rosa"))
        .startsWith("22-001E, plant: Echeveria laui, alive\n")
        .contains("called        Rosa\n")
        .contains("field number  XM 014\n")
        .contains("22-001E acquired: Echeveria laui")
        .endsWith("Next: who is in it: filial ancestry 22-001E\n");
    assertThat(demo.told("show", "22-009")).contains("under it  22-009R-1 to -6, 22-009R P1");
    assertThat(demo.told("show", "26-013 H2")).contains("'26-013E H2'").contains("in store");
    assertThat(demo.json("show", "22-001").get("names").get(0).stringValue()).isEqualTo("Rosa");
  }

  @Test
  void showOfARecordThatWasJoinedTellsOfTheOtherAndSaysSo() {
    assertThat(demo.type("join", "22-001", "26-001", "--why", "one label").err())
        .contains("22-001E bears the field number XM 014 and 26-001M XM 015");

    assertThat(demo.told("show", "26-001"))
        .startsWith("22-001E, plant")
        .contains("asked for as  26-001M, another record of the same plant");
  }

  @Test
  void ancestryTellsSharesGenerationAndSeedParentLine() {
    assertThat(demo.told("ancestry", "24-011-1"))
        .isEqualTo(
            """
            24-011L-1: F1 of Echeveria lilacina × Echeveria laui.
            taxon               share
            ──────────────────  ─────  ───────
            Echeveria lilacina    2/3  66.67 %
            Echeveria laui        1/3  33.33 %
            seed-parent line  24-011L-1 <- 23-001A (Echeveria lilacina)
            plants behind it  2
            chromosome sets   3
            note              No likely range can be given: 23-001A has 4 chromosome sets:
                              how far shares spread is worked out for plants of two sets,
                              from parents of two sets, and for no others.
            """);
    JsonNode share = demo.json("ancestry", "24-011-1").get("taxa").get(0).get("share");
    assertThat(share.get("exact").stringValue()).isEqualTo("2/3");
    assertThat(demo.json("ancestry", "24-007-1", "--generation-by", "plant").get("generationBy"))
        .hasToString("\"plant\"");
  }

  @Test
  void aTreeIsDrawnWithBranchesOrInPlainCharacters() {
    assertThat(demo.told("tree", "24-007-1"))
        .isEqualTo(
            """
            24-007E-1 "Morgenrot"
            ├─ seed parent 22-009R-1
            │  ├─ seed parent 22-001E "Rosa", Echeveria laui XM 014
            │  └─ pollen parent 22-003J "Anna", Echeveria agavoides XM 033
            └─ pollen parent 22-001E "Rosa", Echeveria laui XM 014
            """);
    assertThat(demo.told("tree", "24-007-1", "--generations", "1", "--ascii"))
        .isEqualTo(
            """
            24-007E-1 "Morgenrot"
            |- seed parent 22-009R-1 (goes on)
            `- pollen parent 22-001E "Rosa", Echeveria laui XM 014
            """);
    assertThat(demo.json("tree", "24-007-1").get("lines").get(1).get("role").stringValue())
        .isEqualTo("seed parent");
    refused(1, "1 generation or more", "tree", "24-007-1", "--generations", "0");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "tree 26-008",
        "list",
        "list --all",
        "find 26-0_3",
        "hangs 22-001",
        "show 22-001",
        "tag rosa"
      })
  void noLineIsWiderThanTheWindow(String line) {
    for (String columns : List.of("24", "40", "80")) {
      Outcome outcome =
          new CommandLineRun().in(folder).env("COLUMNS", columns).run(line.split(" ", -1));
      assertThat(outcome.status()).isZero();
      assertThat(outcome.out().lines())
          .as(line + " at " + columns)
          .allMatch(text -> DisplayWidth.of(text) <= Integer.parseInt(columns));
    }
  }

  @Test
  void notationIsWrittenWithNamesTaxaOrCodes() {
    assertThat(demo.told("notation", "24-007-1")).isEqualTo("Rosa/Anna//Rosa\n");
    assertThat(demo.told("notation", "24-007-1", "--names", "taxa", "--backcross"))
        .isEqualTo("laui/agavoides//laui\n");
    assertThat(demo.told("notation", "24-007-1", "--names", "codes"))
        .isEqualTo("22-001E/22-003J//22-001E\n");
    assertThat(demo.json("notation", "24-007-1").get("notation").stringValue())
        .isEqualTo("Rosa/Anna//Rosa");
  }

  @Test
  void aNotationIsExplainedWithoutARegister() throws IOException {
    Files.delete(folder.resolve("filial.register"));

    assertThat(demo.told("notation", "--explain", "A*3/B"))
        .contains("notation    A/3/A//A/B")
        .contains("in short    A*3/B")
        .contains("A         7/8  87.5 %")
        .contains("└─ pollen parent cross 2");
    refused(1, "A/B/C", "notation", "--explain", "A/B/C");
  }

  @Test
  void aNotationIsAskedForAtThePromptSoThatNoShellTouchesIt() {
    Outcome asked =
        new CommandLineRun().in(folder).env("TERM", "dumb").answering("A*2/B").run("notation");

    assertThat(asked.err()).isEqualTo("Notation: ");
    assertThat(asked.out()).contains("BC1 to A");
    refused(2, "PLANT is missing", "notation");
    refused(2, "both given", "notation", "22-001", "--explain", "A/B");
    refused(2, "none is named", "notation", "--backcross");
  }

  @Test
  void aFormulaSaysInWhichOrderItStands() {
    assertThat(demo.told("formula", "22-009-1"))
        .isEqualTo("Echeveria laui × E. agavoides (seed parent first)\n");
    assertThat(demo.told("formula", "22-009-1", "--alphabetical", "--ascii"))
        .isEqualTo("Echeveria agavoides x E. laui (alphabetical)\n");
    assertThat(demo.told("formula", "22-009-1", "--signs"))
        .startsWith("Echeveria laui ♀ × E. agavoides ♂");
    refused(1, "leave them out", "formula", "24-007-1", "--signs");
    assertThat(demo.json("formula", "22-009-1").get("order").stringValue())
        .isEqualTo("seed parent first");
  }

  @Test
  void theListIsNarrowedAndHidesWhatIsGone() {
    assertThat(demo.told("list", "laui", "xm", "--kind", "plants"))
        .contains("22-001E")
        .contains("22-002H")
        .doesNotContain("22-003J")
        .doesNotContain("kind");
    assertThat(demo.told("list", "--kind", "pots", "--year", "2024")).doesNotContain("24-011L P1");
    assertThat(demo.told("list", "--kind", "pots", "--year", "24", "--all"))
        .contains("24-011L P1")
        .contains("used up");
    // 22-009R is the cross of Rosa, Echeveria laui, with Anna, Echeveria agavoides.
    assertThat(demo.told("list", "rosa", "anna", "--kind", "crosses"))
        .contains("22-009R  22-001E × 22-003J")
        .doesNotContain("22-010T");
    assertThat(demo.told("list", "laui", "agavoides", "--kind", "seedlings")).contains("22-009R-1");
    assertThat(demo.told("list", "nothing-like-it"))
        .isEqualTo("Nothing to list. What is gone is listed too with: filial list --all\n");
    assertThat(demo.json("list", "--kind", "crosses", "--year", "2022").get("things")).hasSize(2);
    refused(2, "is none of plants", "list", "--kind", "trees");
  }

  @Test
  void aSmudgedTagAndHalfANameAreFound() {
    assertThat(demo.told("find", "2_-009_-1"))
        .contains("22-009R-1")
        .contains("24-009J-1")
        .contains("fits the smudged tag")
        .endsWith("Next: filial show 22-009R-1\n");
    assertThat(demo.told("find", "ros")).contains("called Rosa");
    assertThat(demo.told("find", "bench", "colorata")).contains("22-004K");
    Outcome nothing = demo.type("find", "zzz");
    assertThat(nothing.status()).isEqualTo(1);
    assertThat(nothing.out())
        .startsWith("Nothing in this register fits \"zzz\".\n")
        .contains("_ for each character");
    assertThat(demo.json("find", "ros").get("matches")).hasSize(1);
  }

  @Test
  void theTabKeyGetsCodesAndNamesOneALine() {
    assertThat(demo.told("find", "--beginning", "22-001")).isEqualTo("22-001E\n");
    assertThat(demo.told("find", "--beginning", "--", "An")).isEqualTo("Anna\n");
    assertThat(demo.told("completion", "bash"))
        .contains("function _filial_things() {")
        .contains("local PLANT_pos_param_args=(\"${FILIAL_THINGS[@]}\")")
        .doesNotContain("(\"FILIAL_THINGS\")");
  }

  @Test
  void whatHangsOnAnEntryIsToldByItsNumberOrByACode() {
    String byCode = demo.told("hangs", "23-006");

    assertThat(byCode)
        .startsWith("Entry 40: 23-006J: 22-002H × 22-006M")
        .contains("On it hang 2 plants and 4 other things")
        .contains("23-006J-1, 23-006J-2")
        .contains("Next: if it was wrong: filial amend 40 PROPERTY=VALUE");
    assertThat(demo.told("hangs", "40")).isEqualTo(byCode);
    assertThat(demo.told("hangs", "#40")).isEqualTo(byCode);
    assertThat(demo.told("hangs", "anna")).contains("left the house  26-013E H3 given away");
    assertThat(demo.json("hangs", "40").get("things")).hasSize(6);
    refused(1, "there is no entry 9999", "hangs", "9999");
  }

  @Test
  void aTagIsToldSideBySideForOneThingOrSeveral() {
    assertThat(demo.told("tag", "24-007-1"))
        .isEqualTo(
            """
            front       24-007E-1  25 MAY 24
                        22-009R-1 × Rosa  BC1
            back        Morgenrot
            buried end  24-007E-1
            """);
    assertThat(demo.told("tag", "22-001", "anna", "--leaving"))
        .contains("KB 22-001E")
        .contains("KB 22-003J");
    assertThat(demo.told("tag", "22-009", "--machine")).startsWith("KB22009R");
    assertThat(demo.told("tag", "22-009-1", "--lines", "1", "--sides", "1", "--ascii"))
        .contains("22-009R-1  Rosa x Anna")
        .contains("no room for  F1");
    assertThat(demo.told("tag", "22-009-1", "--lines", "1", "--sides", "1", "--columns", "18"))
        .contains("22-009R-1  Rosa ×…")
        .contains("no room for  Anna, the end of Rosa × Anna");
    assertThat(demo.json("tag", "22-001").get("tags").get(0).get("text").get("front")).isNotEmpty();
    refused(1, "a label has 7 to 1000 columns", "tag", "22-001", "--columns", "3");
  }

  @Test
  void whatIsNotThereIsRefusedByEveryQuestionWithItsRemedy() {
    for (String verb : List.of("show", "ancestry", "tree", "notation", "formula", "tag", "hangs")) {
      refused(1, "24-099", verb, "24-099");
      refused(1, "nothing here is called \"Zz\"", verb, "Zz");
      refused(1, "go up to 6", verb, "22-009-77");
    }
    refused(2, "PLANT is missing", "tree");
    Outcome json = demo.type("show", "Zz", "--json");
    assertThat(json.status()).isEqualTo(1);
    assertThat(json.err()).contains("\"message\"");
  }

  @Test
  void oddNamesDoNoHarm() {
    String odd = "Grüne <Königin> \"O'Hara\" 🌵 " + "x".repeat(300);
    assertThat(demo.type("name", "22-001", odd).status()).isZero();

    assertThat(demo.told("show", "grüne <k")).contains("Königin");
    assertThat(demo.told("tree", "24-007-1")).contains("🌵");
    assertThat(demo.told("notation", "24-007-1", "--names", "taxa")).contains("laui/");
    assertThat(demo.told("tag", "22-001")).contains("22-001E");
  }
}
