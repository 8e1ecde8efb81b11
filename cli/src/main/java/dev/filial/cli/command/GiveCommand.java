package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial give}. */
public final class GiveCommand implements BenchCommand {

  // From memory, and said so broadly that it stays true: which plants are listed and what a country
  // asks for changes from year to year, so the reader is sent to those who know.
  private static final String AT_THE_BORDER =
      "across a border, nearly all cacti and many other succulents, their seed often included, need"
          + " papers under the convention on trade in endangered species (CITES), nursery raised or"
          + " not, and most countries want a plant health certificate for plants and many for seed;"
          + " ask the authorities of both countries before it leaves";

  private final Supplier<List<String>> what;
  private final Supplier<Optional<Count>> count;
  private final Supplier<Optional<String>> to;
  private final BooleanSupplier abroad;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public GiveCommand(Words words) {
    what = words.arguments("WHAT", "Plants, pots or seed lots.", true, Reading.TEXT);
    count =
        words.option(
            "--count",
            "COUNT",
            "How many of each pot or seed lot; otherwise all of it.",
            Reading.COUNT);
    to = words.option("--to", "NAME", "Who has it now.", RecordReadings.LINE);
    abroad =
        words.flag("--abroad", "It goes across a border: be told what to ask about beforehand.");
    date = new DateOption(words, "it left");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records that plants, seed, or some of a pot left the house. The code they travel with"
                + " has your mark before it, so that it is never taken for somebody else's.")
        .example("filial give 24-007-3 --to \"Lena Muster\"");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    List<Code> codes = Several.in(writing, what.get());
    if (abroad.getAsBoolean()) {
      writing.note(AT_THE_BORDER);
    }
    Accepted accepted =
        writing.append(
            new FateRecorded(
                codes,
                Fate.GIVEN,
                date.orToday(bench),
                count.get().orElse(null),
                to.get().orElse(null),
                null,
                remark.get().orElse(null)));
    return RecordedTags.travelling(writing, accepted, codes, "");
  }
}
