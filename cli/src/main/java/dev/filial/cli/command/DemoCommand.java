package dev.filial.cli.command;

import dev.filial.cli.demo.DemoBench;
import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.NewFile;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.screen.Wrap;
import dev.filial.core.answer.AncestryQuestion;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.CrossOdds;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.FitAnswer;
import dev.filial.core.answer.FitQuestion;
import dev.filial.core.answer.OddsQuestion;
import dev.filial.core.answer.RecordedRates;
import dev.filial.core.answer.SeedRate;
import dev.filial.core.answer.SpreadQuestion;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.answer.Wanted;
import dev.filial.core.answer.Wanted.State;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import dev.filial.core.store.SqliteStore;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial demo}. */
public final class DemoCommand implements BenchCommand {

  private static final Code PACKET = Code.parse("26-013 H2");
  private static final Code SEEDLING = Code.parse("24-007-1");
  private static final Code CROSS = Code.parse("26-013");
  private static final String TIPS = "tips";

  /** A path of more letters breaks the lines it stands in. */
  private static final int SHORT = 30;

  private static final String SMUDGED = "2_-009_-1";

  private final Supplier<Optional<Path>> file;

  /** Declares its words. */
  public DemoCommand(Words words) {
    file =
        words.optionalArgument(
            "FILE",
            "Where to write the register; otherwise into a new folder among the temporary files.",
            Reading.FILE);
    words
        .describe(
            "Writes a register to try things on, an invented bench of Echeveria over five seasons,"
                + " and walks through the job with it. All examples in the help of the other verbs"
                + " work on it.")
        .example("filial demo")
        .example("filial demo bench.register");
  }

  /**
   * The demo bench and the walk through the job.
   *
   * @param register its file
   * @param entries how many entries it has
   * @param invented that all of it is
   * @param packet a packet of seed
   * @param packetLabel what to write on it when it leaves the house
   * @param ancestry who is in a seedling
   * @param odds what a cross will throw, and how many to sow for it
   * @param fit whether what came up of it fits
   * @param smudged what can be read of a tag
   * @param mayBe what it may be
   * @param tryNext command lines to try on it
   */
  record Walk(
      String register,
      long entries,
      String invented,
      Code packet,
      List<String> packetLabel,
      Ancestry ancestry,
      CrossOdds odds,
      FitAnswer fit,
      String smudged,
      List<Finding.Match> mayBe,
      List<String> tryNext)
      implements Answer {

    static Walk through(RegisterView view, String register) {
      return new Walk(
          register,
          view.size(),
          "All of it is invented: people, plants, field numbers, crosses, counts, ploidies and"
              + " inheritance. Only the names of the species are real.",
          PACKET,
          TagQuestion.of(view).withMark(true).ask(PACKET).text().lines(),
          AncestryQuestion.of(view).withSpread(SpreadQuestion.usual()).ask(SEEDLING),
          odds(view),
          FitQuestion.byGenes().ask(view, TIPS, List.of(CROSS)),
          SMUDGED,
          Finding.in(view).all(SMUDGED),
          tries(register));
    }

    private static CrossOdds odds(RegisterView view) {
      List<SeedRate> rates =
          RecordedRates.of(view).ofFamily(CROSS).germination().map(List::of).orElse(List.of());
      Wanted plain =
          new Wanted(List.of(new State(TIPS, "plain")), null, List.of(), 3, Certainty.USUAL, rates);
      return OddsQuestion.of(view, List.of(TIPS)).wanting(plain).ask(CROSS);
    }

    /** With the register named once, where its path is too long to stand in every line. */
    private static List<String> tries(String register) {
      boolean isShort = register.length() <= SHORT;
      String on = isShort ? " --register " + CommandLine.quoted(register) : "";
      List<String> lines = new ArrayList<>();
      if (!isShort) {
        String set = File.separatorChar == '/' ? "export " : "set ";
        lines.add(set + "FILIAL_REGISTER=" + CommandLine.quoted(register));
      }
      for (String line :
          List.of(
              "filial show Morgenrot",
              "filial tree 24-010-1",
              "filial ancestry 24-011-1",
              "filial ancestry 25-002",
              "filial due --on 2026-06-15",
              "filial germination 26-006",
              "filial history 24-009",
              "filial hangs 22-001",
              "filial odds 24-001 --trait tips",
              "filial carries 24-001-3 --trait tips",
              "filial next --want tips=plain",
              "filial mistakes --trait down",
              "filial fit 24-001 24-007 --trait tips",
              "filial sow 26-012 40 --pots 2",
              "filial list",
              "filial pages bench")) {
        lines.add(line + on);
      }
      return lines;
    }

    @Override
    public void show(Screen screen) {
      screen
          .say(
              "Wrote "
                  + entries
                  + " entries to "
                  + register
                  + ": five seasons of Echeveria on the balcony of Klara Beispiel, mark KB. "
                  + invented)
          .blank()
          .say(
              "Seed of her second backcross goes to a friend. What to write on the packet "
                  + packet.text()
                  + ", mark first, since it leaves the house?");
      packetLabel.forEach(line -> screen.indented(2, Wrap.keepingDoubleSpaces(line)));
      screen.blank().say("What is in the seedling " + ancestry.code().text() + "?");
      new AncestryCommand.Told(ancestry, false, false).show(screen);
      screen
          .blank()
          .say(
              "Red tips are thought to go by one gene. What will the cross "
                  + CROSS.text()
                  + " throw, and how many seeds are enough for three plain ones?");
      new OddsCommand.Told(odds, false, "").show(screen);
      screen.blank().say("It was sown and counted. Does what came up fit?");
      new FitTold(fit, false).show(screen);
      screen
          .blank()
          .say(
              "A tag is smudged, and all that can be read of it is "
                  + smudged
                  + ". Which plant may that be?");
      Table table = new Table().column("code").column("what it is").column("name");
      mayBe.forEach(
          match -> table.row(match.code().text(), match.what(), String.join(", ", match.names())));
      screen
          .table(table)
          .blank()
          .say("Try more on it; until filial is on your path, type cli/filial for it:");
      tryNext.forEach(line -> screen.indented(1, line));
    }
  }

  @Override
  public Answer run(Bench bench) {
    Path path = file.get().orElseGet(DemoCommand::temporary);
    DemoBench.write(path);
    try (SqliteStore store = SqliteStore.open(path)) {
      return Walk.through(store, NewFile.asTyped(path, bench));
    }
  }

  private static Path temporary() {
    try {
      return Files.createTempDirectory("filial-").resolve("bench.register");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
