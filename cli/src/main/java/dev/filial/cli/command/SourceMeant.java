package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;

/**
 * Which plant a name in a pedigree is.
 *
 * @param name the name
 * @param plant a code or a name of the plant's own
 */
record SourceMeant(String name, String plant) {

  /** Reads {@code NAME=PLANT}; the last equals sign counts. */
  static final Reading<SourceMeant> READING =
      (text, bench) -> {
        int equals = text.lastIndexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
          throw new IllegalArgumentException(
              "\"" + text + "\" does not say which plant a name is; write NAME=24-003");
        }
        return new SourceMeant(
            text.substring(0, equals).strip(), text.substring(equals + 1).strip());
      };
}
