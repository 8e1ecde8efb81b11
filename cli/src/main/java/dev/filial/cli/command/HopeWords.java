package dev.filial.cli.command;

import dev.filial.cli.screen.Screen;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.Hope;
import dev.filial.core.answer.SeedRate;

/** What it takes to have a wanted seedling, in a sentence. */
final class HopeWords {

  private HopeWords() {}

  static void show(Screen screen, Hope hope) {
    Integer seedlings = hope.seedlings();
    if (seedlings == null) {
      screen.say("No seedling of this cross can be " + hope.what() + ", however many are raised.");
      return;
    }
    screen.say(
        ChanceWords.about(hope.chance())
            + " will be "
            + hope.what()
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
