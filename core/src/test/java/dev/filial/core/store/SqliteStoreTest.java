package dev.filial.core.store;

import static dev.filial.core.store.Bench.NOON;
import static dev.filial.core.store.Bench.OPENING;
import static dev.filial.core.store.Bench.cross;
import static dev.filial.core.store.Bench.names;
import static dev.filial.core.store.Bench.plant;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.store.StoreException.Reason;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SqliteStoreTest {

  @TempDir Path folder;

  @Test
  void whatWasWrittenIsThereWhenTheFileIsOpenedAgain() throws Exception {
    Path file = Bench.register(folder.resolve("balcony.filial"));
    try (SqliteStore store = SqliteStore.open(file)) {
      store.append(
          new Amended(4, cross(Code.of(26, 1), Code.of(24, 2), Code.of(24, 1)), "other way round"),
          "Klara",
          NOON);
    }
    try (SqliteStore store = SqliteStore.open(file)) {
      Item cross = store.item(Code.of(26, 1)).orElseThrow();
      assertThat(cross.descent().get(0).seed()).isEqualTo(Code.of(24, 2));
      assertThat(store.lineage(List.of(Code.of(26, 1)))).hasSize(3);
      assertThat(store.named("rosa", 10)).hasSize(2);
      assertThat(store.verify().faults()).isEmpty();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "my register",
        "what?mode=memory",
        "100 % Echeveria #1",
        "%3F&cache=shared",
        "O'Brien's \"best\"",
        "a;b,c=d",
        "Wüstenrose 🌵",
        "-journal",
        "file:x"
      })
  void aFileMayHaveAnyNameAndNothingLiesBesideIt(String name) throws Exception {
    Path file = Bench.register(folder.resolve(name));
    try (SqliteStore store = SqliteStore.open(file)) {
      store.append(plant(Code.of(24, 3), "Echeveria colorata"), "Klara", NOON);
      assertThat(store.size()).isEqualTo(5);
    }
    assertThat(names(folder)).containsExactly(name);
  }

  @Test
  void aRegisterIsMadeOnceAndNeverOverAnother() throws Exception {
    Path file = Bench.register(folder.resolve("one"));
    byte[] before = Files.readAllBytes(file);
    assertThatThrownBy(() -> SqliteStore.create(file, OPENING, NOON))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("one is there already")
        .extracting(e -> ((StoreException) e).reason())
        .isEqualTo(Reason.EXISTS);
    assertThat(file).hasBinaryContent(before);
    assertThat(names(folder)).containsExactly("one");
  }

  @Test
  void aRegisterWhoseFirstEntriesAreRefusedIsNotMade() throws Exception {
    Path file = folder.resolve("never");
    assertThatThrownBy(
            () ->
                SqliteStore.create(
                    file,
                    "Klara",
                    NOON,
                    book -> book.append(plant(Code.of(24, 1), "Echeveria laui"))))
        .isInstanceOf(RegisterRefusal.class);
    assertThat(names(folder)).isEmpty();
  }

  @Test
  void aRegisterNeedsItsFolder() {
    assertThatThrownBy(() -> SqliteStore.create(folder.resolve("no/where"), OPENING, NOON))
        .hasMessageContaining("there is no folder " + folder.resolve("no"));
  }

  @Test
  void twoRegistersMadeAtOnceUnderOneNameAreOneRegisterAndOneRefusal() throws Exception {
    for (int round = 0; round < 10; round++) {
      Path file = folder.resolve("both-" + round);
      List<String> made = java.util.Collections.synchronizedList(new ArrayList<>());
      List<Thread> growers = new ArrayList<>();
      for (String mark : List.of("KB", "AX")) {
        growers.add(
            new Thread(
                () -> {
                  try {
                    SqliteStore.create(
                            file,
                            new dev.filial.core.register.RegisterOpened(mark, mark, null),
                            NOON)
                        .close();
                    made.add(mark);
                  } catch (StoreException e) {
                    assertThat(e.reason()).isEqualTo(Reason.EXISTS);
                  }
                }));
      }
      growers.forEach(Thread::start);
      for (Thread grower : growers) {
        grower.join();
      }
      assertThat(made).hasSize(1);
      try (SqliteStore store = SqliteStore.open(file)) {
        assertThat(store.opening().orElseThrow().mark()).isEqualTo(made.get(0));
      }
    }
  }

  static Stream<RegisterStore> stores() throws Exception {
    Path folder = Files.createTempDirectory("filial-test-");
    folder.toFile().deleteOnExit();
    Path file = folder.resolve("store");
    file.toFile().deleteOnExit();
    MemoryStore memory = MemoryStore.empty();
    memory.append(OPENING, "Klara", NOON);
    Bench.fill(memory);
    Bench.register(file);
    return Stream.of(memory, SqliteStore.open(file));
  }

  @ParameterizedTest
  @MethodSource("stores")
  void aBatchIsTakenWholeOrNotAtAll(RegisterStore store) {
    try (store) {
      List<?> before = store.items(java.util.EnumSet.allOf(Item.Kind.class));
      assertThatThrownBy(
              () ->
                  store.write(
                      "Klara",
                      NOON,
                      book -> {
                        book.append(plant(Code.of(24, 3), "Echeveria colorata"));
                        book.append(new Amended(4, null, "not made"));
                        assertThat(book.item(Code.of(26, 1))).isEmpty();
                        return book.append(plant(Code.of(24, 3), "Echeveria elegans"));
                      }))
          .isInstanceOf(RegisterRefusal.class)
          .hasMessageContaining("is taken already");
      assertThat(store.size()).isEqualTo(4);
      assertThat(store.items(java.util.EnumSet.allOf(Item.Kind.class))).isEqualTo(before);
      assertThat(store.taken(Code.of(24, 3))).isEmpty();
      assertThat(store.verify()).isEqualTo(new Verification(4, List.of()));
    }
  }

  @ParameterizedTest
  @MethodSource("stores")
  void aRefusalThatIsPassedOverLeavesTheRestOfTheBatch(RegisterStore store) {
    try (store) {
      long size =
          store.write(
              "Klara",
              NOON,
              book -> {
                assertThatThrownBy(() -> book.append(plant(Code.of(24, 1), "Echeveria laui")))
                    .isInstanceOf(RegisterRefusal.class);
                book.append(plant(Code.of(24, 3), "Echeveria colorata"));
                return book.size();
              });
      assertThat(size).isEqualTo(5);
      assertThat(store.verify()).isEqualTo(new Verification(5, List.of()));
    }
  }

  @ParameterizedTest
  @MethodSource("stores")
  void aBookThatWasClosedTakesNothing(RegisterStore store) {
    try (store) {
      List<Book> kept = new ArrayList<>();
      store.write("Klara", NOON, book -> kept.add(book));
      assertThatThrownBy(() -> kept.get(0).append(plant(Code.of(24, 3), "Echeveria laui")))
          .isInstanceOf(IllegalStateException.class);
      assertThat(store.size()).isEqualTo(4);
    }
  }

  @ParameterizedTest
  @MethodSource("stores")
  void oneWriteAtATime(RegisterStore store) {
    try (store) {
      assertThatThrownBy(
              () ->
                  store.write(
                      "Klara",
                      NOON,
                      book -> store.append(plant(Code.of(24, 3), "Echeveria laui"), "K", NOON)))
          .isInstanceOf(IllegalStateException.class);
      assertThat(store.size()).isEqualTo(4);
    }
  }

  @ParameterizedTest
  @MethodSource("stores")
  void anErrorUndoesABatchAsARefusalDoes(RegisterStore store) {
    try (store) {
      assertThatThrownBy(
              () ->
                  store.write(
                      "Klara",
                      NOON,
                      book -> {
                        book.append(plant(Code.of(24, 3), "Echeveria colorata"));
                        throw new StackOverflowError("deep");
                      }))
          .isInstanceOf(StackOverflowError.class);
      assertThat(store.size()).isEqualTo(4);
      assertThat(store.taken(Code.of(24, 3))).isEmpty();
    }
  }

  @ParameterizedTest
  @MethodSource("stores")
  void anEntryKeepsTheWriterAndTimeItIsGiven(RegisterStore store) {
    try (store) {
      Entry entry =
          store.write(
              "Klara",
              NOON,
              book ->
                  book.append(
                          plant(Code.of(24, 3), "Echeveria laui"),
                          "Ada",
                          Instant.parse("1999-01-02T03:04:05.678Z"))
                      .entry());
      assertThat(store.entry(5)).contains(entry);
      assertThat(entry.by()).isEqualTo("Ada");
      assertThat(entry.time()).isEqualTo("1999-01-02T03:04:05Z");
    }
  }

  @Test
  void aBookIsRestoredEntryForEntry() throws Exception {
    List<Entry> entries = new ArrayList<>();
    try (SqliteStore store = SqliteStore.open(Bench.register(folder.resolve("old")))) {
      store.append(new Amended(3, null, "never came"), "Klara", NOON);
    } catch (RegisterRefusal e) {
      assertThat(e).hasMessageContaining("would no longer hold");
    }
    try (SqliteStore store = SqliteStore.open(folder.resolve("old"))) {
      for (long number = 1; number <= store.size(); number++) {
        entries.add(store.entry(number).orElseThrow());
      }
    }
    assertThat(SqliteStore.restore(folder.resolve("new"), entries)).isEqualTo(4);
    try (SqliteStore store = SqliteStore.open(folder.resolve("new"))) {
      assertThat(store.entry(4)).contains(entries.get(3));
      assertThat(store.verify()).isEqualTo(new Verification(4, List.of()));
    }
    assertThatThrownBy(() -> SqliteStore.restore(folder.resolve("gap"), entries.subList(1, 3)))
        .isInstanceOf(RegisterRefusal.class);
    assertThat(names(folder)).containsExactly("new", "old");
  }
}
