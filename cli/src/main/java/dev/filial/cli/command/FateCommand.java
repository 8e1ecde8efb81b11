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
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial died}, {@code filial discard} and {@code filial keep}. */
public final class FateCommand implements BenchCommand {

  private final Fate fate;
  private final Supplier<List<String>> what;
  private final Supplier<Optional<Count>> count;
  private final Supplier<Optional<String>> cause;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  private FateCommand(Words words, Fate fate, String event, String why) {
    this.fate = fate;
    what = words.arguments("WHAT", "Plants, pots or seed lots.", true, Reading.TEXT);
    count =
        fate == Fate.KEPT
            ? Optional::empty
            : words.option(
                "--count",
                "COUNT",
                "How many of each pot or seed lot; otherwise all of it.",
                Reading.COUNT);
    cause = words.option("--cause", "TEXT", why, RecordReadings.LINE);
    date = new DateOption(words, event);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
  }

  /** {@code filial died}. */
  public static BenchCommand died(Words words) {
    words
        .describe(
            "Records that plants died, or some or all of a pot. They stay in the register, and so"
                + " does all that was raised from them.")
        .example("filial died 24-007-3 --cause \"red spider\"");
    return new FateCommand(words, Fate.DEAD, "it died", "What of, if you know.");
  }

  /** {@code filial discard}. */
  public static BenchCommand discard(Words words) {
    words
        .describe("Records that plants, seed, or some of a pot were thrown out.")
        .example("filial discard 24-007-3 --cause \"weak growth\"");
    return new FateCommand(words, Fate.DISCARDED, "it was thrown out", "Why.");
  }

  /** {@code filial keep}. */
  public static BenchCommand keep(Words words) {
    words
        .describe("Marks plants, pots or seed as worth keeping.")
        .example("filial keep 24-007-2 --cause \"the best of its sisters\"");
    return new FateCommand(words, Fate.KEPT, "that was decided", "What for.");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    List<Code> codes = Several.in(writing, what.get());
    Accepted accepted =
        writing.append(
            new FateRecorded(
                codes,
                fate,
                date.orToday(bench),
                count.get().orElse(null),
                null,
                cause.get().orElse(null),
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        Several.only(codes),
        fate == Fate.KEPT
            ? "all that is known of it: filial show " + CommandLine.quoted(codes.get(0).text())
            : "if that was the wrong one: filial undo");
  }
}
