package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.COLORATA;
import static dev.filial.core.answer.InventedBench.ELEGANS;
import static dev.filial.core.answer.InventedBench.LAUI;
import static dev.filial.core.answer.InventedBench.hybrid;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.ancestry.Level;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.RegisterRefusal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Plants of which it is certain how they came about. */
class AncestryQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);

  private AncestryQuestion.Ancestry ask(Code code) {
    return AncestryQuestion.of(bench.store).ask(code);
  }

  @Test
  void aHandCrossOfTwoSpeciesIsAnF1OfHalfEach() {
    Code cross = bench.cross(laui, agavoides);
    Code seedling = bench.seedling(cross);

    AncestryQuestion.Ancestry answer = ask(seedling);

    assertThat(InventedBench.shares(answer)).isEqualTo("1/2 " + AGAVOIDES + ", 1/2 " + LAUI);
    assertThat(answer.generation()).isEqualTo("F1");
    assertThat(answer.generationInWords()).isEqualTo("F1 of " + LAUI + " × " + AGAVOIDES);
    assertThat(answer.kind()).isEqualTo("seedling");
    assertThat(answer.possibilities()).isEmpty();
    assertThat(answer.seedParentLine()).containsExactly(seedling.text(), laui.text());
    assertThat(answer.ploidy()).isEqualTo(2);
    assertThat(answer.ancestors()).isEqualTo(2);
    assertThat(answer.notes()).isEmpty();
  }

  @Test
  void aCrossALotAPotAndASeedlingOfItAllHaveTheSameAncestry() {
    Code cross = bench.cross(laui, agavoides);
    Code lot = bench.harvest(cross);
    Code sowing = bench.sowing(lot, "2025-08-01", 1);
    Code pot = cross.group(1);
    for (Code code : List.of(cross, lot, sowing, pot, bench.seedling(cross))) {
      assertThat(ask(code).taxa()).as(code.text()).isEqualTo(ask(cross).taxa());
      assertThat(ask(code).code()).isEqualTo(code);
    }
  }

  @Test
  void selfingAnF1IsAnF2BySelfingAndACrossOfTwoSistersIsOneBySibCross() {
    Code f1 = bench.cross(laui, agavoides);
    Code one = bench.seedling(f1);
    Code other = bench.seedling(f1);

    assertThat(bench.generationInWords(bench.selfed(one)))
        .isEqualTo("F2 of " + LAUI + " × " + AGAVOIDES + ", by selfing");
    assertThat(bench.generationInWords(bench.cross(one, other)))
        .isEqualTo("F2 of " + LAUI + " × " + AGAVOIDES + ", by sib cross");
    assertThat(bench.shares(bench.selfed(one))).isEqualTo("1/2 " + AGAVOIDES + ", 1/2 " + LAUI);
  }

  @Test
  void backcrossToTheSamePlantIsToldApartFromOneToAnotherOfItsTaxon() {
    Code f1 = bench.seedling(bench.cross(laui, agavoides));
    Code otherLaui = bench.plant(LAUI);

    assertThat(bench.generationInWords(bench.cross(f1, laui)))
        .startsWith("BC1 to " + LAUI)
        .contains("the plant of the first cross again");
    assertThat(bench.generationInWords(bench.cross(otherLaui, f1)))
        .startsWith("BC1 to " + LAUI)
        .contains("not the plant of the first cross");
    assertThat(bench.shares(bench.cross(f1, laui))).isEqualTo("3/4 " + LAUI + ", 1/4 " + AGAVOIDES);
  }

  @Test
  void threeWayAndDoubleCrossAreNamed() {
    Code f1 = bench.seedling(bench.cross(laui, agavoides));
    Code colorata = bench.plant(COLORATA);
    Code other = bench.seedling(bench.cross(colorata, bench.plant(ELEGANS)));

    assertThat(bench.generation(bench.cross(f1, colorata))).isEqualTo("three-way");
    assertThat(bench.generation(bench.cross(f1, other))).isEqualTo("double cross");
  }

  @Test
  void anOffsetIsThePlantItWasTakenFrom() {
    Code f1 = bench.seedling(bench.cross(laui, agavoides));
    Code offset = bench.offset(f1, false);

    assertThat(bench.generation(offset)).isEqualTo("F1");
    assertThat(ask(offset).ancestors()).isEqualTo(2);
    assertThat(bench.generationInWords(bench.cross(offset, f1))).contains("by selfing");
    assertThat(ask(bench.offset(laui, false)).ancestors()).isZero();
  }

  @Test
  void aDoubledOffsetHasTwiceTheSetsAndGivesThreeSetsWithADiploid() {
    Code doubled = bench.offset(laui, true);
    Code cross = bench.cross(doubled, agavoides);

    assertThat(ask(doubled).ploidy()).isEqualTo(4);
    assertThat(ask(cross).ploidy()).isEqualTo(3);
    assertThat(bench.shares(cross)).isEqualTo("2/3 " + LAUI + ", 1/3 " + AGAVOIDES);
  }

  @Test
  void fourTimesTwoIsTwoThirdsFromTheTetraploidWhetherTheSetsAreStatedOrNot() {
    bench.taxon(COLORATA, null, 4);
    Code tetraploid = bench.plant(COLORATA);
    Code plain = bench.cross(tetraploid, laui);
    Code stated = bench.pollination(tetraploid, new Pollen.OnePlant(laui)).sets(2, 1).made();

    for (Code cross : List.of(plain, stated)) {
      assertThat(bench.shares(cross)).isEqualTo("2/3 " + COLORATA + ", 1/3 " + LAUI);
      assertThat(ask(cross).ploidy()).isEqualTo(3);
      assertThat(bench.generation(cross)).isEqualTo("F1");
    }
  }

  @Test
  void anUnreducedPollenGrainCountsWhatItCarried() {
    Code cross = bench.pollination(laui, new Pollen.OnePlant(agavoides)).sets(null, 2).made();

    assertThat(bench.shares(cross)).isEqualTo("2/3 " + AGAVOIDES + ", 1/3 " + LAUI);
    assertThat(ask(cross).ploidy()).isEqualTo(3);
  }

  @Test
  void aTriploidWhoseEggIsStatedCanBeAParent() {
    bench.taxon(COLORATA, null, 4);
    Code triploid = bench.seedling(bench.cross(bench.plant(COLORATA), laui));
    Code next = bench.pollination(triploid, new Pollen.OnePlant(agavoides)).sets(3, null).made();

    assertThat(bench.shares(next))
        .isEqualTo("1/2 " + COLORATA + ", 1/4 " + AGAVOIDES + ", 1/4 " + LAUI);
    assertThatThrownBy(() -> bench.cross(triploid, agavoides))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("state how many sets its egg");
  }

  @Test
  void twoRecordsOfOnePlantAreOneGenotype() {
    Code again = bench.plant("Echeveria sp.");
    Code cross = bench.cross(laui, again);
    assertThat(bench.shares(cross)).isEqualTo("1/2 " + LAUI + ", 1/2 unknown");

    bench.say(new Joined(agavoides, again, "the label turned up"));

    assertThat(bench.shares(cross)).isEqualTo("1/2 " + AGAVOIDES + ", 1/2 " + LAUI);
    assertThat(ask(again).code()).isEqualTo(agavoides);
    assertThat(ask(cross).ancestors()).isEqualTo(2);
    Code f1 = bench.seedling(cross);
    assertThat(bench.generationInWords(bench.cross(f1, agavoides)))
        .contains("the plant of the first cross again");
  }

  @Test
  void anF2WithinOneSpeciesIsCountedOverPlants() {
    Code other = bench.plant(LAUI);
    Code cross = bench.selfed(bench.seedling(bench.cross(laui, other)));

    assertThat(bench.generation(cross)).isEqualTo("pure");
    AncestryQuestion.Ancestry overPlants =
        AncestryQuestion.of(bench.store).withGenerationBy(Level.PLANT).ask(cross);
    assertThat(overPlants.generation()).isEqualTo("F2");
    assertThat(overPlants.generationBy()).isEqualTo("plant");
  }

  @Test
  void generationsAreCountedOverFieldNumbers() {
    Code north = bench.plant(Determination.of(LAUI), "KB 12");
    Code south = bench.plant(Determination.of(LAUI), "KB 40");
    Code cross = bench.cross(north, south);

    AncestryQuestion.Ancestry answer =
        AncestryQuestion.of(bench.store).withGenerationBy(Level.FIELD_NUMBER).ask(cross);

    assertThat(answer.generationInWords())
        .isEqualTo("F1 of Echeveria laui KB 12 × Echeveria laui KB 40");
  }

  @Test
  void generationsAreCountedOverCultivarsAndASeedlingHasNoCultivarName() {
    Code one = bench.plant("Echeveria agavoides 'Rotrand'");
    Code other = bench.plant(new Determination(AGAVOIDES, "Mondlicht", Map.of(), null, null));
    Code cross = bench.cross(one, other);
    Code packet = bench.packet("Echeveria agavoides 'Rotrand'");
    AncestryQuestion byCultivar = AncestryQuestion.of(bench.store).withGenerationBy(Level.CULTIVAR);

    assertThat(bench.generation(cross)).isEqualTo("pure");
    assertThat(byCultivar.ask(cross).generationInWords())
        .isEqualTo("F1 of Echeveria 'Rotrand' × Echeveria 'Mondlicht'");
    assertThat(byCultivar.ask(packet).generationInWords()).contains("has no cultivar name");
  }

  @Test
  void aStatedHybridHasSharesAndNoClassUnlessThatWasStated() {
    Code shares = bench.plant(hybrid(null, LAUI, "1/2", AGAVOIDES, "1/4"));
    Code f1 = bench.plant(hybrid("F1", LAUI, "1/2", AGAVOIDES, "1/2"));
    Code bc1 = bench.plant(hybrid("BC1", LAUI, "3/4", AGAVOIDES, "1/4"));

    assertThat(bench.shares(shares))
        .isEqualTo("1/2 " + LAUI + ", 1/4 " + AGAVOIDES + ", 1/4 unknown");
    assertThat(bench.generationInWords(bench.cross(shares, laui)))
        .contains(shares.text() + " is a hybrid whose generation was not stated");
    assertThat(bench.generation(f1)).isEqualTo("F1");
    assertThat(bench.generation(bench.selfed(f1))).isEqualTo("F2");
    assertThat(bench.generation(bench.cross(f1, laui))).isEqualTo("BC1");
    assertThat(bench.generationInWords(bc1)).startsWith("BC1 to " + LAUI);
    assertThat(bench.generation(bench.cross(bc1, laui))).isEqualTo("BC2");
    assertThat(bench.generation(bench.cross(bc1, agavoides))).isEqualTo("complex");
  }

  @Test
  void thirtyBackcrossesAreExact() {
    Code recurrent = laui;
    Code line = bench.seedling(bench.cross(laui, agavoides));
    for (int i = 0; i < 30; i++) {
      line = bench.cross(line, recurrent);
      line = bench.seedling(line);
    }

    AncestryQuestion.Ancestry answer = ask(line);

    assertThat(answer.generation()).isEqualTo("BC30");
    assertThat(answer.taxa().get(1).share()).isEqualTo(Fraction.of(1, 1L << 31));
    assertThat(answer.ancestors()).isEqualTo(32);
  }

  @Test
  void aCodeNobodyGaveOutIsRefusedWithTheRemedy() {
    assertThatThrownBy(() -> ask(Code.of(24, 99)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("24-099")
        .hasMessageContaining("is not in this register");
  }
}
