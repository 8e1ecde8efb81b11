package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.LocusDeclared;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** {@code filial gene}. */
public final class GeneCommand implements BenchCommand {

  private final Supplier<String> name;
  private final Supplier<List<String>> alleles;
  private final BooleanSupplier cytoplasm;
  private final Supplier<Optional<String>> chromosome;
  private final Supplier<Optional<BigDecimal>> place;
  private final Supplier<Optional<String>> beside;
  private final Supplier<Optional<Fraction>> recombination;
  private final BooleanSupplier refuses;
  private final Supplier<Optional<Fraction>> leak;
  private final Supplier<Optional<String>> selfFertile;
  private final Supplier<Optional<GeneWeights>> eggs;
  private final Supplier<Optional<GeneWeights>> pollen;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public GeneCommand(Words words) {
    name = words.argument("NAME", "What you call it, as edge.", RecordReadings.LINE);
    alleles =
        words.arguments(
            "ALLELE",
            "The letters you write for its alleles, the most dominant first, as R r.",
            true,
            RecordReadings.LINE);
    cytoplasm =
        words.flag(
            "--cytoplasm", "It does not lie on a chromosome: the seed parent alone hands it on.");
    chromosome =
        words.option(
            "--chromosome",
            "NAME",
            "The chromosome it lies on, where there is a map; with --at.",
            RecordReadings.LINE);
    place =
        words.option(
            "--at", "CM", "Where on it, in centimorgans from its end.", RecordReadings.NUMBER);
    beside =
        words.option(
            "--next-to",
            "GENE",
            "The gene that lies next to it on its chromosome; with --recombination.",
            RecordReadings.LINE);
    recombination =
        words.option(
            "--recombination",
            "SHARE",
            "How often the two are parted in a gamete, as 10%: 50% would be not linked at all.",
            RecordReadings.SHARE);
    refuses =
        words.flag(
            "--self-incompatible",
            "A flower refuses pollen that carries an allele of its own of this gene.");
    leak =
        words.option(
            "--leak",
            "SHARE",
            "How often such pollen comes through all the same; taken as 1% if not said.",
            RecordReadings.SHARE);
    selfFertile =
        words.option(
            "--self-fertile", "A,B,...", "Alleles that no flower refuses.", RecordReadings.LINE);
    eggs =
        words.option(
            "--eggs",
            "ALLELE=WEIGHT,...",
            "How much an egg with each allele counts where they do not count alike: R=2,r=1.",
            GeneWeights.READING);
    pollen =
        words.option(
            "--pollen", "ALLELE=WEIGHT,...", "The same of pollen grains.", GeneWeights.READING);
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Declares a gene by its alleles, so that it can be said how a trait hangs on it and"
                + " what plants carry. Capital and small letters are told apart: a plant Rr carries"
                + " one R and one r.")
        .describe(
            "Most growers know no more of a gene than that. Where it lies, whether it makes plants"
                + " self-incompatible, and whether some gametes are favoured may all be left out.")
        .example("filial gene wax W w --next-to tips --recombination 10%")
        .example("filial gene \"leaf edge\" R r");
  }

  @Override
  public Answer run(Bench bench) {
    requireBoth("--chromosome", chromosome.get(), "--at", place.get());
    requireBoth("--next-to", beside.get(), "--recombination", recombination.get());
    return register.write(bench, this::record);
  }

  private static void requireBoth(String one, Optional<?> first, String other, Optional<?> second) {
    if (first.isPresent() != second.isPresent()) {
      throw Trouble.usage(
          one + " and " + other + " go together",
          "Give " + (first.isPresent() ? other : one) + " too, or leave both out.");
    }
  }

  private Answer record(Writing writing) {
    List<String> symbols =
        alleles.get().stream().flatMap(typed -> GeneNames.parts(typed).stream()).toList();
    Accepted accepted =
        writing.append(
            new LocusDeclared(
                name.get(),
                symbols,
                cytoplasm.getAsBoolean(),
                chromosome.get().orElse(null),
                place.get().orElse(null),
                beside
                    .get()
                    .map(typed -> GeneNames.required(writing.view(), typed).locus())
                    .orElse(null),
                recombination.get().orElse(null),
                refuses.getAsBoolean(),
                leak.get().orElse(null),
                selfFertile.get().map(GeneNames::parts).orElse(List.of()),
                eggs.get().orElse(GeneWeights.NONE).byAllele(),
                pollen.get().orElse(GeneWeights.NONE).byAllele(),
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        null,
        refuses.getAsBoolean()
            ? "say what plants carry: filial genotype PLANT "
                + symbols.get(0)
                + "/"
                + symbols.get(1)
            : "say which trait hangs on it: filial model TRAIT --dominant "
                + CommandLine.quoted(name.get()));
  }
}
