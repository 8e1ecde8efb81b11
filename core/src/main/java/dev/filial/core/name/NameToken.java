package dev.filial.core.name;

import java.util.ArrayList;
import java.util.List;

/**
 * A word of a name, a hybrid sign, a cultivar in quotes, or a sex sign.
 *
 * @param kind which of them
 * @param text the word, or the cultivar without its quotes
 * @param offset where it begins in the text
 * @param glued of a hybrid sign: whether the next word follows without a space
 */
record NameToken(Kind kind, String text, int offset, boolean glued) {

  /** The kinds of token. */
  enum Kind {
    WORD,
    CROSS,
    CULTIVAR,
    SEED,
    POLLEN
  }

  private static final String QUOTES = "'‘’‛`´′";
  private static final int LONGEST = 1000;

  /** A word that begins with a small letter, an epithet or an author's particle. */
  boolean isLower() {
    return kind == Kind.WORD && Character.isLowerCase(text.codePointAt(0));
  }

  boolean isWord(String word) {
    return kind == Kind.WORD && text.equals(word);
  }

  static List<NameToken> of(String text) {
    if (text.length() > LONGEST) {
      throw new NameException(
          text, LONGEST, "a name of more than " + LONGEST + " characters is none.");
    }
    List<NameToken> tokens = new ArrayList<>();
    int i = 0;
    while (i < text.length()) {
      char c = text.charAt(i);
      if (isSpace(c)) {
        i++;
      } else if (QUOTES.indexOf(c) >= 0) {
        int end = closingQuote(text, i);
        tokens.add(cultivar(text, i, end));
        i = end + 1;
      } else if (c == '"' || c == '“' || c == '„') {
        throw new NameException(
            text, column(text, i), "a cultivar stands in single quotes: 'Name'.");
      } else if (c == '×') {
        boolean glued = i + 1 < text.length() && !isSpace(text.charAt(i + 1));
        tokens.add(new NameToken(Kind.CROSS, "×", i, glued));
        i++;
      } else if (c == '♀' || c == '♂') {
        tokens.add(new NameToken(c == '♀' ? Kind.SEED : Kind.POLLEN, "" + c, i, false));
        i++;
      } else {
        i = word(text, i, tokens);
      }
    }
    return tokens;
  }

  /** The column of an offset, in code points from 1. */
  static int column(String text, int offset) {
    return text.codePointCount(0, offset) + 1;
  }

  private static int word(String text, int start, List<NameToken> tokens) {
    int end = start;
    while (end < text.length()
        && !isSpace(text.charAt(end))
        && "×♀♂".indexOf(text.charAt(end)) < 0) {
      end++;
    }
    String word = text.substring(start, end);
    if (word.chars().anyMatch(Character::isISOControl)) {
      throw new NameException(text, column(text, start), "a control character within a name.");
    }
    if (word.equals("x") || word.equals("X")) {
      tokens.add(new NameToken(Kind.CROSS, "×", start, false));
    } else if (word.equals("(seed)") || word.equals("(pollen)")) {
      // What a formula in plain ASCII has for the sex signs.
      Kind kind = word.equals("(seed)") ? Kind.SEED : Kind.POLLEN;
      tokens.add(new NameToken(kind, word, start, false));
    } else if (word.matches("x\\p{Lu}\\p{Ll}.*")) {
      tokens.add(new NameToken(Kind.CROSS, "×", start, true));
      tokens.add(new NameToken(Kind.WORD, word.substring(1), start + 1, false));
    } else {
      tokens.add(new NameToken(Kind.WORD, word, start, false));
    }
    return end;
  }

  private static NameToken cultivar(String text, int start, int end) {
    String name = text.substring(start + 1, end).strip().replaceAll("[\\s\u00a0]+", " ");
    if (name.isEmpty()) {
      throw new NameException(
          text, column(text, start), "nothing stands between the quotes of the cultivar.");
    }
    return new NameToken(Kind.CULTIVAR, name, start, false);
  }

  /** The first quote that a space or the end follows: an apostrophe has a letter after it. */
  private static int closingQuote(String text, int start) {
    for (int i = start + 1; i < text.length(); i++) {
      if (QUOTES.indexOf(text.charAt(i)) >= 0
          && (i + 1 == text.length() || isSpace(text.charAt(i + 1)))) {
        return i;
      }
    }
    throw new NameException(
        text, column(text, start), "the quote of the cultivar is not closed. Write 'Name'.");
  }

  private static boolean isSpace(char c) {
    return Character.isWhitespace(c) || c == '\u00a0' || c == '\u2009' || c == '\u202f';
  }
}
