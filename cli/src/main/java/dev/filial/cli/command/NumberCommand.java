package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.DayOption;
import dev.filial.cli.frame.LeftOut;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.register.Numbered;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial number}. */
public final class NumberCommand implements BenchCommand {

  private final Supplier<String> from;
  private final Supplier<Optional<Integer>> count;
  private final Supplier<Optional<String>> pickedFor;
  private final Supplier<Optional<String>> place;
  private final Supplier<Optional<String>> code;
  private final DayOption day;
  private final OpenRegister register;

  /** Declares its words. */
  public NumberCommand(Words words) {
    from =
        words.argument(
            "FROM",
            "The pot or sowing they come from, as \"26-013 P1\"; the cross will do while it has"
                + " only one, or if its sowing was never recorded.");
    count =
        words.optionalArgument("COUNT", "How many seedlings get a number.", Reading.WHOLE_NUMBER);
    pickedFor =
        words.option(
            "--picked-for",
            "TRAIT",
            "The trait they were picked for, if they were picked for one.");
    place = words.option("--place", "TEXT", "Where they stand.");
    code = words.option("--code", "CODE", "The first one's code, if the tags are written already.");
    day = new DayOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Pricks seedlings out and gives them numbers, which run on within a cross whatever the"
                + " pot: 26-013E-8 follows 26-013E-7.")
        .describe(
            "Seedlings picked because of a trait say little about the rest: tally the pot for"
                + " that trait before the others go.")
        .example("filial number \"26-013 P1\" 3")
        .example("filial number \"26-013 P2\" 2 --picked-for tips --place window");
  }

  @Override
  public Answer run(Bench bench) {
    String meant = Choice.among(from.get(), Holdings::pots, register, bench);
    int seedlings =
        LeftOut.orAsk(
            count.get(),
            "COUNT",
            "How many seedlings get a number?",
            null,
            Reading.WHOLE_NUMBER,
            bench);
    if (seedlings == 0) {
      throw Trouble.usage("no seedling would get a number", "Give COUNT as 1 or more.");
    }
    return register.write(bench, writing -> record(meant, seedlings, bench, writing));
  }

  private Answer record(String meant, int seedlings, Bench bench, OpenRegister.Writing writing) {
    Code source = Holdings.in(writing.view()).stock(writing.find(meant)).code();
    int first =
        StatedCode.or(code.get(), NextCode.in(writing.view()).seedling(source), Code::isSeedling)
            .part()
            .number();
    Numbered numbered =
        new Numbered(
            source,
            first,
            (int) Math.min(Integer.MAX_VALUE, first + (long) seedlings - 1),
            day.of(bench),
            pickedFor.get().orElse(null),
            place.get().orElse(null),
            null);
    return RecordedTags.of(
        writing,
        writing.append(numbered),
        numbered.codes(),
        pickedFor
            .get()
            .filter(trait -> !source.isWhole())
            .map(
                trait ->
                    "before the others go, say how many showed what: filial tally \""
                        + source.text()
                        + "\" "
                        + CommandLine.quoted(trait)
                        + " STATE=COUNT ...")
            .orElse("see one of them: filial show " + source.whole().seedling(first).text()));
  }
}
