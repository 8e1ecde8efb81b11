package dev.filial.cli;

import dev.filial.cli.command.GeneCommand;
import dev.filial.cli.command.GenotypeCommand;
import dev.filial.cli.command.ModelCommand;
import dev.filial.cli.command.ProfileCommand;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import java.util.List;

/** Genes, and what is known of them. */
final class GeneVerbs extends VerbGroup {

  @Override
  List<Verb> list() {
    return List.of(
        verb("gene", "Declare a gene by its alleles"),
        verb("model", "Say how a trait hangs on genes"),
        verb("profile", "Say what all plants of a species carry"),
        verb("genotype", "Say what one plant carries"));
  }

  private Verb verb(String name, String summary) {
    return verb(name, Heading.GENES, summary);
  }

  @Override
  BenchCommand command(String name, Words words) {
    return switch (name) {
      case "gene" -> new GeneCommand(words);
      case "model" -> new ModelCommand(words);
      case "profile" -> new ProfileCommand(words);
      case "genotype" -> new GenotypeCommand(words);
      default -> throw new IllegalArgumentException(name);
    };
  }
}
