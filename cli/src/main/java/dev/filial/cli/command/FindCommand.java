package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Status;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.screen.Wrap;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.Finding.Match;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial find}. */
public final class FindCommand implements BenchCommand {

  /** More proposals than this nobody reads. */
  private static final int MOST_PROPOSED = 200;

  private final Supplier<List<String>> text;
  private final BooleanSupplier beginning;
  private final OpenRegister register;

  /** Declares its words. */
  public FindCommand(Words words) {
    text =
        words.arguments(
            "TEXT",
            "What can be read of a tag, with _ for each character that cannot; or a name, or the"
                + " beginning of one, the code it came with, or words that say what it is or stand in"
                + " a remark.",
            true,
            Reading.TEXT);
    beginning =
        words.flag(
            "--beginning",
            "Only list codes and names that begin so, one a line, as the Tab key wants them.");
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Of a code that is not here, those one slip of the pencil away are named: one digit"
                + " wrong, two swapped.")
        .example("filial find 2_-009_-1")
        .example("filial find Ros");
  }

  /**
   * The answer.
   *
   * @param text what was looked for
   * @param matches what it may be, the likeliest first
   */
  record Found(String text, List<Match> matches) implements Answer {
    @Override
    public Status status() {
      return matches.isEmpty() ? Status.REFUSED : Status.DONE;
    }

    @Override
    public void show(Screen screen) {
      if (matches.isEmpty()) {
        screen.say("Nothing in this register fits \"" + text + "\".");
        screen.next(
            "write _ for each character of a code that cannot be read, as 26-0_3; or the beginning"
                + " of a name");
        return;
      }
      Table table =
          new Table()
              .column("code")
              .column("kind")
              .column("what it is")
              .column("called")
              .column("why");
      for (Match match : matches) {
        table.row(
            match.code().text(),
            match.kind(),
            match.what(),
            String.join(", ", match.names()),
            match.why());
      }
      screen.table(table).next("filial show " + CommandLine.quoted(matches.get(0).code().text()));
    }
  }

  /**
   * Codes and names with one beginning.
   *
   * @param texts each as it may be typed
   */
  record Beginning(List<String> texts) implements Answer {
    @Override
    public void show(Screen screen) {
      texts.forEach(text -> screen.raw(Wrap.printable(text) + "\n"));
    }
  }

  @Override
  public Answer run(Bench bench) {
    String typed = String.join(" ", text.get());
    if (beginning.getAsBoolean()) {
      return register.read(
          bench, view -> new Beginning(Finding.in(view).beginning(typed, MOST_PROPOSED)));
    }
    return register.read(bench, view -> new Found(typed, Finding.in(view).all(typed)));
  }
}
