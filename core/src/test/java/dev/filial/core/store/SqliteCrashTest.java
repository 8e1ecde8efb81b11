package dev.filial.core.store;

import static dev.filial.core.store.Bench.names;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.store.StoreException.Reason;
import java.io.BufferedReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A program killed while it was writing: what it had not finished is undone at the next opening.
 */
class SqliteCrashTest {

  /** More than SQLite holds back in memory, so that the file itself is half written. */
  private static final int MANY = 600;

  @TempDir static Path folder;

  @TempDir Path elsewhere;

  private static byte[] before;
  private static Path file;

  @BeforeAll
  static void killAWriter() throws Exception {
    file = Bench.register(folder.resolve("balcony"));
    before = Files.readAllBytes(file);
    Process child = ChildWriter.start("hang", file, MANY);
    try (BufferedReader out = child.inputReader()) {
      assertThat(out.readLine()).isEqualTo("ready");
    } finally {
      child.destroyForcibly();
      assertThat(child.waitFor(30, TimeUnit.SECONDS)).isTrue();
    }
  }

  /** The file as the crash left it, and beside it what of the rest is asked for. */
  private Path asLeft(String... beside) throws Exception {
    Path copy = elsewhere.resolve("balcony");
    Files.copy(file, copy);
    for (String end : beside) {
      Files.copy(file.resolveSibling(file.getFileName() + end), elsewhere.resolve("balcony" + end));
    }
    return copy;
  }

  @Test
  void theCrashLeftAHalfWrittenFileAndItsJournal() throws Exception {
    assertThat(names(folder)).containsExactly("balcony", "balcony-journal");
    assertThat(Files.readAllBytes(file)).isNotEqualTo(before);
  }

  @Test
  void theNextOpeningUndoesWhatWasNotFinished() throws Exception {
    Path copy = asLeft("-journal");
    try (SqliteStore store = SqliteStore.open(copy)) {
      assertThat(store.size()).isEqualTo(4);
      assertThat(store.verify()).isEqualTo(new Verification(4, List.of()));
      ChildWriter.appendNext(store);
    }
    assertThat(names(elsewhere)).containsExactly("balcony");
  }

  @Test
  void openingAloneBringsBackEveryByte() throws Exception {
    Path copy = asLeft("-journal");
    SqliteStore.open(copy).close();
    assertThat(copy).hasBinaryContent(before);
  }

  /**
   * How much of the file SQLite had got to is chance; what it shows must be the old book or none.
   */
  @Test
  void withoutItsJournalTheFileIsTheOldBookOrNotTakenForSound() throws Exception {
    Path copy = asLeft();
    byte[] left = Files.readAllBytes(copy);
    try (SqliteStore store = SqliteStore.open(copy)) {
      Verification found = store.verify();
      assertThat(found.isSound() ? found.entries() : 4).isEqualTo(4);
    } catch (StoreException e) {
      assertThat(e.reason()).isEqualTo(Reason.DAMAGED);
    }
    assertThat(copy).hasBinaryContent(left);
  }

  @Test
  void whatSalvageReadsIsWhatTheJournalBringsBack() throws Exception {
    Path copy = asLeft("-journal");
    byte[] left = Files.readAllBytes(copy);
    Salvage salvage = SqliteSalvage.read(copy);
    assertThat(salvage.isWhole()).isTrue();
    assertThat(salvage.entries()).hasSize(4);
    assertThat(copy).hasBinaryContent(left);
    assertThat(names(elsewhere)).containsExactly("balcony", "balcony-journal");
  }

  @Test
  void aStrangersJournalIsLeftAlone() throws Exception {
    Path copy = asLeft("-journal");
    // Another application's mark, and it is no register any more.
    try (var bytes = Files.newByteChannel(copy, java.nio.file.StandardOpenOption.WRITE)) {
      bytes.position(68).write(java.nio.ByteBuffer.wrap(new byte[] {1, 2, 3, 4}));
    }
    byte[] left = Files.readAllBytes(copy);
    assertThatThrownBy(() -> SqliteStore.open(copy))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("is not a register");
    assertThat(copy).hasBinaryContent(left);
    assertThat(names(elsewhere)).containsExactly("balcony", "balcony-journal");
  }

  @Test
  void theKilledEntriesCanBeWrittenAgainUnderTheirCodes() throws Exception {
    try (SqliteStore store = SqliteStore.open(asLeft("-journal"))) {
      store.append(Bench.plant(Code.of(25, 1), "Echeveria elegans"), "Klara", Bench.NOON);
      assertThat(store.size()).isEqualTo(5);
    }
  }
}
