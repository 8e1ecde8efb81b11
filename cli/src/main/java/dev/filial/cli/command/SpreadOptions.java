package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Words;
import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.answer.SpreadQuestion;
import dev.filial.core.number.Fraction;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** How far shares spread: whether it is drawn, and what it is reckoned with. */
final class SpreadOptions {

  private final BooleanSupplier drawn;
  private final Supplier<Optional<Fraction>> lessThan;
  private final Supplier<Optional<GeneticMap>> map;
  private final Supplier<Optional<Integer>> genomes;
  private final Supplier<Optional<Integer>> dice;

  SpreadOptions(Words words) {
    drawn =
        words.flag(
            "--spread", "Draw how the shares of such seedlings spread, and say what may be lost.");
    lessThan =
        words.option(
            "--less-than",
            "SHARE",
            "Say how likely a seedling has less than this of each species: 1/8, 10%.",
            RecordReadings.SHARE);
    map =
        words.option(
            "--map",
            "LENGTHS",
            "The lengths of the chromosomes of one set in centimorgans, as 120,100,80 or 11x100,"
                + " instead of those stated for the species.",
            (text, bench) -> GeneticMap.parse(text));
    genomes =
        words.option(
            "--genomes",
            "NUMBER",
            "How many genomes to drop down the pedigree; 2000 if not given, 10000 with --spread"
                + " or --less-than, and none for a large one.",
            Reading.WHOLE_NUMBER);
    dice =
        words.option(
            "--dice",
            "NUMBER",
            "Another number drops other genomes; the same, the same ones. 1 if not given.",
            Reading.WHOLE_NUMBER);
  }

  boolean isDrawn() {
    return drawn.getAsBoolean();
  }

  /** Whether more is told than the likely range. */
  boolean isToldInFull() {
    return isDrawn() || lessThan.get().isPresent();
  }

  SpreadQuestion question() {
    SpreadQuestion question = SpreadQuestion.usual();
    if (map.get().isPresent()) {
      question = question.withMap(map.get().get());
    }
    if (genomes.get().isPresent()) {
      question = question.withGenomes(genomes.get().get());
    }
    if (dice.get().isPresent()) {
      question = question.withDice(dice.get().get());
    }
    if (lessThan.get().isPresent()) {
      question = question.withLessThan(lessThan.get().get().toDouble());
    }
    return isDrawn() ? question.withDropping() : question;
  }
}
