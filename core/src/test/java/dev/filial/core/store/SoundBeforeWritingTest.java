package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Noted;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book that was damaged is not long written to. */
class SoundBeforeWritingTest {

  private static final Instant DAY = Instant.parse("2026-03-04T12:00:00Z");
  private static final Code PLANT = Code.parse("26-001");

  @TempDir private Path folder;

  private Path book(int entries) {
    Path file = folder.resolve("book");
    long unused =
        SqliteStore.create(
            file,
            "Klara Beispiel",
            DAY,
            book -> {
              Accepted opened = book.append(new RegisterOpened("KB", "Klara Beispiel", null));
              Accepted planted =
                  book.append(
                      new PlantAcquired(
                          PLANT,
                          Determination.of("Echeveria laui"),
                          Provenance.UNKNOWN,
                          null,
                          List.of(),
                          false,
                          null,
                          null));
              for (long entry = planted.entry().number(); entry < entries; entry++) {
                Accepted unusedNote = book.append(new Noted(PLANT, "note", null));
              }
              return opened.entry().number();
            });
    return file;
  }

  private static void damage(Path file, long entry) throws SQLException {
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("UPDATE entry SET body = replace(body, '}', ' }') WHERE number = " + entry);
    }
  }

  private static void write(Path file, String text) {
    try (SqliteStore store = SqliteStore.open(file)) {
      Accepted unused =
          store.write("Klara Beispiel", DAY, book -> book.append(new Noted(PLANT, text, null)));
    }
  }

  @Test
  void aShortBookIsLookedOverWhole() throws SQLException {
    Path file = book(8);
    damage(file, 3);
    assertThatThrownBy(() -> write(file, "one more"))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("is damaged: entry 3 is not as it was written");
  }

  @Test
  void theLastEntriesOfALongOneAreLookedOver() throws SQLException {
    Path file = book(400);
    damage(file, 398);
    assertThatThrownBy(() -> write(file, "one more"))
        .hasMessageContaining("is damaged: entry 398 is not as it was written");
  }

  /**
   * Of 14 stretches one is drawn, and of one more after every fourth writing: that 400 drawings all
   * miss one has odds of (13/113)⁴, 1 in 5,700.
   */
  @Test
  void damageToAnOlderEntryIsFoundBeforeLong() throws SQLException {
    Path file = book(60);
    damage(file, 30);
    int written = 0;
    String found = "";
    while (found.isEmpty() && written < 400) {
      try {
        write(file, "further " + written);
        written++;
      } catch (StoreException e) {
        found = String.valueOf(e.getMessage());
      }
    }
    assertThat(found).contains("entry 30 is not as it was written");
  }

  @Test
  void aMissingEntryIsFoundToo() throws SQLException {
    Path file = book(14);
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement()) {
      statement.execute("DELETE FROM entry WHERE number = 12");
    }
    assertThatThrownBy(() -> write(file, "one more")).hasMessageContaining("entry 12 is not");
  }
}
