package dev.filial.cli.command;

import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.Influence;
import dev.filial.core.number.Decimal;
import java.util.List;

/** Odds that are no exact fractions, in words and figures. */
final class LikelyWords {

  /** More entries than these move nobody's mind. */
  private static final int MOST_REASONS = 12;

  private static final double NEAR = 1e-12;

  /** Chances that differ by less are alike. */
  private static final double ROUNDING = 1e-9;

  private LikelyWords() {}

  /** As {@code 66.7 %}; never 0 or 100 of what is not. */
  static String percent(double chance) {
    if (chance >= 1 - NEAR) {
      return "100\u00a0%";
    }
    if (chance <= 0) {
      return "0\u00a0%";
    }
    double percent = 100 * chance;
    for (int decimals = 1; decimals <= 8; decimals++) {
      String text = Decimal.text(percent, decimals);
      if (!text.equals("100") && !text.equals("0")) {
        return text + "\u00a0%";
      }
    }
    return chance < 0.5 ? "nearly 0\u00a0%" : "nearly 100\u00a0%";
  }

  /** The same with a standard error beside it where it was drawn. */
  static String percent(double chance, double error) {
    return error > 0 ? percent(chance) + " ± " + Decimal.text(100 * error, 1) : percent(chance);
  }

  /**
   * As {@code certainly}, {@code almost certainly}, {@code most likely}, {@code as likely as not}.
   */
  static String surely(double chance) {
    if (chance >= 1 - NEAR) {
      return "certainly";
    }
    if (chance >= 0.99) {
      return "almost certainly";
    }
    return chance > 0.5 ? "most likely" : "perhaps";
  }

  /** Whether the likeliest is no likelier than the next. */
  static boolean isTie(double likeliest, double next) {
    return likeliest - next < ROUNDING;
  }

  /** The entries that moved an answer. */
  static void why(Screen screen, List<Influence> why, String what) {
    if (why.isEmpty()) {
      screen.say("No entry by itself moved " + what + ".");
      return;
    }
    screen.say("What moved " + what + ", and what it would be without that entry:");
    Table table =
        new Table().numbers("entry").column("day").column("what it says").numbers("without");
    why.stream()
        .limit(MOST_REASONS)
        .forEach(
            one ->
                table.row(
                    String.valueOf(one.entry()),
                    one.date() == null ? "" : one.date().toString(),
                    one.text(),
                    percent(one.without())));
    screen.table(table);
    if (why.size() > MOST_REASONS) {
      screen.say("… and " + (why.size() - MOST_REASONS) + " more that moved it less.");
    }
  }
}
