package dev.filial.core.store;

import dev.filial.core.register.Accepted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import java.time.Instant;
import java.util.function.Function;

/**
 * A register that is kept. Reading answers for one thing at a time and never loads the whole book.
 *
 * <p>A store is for one thread at a time. Several stores, in one program or many, may have the same
 * file open: a writer waits for the one before it.
 */
public interface RegisterStore extends RegisterView, AutoCloseable {

  /**
   * Reads in one piece: what others write meanwhile does not show, and waits until {@code work} is
   * done.
   *
   * @return what {@code work} returns
   * @throws StoreException if the register cannot be read
   */
  <R> R read(Function<RegisterView, R> work);

  /**
   * Writes any number of entries, all of them or, when {@code work} throws, none.
   *
   * @param by who writes
   * @param time the time the entries carry
   * @param work reads the register, no other writer coming between, and appends to it
   * @return what {@code work} returns
   * @throws dev.filial.core.register.RegisterRefusal if a rule refuses an entry
   * @throws StoreException if the register cannot be written; it is then as it was
   */
  <R> R write(String by, Instant time, Function<Book, R> work);

  /**
   * Writes one entry.
   *
   * @throws dev.filial.core.register.RegisterRefusal if a rule refuses it
   * @throws StoreException if the register cannot be written; it is then as it was
   */
  default Accepted append(Statement statement, String by, Instant time) {
    return write(by, time, book -> book.append(statement));
  }

  /**
   * Reads every entry and all that is derived from them, and says what does not fit. Cost in
   * proportion to the book, in time and memory.
   */
  Verification verify();

  /** Lets go of the register. */
  @Override
  void close();
}
