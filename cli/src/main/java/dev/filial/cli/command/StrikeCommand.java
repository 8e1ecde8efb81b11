package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.HistoryQuestion;
import dev.filial.core.answer.Said;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Amended;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial strike}. */
public final class StrikeCommand implements BenchCommand {

  private final Supplier<Long> entry;
  private final WhyOption why;
  private final OpenRegister register;

  /** Declares its words. */
  public StrikeCommand(Words words) {
    entry = words.argument("ENTRY", "The number of the entry.", EntryNumber.READING);
    why = new WhyOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Takes an entry that should never have been made out of force. It stays readable. If a"
                + " later entry leans on it, that one is named and nothing is done. Striking the"
                + " striking, or an amendment, brings back what was before.")
        .example("filial strike 181 --why \"that was another plant\"");
  }

  @Override
  public Answer run(Bench bench) {
    String reason = why.in(bench);
    return register.write(bench, writing -> record(writing, reason));
  }

  private Answer record(Writing writing, String reason) {
    Said struck = HistoryQuestion.of(writing.view()).entry(entry.get()).said();
    Accepted accepted = writing.append(new Amended(entry.get(), null, reason));
    return new Recorded(
        accepted.entry().number(),
        null,
        "entry " + struck.entry() + " is struck (" + struck.text() + "), because: " + reason,
        List.of(),
        "what was said and when: filial history " + struck.entry(),
        writing.warnings());
  }
}
