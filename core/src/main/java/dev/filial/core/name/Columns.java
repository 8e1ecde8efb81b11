package dev.filial.core.name;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How many columns of a label or a terminal a text takes: one for each character as a reader sees
 * it (grapheme cluster), so that a letter with its accents is one; two for emoji and East Asian
 * wide characters; none for control characters.
 */
final class Columns {
  private static final Pattern CLUSTER = Pattern.compile("\\X");

  /** First and last of the blocks of wide characters, after the East Asian Width property. */
  private static final int[][] WIDE = {
    {0x1100, 0x115F}, {0x2E80, 0x303E}, {0x3041, 0xA4CF}, {0xAC00, 0xD7A3}, {0xF900, 0xFAFF},
    {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1F64F}, {0x1F680, 0x1F6FF},
    {0x1F900, 0x1FAFF}, {0x20000, 0x3FFFD}
  };

  private static final int EMOJI_PRESENTATION = 0xFE0F;

  /** The same as a measure, a column being 1. */
  static final LineMeasure MEASURE =
      new LineMeasure() {
        @Override
        public double width(String text) {
          return Columns.width(text);
        }

        @Override
        public String start(String text, double room) {
          return Columns.start(text, (int) Math.floor(room));
        }
      };

  private Columns() {}

  static int width(String text) {
    int width = 0;
    Matcher clusters = CLUSTER.matcher(text);
    while (clusters.find()) {
      width += widthOfCluster(clusters.group());
    }
    return width;
  }

  /** The longest beginning of {@code text} that takes at most {@code columns}. */
  static String start(String text, int columns) {
    int width = 0;
    Matcher clusters = CLUSTER.matcher(text);
    while (clusters.find()) {
      width += widthOfCluster(clusters.group());
      if (width > columns) {
        return text.substring(0, clusters.start());
      }
    }
    return text;
  }

  private static int widthOfCluster(String cluster) {
    int first = cluster.codePointAt(0);
    if (Character.isISOControl(first)) {
      return 0;
    }
    return isWide(first) || cluster.indexOf(EMOJI_PRESENTATION) >= 0 ? 2 : 1;
  }

  private static boolean isWide(int codePoint) {
    for (int[] block : WIDE) {
      if (codePoint >= block[0] && codePoint <= block[1]) {
        return true;
      }
    }
    return false;
  }
}
