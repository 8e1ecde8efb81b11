package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.LeftOut;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.NextCode;
import dev.filial.core.answer.PotFilling;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Sown;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial sow}. */
public final class SowCommand implements BenchCommand {

  private final Supplier<String> lot;
  private final Supplier<Optional<Count>> count;
  private final Supplier<Optional<Integer>> pots;
  private final Supplier<Optional<List<PotPortion>>> into;
  private final Supplier<Optional<String>> medium;
  private final Supplier<Optional<String>> cover;
  private final BooleanSupplier surface;
  private final Supplier<Optional<String>> container;
  private final BooleanSupplier closed;
  private final Supplier<Optional<BigDecimal>> heat;
  private final Supplier<Optional<BigDecimal>> light;
  private final Supplier<List<String>> treatments;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> code;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public SowCommand(Words words) {
    lot =
        words.argument(
            "LOT", "The seed lot, as \"26-013 H1\"; the cross will do while it has only one.");
    count =
        words.optionalArgument(
            "COUNT",
            "How many seeds: 40, ~40, few, many or ?; may be left out with --into.",
            Reading.COUNT);
    pots =
        words.option(
            "--pots",
            "NUMBER",
            "Into so many new pots, about alike; they are numbered on.",
            Reading.WHOLE_NUMBER);
    into =
        words.option(
            "--into",
            "POTS",
            "Into these new pots, and how many in each: P1=20,P2=20.",
            PotPortion.LIST);
    medium = words.option("--medium", "TEXT", "What it was sown on.");
    cover = words.option("--cover", "TEXT", "What it was covered with.");
    surface = words.flag("--surface", "The seed was left on the surface.");
    container = words.option("--container", "TEXT", "In what: pot, tray, bag.");
    closed = words.flag("--closed", "It was closed: a bag, a lid; filial due says when to look.");
    heat =
        words.option(
            "--heat", "DEGREES", "Bottom heat, in degrees Celsius.", RecordReadings.NUMBER);
    light = words.option("--light", "HOURS", "Hours of light a day.", RecordReadings.NUMBER);
    treatments =
        words.repeatedOption(
            "--treatment",
            "TEXT",
            "What was done to the seed or the medium; may be given several times.",
            Reading.TEXT);
    place = words.option("--place", "TEXT", "Where it stands.");
    code = words.option("--code", "CODE", "The sowing's code, if it has one already, as S2.");
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Sows seed of one lot. With --pots or --into each pot gets a code and a tag of its"
                + " own; without, all of it is one sowing, as 26-013E S1.")
        .example("filial sow 26-012 40 --pots 2 --medium pumice --place window")
        .example("filial sow \"26-013 H1\" --into P4=20,P5=~20 --container tray");
  }

  @Override
  public Answer run(Bench bench) {
    if (pots.get().isPresent() && into.get().isPresent()) {
      throw Trouble.usage(
          "--pots and --into both say into which pots",
          "Give --pots NUMBER or --into P1=20,P2=20.");
    }
    String meant = Choice.among(lot.get(), Holdings::lots, register, bench);
    Count seeds = seeds(bench);
    return register.write(bench, writing -> record(meant, seeds, bench, writing));
  }

  private Count seeds(Bench bench) {
    Optional<Count> inPots = into.get().map(PotPortion::total);
    if (inPots.isEmpty()) {
      return LeftOut.orAsk(
          count.get(), "COUNT", "How many seeds are sown?", null, Reading.COUNT, bench);
    }
    Count total = inPots.get();
    if (count.get().isPresent()
        && count.get().get().isExact()
        && total.isExact()
        && !count.get().get().equals(total)) {
      throw Trouble.usage(
          "the pots of --into hold " + total + " seeds, and COUNT is " + count.get().get(),
          "Leave COUNT out, or mend one of the two.");
    }
    return count.get().orElse(total);
  }

  private Answer record(String meant, Count seeds, Bench bench, OpenRegister.Writing writing) {
    Code from = Holdings.in(writing.view()).lot(writing.find(meant)).code();
    Code sowing =
        StatedCode.or(code.get(), NextCode.in(writing.view()).sowing(from), Code::isSowing);
    List<Sown.Filled> filled =
        pots.get()
            .map(number -> PotFilling.evenly(writing.view(), from.whole(), seeds, number))
            .orElseGet(() -> PotPortion.filled(into.get().orElse(List.of()), from.whole()));
    Sown sown =
        new Sown(
            sowing,
            from,
            day.of(bench),
            seeds,
            medium.get().orElse(null),
            cover.get().orElse(null),
            surface.getAsBoolean(),
            container.get().orElse(null),
            closed.getAsBoolean(),
            heat.get().orElse(null),
            light.get().orElse(null),
            treatments.get(),
            filled,
            place.get().orElse(null),
            null);
    List<Code> tagged =
        filled.isEmpty() ? List.of(sowing) : filled.stream().map(Sown.Filled::group).toList();
    return RecordedTags.of(
        writing,
        writing.append(sown),
        tagged,
        "when they come up: filial count \"" + tagged.get(0).text() + "\" --up COUNT");
  }
}
