package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.pedigree.Pedigree;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Every plant once, and none before the levels below it. */
class LevelByLevelTest {

  private static final int[] LEVELS = {3000, 5000, 20, 1, 30, 4000, 4000, 7, 2500};

  /** Selfings of the first plant of the level below. */
  private static Pedigree pedigree(int... levels) {
    int plants = 0;
    for (int level : levels) {
      plants += level;
    }
    String[] codes = new String[plants];
    @Nullable String[] parents = new String[plants];
    @Nullable String[] taxa = new String[plants];
    int at = 0;
    int below = 0;
    for (int level = 0; level < levels.length; level++) {
      int from = at;
      for (int i = 0; i < levels[level]; i++, at++) {
        codes[at] = "P" + at;
        if (level == 0) {
          taxa[at] = "E. laui";
        } else {
          parents[at] = "P" + below;
        }
      }
      below = from;
    }
    return Pedigree.ofParents(codes, parents, parents, taxa);
  }

  private static void runAndCheck(Pedigree pedigree, int chunk) {
    AtomicIntegerArray times = new AtomicIntegerArray(pedigree.size());
    AtomicIntegerArray done = new AtomicIntegerArray(pedigree.levels());
    AtomicInteger early = new AtomicInteger();
    LevelByLevel.run(
        pedigree,
        chunk,
        (from, to) -> {
          for (int plant = from; plant < to; plant++) {
            int level = pedigree.level(plant);
            int below = Math.max(0, level - 1);
            int due = level == 0 ? 0 : pedigree.levelStart(level) - pedigree.levelStart(below);
            if (level > 0 && done.get(below) < due) {
              early.incrementAndGet();
            }
            times.incrementAndGet(plant);
            done.incrementAndGet(level);
          }
        });
    assertThat(early).hasValue(0);
    for (int plant = 0; plant < times.length(); plant++) {
      assertThat(times.get(plant)).isEqualTo(1);
    }
  }

  @Test
  @Timeout(60)
  void noPlantComesBeforeTheLevelBelow() {
    for (int chunk : new int[] {1, 7, 100, 2500, 1_000_000}) {
      runAndCheck(pedigree(LEVELS), chunk);
    }
    runAndCheck(pedigree(), 100);
    runAndCheck(pedigree(1), 1);
  }

  @Test
  @Timeout(60)
  void aThreadWithoutHelpersDoesAllOfIt() throws Exception {
    ForkJoinPool alone = new ForkJoinPool(1);
    try {
      alone.submit(() -> runAndCheck(pedigree(LEVELS), 100)).get(30, TimeUnit.SECONDS);
    } finally {
      alone.shutdown();
    }
  }

  @Test
  @Timeout(60)
  void threadsOfABusyPoolAreNotWaitedFor() {
    ForkJoinPool common = ForkJoinPool.commonPool();
    AtomicInteger free = new AtomicInteger();
    try {
      for (int i = 0; i < common.getParallelism(); i++) {
        common.execute(
            () -> {
              while (free.get() == 0) {
                Thread.onSpinWait();
              }
            });
      }
      runAndCheck(pedigree(LEVELS), 100);
    } finally {
      free.set(1);
    }
  }

  @Test
  @Timeout(60)
  void aFailureIsThrownAndNobodyWaitsForIt() {
    Pedigree pedigree = pedigree(LEVELS);
    for (int failing : new int[] {0, 2950, 6000, pedigree.size() - 1}) {
      AtomicInteger after = new AtomicInteger();
      int bound = pedigree.levelStart(Math.min(pedigree.levels(), pedigree.level(failing) + 1));
      assertThatThrownBy(
              () ->
                  LevelByLevel.run(
                      pedigree,
                      100,
                      (from, to) -> {
                        if (from <= failing && failing < to) {
                          throw new IllegalStateException("plant " + failing);
                        }
                        if (from >= bound) {
                          after.incrementAndGet();
                        }
                      }))
          .isInstanceOf(IllegalStateException.class)
          .hasStackTraceContaining("plant " + failing);
      assertThat(after).hasValue(0);
    }
  }
}
