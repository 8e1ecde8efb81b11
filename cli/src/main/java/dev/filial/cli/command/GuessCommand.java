package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.HistoryQuestion;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.RegisterOpened;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial guess}. */
public final class GuessCommand implements BenchCommand {

  private final Supplier<String> what;
  private final Supplier<Optional<String>> whose;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public GuessCommand(Words words) {
    what =
        words.argument(
            "WHAT", "The number of an entry; or a code or a name, for the entry that gave it out.");
    whose =
        words.option("--whose", "NAME", "Whose guess it is; otherwise yours.", RecordReadings.LINE);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe("Marks what an entry says as a guess. Every answer that leans on it says so.")
        .example("filial guess 24-006 --whose Ada");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    String text = what.get().strip();
    long entry = EntryNumber.isNumber(text) ? Long.parseLong(text) : writing.find(text).entry();
    String by =
        whose
            .get()
            .or(() -> register.author(bench))
            .or(() -> writing.view().opening().map(RegisterOpened::grower))
            .orElse("");
    Accepted accepted = writing.append(new Doubted(entry, by, remark.get().orElse(null)));
    return new Recorded(
        accepted.entry().number(),
        null,
        "entry "
            + entry
            + " is a guess of "
            + by
            + " ("
            + HistoryQuestion.of(writing.view()).entry(entry).said().text()
            + ")",
        List.of(),
        "what leans on it: filial hangs " + entry,
        writing.warnings());
  }
}
