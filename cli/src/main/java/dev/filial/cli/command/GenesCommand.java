package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.GenesQuestion;
import dev.filial.core.answer.GenesQuestion.Carried;
import dev.filial.core.answer.GenesQuestion.Genes;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.LocusDeclared;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** {@code filial genes}. */
public final class GenesCommand implements BenchCommand {

  private final OpenRegister register;

  /** Declares its words. */
  public GenesCommand(Words words) {
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Lists what was declared of genes. What a single plant carries stands with the plant:"
                + " filial show PLANT.")
        .example("filial genes");
  }

  /**
   * The answer.
   *
   * @param genes what was found
   */
  record Told(Genes genes) implements Answer {
    @Override
    public Object json() {
      return genes;
    }

    @Override
    public void show(Screen screen) {
      if (genes.genes().isEmpty()) {
        screen.say("No gene was declared yet.");
      }
      Table table = new Table().column("gene").column("alleles").column("");
      genes.genes().forEach(gene -> table.row(gene.locus(), alleles(gene), where(gene)));
      screen.table(table);
      genes.models().forEach(model -> screen.say(model.text() + "."));
      for (Carried carried : genes.profiles()) {
        screen.field(carried.taxon(), text(carried));
      }
      if (genes.genes().isEmpty()) {
        screen.next("filial gene NAME ALLELES, as: filial gene tips T t");
      }
    }

    private static String alleles(LocusDeclared gene) {
      return String.join(", ", gene.alleles());
    }

    private static String where(LocusDeclared gene) {
      List<String> parts = new ArrayList<>();
      if (gene.cytoplasmic()) {
        parts.add("handed on by the seed parent alone");
      }
      if (gene.chromosome() != null && gene.centimorgans() != null) {
        parts.add(
            "chromosome "
                + gene.chromosome()
                + " at "
                + gene.centimorgans().toPlainString()
                + " cM");
      }
      if (gene.linkedTo() != null && gene.recombination() != null) {
        parts.add("next to " + gene.linkedTo() + ", " + ChanceWords.percent(gene.recombination()));
      }
      if (gene.incompatibility()) {
        parts.add(
            "refuses its own pollen"
                + (gene.leak() == null ? "" : ", leaking " + ChanceWords.percent(gene.leak()))
                + (gene.selfFertile().isEmpty()
                    ? ""
                    : ", save " + String.join(", ", gene.selfFertile())));
      }
      weights(parts, "eggs", gene.eggs());
      weights(parts, "pollen", gene.pollen());
      if (gene.remark() != null) {
        parts.add(gene.remark());
      }
      return String.join("; ", parts);
    }

    private static void weights(List<String> parts, String what, Map<String, Fraction> weights) {
      weights.forEach(
          (allele, weight) -> parts.add(what + " with " + allele + " counting " + weight));
    }

    private static String text(Carried carried) {
      List<String> parts = new ArrayList<>();
      carried.frequencies().forEach((gene, alleles) -> parts.add(gene + " " + text(alleles)));
      if (!carried.pairing().isEmpty()) {
        parts.add(carried.pairing());
      }
      if (!carried.map().isEmpty()) {
        parts.add(carried.map());
      }
      return String.join("; ", parts);
    }

    private static String text(Map<String, Fraction> alleles) {
      List<String> parts = new ArrayList<>();
      alleles.forEach(
          (allele, frequency) ->
              parts.add(
                  frequency.isOne() ? allele : allele + " " + ChanceWords.percent(frequency)));
      return String.join(", ", parts);
    }
  }

  @Override
  public Answer run(Bench bench) {
    return register.read(bench, view -> new Told(GenesQuestion.of(view).ask()));
  }
}
