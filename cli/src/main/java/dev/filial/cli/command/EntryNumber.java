package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;

/** The number of an entry, as people type it: {@code 12}, {@code #12}. */
final class EntryNumber {

  /** Reads one. */
  static final Reading<Long> READING =
      (text, bench) -> {
        String digits = text.strip().startsWith("#") ? text.strip().substring(1) : text.strip();
        if (!isNumber(digits)) {
          throw new IllegalArgumentException(
              "\"" + text + "\" is not the number of an entry; filial history lists them");
        }
        return Long.parseLong(digits);
      };

  private EntryNumber() {}

  /** Whether the text is one and not a code, which has a hyphen, or a name. */
  static boolean isNumber(String text) {
    return text.matches("[1-9]\\d{0,8}");
  }
}
