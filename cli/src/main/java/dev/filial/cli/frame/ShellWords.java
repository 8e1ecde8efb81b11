package dev.filial.cli.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * Parts a line into words as a POSIX shell does (POSIX.1-2017, Shell Command Language, 2.2 and
 * 2.3): spaces and tabs part words; single quotes keep everything, double quotes everything but
 * {@code \"}, {@code \\}, {@code \$} and {@code \`}; a backslash keeps the character after it; a
 * {@code #} at the beginning of a word begins a remark. Nothing else means anything: no variable,
 * no pattern and no pipe.
 */
public final class ShellWords {

  /**
   * A word.
   *
   * @param text what it says
   * @param bare whether it was written without quotes and backslashes
   */
  public record Word(String text, boolean bare) {}

  private final String line;
  private int at;

  private ShellWords(String line) {
    this.line = line;
  }

  /**
   * The words of a line; none if it is empty or all remark.
   *
   * @throws IllegalArgumentException if a quote is not closed, or a backslash ends the line
   */
  public static List<Word> of(String line) {
    return new ShellWords(line).words();
  }

  private List<Word> words() {
    List<Word> words = new ArrayList<>();
    while (true) {
      while (at < line.length() && isSpace(line.charAt(at))) {
        at++;
      }
      if (at == line.length() || line.charAt(at) == '#') {
        return words;
      }
      words.add(word());
    }
  }

  private Word word() {
    int from = at;
    while (at < line.length() && isPlain(line.charAt(at))) {
      at++;
    }
    if (at == line.length() || isSpace(line.charAt(at))) {
      return new Word(line.substring(from, at), true);
    }
    StringBuilder text = new StringBuilder(line.substring(from, at));
    while (at < line.length() && !isSpace(line.charAt(at))) {
      char next = line.charAt(at);
      switch (next) {
        case '\'' -> single(text);
        case '"' -> twofold(text);
        case '\\' -> {
          at++;
          if (at == line.length()) {
            throw new IllegalArgumentException(
                "a backslash ends the line; an entry stands on one line");
          }
          text.append(line.charAt(at++));
        }
        default -> {
          text.append(next);
          at++;
        }
      }
    }
    return new Word(text.toString(), false);
  }

  private void single(StringBuilder text) {
    int end = line.indexOf('\'', at + 1);
    if (end < 0) {
      throw unclosed("'", at);
    }
    text.append(line, at + 1, end);
    at = end + 1;
  }

  private void twofold(StringBuilder text) {
    int begun = at++;
    while (at < line.length() && line.charAt(at) != '"') {
      if (line.charAt(at) == '\\' && at + 1 < line.length() && isKept(line.charAt(at + 1))) {
        at++;
      }
      text.append(line.charAt(at++));
    }
    if (at == line.length()) {
      throw unclosed("\"", begun);
    }
    at++;
  }

  private static IllegalArgumentException unclosed(String quote, int index) {
    return new IllegalArgumentException(
        "the "
            + quote
            + " at column "
            + (index + 1)
            + " is not closed; a name with a ' in it stands in double quotes");
  }

  private static boolean isKept(char after) {
    return after == '"' || after == '\\' || after == '$' || after == '`';
  }

  private static boolean isSpace(char character) {
    return character == ' ' || character == '\t';
  }

  private static boolean isPlain(char character) {
    return !isSpace(character) && character != '\'' && character != '"' && character != '\\';
  }
}
