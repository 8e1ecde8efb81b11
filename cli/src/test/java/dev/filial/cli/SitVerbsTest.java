package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.cli.command.SitCommand;
import dev.filial.cli.screen.TypedLines;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SitVerbsTest {

  @TempDir Path folder;

  @BeforeEach
  void theDemoBench() throws IOException {
    DemoRegister.in(folder);
  }

  private Outcome sit(String... lines) {
    return new CommandLineRun().in(folder).env("TERM", "dumb").answering(lines).run("sit");
  }

  private Outcome fill(String words, String... answers) {
    return new CommandLineRun()
        .in(folder)
        .env("TERM", "dumb")
        .answering(answers)
        .run(CommandWords.of("filial fill " + words).toArray(String[]::new));
  }

  private Outcome run(String line) {
    return new CommandLineRun()
        .in(folder)
        .run(CommandWords.of("filial " + line).toArray(String[]::new));
  }

  private long entries() {
    try (var store = SqliteStore.open(folder.resolve("filial.register"))) {
      return store.size();
    }
  }

  @Test
  void anEveningAtThePrompt() {
    Outcome outcome =
        sit(
            "on 4 mar",
            "cross Rosa Lilo --flowers 3",
            "",
            "show Rosa # a look",
            "crss Rosa Lilo",
            "note Nobody x",
            "filial note 26-015 \"O'Hara\"",
            "batch x",
            "note Rosa 'open",
            "done",
            "note Rosa never");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.out())
        .contains("Entry 260: 26-015J: 22-001E × 22-006M, 3 flowers.")
        .contains("Entry 261: 26-015J: O'Hara.")
        .endsWith("2 lines were written.\n");
    assertThat(outcome.err())
        .contains("2026-03-04 filial> ")
        .contains("there is no verb \"crss\".")
        .contains("nothing here is called \"Nobody\"")
        .contains("batch does not go within a sitting.")
        .contains("is not closed");
    assertThat(run("history 260").out()).contains("2026-03-04");
    assertThat(entries()).isEqualTo(261);
  }

  @Test
  void aVerbAloneOpensItsForm() {
    // Seed parent, a step back, again; pollen parent; then flowers, and that is enough.
    Outcome outcome =
        sit("fruit", "26-006", "<", "26-014", "2", "1", "", "", "in the rain", ".", "y", "done");

    assertThat(outcome.err())
        .contains("Enter leaves a field out, * must be there")
        .contains("CROSS *: ")
        .contains("set: ")
        .contains("date [2026-06-15]: ")
        .contains("fruit 26-014 --set=2 --failed=1 '--why=in the rain'");
    assertThat(outcome.out())
        .contains("Entry 260:")
        .contains("26-014H")
        .contains("2 set, 1 failed");
  }

  @Test
  void whatMustBeThereIsAskedAgainAndAFormCanBeGivenUp() {
    Outcome outcome = sit("note", "", ".", "Rosa", "!", "note", "Rosa", "x", ".", "n", "done");

    assertThat(outcome.err())
        .contains("This must be there:")
        .contains("Given up; nothing was written.")
        .contains("Nothing was written.");
    assertThat(entries()).isEqualTo(259);
  }

  @Test
  void severalOfAKindAreAskedForOneByOneAndHyphensAreNoOptions() {
    Outcome outcome = sit("move", "Rosa", "Lilo", "", "-the sill-", ".", "y", "done");

    assertThat(outcome.status()).as(outcome.err()).isZero();
    assertThat(entries()).as(outcome.err() + outcome.out()).isEqualTo(260);
  }

  @Test
  void ofSeveralTheLastCanBeTakenBackAndADotIsEnough() {
    Outcome outcome = sit("died", "Rosa", "Lilo", "<", "22-003", ".", "y", "done");

    assertThat(outcome.err()).contains("died Rosa 22-003\n");
    assertThat(sit("died", "Rosa", "!", "done").err()).contains("Given up; nothing was written.");
    assertThat(entries()).isEqualTo(260);
  }

  @Test
  void whereNobodySitsNobodyIsAsked() {
    Outcome outcome = new CommandLineRun().in(folder).run("sit");
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("sit wants somebody at a terminal");
    assertThat(new CommandLineRun().in(folder).run("fill").err()).contains("fill asks row by row");
  }

  /** Answers from a list, and keeps what would be proposed for each. */
  private static final class Scripted implements TypedLines {
    private final Deque<String> typed = new ArrayDeque<>();
    private final List<List<String>> proposed = new ArrayList<>();

    Scripted(String... lines) {
      typed.addAll(List.of(lines));
    }

    @Override
    public @Nullable String words(String prompt, Completion completion) {
      String line = typed.poll();
      if (line == null || !line.contains("\t")) {
        return line;
      }
      List<String> words = List.of(line.replace("\t", "").split(" ", -1));
      int last = words.size() - 1;
      proposed.add(completion.proposals(words.subList(0, last), words.get(last)));
      return "";
    }

    @Override
    public @Nullable String text(String prompt, Completion completion) {
      String line = typed.poll();
      if (line != null && line.endsWith("\t")) {
        proposed.add(completion.proposals(List.of(), line.strip()));
        return typed.poll();
      }
      return line;
    }

    @Override
    public void close() {}
  }

  @Test
  void theTabKeyProposesVerbsOptionsCodesTaxaTraitsAndStates() {
    Scripted lines =
        new Scripted(
            "hist\t",
            "cross Ro\t",
            "cross Rosa 22-00\t",
            "cross Rosa Lilo --fl\t",
            "plant Echeveria l\t",
            "taxon Echeveria se\t",
            "observe Rosa t\t",
            "observe Rosa tips \t",
            "tally 26-006 tips r\t",
            "list --kind \t",
            "move Rosa --date y\t",
            "nonsense x\t",
            "observe",
            "Ro\t",
            "Rosa",
            "ti\t",
            "tips",
            "\t",
            "!",
            "done");
    Verb sit =
        new Verb(
            "sit",
            Heading.RECORD,
            "",
            words -> new SitCommand(words, Verbs.table(), bench -> lines));

    Outcome outcome = new CommandLineRun().in(folder).onTerminal().verbs(sit).run("sit");

    assertThat(outcome.status()).as(outcome.err()).isZero();
    assertThat(lines.proposed.get(0)).containsExactly("history");
    assertThat(lines.proposed.get(1)).containsExactly("Rosa");
    assertThat(lines.proposed.get(2)).contains("22-001E", "22-006M");
    assertThat(lines.proposed.get(3)).containsExactly("--flowers");
    assertThat(lines.proposed.get(5)).isEmpty(); // a name of two words has to be begun with a quote
    assertThat(lines.proposed.get(6)).contains("tips");
    assertThat(lines.proposed.get(7)).containsExactly("red", "plain");
    assertThat(lines.proposed.get(8)).containsExactly("red=");
    assertThat(lines.proposed.get(9)).contains("pots", "crosses");
    assertThat(lines.proposed.get(10)).containsExactly("yesterday");
    assertThat(lines.proposed.get(11)).isEmpty();
    assertThat(lines.proposed.get(12)).containsExactly("Rosa");
    assertThat(lines.proposed.get(13)).containsExactly("tips");
    assertThat(lines.proposed.get(14)).containsExactly("red", "plain");
  }

  @Test
  void aSheetIsPrintedAndFilledInTheSameOrder() {
    String sheet = run("sheet \"bag 1\"").out();

    assertThat(sheet)
        .isEqualTo(
            """
            Bench sheet, printed 2026-06-15
            Seen on ____________________   by ____________________

            1   26-006V P2    24-008H-1 × 22-002H     11  up[____] alive[____] lost[___]
                bag 1         remark _____________________________________________________

            2   26-006V P3    24-008H-1 × 22-002H     14  up[____] alive[____] lost[___]
                bag 1         remark _____________________________________________________

            Typed in with: filial fill 'bag 1' --upto 259
            """);

    Outcome outcome =
        fill(
            "\"bag 1\" --upto 259 --date \"13 jun\"", "", "10", "1", "", "", "", "", "mouldy", "y");

    assertThat(outcome.status()).as(outcome.err()).isZero();
    assertThat(outcome.err())
        .contains("1  26-006V P2  24-008H-1 × 22-002H, 11, bag 1\n")
        .contains("1  died '26-006V P2' --count 1\n")
        .contains("2  count '26-006V P2' --alive 10\n")
        .contains("3  note '26-006V P3' mouldy\n");
    assertThat(outcome.out()).contains("Written: 3 entries of 3 lines.");
    assertThat(run("history 261").out()).contains("2026-06-13");
  }

  @Test
  void aSheetIsAPageToPrintToo() throws IOException {
    Outcome written = run("sheet --to bench.html");

    assertThat(written.out())
        .startsWith("Wrote a bench sheet of ")
        .contains("filial fill --upto 259");
    String page = Files.readString(folder.resolve("bench.html"));
    String shown = run("sheet").out();
    assertThat(page.split("<pre ", -1)).hasSize(shown.split("\f", -1).length + 1);
    assertThat(page).contains(shown.lines().skip(3).findFirst().orElseThrow());
    assertThat(run("sheet --to bench.html").err()).contains("is there already");
    assertThat(run("sheet nothing-like-it --to none.html").out()).startsWith("There is nothing");
    assertThat(folder.resolve("none.html")).doesNotExist();
  }

  @Test
  void crossesAndPlantsHaveBoxesOfTheirOwn() {
    assertThat(run("sheet 26-014 --kind crosses").out()).contains("set[____] failed[____]");
    Outcome fruit = fill("26-014 --kind crosses", "today", "2", "1", "", "y");
    assertThat(fruit.out()).as(fruit.err()).contains("2 set, 1 failed");
    assertThat(run("sheet Rosa --kind plants").out()).contains("died[__] of____");
    Outcome died = fill("Rosa --kind plants --date today", "frost", "", "y");
    assertThat(died.out()).as(died.err()).contains("died (frost)");
    assertThat(run("sheet Rosa --kind plants").out()).startsWith("There is nothing to look at.");
  }

  @Test
  void aSheetPrintedBeforeIsFilledInAsItWas() {
    String before = run("sheet 26-0").out();
    run("cross Rosa Lilo --flowers 3");
    run("died \"26-006 P2\"");

    assertThat(run("sheet 26-0").out()).contains("26-015J").doesNotContain("26-006V P2");
    String now = run("sheet 26-0 --upto 259").out();
    assertThat(
            now.lines().filter(line -> line.matches("\\d+ .*")).map(line -> line.substring(0, 18)))
        .isEqualTo(
            before
                .lines()
                .filter(line -> line.matches("\\d+ .*"))
                .map(line -> line.substring(0, 18))
                .toList());
  }

  @Test
  void whatCannotBeWrittenIsAskedAgainAndNothingIsLost() {
    Outcome mended =
        fill(
            "26-006 --date today",
            "50x",
            "13",
            "",
            "99",
            "",
            ".",
            "y",
            "died '26-006 P2' --count 1",
            "y");
    assertThat(mended.err()).contains("\"50x\"").contains("Nothing is written yet:\nLine 1:");
    assertThat(mended.out()).as(mended.err()).contains("Written: 2 entries");

    Outcome ended = fill("\"bag 1\" --date today", "14", "", "", "", "3");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err())
        .contains("count '26-006V P2' --up 14\ncount '26-006V P3' --up 3\n")
        .contains("the answers ended, and nothing was written.");
    Outcome enough = fill("\"bag 1\" --date today", "14", ".", "n");
    assertThat(enough.err()).contains("1  count '26-006V P2' --up 14\n");
    assertThat(entries()).isEqualTo(261);

    Outcome givenUp = fill("\"bag 1\" --date today", "14", "!");
    assertThat(givenUp.status()).isEqualTo(1);
    assertThat(givenUp.err()).contains("given up; nothing was written");
    Outcome nothing = fill("\"bag 1\" --date today", ".");
    assertThat(nothing.out()).contains("No box was filled in");
    Outcome no =
        fill("\"bag 1\" --date today", "", "", "", "fine", "<", "", "", "", "better", ".", "n");
    assertThat(no.err()).contains("note '26-006V P2' better").contains("as you wished");
    assertThat(entries()).isEqualTo(261);
  }

  @Test
  void aLongSheetGoesOverPagesAndNoLineIsWiderThanThePaper() throws IOException {
    String sheet = run("sheet").out();
    assertThat(sheet.split("\f", -1))
        .hasSizeGreaterThan(2)
        .allMatch(page -> page.lines().count() <= 62);
    assertThat(sheet.replace("\f", "").lines()).allMatch(line -> line.length() <= 78);
    Files.writeString(
        folder.resolve("long.txt"),
        "plant \"Echeveria laui\" --name \"" + "ä<".repeat(150) + "\"\n");
    assertThat(run("batch long.txt").status()).isZero();
    assertThat(run("sheet --kind plants").out().replace("\f", "").lines())
        .allMatch(line -> line.length() <= 78);
  }
}
