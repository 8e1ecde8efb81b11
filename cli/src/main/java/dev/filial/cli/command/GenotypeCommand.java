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
import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.GenotypeStated;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial genotype}. */
public final class GenotypeCommand implements BenchCommand {

  private final Supplier<String> plant;
  private final Supplier<List<String>> genotype;
  private final GeneNames genes;
  private final DateOption date;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public GenotypeCommand(Words words) {
    plant = words.argument("PLANT", "A plant or a numbered seedling.", Reading.THING);
    genotype =
        words.arguments(
            "ALLELES",
            "What it carries: Rr, or \"Rr Ww\" of two genes.",
            true,
            RecordReadings.LINE);
    genes =
        new GeneNames(
            words, "The genes that are meant, where two have an allele of the same letter.");
    date = new DateOption(words, "it was found out");
    remark =
        words.option("--remark", "TEXT", "How it is known, or anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says what a plant carries, where that is known: from its breeder, or because all its"
                + " offspring are alike. What a plant showed is recorded with: filial observe.")
        .describe(
            "Of two genes that lie next to each other, write which alleles lie together: \"RW/rw\""
                + " is not \"Rw/rW\". Alleles of several letters have a stroke between: S1/S2. A"
                + " plant with four chromosome sets has four of each: RRrr.")
        .example("filial genotype 24-007-1 Tt");
  }

  @Override
  public Answer run(Bench bench) {
    return register.write(bench, writing -> record(writing, bench));
  }

  private Answer record(Writing writing, Bench bench) {
    Code code = writing.find(plant.get()).code();
    String text = String.join(" ", genotype.get());
    Accepted accepted =
        writing.append(
            new GenotypeStated(
                code,
                genes.meantBy(writing.view(), List.of(text)),
                text,
                date.orToday(bench),
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        code,
        "all that is known of it: filial show " + CommandLine.quoted(code.text()));
  }
}
