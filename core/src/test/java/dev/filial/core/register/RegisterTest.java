package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class RegisterTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");

  private Register register =
      Register.empty().append(new RegisterOpened("KB", "Klara", null), "Klara", NOON).register();

  private Accepted say(Statement statement) {
    Register.Next next = register.append(statement, "Klara", NOON);
    register = next.register();
    return next.accepted();
  }

  private void plant(Code code, String taxon) {
    say(
        new PlantAcquired(
            code,
            Determination.of(taxon),
            Provenance.UNKNOWN,
            PartialDate.parse("2024"),
            List.of(),
            false,
            null,
            null));
  }

  private static Pollinated cross(Code code, Code seed, Pollen pollen, String date) {
    return new Pollinated(
        code,
        seed,
        pollen,
        PartialDate.parse(date),
        null,
        List.of(),
        Fraction.ZERO,
        Fraction.ZERO,
        Fraction.ZERO,
        null,
        null,
        false,
        null,
        null);
  }

  @Test
  void aCrossIsRecordedAndItsPollenParentMendedLater() {
    Code laui = Code.of(24, 1);
    Code agavoides = Code.of(24, 2);
    Code other = Code.of(24, 3);
    plant(laui, "Echeveria laui");
    plant(agavoides, "Echeveria agavoides");
    plant(other, "Echeveria colorata");
    Code made = Code.of(26, 1);
    say(cross(made, laui, new Pollen.OnePlant(agavoides), "2026-03-04"));
    say(
        new Amended(
            5, cross(made, laui, new Pollen.OnePlant(other), "2026-03-04"), "misread the tag"));
    assertThat(register.item(made).orElseThrow().descent())
        .singleElement()
        .extracting(Descent::pollen)
        .isEqualTo(other);
    assertThat(register.entriesMentioning(Subject.of(agavoides))).isEmpty();
    say(new Amended(6, null, "no, it was right"));
    assertThat(register.item(made).orElseThrow().descent())
        .singleElement()
        .extracting(Descent::pollen)
        .isEqualTo(agavoides);
    say(new Amended(5, null, "never made"));
    assertThat(register.item(made)).isEmpty();
    assertThatThrownBy(() -> say(cross(made, laui, new Pollen.OnePlant(agavoides), "2026-03-04")))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("never used again");
  }
}
