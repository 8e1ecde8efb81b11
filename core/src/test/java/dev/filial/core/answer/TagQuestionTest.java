package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.hybrid;
import static dev.filial.core.answer.InventedBench.weighted;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.name.LabelLayout;
import dev.filial.core.name.TravellingCode;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Potted;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.SeedAcquired;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class TagQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(Determination.of(LAUI), "KB 12");
  private final Code agavoides = bench.plant(AGAVOIDES);

  private List<String> tag(Code code) {
    return TagQuestion.of(bench.store).ask(code).text().lines();
  }

  private List<String> narrowTag(Code code) {
    return TagQuestion.of(bench.store)
        .withLayout(new LabelLayout(12, 2, 1, false))
        .ask(code)
        .text()
        .lines();
  }

  @Test
  void anAcquiredPlantHasItsTaxonAndFieldNumber() {
    assertThat(tag(laui)).containsExactly(laui.text() + "  Echeveria laui", "KB 12");
    assertThat(narrowTag(laui)).containsExactly(laui.text(), "laui  KB 12");
  }

  @Test
  void aDoubtIsOnTheTagHoweverShort() {
    Code doubtful = bench.plant("Echeveria cf. agavoides");

    assertThat(String.join(" ", tag(doubtful))).contains("Echeveria agavoides (cf.)");
    assertThat(String.join(" ", narrowTag(doubtful))).contains("cf.");
  }

  @Test
  void aCultivarAndAStatedHybridAreShortened() {
    Code cultivar = bench.plant(new Determination(AGAVOIDES, "Rotrand", Map.of(), null, null));
    Code hybrid = bench.plant(hybrid("F1", LAUI, "1/2", COLORATA, "1/2"));

    assertThat(narrowTag(cultivar)).contains("'Rotrand'");
    assertThat(tag(hybrid))
        .contains("1/2 laui + 1/2 colorata")
        .anyMatch(line -> line.contains("F1"));
  }

  /** A tag that says "Rosa × Anna" where two plants are called Rosa cannot be read back. */
  @Test
  void aParentWhoseNameAnotherPlantBearsTooIsNamedByItsCode() {
    Code rosa = bench.plant(Determination.of(LAUI), null, "Rosa");
    Code anna = bench.plant(Determination.of(AGAVOIDES), null, "Anna");
    Code cross = bench.cross(rosa, anna);
    assertThat(String.join(" ", tag(cross))).contains("Rosa × Anna");

    Code second = bench.plant(Determination.of(COLORATA), null, "rosa ");

    assertThat(String.join(" ", tag(cross))).contains(rosa.text() + " × Anna");
    bench.say(new dev.filial.core.register.Joined(rosa, second, "one plant"));
    assertThat(String.join(" ", tag(cross))).contains("Rosa × Anna");
  }

  @Test
  void aSeedlingHasItsParentsTheDayOfItsSowingAndItsGeneration() {
    Code cross = bench.cross(laui, agavoides);
    Code lot = bench.harvest(cross);
    Code sowing = bench.sowing(lot, "2025-08-04", 1);
    Code pot = cross.group(1);
    Code moved = cross.group(2);
    bench.say(new Potted(moved, pot, null, Count.of(5), null, null));
    Code seedling = cross.seedling(1);
    bench.say(new dev.filial.core.register.Numbered(moved, 1, 1, null, null, null, null));

    for (Code code : List.of(sowing, pot, moved, seedling)) {
      assertThat(String.join("  ", tag(code)))
          .as(code.text())
          .contains("laui × agavoides")
          .contains("4 AUG 25")
          .contains("F1");
    }
    assertThat(String.join("  ", tag(lot))).doesNotContain("AUG");
  }

  @Test
  void aPacketHasTheDayOfItsHarvestAsFarAsItIsKnown() {
    Code cross = bench.cross(laui, agavoides);
    Code day = harvest(cross, 1, PartialDate.parse("2025-07-02"));
    Code month = harvest(cross, 2, PartialDate.parse("2025-09"));
    Code nobodyKnows = harvest(cross, 3, null);
    Code part = cross.lot(4);
    bench.say(new LotSplit(part, day, PartialDate.parse("2025-12-24"), Count.of(5), null, null));

    assertThat(tag(day)).containsExactly(day.text() + "  2 JUL 25  F1", "laui × agavoides");
    assertThat(tag(month)).contains(month.text() + "  SEP 25  F1");
    assertThat(tag(nobodyKnows)).containsExactly(nobodyKnows.text() + "  F1", "laui × agavoides");
    assertThat(String.join("  ", tag(part))).contains("2 JUL 25").doesNotContain("DEC");
  }

  private Code harvest(Code cross, int lot, @Nullable PartialDate day) {
    Code code = cross.lot(lot);
    bench.say(new Harvested(code, day, null, false, Count.of(40), null, null, null, null));
    return code;
  }

  /** A bare date on a packet is read as that of its harvest, which of bought seed nobody knows. */
  @Test
  void boughtSeedHasTheDayOnWhichItCame() {
    Code packet = Code.parse("26-090");
    bench.say(
        new SeedAcquired(
            packet,
            Determination.of(LAUI),
            Provenance.UNKNOWN,
            PartialDate.parse("2026-02-03"),
            Count.of(30),
            null,
            null));

    assertThat(String.join("  ", tag(packet))).contains("got 3 FEB 26");
    assertThat(String.join("  ", tag(packet.lot(1)))).contains("got 3 FEB 26");
  }

  @Test
  void aSowingKnownToTheMonthHasTheMonth() {
    Code lot = bench.harvest(bench.cross(laui, agavoides));

    assertThat(String.join("  ", tag(bench.sowing(lot, "2025-08", 1)))).contains("AUG 25");
  }

  @Test
  void aLabelNamesTheTaxaThatStandOnIt() {
    Code cross = bench.cross(laui, agavoides);

    assertThat(TagQuestion.of(bench.store).label(cross).taxa())
        .containsExactlyInAnyOrder(LAUI, AGAVOIDES);
    assertThat(TagQuestion.of(bench.store).label(laui).taxa()).containsExactly(LAUI);
  }

  @Test
  void codesStandForParentsOnlyWhereTheyAreShorter() {
    Code one = bench.plant(Determination.of(LAUI), null, "A very long name of a plant");
    Code cross = bench.cross(one, agavoides);

    assertThat(String.join(" ", tag(cross)))
        .contains("A very long name of a plant × agavoides".substring(0, 20));
    assertThat(String.join(" ", narrowTag(cross))).contains(one.text());
  }

  @Test
  void anOffsetSaysWhatItsSourceIsAndWhichThatWas() {
    Code offset = bench.offset(bench.offset(laui, false), false);

    assertThat(String.join("  ", tag(offset)))
        .contains("Echeveria laui")
        .contains("KB 12")
        .contains("of 24-003");
  }

  @Test
  void beesMixesAndStraysAreOnTheTag() {
    Code open = bench.pollination(laui, new Pollen.Open(weighted(), Fraction.ONE)).made();
    Code mix =
        bench
            .pollination(laui, new Pollen.Mix(weighted(agavoides, 1, bench.plant(COLORATA), 1)))
            .made();
    Code strays =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).shares("1/10", "1/10", "0").made();

    assertThat(String.join(" ", tag(open))).contains("laui open");
    assertThat(String.join(" ", tag(mix))).contains("laui × mix of agavoides, colorata");
    assertThat(String.join(" ", tag(strays))).contains("laui × agavoides").doesNotContain("F1");
  }

  @Test
  void whatLeavesTheHouseHasTheMarkBeforeItsCode() {
    TagQuestion.Tag tag = TagQuestion.of(bench.store).withMark(true).ask(laui);

    assertThat(tag.text().front().get(0)).startsWith("KB " + laui.text());
    assertThat(TravellingCode.parseMachineReadable(tag.machineReadable()).code()).isEqualTo(laui);
  }

  @Test
  void aTagIsWrittenThoughItsGenerationCannotBeComputed() {
    bench.taxon(COLORATA, null, 4);
    Code doubtful = bench.found("0", bench.plant(COLORATA), 1, laui, 1);
    Code cross = bench.cross(doubtful, agavoides);

    assertThat(tag(cross)).anyMatch(line -> line.contains(cross.text()));
  }

  /** "sp. × agavoides" would tell nobody which plant was the parent. */
  @Test
  void aParentThatIsNotDeterminedIsNamedByItsCode() {
    Code unknown = bench.plant("Haworthia sp.");
    Code told = bench.plant("Haworthia sp. Oaxaca");
    Code cross = bench.cross(unknown, told);

    assertThat(String.join(" ", tag(cross))).contains(unknown.text() + " × sp. Oaxaca");
    assertThat(String.join(" ", narrowTag(unknown))).contains("H. sp.");
  }

  @Test
  void anOwnNameForWhichTheTagHasNoRoomIsKnown() {
    Code long_ =
        bench.plant(Determination.of(LAUI), null, "The one from behind the old boiler house");
    TagQuestion question = TagQuestion.of(bench.store);

    assertThat(question.namesWithoutRoom(question.ask(long_)))
        .containsExactly("The one from behind the old boiler house");
    assertThat(question.namesWithoutRoom(question.ask(laui))).isEmpty();
  }
}
