package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.screen.Screen;

/** An answer that is laid out for a reader, or written as rows for a spreadsheet. */
interface CsvOrTable extends Answer {

  /** What was found: the JSON. */
  Object found();

  /** Whether it is written for a spreadsheet. */
  boolean csv();

  /** All of it as comma-separated values. */
  String rows();

  /** Lays it out for a reader. */
  void lay(Screen screen);

  @Override
  default Object json() {
    return found();
  }

  @Override
  default void show(Screen screen) {
    if (csv()) {
      screen.raw(rows());
    } else {
      lay(screen);
    }
  }
}
