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
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Parted;
import dev.filial.core.register.PartialDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial part}. */
public final class PartCommand implements BenchCommand {

  private static final Reading<List<Long>> NUMBERS =
      (text, bench) -> {
        List<Long> numbers = new ArrayList<>();
        for (String part : text.split(",", -1)) {
          numbers.add(EntryNumber.READING.read(part, bench));
        }
        return numbers;
      };

  private final Supplier<String> plant;
  private final Supplier<List<Long>> entries;
  private final Supplier<Optional<Code>> into;
  private final Supplier<Optional<String>> taxon;
  private final DateOption date;
  private final WhyOption why;
  private final OpenRegister register;

  /** Declares its words. */
  public PartCommand(Words words) {
    plant = words.argument("PLANT", "The record that was two plants.");
    entries =
        words.requiredOption(
            "--entries",
            "N,N",
            "The numbers of the entries that spoke of the second plant; filial history PLANT lists"
                + " them.",
            NUMBERS);
    into =
        words.option(
            "--into",
            "CODE",
            "The code of the second plant; otherwise the next of this year, or of the seedlings of"
                + " its cross.",
            RecordReadings.CODE);
    taxon =
        words.option(
            "--taxon",
            "NAME",
            "What the second plant is, where that is known.",
            RecordReadings.LINE);
    date = new DateOption(words, "that came out");
    why = new WhyOption(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Parts a record that turned out to be two plants: the entries named are read as speaking"
                + " of the second, which gets a code of its own.")
        .example("filial part 22-007 --entries 41 --why \"two rosettes, and only one was used\"");
  }

  @Override
  public Answer run(Bench bench) {
    String reason = why.in(bench);
    return register.write(bench, writing -> record(writing, bench, reason));
  }

  private Answer record(Writing writing, Bench bench, String reason) {
    Code code = writing.find(plant.get()).code();
    PartialDate day = date.orToday(bench);
    NextCode free = NextCode.in(writing.view());
    Code second =
        into.get()
            .orElseGet(
                () -> code.isSeedling() ? free.seedling(code) : free.ofYear(bench.day().getYear()));
    Accepted accepted =
        writing.append(
            new Parted(
                code,
                second,
                entries.get(),
                taxon.get().map(Determination::of).orElse(Determination.UNKNOWN),
                day,
                reason));
    if (taxon.get().isEmpty() && !second.isSeedling()) {
      writing.note(
          "nothing is known of "
              + second.text()
              + " now, nor of what comes of it; part with --taxon, or put it in: filial amend "
              + accepted.entry().number()
              + " taxon=TAXON --why WHY");
    }
    return Recorded.of(
            writing, accepted, second, "what is said of it now: filial history " + quoted(second))
        .withTag(writing, second);
  }

  private static String quoted(Code code) {
    return CommandLine.quoted(code.text());
  }
}
