package dev.filial.core.store;

import static dev.filial.core.store.Bench.NOON;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterRefusal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ReentryTest {

  private final MemoryStore old = MemoryStore.empty();
  private final MemoryStore fresh = MemoryStore.empty();

  private List<Entry> entriesWithout(long... lost) {
    old.append(Bench.OPENING, "Klara", NOON);
    Bench.fill(old);
    old.append(
        new Amended(4, Bench.cross(Code.of(26, 1), Code.of(24, 2), Code.of(24, 1)), "misread"),
        "Ada",
        NOON.plusSeconds(60));
    old.append(new Doubted(2, "Klara", null), "Klara", NOON);
    List<Entry> entries = new ArrayList<>();
    for (long number = 1; number <= old.size(); number++) {
      if (java.util.Arrays.binarySearch(lost, number) < 0) {
        entries.add(old.entry(number).orElseThrow());
      }
    }
    return entries;
  }

  private Reentry.Outcome take(List<Entry> entries) {
    return fresh.write("Bert", NOON, book -> Reentry.into(book, entries));
  }

  @Test
  void aWholeBookIsTakenAsItWas() {
    Reentry.Outcome outcome = take(entriesWithout());
    assertThat(outcome).isEqualTo(new Reentry.Outcome(6, List.of()));
    assertThat(fresh.entry(6)).isEqualTo(old.entry(6));
  }

  @Test
  void amendmentsFollowTheirEntryToItsNewNumber() {
    fresh.append(Bench.OPENING, "Bert", NOON);
    fresh.append(Bench.plant(Code.of(23, 1), "Echeveria elegans"), "Bert", NOON);
    take(entriesWithout());
    Amended amended = (Amended) fresh.effective(6).orElseThrow();
    assertThat(amended.entry()).isEqualTo(5);
    assertThat(fresh.entry(6).orElseThrow().by()).isEqualTo("Ada");
    assertThat(fresh.item(Code.of(26, 1)).orElseThrow().descent().get(0).seed())
        .isEqualTo(Code.of(24, 2));
  }

  @Test
  void withoutItsOpeningABookNeedsANewOne() {
    List<Entry> entries = entriesWithout(1);
    assertThatThrownBy(() -> take(entries))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("say whose it is to be");
    fresh.append(Bench.OPENING, "Bert", NOON);
    assertThat(take(entries)).isEqualTo(new Reentry.Outcome(5, List.of()));
  }

  @Test
  void whatSpeaksOfALostEntryIsLeftOut() {
    Reentry.Outcome outcome = take(entriesWithout(4));
    assertThat(outcome.leftOut())
        .containsExactly(new Reentry.LeftOut(5, "entry 4, which it speaks of, was not taken"));
    // The guess now speaks of entry 2 under the number it has here.
    assertThat(fresh.effective(4)).contains(new Doubted(2, "Klara", null));
  }

  @Test
  void anEntryThatWasChangedIsLeftOut() {
    List<Entry> entries = entriesWithout();
    Entry third = entries.get(2);
    entries.set(
        2,
        new Entry(
            3, third.time(), third.by(), third.body().replace("avoid", "void"), third.digest()));
    Reentry.Outcome outcome = take(entries);
    assertThat(outcome.leftOut()).extracting(Reentry.LeftOut::entry).containsExactly(3L, 4L, 5L);
    assertThat(outcome.leftOut().get(0).why()).contains("is not as it was written");
  }
}
