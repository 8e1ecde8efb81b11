package dev.filial.core.store;

import static dev.filial.core.store.SqliteRefusalTest.poke;
import static dev.filial.core.store.SqliteRefusalTest.run;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Noted;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is read out of a damaged register. */
class SqliteSalvageTest {

  /** The first page holds no entry. */
  private static final int PAGE = 4096;

  @TempDir Path folder;

  private Path file;
  private List<Entry> written;

  /** Sixty entries, some of them longer than a page, so that SQLite spreads them over several. */
  @BeforeEach
  void write() throws Exception {
    file = Bench.register(folder.resolve("balcony"));
    written = new ArrayList<>();
    try (SqliteStore store = SqliteStore.open(file)) {
      store.write(
          "Klara",
          Bench.NOON,
          book -> {
            for (int i = 0; i < 56; i++) {
              String text = "Läuse 🐛 ".repeat(i % 10 == 3 ? 40 * i : 3);
              book.append(new Noted(Code.of(24, 1), i + ": " + text.strip(), null));
            }
            return null;
          });
      for (long number = 1; number <= store.size(); number++) {
        written.add(store.entry(number).orElseThrow());
      }
    }
    // Or stale rows that SQLite left in free space would be found, and more be saved than is lost.
    run(file, "VACUUM");
  }

  private Salvage salvage() throws Exception {
    byte[] before = Files.readAllBytes(file);
    Salvage salvage = SqliteSalvage.read(file);
    assertThat(file).hasBinaryContent(before);
    return salvage;
  }

  /** Checks that each is an entry as it was written, and says which they are. */
  private List<Long> numbers(Salvage salvage) {
    for (Entry entry : salvage.entries()) {
      assertThat(entry.equals(written.get((int) entry.number() - 1)))
          .as("entry %s is as it was written", entry.number())
          .isTrue();
    }
    return salvage.entries().stream().map(Entry::number).toList();
  }

  private List<Long> all() {
    return written.stream().map(Entry::number).toList();
  }

  @Test
  void ofASoundFileEveryEntryIsRead() throws Exception {
    Salvage salvage = salvage();
    assertThat(numbers(salvage)).isEqualTo(all());
    assertThat(salvage.isWhole()).isTrue();
    assertThat(salvage.unchecked()).isEmpty();
  }

  @Test
  void whateverPagesWereOverwrittenAllOtherEntriesAreRead() throws Exception {
    byte[] whole = Files.readAllBytes(file);
    boolean lost = false;
    for (int page = 0; page < whole.length / PAGE; page++) {
      Files.write(file, whole);
      poke(file, (long) page * PAGE, new byte[PAGE]);
      Salvage salvage = salvage();
      long missing = salvage.lost().stream().mapToLong(Salvage.Range::size).sum();
      // Those behind the last one found cannot be known to be missing.
      long last = salvage.entries().get(salvage.entries().size() - 1).number();
      assertThat(salvage.entries().size() + missing).isEqualTo(last);
      assertThat(salvage.entries()).hasSizeGreaterThan(20);
      for (Entry entry : salvage.entries()) {
        // What lost a part of its text to the page is known to be changed.
        assertThat(
                entry.equals(written.get((int) entry.number() - 1))
                    || salvage.altered().contains(entry.number())
                    || salvage.unchecked().contains(entry.number()))
            .as("entry %s", entry.number())
            .isTrue();
      }
      lost |= salvage.entries().size() < written.size();
    }
    assertThat(lost).isTrue();
  }

  @Test
  void aFileWithoutItsFirstPageGivesAllItsEntries() throws Exception {
    poke(file, 0, new byte[PAGE]);
    assertThat(numbers(salvage())).isEqualTo(all());
  }

  @Test
  void aFileCutShortGivesWhatIsLeft() throws Exception {
    byte[] whole = Files.readAllBytes(file);
    Files.write(file, Arrays.copyOf(whole, whole.length * 2 / 3 + 17));
    Salvage salvage = salvage();
    assertThat(numbers(salvage)).hasSizeGreaterThan(10);
  }

  @Test
  void aChangedEntryIsReadAndSaidToBeChanged() throws Exception {
    run(file, "UPDATE entry SET body = replace(body, 'laui', 'lauj') WHERE number = 2", "VACUUM");
    Salvage salvage = salvage();
    assertThat(salvage.altered()).containsExactly(2L);
    assertThat(salvage.entries().get(1).body()).contains("Echeveria lauj");
    assertThat(salvage.entries()).hasSameSizeAs(written);
    assertThat(salvage.isWhole()).isFalse();
  }

  @Test
  void aChangedDigestIsMendedFromTheEntryAfterIt() throws Exception {
    run(file, "UPDATE entry SET digest = replace(digest, 'a', 'b') WHERE number = 3", "VACUUM");
    Salvage salvage = salvage();
    assertThat(numbers(salvage)).isEqualTo(all());
    assertThat(salvage.isWhole()).isTrue();
  }

  @Test
  void behindALostEntryOneCannotBeChecked() throws Exception {
    run(file, "DELETE FROM entry WHERE number BETWEEN 5 AND 7", "VACUUM");
    Salvage salvage = salvage();
    assertThat(salvage.lost()).containsExactly(new Salvage.Range(5, 7));
    assertThat(salvage.lost().get(0)).hasToString("entries 5 to 7");
    assertThat(salvage.unchecked()).containsExactly(8L);
  }

  @Test
  void ofTwoRowsOfOneNumberTheOneInTheChainCounts() {
    Entry other =
        Entry.seal(4, Bench.NOON, "Klara", "{\"kind\":\"note\"}", written.get(2).digest());
    List<Entry> found = new ArrayList<>(written);
    found.add(3, other);
    assertThat(numbers(Salvage.of(found))).isEqualTo(all());
  }

  @Test
  void aFileOfSomethingElseGivesNothing() throws Exception {
    Path letter = folder.resolve("letter");
    Files.writeString(letter, "Dear Klara, ".repeat(5000));
    assertThat(SqliteSalvage.read(letter).entries()).isEmpty();
    assertThatThrownBy(() -> SqliteSalvage.read(folder.resolve("none")))
        .isInstanceOf(StoreException.class)
        .hasMessageContaining("there is no file");
  }

  @Test
  void whatIsLeftCanBeWrittenIntoANewRegister() throws Exception {
    // The second plant is lost, and with it what leans on it: the cross.
    run(file, "DELETE FROM entry WHERE number = 3", "VACUUM");
    Salvage salvage = salvage();
    Path fresh = folder.resolve("fresh");
    Reentry.Outcome outcome =
        SqliteStore.create(
            fresh, "Klara", Bench.NOON, book -> Reentry.into(book, salvage.entries()));
    assertThat(outcome.taken()).isEqualTo(58);
    assertThat(outcome.leftOut())
        .singleElement()
        .satisfies(
            left -> {
              assertThat(left.entry()).isEqualTo(4);
              assertThat(left.why())
                  .contains(Code.of(24, 2).text())
                  .contains("not in this register");
            });
    try (SqliteStore store = SqliteStore.open(fresh)) {
      assertThat(store.verify()).isEqualTo(new Verification(58, List.of()));
      assertThat(store.entry(3).orElseThrow().body()).isEqualTo(written.get(4).body());
    }
  }
}
