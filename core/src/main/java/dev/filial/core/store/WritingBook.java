package dev.filial.core.store;

import dev.filial.core.register.Accepted;
import dev.filial.core.register.Clerk;
import dev.filial.core.register.Delta;
import dev.filial.core.register.ForwardingView;
import dev.filial.core.register.Statement;
import java.time.Instant;

/** A book while it is being written in; nothing more is taken once that is over. */
abstract class WritingBook extends ForwardingView implements Book, AutoCloseable {

  private final String by;
  private final Instant time;
  private boolean over;

  WritingBook(String by, Instant time) {
    this.by = by;
    this.time = time;
  }

  /** Keeps what was accepted. */
  abstract void apply(Delta delta);

  @Override
  public final Accepted append(Statement statement) {
    return append(statement, by, time);
  }

  @Override
  public final Accepted append(Statement statement, String writer, Instant written) {
    if (over) {
      throw new IllegalStateException("this book was closed; begin another write");
    }
    Clerk.Outcome outcome = Clerk.of(view()).accept(statement, writer, written);
    apply(outcome.delta());
    return outcome.accepted();
  }

  @Override
  public void close() {
    over = true;
  }
}
