package dev.filial.core.answer;

import static dev.filial.core.ancestry.LocalityVerdict.NOT_CERTAIN;
import static dev.filial.core.ancestry.LocalityVerdict.NOT_TRUE;
import static dev.filial.core.ancestry.LocalityVerdict.TRUE;
import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.weighted;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.ancestry.LocalityVerdict;
import dev.filial.core.answer.LocalityQuestion.Line;
import dev.filial.core.answer.LocalityQuestion.Lost;
import dev.filial.core.answer.LocalityQuestion.Origin;
import dev.filial.core.answer.LocalityQuestion.Report;
import dev.filial.core.answer.LocalityQuestion.Standing;
import dev.filial.core.answer.LocalityQuestion.Thing;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Joined;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.PopulationDeclared;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.SeedAcquired;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class LocalityQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code one = plant(LAUI, "FO 12");
  private final Code other = plant(LAUI, "FO 12");
  private final Code near = plant(LAUI, "FO 14");

  private Code plant(String taxon, @Nullable String number) {
    return bench.plant(Determination.of(taxon), number);
  }

  private LocalityQuestion question() {
    return LocalityQuestion.of(bench.store);
  }

  private Origin origin(Code code) {
    return question().ask(code);
  }

  private Standing standing(Code code, String number) {
    return origin(code).standings().stream()
        .filter(standing -> standing.fieldNumbers().contains(number))
        .findFirst()
        .orElseThrow();
  }

  private LocalityVerdict verdict(Code code) {
    return standing(code, "FO 12").verdict();
  }

  private Lost lost(Code code) {
    List<Lost> lost = standing(code, "FO 12").lost();
    assertThat(lost).hasSize(1);
    return lost.get(0);
  }

  private long onePopulation(String... numbers) {
    return bench.say(new PopulationDeclared(List.of(numbers), null));
  }

  private static List<Code> codes(Report report, LocalityVerdict verdict) {
    return report.things().stream()
        .filter(thing -> thing.verdict() == verdict)
        .map(Thing::code)
        .toList();
  }

  @Test
  void aCrossWithinTheNumberIsTrueAndSoIsAllThatIsRaisedOfIt() {
    Code cross = bench.cross(one, other);
    Code seedling = bench.seedling(cross);

    assertThat(origin(seedling).trueTo()).containsExactly("FO 12");
    assertThat(origin(bench.harvest(cross)).trueTo()).containsExactly("FO 12");
    assertThat(origin(bench.pot(cross)).trueTo()).containsExactly("FO 12");
    assertThat(origin(bench.selfed(seedling)).trueTo()).containsExactly("FO 12");
    assertThat(standing(seedling, "FO 12").lost()).isEmpty();
  }

  @Test
  void anotherNumberEndsTheLineAtThatCrossHoweverOftenItIsCrossedBack() {
    Code cross = bench.cross(one, near);
    Code back = bench.cross(bench.seedling(cross), other);

    assertThat(origin(back).trueTo()).isEmpty();
    assertThat(verdict(back)).isEqualTo(NOT_TRUE);
    assertThat(lost(back))
        .isEqualTo(
            new Lost(
                cross.text() + "-1",
                cross,
                one.text() + " × " + near.text(),
                PartialDate.parse("2025"),
                "cross",
                List.of(near.text() + " is of FO 14")));
  }

  @Test
  void numbersDeclaredOnePopulationKeepTheLine() {
    Code cross = bench.cross(one, near);
    long entry = onePopulation("FO 14", "FO 12");

    Origin origin = origin(cross);
    assertThat(origin.trueTo()).containsExactly("FO 12", "FO 14");
    assertThat(origin.notes()).isEmpty();
    assertThat(question().ofNumber("FO 12").declared()).extracting(Said::entry).contains(entry);

    bench.say(new Doubted(entry, "Anton", null));
    assertThat(origin(cross).notes())
        .containsExactly(
            "that the field numbers FO 14, FO 12 are one population is a guess of Anton (entry "
                + entry
                + ")");

    bench.say(new Amended(entry, null, "another valley"));
    assertThat(origin(cross).trueTo()).isEmpty();
  }

  @Test
  void openPollinationEndsTheLineUnlessAllThatFloweredBearTheNumber() {
    Code open = bench.pollination(one, new Pollen.Open(List.of(), Fraction.ONE)).made();
    Code among =
        bench.pollination(one, new Pollen.Open(weighted(other, 1, one, 1), Fraction.ZERO)).made();
    Code perhaps =
        bench.pollination(one, new Pollen.Open(weighted(other, 3, near, 1), Fraction.ZERO)).made();

    assertThat(verdict(open)).isEqualTo(NOT_CERTAIN);
    assertThat(lost(open).how()).isEqualTo("open pollination");
    assertThat(lost(open).why()).containsExactly("nobody knows whose pollen it was");
    assertThat(verdict(among)).isEqualTo(TRUE);
    assertThat(verdict(perhaps)).isEqualTo(NOT_CERTAIN);
    assertThat(lost(perhaps).why()).containsExactly(near.text() + " is of FO 14 (25 % likely)");
  }

  @Test
  void unprotectedFlowersEndTheLineUnlessItWasSaidThatOnlySelfsCameOfThem() {
    Code unprotected = bench.pollination(one, new Pollen.OnePlant(other)).unprotected().made();
    Code seedling = bench.seedling(unprotected);
    Code stated =
        bench
            .pollination(one, new Pollen.OnePlant(other))
            .unprotected()
            .shares("1/10", "1/20", "0")
            .made();
    Code selfsOnly =
        bench
            .pollination(one, new Pollen.OnePlant(other))
            .unprotected()
            .shares("1/10", "0", "0")
            .made();

    assertThat(verdict(seedling)).isEqualTo(NOT_CERTAIN);
    assertThat(lost(seedling).how()).isEqualTo("unprotected flowers");
    assertThat(lost(seedling).made()).isEqualTo(unprotected);
    assertThat(lost(seedling).why().get(0)).contains("a bee may have come");
    assertThat(verdict(bench.cross(seedling, one))).isEqualTo(NOT_CERTAIN);
    assertThat(verdict(stated)).isEqualTo(NOT_CERTAIN);
    assertThat(lost(stated).why())
        .containsExactly("stray pollen of plants nobody knows (5 % likely)");
    assertThat(verdict(selfsOnly)).isEqualTo(TRUE);
  }

  @Test
  void oneOutOfAPotOfAnUnprotectedCrossIsNoMoreCertainThanTheCross() {
    Code pot = bench.pot(bench.pollination(one, new Pollen.OnePlant(other)).unprotected().made());

    assertThat(verdict(bench.cross(other, pot))).isEqualTo(NOT_CERTAIN);
  }

  @Test
  void habitatSeedUnderTheNumberIsTrueThoughNobodyPollinatedIt() {
    Code packet = Code.of(24, 90);
    bench.say(
        new SeedAcquired(
            packet,
            Determination.of(LAUI),
            new Provenance(null, null, "FO 12", null),
            null,
            Count.of(30),
            null,
            null));

    assertThat(origin(packet).trueTo()).containsExactly("FO 12");
    assertThat(verdict(bench.cross(bench.seedling(packet), one))).isEqualTo(TRUE);
  }

  @Test
  void aParentWithoutANumberIsNotKnownToBeOfIt() {
    Code none = plant(LAUI, null);
    Code cross = bench.cross(one, none);

    assertThat(verdict(cross)).isEqualTo(NOT_CERTAIN);
    assertThat(lost(cross).why()).containsExactly(none.text() + " has no field number");
    assertThat(origin(none).standings()).isEmpty();
  }

  @Test
  void aStrangerIsNamedWithTheFounderBehindIt() {
    Code hybrid = bench.cross(plant(AGAVOIDES, "FO 90"), plant(AGAVOIDES, "FO 91"));
    Code seedling = bench.seedling(hybrid);

    assertThat(lost(bench.cross(one, seedling)).why().get(0))
        .startsWith(seedling.text() + " comes of ")
        .endsWith(", which is of FO 90");
  }

  @Test
  void aMixedPacketIsTrueOnlyIfAllThatWentInIs() {
    Code pure = bench.harvest(bench.cross(one, other));
    Code impure = bench.harvest(bench.cross(one, near));
    Code mixture = Code.of(25, 90);
    bench.say(
        new LotsMerged(
            mixture,
            List.of(
                new LotsMerged.Part(pure, Count.of(10), Fraction.of(2, 3)),
                new LotsMerged.Part(impure, Count.of(5), Fraction.of(1, 3))),
            null,
            null,
            null));

    assertThat(verdict(bench.seedling(mixture))).isEqualTo(NOT_CERTAIN);
    assertThat(lost(bench.seedling(mixture)).made()).isEqualTo(mixture);
    assertThat(lost(bench.seedling(mixture)).how()).isEqualTo("mixed lot");
    assertThat(lost(bench.seedling(mixture)).why())
        .containsExactly(
            "one of "
                + impure.text()
                + " comes of "
                + near.text()
                + ", which is of FO 14 (33.3 % likely)");
  }

  @Test
  void aLostTagIsAsCertainAsWhatItMayBe() {
    Code hybrid = bench.seedling(bench.cross(one, near));
    Code among = bench.found("0", one, 1, other, 1);
    Code perhaps = bench.found("0", one, 1, hybrid, 1);
    Code anything = bench.found("1/4", one, 1);

    assertThat(verdict(among)).isEqualTo(TRUE);
    assertThat(verdict(perhaps)).isEqualTo(NOT_CERTAIN);
    assertThat(lost(perhaps).how()).isEqualTo("doubtful identity");
    assertThat(verdict(anything)).isEqualTo(NOT_CERTAIN);
    assertThat(lost(anything).why())
        .containsExactly("it may be a plant nobody knows (25 % likely)");
  }

  @Test
  void anOffsetAndAJoinedRecordAreThePlantAgain() {
    Code offset = bench.offset(one, false);
    Code found = plant(LAUI, null);
    bench.say(new Joined(one, found, "the same scar"));

    assertThat(origin(offset).trueTo()).containsExactly("FO 12");
    assertThat(origin(found).code()).isEqualTo(one);
    assertThat(origin(bench.cross(other, found)).trueTo()).containsExactly("FO 12");
  }

  @Test
  void aGuessBehindItIsTold() {
    Code cross = bench.cross(one, other);
    long entry = bench.store.item(cross).orElseThrow().entry();
    bench.say(new Doubted(entry, "Anton", null));

    assertThat(origin(bench.seedling(cross)).notes())
        .containsExactly(
            "what is recorded of " + cross.text() + " is a guess of Anton (entry " + entry + ")");
    assertThat(question().ofNumber("FO 12").notes()).hasSize(1);
    assertThat(question().ofNumber("FO 14").notes()).isEmpty();
  }

  @Test
  void aCrossOfTwoSpeciesOfOneNumberIsTrueToItAndSaysSo() {
    Code cross = bench.cross(one, plant(AGAVOIDES, "FO 12"));

    assertThat(verdict(cross)).isEqualTo(TRUE);
    assertThat(origin(cross).notes().get(0))
        .contains("several species came under FO 12")
        .contains("yet a hybrid");
  }

  @Test
  void theReportHasAllThatComesOfTheNumberAndIsHere() {
    Code pure = bench.seedling(bench.cross(one, other));
    Code impure = bench.seedling(bench.cross(one, near));
    Code open = bench.pollination(one, new Pollen.Open(List.of(), Fraction.ONE)).made();
    Code lot = bench.harvest(open);
    Code pot = bench.pot(bench.cross(impure, near));
    Code dead = bench.seedling(bench.cross(other, one));
    bench.say(
        new FateRecorded(
            List.of(dead), Fate.DEAD, PartialDate.parse("2026"), null, null, null, null));
    Code stranger = plant(LAUI, "FO 99");

    Report report = question().ofNumber("fo 12");

    assertThat(report.fieldNumber()).isEqualTo("FO 12");
    assertThat(codes(report, TRUE)).containsExactly(one, other, pure);
    assertThat(codes(report, NOT_CERTAIN)).containsExactly(lot);
    assertThat(codes(report, NOT_TRUE)).containsExactly(impure, pot);
    assertThat(report.count(NOT_TRUE)).isEqualTo(2);
    assertThat(report.things()).extracting(Thing::code).doesNotContain(dead, stranger);
    assertThat(report.things().get(report.things().size() - 1).lost()).isEqualTo(lost(impure));
    assertThat(codes(question().withGone(true).ofNumber("FO 12"), TRUE)).contains(dead);
  }

  @Test
  void aLineLostInTwoSeedlingsOfOneCrossWasLostOnceInTwoCrossesTwice() {
    Code cross = bench.cross(one, near);
    Code sibs = bench.seedling(bench.cross(bench.seedling(cross), bench.seedling(cross)));
    Code apart = bench.seedling(bench.cross(sibs, bench.seedling(bench.cross(other, near))));

    assertThat(standing(sibs, "FO 12").lost()).hasSize(2);
    assertThat(question().ofNumber("FO 12").things())
        .filteredOn(Thing::elsewhere)
        .extracting(Thing::code)
        .containsExactly(apart);
  }

  @Test
  void aSowingThatWasDividedIntoPotsIsNotCountedTwice() {
    Code lot = bench.harvest(bench.cross(one, other));
    Code divided = bench.sowing(lot, "2026-01", 2);
    Code whole = bench.sowing(lot, "2026-02", 0);

    assertThat(question().ofNumber("FO 12").things())
        .extracting(Thing::code)
        .contains(whole, lot.whole().group(1), lot.whole().group(2))
        .doesNotContain(divided);
  }

  @Test
  void allNumbersAreCountedEachPopulationOnce() {
    bench.cross(one, near);
    bench.seedling(bench.cross(one, near));
    assertThat(question().ask())
        .containsExactly(new Line(List.of("FO 12"), 2, 0, 1), new Line(List.of("FO 14"), 1, 0, 1));

    onePopulation("FO 14", "FO 12", "FO 13");

    assertThat(question().ask()).containsExactly(new Line(List.of("FO 12", "FO 14"), 4, 0, 0));
    assertThat(question().ofNumber("FO 13").population())
        .containsExactly("FO 12", "FO 13", "FO 14");
  }

  @Test
  void aNumberThatIsNotThereIsRefusedAndThoseThatAreAreNamed() {
    assertThatThrownBy(() -> question().ofNumber("FO 21"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage(
            "nothing here came under the field number \"FO 21\"; the numbers are FO 12, FO 14");
    assertThatThrownBy(() -> LocalityQuestion.of(new InventedBench().store).ofNumber("FO 21"))
        .hasMessageContaining("no plant or packet has one");
    assertThat(LocalityQuestion.of(new InventedBench().store).ask()).isEmpty();
  }

  @Test
  void whatHangsOnADeclarationIsAllThatComesOfItsNumbers() {
    Code cross = bench.cross(near, one);
    Code stranger = plant(LAUI, "FO 99");
    long entry = onePopulation("FO 14", "FO 13");

    assertThat(HangingQuestion.of(bench.store).onEntry(entry).things())
        .extracting(HangingQuestion.Touched::code)
        .contains(near, cross)
        .doesNotContain(one, stranger);
  }
}
