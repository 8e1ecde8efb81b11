package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.Namesakes;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Propagated;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial offset}. */
public final class OffsetCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<Optional<String>> how;
  private final BooleanSupplier doubled;
  private final Supplier<List<String>> sport;
  private final Supplier<List<String>> names;
  private final DateOption date;
  private final CodeOption code;
  private final PlaceAndRemark rest;
  private final OpenRegister register;

  /** Declares its words. */
  public OffsetCommand(Words words) {
    plant = words.argument("PLANT", "The plant it was taken from: a code or a name.");
    how =
        words.option("--how", "WAY", "An offset, a leaf cutting, a graft ...", RecordReadings.LINE);
    doubled = words.flag("--doubled", "Its chromosomes were doubled, as with colchicine.");
    sport =
        words.repeatedOption(
            "--sport",
            "TRAIT",
            "A trait in which it differs from the plant it was taken from; what is seen of that"
                + " trait on one says nothing of the other. May be repeated.",
            RecordReadings.LINE);
    names = words.repeatedOption("--name", "NAME", "A name of its own.", RecordReadings.LINE);
    date = new DateOption(words, "it was taken");
    code = new CodeOption(words);
    rest = new PlaceAndRemark(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records a plant grown on from a piece of another: the same plant once more, so what"
                + " is seen on one is true of both.")
        .example("filial offset Lilo --how \"leaf cutting\"");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    Code of = writing.find(plant.get()).code();
    @Nullable PartialDate day = date.orToday(bench);
    Code given = code.in(writing.view(), day, bench);
    names
        .get()
        .forEach(name -> Namesakes.note(writing.view(), name, given).ifPresent(writing::note));
    Accepted accepted =
        writing.append(
            new Propagated(
                given,
                of,
                how.get().orElse(null),
                day,
                doubled.getAsBoolean(),
                sport.get(),
                names.get(),
                rest.place(),
                rest.remark()));
    return Recorded.of(
            writing, accepted, given, "all that is known of it: filial show " + given.text())
        .withTag(writing, given);
  }
}
