package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.LeftOut;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.PartialDate;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial harvest}. */
public final class HarvestCommand implements BenchCommand {

  private final Supplier<String> cross;
  private final Supplier<Optional<Count>> count;
  private final Supplier<Optional<Count>> fruits;
  private final BooleanSupplier apart;
  private final SeedWeight weight;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> code;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public HarvestCommand(Words words) {
    cross = words.argument("CROSS", "The cross whose fruit was harvested.");
    count =
        words.optionalArgument(
            "COUNT",
            "How many seeds: 80, or ~80, few, many or ? where nobody counted; may be left out"
                + " with --mg.",
            Reading.COUNT);
    fruits = words.option("--fruits", "COUNT", "From how many fruits.", Reading.COUNT);
    apart =
        words.flag("--apart", "This lot is one fruit kept apart; the others get their own lots.");
    weight = new SeedWeight(words);
    place = words.option("--place", "TEXT", "Where the seed is kept.");
    code = words.option("--code", "CODE", "Its lot, if a packet bears one already, as H2.");
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Each harvest is a seed lot: the first of 26-013E is 26-013E H1. With --mg and"
                + " --per-gram and no count the number is worked out, and kept as a guess.")
        .example("filial harvest 26-014 60 --fruits 2")
        .example("filial harvest 26-014 --mg 12 --per-gram 9000");
  }

  @Override
  public Answer run(Bench bench) {
    if (apart.getAsBoolean() && fruits.get().isPresent()) {
      throw Trouble.usage(
          "--apart speaks of one fruit, --fruits of several together",
          "Harvest each fruit with --apart, or all of them with --fruits.");
    }
    Count seeds =
        weight.isWeighed() && count.get().isEmpty()
            ? Count.unknown()
            : LeftOut.orAsk(count.get(), "COUNT", "How many seeds?", null, Reading.COUNT, bench);
    PartialDate date = day.of(bench);
    return register.write(bench, writing -> record(seeds, date, writing));
  }

  private Answer record(Count seeds, PartialDate date, OpenRegister.Writing writing) {
    Code whole = Holdings.in(writing.view()).cross(writing.find(cross.get())).code();
    Code lot = StatedCode.or(code.get(), NextCode.in(writing.view()).lot(whole), Code::isLot);
    Harvested harvest =
        new Harvested(
            lot,
            date,
            apart.getAsBoolean() ? Count.of(1) : fruits.get().orElse(null),
            apart.getAsBoolean(),
            seeds,
            weight.milligrams(),
            weight.perGram(),
            place.get().orElse(null),
            null);
    return Recorded.of(
            writing,
            writing.append(harvest),
            lot,
            "when you sow it: filial sow \"" + lot.text() + "\" COUNT")
        .withTag(writing, lot);
  }
}
