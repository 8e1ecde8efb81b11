package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import dev.filial.core.answer.Hope;
import dev.filial.core.answer.SeedRate;
import dev.filial.core.answer.Wanted;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.function.Supplier;

/** {@code filial howmany}. */
public final class HowmanyCommand implements BenchCommand {

  private final Supplier<Fraction> chance;
  private final WantedWords.Amount amount;
  private final OpenRegister register;

  /** Declares its words. */
  public HowmanyCommand(Words words) {
    chance =
        words.argument(
            "CHANCE", "How likely a seedling is the wanted one: 1/4, 25%.", RecordReadings.SHARE);
    amount = new WantedWords.Amount(words);
    register = OpenRegister.toRead(words);
    words
        .describe(
            "Says how many seeds to sow to have enough of what comes up so often. What a cross throws"
                + " is said by: filial odds.")
        .example("filial howmany 1/4 --at-least 3 --germination 18/25");
  }

  /**
   * The answer.
   *
   * @param hope what was found
   */
  record Told(Hope hope) implements Answer {
    @Override
    public Object json() {
      return hope;
    }

    @Override
    public void show(Screen screen) {
      HopeWords.show(screen, hope);
    }
  }

  @Override
  public Answer run(Bench bench) {
    if (chance.get().toDouble() <= 0) {
      throw Trouble.usage(
          "what has no chance comes up from no number of seeds", "Give a chance above 0, as 1/4.");
    }
    List<SeedRate> rates =
        amount.isLookedUp()
            ? register.read(bench, view -> amount.rates(view, null))
            : amount.rates(bench);
    return new Told(
        Hope.of(
            "what you want",
            chance.get(),
            Fraction.ONE,
            new Wanted(List.of(), null, List.of(), amount.atLeast(), amount.certainty(), rates)));
  }
}
