package dev.filial.cli.frame;

import dev.filial.cli.screen.Screen;
import java.util.List;
import java.util.function.Consumer;

/**
 * What a command found or did, once for a reader and once for a program. Usually a record, whose
 * components are the JSON fields.
 */
@FunctionalInterface
public interface Answer {

  /** Lays the answer out for a reader, ending with what to write on the tag or what comes next. */
  void show(Screen screen);

  /** What is written under {@code --json}: one object. */
  default Object json() {
    return this;
  }

  /** What should be known though the work was done; printed on standard error, one a line. */
  default List<String> warnings() {
    return List.of();
  }

  /** How the process ends: done, unless what was asked has the answer no. */
  default Status status() {
    return Status.DONE;
  }

  /** An answer whose JSON is a record made elsewhere. */
  static Answer of(Record json, Consumer<Screen> show) {
    return new Answer() {
      @Override
      public void show(Screen screen) {
        show.accept(screen);
      }

      @Override
      public Object json() {
        return json;
      }
    };
  }
}
