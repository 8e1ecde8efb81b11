package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Noted;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.Statement;
import dev.filial.core.store.MemoryStore;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class RecentCrossTest {

  private static final Code LAUI = Code.of(24, 1);
  private static final Code AGAVOIDES = Code.of(24, 2);

  private final MemoryStore register = MemoryStore.empty();

  private void say(Statement statement) {
    register.append(statement, "Klara", Instant.EPOCH);
  }

  private void plant(Code code, String name) {
    say(
        new PlantAcquired(
            code,
            Determination.UNKNOWN,
            Provenance.UNKNOWN,
            null,
            List.of(name),
            false,
            null,
            null));
  }

  private void cross(int number, Code seed, Code pollen) {
    say(
        new Pollinated(
            Code.of(26, number),
            seed,
            new Pollen.OnePlant(pollen),
            null,
            null,
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

  @BeforeEach
  void twoPlants() {
    say(new RegisterOpened("KB", "Klara", null));
    plant(LAUI, "Grey Lady");
    plant(AGAVOIDES, "Grey Lady's Neighbour");
  }

  @Test
  void theLastCrossThatWasNotStruckCounts() {
    assertThat(RecentCross.in(register)).isEmpty();
    cross(1, LAUI, AGAVOIDES);
    cross(2, AGAVOIDES, LAUI);
    say(new Noted(LAUI, "in full flower", null));
    assertThat(RecentCross.in(register)).map(Pollinated::seedParent).hasValue(AGAVOIDES);
    say(new Amended(5, null, "never made"));
    assertThat(RecentCross.in(register)).map(Pollinated::seedParent).hasValue(LAUI);
  }

  @Test
  void aCrossOfLongAgoIsNoLongerProposed() {
    cross(1, LAUI, AGAVOIDES);
    for (int i = 0; i < 499; i++) {
      say(new Noted(LAUI, "watered", null));
    }
    assertThat(RecentCross.in(register)).isPresent();
    say(new Noted(LAUI, "watered", null));
    assertThat(RecentCross.in(register)).isEmpty();
  }

  @Test
  void aNameThatAnotherPlantHasIsNoted() {
    assertThat(Namesakes.of(register, " grey lady ", AGAVOIDES)).containsExactly(LAUI);
    assertThat(Namesakes.note(register, "Grey Lady", AGAVOIDES))
        .hasValueSatisfying(note -> assertThat(note).contains(LAUI.text()));
    assertThat(Namesakes.note(register, "Grey Lady", LAUI)).isEmpty();
    assertThat(Namesakes.note(register, "Grey", LAUI)).isEmpty();
  }
}
