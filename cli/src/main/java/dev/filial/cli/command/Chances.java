package dev.filial.cli.command;

import dev.filial.core.number.Fraction;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Shares of a whole as people type them: {@code red:80%,plain}, the last getting what is left. */
final class Chances {

  private Chances() {}

  /**
   * Reads names with their shares, commas between; one of them may go without and has the rest.
   *
   * @throws IllegalArgumentException if a name is missing or there twice, two go without a share,
   *     or the shares do not come to 1
   */
  static Map<String, Fraction> read(String text) {
    Map<String, Fraction> shares = new LinkedHashMap<>();
    @Nullable String rest = null;
    Fraction left = Fraction.ONE;
    for (String part : text.split(",", -1)) {
      int colon = part.lastIndexOf(':');
      String name = (colon < 0 ? part : part.substring(0, colon)).strip();
      if (name.isEmpty()) {
        throw new IllegalArgumentException(
            "\"" + text + "\" has nothing before a comma or a colon");
      }
      if (colon < 0 && rest != null) {
        throw new IllegalArgumentException(
            "\""
                + text
                + "\" has no share of "
                + rest
                + " or "
                + name
                + "; write "
                + rest
                + ":1/2");
      }
      if (colon < 0) {
        rest = name;
      }
      Fraction share = colon < 0 ? Fraction.ZERO : Fraction.parse(part.substring(colon + 1));
      if (share.signum() < 0) {
        throw new IllegalArgumentException(
            "a share of " + share + " of " + name + "; it lies between 0 and 1");
      }
      left = left.minus(share);
      if (shares.put(name, share) != null) {
        throw new IllegalArgumentException("\"" + text + "\" names " + name + " twice");
      }
    }
    if (left.signum() < 0 || (rest == null && !left.isZero())) {
      throw new IllegalArgumentException(
          "the shares in \""
              + text
              + "\" come to "
              + Fraction.ONE.minus(left)
              + "; together they are 1");
    }
    if (rest != null) {
      shares.put(rest, left);
    }
    return shares;
  }
}
