package dev.filial.core.register;

import static dev.filial.core.register.Bench.acquired;
import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.harvest;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.sowing;
import static dev.filial.core.register.Bench.struck;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class AmendmentsTest {

  private final Bench bench = new Bench();
  private long crossed;

  @BeforeEach
  void aCross() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria agavoides");
    bench.plant("24-003", "Echeveria colorata");
    crossed = bench.say(cross("26-001", "24-001", "24-002", "2026-03-04"));
  }

  private Code pollenParent() {
    return bench.item("26-001").descent().get(0).pollen();
  }

  @Test
  void replaceStrikeTheAmendmentAndStrikeTheStriking() {
    long amendment = bench.say(amended(crossed, cross("26-001", "24-001", "24-003", "2026-03-04")));
    assertThat(pollenParent()).isEqualTo(code("24-003"));
    assertThat(bench.book.entriesMentioning(Subject.of(code("24-002")))).isEmpty();
    long striking = bench.say(struck(amendment));
    assertThat(pollenParent()).isEqualTo(code("24-002"));
    assertThat(bench.book.effective(amendment)).isEmpty();
    bench.say(struck(striking));
    assertThat(pollenParent()).isEqualTo(code("24-003"));
  }

  @Test
  void theLastOfSeveralAmendmentsHoldsAndTheOneBeforeWhenItIsStruck() {
    bench.say(amended(crossed, cross("26-001", "24-001", "24-003", "2026-03-04")));
    long second = bench.say(amended(crossed, cross("26-001", "24-003", "24-002", "2026-03-05")));
    assertThat(bench.item("26-001").since()).hasToString("2026-03-05");
    bench.say(struck(second));
    assertThat(pollenParent()).isEqualTo(code("24-003"));
    assertThat(bench.item("26-001").since()).hasToString("2026-03-04");
  }

  @Test
  void strikingAnAmendmentThatWasOvertakenChangesNothing() {
    long first = bench.say(amended(crossed, cross("26-001", "24-001", "24-003", "2026-03-04")));
    bench.say(amended(crossed, cross("26-001", "24-003", "24-002", "2026-03-05")));
    Item item = bench.item("26-001");
    bench.say(struck(first));
    assertThat(bench.item("26-001")).isEqualTo(item);
  }

  @Test
  void aStruckEntryKeepsItsCodeForGoodAndComesBackUnderItOnly() {
    long striking = bench.say(struck(crossed));
    assertThat(bench.book.item(code("26-001"))).isEmpty();
    assertThat(bench.book.taken(code("26-001"))).get().matches(Item::struck);
    assertThat(bench.book.codesUnder(code("26-001"))).containsExactly(code("26-001"));
    assertThat(bench.refusal(cross("26-001", "24-001", "24-003", null)))
        .hasMessage(
            code("26-001").text()
                + " is taken already (entry 5, struck; a code is never used again); take the next"
                + " number, "
                + code("26-002").text());
    assertThat(bench.refusal(struck(crossed)))
        .hasMessage("entry 5 has been struck already; strike the striking to have it back");
    bench.say(struck(striking));
    assertThat(bench.item("26-001").struck()).isFalse();
  }

  @Test
  void aMistypedCodeIsPutRightAndTheWrongOneStaysTaken() {
    long amendment = bench.say(amended(crossed, cross("26-010", "24-001", "24-002", null)));
    assertThat(bench.item("26-010").entry()).isEqualTo(crossed);
    assertThat(bench.book.item(code("26-001"))).isEmpty();
    assertThat(bench.refusal(cross("26-001", "24-001", "24-003", null)))
        .hasMessageContaining("a code is never used again");
    bench.say(struck(amendment));
    assertThat(bench.item("26-001").entry()).isEqualTo(crossed);
    assertThat(bench.refusal(acquired("26-010", "Echeveria laui", null)))
        .hasMessageContaining("a code is never used again");
  }

  @Test
  void anotherEntrysCodeCannotBeTakenByAmending() {
    bench.say(cross("26-002", "24-001", "24-003", null));
    assertThat(bench.refusal(amended(crossed, cross("26-002", "24-001", "24-002", null))))
        .hasMessage(
            code("26-002").text()
                + " is taken already (entry 6); take the next number, "
                + code("26-003").text());
  }

  @Test
  void anAmendmentMayNameAPlantRecordedLater() {
    bench.plant("25-009", "Echeveria pulidonis", "2025-05");
    bench.say(amended(crossed, cross("26-001", "24-001", "25-009", "2026-03-04")));
    assertThat(pollenParent()).isEqualTo(code("25-009"));
  }

  @Test
  void whatHangsOnAnEntryStandsAgainstStrikingItAndIsNamed() {
    long lot = bench.say(harvest("26-001 H1", "2026-06", "40"));
    long tray = bench.say(sowing("26-001 S1", "26-001 H1", "2026-07", "40"));
    long pricked = bench.say(numbered("26-001", 1, 2, "2027"));
    long onwards = bench.say(cross("28-001", "26-001-1", "24-001", null));
    RegisterRefusal refusal = bench.refusal(struck(crossed));
    assertThat(refusal.entries()).contains(lot, pricked).doesNotContain(crossed);
    assertThat(refusal)
        .hasMessageContaining(
            "2 entries hang directly on it and would no longer hold: entries "
                + lot
                + ", "
                + pricked
                + ": ")
        .hasMessageContaining(
            code("26-001").text() + " is struck with entry 5; name another in its place")
        .hasMessageContaining(". Amend or strike these first");
    assertThat(bench.refusal(struck(pricked)).entries()).containsExactly(onwards);
    assertThat(bench.refusal(struck(lot)).entries()).containsExactly(tray);
    assertThat(bench.refusal(struck(2)).entries()).containsExactly(crossed, onwards);
    bench.say(struck(onwards));
    bench.say(struck(pricked));
    bench.say(struck(tray));
    bench.say(struck(lot));
    bench.say(struck(crossed));
  }

  @Test
  void onlyTheFirstFewOfManyEntriesAreSpeltOut() {
    for (int n = 2; n <= 9; n++) {
      bench.say(cross("26-00" + n, "24-001", "24-002", null));
    }
    RegisterRefusal refusal = bench.refusal(struck(3));
    assertThat(refusal.entries()).hasSize(9);
    assertThat(refusal).hasMessageContaining("; and 4 more. Amend or strike these first");
  }

  @Test
  void anAmendmentIsNotAmendedButStruck() {
    long amendment = bench.say(amended(crossed, cross("26-001", "24-001", "24-003", null)));
    assertThat(bench.refusal(amended(amendment, cross("26-001", "24-001", "24-002", null))))
        .hasMessage("entry 6 is itself an amendment; amend the entry it names, or strike it");
    assertThatThrownBy(() -> new Amended(5, struck(4), "why"))
        .hasMessageContaining("an amendment is put right by amending entry 5 again");
  }

  @Test
  void anEntryThatIsNotThereCannotBeAmended() {
    assertThat(bench.refusal(struck(6))).hasMessage("there is no entry 6; the last one is 5");
    assertThatThrownBy(() -> struck(0)).hasMessageContaining("\"entry\" is 0");
  }

  @Test
  void theOpeningIsReplacedNotStruck() {
    assertThat(bench.refusal(struck(1))).hasMessageContaining("not struck");
    assertThat(bench.refusal(amended(4, new RegisterOpened("KX", "Klara", null))))
        .hasMessage("only entry 1 says whose register this is; amend that one");
    assertThat(bench.refusal(new RegisterOpened("KX", "Klara", null)))
        .hasMessageContaining("has been opened already; amend entry 1");
    bench.say(amended(1, new RegisterOpened("KX", "Klara", null)));
    assertThat(bench.book.opening()).get().extracting(RegisterOpened::mark).isEqualTo("KX");
  }

  @Test
  void anEmptyRegisterBeginsWithItsOpening() {
    assertThatThrownBy(
            () ->
                Clerk.of(new RegisterTables())
                    .accept(acquired("24-001", "Echeveria laui", null), "Klara", Bench.NOON))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("this register is empty; its first entry says whose it is");
  }

  @Test
  void aPlantCanTurnOutToBeACross() {
    bench.say(amended(2, acquired("24-001", "Echeveria runyonii", "2024")));
    assertThat(bench.item("24-001").determination().taxon()).isEqualTo("Echeveria runyonii");
    long later = bench.plant("26-002", "Echeveria laui");
    bench.say(amended(later, cross("26-002", "24-001", "24-002", null)));
    assertThat(bench.item("26-002").kind()).isEqualTo(Item.Kind.CROSS);
    bench.say(numbered("26-002", 1, 1, null));
    RegisterRefusal refusal =
        bench.refusal(amended(later, acquired("26-002", "Echeveria laui", null)));
    assertThat(refusal)
        .hasMessageContaining("seedlings cannot be taken from " + code("26-002").text());
  }

  @Test
  void theReasonIsAskedFor() {
    assertThatThrownBy(() -> new Amended(5, null, " ")).hasMessageContaining("\"why\" is empty");
  }
}
