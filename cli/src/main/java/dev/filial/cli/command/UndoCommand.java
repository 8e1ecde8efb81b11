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

/** {@code filial undo}. */
public final class UndoCommand implements BenchCommand {

  private final WhyOption why;
  private final OpenRegister register;

  /** Declares its words. */
  public UndoCommand(Words words) {
    why = new WhyOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Strikes the last entry that is in force. Nothing is deleted: it stays in the book, and"
                + " typing it again strikes the one before. Codes that it gave out stay taken.")
        .example("filial undo");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, this::record);
  }

  private Answer record(Writing writing) {
    Said last = HistoryQuestion.of(writing.view()).undoable();
    Accepted accepted = writing.append(new Amended(last.entry(), null, why.or("undone")));
    long number = accepted.entry().number();
    return new Recorded(
        number,
        null,
        "entry " + last.entry() + " is struck (" + last.text() + ")",
        List.of(),
        "to have it back: filial strike " + number + " --why \"it was right\"",
        writing.warnings());
  }
}
