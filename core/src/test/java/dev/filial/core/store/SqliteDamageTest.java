package dev.filial.core.store;

import static dev.filial.core.store.SqliteRefusalTest.poke;
import static dev.filial.core.store.SqliteRefusalTest.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Joined;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.store.StoreException.Reason;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Every change that was not made through the book is found. */
class SqliteDamageTest {

  @TempDir Path folder;

  private Path file;

  @BeforeEach
  void write() {
    file = Bench.register(folder.resolve("balcony"));
    try (SqliteStore store = SqliteStore.open(file)) {
      store.write(
          "Klara",
          Bench.NOON,
          book -> {
            book.append(
                new TaxonDeclared(
                    "Echeveria laui", List.of(), null, 2, null, false, Map.of(), false, null));
            book.append(new TraitDeclared("edge", List.of("red", "green"), null, null, null, null));
            book.append(
                new Amended(
                    4, Bench.cross(Code.of(26, 1), Code.of(24, 2), Code.of(24, 1)), "misread"));
            book.append(Bench.plant(Code.of(24, 3), "Echeveria colorata"));
            return book.append(new Joined(Code.of(24, 2), Code.of(24, 3), "one stem"));
          });
    }
  }

  private Verification verify() {
    try (SqliteStore store = SqliteStore.open(file)) {
      return store.verify();
    }
  }

  private static int find(byte[] in, String text) {
    byte[] sought = text.getBytes(StandardCharsets.UTF_8);
    for (int at = in.length - sought.length; at >= 0; at--) {
      if (java.util.Arrays.equals(in, at, at + sought.length, sought, 0, sought.length)) {
        return at;
      }
    }
    throw new AssertionError(text + " is not there");
  }

