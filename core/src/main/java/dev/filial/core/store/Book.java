package dev.filial.core.store;

import dev.filial.core.register.Accepted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import java.time.Instant;

/**
 * A register open for writing: each statement is seen by what follows it. That one cannot be kept,
 * the disk being full say, may only be told with a later one or at the end; nothing of the write is
 * then kept.
 */
public interface Book extends RegisterView {

  /**
   * Takes one statement.
   *
   * @throws dev.filial.core.register.RegisterRefusal if a rule refuses it
   * @throws StoreException if it cannot be kept
   */
  Accepted append(Statement statement);

  /**
   * Takes one statement that somebody else wrote, or at another time: out of another book.
   *
   * @param by who wrote it
   * @param time when
   * @throws dev.filial.core.register.RegisterRefusal if a rule refuses it
   * @throws StoreException if it cannot be kept
   */
  Accepted append(Statement statement, String by, Instant time);

  /**
   * Does {@code work}; when it throws, what it appended is taken back, and the book can be written
   * in further. Not one within another.
   *
   * @throws StoreException if the book cannot be kept; nothing more can then be written
   */
  void attempt(Runnable work);
}
