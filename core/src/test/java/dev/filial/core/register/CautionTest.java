package dev.filial.core.register;

import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.on;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionTest {

  private static Sown sown(String treatment) {
    return new Sown(
        code("25-001 S1"),
        code("25-001 H1"),
        null,
        Count.of(10),
        null,
        null,
        false,
        null,
        false,
        null,
        null,
        List.of(treatment),
        List.of(),
        null,
        null);
  }

  @ParameterizedTest
  @CsvSource({
    "3 % hydrogen peroxide, CHEMICAL",
    "potassium permanganate, CHEMICAL",
    "a fungicide, CHEMICAL",
    "'bottom heat, 22 degrees', ELECTRIC",
    "'soaked, then under an LED', ELECTRIC",
    "under LEDs, ELECTRIC",
    "gibberellic acid, HORMONE",
    "ten seconds in boiling water, HOT"
  })
  void whatWantsCareIsKnownByItsWords(String treatment, Caution caution) {
    assertThat(Caution.of(sown(treatment))).containsExactly(caution);
  }

  @ParameterizedTest
  @CsvSource({"boiled water", "on the window ledge", "sealed and filled", "clamped"})
  void wordsThatOnlyHoldSuchAWordWantNone(String treatment) {
    assertThat(Caution.of(sown(treatment))).isEmpty();
  }

  @Test
  void severalAreAllNamed() {
    assertThat(Caution.of(sown("bleach, then a heat mat")))
        .containsExactlyInAnyOrder(Caution.CHEMICAL, Caution.ELECTRIC);
  }

  @Test
  void aTreatmentIsKnownByItsKindWhateverItsName() {
    assertThat(
            Caution.of(
                new Treated(
                    List.of(code("25-001 P1")),
                    Treatment.FUNGICIDE,
                    "the blue bottle",
                    null,
                    null,
                    null,
                    null)))
        .containsExactly(Caution.CHEMICAL);
  }

  @Test
  void whatChangesHandsMayCrossABorder() {
    assertThat(Caution.of(fate("24-001", Fate.GIVEN, null))).containsExactly(Caution.BORDER);
    assertThat(Caution.of(fate("24-001", Fate.DEAD, null))).isEmpty();
    assertThat(
            Caution.of(
                new SeedAcquired(
                    code("25-001"),
                    Determination.UNKNOWN,
                    new Provenance("Otto Muster", null, null, null),
                    on("2025"),
                    Count.of(10),
                    null,
                    null)))
        .containsExactly(Caution.BORDER);
  }

  @Test
  void theEntriesThatCallForOneAreFoundAgain() {
    Bench bench = new Bench();
    bench.plant("24-001", "Echeveria laui");
    long gift = bench.say(fate("24-001", Fate.GIVEN, "2025"));
    assertThat(bench.book.entriesMentioning(Subject.of(Caution.BORDER))).containsExactly(gift);
  }
}
