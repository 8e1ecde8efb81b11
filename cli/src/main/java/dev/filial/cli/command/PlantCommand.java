package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.DeterminationReading;
import dev.filial.core.answer.Namesakes;
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** {@code filial plant}. */
public final class PlantCommand implements BenchCommand {

  private final Supplier<List<String>> taxon;
  private final CodeOption code;
  private final Supplier<List<String>> names;
  private final LabelOptions label;
  private final DateOption date;
  private final BooleanSupplier elsewhere;
  private final PlaceAndRemark rest;
  private final OpenRegister register;

  /** Declares its words. */
  public PlantCommand(Words words) {
    taxon =
        words.arguments(
            "TAXON",
            "The name on its label, in quotes if it has some itself; left out or ? if nobody"
                + " knows. E. will do for a genus that is here already.",
            false,
            Reading.TEXT);
    names =
        words.repeatedOption(
            "--name",
            "NAME",
            "A name of its own, or its code in an old notebook.",
            RecordReadings.LINE);
    label = new LabelOptions(words);
    date = new DateOption(words, "it came");
    code = new CodeOption(words);
    elsewhere =
        words.flag(
            "--elsewhere",
            "It never stood here: a friend's plant whose pollen came by post. Its date is then"
                + " unknown unless given.");
    rest = new PlaceAndRemark(words);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Records one plant that was bought, given or collected. Plants raised from your own"
                + " seed get their numbers with: filial number.")
        .example("filial plant \"Echeveria laui\" --field \"KB 117\" --from \"Lena Muster\"");
  }

  @Override
  public Answer run(Bench bench) {
    String written = taxon.get().isEmpty() ? "" : LabelOptions.typed(String.join(" ", taxon.get()));
    if (written.isEmpty() && bench.asker().canAsk()) {
      written = bench.asker().ask("Taxon on its label, ? if unknown", "?").orElse("?");
    }
    String asked = written;
    return register.write(bench, writing -> record(writing, asked, bench));
  }

  private Answer record(Writing writing, String written, Bench bench) {
    boolean neverHeld = elsewhere.getAsBoolean();
    @Nullable PartialDate day = neverHeld ? date.orUnknown() : date.orToday(bench);
    Code given = code.in(writing.view(), day, bench);
    DeterminationReading.Reading read = label.determination(writing.view(), written);
    read.notes().forEach(writing::note);
    names
        .get()
        .forEach(name -> Namesakes.note(writing.view(), name, given).ifPresent(writing::note));
    Accepted accepted =
        writing.append(
            new PlantAcquired(
                given,
                read.determination(),
                label.provenance(),
                day,
                names.get(),
                neverHeld,
                rest.place(),
                rest.remark()));
    Recorded recorded =
        Recorded.of(
            writing,
            accepted,
            given,
            "when it flowers: filial cross "
                + (neverHeld ? "SEED_PARENT " + given.text() : given.text() + " POLLEN_PARENT"));
    return neverHeld ? recorded : recorded.withTag(writing, given);
  }
}
