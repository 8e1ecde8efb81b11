package dev.filial.core.register;

import static dev.filial.core.register.Bench.alive;
import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.edge;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.germinated;
import static dev.filial.core.register.Bench.harvest;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.observed;
import static dev.filial.core.register.Bench.potted;
import static dev.filial.core.register.Bench.sowing;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class StockRulesTest {

  private final Bench bench = new Bench();
  private final String lot = code("25-001 H1").text();
  private final String pot = code("25-001 P1").text();
  private long harvested;
  private long sown;

  @BeforeEach
  void fortySeeds() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria agavoides");
    bench.say(cross("25-001", "24-001", "24-002", "2025-03-04"));
    harvested = bench.say(harvest(lot, "2025-06-01", "40"));
    sown = bench.say(sowing("25-001 S1", lot, "2025-06-10", "30"));
  }

  private static LotSplit split(String to, String count) {
    return new LotSplit(
        code("25-001 " + to), code("25-001 H1"), null, Count.parse(count), null, null);
  }

  @Nested
  class SeedRunsDown {

    @Test
    void toTheLastSeedAndNotBelow() {
      assertThat(bench.item(lot).count()).isEqualTo(Count.of(10));
      assertThat(bench.refusal(split("H2", "11")))
          .hasMessage(lot + " held 10 when 11 left it; count it again first, or mend the number");
      bench.say(split("H2", "10"));
      assertThat(bench.item(lot).fate()).isEqualTo(Fate.USED_UP);
      assertThat(bench.item("25-001 H2").count()).isEqualTo(Count.of(10));
    }

    @Test
    void andAHarvestCannotBeAmendedBelowWhatWasSown() {
      RegisterRefusal refusal = bench.refusal(amended(harvested, harvest(lot, "2025-06-01", "20")));
      assertThat(refusal)
          .hasMessage(
              "an entry hangs on it and would no longer hold: entry 6: "
                  + lot
                  + " held 20 when 30 left it; count it again first, or mend the number. Amend or"
                  + " strike it first");
      assertThat(refusal.entries()).containsExactly(sown);
      bench.say(amended(harvested, harvest(lot, "2025-06-01", "30")));
      assertThat(bench.item(lot).fate()).isEqualTo(Fate.USED_UP);
    }

    @Test
    void byGiftsToo() {
      assertThat(bench.refusal(fate(lot, Fate.GIVEN, null, "12")))
          .hasMessageContaining(lot + " held 10 when 12 left it");
      bench.say(fate(lot, Fate.GIVEN, "2025-07", "4"));
      assertThat(bench.item(lot).count()).isEqualTo(Count.of(6));
      assertThat(bench.item(lot).fate()).isEqualTo(Fate.ALIVE);
    }

    @Test
    void andAGuessIsNeverOverdrawn() {
      bench.say(harvest("25-001 H3", null, "~20"));
      bench.say(sowing("25-001 S3", "25-001 H3", null, "25"));
      assertThat(bench.item("25-001 H3").count()).isEqualTo(Count.about(0));
    }

    @Test
    void intoAMixedPacket() {
      bench.say(cross("25-002", "24-002", "24-001", null));
      bench.say(harvest("25-002 H1", null, "7"));
      bench.say(mixed("25-009", "10", "7"));
      assertThat(bench.item("25-009 H1").count()).isEqualTo(Count.of(17));
      assertThat(bench.item(lot).fate()).isEqualTo(Fate.USED_UP);
      assertThat(bench.item("25-009").descent())
          .extracting(Descent::seed)
          .containsExactly(code(lot), code("25-002 H1"));
      bench.say(sowing("25-009 S1", "25-009 H1", null, "17"));
      assertThat(bench.refusal(sowing("25-009 S2", "25-009 H1", null, "1")))
          .hasMessageContaining("held 0 when 1 left it");
    }

    private static LotsMerged mixed(String code, String one, String other) {
      return new LotsMerged(
          code(code),
          List.of(
              new LotsMerged.Part(code("25-001 H1"), Count.parse(one), Fraction.of(10, 17)),
              new LotsMerged.Part(code("25-002 H1"), Count.parse(other), Fraction.of(7, 17))),
          null,
          null,
          null);
    }

    @Test
    void andPotsHoldNoMoreThanWasSown() {
      assertThatThrownBy(
              () ->
                  new Sown(
                      code("25-001 S2"),
                      code(lot),
                      null,
                      Count.of(10),
                      null,
                      null,
                      false,
                      null,
                      false,
                      null,
                      null,
                      List.of(),
                      List.of(
                          new Sown.Filled(code("25-001 P7"), Count.of(6), null),
                          new Sown.Filled(code("25-001 P8"), Count.of(5), null)),
                      null,
                      null))
          .hasMessageContaining("hold 11 seeds, but 10 were sown");
    }
  }

  @Nested
  class APotOfSeedlings {

    @BeforeEach
    void ten() {
      bench.say(potted(pot, "25-001 S1", "2025-09-01", "10"));
    }

    @Test
    void givesNoMoreThanItHolds() {
      assertThat(bench.refusal(numbered(pot, 1, 11, "2026-04")))
          .hasMessageContaining(pot + " held 10 when 11 left it");
      assertThat(bench.refusal(potted("25-001 P2", pot, "2026-04", "11")))
          .hasMessageContaining(pot + " held 10 when 11 left it");
      bench.say(numbered(pot, 1, 6, "2026-04"));
      assertThat(bench.refusal(fate(pot, Fate.DEAD, "2026-05", "5")))
          .hasMessageContaining(pot + " held 4 when 5 left it");
    }

    @Test
    void isUsedUpWhenAllAreNumbered() {
      bench.say(numbered(pot, 1, 10, "2026-04"));
      assertThat(bench.item(pot).fate()).isEqualTo(Fate.USED_UP);
      assertThat(bench.item(pot).until()).hasToString("2026-04");
      bench.say(alive(pot, "2026-06", "2"));
      assertThat(bench.item(pot).fate()).isEqualTo(Fate.ALIVE);
      assertThat(bench.item(pot).until()).isNull();
    }

    @Test
    void diesWithTheLastSeedling() {
      bench.say(fate(pot, Fate.DEAD, "2025-10", "10"));
      assertThat(bench.item(pot).fate()).isEqualTo(Fate.DEAD);
    }

    @Test
    void cannotBeCountedBelowWhatLaterLeft() {
      long counted = bench.say(alive(pot, "2026-01", "8"));
      bench.say(numbered(pot, 1, 7, "2026-04"));
      RegisterRefusal refusal = bench.refusal(amended(counted, alive(pot, "2026-01", "5")));
      assertThat(refusal.entries()).containsExactly(counted + 1);
      assertThat(refusal).hasMessageContaining(pot + " held 5 when 7 left it");
    }

    @Test
    void lossesAreReadByTheirDayNotByTheDayOfTyping() {
      bench.say(alive(pot, "2026-01", "8"));
      bench.say(fate(pot, Fate.DEAD, "2025-12", "2"));
      assertThat(bench.item(pot).count()).isEqualTo(Count.of(8));
      bench.say(fate(pot, Fate.DEAD, "2026-02", "2"));
      assertThat(bench.item(pot).count()).isEqualTo(Count.of(6));
      bench.say(fate(pot, Fate.DEAD, null, "1"));
      assertThat(bench.item(pot).count()).isEqualTo(Count.of(5));
    }

    @Test
    void anUndatedLossComesAfterAllThatStandsBeforeIt() {
      bench.say(alive(pot, "2026-03", "8"));
      bench.say(alive(pot, "2025-11", "9"));
      bench.say(fate(pot, Fate.DEAD, null, "1"));
      assertThat(bench.item(pot).count()).isEqualTo(Count.of(7));
    }

    @Test
    void aLossTypedLateIsRefusedWhenWhatLeftLaterWasNotThere() {
      bench.say(numbered(pot, 1, 9, "2026-04"));
      RegisterRefusal refusal = bench.refusal(fate(pot, Fate.DEAD, "2025-12", "2"));
      assertThat(refusal)
          .hasMessage(
              pot + " held 8 when 9 left it (entry 8); count it again first, or mend the number");
      assertThat(refusal.entries()).containsExactly(8L);
    }

    @Test
    void isEmptyOnceAllOfItIsGone() {
      bench.say(fate(pot, Fate.DISCARDED, "2025-12"));
      assertThat(bench.refusal(numbered(pot, 1, 1, "2026-04")))
          .hasMessageContaining(pot + " held 0 when 1 left it");
    }
  }

  @Nested
  class SeedlingsComeUp {

    private final String tray = code("25-001 S1").text();

    @Test
    void moreThanWereSownIsWarnedOf() {
      assertThat(bench.warnings(germinated(tray, "2025-07", "31")))
          .containsExactly(
              "more came up in "
                  + tray
                  + " (31) than was sown (30): one of the two was a guess, or some seeds gave two");
      assertThat(bench.warnings(germinated(tray, "2025-07", "~31"))).isEmpty();
    }

    @Test
    void andTheWarningComesWhenTheSowingIsAmendedAfterwards() {
      bench.say(germinated(tray, "2025-07", "20"));
      assertThat(bench.warnings(amended(sown, sowing(tray, lot, "2025-06-10", "15"))))
          .singleElement()
          .asString()
          .contains("(20) than was sown (15)");
    }

    @Test
    void soThatWhatLeftIsNotCountedTwice() {
      bench.say(germinated(tray, "2025-07", "10"));
      bench.say(potted(pot, tray, "2025-08", "4"));
      bench.say(germinated(tray, "2025-09", "12"));
      assertThat(bench.item(tray).count()).isEqualTo(Count.of(8));
    }

    @Test
    void soThatThoseThatVanishedDoNotComeBackWithTheLateOnes() {
      bench.say(germinated(tray, "2025-07", "10"));
      bench.say(alive(tray, "2025-08", "7"));
      bench.say(germinated(tray, "2025-09", "12"));
      assertThat(bench.item(tray).count()).isEqualTo(Count.of(9));
    }

    @Test
    void neverFewerThanHaveLeft() {
      bench.say(potted(pot, tray, "2025-08", "4"));
      assertThat(bench.refusal(germinated(tray, "2025-09", "3")))
          .hasMessage(
              "of the 3 counted to have come up in "
                  + tray
                  + ", 4 have already left; mend one of the numbers");
    }

    @Test
    void notBeforeTheyWereSown() {
      assertThat(bench.refusal(germinated(tray, "2025-05", "3")))
          .hasMessageContaining("2025-05 is before it was sown or potted (" + tray);
    }
  }

  @Nested
  class NumbersAndCodes {

    @Test
    void areGivenOutOfTheWholeCrossWithoutASowing() {
      bench.say(numbered("25-001", 1, 40, "2025-09"));
      assertThat(bench.item("25-001-40").kind()).isEqualTo(Item.Kind.SEEDLING);
      assertThat(bench.item("25-001").count()).isNull();
    }

    @Test
    void areGivenOnce() {
      bench.say(numbered("25-001", 1, 3, "2025-09"));
      RegisterRefusal refusal = bench.refusal(numbered("25-001", 3, 8, "2025-09"));
      assertThat(refusal)
          .hasMessage(
              code("25-001-3").text()
                  + " is taken already (entry 7); take the next number, "
                  + code("25-001-4").text());
      assertThat(refusal.entries()).containsExactly(7L);
      assertThat(bench.refusal(Bench.acquired("25-001", "Echeveria laui", null)))
          .hasMessageContaining("take the next number, " + code("25-002").text());
    }

    @Test
    void areNeverUsedAgainWhenStruck() {
      long numbers = bench.say(numbered("25-001", 1, 3, "2025-09"));
      bench.say(Bench.struck(numbers));
      assertThat(bench.refusal(numbered("25-001", 2, 2, "2025-09")))
          .hasMessage(
              code("25-001-2").text()
                  + " is taken already (entry 7, struck; a code is never used again); take the next"
                  + " number, "
                  + code("25-001-4").text());
      assertThat(bench.refusal(observed("25-001-2", "edge", "red")))
          .hasMessageContaining("is struck with entry 7; name another in its place");
    }

    @Test
    void areNotTakenFromALotOrAPlant() {
      assertThat(bench.refusal(numbered(lot, 1, 1, null)))
          .hasMessageContaining("seedlings cannot be taken from " + lot + ", a seed lot");
      assertThat(bench.refusal(numbered("24-001", 1, 1, null)))
          .hasMessageContaining("a plant; name the pot, the sowing or the cross");
    }

    @Test
    void tenThousandInOneEntry() {
      bench.say(numbered("25-001", 1, 10_000, "2025-09"));
      assertThat(bench.item("25-001-10000").entry()).isEqualTo(7);
      assertThat(bench.refusal(numbered("25-001", 5, 10_000, "2025-09")))
          .hasMessageContaining("take the next number, " + code("25-001-10001").text());
      bench.say(amended(7, numbered("25-001", 1, 9_999, "2025-10")));
      assertThat(bench.book.item(code("25-001-10000"))).isEmpty();
      assertThat(bench.item("25-001-9999").since()).hasToString("2025-10");
    }
  }

  @Nested
  class States {

    @BeforeEach
    void edges() {
      bench.say(edge());
      bench.say(numbered("25-001", 1, 3, "2025-09"));
    }

    @Test
    void thatATraitDoesNotHaveAreRefused() {
      assertThat(bench.refusal(observed("25-001-1", "edge", "blue")))
          .hasMessage("edge has no state \"blue\"; it is one of red, green");
      assertThat(bench.refusal(observed("25-001-1", "rim", "blue")))
          .hasMessage("no trait is called \"rim\"; the traits are edge, or declare it first");
      assertThat(
              bench.refusal(
                  new Tallied(
                      code("25-001 S1"), "edge", Map.of("red", 3L, "pink", 1L), null, null)))
          .hasMessageContaining("edge has no state \"pink\"");
    }

    @Test
    void cannotBeTakenFromATraitOnceSeen() {
      bench.say(observed("25-001-1", "Edge", "red"));
      RegisterRefusal refusal =
          bench.refusal(
              amended(
                  7, new TraitDeclared("edge", List.of("pink", "green"), null, null, null, null)));
      assertThat(refusal.entries()).containsExactly(9L);
    }

    @Test
    void andATraitThatSeedlingsWerePickedForCannotBeStruck() {
      long picked = bench.say(new Numbered(code("25-001"), 4, 5, null, "edge", null, null));
      assertThat(bench.refusal(Bench.struck(7)).entries()).containsExactly(picked);
    }

    @Test
    void areSeenOnAPlantOrOutOfAPotAndNotOnACrossOrItsSeed() {
      assertThat(bench.refusal(observed("25-001", "edge", "red")))
          .hasMessageContaining(code("25-001").text() + " is a cross; observe a plant");
      assertThat(bench.refusal(observed(lot, "edge", "red")))
          .hasMessageContaining("is a seed lot; observe a plant");
      bench.say(observed("25-001 S1", "edge", "red"));
    }

    @Test
    void ofAScoreLieInItsRange() {
      bench.say(
          new TraitDeclared(
              "bloom",
              List.of(),
              java.math.BigDecimal.ZERO,
              java.math.BigDecimal.valueOf(5),
              null,
              null));
      assertThat(bench.refusal(observed("25-001-1", "bloom", "6")))
          .hasMessage("bloom goes from 0 to 5, so 6 cannot be");
      assertThat(bench.refusal(observed("25-001-1", "bloom", "high")))
          .hasMessage("\"high\" is no number, and bloom is scored or measured");
      bench.say(observed("25-001-1", "bloom", "4.5"));
    }
  }

  @Test
  void nothingIsHarvestedBeforeItsCross() {
    assertThat(bench.refusal(harvest("25-001 H2", "2025-02", "4")))
        .hasMessage(
            "2025-02 is before the cross was made ("
                + code("25-001").text()
                + ", 2025-03-04); mend the one date or the other");
    assertThat(
            bench.refusal(
                new FruitRecorded(
                    code("25-001"),
                    Bench.on("2025-02"),
                    Count.of(1),
                    null,
                    null,
                    null,
                    null,
                    null)))
        .hasMessageContaining("2025-02 is before the cross was made");
    assertThat(
            bench.refusal(
                new LotSplit(
                    code("25-001 H2"), code(lot), Bench.on("2025-05"), Count.of(1), null, null)))
        .hasMessageContaining("2025-05 is before there was seed in the lot");
  }

  @Test
  void whatBecameOfACrossIsSaidOfItsSeedPotsOrSeedlings() {
    assertThat(bench.refusal(fate("25-001", Fate.DEAD, null)))
        .hasMessageContaining("is a cross; say what became of its seed (" + lot);
  }
}
