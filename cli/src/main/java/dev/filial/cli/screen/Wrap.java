package dev.filial.cli.screen;

import java.util.ArrayList;
import java.util.List;

/**
 * Breaks text into lines no wider than asked, at spaces; a word wider than a whole line is cut.
 *
 * <p>A no-break space (U+00A0) keeps together what must not be parted, as the parts of {@code
 * 26-013E P3}, and is printed as a plain space so that the code can be copied.
 */
public final class Wrap {

  private static final char NO_BREAK_SPACE = '\u00A0';

  private Wrap() {}

  /**
   * The lines of {@code text}, each at most {@code width} columns; one empty line if there is no
   * text. Line breaks in the text are kept, runs of spaces are not.
   *
   * @throws IllegalArgumentException if {@code width} is below 2, the width of one wide character
   */
  public static List<String> lines(String text, int width) {
    if (width < 2) {
      throw new IllegalArgumentException("no text fits into " + width + " columns");
    }
    List<String> lines = new ArrayList<>();
    String clean = printable(text);
    if (DisplayWidth.isPlain(clean) && clean.length() <= width && !hasRunsOfSpaces(clean)) {
      lines.add(clean);
      return lines;
    }
    for (String paragraph : clean.split("\n", -1)) {
      wrapParagraph(paragraph, width, lines);
    }
    return lines;
  }

  /**
   * As {@link #lines}, each line after the first beginning with {@code indent} spaces, for text
   * that follows a heading of that width on its first line.
   */
  static List<String> hanging(String text, int width, int indent) {
    List<String> lines = lines(text, Math.max(2, width - indent));
    String margin = " ".repeat(indent);
    for (int i = 1; i < lines.size(); i++) {
      lines.set(i, margin + lines.get(i));
    }
    return lines;
  }

  /** The width of the widest word of {@code text}: below it, words would be cut. */
  static int widestWord(String text) {
    int widest = 0;
    for (String word : text.replace('\n', ' ').split(" ", -1)) {
      widest = Math.max(widest, DisplayWidth.of(word));
    }
    return widest;
  }

  /**
   * The text without characters that would move the cursor or change colours: what was typed into a
   * register years ago must not steer today's terminal. Line breaks stay.
   */
  public static String printable(String text) {
    if (DisplayWidth.isPlain(text)) {
      return text;
    }
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            codePoint -> {
              if (codePoint == '\t') {
                clean.append(' ');
              } else if (codePoint == '\n' || !Character.isISOControl(codePoint)) {
                clean.appendCodePoint(codePoint);
              } else if (codePoint != '\r') {
                clean.append('\uFFFD');
              }
            });
    return clean.toString();
  }

  /** The text with its double spaces kept, as a label has them between what it says. */
  public static String keepingDoubleSpaces(String text) {
    return text.replace("  ", "" + NO_BREAK_SPACE + NO_BREAK_SPACE);
  }

  private static boolean hasRunsOfSpaces(String text) {
    return text.contains("  ") || text.startsWith(" ") || text.endsWith(" ");
  }

  private static void wrapParagraph(String paragraph, int width, List<String> lines) {
    StringBuilder line = new StringBuilder();
    int used = 0;
    for (String rawWord : paragraph.split(" ", -1)) {
      if (rawWord.isEmpty()) {
        continue;
      }
      String word = rawWord.replace(NO_BREAK_SPACE, ' ');
      int wordWidth = DisplayWidth.of(word);
      if (used > 0 && used + 1 + wordWidth > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      if (wordWidth <= width) {
        line.append(word);
        used += wordWidth;
        continue;
      }
      for (String cluster : DisplayWidth.clusters(word)) {
        int clusterWidth = DisplayWidth.of(cluster);
        if (used + clusterWidth > width) {
          lines.add(line.toString());
          line.setLength(0);
          used = 0;
        }
        line.append(cluster);
        used += clusterWidth;
      }
    }
    lines.add(line.toString());
  }
}
