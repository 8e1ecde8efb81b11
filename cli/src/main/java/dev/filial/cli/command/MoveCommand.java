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
import dev.filial.core.register.Moved;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial move}. */
public final class MoveCommand implements BenchCommand {

  private final Supplier<List<String>> what;
  private final Supplier<String> place;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public MoveCommand(Words words) {
    what = words.arguments("WHAT", "Plants, pots, sowings or packets.", true, Reading.TEXT);
    place = words.requiredOption("--to", "PLACE", "Where they stand now.", RecordReadings.LINE);
    date = new DateOption(words, "they were moved");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe("Records that plants, pots or packets stand somewhere else now.")
        .example("filial move 22-001 24-007-2 --to \"cold frame\"");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    List<Code> codes = Several.in(writing, what.get());
    Accepted accepted =
        writing.append(
            new Moved(codes, place.get(), date.orToday(bench), remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        Several.only(codes),
        "all that is known of it: filial show " + CommandLine.quoted(codes.get(0).text()));
  }
}
