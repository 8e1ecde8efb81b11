package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Named;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.TaxonRenamed;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class CardAndListTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(Determination.of(LAUI), "KB 12", "Rosa");
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code cross = bench.cross(laui, agavoides);

  private CardQuestion.Card card(Code code) {
    return CardQuestion.of(bench.store).ask(code);
  }

  private List<Code> list(ListQuestion question) {
    return question.ask().stream().map(ListQuestion.Line::code).toList();
  }

  private ListQuestion all() {
    return ListQuestion.of(bench.store);
  }

  private void died(Code code) {
    bench.say(
        new FateRecorded(
            List.of(code), Fate.DEAD, PartialDate.parse("2026-02-01"), null, null, "frost", null));
  }

  @Test
  void theCardOfAPlantSaysWhatItIsWhereItCameFromAndWhatItWentInto() {
    bench.say(new Named(laui, "Rosalie", null));
    long entry = bench.store.item(laui).orElseThrow().entry();
    bench.say(new Doubted(entry, "Anton", null));

    CardQuestion.Card card = card(laui);

    assertThat(card.what()).isEqualTo(LAUI);
    assertThat(card.kind()).isEqualTo("plant");
    assertThat(card.fate()).isEqualTo("alive");
    assertThat(card.names()).containsExactly("Rosa", "Rosalie");
    assertThat(card.provenance()).isNotNull();
    assertThat(card.parentOf()).containsExactly(cross);
    assertThat(card.readAs()).isNull();
    assertThat(card.history().get(0).guess()).isEqualTo("Anton");
    assertThat(card.history()).extracting(Said::text).last().asString().contains("Rosalie");
  }

  @Test
  void theCardOfACrossListsWhatStandsUnderItAndHasNoFate() {
    Code lot = bench.harvest(cross);
    Code seedling = bench.seedling(cross);

    CardQuestion.Card card = card(cross);

    assertThat(card.what()).isEqualTo(laui.text() + " × " + agavoides.text());
    assertThat(card.under()).containsExactlyInAnyOrder(lot, seedling);
    assertThat(card.fate()).isEmpty();
    assertThat(card.provenance()).isNull();
    assertThat(card(lot).fate()).isEqualTo("in store");
    assertThat(card(lot).count()).isEqualTo(Count.of(200));
  }

  @Test
  void recordsJoinedOneAfterTheOtherAreOneCard() {
    Code second = bench.plant(Determination.of("Echeveria sp."), null, "found in March");
    Code third = bench.plant(Determination.of("Echeveria sp."), null, "from the shelf");
    Code child = bench.cross(third, agavoides);
    bench.say(new Joined(second, third, "one plant"));
    bench.say(new Joined(laui, second, "one plant"));

    CardQuestion.Card card = card(third);

    assertThat(card.code()).isEqualTo(laui);
    assertThat(card.readAs()).isEqualTo(third);
    assertThat(card.names()).containsExactly("Rosa", "found in March", "from the shelf");
    assertThat(card.parentOf()).containsExactly(cross, child);
  }

  @Test
  void whatIsGoneIsListedOnlyWhenAsked() {
    died(agavoides);

    assertThat(list(all())).contains(laui, cross).doesNotContain(agavoides);
    assertThat(list(all().withGone(true))).contains(agavoides);
    assertThat(card(agavoides).fate()).isEqualTo("dead");
  }

  @Test
  void theListIsNarrowedByKindYearAndWords() {
    bench.say(new TaxonRenamed(AGAVOIDES, "Echeveria nova", null));

    assertThat(list(all().withKinds(Set.of(Item.Kind.CROSS)))).containsExactly(cross);
    assertThat(list(all().withYear(2024))).containsExactly(laui, agavoides);
    assertThat(list(all().withYear(25))).containsExactly(cross);
    assertThat(list(all().withText("nova"))).containsExactly(agavoides, cross);
    assertThat(list(all().withText("AGAVOIDES"))).as("the name it came under").contains(agavoides);
    assertThat(list(all().withText("12 rosa laui"))).containsExactly(laui);
    assertThat(list(all().withText("rosa agavoides"))).as("its parents").containsExactly(cross);
    assertThat(list(all().withText("rosa nothing"))).isEmpty();
  }

  @Test
  void aJoinedRecordIsNotListedTwice() {
    Code again = bench.plant(LAUI);
    bench.say(new Joined(laui, again, "one plant"));

    assertThat(list(all().withGone(true))).doesNotContain(again);
  }

  @Test
  void thingsAreDescribedInAGrowersWords() {
    Code offset = bench.offset(laui, false);
    Code found = bench.found("1/10", laui, 1, agavoides, 1);
    Code apomict =
        bench
            .pollination(laui, new dev.filial.core.register.Pollen.OnePlant(agavoides))
            .shares("0", "0", "1")
            .made();
    Code strays =
        bench
            .pollination(laui, new dev.filial.core.register.Pollen.OnePlant(agavoides))
            .shares("0", "1", "0")
            .made();

    assertThat(card(offset).what()).isEqualTo("offset of " + laui.text());
    assertThat(card(bench.offset(laui, true)).what()).isEqualTo("doubled offset of " + laui.text());
    assertThat(card(found).what())
        .isEqualTo("one of " + laui.text() + ", " + agavoides.text() + ", or something else");
    assertThat(card(apomict).what()).isEqualTo(laui.text() + " without fertilisation");
    assertThat(card(strays).what()).isEqualTo(laui.text() + " × ?");
    assertThat(card(bench.selfed(laui)).what()).isEqualTo(laui.text() + " selfed");
    assertThat(card(bench.plant("Echeveria cf. colorata")).what()).isEqualTo(COLORATA + " (cf.)");
  }

  @Test
  void whatWasRemarkedStandsBesideWhatWasSaid() {
    InventedBench bench = new InventedBench();
    Code plant = Code.parse("24-001");
    bench.say(
        new PlantAcquired(
            plant,
            Determination.of(InventedBench.LAUI),
            Provenance.UNKNOWN,
            null,
            List.of(),
            false,
            null,
            "two rosettes"));
    assertThat(CardQuestion.of(bench.store).ask(plant).history())
        .extracting(Said::text)
        .containsExactly(plant.text() + " acquired: Echeveria laui; two rosettes");
  }
}
