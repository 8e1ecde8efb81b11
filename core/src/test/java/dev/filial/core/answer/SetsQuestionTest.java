package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Protection;
import dev.filial.core.trial.Proportion;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** What has set on what, and which way round. */
class SetsQuestionTest {

  private final FlowersStory story = new FlowersStory();
  private final Code laui = story.plant(LAUI);
  private final Code agavoides = story.plant(AGAVOIDES);

  private SetsQuestion.Sets sets() {
    return SetsQuestion.of(story.bench.store).ask();
  }

  @Test
  void anEmptyBenchHasSetNothing() {
    assertThat(SetsQuestion.of(new InventedBench().store).ask().rows()).isEmpty();
  }

  @Test
  void bothWaysStandBesideEachOther() {
    story.fruit(
        story.cross(laui, agavoides, Count.of(5)), Count.of(4), Count.of(1), Count.of(1), null);
    story.fruit(story.cross(agavoides, laui, Count.of(6)), Count.of(0), Count.of(6), null, null);
    assertThat(sets().rows())
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.one()).isEqualTo(laui.text());
              assertThat(row.oneBears().set()).isEqualTo(4);
              assertThat(row.oneBears().aborted()).isEqualTo(1);
              assertThat(row.otherBears().set()).isZero();
              assertThat(row.otherBears().known()).isEqualTo(6);
            });
  }

  /** Wilson 1927, worked out by hand with z = 1.96. */
  @Test
  void fourOfFiveMayBeBetween38And96Percent() {
    // (0.8 + 0.38416) / 1.76832 = 0.66965; 1.96 × √(0.032 + 0.038416) / 1.76832 = 0.29412.
    story.fruit(story.cross(laui, agavoides, Count.of(5)), Count.of(4), Count.of(1), null, null);
    Proportion.Interval interval = sets().rows().get(0).oneBears().interval().orElseThrow();
    assertThat(interval.lower()).isCloseTo(0.37553, within(1e-4));
    assertThat(interval.upper()).isCloseTo(0.96377, within(1e-4));
  }

  @Test
  void flowersNobodyWroteOfAreInNoShareAndSaid() {
    // 10 flowers less 2 and 1 leave 7.
    story.fruit(story.cross(laui, agavoides, Count.of(10)), Count.of(2), Count.of(1), null, null);
    Tries tries = sets().rows().get(0).oneBears();
    assertThat(tries.known()).isEqualTo(3);
    assertThat(tries.unknown()).isEqualTo(7);
    assertThat(sets().notes())
        .contains("7 flowers of which nobody wrote whether it set, left out of the shares");
  }

  @Test
  void whereOnlyWhatSetWasWrittenThereIsNoShare() {
    // The share that set may be anything from 3 of 10 to 10 of 10.
    story.fruit(story.cross(laui, agavoides, Count.of(10)), Count.of(3), null, null, null);
    Tries tries = sets().rows().get(0).oneBears();
    assertThat(tries.known()).isZero();
    assertThat(tries.interval()).isEmpty();
    assertThat(tries.setOnly()).isEqualTo(3);
    assertThat(tries.unknown()).isEqualTo(7);
    assertThat(sets().notes())
        .contains(
            "1 cross of which only what set was written, left out of the shares: of the rest nobody"
                + " knows");
    // Another cross with every flower written counts by itself: 2 of 4.
    story.fruit(story.cross(laui, agavoides, Count.of(4)), Count.of(2), Count.of(2), null, null);
    assertThat(sets().rows().get(0).oneBears().set()).isEqualTo(2);
    assertThat(sets().rows().get(0).oneBears().known()).isEqualTo(4);
  }

  @Test
  void whereEveryFlowerSetNoFailureNeedBeWritten() {
    story.fruit(story.cross(laui, agavoides, Count.of(3)), Count.of(3), null, null, null);
    assertThat(sets().rows().get(0).oneBears().known()).isEqualTo(3);
    assertThat(sets().rows().get(0).oneBears().onlySet()).isZero();
  }

  @Test
  void flowersOfAGuessedCrossAreNotUnknown() {
    // About 5 set and 3 failed of 10: about 2 are left, of which nobody wrote.
    story.fruit(
        story.cross(laui, agavoides, Count.of(10)), Count.about(5), Count.of(3), null, null);
    Tries tries = sets().rows().get(0).oneBears();
    assertThat(tries.known()).isZero();
    assertThat(tries.unknown()).isEqualTo(2);
    assertThat(tries.about()).isEqualTo(new Tries.About(5, 3, 0, 0));
    assertThat(sets().notes())
        .contains("1 cross whose set or failed flowers were guessed, left out");
  }

  @Test
  void whatWasEatenOrDroppedByGuessIsToldAsAbout() {
    // 3 set, 4 failed and about 2 eaten of 10 leave 1.
    story.fruit(
        story.cross(laui, agavoides, Count.of(10)),
        Count.of(3),
        Count.of(4),
        Count.about(1),
        Count.about(2));
    Tries tries = sets().rows().get(0).oneBears();
    assertThat(tries.known()).isEqualTo(7);
    assertThat(tries.eaten()).isZero();
    assertThat(tries.about()).isEqualTo(new Tries.About(0, 0, 1, 2));
    assertThat(tries.unknown()).isEqualTo(1);
  }

  @Test
  void whatWasEatenIsNoSignOfIncompatibility() {
    story.fruit(
        story.cross(laui, agavoides, Count.of(4)), Count.of(2), Count.of(1), null, Count.of(1));
    Tries tries = sets().rows().get(0).oneBears();
    assertThat(tries.known()).isEqualTo(3);
    assertThat(tries.eaten()).isEqualTo(1);
    assertThat(tries.unknown()).isZero();
  }

  @Test
  void guessedNumbersAreLeftOutAndSaid() {
    story.fruit(
        story.cross(laui, agavoides, Count.about(9)), Count.about(4), Count.of(1), null, null);
    Tries tries = sets().rows().get(0).oneBears();
    assertThat(tries.interval()).isEmpty();
    assertThat(tries.guessed()).isEqualTo(1);
    assertThat(sets().notes())
        .contains("1 cross whose set or failed flowers were guessed, left out");
  }

  @Test
  void mixedAndOpenPollenTellOfNoPair() {
    story.pollinated(
        laui,
        new Pollen.Mix(InventedBench.weighted(agavoides, 1, laui, 1)),
        Count.of(3),
        Protection.BAGGED);
    story.pollinated(laui, new Pollen.Open(List.of(), Fraction.ONE), Count.of(3), Protection.NONE);
    assertThat(sets().rows()).isEmpty();
    assertThat(sets().notes())
        .containsExactly(
            "1 cross with mixed pollen, left out: nobody knows whose it was that took",
            "1 open pollination left out");
  }

  @Test
  void aSelfingStandsAlone() {
    story.fruit(story.cross(laui, laui, Count.of(4)), Count.of(0), Count.of(4), null, null);
    SetsQuestion.Row row = sets().rows().get(0);
    assertThat(row.isSelfing()).isTrue();
    assertThat(row.oneBears().known()).isEqualTo(4);
    assertThat(row.otherBears().crosses()).isEmpty();
  }

  @Test
  void byTaxonTwoPlantsOfOneSpeciesCountTogether() {
    Code another = story.plant(LAUI);
    story.fruit(story.cross(laui, agavoides, Count.of(3)), Count.of(3), Count.of(0), null, null);
    story.fruit(story.cross(another, agavoides, Count.of(3)), Count.of(1), Count.of(2), null, null);
    assertThat(SetsQuestion.of(story.bench.store).by(SetsQuestion.By.TAXON).ask().rows())
        .singleElement()
        .satisfies(
            row -> {
              assertThat(row.one()).isEqualTo(AGAVOIDES);
              assertThat(row.otherBears().set()).isEqualTo(4);
              assertThat(row.otherBears().known()).isEqualTo(6);
            });
  }

  /** laui A × laui B 10 of 10; A selfed 0 of 10; A × its own offset 0 of 8. */
  private void aSelfSterileSpecies() {
    Code another = story.plant(LAUI);
    Code offset = story.offset(laui);
    story.fruit(story.cross(laui, another, Count.of(10)), Count.of(10), Count.of(0), null, null);
    story.fruit(story.cross(laui, laui, Count.of(10)), Count.of(0), Count.of(10), null, null);
    story.fruit(story.cross(laui, offset, Count.of(8)), Count.of(0), Count.of(8), null, null);
  }

  @Test
  void selfingsAreNotPooledWithCrossesWithinTheSpecies() {
    aSelfSterileSpecies();
    List<SetsQuestion.Row> rows =
        SetsQuestion.of(story.bench.store).by(SetsQuestion.By.TAXON).ask().rows();
    assertThat(rows).extracting(SetsQuestion.Row::one).containsExactly(LAUI, LAUI);
    assertThat(rows).extracting(SetsQuestion.Row::other).containsExactly(LAUI, LAUI);
    assertThat(rows).extracting(SetsQuestion.Row::isSelfing).containsExactly(true, false);
    // 10 selfed and 8 with pollen of the offset, none of which set: 0 of 18. Of none the upper end
    // is z² / (n + z²) = 3.8415 / 21.8415 = 0.17588.
    Tries selfed = rows.get(0).oneBears();
    assertThat(selfed.set()).isZero();
    assertThat(selfed.known()).isEqualTo(18);
    assertThat(selfed.interval().orElseThrow().lower()).isCloseTo(0, within(1e-12));
    assertThat(selfed.interval().orElseThrow().upper()).isCloseTo(0.17588, within(1e-4));
    assertThat(rows.get(1).oneBears().set()).isEqualTo(10);
    assertThat(rows.get(1).oneBears().known()).isEqualTo(10);
  }

  @Test
  void aPlantOnItsOwnOffsetIsASelfing() {
    aSelfSterileSpecies();
    // By plant: the clone with itself 0 of 18, and with the other plant 10 of 10.
    List<SetsQuestion.Row> rows = sets().rows();
    assertThat(rows).hasSize(2);
    assertThat(rows.get(0).one()).isEqualTo(laui.text());
    assertThat(rows.get(0).other()).isEqualTo(laui.text());
    assertThat(rows.get(0).isSelfing()).isTrue();
    assertThat(rows.get(0).oneBears().set()).isZero();
    assertThat(rows.get(0).oneBears().known()).isEqualTo(18);
    assertThat(rows.get(1).isSelfing()).isFalse();
    assertThat(rows.get(1).oneBears().known()).isEqualTo(10);
  }

  @Test
  void ofOnePlantAndItsOffsetsOnly() {
    Code colorata = story.plant(COLORATA);
    Code offset = story.offset(laui);
    story.cross(offset, agavoides, Count.of(3));
    story.cross(colorata, agavoides, Count.of(3));
    assertThat(SetsQuestion.of(story.bench.store).ofPlant(laui).rows()).hasSize(1);
  }

  @Test
  void moreFlowersThanAreReckonedWithHaveNoInterval() {
    for (int i = 0; i < 3; i++) {
      story.fruit(
          story.cross(laui, agavoides, Count.of(Count.MOST)),
          Count.of(Count.MOST),
          null,
          null,
          null);
    }
    Tries tries = sets().rows().get(0).oneBears();
    assertThat(tries.known()).isEqualTo(3 * Count.MOST);
    assertThat(tries.interval()).isEmpty();
  }

  /** The same crosses with seed and pollen parent exchanged fill the same table, turned round. */
  @Property(tries = 50)
  void exchangingTheParentsExchangesTheColumns(
      @ForAll List<@IntRange(min = 0, max = 26) Integer> drawn) {
    SetsQuestion.Sets there = sets(drawn, false);
    SetsQuestion.Sets back = sets(drawn, true);
    assertThat(back.rows()).hasSameSizeAs(there.rows());
    for (int i = 0; i < there.rows().size(); i++) {
      SetsQuestion.Row row = there.rows().get(i);
      SetsQuestion.Row turned = back.rows().get(i);
      assertThat(turned.one()).isEqualTo(row.one());
      assertThat(turned.other()).isEqualTo(row.other());
      if (row.isSelfing()) {
        assertThat(turned).isEqualTo(row);
      } else {
        assertThat(turned.oneBears()).isEqualTo(row.otherBears());
        assertThat(turned.otherBears()).isEqualTo(row.oneBears());
      }
    }
    assertThat(back.notes()).isEqualTo(there.notes());
  }

  /** Each number is a pair of three plants and how many of two flowers set. */
  private static SetsQuestion.Sets sets(List<Integer> drawn, boolean turned) {
    FlowersStory story = new FlowersStory();
    List<Code> plants = List.of(story.plant(LAUI), story.plant(AGAVOIDES), story.plant(COLORATA));
    for (int number : drawn) {
      Code seed = plants.get(number % 3);
      Code pollen = plants.get(number / 3 % 3);
      Code cross =
          turned ? story.cross(pollen, seed, Count.of(3)) : story.cross(seed, pollen, Count.of(3));
      int set = number / 9;
      story.fruit(cross, Count.of(set), Count.of(2 - set), null, null);
    }
    return SetsQuestion.of(story.bench.store).ask();
  }
}
