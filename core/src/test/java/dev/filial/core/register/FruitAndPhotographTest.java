package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.store.MemoryStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FruitAndPhotographTest {

  private static final Code PLANT = Code.of(24, 1);
  private static final Code CROSS = Code.of(26, 1);

  @TempDir Path folder;

  private final MemoryStore register = MemoryStore.empty();

  private List<String> say(Statement statement) {
    return register.append(statement, "Klara", Instant.EPOCH).warnings();
  }

  private void selfed(Count flowers) {
    say(new RegisterOpened("KB", "Klara", null));
    say(
        new PlantAcquired(
            PLANT, Determination.UNKNOWN, Provenance.UNKNOWN, null, List.of(), false, null, null));
    say(
        new Pollinated(
            CROSS,
            PLANT,
            new Pollen.Itself(),
            PartialDate.parse("2026-03-04"),
            flowers,
            List.of(),
            Fraction.ZERO,
            Fraction.ZERO,
            Fraction.ZERO,
            null,
            null,
            false,
            null,
            null));
  }

  private List<String> fruit(Count set, Count failed) {
    return say(
        new FruitRecorded(
            CROSS, PartialDate.parse("2026-03-20"), set, failed, null, null, null, null));
  }

  @Test
  void moreFlowersSetOrFailedThanWerePollinatedIsWorthASecondLook() {
    selfed(Count.of(4));
    assertThat(fruit(Count.of(1), Count.of(1))).isEmpty();
    assertThat(fruit(Count.of(2), null)).isEmpty();
    assertThat(fruit(null, Count.of(1)))
        .containsExactly(
            "5 flowers of "
                + CROSS.text()
                + " have set or failed, and 4 were pollinated; see which number is wrong, or"
                + " whether one was entered twice");
  }

  @Test
  void guessesAreNotHeldAgainstEachOther() {
    selfed(Count.about(4));
    assertThat(fruit(Count.of(9), null)).isEmpty();
  }

  @Test
  void fruitBeforeTheFlowerIsRefused() {
    selfed(Count.of(4));
    assertThatThrownBy(
            () ->
                say(
                    new FruitRecorded(
                        CROSS,
                        PartialDate.parse("2026-03-01"),
                        Count.of(1),
                        null,
                        null,
                        null,
                        null,
                        null)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("2026-03-01 is before the cross was made");
  }

  @Test
  void aPhotographIsKnownByTheDigestOfItsBytes() throws IOException {
    Path picture = Files.writeString(folder.resolve("laui.jpg"), "abc");
    // FIPS 180-2, appendix B.1: SHA-256 of the three letters abc.
    assertThat(Photograph.of(picture, "pictures/laui.jpg"))
        .isEqualTo(
            new Photograph(
                "pictures/laui.jpg",
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
  }

  @Test
  void aPhotographThatIsNotThereIsNotRecorded() {
    assertThatThrownBy(() -> Photograph.of(folder.resolve("gone.jpg"), "gone.jpg"))
        .isInstanceOf(NoSuchFileException.class);
  }
}
