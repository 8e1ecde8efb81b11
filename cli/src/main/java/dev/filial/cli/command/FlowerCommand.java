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
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Flowered;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial flower}. */
public final class FlowerCommand implements BenchCommand {

  private final Supplier<List<String>> what;
  private final BooleanSupplier over;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public FlowerCommand(Words words) {
    what =
        words.arguments("PLANT", "Plants in flower, or pots in which one is.", true, Reading.THING);
    over = words.flag("--over", "The last flower has faded; otherwise one at least is open.");
    date = new DateOption(words, "that was seen");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records that plants were seen in flower, or that they are over. Write it down again"
                + " while a plant goes on: each time it was seen open counts for as long as its kind"
                + " usually flowers.")
        .example("filial flower 24-007-1 22-006 --remark \"the first stalk\"")
        .example("filial flower 22-004 --over --date yesterday");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    List<Code> codes = Several.in(writing, what.get());
    Bloom bloom = over.getAsBoolean() ? Bloom.OVER : Bloom.OPEN;
    Accepted accepted =
        writing.append(new Flowered(codes, bloom, date.orToday(bench), remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        Several.only(codes),
        bloom == Bloom.OPEN
            ? "what flowers with it: filial pairs --with " + CommandLine.quoted(codes.get(0).text())
            : "what is in flower: filial flowering");
  }
}
