package dev.filial.core.store;

import static dev.filial.core.store.Bench.names;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.store.StoreException.Reason;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no register, or not one for us: each is called what it is and left as it is. */
class SqliteRefusalTest {

  @TempDir Path folder;

  /** Checks that the file is refused for that reason and that no byte of it changes. */
  private void requireRefused(Path file, Reason reason, String... words) throws Exception {
    byte[] before = Files.isRegularFile(file) ? Files.readAllBytes(file) : null;
    List<String> there = names(file.getParent());
    assertThatThrownBy(() -> SqliteStore.open(file))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining(file.getFileName().toString())
        .hasMessageContainingAll(words)
        .extracting(e -> ((StoreException) e).reason())
        .isEqualTo(reason);
    if (before != null) {
      assertThat(file).hasBinaryContent(before);
    }
    assertThat(names(file.getParent())).isEqualTo(there);
  }

  static void poke(Path file, long at, byte... bytes) throws Exception {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(bytes), at);
    }
  }

  /** Runs SQL on a file behind the store's back. */
  static void run(Path file, String... statements) throws Exception {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      for (String sql : statements) {
        statement.execute(sql);
      }
    }
  }

  @Test
  void aMissingFile() throws Exception {
    requireRefused(folder.resolve("nowhere"), Reason.MISSING, "there is no register");
  }

  @Test
  void aFolder() throws Exception {
    requireRefused(Files.createDirectory(folder.resolve("shelf")), Reason.FOREIGN, "is a folder");
  }

  @Test
  void anEmptyFile() throws Exception {
    requireRefused(Files.createFile(folder.resolve("empty")), Reason.FOREIGN, "is empty");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 50, 99, 5000})
  void aTextFile(int length) throws Exception {
    Path file = folder.resolve("letter.txt");
    Files.writeString(file, "Dear Klara, ".repeat(length).substring(0, length));
    requireRefused(file, Reason.FOREIGN, "is not a register");
  }

  @Test
  void anotherProgramsDatabase() throws Exception {
    Path file = folder.resolve("recipes.db");
    run(file, "PRAGMA application_id = 7", "CREATE TABLE entry (number INTEGER PRIMARY KEY)");
    requireRefused(file, Reason.FOREIGN, "some other kind of file");
  }

  @Test
  void anotherProgramsDatabaseInTheMidstOfAWrite() throws Exception {
    Path file = folder.resolve("recipes.db");
    run(file, "CREATE TABLE recipe (name TEXT)", "PRAGMA journal_mode = WAL");
    try (Connection open = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = open.createStatement()) {
      statement.execute("INSERT INTO recipe VALUES ('soup')");
      assertThat(names(folder)).hasSize(3);
      byte[] before = Files.readAllBytes(file);
      assertThatThrownBy(() -> SqliteStore.open(file)).isInstanceOf(StoreException.class);
      assertThat(file).hasBinaryContent(before);
      assertThat(names(folder)).hasSize(3);
    }
  }

  @Test
  void aNewerFilialsRegister() throws Exception {
    Path file = Bench.register(folder.resolve("newer"));
    run(file, "PRAGMA user_version = 9", "CREATE TABLE novelty (what TEXT)");
    requireRefused(
        file, Reason.NEWER, "written by a newer Filial (layout 9", "nothing was changed");
  }

  @Test
  void aRegisterThatBecameNewerWhileItWasOpen() throws Exception {
    Path file = Bench.register(folder.resolve("newer"));
    try (SqliteStore store = SqliteStore.open(file)) {
      run(file, "PRAGMA user_version = 9");
      assertThatThrownBy(() -> ChildWriter.appendNext(store))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("newer Filial");
      assertThat(store.size()).isEqualTo(4);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.02, 0.3, 0.5, 0.9, 0.999})
  void aTruncatedRegister(double share) throws Exception {
    Path file = Bench.register(folder.resolve("half"));
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, (int) (whole.length * share)));
    requireRefused(file, Reason.DAMAGED, "is damaged", "restore it from a copy");
  }

  @Test
  void aRegisterWhoseBeginningIsOverwritten() throws Exception {
    Path file = Bench.register(folder.resolve("zeros"));
    poke(file, 0, new byte[512]);
    requireRefused(file, Reason.FOREIGN, "or its beginning is lost");
  }

  @Test
  void aRegisterWithoutItsTables() throws Exception {
    Path file = Bench.register(folder.resolve("bare"));
    run(file, "DROP TABLE concerns");
    byte[] before = Files.readAllBytes(file);
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThatThrownBy(() -> ChildWriter.appendNext(store))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("is damaged")
          .extracting(e -> ((StoreException) e).reason())
          .isEqualTo(Reason.DAMAGED);
    }
    assertThat(file).hasBinaryContent(before);
  }

  @Test
  void anOlderLayoutIsBroughtUpToDateAfterACopyWasMade() throws Exception {
    Path file = Bench.register(folder.resolve("old"));
    run(file, "PRAGMA user_version = 0", "DROP TABLE item", "DROP TABLE concerns");
    Files.writeString(folder.resolve("old.layout-0"), "an earlier copy");
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThat(store.verify()).isEqualTo(new Verification(4, List.of()));
      assertThat(store.item(Code.of(26, 1))).isPresent();
    }
    assertThat(names(folder)).containsExactly("old", "old.layout-0", "old.layout-0.2");
    assertThat(folder.resolve("old.layout-0")).hasContent("an earlier copy");
    // The copy is the register as it was: opened, it is brought up to date in its turn.
    try (SqliteStore copy = SqliteStore.open(folder.resolve("old.layout-0.2"))) {
      assertThat(copy.size()).isEqualTo(4);
    }
  }

  /** The file was written by the program as it was when layout 2 was the newest. */
  @Test
  void aRegisterOfTheSecondLayoutSaysAfterwardsWhatItSaidBefore() throws Exception {
    Path file = folder.resolve("second");
    try (InputStream in = SqliteRefusalTest.class.getResourceAsStream("layout-2.register")) {
      Files.copy(Objects.requireNonNull(in), file);
    }
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThat(store.verify()).isEqualTo(new Verification(12, List.of()));
      Code cross = Code.of(26, 1);
      assertThat(store.codesUnder(cross))
          .extracting(Code::text)
          .containsExactly(
              "26-001M",
              "26-001M H1",
              "26-001M P1",
              "26-001M P2",
              "26-001M S1",
              "26-001M-1",
              "26-001M-2",
              "26-001M-3");
      assertThat(store.lastSuffix(cross, Item.Kind.SEEDLING)).isEqualTo(3);
      assertThat(store.lastSuffix(cross, Item.Kind.CROSS)).isZero();
      assertThat(store.lastNumber(24)).as("struck, and yet taken").isEqualTo(3);
      assertThat(store.effective(4).orElseThrow().date()).hasToString("2026-03-05");
    }
    assertThat(names(folder)).containsExactly("second", "second.layout-2");
  }

  @Test
  void anOlderLayoutWithADamagedEntryIsNotTouched() throws Exception {
    Path file = Bench.register(folder.resolve("old"));
    run(
        file,
        "PRAGMA user_version = 0",
        "UPDATE entry SET body = replace(body, 'laui', 'lauj') WHERE number = 2");
    byte[] before = Files.readAllBytes(file);
    assertThatThrownBy(() -> SqliteStore.open(file))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("entry 2 is not as it was written");
    assertThat(file).hasBinaryContent(before);
  }

  @Test
  void aRegisterLeftToAWriteAheadLogIsTakenBack() throws Exception {
    Path file = Bench.register(folder.resolve("wal"));
    run(file, "PRAGMA journal_mode = WAL");
    try (SqliteStore store = SqliteStore.open(file)) {
      ChildWriter.appendNext(store);
    }
    assertThat(names(folder)).containsExactly("wal");
    assertThat(Files.readAllBytes(file)[18])
        .as("written by a rollback journal")
        .isEqualTo((byte) 1);
  }

  private static boolean mount(String... arguments) throws Exception {
    Process mount = new ProcessBuilder(arguments).redirectErrorStream(true).start();
    return mount.waitFor(10, TimeUnit.SECONDS) && mount.exitValue() == 0;
  }

  @Test
  void aReadOnlyFileIsReadAndNotWritten() throws Exception {
    Path file = Bench.register(folder.resolve("locked"));
    assumeThat(file.toFile().setReadOnly() && !Files.isWritable(file))
        .as("a read-only file keeps this user from writing (root may always)")
        .isTrue();
    requireReadable(file);
  }

  @Test
  void aReadOnlyFolderIsReadAndNotWritten() throws Exception {
    Bench.register(folder.resolve("locked"));
    Path mounted = Files.createDirectory(folder.resolve("mounted"));
    boolean bound =
        "root".equals(System.getProperty("user.name"))
            && mount("mount", "--bind", folder.toString(), mounted.toString());
    assumeThat(bound).as("only root can mount a folder read-only for this test").isTrue();
    try {
      assumeThat(mount("mount", "-o", "remount,ro,bind", mounted.toString()))
          .as("mounting read-only is allowed here")
          .isTrue();
      requireReadable(mounted.resolve("locked"));
      assertThatThrownBy(
              () -> SqliteStore.create(mounted.resolve("new"), Bench.OPENING, Bench.NOON))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("is read-only");
    } finally {
      mount("umount", mounted.toString());
    }
  }

  private static void requireReadable(Path file) throws Exception {
    byte[] before = Files.readAllBytes(file);
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThat(store.verify()).isEqualTo(new Verification(4, List.of()));
      assertThatThrownBy(() -> ChildWriter.appendNext(store))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("the file or its folder is read-only")
          .extracting(e -> ((StoreException) e).reason())
          .isEqualTo(Reason.READ_ONLY);
      assertThat(store.size()).isEqualTo(4);
    }
    assertThat(file).hasBinaryContent(before);
  }

  @Test
  void aFullDiskChangesNothing() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    boolean mounted =
        "root".equals(System.getProperty("user.name"))
            && mount("mount", "-t", "tmpfs", "-o", "size=192k", "tmpfs", disk.toString());
    assumeThat(mounted).as("only root can make a tiny disk for this test").isTrue();
    try {
      Path file = Bench.register(disk.resolve("full"));
      long[] written = new long[1];
      assertThatThrownBy(
              () -> {
                try (SqliteStore store = SqliteStore.open(file)) {
                  while (true) {
                    ChildWriter.appendNext(store);
                    written[0]++;
                  }
                }
              })
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("no room left on the disk")
          .extracting(e -> ((StoreException) e).reason())
          .isEqualTo(Reason.FULL);
      assertThat(written[0]).isPositive();
      try (SqliteStore store = SqliteStore.open(file)) {
        assertThat(store.verify()).isEqualTo(new Verification(4 + written[0], List.of()));
      }
      assertThat(names(disk)).containsExactly("full");
    } finally {
      mount("umount", disk.toString());
    }
  }

  /** What SQLite says when the file may not grow; it may have ended the transaction then. */
  @Test
  void aFailureThatIsPassedOverUndoesTheWriteAllTheSame() throws Exception {
    Path file = Bench.register(folder.resolve("small"));
    try (Sql sql = SqliteFile.open(file, false)) {
      sql.number("PRAGMA max_page_count = " + sql.number("PRAGMA page_count"));
      assertThatThrownBy(
              () ->
                  sql.transaction(
                      "BEGIN IMMEDIATE",
                      () -> {
                        try {
                          sql.update("UPDATE entry SET body = body || ?", "x".repeat(100_000));
                        } catch (StoreException passedOver) {
                          assertThat(passedOver.reason()).isEqualTo(Reason.FULL);
                        }
                        sql.update("DELETE FROM entry WHERE number = 4");
                        return null;
                      }))
          .isInstanceOf(StoreException.class)
          .extracting(e -> ((StoreException) e).reason())
          .isEqualTo(Reason.FULL);
      assertThat(sql.number("SELECT count(*) FROM entry")).isEqualTo(4);
    }
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThat(store.verify().isSound()).isTrue();
    }
  }
}
