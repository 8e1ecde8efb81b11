package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

class BatchVerbsTest {

  @TempDir Path folder;

  private DemoStory bench;

  @BeforeEach
  void theDemoBench() throws IOException {
    bench = new DemoStory(folder);
  }

  private void write(String name, String... lines) throws IOException {
    Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
  }

  private long entries() {
    try (var store = SqliteStore.open(folder.resolve("filial.register"))) {
      return store.size();
    }
  }

  private static List<String> book(Path register) {
    List<String> bodies = new ArrayList<>();
    try (var store = SqliteStore.open(register)) {
      for (long number = 1; number <= store.size(); number++) {
        bodies.add(store.entry(number).orElseThrow().digest());
      }
    }
    return bodies;
  }

  @Test
  void aCrossAndWhatCameOfItAreWrittenInOneEvening() throws IOException {
    write(
        "evening.txt",
        "# by the window",
        "on 4 mar",
        "@rl: cross Rosa Lilo --flowers 3",
        "",
        "  fruit ^ --set 2   # one dropped",
        "harvest @rl 40 --date 2026-05-20",
        "sow ^ 20 --pots 2 --date 2026-06-01",
        "filial count ^.2 --up 3 --date \"10 jun\"");

    assertThat(bench.told("batch", "evening.txt"))
        .startsWith("Written: 5 entries of 5 lines.\n")
        .contains("26-015J: 22-001E × 22-006M, 3 flowers")
        .contains("26-015J P2: 3 came up");
    assertThat(bench.json("show", "26-015").toString()).contains("2026-03-04");
    assertThat(bench.told("history", "264")).contains("2026-06-10");
  }

