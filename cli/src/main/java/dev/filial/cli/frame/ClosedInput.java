package dev.filial.cli.frame;

import java.io.Reader;

/**
 * Standard input where whoever started the program closed it. The number of the closed stream is
 * then given to the next file that Java opens for itself, so nothing may be read from it.
 */
public final class ClosedInput extends Reader {

  @Override
  public int read(char[] into, int offset, int length) {
    throw Trouble.file(
        "standard input is closed, and nothing can be read from it",
        "Name a file instead, or leave standard input open.");
  }

  @Override
  public void close() {}
}
