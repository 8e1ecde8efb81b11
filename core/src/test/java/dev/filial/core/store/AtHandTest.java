package dev.filial.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** What is kept at hand during a long write: bounded, and never wrong for that. */
class AtHandTest {

  private static Item thing(Code code, Item.Kind kind) {
    return Item.plain(code, kind, 7, null, List.of());
  }

  @Test
  void theNewestIsAtHandAndTheOldestIsLookedUpAgain() {
    Lately<Integer, String> lately = new Lately<>();
    List<Integer> lookedUp = new ArrayList<>();
    for (int key = 0; key < 20_000; key++) {
      lately.put(key, "put " + key);
      assertThat(lately.get(0, looked -> "looked up")).as("asked for all along").isEqualTo("put 0");
    }
    for (int key : List.of(19_999, 16_000, 1, 1)) {
      String value =
          lately.get(
              key,
              missing -> {
                lookedUp.add(missing);
                return "looked up";
              });
      assertThat(value).isEqualTo(key == 1 ? "looked up" : "put " + key);
    }
    assertThat(lookedUp).containsExactly(1);
    lately.forget(16_000);
    assertThat(lately.known(16_000)).isNull();
    lately.forget();
    assertThat(lately.known(19_999)).isNull();
  }

  @Test
  void ofTooManyEntriesSpokenOfTheEarlierAreLookedUp() {
    SpokenOf spokenOf = new SpokenOf(100);
    assertThat(spokenOf.isSurelyNot(100)).isFalse();
    assertThat(spokenOf.isSurelyNot(101)).isTrue();
    for (long entry = 101; entry <= 10_100; entry++) {
      spokenOf.add(entry, entry + 1);
      assertThat(spokenOf.isSurelyNot(entry)).isFalse();
    }
    assertThat(LongStream.rangeClosed(101, 10_100).noneMatch(spokenOf::isSurelyNot)).isTrue();
    assertThat(spokenOf.isSurelyNot(10_200)).isTrue();
  }

  @Test
  void aNewFamilyIsKnownUntilItHasGrownLarge() {
    NewFamilies families = new NewFamilies();
    Code old = Code.of(25, 1);
    Code cross = Code.of(26, 1);
    families.begin(thing(cross, Item.Kind.CROSS));
    families.put(thing(old.lot(1), Item.Kind.LOT));
    families.put(thing(cross.lot(1), Item.Kind.LOT));
    assertThat(families.under(old.lot(1))).as("who knows what else stands there").isNull();
    assertThat(families.under(cross.seedling(3))).containsOnlyKeys("26-001M", "26-001M H1");
    IntStream.rangeClosed(1, 100)
        .forEach(number -> families.put(thing(cross.seedling(number), Item.Kind.SEEDLING)));
    assertThat(families.under(cross)).isNull();
  }

  @Test
  void rowsOfALotAllArriveWhateverTheirNumber() {
    for (int rows : new int[] {0, 1, 31, 32, 33, 63, 64, 95}) {
      try (Sql sql = SqliteFile.inMemory()) {
        sql.run("CREATE TABLE sown (pot INTEGER, seed TEXT, day TEXT) STRICT");
        RowLot lot = new RowLot(sql, "INSERT OR FAIL INTO sown", "column1, column2, ?1", 2);
        for (int row = 0; row < rows; row++) {
          lot.share(row < 40 ? "monday" : "tuesday");
          lot.add(row, "seed " + row);
        }
        lot.write();
        List<String> written =
            sql.all(
                "SELECT pot || seed || day FROM sown ORDER BY pot", found -> found.getString(1));
        assertThat(written)
            .isEqualTo(
                IntStream.range(0, rows)
                    .mapToObj(row -> row + "seed " + row + (row < 40 ? "monday" : "tuesday"))
                    .toList());
      }
    }
  }

  @Test
  void whatWaitedWhenAWriteFailedIsNotInTheNext() {
    Entry first = Entry.seal(1, Bench.NOON, "Klara", "{}", Entry.NO_DIGEST);
    Entry second = Entry.seal(2, Bench.NOON, "Klara", "{}", first.digest());
    try (Sql sql = SqliteFile.inMemory()) {
      SqliteSchema.layOut(sql);
      SqliteWriter writer = new SqliteWriter(sql);
      assertThatThrownBy(() -> write(sql, writer, List.of(first, second, first)))
          .isInstanceOf(StoreException.class);
      assertThat(sql.number("SELECT count(*) FROM entry")).isZero();
      write(sql, writer, List.of(first));
      write(sql, writer, List.of(second));
      assertThat(sql.number("SELECT count(*) FROM entry")).isEqualTo(2);
    }
  }

  private static void write(Sql sql, SqliteWriter writer, List<Entry> entries) {
    boolean unused =
        sql.transaction(
            "BEGIN",
            () -> {
              writer.apply(
                  entries.stream()
                      .map(it -> new Delta(List.of(it), List.of(), List.of(), Map.of(), Map.of()))
                      .toList());
              return true;
            });
  }

  @Test
  void aRowOfAnotherFormIsRefused() {
    try (Sql sql = SqliteFile.inMemory()) {
      RowLot lot = new RowLot(sql, "INSERT INTO sown", "column1, column2", 2);
      assertThatThrownBy(() -> lot.add("one")).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
