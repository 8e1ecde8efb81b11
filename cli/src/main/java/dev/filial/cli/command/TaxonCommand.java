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
import dev.filial.core.answer.DeterminationReading;
import dev.filial.core.answer.TaxonReading;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.TaxonDeclared;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial taxon}. */
public final class TaxonCommand implements BenchCommand {

  private final Supplier<List<String>> name;
  private final Supplier<List<String>> synonyms;
  private final Supplier<Optional<String>> within;
  private final Supplier<Optional<Integer>> ploidy;
  private final Supplier<Optional<String>> shortName;
  private final BooleanSupplier hybrid;
  private final Supplier<List<TaxonShare>> makeup;
  private final BooleanSupplier selfIncompatible;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public TaxonCommand(Words words) {
    name = words.arguments("NAME", "The name you use for it.", true, Reading.TEXT);
    synonyms =
        words.repeatedOption(
            "--also", "NAME", "Another name of the same taxon; may be repeated.", Reading.TEXT);
    within =
        words.option(
            "--within",
            "TAXON",
            "The taxon it counts into when asked, if its own name does not say so.");
    ploidy =
        words.option(
            "--ploidy",
            "SETS",
            "How many chromosome sets its plants have; taken as 2 if not said.",
            Reading.SETS);
    shortName =
        words.option("--short", "NAME", "What to write on a tag for it.", RecordReadings.LINE);
    hybrid = words.flag("--hybrid", "It is a hybrid itself, and its plants are never pure.");
    makeup =
        words.repeatedOption(
            "--makeup",
            "TAXON=SHARE",
            "Of a hybrid: how much of it is of a taxon, as \"E. laui=1/2\"; once for each taxon.",
            TaxonShare.READING);
    selfIncompatible =
        words.flag("--self-incompatible", "Its own pollen sets little or nothing on it.");
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says what is known of a species, a subspecies or a hybrid with a name. A taxon need"
                + " not be declared before its plants are entered; a name that was wrong is mended"
                + " with: filial rename.")
        .example("filial taxon \"Echeveria pulidonis\" --short pulid --self-incompatible");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, this::record);
  }

  private Answer record(Writing writing) {
    TaxonReading reading = TaxonReading.in(writing.view());
    Map<String, Fraction> shares = new LinkedHashMap<>();
    TaxonShare.map(makeup.get())
        .forEach(
            (written, share) ->
                shares.merge(read(reading, written, writing), share, Fraction::plus));
    String declared = read(reading, String.join(" ", name.get()), writing);
    Accepted accepted =
        writing.append(
            new TaxonDeclared(
                declared,
                synonyms.get().stream().map(written -> reading.read(written).text()).toList(),
                within.get().map(written -> read(reading, written, writing)).orElse(null),
                ploidy.get().orElse(null),
                shortName.get().orElse(null),
                hybrid.getAsBoolean() || !shares.isEmpty(),
                shares,
                selfIncompatible.getAsBoolean(),
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        null,
        "enter a plant of it: filial plant " + CommandLine.quoted(declared));
  }

  /** The name in full; a synonym is meant to differ by little, any other name is not. */
  private static String read(TaxonReading reading, String written, Writing writing) {
    TaxonName taxon = reading.read(written);
    reading
        .oneSlipFrom(taxon)
        .ifPresent(like -> writing.note(DeterminationReading.slip(taxon, like)));
    return taxon.text();
  }
}
