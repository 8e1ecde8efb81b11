package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class EntryTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  /** Source: Python 3 hashlib over the bytes that docs/entries.md describes. */
  @Test
  void theDigestIsWhatAnotherLanguageWorksOutFromTheDescription() {
    Entry first =
        Entry.seal(
            1,
            NOON,
            "Klara",
            "{\"kind\":\"register\",\"mark\":\"KB\",\"grower\":\"Klara\"}",
            Entry.NO_DIGEST);
    assertThat(first.digest())
        .isEqualTo("2c67a0ca332e59a37e6a2745ce2a5599c81c7ca1cc8380a7b379f75d44041016");
    Entry second = Entry.seal(2, NOON.plusSeconds(1), "Zoë", "{\"kind\":\"note\"}", first.digest());
    assertThat(second.digest())
        .isEqualTo("483079db7306fddee60d72c2c7aecee94ec7069a7ef8583145f2c2cd93cf0230");
    assertThat(second.isIntact(first.digest())).isTrue();
    assertThat(second.isIntact(Entry.NO_DIGEST)).isFalse();
  }

  @Property
  void itsTimeIsWrittenAsTheJdkWritesIt(@ForAll("times") Instant time) {
    assertThat(Entry.seal(1, time, "Klara", "{}", Entry.NO_DIGEST).timeText())
        .isEqualTo(time.toString());
  }

  @Provide
  Arbitrary<Instant> times() {
    return Arbitraries.oneOf(
        Arbitraries.longs().between(-99_999_999_999L, 299_999_999_999L).map(Instant::ofEpochSecond),
        Arbitraries.longs().between(0, 4_000_000_000_000L).map(Instant::ofEpochMilli),
        Arbitraries.of(Instant.MIN, Instant.MAX, Instant.EPOCH));
  }

  @Test
  void whatRunsTogetherToTheSameBytesHasAnotherDigest() {
    assertThat(Entry.seal(1, NOON, "ab", "c", Entry.NO_DIGEST).digest())
        .isNotEqualTo(Entry.seal(1, NOON, "a", "bc", Entry.NO_DIGEST).digest());
  }

  @Test
  void anEntrySaysWhoWroteIt() {
    Clerk clerk = Clerk.of(new RegisterTables());
    Statement opening = new RegisterOpened("KB", "Klara", null);
    for (String nobody : new String[] {" ", "a\nb", "\ud83c"}) {
      assertThatThrownBy(() -> clerk.accept(opening, nobody, NOON))
          .isInstanceOf(RegisterRefusal.class)
          .hasMessage("an entry says who wrote it: give a name on one line");
    }
    assertThat(clerk.accept(opening, " Klara ", NOON.plusMillis(7)).accepted().entry())
        .extracting(Entry::by, Entry::time)
        .containsExactly("Klara", NOON);
  }

  @Test
  void halfACharacterIsRefusedBecauseNoFileKeepsIt() {
    Bench bench = new Bench();
    bench.plant("24-001", "Echeveria laui");
    assertThat(bench.refusal(new Noted(Bench.code("24-001"), "a\ud83c", null)))
        .hasMessage("the entry holds half a character, which no file keeps; type that text again");
  }

  @Test
  void whatIsTakenIsWhatWillBeReadBack() {
    Bench bench = new Bench();
    PlantAcquired plant = Bench.acquired("24-001", "Echeveria laui", null);
    long entry =
        bench.say(
            new PlantAcquired(
                plant.code(),
                plant.determination(),
                new Provenance("", null, null, null),
                null,
                plant.names(),
                false,
                "",
                null));
    assertThat(bench.book.effective(entry))
        .isEqualTo(bench.book.entry(entry).map(Entry::statement));
    assertThat(bench.item("24-001").place()).isNull();
  }
}
