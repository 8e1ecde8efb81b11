package dev.filial.cli.screen;

import java.util.Locale;
import java.util.function.LongSupplier;

/**
 * A line on standard error that says how far a long command is, drawn over itself. Where standard
 * error is no terminal, nothing is drawn, so that no log fills with it.
 */
public final class ProgressLine {

  private static final int BAR = 30;

  /** Redrawn no more often than the eye follows. */
  private static final long NANOSECONDS = 100_000_000L;

  private final Terminal terminal;
  private final LongSupplier clock;
  private long drawn;
  private boolean isThere;

  /** A line on the terminal's standard error. */
  public ProgressLine(Terminal terminal) {
    this(terminal, System::nanoTime);
  }

  /**
   * The same by another clock.
   *
   * @param clock nanoseconds from any beginning
   */
  ProgressLine(Terminal terminal, LongSupplier clock) {
    this.terminal = terminal;
    this.clock = clock;
    this.drawn = clock.getAsLong();
  }

  /**
   * Draws it.
   *
   * @param count how many are done
   * @param what of what
   * @param share 0 to 1
   */
  public void at(long count, String what, double share) {
    long now = clock.getAsLong();
    if (!terminal.progress() || now - drawn < NANOSECONDS) {
      return;
    }
    drawn = now;
    isThere = true;
    int filled = (int) Math.round(share * BAR);
    terminal
        .err()
        .print(
            "\r["
                + "#".repeat(filled)
                + " ".repeat(BAR - filled)
                + "] "
                + Math.round(share * 100)
                + " %  "
                + String.format(Locale.ROOT, "%,d", count)
                + " "
                + what);
    terminal.err().flush();
  }

  /** Takes the line away. */
  public void clear() {
    if (isThere) {
      terminal.err().print("\r\u001B[K");
      terminal.err().flush();
      isThere = false;
    }
  }
}
