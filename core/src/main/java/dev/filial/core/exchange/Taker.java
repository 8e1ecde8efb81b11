package dev.filial.core.exchange;

import java.io.IOException;

/**
 * Takes things one after the other, so that they need not all be in memory.
 *
 * @param <T> what is taken
 */
@FunctionalInterface
public interface Taker<T> {

  /**
   * Takes the next one.
   *
   * @throws IOException if it cannot be written where it goes
   */
  void take(T next) throws IOException;
}
