package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.ELEGANS;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.CrossOdds.Scenario;
import dev.filial.core.answer.OddsQuestion.Side;
import dev.filial.core.answer.Wanted.State;
import dev.filial.core.heredity.Checkerboard;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.trial.Proportion;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What a cross of the register throws. Inheritance here is invented. */
class OddsQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);

  /** Red edges dominant over green: agavoides has nothing but R, laui nothing but r. */
  private void redEdges() {
    bench.gene("edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");
    bench.profile(AGAVOIDES, "edge", "R");
    bench.profile(LAUI, "edge", "r");
  }

  private OddsQuestion question(String... traits) {
    return OddsQuestion.of(bench.store, List.of(traits));
  }

  private CrossOdds ask(Code seed, Code pollen) {
    return question("leaf edge").ask(plant(seed), plant(pollen));
  }

  private static Side plant(Code code) {
    return new Side(code, null, null);
  }

  private static Side genes(String genes) {
    return new Side(null, genes, null);
  }

  private static Scenario only(CrossOdds odds) {
    assertThat(odds.scenarios()).hasSize(1);
    return odds.scenarios().get(0);
  }

  private static String text(Scenario scenario) {
    StringBuilder text = new StringBuilder();
    scenario
        .classes()
        .forEach(
            one ->
                text.append(text.isEmpty() ? "" : ", ")
                    .append(one.chance())
                    .append(' ')
                    .append(String.join(" ", one.states())));
    return text.toString();
  }

  private static Hope hope(CrossOdds odds) {
    return Objects.requireNonNull(only(odds).hope());
  }

  @Test
  void theF1OfTwoFixedSpeciesIsKnownToCarryBothAlleles() {
    redEdges();
    Code cross = bench.cross(agavoides, laui);
    Code f1 = bench.seedling(cross);

    assertThat(text(only(question("leaf edge").ask(cross)))).isEqualTo("1 red");
    Scenario f2 = only(question("leaf edge").ask(bench.selfed(f1)));
    assertThat(f2.seedGenes()).isEqualTo("Rr");
    assertThat(text(f2)).isEqualTo("3/4 red, 1/4 green");
    assertThat(f2.ratio()).isEqualTo("3:1");
    assertThat(text(only(ask(f1, laui)))).isEqualTo("1/2 red, 1/2 green");
  }

  @Test
  void aPlantThatShowsTheRecessiveStateIsKnownByThat() {
    bench.gene("edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");
    bench.showed(laui, "leaf edge", "green");

    assertThat(text(only(ask(laui, laui)))).isEqualTo("1 green");
  }

  @Test
  void aPlantThatMayBeEitherIsRefusedWithWhatItMayBe() {
    redEdges();
    Code f2 = bench.seedling(bench.selfed(bench.seedling(bench.cross(agavoides, laui))));
    bench.showed(f2, "leaf edge", "red");

    assertThatThrownBy(() -> ask(f2, laui))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("what " + f2.text() + " carries (edge) is not known")
        .hasMessageContaining("RR or Rr");
    assertThat(text(only(question("leaf edge").ask(new Side(f2, "Rr", null), plant(laui)))))
        .isEqualTo("1/2 red, 1/2 green");
  }

  @Test
  void aStatedGenotypeHoldsForOffsetsToo() {
    redEdges();
    Code f2 = bench.seedling(bench.selfed(bench.seedling(bench.cross(agavoides, laui))));
    bench.genotype(f2, "RR", "edge");
    Code offset = bench.offset(f2, false);

    assertThat(text(only(ask(offset, laui)))).isEqualTo("1 red");
  }

  @Test
  void aPlantOfATaxonWithSeveralAllelesIsReckonedByTheirFrequencies() {
    redEdges();
    Code elegans = bench.plant(ELEGANS);
    bench.profile(ELEGANS, "edge", "R:1/10,r:9/10");

    CrossOdds odds = ask(laui, elegans);
    assertThat(text(only(odds))).isEqualTo("1/10 red, 9/10 green");
    assertThat(odds.notes()).anyMatch(note -> note.contains("as its profile has them"));

    Wanted red =
        new Wanted(List.of(new State("leaf edge", "red")), null, List.of(), 1, 0.95, List.of());
    assertThatThrownBy(() -> question("leaf edge").wanting(red).ask(plant(laui), plant(elegans)))
        .hasMessageContaining("how many to sow depends on which alleles the parents have");

    bench.showed(elegans, "leaf edge", "red");
    assertThatThrownBy(() -> ask(laui, elegans))
        .as("once it was seen to be red, the frequencies of the taxon no longer hold for it")
        .hasMessageContaining("RR or Rr");
  }

  @Test
  void selfingAPlantOfATaxonWithSeveralAllelesIsNotTwoDrawsFromTheTaxon() {
    redEdges();
    Code elegans = bench.plant(ELEGANS);
    Code offset = bench.offset(elegans, false);
    bench.profile(ELEGANS, "edge", "R:1/10,r:9/10");

    for (Code pollen : List.of(elegans, offset)) {
      assertThatThrownBy(() -> ask(elegans, pollen))
          .hasMessageContaining("what " + elegans.text() + " carries (edge) is not known");
    }
    assertThat(text(only(ask(elegans, bench.plant(ELEGANS)))))
        .isEqualTo("19/100 red, 81/100 green");
  }

  @Test
  void whatCannotBeByItsParentsIsRefusedWithTheEntryThatSaysSo() {
    redEdges();
    Code f1 = bench.seedling(bench.cross(agavoides, laui));
    bench.showed(f1, "leaf edge", "green");

    assertThatThrownBy(() -> ask(f1, laui))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("what is recorded of " + f1.text() + " cannot all be true")
        .hasMessageContaining("leaf edge green")
        .hasMessageContaining("Rr");
  }

  @Test
  void straysAreLeftOutAndAccidentalSelfsAreMixedIn() {
    redEdges();
    Code cross =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).shares("1/10", "1/10", "0").made();

    CrossOdds odds = question("leaf edge").ask(cross);
    assertThat(text(only(odds))).isEqualTo("8/9 red, 1/9 green");
    assertThat(odds.notes())
        .anyMatch(note -> note.startsWith("10 % of the seed had unknown pollen"))
        .anyMatch(note -> note.contains("11.1 % selfing"));
  }

  @Test
  void theClassesOfAMixtureStandInTheOrderOfTheStates() {
    redEdges();
    Code f1 = bench.seedling(bench.cross(agavoides, laui));
    Code cross = bench.pollination(laui, new Pollen.OnePlant(f1)).shares("1/2", "0", "0").made();

    assertThat(only(question("leaf edge").ask(cross)).ratio()).isEqualTo("1:3");
    assertThat(text(only(question("leaf edge").ask(cross)))).isEqualTo("1/4 red, 3/4 green");
  }

  @Test
  void seedWithoutFertilisationRepeatsTheSeedParent() {
    redEdges();
    Code cross =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).shares("0", "0", "1/4").made();

    assertThat(text(only(question("leaf edge").ask(cross)))).isEqualTo("3/4 red, 1/4 green");
  }

  @Test
  void ofADoubledHybridBothWaysOfPairingAreAnswered() {
    redEdges();
    Code f1 = bench.seedling(bench.cross(agavoides, laui));
    Code doubled = bench.offset(f1, true);

    List<Scenario> scenarios = ask(doubled, doubled).scenarios();
    assertThat(scenarios)
        .extracting(OddsQuestionTest::text)
        .containsExactly("35/36 red, 1/36 green", "1 red");
    assertThat(scenarios.get(0).assuming()).contains("tetrasomic");
    assertThat(scenarios.get(1).assuming()).contains("disomic").contains("RR|rr");
  }

  @Test
  void ofATaxonWhosePairingIsStatedOnlyThatIs() {
    bench.gene("edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");
    bench.taxon(ELEGANS, null, 4);
    bench.say(
        new ProfileStated(
            ELEGANS, Map.of(), ProfileStated.Pairing.TETRASOMIC, Fraction.of(1, 7), null));
    Code elegans = bench.plant(ELEGANS);
    bench.genotype(elegans, "RRrr", "edge");

    // Random chromatid segregation: Haldane 1930.
    assertThat(text(only(ask(elegans, elegans)))).isEqualTo("187/196 red, 9/196 green");
  }

  @Test
  void triploidsAndUnreducedGametesWaitUntilItIsSaidHow() {
    redEdges();
    Side triploid = new Side(null, "RRr", null);
    assertThatThrownBy(() -> question("leaf edge").ask(triploid, plant(laui)))
        .hasMessageContaining("gametes of one set or of two");
    assertThat(
            text(
                only(
                    question("leaf edge")
                        .ask(new Side(null, "RRr", new Meiosis.OfTriploid(1)), plant(laui)))))
        .isEqualTo("2/3 red, 1/3 green");
    Code withUnreduced =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).sets(2, null).made();
    assertThatThrownBy(() -> question("leaf edge").ask(withUnreduced))
        .hasMessageContaining("how they formed");
  }

  @Test
  void threeOfAQuarterThroughACountedGerminationNeedThirtyFiveSeeds() {
    redEdges();
    Wanted wanted =
        new Wanted(
            List.of(new State("leaf edge", "GREEN")),
            null,
            List.of(),
            3,
            0.95,
            List.of(SeedRate.counted("germination", new Proportion(18, 25), "a sowing")));

    Hope hope = hope(question("leaf edge").wanting(wanted).ask(genes("Rr"), genes("Rr")));
    assertThat(hope.chance()).isEqualTo(Fraction.of(1, 4));
    // The plug-in rate would give 33; check value by the beta-binomial, flat prior.
    assertThat(hope.seeds()).isEqualTo(35);
    assertThat(hope.seedlings()).isEqualTo(23); // Sedcole 1977, table
    assertThat(hope.what()).isEqualTo("green");
  }

  @Test
  void aTrueBreedingRedIsOneInFourOfTheF2AndAThirdOfTheReds() {
    redEdges();
    Wanted wanted =
        new Wanted(
            List.of(new State("leaf edge", "red")), null, List.of("leaf edge"), 1, 0.95, List.of());

    assertThat(hope(question("leaf edge").wanting(wanted).ask(genes("Rr"), genes("Rr"))).chance())
        .isEqualTo(Fraction.of(1, 4));
  }

  @Test
  void keptRedsSelfedOnSegregateLessAndLess() {
    redEdges();
    Wanted red =
        new Wanted(List.of(new State("leaf edge", "red")), null, List.of(), 1, 0.95, List.of());

    // Of the kept reds 2/3 are Rr and throw a quarter green: 1 − 2/3 · 1/4.
    assertThat(
            text(
                only(
                    question("leaf edge")
                        .wanting(red)
                        .afterSelfings(1, true)
                        .ask(genes("Rr"), genes("Rr")))))
        .isEqualTo("5/6 red, 1/6 green");
    assertThat(
            text(
                only(
                    question("leaf edge")
                        .wanting(red)
                        .afterSelfings(1, false)
                        .ask(genes("Rr"), genes("Rr")))))
        .isEqualTo("5/8 red, 3/8 green");
  }

  @Test
  void halfTheRefusedPollenShiftsWhatIsLinkedToTheSLocus() {
    bench.refusingGene("S", "S1", "S2", "S3");
    bench.geneBeside("S", "1/10", "edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");

    CrossOdds odds = question("leaf edge").ask(genes("S1.r/S2.r"), genes("S1.r/S3.R"));
    // Only S3 grains work, and nine in ten of these have R.
    assertThat(text(only(odds))).isEqualTo("9/10 red, 1/10 green");
  }

  @Test
  void anSLocusOfUnknownAllelesIsLeftOutAndThatIsSaid() {
    bench.refusingGene("S", "S1", "S2", "S3");
    bench.geneBeside("S", "1/10", "edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");

    CrossOdds odds = question("leaf edge").ask(genes("Rr"), genes("rr"));
    assertThat(text(only(odds))).isEqualTo("1/2 red, 1/2 green");
    assertThat(odds.notes()).anyMatch(note -> note.contains("S locus S"));
  }

  @Test
  void seedlingsThatDieOfALinkedGeneShiftTheOddsThoughNobodyAskedForIt() {
    redEdges();
    bench.geneBeside("edge", "0", "vigour", "V", "v");
    bench.trait("growth", "sound,stunted", "vigour", "vv=dies", "V_=sound");

    CrossOdds odds = question("leaf edge").ask(genes("RV/rv"), genes("RV/rv"));
    assertThat(text(only(odds))).isEqualTo("1 red");
    assertThat(only(odds).lost()).isEqualTo(Fraction.of(1, 4));
  }

  /**
   * By hand: rr goes with vv, which dies, so that all that live are red. Of three raised all die in
   * 1/64, of two in 1/16.
   */
  @Test
  void seedlingsThatDieOfATraitAskedBesideShiftTheWantedToo() {
    redEdges();
    bench.geneBeside("edge", "0", "vigour", "V", "v");
    bench.trait("growth", "sound,stunted", "vigour", "vv=dies", "V_=sound");
    Wanted red =
        new Wanted(List.of(new State("leaf edge", "red")), null, List.of(), 1, 0.95, List.of());

    Hope hope =
        hope(question("leaf edge", "growth").wanting(red).ask(genes("RV/rv"), genes("RV/rv")));
    assertThat(hope.chance()).isEqualTo(Fraction.ONE);
    assertThat(hope.seedlings()).isEqualTo(3);
  }

  @Test
  void theCheckerboardHasTheGametesOfBothAndWhatComesOfThem() {
    redEdges();
    Checkerboard board =
        Objects.requireNonNull(
            only(question("leaf edge").withCheckerboard().ask(genes("Rr"), genes("rr")))
                .checkerboard());
    assertThat(board.at("r", "r").orElseThrow().shows()).containsExactly("green");
    assertThat(board.pollen()).hasSize(1);
  }

  @Test
  void whatIsNotModelledOrNotDeclaredIsRefused() {
    bench.gene("edge", "R", "r");
    assertThatThrownBy(() -> question("leaf edge").ask(genes("Rr"), genes("Rr")))
        .hasMessageContaining("no trait is called \"leaf edge\"");
    bench.say(new TraitDeclared("leaf edge", List.of("red", "green"), null, null, null, null));
    assertThatThrownBy(() -> question("leaf edge").ask(genes("Rr"), genes("Rr")))
        .hasMessageContaining("nobody said how leaf edge is inherited");
    assertThatThrownBy(() -> question().ask(genes("Rr"), genes("Rr")))
        .hasMessageContaining("of which trait");
  }

  @Test
  void openPollinationByNobodyKnowsWhomHasNoOdds() {
    redEdges();
    Code open = bench.pollination(laui, new Pollen.Open(List.of(), Fraction.ONE)).made();
    assertThatThrownBy(() -> question("leaf edge").ask(open))
        .hasMessageContaining("nobody knows whose pollen");
  }

  @Test
  void anAlleleThatComesThroughPollenAloneIsNotRuledOutByTheEggs() {
    bench.say(
        LocusDeclared.of("edge", List.of("R", "r"))
            .weighing(Map.of("R", Fraction.ONE, "r", Fraction.ZERO), Map.of()));
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");
    bench.genotype(agavoides, "RR", "edge");
    bench.genotype(laui, "Rr", "edge");
    Code seedling = bench.seedling(bench.cross(agavoides, laui));

    assertThatThrownBy(() -> ask(seedling, seedling)).hasMessageContaining("RR or Rr");
  }

  @Test
  void whatAnOffsetShowsHoldsForItsSourceUnlessItIsASport() {
    redEdges();
    Code elegans = bench.plant(ELEGANS);
    bench.profile(ELEGANS, "edge", "R:1/2,r:1/2");
    Code offset = bench.offset(elegans, false);
    bench.showed(offset, "leaf edge", "green");

    assertThat(text(only(ask(elegans, laui)))).isEqualTo("1 green");
    assertThat(text(only(ask(laui, elegans)))).isEqualTo("1 green");
    assertThat(text(only(ask(elegans, offset)))).isEqualTo("1 green");
  }

  @Test
  void aFamilyThatWasCountedTellsMoreThanTheTaxon() {
    redEdges();
    Code elegans = bench.plant(ELEGANS);
    bench.profile(ELEGANS, "edge", "R:1/2,r:1/2");
    Code family = bench.cross(elegans, laui);
    Code sowing = bench.sowing(bench.harvest(family), "2025-10-01", 1);
    bench.say(
        new Tallied(
            sowing, "leaf edge", Map.of("red", 20L), PartialDate.parse("2026-01-01"), null));

    assertThatThrownBy(() -> ask(elegans, laui))
        .hasMessageContaining("carries (edge) is not known");
  }

  @Test
  void theLaterLookHoldsNotTheEarlier() {
    redEdges();
    bench.gene("other", "Q", "q");
    Code elegans = bench.plant(ELEGANS);
    bench.say(
        new Observed(elegans, "leaf edge", "red", PartialDate.parse("2024-06-01"), null, null));
    bench.say(
        new Observed(elegans, "leaf edge", "green", PartialDate.parse("2025-06-01"), null, null));

    assertThat(text(only(ask(elegans, laui)))).isEqualTo("1 green");
  }

  @Test
  void twoSeedlingsOfOnePacketAreSibsAndNoTwoDraws() {
    redEdges();
    bench.profile(ELEGANS, "edge", "R:1/2,r:1/2");
    Code packet = bench.packet(ELEGANS);
    Code one = bench.seedling(packet);
    Code other = bench.seedling(packet);

    assertThatThrownBy(() -> ask(one, other)).hasMessageContaining("carries (edge) is not known");
  }

  @Test
  void seedlingsThatDieAskForMoreSeed() {
    bench.gene("leaf", "Y", "y");
    bench.trait("colour", "yellow,green", "leaf", "YY=dies", "Yy=yellow", "yy=green");
    Wanted ten =
        new Wanted(List.of(new State("colour", "yellow")), null, List.of(), 10, 0.95, List.of());

    Hope hope = hope(question("colour").wanting(ten).ask(genes("Yy"), genes("Yy")));
    assertThat(hope.chance()).isEqualTo(Fraction.of(2, 3));
    // Of all seedlings half are yellow: Sedcole 1977, ten of a half at 95 %.
    assertThat(hope.seedlings()).isEqualTo(28);
  }

  @Test
  void unknownPollenIsNoneOfTheWanted() {
    redEdges();
    Code cross = bench.pollination(laui, new Pollen.OnePlant(laui)).shares("0", "1/2", "0").made();
    Wanted green =
        new Wanted(List.of(new State("leaf edge", "green")), null, List.of(), 10, 0.95, List.of());

    assertThat(hope(question("leaf edge").wanting(green).ask(cross)).seedlings()).isEqualTo(28);
  }

  @Test
  void refusedPollenDropsOutOfAMix() {
    redEdges();
    bench.refusingGene("S", "S1", "S2", "S3", "S4");
    bench.genotype(laui, "S1/S2", "S");
    bench.genotype(agavoides, "S1/S2", "S");
    Code otherLaui = bench.plant(LAUI);
    bench.genotype(otherLaui, "S3/S4", "S");
    Code cross =
        bench
            .pollination(laui, new Pollen.Mix(InventedBench.weighted(agavoides, 1, otherLaui, 1)))
            .made();

    assertThat(text(only(question("leaf edge").ask(cross)))).isEqualTo("1 green");
  }

  @Test
  void aSubspeciesHasTheAllelesOfItsSpeciesWhereItsOwnProfileIsSilent() {
    redEdges();
    bench.gene("wax", "W", "w");
    bench.trait("wax", "blue,bare", "wax", "W_=blue", "ww=bare");
    bench.taxon("Echeveria laui subsp. alba", LAUI, null);
    bench.profile("Echeveria laui subsp. alba", "wax", "w");
    Code alba = bench.plant("Echeveria laui subsp. alba");

    assertThat(text(only(question("leaf edge", "wax").ask(plant(alba), plant(alba)))))
        .isEqualTo("1 green bare");
  }

  @Test
  void aPlantStatedToBeAnF1HasOneAlleleOfEachTaxon() {
    redEdges();
    Code bought = bench.plant(InventedBench.hybrid("F1", AGAVOIDES, "1/2", LAUI, "1/2"));
    Code unstated = bench.plant(InventedBench.hybrid(null, AGAVOIDES, "1/2", LAUI, "1/2"));

    assertThat(text(only(ask(bought, laui)))).isEqualTo("1/2 red, 1/2 green");
    assertThatThrownBy(() -> ask(unstated, laui)).hasMessageContaining("RR or Rr or rr");
  }

  @Test
  void aStatedShareOfSelfsIsOneOfSeedsAndKeepsItThoughThePollenIsRefused() {
    redEdges();
    bench.refusingGene("S", "S1", "S2", "S3", "S4");
    bench.genotype(laui, "S1/S2", "S");
    bench.genotype(agavoides, "S3/S4", "S");
    Code cross =
        bench.pollination(laui, new Pollen.OnePlant(agavoides)).shares("1/4", "0", "0").made();

    assertThat(text(only(question("leaf edge").ask(cross)))).isEqualTo("3/4 red, 1/4 green");
  }

  @Test
  void seedOfOneFruitMayHaveOnePollinator() {
    redEdges();
    Code two =
        bench
            .pollination(
                laui, new Pollen.Open(InventedBench.weighted(laui, 1, agavoides, 1), Fraction.ZERO))
            .made();
    Code one =
        bench
            .pollination(laui, new Pollen.Open(InventedBench.weighted(agavoides, 1), Fraction.ZERO))
            .made();

    assertThat(question("leaf edge").ask(two).notes())
        .anyMatch(note -> note.contains("no number to sow is sure"));
    assertThat(question("leaf edge").ask(one).notes())
        .noneMatch(note -> note.contains("no number to sow is sure"));
  }
}
