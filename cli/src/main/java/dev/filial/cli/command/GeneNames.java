package dev.filial.cli.command;

import dev.filial.cli.frame.CommandLine;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.GeneReading;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.RegisterView;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Names of genes as they are typed, and {@code --genes}, which says those that are meant. */
final class GeneNames {

  private final Supplier<Optional<String>> typed;

  /** Adds {@code --genes}. */
  GeneNames(Words words, String meaning) {
    typed = words.option("--genes", "A,B,...", meaning, RecordReadings.LINE);
  }

  /**
   * The genes named, as they were declared; none when none were named.
   *
   * @throws Trouble if there is none of a name
   */
  List<LocusDeclared> in(RegisterView view) {
    return typed.get().stream()
        .flatMap(text -> parts(text).stream())
        .map(name -> required(view, name))
        .toList();
  }

  /** The same by name; failing that, those whose alleles the texts are made of. */
  List<String> meantBy(RegisterView view, List<String> texts) {
    List<String> named = in(view).stream().map(gene -> gene.locus().strip()).toList();
    return named.isEmpty() ? GeneReading.in(view).meant(texts) : named;
  }

  /** What stands between commas. */
  static List<String> parts(String text) {
    return Arrays.stream(text.split(",", -1)).map(RecordReadings::line).toList();
  }

  /**
   * The gene of that name.
   *
   * @throws Trouble if there is none; the remedy is how to declare it
   */
  static LocusDeclared required(RegisterView view, String name) {
    GeneReading genes = GeneReading.in(view);
    return genes
        .called(name)
        .orElseThrow(
            () -> {
              // Written as its alleles, R>r or R,r: these are known then, and the name is not.
              String[] alleles = name.split("[>,/\\s]+", -1);
              String known = genes.known();
              return Trouble.refused(
                  "no gene is called \""
                      + name
                      + "\""
                      + (known.isEmpty() ? "" : "; there are " + known),
                  "Declare it first: filial gene "
                      + (alleles.length > 1
                          ? "NAME " + String.join(" ", alleles)
                          : CommandLine.quoted(name) + " ALLELES"));
            });
  }
}
