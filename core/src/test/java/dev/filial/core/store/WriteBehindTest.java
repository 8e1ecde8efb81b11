package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.store.StoreException.Reason;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Many entries in one write: written behind the checking, in order, and none without the others.
 */
class WriteBehindTest {

  @TempDir Path folder;

  private static Delta delta(long number) {
    Entry entry = Entry.seal(number, Bench.NOON, "Klara", "{}", Entry.NO_DIGEST);
    return new Delta(List.of(entry), List.of(), List.of(), Map.of(), Map.of());
  }

  @Test
  void allIsWrittenInOrderOnceItIsSettled() {
    List<Long> written = Collections.synchronizedList(new ArrayList<>());
    Set<String> threads = Collections.synchronizedSet(new HashSet<>());
    try (WriteBehind behind =
        new WriteBehind(
            deltas -> {
              deltas.forEach(delta -> written.add(delta.entries().get(0).number()));
              threads.add(Thread.currentThread().getName());
            })) {
      List<Long> expected = new ArrayList<>();
      for (long number = 1; number <= 5_000; number++) {
        behind.write(delta(number));
        expected.add(number);
        if (number == 2_000) {
          behind.settle();
          assertThat(written).isEqualTo(expected);
        }
      }
      behind.settle();
      assertThat(written).isEqualTo(expected);
    }
    assertThat(threads).contains("register writer").hasSize(2);
  }

  @Test
  void aShortWriteNeedsNoThread() {
    Set<Thread> threads = new HashSet<>();
    try (WriteBehind behind = new WriteBehind(deltas -> threads.add(Thread.currentThread()))) {
      for (long number = 1; number <= 500; number++) {
        behind.write(delta(number));
      }
    }
    assertThat(threads).containsExactly(Thread.currentThread());
  }

  @Test
  void aFailureIsToldToWhoeverWrites() {
    StoreException full = new StoreException(Reason.FULL, "no room left on the disk");
    List<Long> written = Collections.synchronizedList(new ArrayList<>());
    try (WriteBehind behind =
        new WriteBehind(
            deltas -> {
              for (Delta delta : deltas) {
                if (delta.entries().get(0).number() == 700) {
                  throw full;
                }
                written.add(delta.entries().get(0).number());
              }
            })) {
      assertThatThrownBy(
              () -> {
                for (long number = 1; number <= 50_000; number++) {
                  behind.write(delta(number));
                }
              })
          .isSameAs(full);
      assertThatThrownBy(behind::settle).isSameAs(full);
    }
    assertThat(written).hasSize(699).doesNotContain(701L);
  }

  @Test
  void whatStillWaitsWhenAWriteIsGivenUpIsNotWritten() throws Exception {
    Path file = Bench.register(folder.resolve("given-up"));
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThatThrownBy(
              () ->
                  store.write(
                      "Klara",
                      Bench.NOON,
                      book -> {
                        for (int number = 1; number <= 3_000; number++) {
                          var unused =
                              book.append(Bench.plant(Code.of(25, number), "Echeveria laui"));
                        }
                        throw new RegisterRefusal("given up");
                      }))
          .hasMessage("given up");
      assertThat(store.verify()).isEqualTo(new Verification(4, List.of()));
    }
  }

  @Test
  void ofALongAttemptThatFailsNothingIsLeftAndTheWriteGoesOn() throws Exception {
    Path file = Bench.register(folder.resolve("attempt"));
    try (SqliteStore store = SqliteStore.open(file)) {
      long size =
          store.write(
              "Klara",
              Bench.NOON,
              book -> {
                assertThatThrownBy(
                        () ->
                            book.attempt(
                                () -> {
                                  plants(book, 3_000);
                                  throw new RegisterRefusal("given up");
                                }))
                    .hasMessage("given up");
                assertThat(book.size()).isEqualTo(4);
                book.attempt(() -> plants(book, 1_000));
                plants(book, 1_000, 2_000);
                return book.size();
              });
      assertThat(size).isEqualTo(4 + 2_000);
      assertThat(store.verify()).isEqualTo(new Verification(size, List.of()));
    }
  }

  private static void plants(Book book, int last) {
    plants(book, 0, last);
  }

  private static void plants(Book book, int before, int last) {
    for (int number = before + 1; number <= last; number++) {
      var unused = book.append(Bench.plant(Code.of(25, number), "Echeveria laui"));
    }
  }

  @Test
  void aLongWriteSeesItsOwnEntriesAndIsSound() throws Exception {
    Path file = Bench.register(folder.resolve("long"));
    try (SqliteStore store = SqliteStore.open(file)) {
      long size =
          store.write(
              "Klara",
              Bench.NOON,
              book -> {
                for (int number = 1; number <= 3_000; number++) {
                  Code code = Code.of(25, number);
                  var unused = book.append(Bench.plant(code, "Echeveria laui"));
                  if (number % 1_000 == 0) {
                    assertThat(book.called("rosa " + number)).contains(code);
                    assertThat(book.taken(code)).isPresent();
                    var crossed =
                        book.append(Bench.cross(Code.of(26, 500 + number), code, Code.of(25, 1)));
                    assertThat(crossed.entry().number()).isEqualTo(book.size());
                    assertThatThrownBy(() -> book.append(Bench.plant(code, "Echeveria laui")))
                        .hasMessageContaining("is taken already");
                  }
                }
                return book.size();
              });
      assertThat(size).isEqualTo(4 + 3_000 + 3);
      assertThat(store.verify()).isEqualTo(new Verification(size, List.of()));
    }
  }
}
