package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.HistoryQuestion;
import dev.filial.core.answer.Telling;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Corrections;
import dev.filial.core.register.EntryJson;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.Statement;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial amend}. */
public final class AmendCommand implements BenchCommand {

  private final Supplier<Long> entry;
  private final Supplier<List<PropertySetting>> settings;
  private final Supplier<Optional<String>> whole;
  private final WhyOption why;
  private final OpenRegister register;

  /** Declares its words. */
  public AmendCommand(Words words) {
    entry = words.argument("ENTRY", "The number of the entry.", EntryNumber.READING);
    settings =
        words.arguments(
            "PROPERTY=VALUE",
            "What it should have said: date=\"4 mar\", pollen=24-003, taxon=\"Echeveria laui\";"
                + " nothing after the = takes the property away.",
            false,
            PropertySetting.READING);
    whole =
        words.option(
            "--as",
            "JSON",
            "The whole of what it should have said, as the body that filial history ENTRY --json"
                + " shows.");
    why = new WhyOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Puts an entry right, in its place in the book. The first wording stays readable. The"
                + " properties are those that filial history ENTRY shows; one within another is"
                + " written with a dot (readings.2.alive), or by its own name where only one is"
                + " called so. If a later entry would no longer hold, that one is named and nothing"
                + " is done.")
        .example("filial amend 181 text=\"two flower stalks\" --why \"counted again\"");
  }

  @Override
  public Answer run(Bench bench) {
    if (settings.get().isEmpty() == whole.get().isEmpty()) {
      throw Trouble.usage(
          "say what entry " + entry.get() + " should have said",
          "Write PROPERTY=VALUE, or the whole of it with --as.");
    }
    String reason = why.in(bench);
    return register.write(bench, writing -> record(writing, bench, reason));
  }

  private Answer record(Writing writing, Bench bench, String reason) {
    long number = entry.get();
    Statement now = EntryJson.read(HistoryQuestion.of(writing.view()).entry(number).body());
    if (now instanceof Amended amendment) {
      throw Trouble.refused(
          "entry " + number + " itself puts entry " + amendment.entry() + " right",
          "Amend entry " + amendment.entry() + " again, or strike " + number + ".");
    }
    Statement corrected =
        whole.get().map(EntryJson::read).orElseGet(() -> corrected(now, writing, bench));
    if (corrected.equals(now) && writing.view().effective(number).isPresent()) {
      throw Trouble.refused(
          "entry " + number + " says that already", "See it with: filial history " + number);
    }
    boolean struck = writing.view().effective(number).isEmpty();
    HangingTags hanging = HangingTags.of(writing, number);
    Accepted accepted = writing.append(new Amended(number, corrected, reason));
    List<Code> given = Introduction.codes(corrected);
    Recorded recorded =
        new Recorded(
            accepted.entry().number(),
            given.isEmpty() ? null : given.get(0),
            "entry "
                + number
                + (struck ? ", which was struck, is in force again and says: " : " now says: ")
                + Telling.of(corrected),
            List.of(),
            "how it was before: filial history " + number,
            writing.warnings());
    String hangs = hanging.now(writing, number);
    if (!hangs.isEmpty()) {
      recorded = recorded.withWarning(hangs);
    }
    return given.size() == 1 ? recorded.withTag(writing, given.get(0)) : recorded;
  }

  private Statement corrected(Statement now, Writing writing, Bench bench) {
    Corrections corrections =
        Corrections.of(now)
            .withDates(text -> bench.dates().partial(text))
            .withCodes(text -> PropertySetting.code(text, writing));
    for (PropertySetting setting : settings.get()) {
      try {
        corrections = corrections.set(setting.name(), setting.value());
      } catch (IllegalArgumentException e) {
        throw Trouble.refused(
            String.valueOf(e.getMessage()),
            "What it says now is shown by: filial history " + entry.get());
      }
    }
    return corrections.statement();
  }
}
