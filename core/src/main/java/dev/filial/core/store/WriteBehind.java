package dev.filial.core.store;

import dev.filial.core.register.Delta;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Writes what was accepted on a thread of its own, while the next entries are being checked: two
 * processors then share an import. Begins only after some hundreds of entries in a row that nothing
 * had to be read for, so that a short command never starts a thread.
 *
 * <p>For one transaction. The database is used by one thread at a time: whoever reads it has to
 * {@link #settle} first.
 */
final class WriteBehind implements AutoCloseable {

  /** Written at once, at the beginning and again after each reading. */
  private static final int AT_ONCE = 500;

  /** Handed over together. */
  private static final int TOGETHER = 64;

  /** How many such lots may wait; memory stays flat however far ahead the checking is. */
  private static final int WAITING = 8;

  private final Consumer<List<Delta>> writer;
  private final Semaphore room = new Semaphore(WAITING);
  private List<Delta> lot = new ArrayList<>();
  private int atOnce = AT_ONCE;
  private long written;
  private @Nullable ExecutorService executor;
  private volatile @Nullable RuntimeException failure;
  private volatile boolean isOver;

  WriteBehind(Consumer<List<Delta>> writer) {
    this.writer = writer;
  }

  /**
   * Writes a change, now or soon.
   *
   * @throws StoreException if this one, or one before it, cannot be written
   */
  void write(Delta delta) {
    written++;
    if (atOnce > 0) {
      atOnce--;
      writer.accept(List.of(delta));
      return;
    }
    lot.add(delta);
    if (lot.size() == TOGETHER) {
      handOver();
    }
  }

  /** Whether so much was written that it pays to spare some of it. */
  boolean isLong() {
    return written > AT_ONCE;
  }

  private void handOver() {
    requireWell();
    List<Delta> whole = lot;
    lot = new ArrayList<>();
    room.acquireUninterruptibly();
    executor().execute(() -> writeAll(whole));
  }

  private ExecutorService executor() {
    ExecutorService running = executor;
    if (running == null) {
      running =
          Executors.newSingleThreadExecutor(
              task -> {
                Thread thread = new Thread(task, "register writer");
                thread.setDaemon(true);
                return thread;
              });
      executor = running;
    }
    return running;
  }

  private void writeAll(List<Delta> whole) {
    try {
      if (failure == null && !isOver) {
        writer.accept(whole);
      }
    } catch (RuntimeException e) {
      failure = e; // told to the thread that appends, as soon as it comes by
    } finally {
      room.release();
    }
  }

  private void requireWell() {
    RuntimeException told = failure;
    if (told != null) {
      throw told;
    }
  }

  private void awaitAll() {
    room.acquireUninterruptibly(WAITING);
    room.release(WAITING);
  }

  /**
   * Has all written that was handed in, before the database is read.
   *
   * @throws StoreException if something cannot be written
   */
  void settle() {
    if (executor != null) {
      awaitAll();
      requireWell();
    }
    List<Delta> rest = lot;
    lot = new ArrayList<>();
    atOnce = AT_ONCE;
    if (!rest.isEmpty()) {
      writer.accept(rest);
    }
  }

  /** Leaves out what still waits, all else being undone. */
  void forget() {
    if (executor != null) {
      awaitAll();
    }
    lot = new ArrayList<>();
    atOnce = AT_ONCE;
  }

  /** Ends it; what still waits is not written. */
  @Override
  public void close() {
    isOver = true;
    lot = new ArrayList<>();
    if (executor != null) {
      awaitAll();
      executor.shutdown();
    }
  }
}
