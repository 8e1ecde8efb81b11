package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.register.PlaceDeclared;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial place}. */
public final class PlaceCommand implements BenchCommand {

  private final Supplier<String> place;
  private final Supplier<Optional<String>> within;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public PlaceCommand(Words words) {
    place = words.argument("PLACE", "A bag, tray, bench or house.", RecordReadings.LINE);
    within =
        words.option(
            "--within",
            "PLACE",
            "The larger place it stands in; otherwise it stands in none.",
            RecordReadings.LINE);
    date = new DateOption(words, "it was put there");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says which place stands in which: a bag on a shelf, the shelf in a kitchen. Said"
                + " again, the place was moved, and all that stands in it with it. What was never"
                + " spoken of stands in nothing larger.")
        .example("filial place \"bag 2\" --within shelf");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(
        bench,
        writing ->
            Recorded.of(
                writing,
                writing.append(
                    new PlaceDeclared(
                        place.get(),
                        within.get().orElse(null),
                        date.orToday(bench),
                        remark.get().orElse(null))),
                null,
                "what stands there: filial where --in " + CommandLine.quoted(place.get())));
  }
}
