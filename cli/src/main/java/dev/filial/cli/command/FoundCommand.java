package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.TagLost;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial found}. */
public final class FoundCommand implements BenchCommand {

  private final Supplier<List<Weighing>> candidates;
  private final Supplier<Optional<Fraction>> unknown;
  private final DateOption date;
  private final CodeOption code;
  private final PlaceAndRemark rest;
  private final OpenRegister register;

  /** Declares its words. */
  public FoundCommand(Words words) {
    candidates =
        words.arguments(
            "PLANT[=WEIGHT]",
            "What it may be: plants, or pots for one seedling out of them. =2 makes one twice as"
                + " likely as one without.",
            false,
            Weighing.READING);
    unknown =
        words.option(
            "--unknown",
            "SHARE",
            "The chance that it is none of them; otherwise none, and with no plant named" + " all.",
            RecordReadings.SHARE);
    date = new DateOption(words, "it was found");
    code = new CodeOption(words);
    rest = new PlaceAndRemark(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records a plant that lost its tag. It gets a code of its own, and every answer about"
                + " it weighs what it may be.")
        .example("filial found 24-007-3=2 24-008-1 --unknown 10%");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    @Nullable PartialDate day = date.orToday(bench);
    Code given = code.in(writing.view(), day, bench);
    List<Weighing> weighed = candidates.get();
    Fraction none = unknown.get().orElse(weighed.isEmpty() ? Fraction.ONE : Fraction.ZERO);
    Accepted accepted =
        writing.append(
            new TagLost(
                given, Weighing.in(writing, weighed), none, day, rest.place(), rest.remark()));
    String which =
        weighed.stream()
            .map(one -> writing.find(one.plant()))
            .filter(item -> item.kind().isPlant())
            .findFirst()
            .map(item -> CommandLine.quoted(item.code().text()))
            .orElse("PLANT");
    return Recorded.of(
            writing,
            accepted,
            given,
            "if it turns out to be a plant you have: filial join " + which + " " + given.text())
        .withTag(writing, given);
  }
}
