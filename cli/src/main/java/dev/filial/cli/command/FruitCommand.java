package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Count;
import dev.filial.core.register.FruitRecorded;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial fruit}. */
public final class FruitCommand implements BenchCommand {

  private final Supplier<String> cross;
  private final Supplier<Optional<Count>> set;
  private final Supplier<Optional<Count>> failed;
  private final Supplier<Optional<Count>> aborted;
  private final Supplier<Optional<Count>> eaten;
  private final Supplier<Optional<String>> why;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public FruitCommand(Words words) {
    cross = words.argument("CROSS", "The code of the cross.");
    set = words.option("--set", "COUNT", "How many of its flowers set fruit.", Reading.COUNT);
    failed = words.option("--failed", "COUNT", "How many failed.", Reading.COUNT);
    aborted =
        words.option(
            "--aborted", "COUNT", "Of those that set, how many dropped unripe.", Reading.COUNT);
    eaten =
        words.option(
            "--eaten",
            "COUNT",
            "How many flowers or fruits were eaten, so that nobody can tell.",
            Reading.COUNT);
    why = words.option("--why", "TEXT", "Why they failed, if you know.", RecordReadings.LINE);
    date = new DateOption(words, "that was seen");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records how the flowers of a cross fared. Flowers that were recorded once are not"
                + " counted again the next time.")
        .example("filial fruit 26-011 --aborted 1 --date yesterday")
        .example("filial fruit 26-014 --set 2 --failed 1 --why \"rotted in the rain\"");
  }

  @Override
  public Answer run(Bench bench) {
    if (set.get().isEmpty()
        && failed.get().isEmpty()
        && aborted.get().isEmpty()
        && eaten.get().isEmpty()) {
      throw Trouble.usage(
          "how many flowers set, and how many failed?",
          "Add --set COUNT, --failed COUNT or both; or --aborted or --eaten.");
    }
    if (why.get().isPresent() && failed.get().isEmpty()) {
      throw Trouble.usage("--why says why flowers failed", "Add --failed COUNT.");
    }
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    Code code = writing.find(cross.get()).code();
    Accepted accepted =
        writing.append(
            new FruitRecorded(
                code,
                date.orToday(bench),
                set.get().orElse(null),
                failed.get().orElse(null),
                aborted.get().orElse(null),
                eaten.get().orElse(null),
                why.get().orElse(null),
                remark.get().orElse(null)));
    boolean hope = set.get().isPresent() && !set.get().get().equals(Count.of(0));
    return Recorded.of(
        writing,
        accepted,
        code,
        hope
            ? "when the fruit is ripe: filial harvest " + code.text()
            : "how the cross stands: filial show " + code.text());
  }
}
