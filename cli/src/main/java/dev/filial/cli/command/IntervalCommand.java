package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial interval}. */
public final class IntervalCommand implements BenchCommand {

  private final Supplier<Interval> interval;
  private final Supplier<Integer> days;
  private final Supplier<Optional<String>> taxon;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public IntervalCommand(Words words) {
    Reading<Interval> intervals = Reading.oneOf(Interval.class);
    interval =
        words.argument(
            "WHAT", "Which: " + String.join(", ", intervals.candidates()) + ".", intervals);
    days = words.argument("DAYS", "How many days.", Reading.WHOLE_NUMBER);
    taxon =
        words.option(
            "--taxon",
            "NAME",
            "Of this species or genus only; otherwise of all.",
            RecordReadings.LINE);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says how long something takes here, or may be left alone, before it is due. What is"
                + " said of a species goes before what is said of its genus, and that before what"
                + " is said of all; where nothing is said, what the register shows of its own"
                + " counts, and until there is enough of that, common practice.")
        .example("filial interval coming-up 10 --taxon \"Echeveria laui\"")
        .example("filial interval looking-into 7");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(
        bench,
        writing ->
            Recorded.of(
                writing,
                writing.append(
                    new IntervalStated(
                        interval.get(),
                        days.get(),
                        taxon.get().orElse(null),
                        remark.get().orElse(null))),
                null,
                "what is due by it: filial due"));
  }
}
