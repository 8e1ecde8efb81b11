package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Noted;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial note}. */
public final class NoteCommand implements BenchCommand {

  private final Supplier<String> what;
  private final Supplier<List<String>> text;
  private final DateOption date;
  private final OpenRegister register;

  /** Declares its words. */
  public NoteCommand(Words words) {
    what = words.argument("WHAT", "A plant, a cross, a seed lot, a sowing or a pot.");
    text = words.arguments("TEXT", "What there is to say.", true, Reading.TEXT);
    date = new DateOption(words, "it was seen or said");
    register = OpenRegister.toWrite(words);
    words
        .describe("Writes a remark about anything that has a code.")
        .example("filial note 22-001 \"first flowers, a week before the others\"");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    Code code = writing.find(what.get()).code();
    String remark = RecordReadings.line(String.join(" ", text.get()));
    Accepted accepted = writing.append(new Noted(code, remark, date.orToday(bench)));
    return Recorded.of(
        writing,
        accepted,
        code,
        "all that is known: filial show " + CommandLine.quoted(code.text()));
  }
}
