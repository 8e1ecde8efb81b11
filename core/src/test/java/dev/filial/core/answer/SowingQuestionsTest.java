package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.store.MemoryStore;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which lot or pot is meant, what a mixture holds, how pots were filled, what to mind. */
class SowingQuestionsTest {

  private static final Instant NOON = Instant.parse("2026-03-04T12:00:00Z");
  private static final PartialDate DAY = PartialDate.parse("2026-03-04");
  private static final Code PACKET = Code.of(26, 1);

  private final MemoryStore store = MemoryStore.empty();

  SowingQuestionsTest() {
    write(new RegisterOpened("KB", "Klara", null), packet(PACKET, Count.of(40)));
  }

  private void write(Statement... statements) {
    Arrays.stream(statements).forEach(statement -> store.append(statement, "Klara", NOON));
  }

  private static SeedAcquired packet(Code code, Count count) {
    return new SeedAcquired(
        code, Determination.of("Echeveria laui"), Provenance.UNKNOWN, DAY, count, null, null);
  }

  private static Sown sown(int number, Count seeds, List<Sown.Filled> pots, String... treatments) {
    return new Sown(
        PACKET.sowing(number),
        PACKET.lot(1),
        DAY,
        seeds,
        null,
        null,
        false,
        null,
        false,
        null,
        null,
        List.of(treatments),
        pots,
        null,
        null);
  }

  private Item item(Code code) {
    return store.item(code).orElseThrow();
  }

  @Test
  void theOnlyLotIsMeantByThePacketAndALotByItself() {
    Holdings holdings = Holdings.in(store);

    assertThat(holdings.lot(item(PACKET)).code()).isEqualTo(PACKET.lot(1));
    assertThat(holdings.lot(item(PACKET.lot(1))).code()).isEqualTo(PACKET.lot(1));
  }

  @Test
  void aLotThatIsUsedUpIsNotMeant() {
    write(new LotSplit(PACKET.lot(2), PACKET.lot(1), DAY, Count.of(40), null, null));

    assertThat(Holdings.in(store).lot(item(PACKET)).code()).isEqualTo(PACKET.lot(2));
  }

  @Test
  void ofTwoLotsNoneIsGuessed() {
    write(new LotSplit(PACKET.lot(2), PACKET.lot(1), DAY, Count.of(10), null, null));

    assertThatThrownBy(() -> Holdings.in(store).lot(item(PACKET)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("26-001M has 2 seed lots: 26-001M H1 (30), 26-001M H2 (10); name one of them");
  }

  @Test
  void aSowingDividedIntoPotsIsMeantByItsPotsAndOneThatIsNotByItself() {
    write(sown(1, Count.of(10), List.of()));
    assertThat(Holdings.in(store).pot(item(PACKET)).code()).isEqualTo(PACKET.sowing(1));

    write(sown(2, Count.of(10), List.of(new Sown.Filled(PACKET.group(1), Count.of(10), null))));
    assertThat(Holdings.in(store).pots(item(PACKET)))
        .extracting(Item::code)
        .containsExactly(PACKET.group(1), PACKET.sowing(1));
  }

  @Test
  void seedlingsComeFromTheWholeCodeOnlyWhereNoSowingWasWrittenDown() {
    assertThat(Holdings.in(store).stock(item(PACKET)).code()).isEqualTo(PACKET);

    write(sown(1, Count.of(10), List.of()));
    assertThat(Holdings.in(store).stock(item(PACKET)).code()).isEqualTo(PACKET.sowing(1));
  }

  @Test
  void aLotIsNoPotAndAPacketNoCross() {
    assertThatThrownBy(() -> Holdings.in(store).pot(item(PACKET.lot(1))))
        .hasMessageContaining("26-001M H1 is a seed lot, not a pot or a sowing");
    assertThatThrownBy(() -> Holdings.in(store).cross(item(PACKET)))
        .hasMessageContaining("26-001M is a packet of seed, not a cross");
  }

  @Test
  void countedLotsMakeUpAMixtureInProportion() {
    write(packet(Code.of(26, 2), Count.of(60)));

    MixtureShares shares =
        MixtureShares.of(List.of(item(PACKET.lot(1)), item(Code.of(26, 2).lot(1))));

    assertThat(shares.counted()).isTrue();
    assertThat(shares.shares()).containsExactly(Fraction.of(2, 5), Fraction.of(3, 5));
  }

  @ParameterizedTest
  @ValueSource(strings = {"~60", "many", "?"})
  void oneGuessAmongThemMakesTheLotsCountAlike(String guess) {
    write(packet(Code.of(26, 2), Count.parse(guess)));

    MixtureShares shares =
        MixtureShares.of(List.of(item(PACKET.lot(1)), item(Code.of(26, 2).lot(1))));

    assertThat(shares.counted()).isFalse();
    assertThat(shares.shares()).containsExactly(Fraction.HALF, Fraction.HALF);
  }

  @Test
  void anEmptyLotMakesUpNothing() {
    Code given = Code.of(26, 2).lot(1);
    write(
        packet(Code.of(26, 2), Count.of(5)),
        new FateRecorded(List.of(given), Fate.GIVEN, null, Count.of(5), "Otto", null, null));
    List<Item> lots = List.of(item(PACKET.lot(1)), item(given));

    assertThatThrownBy(() -> MixtureShares.of(lots))
        .hasMessageContaining("no seed left in 26-002N H1");
  }

  @ParameterizedTest
  @CsvSource({
    "40, 2, 20, 20",
    "40, 3, ~13, ~13",
    "~40, 2, ~20, ~20",
    "many, 2, ?, ?",
    "many, 1, many, many",
    "0, 2, 0, 0"
  })
  void potsAreFilledAlikeAndWhatDoesNotComeOutEvenIsAGuess(
      String seeds, int pots, String first, String last) {
    List<Sown.Filled> filled = PotFilling.evenly(store, PACKET, Count.parse(seeds), pots);

    assertThat(filled).hasSize(pots);
    assertThat(filled.get(0).group()).isEqualTo(PACKET.group(1));
    assertThat(filled.get(0).seeds()).hasToString(first);
    assertThat(filled.get(pots - 1).seeds()).hasToString(last);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 1001})
  void noPotsAndTooManyAreRefused(int pots) {
    assertThatThrownBy(() -> PotFilling.evenly(store, PACKET, Count.of(40), pots))
        .hasMessageContaining("a sowing is spread over 1 to 1000");
  }
}
