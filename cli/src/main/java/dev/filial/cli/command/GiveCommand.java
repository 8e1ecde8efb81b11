package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Cautions;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Caution;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial give}. */
public final class GiveCommand implements BenchCommand {

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
    List<Code> codes = Several.inOrTheirSeed(writing, what.get());
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
    String rules = Cautions.of(Caution.BORDER);
    if (abroad.getAsBoolean() && !writing.warnings().contains(rules)) {
      writing.note(rules);
    }
    return RecordedTags.travelling(writing, accepted, codes, "");
  }
}