  @Test
  void aByteFlippedInsideAnEntryPassesSqlitesCheckAndNotOurs() throws Exception {
    byte[] bytes = Files.readAllBytes(file);
    // In the body of entry 3, where the tables derived from it have no part.
    int at = find(bytes, "\"names\":[\"Rosa 2\"]") + "\"names\":[\"".length();
    poke(file, at, (byte) (bytes[at] ^ 1));
    try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
        Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA integrity_check")) {
      assertThat(row.getString(1)).isEqualTo("ok");
    }
    byte[] damaged = Files.readAllBytes(file);
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThat(store.entry(2)).isPresent();
      assertThatThrownBy(() -> store.entry(3))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("entry 3 is not as it was written")
          .extracting(e -> ((StoreException) e).reason())
          .isEqualTo(Reason.DAMAGED);
      List<Long> read = new ArrayList<>();
      assertThatThrownBy(
              () ->
                  store.readAll(Set.of(PlantAcquired.class), (statement, entry) -> read.add(entry)))
          .as("read together with others too")
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("entry 3 is not as it was written");
      assertThat(read).containsExactly(2L);
      assertThat(store.verify())
          .isEqualTo(
              new Verification(
                  8, List.of("entry 3 is not as it was written: its digest does not fit")));
    }
    assertThat(file).hasBinaryContent(damaged);
  }

  @ParameterizedTest
  @CsvSource({
    "body,    'UPDATE entry SET body = replace(body, ''Rosa 2'', ''Rose 2'') WHERE number = 3'",
    "time,    'UPDATE entry SET time = ''2026-03-04T12:00:01Z'' WHERE number = 3'",
    "no time, 'UPDATE entry SET time = ''noon'' WHERE number = 3'",
    "writer,  'UPDATE entry SET writer = ''Clara'' WHERE number = 3'",
  })
  void anyPartOfAnEntryThatWasChangedIsFound(String part, String sql) throws Exception {
    run(file, sql);
    assertThat(verify().faults())
        .as(part)
        .containsExactly("entry 3 is not as it was written: its digest does not fit");
  }

  @Test
  void aChangedDigestIsFoundWhereItStandsAndWhereItIsRemembered() throws Exception {
    run(file, "UPDATE entry SET digest = replace(digest, 'a', 'b') WHERE number = 3");
    assertThat(verify().faults())
        .containsExactly(
            "entry 3 is not as it was written: its digest does not fit",
            "entry 4 is not as it was written: its digest does not fit");
  }

  @Test
  void missingEntriesAreFound() throws Exception {
    run(file, "DELETE FROM entry WHERE number IN (3, 4, 6)");
    assertThat(verify().faults())
        .containsExactly("entries 3 to 4 are missing", "entry 6 is missing");
  }

  @Test
  void entriesTakenOffTheEndAreMissedByWhatWasDerivedFromThem() throws Exception {
    run(file, "DELETE FROM entry WHERE number = 9");
    assertThat(verify().faults()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE in_force SET body = replace(body, '24-001', '24-002')",
        "DELETE FROM in_force",
        "INSERT INTO in_force VALUES (2, NULL)",
        "DELETE FROM concerns WHERE subject LIKE 'code:24-001%'",
        "INSERT INTO concerns VALUES ('code:24-001A', 1, 3)",
        "UPDATE item SET taxon = 'Echeveria lauj' WHERE number = 1",
        "UPDATE item SET number = 77 WHERE number = 1 AND year = 24",
        "UPDATE item SET whole = '24-099X' WHERE year = 26",
        "UPDATE item SET not_diploid = 1 WHERE year = 26",
        "UPDATE item SET same_as = NULL",
        "DELETE FROM item WHERE year = 26",
        "UPDATE descent SET pollen = seed",
        "DELETE FROM descent",
        "DELETE FROM own_name",
        "INSERT INTO own_name VALUES ('rose', 'Rose', '24-001A')",
        "UPDATE taxon SET ploidy = 4",
        "UPDATE taxon SET ploidy = NULL",
        "DELETE FROM trait",
        "DROP INDEX item_year",
        "CREATE TRIGGER silent AFTER INSERT ON entry BEGIN DELETE FROM trait; END",
      })
  void anyDerivedRowThatWasChangedIsFound(String sql) throws Exception {
    assertThat(verify()).isEqualTo(new Verification(9, List.of()));
    run(file, sql);
    assertThat(verify().faults()).as(sql).isNotEmpty();
    assertThat(verify().entries()).as("the entries themselves are sound").isEqualTo(9);
  }

  @Test
  void aFaultNamesWhatIsWrong() throws Exception {
    run(file, "UPDATE item SET taxon = 'Echeveria lauj' WHERE number = 1 AND year = 24");
    assertThat(verify().faults())
        .containsExactly(
            Code.of(24, 1).text()
                + ": what this code stands for is not kept as the entries give it");
  }

  @Test
  void aRowThatSaysWhatCannotBeIsDamageAndNoDefect() throws Exception {
    run(file, "UPDATE item SET fate = 'eaten' WHERE year = 26");
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThatThrownBy(() -> store.item(Code.of(26, 1)))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("is damaged")
          .extracting(e -> ((StoreException) e).reason())
          .isEqualTo(Reason.DAMAGED);
    }
  }

  @Test
  void anAnswerThatBreaksOnADamagedRegisterTellsOfTheDamage() throws Exception {
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThatThrownBy(() -> store.read(view -> view.entry(99).orElseThrow()))
          .as("a register that is sound")
          .isInstanceOf(NoSuchElementException.class);
    }
    run(file, "UPDATE concerns SET entry = 99 WHERE entry = 4");
    Subject cross = Subject.of(Code.of(26, 1));
    try (SqliteStore store = SqliteStore.open(file)) {
      assertThatThrownBy(
              () ->
                  store.read(
                      view ->
                          view.entriesOn(cross).stream()
                              .map(entry -> view.effective(entry).orElseThrow())
                              .toList()))
          .isInstanceOf(StoreException.class)
          .hasMessageContaining("is damaged")
          .extracting(e -> ((StoreException) e).reason())
          .isEqualTo(Reason.DAMAGED);
    }
  }

  /** No page of the file can be overwritten without verification, or opening, noticing. */
  @Test
  void anOverwrittenPageIsFound() throws Exception {
    byte[] whole = Files.readAllBytes(file);
    for (int page = 0; page < whole.length / 4096; page++) {
      Files.write(file, whole);
      poke(file, page * 4096L + (page == 0 ? 100 : 0), new byte[3000]);
      List<String> faults;
      try {
        faults = verify().faults();
      } catch (StoreException | RegisterRefusal e) {
        faults = List.of(e.getMessage());
      }
      assertThat(faults).as("page %s", page + 1).isNotEmpty();
    }
  }
}
