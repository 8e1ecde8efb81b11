package dev.filial.cli.command;

import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.core.answer.LikelyShares;
import dev.filial.core.answer.LikelyShares.Likely;
import dev.filial.core.number.Decimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What shares a real plant may carry, on the screen. */
final class LikelyTold {

  private static final double NOTHING = 1e-9;

  private LikelyTold() {}

  /** Whether any share differs from seedling to seedling. */
  static boolean varies(LikelyShares likely) {
    return likely.lines().stream().anyMatch(one -> one.standardDeviation() >= NOTHING);
  }

  /** The likely range of a taxon, as {@code 37 and 63 %}. */
  static String range(Likely one) {
    return one.standardDeviation() < NOTHING
        ? "always so"
        : Decimal.text(100 * one.low(), 0) + " and " + Decimal.percent(one.high(), 0);
  }

  /** What the ranges hold for, and how often two taxa meet. */
  static void show(Screen screen, LikelyShares likely) {
    if (likely.taxa().size() > 1 && likely.unknown() == null) {
      screen.field(
          "two species meet",
          "at "
              + Decimal.percent(likely.different(), 0)
              + " of the loci"
              + (likely.likeClass() == null ? "" : ", " + likely.likeClass()));
    }
    if (!varies(likely)) {
      return;
    }
    screen.field(
        "likely between",
        Math.round(10 * likely.chance())
            + " of 10 such seedlings; "
            + likely.map()
            + (likely.mapAssumed()
                ? " (assumed)"
                : likely.mapFrom() == null ? "" : " (" + likely.mapFrom() + ")")
            + ", "
            + (likely.genomes() == 0
                ? "by the exact standard deviation"
                : likely.genomes() + " genomes dropped"));
  }

  /** All figures. */
  static void figures(Screen screen, LikelyShares likely) {
    Table table = new Table().column("taxon").numbers("s.d.").numbers("none at a locus");
    table.numbers("lost altogether");
    Double share = likely.share();
    if (share != null) {
      table.numbers("less than " + Decimal.percent(share, 4));
    }
    for (Likely one : likely.lines()) {
      String deviation = Decimal.percent(one.standardDeviation(), 1);
      String absent = Decimal.percent(one.absentAtLocus(), 1);
      String lost = chance(one.lost(), likely.genomes());
      if (share != null) {
        table.row(one.taxon(), deviation, absent, lost, chance(one.lessThan(), likely.genomes()));
      } else {
        table.row(one.taxon(), deviation, absent, lost);
      }
    }
    screen.table(table);
  }

  /** A strip for each taxon that varies. */
  static void draw(Screen screen, LikelyShares likely) {
    for (Likely one : likely.lines()) {
      if (one.standardDeviation() >= NOTHING && !one.histogram().isEmpty()) {
        screen.say("Of 100 such seedlings, by their share of " + one.taxon() + ":");
        strip(screen, one.histogram(), likely.genomes());
      }
    }
  }

  private static void strip(Screen screen, List<Integer> counts, int genomes) {
    int first = 0;
    int last = counts.size() - 1;
    int most = 1;
    for (int count : counts) {
      most = Math.max(most, count);
    }
    // Steps that fewer than one genome in a thousand reach are left out at either end.
    while (first < last && counts.get(first) * 1000L < genomes) {
      first++;
    }
    while (last > first && counts.get(last) * 1000L < genomes) {
      last--;
    }
    int step = 100 / counts.size();
    for (int i = first; i <= last; i++) {
      int count = counts.get(i);
      screen.bar(
          pad(i * step, 2) + " to " + pad((i + 1) * step, last + 1 == counts.size() ? 3 : 2) + " %",
          (double) count / most,
          Decimal.text(100.0 * count / genomes, count * 100L < genomes ? 1 : 0));
    }
  }

  private static String pad(int percent, int digits) {
    String text = String.valueOf(percent);
    return " ".repeat(Math.max(0, digits - text.length())) + text;
  }

  /** A chance that was counted, no finer than it was counted. */
  private static String chance(@Nullable Double chance, int genomes) {
    if (chance == null) {
      return "not asked";
    }
    if (chance == 0) {
      return "0 of " + genomes;
    }
    return Decimal.percent(chance, chance < 0.0005 ? 2 : 1);
  }
}
