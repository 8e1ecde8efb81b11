package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several commands at once take turns: none is lost and no code is given twice. */
class SqliteTurnsTest {

  private static final int EACH = 15;

  @TempDir Path folder;

  private static void requireCrosses(Path file, int count) {
    try (SqliteStore store = SqliteStore.open(file)) {
      List<Code> crosses =
          store.items(EnumSet.of(Item.Kind.CROSS)).stream().map(Item::code).toList();
      List<Code> expected = new ArrayList<>();
      for (int number = 1; number <= count; number++) {
        expected.add(Code.of(26, number));
      }
      assertThat(crosses).isEqualTo(expected);
      assertThat(store.verify()).isEqualTo(new Verification(3 + count, List.of()));
    }
  }

  @Test
  void fourThreadsEachWithItsOwnStore() throws Exception {
    Path file = Bench.register(folder.resolve("threads"));
    ExecutorService growers = Executors.newFixedThreadPool(4);
    try {
      List<Future<?>> done = new ArrayList<>();
      for (int grower = 0; grower < 4; grower++) {
        done.add(
            growers.submit(
                () -> {
                  for (int i = 0; i < EACH; i++) {
                    // Opened anew each time, as commands do.
                    try (SqliteStore store = SqliteStore.open(file)) {
                      ChildWriter.appendNext(store);
                    }
                  }
                }));
      }
      for (Future<?> each : done) {
        each.get(120, TimeUnit.SECONDS);
      }
    } finally {
      growers.shutdownNow();
    }
    requireCrosses(file, 1 + 4 * EACH);
  }

  @Test
  void twoPrograms() throws Exception {
    Path file = Bench.register(folder.resolve("programs"));
    List<Process> programs =
        List.of(ChildWriter.start("append", file, EACH), ChildWriter.start("append", file, EACH));
    for (Process program : programs) {
      assertThat(program.waitFor(120, TimeUnit.SECONDS)).isTrue();
      assertThat(program.exitValue()).isZero();
    }
    requireCrosses(file, 1 + 2 * EACH);
  }

  /**
   * On POSIX systems a program loses its locks on a file when it closes any handle of it; opening
   * and refusing must not do that to a store that is writing.
   */
  @Test
  void openingTheFileElsewhereInTheProgramDoesNotTakeAWritersTurnAway() throws Exception {
    Path file = Bench.register(folder.resolve("locks"));
    Process[] other = new Process[1];
    try (SqliteStore store = SqliteStore.open(file)) {
      store.write(
          "Klara",
          Bench.NOON,
          book -> {
            try (SqliteStore reading = SqliteStore.open(file)) {
              assertThat(reading.size()).isEqualTo(4);
            }
            try {
              other[0] = ChildWriter.start("append", file, 1);
              // It starts, and waits for this write; had the lock gone, it would be done.
              assertThat(other[0].waitFor(4, TimeUnit.SECONDS)).isFalse();
            } catch (java.io.IOException | InterruptedException e) {
              throw new IllegalStateException(e);
            }
            return book.append(
                Bench.cross(Code.of(26, book.lastNumber(26) + 1), Code.of(24, 2), Code.of(24, 1)));
          });
    }
    assertThat(other[0].waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(other[0].exitValue()).isZero();
    requireCrosses(file, 3);
  }

  @Test
  void whatIsReadInOnePieceDoesNotChangeHalfWay() throws Exception {
    Path file = Bench.register(folder.resolve("piece"));
    CountDownLatch started = new CountDownLatch(1);
    try (SqliteStore reading = SqliteStore.open(file);
        SqliteStore writing = SqliteStore.open(file)) {
      Thread writer =
          new Thread(
              () -> {
                started.countDown();
                ChildWriter.appendNext(writing);
              });
      long grown =
          reading.read(
              view -> {
                long before = view.size();
                writer.start();
                try {
                  started.await();
                  Thread.sleep(300);
                } catch (InterruptedException e) {
                  throw new IllegalStateException(e);
                }
                return view.size() - before;
              });
      writer.join(20_000);
      assertThat(grown).isZero();
      assertThat(reading.size()).isEqualTo(5);
    }
  }
}
