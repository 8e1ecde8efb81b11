package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.GenesQuestion;
import dev.filial.core.answer.Weighing;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Of which traits what was seen is weighed, and how. */
final class WeighingOptions {

  private final Supplier<List<String>> traits;
  private final Supplier<Optional<Fraction>> misread;
  private final Supplier<Optional<String>> strangers;
  private Supplier<Optional<Integer>> draws = Optional::empty;
  private Supplier<Optional<Integer>> dice = Optional::empty;

  WeighingOptions(Words words) {
    traits =
        words.repeatedOption(
            "--trait",
            "TRAIT",
            "A trait with a model; once for each. All that have one if none is given.",
            RecordReadings.LINE);
    misread =
        words.option(
            "--misread",
            "SHARE",
            "How often a state is misread or written down wrong, as 1%; never, if not given.",
            RecordReadings.SHARE);
    strangers =
        words.option(
            "--strangers",
            "TAXON",
            "What plants nobody knows, and their pollen, are taken to be; otherwise nothing is known"
                + " of them.",
            RecordReadings.LINE);
  }

  /** Adds {@code --draws} and {@code --dice}, for odds that can be drawn. */
  WeighingOptions withDraws(Words words) {
    draws =
        words.option(
            "--draws",
            "NUMBER",
            "Where the exact odds would take too long, draw so many times in each of three runs, 40"
                + " or more, and give them with their error.",
            Reading.WHOLE_NUMBER);
    dice =
        words.option(
            "--dice",
            "NUMBER",
            "With --draws: another number draws otherwise; the same gives the same. 1 if not given.",
            Reading.WHOLE_NUMBER);
    return this;
  }

  /** The traits that were named; all that have a model if none was. */
  List<String> traits(RegisterView view) {
    if (!traits.get().isEmpty()) {
      return traits.get();
    }
    List<String> all = GenesQuestion.modelled(view);
    if (all.isEmpty()) {
      throw new RegisterRefusal(
          "of no trait it is said how it is inherited, so what was seen tells nothing of genes;"
              + " declare a gene and a model of a trait first");
    }
    return all;
  }

  /** Those that were named, together; all that have a model, each by itself, if none was. */
  List<List<String>> sets(RegisterView view) {
    return traits.get().isEmpty()
        ? traits(view).stream().map(List::of).toList()
        : List.of(traits.get());
  }

  Weighing weighing(RegisterView view) {
    Weighing weighing = Weighing.PLAIN;
    if (misread.get().isPresent()) {
      weighing = weighing.withMisreading(misread.get().get().toDouble());
    }
    if (strangers.get().isPresent()) {
      weighing = weighing.withStrangers(view.accepted(strangers.get().get()).name());
    }
    return draws.get().isPresent()
        ? weighing.withSampling(draws.get().get(), dice.get().orElse(1))
        : weighing;
  }
}
