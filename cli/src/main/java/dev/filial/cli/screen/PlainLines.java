package dev.filial.cli.screen;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.jspecify.annotations.Nullable;

/** Lines read as they come, on a terminal that can do no more: no keys, no proposals. */
public final class PlainLines implements TypedLines {

  private final Terminal terminal;

  /** Reads from this terminal's input and prompts on its standard error. */
  public PlainLines(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public @Nullable String words(String prompt, Completion completion) {
    return text(prompt, completion);
  }

  @Override
  public @Nullable String text(String prompt, Completion completion) {
    terminal.err().print(Wrap.printable(prompt));
    terminal.err().flush();
    try {
      return terminal.in().readLine();
    } catch (IOException e) {
      throw new UncheckedIOException("the line could not be read", e);
    }
  }

  @Override
  public void close() {}
}
