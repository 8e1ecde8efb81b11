package dev.filial.core.store;

import dev.filial.core.register.Accepted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import java.time.Instant;

/** A register open for writing: each statement is seen by what follows it. */
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
}
