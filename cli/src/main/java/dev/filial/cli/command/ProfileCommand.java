package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Recorded;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.answer.DeterminationReading;
import dev.filial.core.answer.TaxonReading;
import dev.filial.core.name.TaxonName;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.ProfileStated.Pairing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** {@code filial profile}. */
public final class ProfileCommand implements BenchCommand {

  /** How frequent the alleles of a gene are. */
  private record Carried(String gene, Map<String, Fraction> alleles) {

    static Carried read(String text, Bench bench) {
      int equals = text.indexOf('=');
      if (equals < 1 || equals == text.length() - 1) {
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" is not a gene and its allele; write tips=t, or tips=T:75%,t. A taxon of"
                + " several words stands in quotes");
      }
      return new Carried(
          text.substring(0, equals).strip(), Chances.read(text.substring(equals + 1)));
    }
  }

  private final Supplier<String> taxon;
  private final Supplier<List<Carried>> genes;
  private final Supplier<Optional<Pairing>> pairing;
  private final Supplier<Optional<Fraction>> doubleReduction;
  private final Supplier<Optional<GeneticMap>> map;
  private final Supplier<Optional<String>> remark;
  private final OpenRegister register;

  /** Declares its words. */
  public ProfileCommand(Words words) {
    taxon =
        words.argument(
            "TAXON", "A species, in quotes, as \"Echeveria laui\"; or a genus, as Echeveria.");
    genes =
        words.arguments(
            "GENE=ALLELE",
            "The allele that all its plants have, as tips=t; or how frequent each is, as"
                + " tips=T:75%,t.",
            false,
            Carried::read);
    pairing =
        words.option(
            "--pairing",
            "HOW",
            "Of a plant with four chromosome sets: tetrasomic if any of the four chromosomes pair,"
                + " disomic if they keep to two and two.",
            Reading.oneOf(Pairing.class));
    doubleReduction =
        words.option(
            "--double-reduction",
            "SHARE",
            "Of a tetrasomic one: how often a gamete has one chromosome's allele twice, 0 to 1/6;"
                + " 1/7 if you know no better.",
            RecordReadings.SHARE);
    map =
        words.option(
            "--map",
            "LENGTHS",
            "How long the chromosomes of one set are, in centimorgans: 27x100 for 27 of 100, or"
                + " 120,100,80. Best said of a genus; it holds for each species that has none of its"
                + " own.",
            (text, bench) -> GeneticMap.parse(text));
    remark = words.option("--remark", "TEXT", "Anything else.", RecordReadings.LINE);
    register = OpenRegister.toWrite(words);
    words
        .describe(
            "Says what plants of a species carry, so that nobody has to say it of each of them."
                + " What is said later of the same gene, or of the chromosomes, holds.")
        .example("filial profile Echeveria --map 27x100")
        .example("filial profile \"Echeveria colorata\" tips=T:75%,t")
        .example("filial profile \"Echeveria lilacina\" tips=t --pairing tetrasomic");
  }

  @Override
  public Answer run(Bench bench) {
    Map<String, Map<String, Fraction>> typed = new LinkedHashMap<>();
    for (Carried one : genes.get()) {
      if (typed.put(one.gene(), one.alleles()) != null) {
        throw Trouble.usage(
            "the gene " + one.gene() + " is named twice",
            "Give it once, with all its alleles: " + one.gene() + "=A:75%,a");
      }
    }
    if (typed.isEmpty() && pairing.get().isEmpty() && map.get().isEmpty()) {
      throw Trouble.usage(
          "what do plants of " + taxon.get() + " carry?",
          "Give GENE=ALLELE, how its chromosomes pair with --pairing, or how long they are with"
              + " --map.");
    }
    return register.write(bench, writing -> record(writing, typed));
  }

  private Answer record(Writing writing, Map<String, Map<String, Fraction>> typed) {
    Map<String, Map<String, Fraction>> frequencies = new LinkedHashMap<>();
    typed.forEach(
        (gene, alleles) ->
            frequencies.put(GeneNames.required(writing.view(), gene).locus().strip(), alleles));
    TaxonReading reading = TaxonReading.in(writing.view());
    TaxonName name = reading.read(taxon.get());
    reading
        .oneSlipFrom(name)
        .ifPresent(like -> writing.note(DeterminationReading.slip(name, like)));
    Accepted accepted =
        writing.append(
            new ProfileStated(
                name.text(),
                frequencies,
                pairing.get().orElse(null),
                doubleReduction.get().orElse(null),
                map.get().map(GeneticMap::centimorgans).orElse(List.of()),
                remark.get().orElse(null)));
    return Recorded.of(
        writing,
        accepted,
        null,
        typed.isEmpty() && map.get().isPresent()
            ? "how much of a donor hangs on after backcrosses: filial attached PLANT"
            : "what a single plant of it carries, if you know: filial genotype PLANT ALLELES");
  }
}
