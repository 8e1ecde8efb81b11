package dev.filial.cli.screen;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Asks at the prompt for what the command line left out, where somebody sits at it. Questions go to
 * standard error, so that results stay clean.
 */
public final class Asker {

  private final Terminal terminal;

  /** Asks on this terminal. */
  public Asker(Terminal terminal) {
    this.terminal = terminal;
  }

  /** Whether there is somebody to ask; if not, every question goes unanswered. */
  public boolean canAsk() {
    return terminal.asks();
  }

  /**
   * Asks for a text, showing what an empty answer will mean.
   *
   * @param suggested taken when only Enter is pressed; without it the question is put again
   * @return the answer, or nothing if nobody can be asked or the input ended
   */
  public Optional<String> ask(String question, @Nullable String suggested) {
    if (!canAsk()) {
      return Optional.empty();
    }
    while (true) {
      String line = put(question + (suggested == null ? ": " : " [" + suggested + "]: "));
      if (line == null) {
        return Optional.empty();
      }
      if (!line.isBlank()) {
        return Optional.of(line.strip());
      }
      if (suggested != null) {
        return Optional.of(suggested);
      }
    }
  }

  /**
   * Asks for a text that may be left out.
   *
   * @return the answer, empty if only Enter was pressed; nothing if nobody can be asked or the
   *     input ended
   */
  public Optional<String> askOrSkip(String question) {
    return canAsk()
        ? Optional.ofNullable(put(question + ": ")).map(String::strip)
        : Optional.empty();
  }

  /**
   * Asks a question of yes or no.
   *
   * @param suggested what an empty answer means, and what is returned if nobody can be asked
   */
  public boolean confirm(String question, boolean suggested) {
    while (canAsk()) {
      String line = put(question + (suggested ? " [Y/n]: " : " [y/N]: "));
      if (line == null || line.isBlank()) {
        break;
      }
      switch (line.strip().toLowerCase(Locale.ROOT)) {
        case "y", "yes" -> {
          return true;
        }
        case "n", "no" -> {
          return false;
        }
        default -> terminal.err().print("Answer y or n.\n");
      }
    }
    return suggested;
  }

  private @Nullable String put(String prompt) {
    terminal.err().print(Wrap.printable(prompt));
    terminal.err().flush();
    try {
      return terminal.in().readLine();
    } catch (IOException e) {
      throw new UncheckedIOException("the answer could not be read", e);
    }
  }
}
