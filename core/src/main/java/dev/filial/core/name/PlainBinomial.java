package dev.filial.core.name;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Reads names of a genus and an epithet in plain letters, as nearly all names in a register are,
 * without patterns: a question about ancestry reads one for every founder.
 */
final class PlainBinomial {

  /** Shorter words, and those that begin so, may be terms of rank, qualifiers or abbreviations. */
  private static final int SHORTEST = 4;

  private static final List<String> TERMS = List.of("sub", "var", "form", "hyb", "n");

  /** What is no epithet among words of four letters. */
  private static final List<String> SHORT_TERMS = List.of(" hort", " auct", " apud");

  private PlainBinomial() {}

  /** The name, or null where the text is not plainly one, be it a name or not. */
  static @Nullable TaxonName read(String text) {
    if (!isOne(text)) {
      return null;
    }
    int space = text.indexOf(' ');
    String epithet = text.substring(space + 1);
    return new TaxonName(
        false,
        text.substring(0, space),
        "",
        List.of(new TaxonName.Epithet(Rank.SPECIES, false, epithet, "")),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** Whether the text is plainly a binomial. */
  static boolean isOne(String text) {
    int space = text.indexOf(' ');
    if (space < 2
        || text.length() - space - 1 < SHORTEST
        || !isCapital(text.charAt(0))
        || !isSmall(text, 1, space)
        || !isSmall(text, space + 1, text.length())) {
      return false;
    }
    for (String term : TERMS) {
      if (text.startsWith(term, space + 1)) {
        return false;
      }
    }
    for (String term : SHORT_TERMS) {
      if (text.endsWith(term)) {
        return false;
      }
    }
    return true;
  }

  /** Whether {@code text} is a genus of plain letters without a hyphen. */
  static boolean isGenus(String text) {
    return text.length() > 1 && isCapital(text.charAt(0)) && isSmall(text, 1, text.length());
  }

  /** Whether {@code text} is an epithet of plain letters without a hyphen. */
  static boolean isEpithet(String text) {
    return text.length() > 1 && isSmall(text, 0, text.length());
  }

  private static boolean isCapital(char c) {
    return c >= 'A' && c <= 'Z';
  }

  private static boolean isSmall(String text, int from, int to) {
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c < 'a' || c > 'z') {
        return false;
      }
    }
    return true;
  }
}
