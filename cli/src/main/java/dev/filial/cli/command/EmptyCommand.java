package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial empty}. */
public final class EmptyCommand implements BenchCommand {

  private final Supplier<List<String>> lots;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public EmptyCommand(Words words) {
    lots =
        words.arguments(
            "LOT",
            "Seed lots, as \"26-013 H1\"; the cross or packet will do while it has only one.",
            true,
            Reading.THING);
    date = new DateOption(words, "the last seed was used");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records that no seed of a lot is left, of those above all that nobody counted. Seed"
                + " that was thrown out or given away is recorded with: filial discard, filial"
                + " give.")
        .example("filial empty 26-007 --date yesterday");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    Holdings holdings = Holdings.in(writing.view());
    List<Code> codes =
        lots.get().stream().map(lot -> holdings.lot(writing.find(lot)).code()).distinct().toList();
    Accepted accepted =
        writing.append(
            new FateRecorded(
                codes,
                Fate.USED_UP,
                date.orToday(bench),
                null,
                null,
                null,
                remark.get().orElse(null)));
    return Recorded.of(
        writing, accepted, Several.only(codes), "if seed turns up after all: filial undo");
  }
}
