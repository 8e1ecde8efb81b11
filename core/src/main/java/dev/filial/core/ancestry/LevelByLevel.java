package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Goes through all plants of a pedigree, no plant before the levels below it are finished, and
 * shares large levels out among the threads of the common pool and the caller.
 *
 * <p>The plants are cut into chunks in the order of their indices; levels too small to be shared
 * out stand in one chunk with their neighbours. A thread takes the lowest chunk nobody has taken
 * and waits until the chunks it builds on are finished, so that no thread has to be put to sleep
 * and woken at the end of each level. Each of these is of a lower number and is held by a thread
 * that is at work, so there always is one that need not wait.
 */
final class LevelByLevel {

  /** What is done to the plants. */
  interface Work {
    /**
     * Does the plants from {@code from} to before {@code to}. All plants of lower levels are done,
     * except for those of the same call, which are of one level or come in the order of theirs.
     */
    void on(int from, int to);
  }

  /** Turns of waiting before another thread is let onto the processor. */
  private static final int PATIENCE = 1 << 7;

  /**
   * Plants to be done in one go.
   *
   * @param after how many of the chunks before must be finished
   */
  private record Chunk(int from, int to, int after) {}

  private final List<Chunk> chunks;
  private final Work work;
  private final AtomicInteger next = new AtomicInteger();
  private final AtomicInteger finished = new AtomicInteger();
  private volatile boolean failed;

  private LevelByLevel(List<Chunk> chunks, Work work) {
    this.chunks = chunks;
    this.work = work;
  }

  /**
   * Does the work on all plants and returns when it is done. What it throws is thrown here, and the
   * rest is then left undone.
   *
   * @param chunk how many plants of a level are worth handing to another thread, 1 or more
   */
  static void run(Pedigree pedigree, int chunk, Work work) {
    List<Chunk> chunks = new ArrayList<>();
    int most = 1;
    int run = 0; // where the small levels begin that are not yet in a chunk
    for (int level = 0; level < pedigree.levels(); level++) {
      int from = pedigree.levelStart(level);
      int to = pedigree.levelStart(level + 1);
      if (to - from > chunk) {
        addRun(chunks, run, from);
        int before = chunks.size();
        for (int at = from; at < to; at += chunk) {
          chunks.add(new Chunk(at, Math.min(to, at + chunk), before));
        }
        most = Math.max(most, chunks.size() - before);
        run = to;
      }
    }
    addRun(chunks, run, pedigree.size());
    int threads = Math.min(most, ForkJoinPool.commonPool().getParallelism() + 1);
    LevelByLevel all = new LevelByLevel(chunks, work);
    if (threads == 1) {
      all.takeChunks();
    } else {
      IntStream.range(0, threads).parallel().forEach(thread -> all.takeChunks());
    }
  }

  private static void addRun(List<Chunk> chunks, int from, int to) {
    if (from < to) {
      chunks.add(new Chunk(from, to, chunks.size()));
    }
  }

  private void takeChunks() {
    for (int i = next.getAndIncrement(); i < chunks.size(); i = next.getAndIncrement()) {
      Chunk chunk = chunks.get(i);
      if (!wait(chunk.after)) {
        return;
      }
      boolean done = false;
      try {
        work.on(chunk.from, chunk.to);
        done = true;
      } finally {
        if (done) {
          finished.incrementAndGet();
        } else {
          failed = true;
        }
      }
    }
  }

  /**
   * Waits for so many chunks. They are the first ones: none of a level begins, and so none
   * finishes, before all of the levels below are finished.
   *
   * @return whether they are finished; not if one of them failed
   */
  // Nothing hangs on whose turn comes next: whoever waits only gives up the processor it burns.
  @SuppressWarnings("ThreadPriorityCheck")
  private boolean wait(int count) {
    for (int turn = 0; finished.get() < count; turn++) {
      if (failed) {
        return false;
      }
      if (turn < PATIENCE) {
        Thread.onSpinWait();
      } else {
        Thread.yield();
      }
    }
    return !failed;
  }
}
