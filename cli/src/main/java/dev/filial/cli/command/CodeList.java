package dev.filial.cli.command;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;

/** Codes in a row, in few words: {@code 24-007V-1 to -6, 24-007V-9}. */
final class CodeList {

  private static final char NO_BREAK_SPACE = '\u00A0';

  private CodeList() {}

  static String text(List<Code> codes) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < codes.size(); ) {
      int end = i;
      while (end + 1 < codes.size() && follows(codes.get(end), codes.get(end + 1))) {
        end++;
      }
      // Two numbers next to each other are as short written out.
      if (end - i >= 2) {
        parts.add(whole(codes.get(i)) + " to " + codes.get(end).part().suffix().strip());
        i = end + 1;
      } else {
        parts.add(whole(codes.get(i)));
        i++;
      }
    }
    return String.join(", ", parts);
  }

  /** A code is never parted at the end of a line. */
  private static String whole(Code code) {
    return code.text().replace(' ', NO_BREAK_SPACE);
  }

  private static boolean follows(Code one, Code next) {
    return !one.isWhole()
        && one.whole().equals(next.whole())
        && one.part().getClass().equals(next.part().getClass())
        && next.part().number() == one.part().number() + 1;
  }
}
