package dev.filial.core.register;

import static dev.filial.core.register.Bench.acquired;
import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.found;
import static dev.filial.core.register.Bench.harvest;
import static dev.filial.core.register.Bench.joined;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.pollen;
import static dev.filial.core.register.Bench.ramet;
import static dev.filial.core.register.Bench.selfIncompatible;
import static dev.filial.core.register.Bench.taxon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class CrossRulesTest {

  private final Bench bench = new Bench();
  private long crossed;

  /** laui × agavoides of 2025, two seedlings numbered and one of them crossed on in 2027. */
  @BeforeEach
  void twoGenerations() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria agavoides");
    crossed = bench.say(cross("25-001", "24-001", "24-002", "2025-03-04"));
    bench.say(numbered("25-001", 1, 2, "2026-04"));
    bench.say(cross("27-001", "25-001-1", "24-001", "2027-03"));
  }

  @Nested
  class APlantAmongItsOwnAncestors {

    @Test
    void isRefusedWhenACrossIsAmendedToUseItsOwnGrandchild() {
      bench.say(numbered("27-001", 1, 1, "2028"));
      RegisterRefusal refusal =
          bench.refusal(amended(crossed, cross("25-001", "24-001", "27-001-1", "2029")));
      assertThat(refusal)
          .hasMessageContaining(
              "entry 4 cannot say so: 25-001A would be among its own ancestors: 25-001A comes of 27-001A-1 comes of"
                  .replace("25-001A", code("25-001").text())
                  .replace("27-001A", code("27-001").text()))
          .hasMessageContaining("see which parent was misread");
    }

    @Test
    void isRefusedWhenACrossNamesItsOwnSeedling() {
      assertThat(bench.refusal(amended(crossed, cross("25-001", "25-001-2", "24-002", null))))
          .hasMessageContaining("would be among its own ancestors");
    }

    @Test
    void isRefusedWhenARametWouldBeTakenFromItself() {
      assertThat(bench.refusal(ramet("25-002", "25-002", null)))
          .hasMessageContaining(code("25-002").text() + " would be among its own ancestors");
    }

    @Test
    void isRefusedThroughAJoin() {
      assertThat(bench.refusal(joined("24-001", "25-001-1")))
          .hasMessageContaining(code("24-001").text() + " (Echeveria laui) is an ancestor of")
          .hasMessageContaining("so they cannot be one plant; see who the parents were");
      assertThat(bench.refusal(joined("27-001-1", "24-001"))).hasMessageContaining("27-001");
      bench.say(numbered("27-001", 1, 1, "2028"));
      assertThat(bench.refusal(joined("27-001-1", "24-001")))
          .hasMessageContaining("would be among its own ancestors");
    }

    @Test
    void isRefusedThroughAFoundTag() {
      long found = bench.say(found("28-001", null, "24-001", "24-002"));
      bench.say(cross("28-002", "28-001", "24-002", null));
      bench.say(numbered("28-002", 1, 1, null));
      assertThat(bench.refusal(amended(found, found("28-001", null, "24-001", "28-002-1"))))
          .hasMessageContaining(code("28-001").text() + " would be among its own ancestors");
    }

    @Test
    void isRefusedThroughAMixedPacketThatWasNeverSown() {
      bench.say(harvest("25-001 H1", "2025-06", "40"));
      bench.say(harvest("27-001 H1", "2027-06", "40"));
      bench.say(
          new LotsMerged(
              code("28-001"),
              List.of(
                  new LotsMerged.Part(code("25-001 H1"), Count.of(5), Fraction.HALF),
                  new LotsMerged.Part(code("27-001 H1"), Count.of(5), Fraction.HALF)),
              null,
              null,
              null));
      bench.say(numbered("28-001", 1, 1, null));
      assertThat(bench.refusal(amended(crossed, cross("25-001", "24-001", "28-001-1", null))))
          .hasMessageContaining("among its own ancestors");
    }

    @Test
    void isRefusedWhenAJoinedRecordWouldComeOfThePlantItIsReadAs() {
      bench.plant("24-005", "Echeveria laui");
      long kept = bench.say(ramet("24-004", "24-002", null));
      bench.say(joined("24-004", "24-005"));
      bench.say(cross("28-001", "24-005", "24-002", null));
      bench.say(numbered("28-001", 1, 1, null));
      assertThat(bench.refusal(amended(kept, ramet("24-004", "28-001-1", null))))
          .hasMessageContaining(code("24-004").text() + " would be among its own ancestors");
    }
  }

  @Nested
  class AParentThatDidNotYetExist {

    @Test
    void isRefusedWithItsDayAndTheRemedy() {
      assertThat(bench.refusal(cross("25-002", "24-001", "25-001-1", "2025-02")))
          .hasMessage(
              code("25-001-1").text()
                  + ", the pollen parent of this cross, did not exist on 2025-02: it came about on 2025-03-04; mend the date or name"
                  + " another plant");
    }

    @Test
    void isMeasuredByItsCrossNotByThePrickingOut() {
      bench.say(cross("25-002", "24-001", "25-001-1", "2025-09"));
    }

    @Test
    void isRefusedWhenTheCrossOfTheParentIsDatedAnewAndNamesTheEntryThatHangsOnIt() {
      RegisterRefusal refusal =
          bench.refusal(amended(crossed, cross("25-001", "24-001", "24-002", "2027-05")));
      assertThat(refusal)
          .hasMessageContaining("entry 6: ")
          .hasMessageContaining("25-001R-1, the seed parent of this cross, ")
          .hasMessageContaining("did not exist on 2027-03: it came about on 2027-05");
      assertThat(refusal.entries()).contains(6L);
    }

    @Test
    void isTakenWithAWarningWhenItStoodElsewhereBefore() {
      bench.plant("26-001", "Echeveria colorata", "2026-05");
      assertThat(bench.warnings(cross("26-002", "24-001", "26-001", "2026-03")))
          .singleElement()
          .asString()
          .contains("came in 2026-05, after the cross of 2026-03; right only if it was used where");
    }

    @Test
    void isNoMatterForAFriendsPlantThatNeverCame() {
      PlantAcquired plant = acquired("26-001", "Echeveria colorata", "2026-05");
      bench.say(
          new PlantAcquired(
              plant.code(),
              plant.determination(),
              plant.provenance(),
              plant.date(),
              List.of(),
              true,
              null,
              null));
      assertThat(bench.warnings(cross("26-002", "24-001", "26-001", "2026-03"))).isEmpty();
    }

    @Test
    void isARametTakenLater() {
      bench.say(ramet("26-001", "25-001-1", "2026-08"));
      assertThat(bench.refusal(cross("26-002", "24-001", "26-001", "2026-03")))
          .hasMessageContaining("it came about on 2026-08");
    }

    @Test
    void isARametOfASeedlingBeforeItsCross() {
      assertThat(bench.refusal(ramet("26-001", "25-001-1", "2024-08")))
          .hasMessageContaining(code("25-001-1").text() + ", the source of ")
          .hasMessageContaining("did not exist on 2024-08: it came about on 2025-03-04");
    }

    @Test
    void isACandidateForAPlantFoundBeforeItsCross() {
      assertThat(bench.refusal(found("26-001", "2024-08", "24-001", "25-001-1")))
          .hasMessageContaining(code("25-001-1").text() + ", thought to be what was found, ");
    }

    @Test
    void isNotAFoundPlantWhichStoodHereUnderItsLostTag() {
      bench.say(found("27-002", "2027-08", "24-001", "24-002"));
      assertThat(bench.warnings(cross("27-003", "24-001", "27-002", "2027-03"))).isEmpty();
    }

    @Test
    void isJudgedByTheRecordItIsReadAs() {
      bench.plant("27-002", "Echeveria laui", "2027-12");
      bench.say(joined("24-001", "27-002"));
      assertThat(bench.warnings(cross("27-003", "24-002", "27-002", "2027-03"))).isEmpty();
    }
  }

  @Nested
  class AParentThatIsGone {

    @Test
    void isWarnedOfUnlessThePollenWasStored() {
      bench.say(fate("24-002", Fate.DEAD, "2026-11"));
      assertThat(bench.warnings(cross("27-002", "24-001", "24-002", "2027-03")))
          .containsExactly(
              code("24-002").text()
                  + " (Echeveria agavoides), the pollen parent, died in 2026-11; right if its"
                  + " pollen was stored, which the entry can say");
      assertThat(
              bench.warnings(
                  cross("27-003", "24-001", pollen("24-002"), "2027-03", null, null, true)))
          .isEmpty();
      assertThat(bench.warnings(cross("26-004", "24-001", "24-002", "2026-05"))).isEmpty();
    }

    @Test
    void isWarnedOfAsSeedParentToo() {
      bench.say(fate("24-001", Fate.GIVEN, "2026-11"));
      assertThat(
              bench.warnings(
                  cross("27-002", "24-001", pollen("24-002"), "2027-03", null, null, true)))
          .singleElement()
          .asString()
          .contains("the seed parent, was given away in 2026-11; see whether the date is right");
    }
  }

  @Nested
  class SelfingOfASelfIncompatiblePlant {

    @BeforeEach
    void lauiIsSelfIncompatible() {
      bench.say(selfIncompatible("Echeveria laui"));
    }

    @Test
    void isWarnedOfAndTaken() {
      assertThat(bench.warnings(cross("26-001", "24-001", new Pollen.Itself(), null)))
          .containsExactly(
              code("24-001").text()
                  + " (Echeveria laui) belongs to a taxon recorded as self-incompatible; a selfing"
                  + " may set little or nothing");
      assertThat(bench.warnings(cross("26-002", "24-002", new Pollen.Itself(), null))).isEmpty();
    }

    @Test
    void isSeenThroughAnOffsetAndAJoin() {
      bench.say(ramet("24-007", "24-001", null));
      bench.plant("24-008", "Echeveria laui");
      bench.say(joined("24-007", "24-008"));
      assertThat(bench.warnings(cross("26-001", "24-001", "24-008", null)))
          .singleElement()
          .asString()
          .contains(code("24-001").text() + " and " + code("24-008").text() + " are one clone");
      bench.plant("24-009", "Echeveria laui");
      assertThat(bench.warnings(cross("26-002", "24-001", "24-009", null))).isEmpty();
    }
  }

  @Nested
  class OddPloidy {

    private Pollinated onto(String code, @Nullable Integer egg, @Nullable Integer sperm) {
      return cross(code, "24-001", pollen("24-003"), null, egg, sperm, false);
    }

    @BeforeEach
    void aTriploid() {
      bench.say(taxon("Echeveria tertia", 3));
      bench.plant("24-003", "Echeveria tertia");
    }

    @Test
    void needsItsGametesStated() {
      assertThat(bench.refusal(onto("26-001", null, null)))
          .hasMessage(
              code("24-003").text()
                  + " (Echeveria tertia) has 3 chromosome sets, and half of that is no gamete;"
                  + " state how many sets its pollen carried in this cross");
      bench.say(onto("26-001", null, 2));
    }

    @Test
    void needsBothGametesForASelfing() {
      Pollen itself = new Pollen.Itself();
      assertThat(bench.refusal(cross("26-001", "24-003", itself, null, 1, null, false)))
          .hasMessageContaining("state how many sets its pollen carried");
      assertThat(bench.refusal(cross("26-001", "24-003", itself, null, null, 2, false)))
          .hasMessageContaining("state how many sets its egg carried");
      bench.say(cross("26-001", "24-003", itself, null, 1, 2, false));
    }

    @Test
    void isFoundInASeedlingOfUnequalParents() {
      bench.say(taxon("Echeveria quarta", 4));
      bench.plant("24-004", "Echeveria quarta");
      bench.say(cross("26-001", "24-004", "24-001", null));
      bench.say(numbered("26-001", 1, 1, null));
      assertThat(bench.refusal(cross("28-001", "26-001-1", "24-001", null)))
          .hasMessageContaining(code("26-001-1").text() + " has 3 chromosome sets");
    }

    @Test
    void asksNothingOfSeedWithoutFertilisation() {
      Pollinated apomict =
          new Pollinated(
              code("26-001"),
              code("24-003"),
              new Pollen.Itself(),
              null,
              null,
              List.of(),
              Fraction.ZERO,
              Fraction.ZERO,
              Fraction.ONE,
              null,
              null,
              false,
              null,
              null);
      bench.say(apomict);
    }

    @Test
    void declaredAfterwardsIsRefusedWithTheCrossesOfAllGenerations() {
      RegisterRefusal refusal = bench.refusal(taxon("Echeveria laui", 3));
      assertThat(refusal.entries()).containsExactly(crossed, 6L);
      assertThat(refusal)
          .hasMessageContaining("2 entries hang directly on it and would no longer hold: entry 4: ")
          .hasMessageContaining("(Echeveria laui) has 3 chromosome sets")
          .hasMessageContaining("Amend or strike these first");
      assertThat(bench.book.accepted("Echeveria laui").ploidy()).isNull();
    }

    @Test
    void reachesAGrandchildThatIsNoCrossOfTheTaxonItself() {
      bench.say(taxon("Echeveria laui", 2));
      long declared = bench.say(taxon("Echeveria agavoides", 2));
      // 4x × 2x gives a 3x seedling, and that one was crossed on.
      RegisterRefusal refusal = bench.refusal(amended(declared, taxon("Echeveria agavoides", 4)));
      assertThat(refusal.entries()).containsExactly(6L);
      assertThat(refusal).hasMessageContaining(code("25-001-1").text() + " has 3 chromosome sets");
    }

    @Test
    void comesWithARenaming() {
      RegisterRefusal refusal =
          bench.refusal(new TaxonRenamed("Echeveria agavoides", "Echeveria tertia", null));
      assertThat(refusal.entries()).containsExactly(crossed);
    }

    @Test
    void isNotAskedOfAnUnknownPollen() {
      bench.say(
          cross("26-001", "24-003", new Pollen.Open(List.of(), Fraction.ONE), null, 1, 1, false));
    }
  }

  @Test
  void anUnprotectedHandCrossWithoutSharesIsWarnedOf() {
    Pollinated open = unprotected("26-001", Fraction.ZERO);
    assertThat(bench.warnings(open))
        .containsExactly(
            code("26-001").text()
                + " was not protected and no share of selfs and strays is stated; every answer will"
                + " take it as pure and say so");
    assertThat(bench.warnings(unprotected("26-002", Fraction.of(1, 10)))).isEmpty();
    assertThat(
            bench.warnings(
                cross("26-003", "24-001", new Pollen.Open(List.of(), Fraction.ONE), null)))
        .isEmpty();
  }

  private static Pollinated unprotected(String code, Fraction selfs) {
    return new Pollinated(
        code(code),
        code("24-001"),
        pollen("24-002"),
        null,
        null,
        List.of(Protection.NONE),
        selfs,
        Fraction.ZERO,
        Fraction.ZERO,
        null,
        null,
        false,
        null,
        null);
  }

  @Test
  void sharesAboveTheWholeAreRefusedByName() {
    assertThatThrownBy(() -> unprotected("26-001", Fraction.of(3, 2)))
        .hasMessage("the share of selfs is 3/2; it lies between 0 and 1");
    assertThatThrownBy(
            () ->
                new Determination(
                    null, null, Map.of("Echeveria laui", Fraction.of(5, 4)), null, null))
        .hasMessage("the shares of Echeveria laui come to 5/4, which exceeds 1; lower one of them");
    assertThatThrownBy(
            () ->
                new Determination(
                    null,
                    null,
                    Map.of("Echeveria laui", Fraction.HALF, "Echeveria  laui", Fraction.HALF),
                    null,
                    null))
        .hasMessageContaining("has two shares; give it one, their sum");
  }

  @Test
  void aParentNobodyKnowsOrThatIsNoPlantIsRefused() {
    assertThat(bench.refusal(cross("26-001", "24-001", "24-009", null)))
        .hasMessageContaining(code("24-009").text() + " is not in this register; record it first");
    assertThat(bench.refusal(cross("26-001", "24-001", "25-001", null)))
        .hasMessage(
            code("25-001").text()
                + " is a cross, not a plant; name one of its seedlings, as "
                + code("25-001-1").text());
    assertThat(bench.refusal(cross("26-001", "24-001", "25-001-3", null)))
        .hasMessage(
            code("25-001-3").text()
                + " was never given out: the seedlings of "
                + code("25-001").text()
                + " go up to 2");
  }

  @Test
  void oneOutOfAPotCanBeAParent() {
    bench.say(Bench.potted("25-001 P1", "25-001", "2025-08", "few"));
    bench.say(cross("27-002", "25-001 P1", "25-001 P1", "2027"));
    assertThat(bench.item("27-002").descent())
        .singleElement()
        .extracting(Descent::pollen)
        .isEqualTo(code("25-001 P1"));
  }
}
