package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.screen.DisplayWidth;
import dev.filial.cli.screen.Screen;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.NoSuchFileException;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class FilialTest {

  private record Sown(LocalDate day, int seeds) implements Answer {
    @Override
    public void show(Screen screen) {
      screen.say("Sown: " + seeds + " seeds on " + day + ".").tag("26-001A");
    }

    @Override
    public List<String> warnings() {
      return seeds > 100 ? List.of("that is a lot for one pot.") : List.of();
    }
  }

  private static Verb sow() {
    return new Verb(
        "sow",
        Heading.RECORD,
        "Sow seed",
        words -> {
          Supplier<Integer> seeds = words.argument("SEEDS", "How many.", Reading.WHOLE_NUMBER);
          Supplier<LocalDate> day = words.requiredOption("--on", "DAY", "When.", Reading.DAY);
          words.example("filial sow 80 --on today");
          return bench -> new Sown(day.get(), seeds.get());
        });
  }

  private static Verb failing(Function<Bench, RuntimeException> failure) {
    return new Verb(
        "fail",
        Heading.RECORD,
        "Fail",
        words -> {
          words.example("filial fail");
          return bench -> {
            throw failure.apply(bench);
          };
        });
  }

  @Test
  void anAnswerGoesToStandardOutputAndEndsWithTheTag() {
    Outcome outcome = new CommandLineRun().verbs(sow()).run("sow", "80", "--on", "4 mar");

    assertThat(outcome)
        .isEqualTo(
            new Outcome(0, "Sown: 80 seeds on 2026-03-04.\nWrite on the tag: 26-001A\n", ""));
  }

  @Test
  void whatWarnsGoesToStandardErrorAndTheWorkIsDone() {
    Outcome outcome = new CommandLineRun().verbs(sow()).run("sow", "800", "--on=today");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.err()).isEqualTo("Note: that is a lot for one pot.\n");
  }

  @Test
  void jsonIsOneObjectWithTheRecordsFields() {
    Outcome outcome =
        new CommandLineRun().verbs(sow()).run("sow", "--json", "80", "--on", "2026-03-04");

    JsonNode json = JsonMapper.shared().readTree(outcome.out());
    assertThat(json.propertyNames()).containsExactly("day", "seeds");
    assertThat(json.get("day").stringValue()).isEqualTo("2026-03-04");
    assertThat(json.get("seeds").intValue()).isEqualTo(80);
    assertThat(outcome.out()).startsWith("{\n").endsWith("}\n");
  }

  @Test
  void aWrongCommandLineIsStatusTwoAndPointsToHelp() {
    Outcome outcome = new CommandLineRun().verbs(sow()).run("sow", "80", "--on", "4/3");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err())
        .startsWith("filial sow: --on: \"4/3\" could be 4 March or 3 April;")
        .endsWith("How it is used: filial help sow\n");
  }

  @Test
  void aMisspeltVerbIsStatusTwoAndTheNearestIsProposed() {
    Outcome outcome = new CommandLineRun().run("hlep");

    assertThat(outcome)
        .isEqualTo(
            new Outcome(
                2,
                "",
                """
                filial: there is no verb "hlep".
                Did you mean: filial help? All of them are listed by: filial help
                """));
  }

  @Test
  void aVerbLikeNoOtherIsNotGuessedAt() {
    assertThat(new CommandLineRun().run("xyzzy").err()).doesNotContain("Did you mean");
  }

  @Test
  void anOptionBeforeTheVerbIsExplained() {
    Outcome outcome = new CommandLineRun().run("--register", "my.register", "help");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("the verb comes first");
  }

  @Test
  void aRefusalOfTheRegisterIsStatusOneAndSaysWhatToDo() {
    Outcome outcome =
        new CommandLineRun()
            .verbs(
                failing(bench -> Trouble.refused("there is no plant 26-013E", "Look: filial find")))
            .run("fail");

    assertThat(outcome)
        .isEqualTo(
            new Outcome(1, "", "filial fail: there is no plant 26-013E.\nLook: filial find\n"));
  }

  @Test
  void aFailureUnderJsonIsOneObjectOnStandardErrorAndNothingOnStandardOutput() {
    Outcome outcome =
        new CommandLineRun()
            .verbs(
                failing(bench -> Trouble.refused("there is no plant 26-013E", "Look: filial find")))
            .run("fail", "--json");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    JsonNode error = JsonMapper.shared().readTree(outcome.err()).get("error");
    assertThat(error.get("status").intValue()).isEqualTo(1);
    assertThat(error.get("kind").stringValue()).isEqualTo("refused");
    assertThat(error.get("message").stringValue()).isEqualTo("there is no plant 26-013E");
    assertThat(error.get("remedy").stringValue()).isEqualTo("Look: filial find");
  }

  @Test
  void aFileThatIsNotThereIsStatusThreeAndNamesIt() {
    Outcome outcome =
        new CommandLineRun()
            .verbs(
                failing(
                    bench -> new UncheckedIOException(new NoSuchFileException("/seeds/list.csv"))))
            .run("fail");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err()).contains("there is no file or folder /seeds/list.csv");
  }

  @Test
  void aFullDiskIsStatusThree() {
    Outcome outcome =
        new CommandLineRun()
            .verbs(
                failing(
                    bench -> new UncheckedIOException(new IOException("No space left on device"))))
            .run("fail");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err()).contains("No space left on device");
  }

  @Test
  void aDefectShowsNoStackTraceButSaysHowToGetOne() {
    Verb defective = failing(bench -> new IllegalStateException("seven petals"));

    Outcome plain = new CommandLineRun().verbs(defective).run("fail");
    Outcome traced = new CommandLineRun().env("FILIAL_TRACE", "1").verbs(defective).run("fail");

    assertThat(plain.status()).isEqualTo(4);
    assertThat(plain.err())
        .contains("defect")
        .contains("seven petals")
        .contains("FILIAL_TRACE=1")
        .doesNotContain("\tat ");
    assertThat(traced.err()).contains("\tat ").contains("FilialTest.");
  }

  @Test
  void anAnswerOfNoIsShownAndStatusOne() {
    Verb check =
        new Verb(
            "check",
            Heading.KEEP,
            "Check",
            words ->
                bench ->
                    new Answer() {
                      @Override
                      public void show(Screen screen) {
                        screen.say("Entry 7 was changed.");
                      }

                      @Override
                      public Status status() {
                        return Status.REFUSED;
                      }
                    });

    assertThat(new CommandLineRun().verbs(check).run("check"))
        .isEqualTo(new Outcome(1, "Entry 7 was changed.\n", ""));
  }

  @Test
  void onlyTheVerbThatIsTypedIsMade() {
    Verb neverMade =
        new Verb(
            "other",
            Heading.ASK,
            "Never made",
            words -> {
              throw new AssertionError("made though not typed");
            });

    assertThat(new CommandLineRun().verbs(sow(), neverMade).run("sow", "8", "--on=today").status())
        .isZero();
  }

  @Test
  void colourNeedsATerminalAndNoColorForbidsIt() {
    assertThat(new CommandLineRun().run("help").out()).doesNotContain("\u001B");
    assertThat(new CommandLineRun().onTerminal().run("help").out()).contains("\u001B[1m");
    assertThat(new CommandLineRun().onTerminal().env("NO_COLOR", "").run("help").out())
        .doesNotContain("\u001B");
    assertThat(new CommandLineRun().onTerminal().env("TERM", "dumb").run("help").out())
        .doesNotContain("\u001B");
  }

  @ParameterizedTest
  @ValueSource(ints = {20, 34, 55, 80, 132, 300})
  void noLineOfHelpIsWiderThanTheTerminal(int columns) {
    CommandLineRun narrow = new CommandLineRun().env("COLUMNS", String.valueOf(columns));
    for (Verb verb : Verbs.all().list()) {
      assertThat(narrow.run("help", verb.name()).out().lines())
          .allSatisfy(line -> assertThat(DisplayWidth.of(line)).isLessThanOrEqualTo(columns));
    }
    assertThat(narrow.run("help").out().lines())
        .allSatisfy(line -> assertThat(DisplayWidth.of(line)).isLessThanOrEqualTo(columns));
    assertThat(narrow.run("nothing-of-this-name", "--at-all").err().lines())
        .allSatisfy(line -> assertThat(DisplayWidth.of(line)).isLessThanOrEqualTo(columns));
  }

  @Test
  void helpOfEveryVerbEndsWithAnExampleOfThatVerb() {
    for (Verb verb : Verbs.all().list()) {
      Outcome outcome = new CommandLineRun().run("help", verb.name());
      assertThat(outcome.status()).isZero();
      String last = outcome.out().lines().reduce("", (before, line) -> line);
      assertThat(last).startsWith("  filial ");
      assertThat(verb.words().examples()).anyMatch(line -> line.contains(verb.name()));
      assertThat(new CommandLineRun().run(verb.name(), "--help")).isEqualTo(outcome);
      assertThat(new CommandLineRun().run(verb.name(), "-h")).isEqualTo(outcome);
    }
  }

  @Test
  void helpListsEveryVerbUnderItsHeading() {
    String help =
        new CommandLineRun().verbs(sow(), failing(b -> new RuntimeException())).run().out();

    assertThat(help).contains("\nWrite down what happened\n  sow   Sow seed\n  fail  Fail\n");
    assertThat(help).doesNotContain("Ask the register");
  }

  @Test
  void versionNamesFilialJavaAndTheDriver() {
    String text = new CommandLineRun().run("--version").out();

    assertThat(text).isEqualTo(new CommandLineRun().run("version").out());
    assertThat(text)
        .containsPattern("Filial +\\d+\\.\\d+")
        .contains(System.getProperty("java.version"));
    JsonNode json =
        JsonMapper.shared().readTree(new CommandLineRun().run("version", "--json").out());
    assertThat(json.get("sqliteDriver").stringValue()).matches("3\\.\\d+\\.\\d+\\.\\d+");
  }

  @ParameterizedTest
  @ValueSource(strings = {"bash", "zsh", "BASH"})
  void completionScriptKnowsVerbsOptionsAndWordsToChooseFrom(String shell) {
    Outcome outcome = new CommandLineRun().run("completion", shell);

    assertThat(outcome.status()).isZero();
    assertThat(outcome.out()).contains("completion").contains("version").contains("--json");
    assertThat(outcome.out()).contains("(\"bash\" \"zsh\")");
  }

  @Test
  void completionForAnotherShellNamesThoseThereAre() {
    assertThat(new CommandLineRun().run("completion", "tcsh").err())
        .contains("SHELL: \"tcsh\" is none of bash, zsh.");
  }
}
