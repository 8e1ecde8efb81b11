package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.HistoryQuestion;
import dev.filial.core.answer.HistoryQuestion.History;
import dev.filial.core.answer.Said;
import dev.filial.core.name.Code;
import dev.filial.core.register.EntryProperties;
import dev.filial.core.register.RegisterView;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial history}. */
public final class HistoryCommand implements BenchCommand {

  private static final int USUAL = 10;

  private final Supplier<Optional<String>> what;
  private final Supplier<Optional<Integer>> last;
  private final OpenRegister register;

  /** Declares its words. */
  public HistoryCommand(Words words) {
    what =
        words.optionalArgument(
            "WHAT", "The number of an entry, or a code or a name; otherwise the whole book.");
    last =
        words.option(
            "--last",
            "N",
            "Only the last N entries; otherwise "
                + USUAL
                + " of the whole book, and all about one"
                + " thing.",
            Reading.WHOLE_NUMBER);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Shows an entry as it was written, what put it right and whose guess it is; or all"
                + " entries that speak of one thing; or the end of the book.")
        .example("filial history 70")
        .example("filial history 24-009");
  }

  /**
   * One entry.
   *
   * @param history what was said and became of it
   */
  record OneEntry(History history) implements Answer {
    @Override
    public Object json() {
      return history;
    }

    @Override
    public void show(Screen screen) {
      Said said = history.said();
      screen.say("Entry " + said.entry() + marks(said) + ": " + sentence(said.text()));
      if (!history.firstText().equals(said.text())) {
        screen.field("first said", history.firstText());
      }
      if (said.date() != null) {
        screen.field("of", said.date());
      }
      screen.field("written", written(said));
      for (Said later : history.later()) {
        screen.field("entry " + later.entry(), later.text() + marks(later) + ", " + written(later));
      }
      screen.table(properties());
      if (!history.corrects()) {
        screen.next("to put it right: filial amend " + said.entry() + " PROPERTY=VALUE");
      }
    }

    /** Property by property, with what was first said where that was another thing. */
    private Table properties() {
      Map<String, String> now = EntryProperties.of(history.body());
      Map<String, String> first = EntryProperties.of(history.firstBody());
      boolean changed = !now.equals(first);
      Table table =
          new Table().column("property").column(history.said().struck() ? "said last" : "says");
      if (changed) {
        table.column("first said");
      }
      Set<String> all = new LinkedHashSet<>(now.keySet());
      all.addAll(first.keySet());
      for (String property : all) {
        String says = now.getOrDefault(property, "");
        String said = first.getOrDefault(property, "");
        if (changed) {
          table.row(property, says, says.equals(said) ? "" : said.isEmpty() ? "nothing" : said);
        } else {
          table.row(property, says);
        }
      }
      return table;
    }
  }

  /**
   * Several entries.
   *
   * @param about what they speak of, or null for the whole book
   * @param entries the entries, oldest first
   */
  record Entries(@Nullable Code about, List<Said> entries) implements Answer {
    @Override
    public void show(Screen screen) {
      Table table = new Table().numbers("entry").column("day").column("what it says");
      entries.forEach(
          said ->
              table.row(
                  said.entry(), said.date() == null ? "" : said.date(), said.text() + marks(said)));
      screen.table(table);
    }
  }

  private static String written(Said said) {
    return "by " + said.by() + " at " + said.written();
  }

  private static String marks(Said said) {
    return (said.struck() ? " (struck)" : said.amended() ? " (amended)" : "")
        + (said.guess() == null ? "" : " (a guess of " + said.guess() + ")");
  }

  private static String sentence(String text) {
    return text.endsWith(".") ? text : text + ".";
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, this::answer);
  }

  private Answer answer(RegisterView view) {
    HistoryQuestion question = HistoryQuestion.of(view);
    if (what.get().isEmpty()) {
      return new Entries(null, question.last(last.get().orElse(USUAL)));
    }
    String text = what.get().get().strip();
    if (EntryNumber.isNumber(text)) {
      return new OneEntry(question.entry(Long.parseLong(text)));
    }
    Code code = Finding.in(view).one(text).code();
    List<Said> all = question.about(code);
    int most = last.get().orElse(all.size());
    return new Entries(code, all.subList(Math.max(0, all.size() - most), all.size()));
  }
}
