package dev.filial.cli.command;

import dev.filial.cli.screen.Screen;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.Hope;
import dev.filial.core.answer.SeedRate;
import dev.filial.core.number.Fraction;

/** What it takes to have a wanted seedling, in a sentence. */
final class HopeWords {

  private HopeWords() {}

  /** Where nothing is said of seedlings that die. */
  static void show(Screen screen, Hope hope) {
    show(screen, hope, Fraction.ZERO);
  }

  /**
   * The same.
   *
   * @param lost the share of seedlings that die before they can be looked at: the chance is of
   *     those that live, and the number of all that are raised
   */
  static void show(Screen screen, Hope hope, Fraction lost) {
    Integer seedlings = hope.seedlings();
    if (seedlings == null) {
      screen.say("No seedling of this cross can be " + hope.what() + ", however many are raised.");
      return;
    }
    screen.say(
        ChanceWords.about(hope.chance())
            + (lost.isZero() ? "" : " of those that live")
            + " will be "
            + hope.what()
            + (lost.isZero()
                ? ""
                : ", and "
                    + ChanceWords.oneIn(lost)
                    + " of the seedlings will die before they can be looked at")
            + "; "
            + toDo(hope, seedlings)
            + ".");
    for (SeedRate rate : hope.rates()) {
      screen.field(
          rate.what(),
          rate.text()
              + ", "
              + rate.from()
              + (rate.counted().isPresent()
                  ? "; a count is no certainty, so a few more seeds are allowed for"
                  : ""));
    }
    if (hope.seeds() != null) {
      screen.field("seedlings", seedlings + " would do if all were raised");
    }
  }

  private static String toDo(Hope hope, int enough) {
    String sure =
        " to be "
            + ChanceWords.certainty(hope.certainty())
            + " sure of at least "
            + (hope.atLeast() == 1 ? "one" : hope.atLeast());
    return hope.seeds() == null
        ? "raise " + seedlings(enough) + sure
        : "sow " + hope.seeds() + (hope.seeds() == 1 ? " seed" : " seeds") + sure;
  }

  private static String seedlings(int number) {
    return number == 1 ? "1 seedling" : number + " seedlings";
  }
}
