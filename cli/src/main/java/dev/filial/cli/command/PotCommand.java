package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.LeftOut;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial pot}. */
public final class PotCommand implements BenchCommand {

  private final Supplier<String> from;
  private final Supplier<Optional<Count>> count;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> code;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public PotCommand(Words words) {
    from =
        words.argument(
            "FROM",
            "The pot or sowing they come from, as \"26-013 P2\"; the cross will do while it has"
                + " only one, or if its sowing was never recorded.");
    count = words.optionalArgument("COUNT", "How many: 5, ~5, few, many or ?.", Reading.COUNT);
    place = words.option("--place", "TEXT", "Where the new pot stands.");
    code = words.option("--code", "CODE", "The new pot's code, if it has one already, as P4.");
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe("Puts seedlings without numbers in a pot or tray of their own.")
        .example("filial pot \"26-013 P2\" 5 --place window");
  }

  @Override
  public Answer run(Bench bench) {
    String meant = Choice.among(from.get(), Holdings::pots, register, bench);
    Count seedlings =
        LeftOut.orAsk(
            count.get(), "COUNT", "How many go into the new pot?", null, Reading.COUNT, bench);
    PartialDate date = day.of(bench);
    return register.write(
        bench,
        writing -> {
          Code source = Holdings.in(writing.view()).stock(writing.find(meant)).code();
          Code pot =
              StatedCode.or(code.get(), NextCode.in(writing.view()).group(source), Code::isGroup);
          Potted potted = new Potted(pot, source, date, seedlings, place.get().orElse(null), null);
          return Recorded.of(
                  writing,
                  writing.append(potted),
                  pot,
                  "when you prick them out: filial number \"" + pot.text() + "\" COUNT")
              .withTag(writing, pot);
        });
  }
}
