package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Moved;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlaceDeclared;
import dev.filial.core.register.RegisterRefusal;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where things stand. */
class WhereQuestionTest {

  private final InventedBench bench = new InventedBench();

  private void moved(String place, Code... codes) {
    bench.say(new Moved(List.of(codes), place, PartialDate.parse("2026-05-01"), null));
  }

  private void within(String place, String larger, String day) {
    bench.say(new PlaceDeclared(place, larger, PartialDate.parse(day), null));
  }

  private static List<String> lines(WhereQuestion.Report report) {
    return report.lines().stream()
        .map(
            line ->
                line.code().text()
                    + " "
                    + String.join(", ", line.places())
                    + (line.mixed() ? " (mixed)" : ""))
        .toList();
  }

  @Test
  void theSeedlingsOfOneFruitAreFoundWhereverTheyWerePrickedOutTo() {
    Code cross = bench.cross(bench.plant(LAUI), bench.plant(AGAVOIDES));
    Code fruit = bench.harvest(cross);
    Code other = bench.harvest(cross);
    Code pot = bench.sowing(fruit, "2025-08-01", 2).whole().group(1);
    Code second = pot.whole().group(2);
    bench.sowing(other, "2025-08-01", 1);
    bench.say(new Numbered(pot, 1, 2, PartialDate.parse("2025-10-01"), null, "bench A", null));
    moved("shelf", pot, second);
    moved("bench B", cross.seedling(2));
    within("bench B", "balcony", "2026-01-01");

    assertThat(lines(WhereQuestion.of(bench.store).ofThing(fruit)))
        .containsExactlyInAnyOrder(
            fruit.text() + " ",
            pot.text() + " shelf",
            second.text() + " shelf",
            cross.seedling(1).text() + " bench A",
            cross.seedling(2).text() + " bench B, balcony");
    assertThat(lines(WhereQuestion.of(bench.store).ofThing(pot)))
        .containsExactlyInAnyOrder(
            pot.text() + " shelf",
            cross.seedling(1).text() + " bench A",
            cross.seedling(2).text() + " bench B, balcony");
    assertThat(WhereQuestion.of(bench.store).ofThing(cross).lines()).hasSize(7);
  }

  @Test
  void seedThatWasSplitIsFollowedAndSeedThatWasMixedIsFollowedWithAWord() {
    Code cross = bench.cross(bench.plant(LAUI), bench.plant(AGAVOIDES));
    Code lot = bench.harvest(cross);
    Code packet = bench.packet(LAUI);
    bench.say(new LotSplit(cross.lot(2), lot, null, Count.of(20), "drawer", null));
    Code mixture = NextCode.in(bench.store).ofYear(2026);
    bench.say(
        new LotsMerged(
            mixture,
            List.of(
                new LotsMerged.Part(cross.lot(2), Count.of(20), Fraction.of(1, 2)),
                new LotsMerged.Part(packet.lot(1), Count.of(20), Fraction.of(1, 2))),
            PartialDate.parse("2026-01-01"),
            "tin",
            null));

    assertThat(lines(WhereQuestion.of(bench.store).withGone(true).ofThing(lot)))
        .containsExactlyInAnyOrder(
            lot.text() + " ",
            cross.lot(2).text() + " drawer",
            mixture.lot(1).text() + " tin (mixed)");
  }

  @Test
  void aPlaceHoldsWhatStandsInThePlacesWithinIt() {
    Code laui = bench.plant(LAUI);
    Code agavoides = bench.plant(AGAVOIDES);
    Code dead = bench.plant(LAUI);
    moved("tray 1", laui);
    moved("bench A", agavoides, dead);
    within("tray 1", "bench A", "2026-01-01");
    within("bench A", "house", "2026-01-01");
    bench.say(new FateRecorded(List.of(dead), Fate.DEAD, null, null, null, null, null));

    WhereQuestion question = WhereQuestion.of(bench.store);
    assertThat(lines(question.inPlace("HOUSE")))
        .containsExactly(
            agavoides.text() + " bench A, house", laui.text() + " tray 1, bench A, house");
    assertThat(question.inPlace("house").gone()).isEqualTo(1);
    assertThat(question.withGone(true).inPlace("house").lines()).hasSize(3);
    assertThat(question.codesIn("bench a", Set.of(Item.Kind.PLANT)))
        .containsExactlyInAnyOrder(laui, agavoides);

    // The tray goes to another bench with all that is in it.
    within("tray 1", "bench B", "2026-02-01");
    assertThat(lines(WhereQuestion.of(bench.store).inPlace("house")))
        .containsExactly(agavoides.text() + " bench A, house");
  }

  @Test
  void aPlaceNobodyNamedIsRefusedWithThoseThereAre() {
    assertThatThrownBy(() -> WhereQuestion.of(bench.store).inPlace("attic"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("nothing stands in a place called \"attic\", and no place was ever named");
    moved("bench A", bench.plant(LAUI));
    assertThatThrownBy(() -> WhereQuestion.of(bench.store).inPlace("attic"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("nothing stands in a place called \"attic\"; there are bench A");
    assertThatThrownBy(
            () -> WhereQuestion.of(bench.store).codesIn("bench A", Set.of(Item.Kind.GROUP)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("nothing of that kind stands in bench A");
  }

  @Test
  void somethingNeverMovedHasNoPlace() {
    Code laui = bench.plant(LAUI);
    assertThat(lines(WhereQuestion.of(bench.store).ofThing(laui)))
        .containsExactly(laui.text() + " ");
  }
}