  @Test
  void whereStandardInputIsClosedThatIsWhatIsSaid() {
    Outcome outcome = new CommandLineRun().in(folder).withoutInput().run("batch", "-");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err())
        .isEqualTo(
            """
            filial batch: standard input is closed, and nothing can be read from it.
            Name a file instead, or leave standard input open.
            """);
  }

  @Test
  void oneBadLineAndNothingIsWritten() throws IOException {
    write(
        "bad.txt",
        "note Rosa \"fine\"",
        "crss Rosa Lilo",
        "show Rosa",
        "cross Rosa Nobody",
        "harvest ^ 3",
        "on 31 feb",
        "note Rosa 'open",
        "count \"26-004 P1\"",
        "batch more.txt",
        "note Rosa x --json",
        "fruit @z --set 1",
        "@z: note Rosa more",
        "harvest @z 4",
        "@z: note Rosa \"and more\"",
        "A: note Rosa more");

    String said = bench.refused(1, "batch", "bad.txt");

    assertThat(said)
        .contains("13 lines of 15 cannot be taken; nothing was written")
        .contains("Line 2: there is no verb \"crss\". Did you mean: filial cross?")
        .contains("Line 3: show writes no entry")
        .contains("Line 4: nothing here is called \"Nobody\"; type a code")
        .contains("Line 5: not looked at: it takes the code of line 4.")
        .contains("Line 6: \"31 feb\" is not a day: February has 29 days then.")
        .contains("Line 7: the ' at column 11 is not closed")
        .contains("Line 8: --up or --alive is missing. How it is used: filial help count")
        .contains("Line 9: batch cannot stand in a batch.")
        .contains("Line 10: --json says how to answer")
        .contains("Line 11: no line before this one is called @z")
        .contains("Line 13: line 12, @z, gave out no code.")
        .contains("Line 14: @z is the name of line 12 already")
        .contains("Line 15: \"A:\" is no verb; a name for what a line gives out stands so: @A:")
        .doesNotContain("Line 1:")
        .doesNotContain("Line 12:")
        .endsWith("Mend them and try again. ");
    assertThat(entries()).isEqualTo(259);
  }

  @Test
  void aLineSaysWhatTheVerbItselfSays() throws IOException {
    String line = "died 24-007-3 --count 2";
    write("one.txt", line);

    String typed = bench.refused(1, line.split(" ", -1));
    String inBatch = bench.refused(1, "batch", "one.txt");

    assertThat(inBatch).contains(typed.strip().replaceFirst("^filial died: ", "Line 1: "));
  }

  @Test
  void checkingWritesNothing() throws IOException {
    write("good.txt", "note Rosa fine", "note Lilo fine");
    write("bad.txt", "note Rosa fine", "note Nobody fine");

    assertThat(bench.told("batch", "good.txt", "--check"))
        .isEqualTo("2 lines can be taken and make 2 entries; nothing was written.\n");
    Outcome bad = bench.type("batch", "bad.txt", "--check");
    assertThat(bad.status()).isEqualTo(1);
    assertThat(bad.out())
        .startsWith("1 line of 2 cannot be taken; nothing was written.\nLine 2: nothing here");
    assertThat(bench.type("batch", "bad.txt", "--check", "--json").out())
        .contains("\"line\" : 2")
        .contains("\"bad\" : 1");
    assertThat(entries()).isEqualTo(259);
  }

  @Test
  void textOfEveryEditorIsRead() throws IOException {
    Files.writeString(
        folder.resolve("windows.txt"), "\uFEFFon 4 mar\r\nnote Rosa x\r\nnote Lilo y");
    assertThat(bench.told("batch", "windows.txt")).contains("2 entries of 2 lines");
    assertThat(bench.told("history", "261")).contains("22-006M: y").contains("2026-03-04");

    String longName = "ä".repeat(300);
    write(
        "odd.txt",
        "plant \"Echeveria laui\" --name \"" + longName + "\"",
        "plant \"Echeveria laui\" --name \"O'Hara <b>&amp; \\\"x\\\" 🌵\"",
        "note ^ '^ is no code, $HOME no folder'");
    assertThat(bench.told("batch", "odd.txt")).contains("3 entries of 3 lines");
    assertThat(bench.told("history", "262")).contains("names.1");
    assertThat(bench.told("history", "263")).contains("O'Hara <b>&amp; \"x\" 🌵");
    assertThat(bench.told("history", "264")).contains("^ is no code, $HOME no folder");
  }

  @Test
  void whatIsNoTextInUtf8IsRefusedByLine() throws IOException {
    Files.write(
        folder.resolve("latin.txt"),
        "note Rosa fine\nnote Rosa \"für\"\n".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(bench.refused(1, "batch", "latin.txt"))
        .contains("Line 2: it holds characters that are no UTF-8; save the text in UTF-8");
    Files.write(folder.resolve("wide.txt"), "note Rosa x\n".getBytes(StandardCharsets.UTF_16));
    assertThat(bench.refused(3, "batch", "wide.txt")).contains("line 1 is no text in UTF-8");
    Files.writeString(folder.resolve("endless.txt"), "x".repeat(3_000_000));
    assertThat(bench.refused(3, "batch", "endless.txt")).contains("line 1 is no text in UTF-8");
  }

  @Test
  void whereThereIsNothingNothingIsWritten() throws IOException {
    write("empty.txt", "# only a remark", "");
    assertThat(bench.told("batch", "empty.txt"))
        .isEqualTo("There is no entry in it; nothing was written.\n");
    assertThat(bench.refused(3, "batch", "nowhere.txt")).contains("there is no file or folder");
    assertThat(bench.refused(3, "batch", ".")).contains("is a folder, not a text");
  }

  @Test
  void standardInputIsABatchToo() {
    CommandLineRun run = new CommandLineRun().in(folder).piped("note Rosa x\nnote Lilo y\n");
    assertThat(run.run("batch").out()).startsWith("Written: 2 entries of 2 lines.");

    Outcome typed =
        new CommandLineRun().in(folder).env("TERM", "dumb").answering("note Rosa z").run("batch");
    assertThat(typed.err()).startsWith("One entry a line; Ctrl-D");
    assertThat(typed.out()).startsWith("Written: 1 entry of 1 line.");
  }

  @Test
  void aRegisterThatMayNotBeWrittenStaysAsItIs() throws IOException {
    write("good.txt", "note Rosa fine");
    Path register = folder.resolve("filial.register");
    assertThat(register.toFile().setReadOnly()).isTrue();
    if (Files.isWritable(register)) {
      return; // a superuser may write everything
    }
    assertThat(bench.refused(3, "batch", "good.txt")).contains("read-only");
  }

  @Test
  void aLineGoesIntoNoOtherRegisterAndNamesItsWriter() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    DemoRegister.in(other);
    write("other.txt", "note Rosa x --register other/filial.register");
    assertThat(bench.refused(1, "batch", "other.txt"))
        .contains("this would be written into another register");

    write(
        "two.txt",
        "note Rosa x --by Lena",
        "note Rosa y",
        "note Rosa z --register filial.register");
    assertThat(bench.told("batch", "two.txt", "--by", "Jonas")).contains("3 entries");
    assertThat(bench.told("history", "260")).contains("by Lena at");
    assertThat(bench.told("history", "261")).contains("by Jonas at");
    assertThat(bench.told("history", "262")).contains("by Jonas at");
  }

  @Test
  void whatLooksUnlikelyIsSaidWithItsLine() throws IOException {
    write("odd.txt", "note Rosa x", "note Rosa y --date 2026-12-24", "plant \"Echeveria lauii\"");

    Outcome outcome = bench.type("batch", "odd.txt");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .contains("Note: line 2: 2026-12-24 has not come yet")
        .contains("Note: line 3: Echeveria lauii is new here, and one letter away from");
  }

  /** Of kin, of strangers, of plants of one field number and of a plant with itself. */
  @Test
  void closeCrossesAreToldAsWhenTheyAreTypedOneByOne() throws IOException {
    String[] plants = {"22-001", "22-002", "22-003", "22-009-1", "22-009-2", "24-007-1"};
    List<String> lines = new ArrayList<>();
    List<String> typed = new ArrayList<>();
    for (String seed : plants) {
      for (String pollen : plants) {
        lines.add("cross " + seed + " " + pollen);
      }
    }
    for (int i = 0; i < lines.size(); i++) {
      int line = i + 1;
      bench
          .type(lines.get(i).split(" ", -1))
          .err()
          .replaceAll("\\s+", " ")
          .lines()
          .forEach(note -> typed.add(note.replace("Note: ", "Note: line " + line + ": ").strip()));
    }
    assertThat(typed).hasSizeGreaterThan(5);
    DemoRegister.in(folder);
    write("all.txt", lines.toArray(String[]::new));

    assertThat(bench.type("batch", "all.txt").err().replaceAll("\\s+", " ").strip())
        .isEqualTo(String.join(" ", typed));
  }

  @Test
  void aProgramIsToldTheCodesOfAllAndAPersonOfTheFirst() throws IOException {
    String[] lines = new String[31];
    Arrays.fill(lines, "plant \"Echeveria laui\"");
    write("many.txt", lines);

    assertThat(bench.told("batch", "many.txt")).contains("26-034").doesNotContain("26-035");
    JsonNode told = bench.json("batch", "many.txt");
    assertThat(told.get("written").size()).isEqualTo(31);
    assertThat(told.get("written").get(30).get("codes").get(0).asString()).startsWith("26-076");
    assertThat(told.get("unlisted").asLong()).isZero();
  }

  @Test
  void thousandsOfBadLinesAreCountedAndTheFirstOfThemTold() throws IOException {
    String[] lines = new String[5000];
    Arrays.fill(lines, "note Nobody x");
    write("bad.txt", lines);

    assertThat(bench.refused(1, "batch", "bad.txt"))
        .contains("5000 lines of 5000 cannot be taken")
        .contains("Line 200:")
        .doesNotContain("Line 201:")
        .contains("and 4800 more lines.");
  }

  /** The law of a batch: it makes the book that typing its lines one by one makes. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void aBatchMakesTheBookThatTypingItsLinesMakes(long seed) throws IOException {
    Random random = new Random(seed);
    Path typedOneByOne = Files.createDirectory(folder.resolve("typed"));
    DemoRegister.in(typedOneByOne);
    List<String> good = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      String line = anyLine(random);
      Outcome outcome =
          new CommandLineRun()
              .in(typedOneByOne)
              .run(CommandWords.of("filial " + line).toArray(String[]::new));
      if (outcome.status() == 0) {
        good.add(line);
      }
    }
    assertThat(good).hasSizeGreaterThan(15);
    write("all.txt", good.toArray(String[]::new));

    assertThat(bench.type("batch", "all.txt").status()).isZero();

    assertThat(book(folder.resolve("filial.register")))
        .isEqualTo(book(typedOneByOne.resolve("filial.register")));
    assertThat(bench.told("verify")).contains("sound");
  }

  private static String anyLine(Random random) {
    String[] plants = {
      "Rosa", "Lilo", "22-003", "22-004", "24-007-1", "26-015", "26-016", "26-017"
    };
    String[] crosses = {"26-006", "26-008", "26-011", "26-015", "26-016", "26-017", "26-018"};
    String plant = plants[random.nextInt(plants.length)];
    String cross = crosses[random.nextInt(crosses.length)];
    int count = random.nextInt(12);
    return switch (random.nextInt(14)) {
      case 0, 1 -> "cross " + plant + " " + plants[random.nextInt(plants.length)] + " --flowers 3";
      case 2 -> "fruit " + cross + " --set " + count;
      case 3 -> "harvest " + cross + " " + (count + 1);
      case 4 -> "sow \"" + cross + " H1\" " + (count + 1) + " --pots 2";
      case 5 -> "count \"" + cross + " P1\" --up " + count;
      case 6 -> "note " + plant + " 'remark " + count + "'";
      case 7 -> "plant \"Echeveria setosa\" --name Setosa" + random.nextInt(3);
      case 8 -> "move " + plant + " \"bench " + count + "\"";
      case 9 -> "number \"" + cross + " P1\" 2";
      case 10 -> "amend " + (200 + random.nextInt(62)) + " remark=again --why again";
      case 11 -> "died " + plant + " --cause frost";
      case 12 -> "undo";
      default -> "offset " + plant;
    };
  }
}
