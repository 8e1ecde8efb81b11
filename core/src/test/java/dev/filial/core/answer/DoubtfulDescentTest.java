package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.weighted;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Joined;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plants that may have come about in several ways, or behind which something is a guess. */
class DoubtfulDescentTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code colorata = bench.plant(COLORATA);

  private AncestryQuestion.Ancestry ask(Code code) {
    return AncestryQuestion.of(bench.store).ask(code);
  }

  private Code openPollinated(String unknown, Object... candidates) {
    return bench
        .pollination(laui, new Pollen.Open(weighted(candidates), Fraction.parse(unknown)))
        .made();
  }

  @Test
  void openPollinationByNobodyKnowsWhatIsHalfUnknown() {
    Code open = openPollinated("1");

    assertThat(bench.shares(open)).isEqualTo("1/2 " + LAUI + ", 1/2 unknown");
    assertThat(bench.generationInWords(open))
        .isEqualTo("no generation class: the pollen parent of " + open.text() + " is unknown");
  }

  @Test
  void candidatesSpreadThePollenByWeightAndTheUnknownShareStays() {
    Code open = openPollinated("1/4", agavoides, 2, colorata, 1);

    AncestryQuestion.Ancestry answer = ask(open);

    assertThat(InventedBench.shares(answer))
        .isEqualTo("1/2 " + LAUI + ", 1/4 " + AGAVOIDES + ", 1/8 " + COLORATA + ", 1/8 unknown");
    assertThat(answer.possibilities())
        .extracting(way -> way.share() + " " + way.route() + " " + way.pollen())
        .containsExactly(
            "1/2 open pollination " + agavoides.text(),
            "1/4 open pollination " + colorata.text(),
            "1/4 open pollination null");
  }

  @Test
  void aPollenMixIsTheMeanOfItsCrosses() {
    Code mix =
        bench
            .pollination(laui, new Pollen.Mix(weighted(agavoides, 3, colorata, 1)))
            .made();

    assertThat(bench.shares(mix))
        .isEqualTo("1/2 " + LAUI + ", 3/8 " + AGAVOIDES + ", 1/8 " + COLORATA);
    assertThat(bench.generation(mix)).isEqualTo("F1");
  }

  @Test
  void selfsStraysAndSeedWithoutFertilisationAreCountedByTheirShares() {
    Code cross =
        bench
            .pollination(laui, new Pollen.OnePlant(agavoides))
            .shares("1/10", "1/20", "1/20")
            .made();

    AncestryQuestion.Ancestry answer = ask(cross);

    // 0.8 × (½, ½) + 0.1 × (1, 0) + 0.05 × (½, 0, ½) + 0.05 × (1, 0)
    assertThat(InventedBench.shares(answer))
        .isEqualTo("23/40 " + LAUI + ", 2/5 " + AGAVOIDES + ", 1/40 unknown");
    assertThat(answer.possibilities())
        .extracting(AncestryQuestion.Possibility::route)
        .containsExactly("cross", "selfing", "stray pollen", "apomixis");
    assertThat(answer.possibilities().get(3).copy()).isTrue();
    assertThat(answer.notes()).isEmpty();
  }

  @Test
  void theWaysOfAnAncestorAreTold() {
    Code cross =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).shares("1/10", "0", "0").made();
    Code next = bench.cross(bench.seedling(cross), colorata);

    assertThat(ask(next).notes())
        .containsExactly(
            cross.text()
                + " may have come about in several ways, counted by share: 90 % cross, 10 %"
                + " selfing");
  }

  @Test
  void allSeedWithoutFertilisationIsTheSeedParentAgain() {
    Code cross =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).shares("0", "0", "1").made();

    assertThat(bench.shares(cross)).isEqualTo("1 " + LAUI);
    assertThat(ask(cross).ancestors()).isZero();
    assertThat(NotationQuestion.of(bench.store)
            .notation(cross, NotationQuestion.Sources.TAXA, dev.filial.core.name.Notation.Style.PLAIN)
            .notation())
        .isEqualTo("laui");
  }

  @Test
  void anUnprotectedHandCrossIsTakenAsPureAndTheAnswerSaysSo() {
    Code cross = bench.pollination(laui, new Pollen.OnePlant(agavoides)).unprotected().made();
    Code grandchild = bench.selfed(bench.seedling(cross));

    assertThat(ask(grandchild).notes())
        .containsExactly(
            cross.text()
                + " was made on unprotected flowers, and no share of selfs and strays is stated:"
                + " taken as pure");
  }

  @Test
  void onePlantOfAPotSelfedIsASelfingAndTwoOfItCrossedAreSibs() {
    Code pot = bench.pot(bench.cross(laui, agavoides));
    Code selfed = bench.selfed(pot);
    Code sibs = bench.cross(pot, pot);

    assertThat(bench.generationInWords(selfed)).contains("F2").contains("by selfing");
    assertThat(bench.generationInWords(sibs)).contains("F2").contains("by sib cross");
    assertThat(ask(selfed).seedParentLine())
        .containsExactly(
            selfed.text(),
            "one of " + pot.text() + " (seed parent of " + selfed.text() + ")",
            laui.text());
    assertThat(ask(selfed).ancestors()).isEqualTo(3);
    assertThat(ask(sibs).ancestors()).isEqualTo(4);
  }

  @Test
  void aPotUsedInTwoCrossesGaveTwoPlants() {
    Code pot = bench.pot(bench.cross(laui, agavoides));
    Code one = bench.seedling(bench.cross(pot, colorata));
    Code other = bench.seedling(bench.cross(pot, colorata));

    assertThat(ask(bench.cross(one, other)).ancestors())
        .as("two seedlings, two plants of the pot, three species plants")
        .isEqualTo(7);
  }

  private Code mixed(Code oneLot, Code otherLot, Count taken) {
    Code mixture = NextCode.in(bench.store).ofYear(2025);
    bench.say(
        new LotsMerged(
            mixture,
            List.of(
                new LotsMerged.Part(oneLot, taken, Fraction.of(3, 4)),
                new LotsMerged.Part(otherLot, Count.of(10), Fraction.of(1, 4))),
            PartialDate.parse("2025-07-10"),
            null,
            null));
    return mixture;
  }

  @Test
  void aMixedPacketIsTheCrossesByTheirShares() {
    Code one = bench.harvest(bench.cross(laui, agavoides));
    Code other = bench.harvest(bench.cross(laui, colorata));
    Code mixture = mixed(one, other, Count.of(30));

    AncestryQuestion.Ancestry answer = ask(bench.seedling(mixture));

    assertThat(InventedBench.shares(answer))
        .isEqualTo("1/2 " + LAUI + ", 3/8 " + AGAVOIDES + ", 1/8 " + COLORATA);
    assertThat(answer.possibilities())
        .extracting(AncestryQuestion.Possibility::route)
        .containsOnly("mixed lot");
    assertThat(answer.ancestors()).as("the three species plants, itself not").isEqualTo(3);
    assertThat(answer.notes()).isEmpty();
  }

  @Test
  void twoSeedlingsOfAMixedPacketAreTwoPlants() {
    Code one = bench.harvest(bench.cross(laui, agavoides));
    Code other = bench.harvest(bench.cross(agavoides, laui));
    Code mixture = mixed(one, other, Count.of(30));
    Code sibs = bench.cross(bench.seedling(mixture), bench.seedling(mixture));

    assertThat(bench.generationInWords(sibs)).contains("F2").doesNotContain("selfing");
  }

  @Test
  void sharesOfAPacketThatWereGuessedAreSaidToBe() {
    Code one = bench.harvest(bench.cross(laui, agavoides));
    Code other = bench.harvest(bench.cross(laui, colorata));
    Code mixture = mixed(one, other, Count.about(30));

    assertThat(ask(mixture).notes())
        .containsExactly(
            "the shares of the lots mixed in "
                + mixture.text()
                + " rest on seed that was not counted");
  }

  @Test
  void aPlantWithoutATagIsOneOfTwo() {
    Code found = bench.found("0", laui, 3, agavoides, 1);

    assertThat(bench.shares(found)).isEqualTo("3/4 " + LAUI + ", 1/4 " + AGAVOIDES);
    assertThat(ask(found).possibilities())
        .extracting(way -> way.route() + " " + way.seed() + " " + way.copy())
        .containsExactly(
            "doubtful identity " + laui.text() + " true",
            "doubtful identity " + agavoides.text() + " true");
    assertThat(bench.generationInWords(bench.selfed(found)))
        .as("a selfing of either is pure, never a cross between the two")
        .doesNotContain("F1");
  }

  @Test
  void aPlantWithoutATagMayBeSomethingElse() {
    Code found = bench.found("1/5", laui, 1, agavoides, 1);

    assertThat(bench.shares(found))
        .isEqualTo("2/5 " + AGAVOIDES + ", 2/5 " + LAUI + ", 1/5 unknown");
    assertThat(bench.shares(bench.found("1"))).isEqualTo("1 unknown");
  }

  @Test
  void aPlantWithoutATagMayBeOneOfAPot() {
    Code pot = bench.pot(bench.cross(laui, agavoides));
    Code certain = bench.found("0", pot, 1);
    Code doubtful = bench.found("0", pot, 1, colorata, 1);

    assertThat(bench.generation(certain)).isEqualTo("F1");
    assertThat(bench.shares(doubtful))
        .isEqualTo("1/2 " + COLORATA + ", 1/4 " + AGAVOIDES + ", 1/4 " + LAUI);
    assertThat(ask(certain).ancestors()).isEqualTo(2);
  }

  @Test
  void whatATetraploidWithoutATagMayElseBeIsTakenToBeTetraploidToo() {
    bench.taxon("Echeveria gigantea", null, 4);
    Code found = bench.found("1/2", bench.plant("Echeveria gigantea"), 1);

    assertThat(ask(found).ploidy()).isEqualTo(4);
    assertThat(bench.shares(bench.cross(found, laui)))
        .isEqualTo("1/3 Echeveria gigantea, 1/3 " + LAUI + ", 1/3 unknown");
  }

  @Test
  void aGuessBehindAPlantIsSaidWithWhoseItIs() {
    Code cross = bench.cross(laui, agavoides);
    long entry = bench.store.item(cross).orElseThrow().entry();
    bench.say(new Doubted(entry, "Anton", null));
    Code next = bench.cross(bench.seedling(cross), colorata);

    assertThat(ask(next).notes())
        .containsExactly(
            "what is recorded of " + cross.text() + " is a guess of Anton (entry " + entry + ")");
  }

  @Test
  void aGuessedJoinIsSaid() {
    Code again = bench.plant("Echeveria sp.");
    long entry = bench.say(new Joined(laui, again, "they look alike"));
    bench.say(new Doubted(entry, "Klara", null));

    assertThat(ask(bench.cross(again, agavoides)).notes())
        .containsExactly(
            "that "
                + again.text()
                + " is the same plant as "
                + laui.text()
                + " is a guess of Klara (entry "
                + entry
                + ")");
  }
}
