package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.SeasonsQuestion;
import dev.filial.core.answer.SeasonsQuestion.Seasons;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial seasons}. */
public final class SeasonsCommand implements BenchCommand {

  private static final int FIRST = 1700;
  private static final int CENTURY = 2000;

  private final Supplier<Optional<Integer>> year;
  private final CsvText.Option csv;
  private final OpenRegister register;

  /** Declares its words. */
  public SeasonsCommand(Words words) {
    year =
        words.optionalArgument(
            "YEAR",
            "That year in full, as 2024 or 24; otherwise a row for each year.",
            (text, bench) -> year(Reading.WHOLE_NUMBER.read(text, bench)));
    csv = new CsvText.Option(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "What happened in each calendar year, by the days the entries speak of: what came, was"
                + " crossed, harvested, sown, numbered, lost and given away. Only what was counted"
                + " is added up; guesses and what has no number are told apart. Whether a cross set"
                + " and how much of a sowing came up stands in the year of the cross and of the"
                + " sowing.")
        .example("filial seasons")
        .example("filial seasons 2024")
        .example("filial seasons --csv");
  }

  private static int year(int number) {
    if (number < 100) {
      return CENTURY + number;
    }
    if (number < FIRST || number > 9999) {
      throw new IllegalArgumentException(
          number + " is not a year of a register; write one from 1700 to 9999, or 24 for 2024");
    }
    return number;
  }

  @Override
  public Answer run(Bench bench) {
    boolean rows = csv.isAsked();
    return register.read(
        bench,
        view -> {
          Seasons all = SeasonsQuestion.of(view);
          Integer asked = year.get().orElse(null);
          return new SeasonsTold(
              asked == null
                  ? all
                  : new Seasons(all.year(asked).map(List::of).orElse(List.of()), null),
              asked,
              rows);
        });
  }
}
