package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Checks that several statements make of their own parts. */
final class Require {

  private Require() {}

  /**
   * Checks that a text was given.
   *
   * @param property the name of the component
   */
  static void text(String property, String text) {
    Objects.requireNonNull(text, property);
    if (text.isBlank()) {
      throw new IllegalArgumentException("\"" + property + "\" is empty; say it, in a few words");
    }
  }

  static void texts(String property, List<String> texts) {
    texts.forEach(text -> text(property, text));
  }

  /** Checks that there are names of loci, each once. */
  static void loci(List<String> loci) {
    if (loci.isEmpty()) {
      throw new IllegalArgumentException("\"loci\" is empty; name the genes it is about");
    }
    texts("loci", loci);
    distinctLoci(loci);
  }

  /** Checks that no locus is named twice. */
  static void distinctLoci(Collection<String> loci) {
    Set<String> seen = new HashSet<>();
    for (String locus : loci) {
      if (!seen.add(locus.strip())) {
        throw new IllegalArgumentException(
            "the gene " + locus.strip() + " is named twice; name it once");
      }
    }
  }

  /**
   * A copy of the codes, of which there is at least one, each once.
   *
   * @param remedy what to say when there is none
   */
  static List<Code> named(List<Code> codes, String remedy) {
    List<Code> copy = List.copyOf(codes);
    distinct(copy);
    if (copy.isEmpty()) {
      throw new IllegalArgumentException(remedy);
    }
    return copy;
  }

  /** Checks that a number is only given of pots and seed lots. */
  static void numbered(List<Code> codes, @Nullable Count count) {
    for (Code code : codes) {
      if (count != null && !code.isGroup() && !code.isLot()) {
        throw new IllegalArgumentException(
            code.text() + " is one plant; a number goes with a pot or a seed lot");
      }
    }
  }

  /** Checks a number of days: a century is more than any bench waits. */
  static void days(String property, int days) {
    if (days < 1 || days > 36_500) {
      throw new IllegalArgumentException(
          "\"" + property + "\" is " + days + " days; it lies between 1 and 36500");
    }
  }

  /** Checks that no code is named twice. */
  static void distinct(List<Code> codes) {
    Set<Code> seen = new HashSet<>();
    for (Code code : codes) {
      if (!seen.add(code)) {
        throw new IllegalArgumentException(code.text() + " is named twice; name it once");
      }
    }
  }

  /** Checks that a statement names an entry. */
  static void entry(long entry) {
    if (entry < 1) {
      throw new IllegalArgumentException(
          "\"entry\" is " + entry + "; it is the number of an earlier entry, from 1 upwards");
    }
  }

  static void whole(Code code) {
    if (!code.isWhole()) {
      throw new IllegalArgumentException(
          code.text()
              + " carries a suffix; here stands a code of its own, as "
              + code.whole().text());
    }
  }

  static void lot(Code code) {
    if (!code.isLot()) {
      throw new IllegalArgumentException(
          code.text() + " is not a seed lot; one is written " + code.whole().lot(1).text());
    }
  }

  static void group(Code code) {
    if (!code.isGroup()) {
      throw new IllegalArgumentException(
          code.text() + " is not a pot; one is written " + code.whole().group(1).text());
    }
  }

  static void sowing(Code code) {
    if (!code.isSowing()) {
      throw new IllegalArgumentException(
          code.text() + " is not a sowing; one is written " + code.whole().sowing(1).text());
    }
  }

  static void shares(Fraction selfs, Fraction strays, Fraction apomixis) {
    share("selfs", selfs);
    share("strays", strays);
    share("apomixis", apomixis);
    Fraction sum = selfs.plus(strays).plus(apomixis);
    if (sum.compareTo(Fraction.ONE) > 0) {
      throw new IllegalArgumentException(
          "the shares of selfs, strays and apomixis come to " + sum + ", which exceeds 1");
    }
  }

  private static void share(String name, Fraction share) {
    if (share.signum() < 0 || share.compareTo(Fraction.ONE) > 0) {
      throw new IllegalArgumentException(
          "the share of " + name + " is " + share + "; it lies between 0 and 1");
    }
  }

  /** Checks that a number can be written out: one of a billion digits would take all memory. */
  static void measure(String what, @Nullable BigDecimal number) {
    if (number != null && (Math.abs((long) number.scale()) > 30 || number.precision() > 30)) {
      throw new IllegalArgumentException(
          "the " + what + " has more than 30 digits or decimals; nobody measures so");
    }
  }

  static void sets(String gamete, @Nullable Integer sets) {
    if (sets != null && (sets < 1 || sets > 32)) {
      throw new IllegalArgumentException(
          "a gamete (" + gamete + ") of " + sets + " chromosome sets; it carries 1 to 32");
    }
  }

  /** Checks that a measure lies in a range, its ends included. */
  static void between(String what, @Nullable BigDecimal number, int least, int most) {
    measure(what, number);
    if (number != null
        && (number.compareTo(BigDecimal.valueOf(least)) < 0
            || number.compareTo(BigDecimal.valueOf(most)) > 0)) {
      throw new IllegalArgumentException(
          "the " + what + " is " + number + "; it lies between " + least + " and " + most);
    }
  }

  static void positive(String what, @Nullable BigDecimal number) {
    measure(what, number);
    if (number != null && number.signum() <= 0) {
      throw new IllegalArgumentException("the " + what + " is " + number + "; it is above 0");
    }
  }
}
