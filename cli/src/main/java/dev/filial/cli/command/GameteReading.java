package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Restitution;
import dev.filial.core.number.Fraction;
import java.util.Locale;

/** How a parent's gametes form, as it is typed. */
final class GameteReading {

  /**
   * {@code 1} or {@code 2} sets of a triploid's three, {@code first:9/10} or {@code second:1/5} for
   * an unreduced gamete, {@code tetrasomic:1/7} for a tetraploid.
   */
  static final Reading<Meiosis> MEIOSIS =
      (text, bench) -> {
        String typed = text.strip().toLowerCase(Locale.ROOT);
        if (typed.equals("1") || typed.equals("2")) {
          return new Meiosis.OfTriploid(Integer.parseInt(typed));
        }
        if (typed.equals("tetrasomic")) {
          return Meiosis.tetrasomic(Fraction.ZERO);
        }
        int colon = typed.indexOf(':');
        String how = colon < 0 ? typed : typed.substring(0, colon);
        if (colon > 0) {
          Fraction share = RecordReadings.SHARE.read(typed.substring(colon + 1), bench);
          if (how.equals("first")) {
            return new Meiosis.Unreduced(Restitution.FIRST_DIVISION, share);
          }
          if (how.equals("second")) {
            return new Meiosis.Unreduced(Restitution.SECOND_DIVISION, share);
          }
          if (how.equals("tetrasomic")) {
            return Meiosis.tetrasomic(share);
          }
        }
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" does not say how gametes form; write 1 or 2 (sets of a triploid), first:0.9 or"
                + " second:0.2 (unreduced, and how often a hybrid pair of alleles stays together), or"
                + " tetrasomic:1/7");
      };

  private GameteReading() {}
}
