package dev.filial.core.register;

import static dev.filial.core.register.Bench.acquired;
import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.edge;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.found;
import static dev.filial.core.register.Bench.joined;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.observed;
import static dev.filial.core.register.Bench.parted;
import static dev.filial.core.register.Bench.potted;
import static dev.filial.core.register.Bench.ramet;
import static dev.filial.core.register.Bench.struck;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class DoubtTest {

  private final Bench bench = new Bench();

  @BeforeEach
  void threePlants() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria agavoides");
    bench.plant("24-003", "Echeveria colorata");
    bench.say(edge());
  }

  @Nested
  class TwoRecordsOfOnePlant {

    @Test
    void areReadAsTheOneThatIsKeptUntilTheJoinIsStruck() {
      long crossed = bench.say(cross("26-001", "24-003", "24-002", null));
      long join = bench.say(joined("24-001", "24-003"));
      assertThat(bench.item("24-003").sameAs()).isEqualTo(code("24-001"));
      assertThat(bench.book.resolved(code("24-003")))
          .get()
          .extracting(Item::code)
          .isEqualTo(code("24-001"));
      assertThat(bench.book.lineage(List.of(code("26-001")))).containsKey(code("24-001"));
      assertThat(bench.book.effective(crossed)).contains(cross("26-001", "24-003", "24-002", null));
      bench.say(struck(join));
      assertThat(bench.item("24-003").sameAs()).isNull();
      assertThat(bench.book.lineage(List.of(code("26-001")))).doesNotContainKey(code("24-001"));
    }

    @Test
    void makeAChainThatIsFollowedToItsEnd() {
      bench.say(joined("24-002", "24-003"));
      bench.say(joined("24-001", "24-002"));
      assertThat(bench.book.resolved(code("24-003")))
          .get()
          .extracting(Item::code)
          .isEqualTo(code("24-001"));
    }

    @Test
    void areNotJoinedInACircle() {
      bench.say(joined("24-001", "24-002"));
      assertThat(bench.refusal(joined("24-002", "24-001")))
          .hasMessageContaining("in a circle")
          .hasMessageContaining("they are joined already");
      bench.say(joined("24-003", "24-001"));
      assertThat(bench.refusal(joined("24-002", "24-003"))).hasMessageContaining("in a circle");
    }

    @Test
    void areNotJoinedInACircleByAmending() {
      bench.say(joined("24-001", "24-002"));
      long second = bench.say(joined("24-001", "24-003"));
      assertThat(bench.refusal(amended(second, joined("24-002", "24-001"))))
          .hasMessageContaining("in a circle");
    }

    @Test
    void areJoinedOnce() {
      long join = bench.say(joined("24-001", "24-003"));
      RegisterRefusal refusal = bench.refusal(joined("24-002", "24-003"));
      assertThat(refusal)
          .hasMessage(
              code("24-003").text()
                  + " was joined with "
                  + code("24-001").text()
                  + " in entry 6; join "
                  + code("24-001").text()
                  + " with "
                  + code("24-002").text()
                  + ", or strike that entry");
      assertThat(refusal.entries()).containsExactly(join);
    }

    @Test
    void areJoinedOnceByAmendingToo() {
      long first = bench.say(joined("24-001", "24-003"));
      long second = bench.say(joined("24-001", "24-002"));
      assertThat(bench.refusal(amended(second, joined("24-002", "24-003"))).entries())
          .containsExactly(first);
    }

    @Test
    void whatIsSaidOfTheOtherRecordAfterwardsIsTakenWithAHint() {
      bench.say(joined("24-001", "24-003"));
      assertThat(bench.warnings(observed("24-003", "edge", "red"))).isEmpty();
      assertThat(bench.warnings(fate("24-003", Fate.DEAD, "2026")))
          .containsExactly(
              code("24-003").text()
                  + " is one plant with "
                  + code("24-001").text()
                  + " and read as it; say this of "
                  + code("24-001").text()
                  + " if it is to show there");
      assertThat(bench.item("24-001").fate()).isEqualTo(Fate.ALIVE);
    }

    @Test
    void mayBeTwoSistersOfOneCross() {
      bench.say(cross("26-001", "24-001", "24-002", null));
      bench.say(numbered("26-001", 1, 4, null));
      bench.say(joined("26-001-1", "26-001-4"));
      assertThat(bench.item("26-001-4").sameAs()).isEqualTo(code("26-001-1"));
    }

    @Test
    void mayBeALostTagAndThePlantItFellFrom() {
      bench.say(found("26-001", null, "24-001", "24-002"));
      assertThat(bench.refusal(joined("26-001", "24-001")))
          .hasMessage(
              code("26-001").text()
                  + " was recorded as coming of "
                  + code("24-001").text()
                  + "; keep "
                  + code("24-001").text()
                  + " and join "
                  + code("26-001").text()
                  + " with it");
      bench.say(joined("24-001", "26-001"));
      bench.say(cross("27-001", "26-001", "24-002", null));
      assertThat(bench.book.lineage(List.of(code("27-001"))).keySet())
          .containsExactlyInAnyOrder(
              code("27-001"), code("26-001"), code("24-001"), code("24-002"));
    }

    @Test
    void areNoCrossAndNoPot() {
      bench.say(cross("26-001", "24-001", "24-002", null));
      assertThat(bench.refusal(joined("24-001", "26-001")))
          .hasMessageContaining(code("26-001").text() + " is a cross, not a plant");
    }
  }

  @Nested
  class OneRecordOfTwoPlants {

    private long seen;
    private long offset;

    @BeforeEach
    void bothWereWrittenUnderOneCode() {
      seen = bench.say(observed("24-001", "edge", "red"));
      bench.say(observed("24-001", "edge", "green"));
      offset = bench.say(ramet("25-001", "24-001", null));
    }

    @Test
    void isPartedAndItsEntriesGoWithTheSecondPlant() {
      long parting = bench.say(parted("24-001", "26-001", seen, offset));
      assertThat(bench.item("26-001").kind()).isEqualTo(Item.Kind.PLANT);
      assertThat(bench.book.effective(seen)).contains(observed("26-001", "edge", "red"));
      assertThat(bench.book.entriesOn(Subject.of(code("24-001")))).containsExactly(2L, 7L, parting);
      assertThat(bench.item("25-001").descent().get(0).seed()).isEqualTo(code("26-001"));
      bench.say(struck(parting));
      assertThat(bench.book.effective(seen)).contains(observed("24-001", "edge", "red"));
      assertThat(bench.item("25-001").descent().get(0).seed()).isEqualTo(code("24-001"));
      assertThat(bench.book.item(code("26-001"))).isEmpty();
    }

    @Test
    void staysPartedWhenAPartedEntryIsAmended() {
      bench.say(parted("24-001", "26-001", seen));
      bench.say(amended(seen, observed("24-001", "edge", "green")));
      assertThat(bench.book.effective(seen)).contains(observed("26-001", "edge", "green"));
      bench.say(struck(seen));
      assertThat(bench.book.effective(seen)).isEmpty();
    }

    @Test
    void cannotBePartedByEntriesThatDoNotSpeakOfIt() {
      assertThat(bench.refusal(parted("24-001", "26-001", 3L)))
          .hasMessage(
              "entry 3 does not speak of "
                  + code("24-001").text()
                  + "; leave it out of the parting");
      assertThat(bench.refusal(parted("24-001", "26-001", 2L)))
          .hasMessageContaining(
              "entry 2 is where " + code("24-001").text() + " was first recorded");
      assertThat(bench.refusal(parted("24-001", "26-001", 99L)))
          .hasMessageContaining("there is no entry 99 in force to part");
      long parting = bench.say(parted("24-001", "26-001", seen));
      assertThat(bench.refusal(amended(parting, parted("24-001", "26-001", seen, 3L))))
          .hasMessageContaining("entry 3 does not speak of");
      bench.say(amended(parting, parted("24-001", "26-001", seen, offset)));
      assertThat(bench.refusal(parted("24-001", "26-002", parting)))
          .hasMessageContaining("is itself a parting");
    }

    @Test
    void cannotBePartedIntoWhatMakesNoSense() {
      long mix =
          bench.say(
              cross(
                  "26-001",
                  "24-002",
                  new Pollen.Mix(
                      List.of(
                          new Weighted(code("24-001"), Fraction.ONE),
                          new Weighted(code("24-003"), Fraction.ONE))),
                  null));
      long parting = bench.say(parted("24-001", "26-005", mix));
      Pollinated both =
          cross(
              "26-001",
              "24-002",
              new Pollen.Mix(
                  List.of(
                      new Weighted(code("24-001"), Fraction.ONE),
                      new Weighted(code("26-005"), Fraction.ONE))),
              null);
      RegisterRefusal refusal = bench.refusal(amended(mix, both));
      assertThat(refusal)
          .hasMessageContaining("since the parting in entry " + parting + ", and cannot be: ")
          .hasMessageContaining("a plant is named twice among the pollen");
    }

    @Test
    void keepsAnEntryOfTheSecondPlantFromLosingIt() {
      long parting = bench.say(parted("24-001", "26-001", seen));
      long onwards = bench.say(cross("26-002", "24-002", "26-001", null));
      assertThat(bench.refusal(struck(parting)).entries()).containsExactly(onwards);
    }

    @Test
    void leavesNamesThatLookLikeTheCodeAlone() {
      long named = bench.say(new Named(code("24-001"), code("24-001").text(), "old notebook"));
      bench.say(parted("24-001", "26-001", named));
      assertThat(bench.item("26-001").names()).containsExactly(code("24-001").text());
    }

    @Test
    void mayBeTwoSeedlings() {
      bench.say(cross("26-001", "24-001", "24-002", "2026-03"));
      bench.say(numbered("26-001", 1, 4, "2027"));
      bench.say(parted("26-001-4", "26-001-5"));
      assertThat(bench.item("26-001-5").kind()).isEqualTo(Item.Kind.SEEDLING);
      assertThat(bench.refusal(cross("26-002", "24-001", "26-001-5", "2026-02")))
          .hasMessageContaining("it came about on 2026-03");
      assertThatThrownBy(() -> parted("26-001-4", "26-002-1"))
          .hasMessageContaining("the next seedling number of the same cross");
    }
  }

  @Nested
  class AGuess {

    @Test
    void isToldOfWhatTheEntryIntroducedUntilItIsStruck() {
      long doubt = bench.say(new Doubted(2, "Klara", "label half gone"));
      assertThat(bench.item("24-001").guess()).isEqualTo("Klara");
      bench.say(amended(2, acquired("24-001", "Echeveria lauii", null)));
      assertThat(bench.item("24-001").guess()).isEqualTo("Klara");
      bench.say(amended(doubt, new Doubted(3, "Klara", null)));
      assertThat(bench.item("24-001").guess()).isNull();
      assertThat(bench.item("24-002").guess()).isEqualTo("Klara");
      bench.say(struck(doubt));
      assertThat(bench.item("24-002").guess()).isNull();
    }

    @Test
    void thatTurnedOutWrongIsStruckWithoutMore() {
      bench.say(new Doubted(4, "Klara", null));
      bench.say(struck(4));
      assertThat(bench.book.item(code("24-003"))).isEmpty();
    }

    @Test
    void isOfAnEntryThatIsThereAndNoAmendment() {
      assertThat(bench.refusal(new Doubted(77, "Klara", null)))
          .hasMessage("there is no entry 77 in force to be marked a guess; see the history");
      long amendment = bench.say(amended(2, acquired("24-001", "Echeveria lauii", null)));
      assertThat(bench.refusal(new Doubted(amendment, "Klara", null)))
          .hasMessage("entry 6 puts entry 2 right; mark that one as a guess");
    }
  }

  @Nested
  class APlantWithoutItsTag {

    @Test
    void isOneOfSeveralPlantsOrOneOutOfAPot() {
      bench.say(cross("26-001", "24-001", "24-002", null));
      bench.say(potted("26-001 P1", "26-001", null, "9"));
      bench.say(
          new TagLost(
              code("27-001"),
              List.of(
                  new Weighted(code("24-003"), Fraction.of(2)),
                  new Weighted(code("26-001 P1"), Fraction.ONE)),
              Fraction.of(1, 4),
              null,
              null,
              null));
      assertThat(bench.item("27-001").descent())
          .extracting(Descent::form, Descent::seed, Descent::share)
          .containsExactly(
              org.assertj.core.groups.Tuple.tuple(Descent.Form.COPY, code("24-003"), Fraction.HALF),
              org.assertj.core.groups.Tuple.tuple(
                  Descent.Form.SIBLING, code("26-001 P1"), Fraction.of(1, 4)));
      assertThat(bench.book.lineage(List.of(code("27-001"))))
          .containsKeys(code("24-003"), code("24-001"), code("24-002"));
    }

    @Test
    void isNeitherACrossNorASeedLot() {
      bench.say(cross("26-001", "24-001", "24-002", null));
      assertThat(bench.refusal(found("27-001", null, "26-001")))
          .hasMessageContaining("is a cross, not a plant");
    }
  }
}
