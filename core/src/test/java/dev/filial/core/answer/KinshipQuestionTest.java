package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.ancestry.FounderContributions.Contribution;
import dev.filial.core.answer.Related.IfAkin;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Determination;
import dev.filial.core.register.PopulationDeclared;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterRefusal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class KinshipQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);
  private final Code agavoides = bench.plant(AGAVOIDES);
  private final Code f1 = bench.cross(laui, agavoides);
  private final Code sister = bench.seedling(f1);
  private final Code other = bench.seedling(f1);

  private Related related(Code one, Code two) {
    return KinshipQuestion.of(bench.store).between(one, two);
  }

  @Test
  void sistersAreAQuarterAkinByBothParents() {
    Related sisters = related(sister, other);

    assertThat(sisters.coancestry()).isEqualTo(0.25);
    assertThat(sisters.kin()).isEqualTo("as close as full sibs, or parent and offspring");
    assertThat(sisters.through()).containsExactlyInAnyOrder(laui.text(), agavoides.text());
    assertThat(sisters.inbreedingOfSeedlings()).isEqualTo(0.25);
    assertThat(sisters.isClose()).isTrue();
    assertThat(sisters.ifAkin()).isEmpty();
    assertThat(sisters.notes()).isEmpty();
  }

  @Test
  void aParentIsWhatItAndItsSeedlingDescendFrom() {
    assertThat(related(laui, sister).through()).containsExactly(laui.text());
    Code bc1 = bench.seedling(bench.cross(sister, laui));
    assertThat(related(bc1, laui).coancestry()).isEqualTo(0.375);
    assertThat(related(bc1, laui).kin()).isEqualTo("closer kin than full sibs");
    assertThat(related(bc1, laui).inbreedingOfOne()).isEqualTo(0.25);
  }

  @Test
  void strangersAreNotRelatedAndCloseKinAreNamed() {
    Related strangers = related(laui, agavoides);
    assertThat(strangers.kin()).isEqualTo("not related, as far as is recorded");
    assertThat(strangers.through()).isEmpty();
    assertThat(strangers.isClose()).isFalse();
    Code third = bench.plant("Echeveria elegans");
    Code half = bench.seedling(bench.cross(third, laui));
    assertThat(related(half, sister).kin()).isEqualTo("as close as half sibs");
    Code cousin = bench.seedling(bench.cross(sister, bench.plant("Echeveria elegans")));
    Code cousinOfIt = bench.seedling(bench.cross(other, bench.plant("Echeveria elegans")));
    assertThat(related(cousin, cousinOfIt).kin()).isEqualTo("as close as first cousins");
    Code mix = bench.seedling(bench.cross(bench.seedling(bench.cross(cousin, half)), third));
    assertThat(related(mix, agavoides).kin()).startsWith("as close as a plant and its first");
  }

  @Test
  void anOffsetIsTheSamePlantAndASelfingIsNoWarning() {
    Code offset = bench.offset(laui, false);

    assertThat(related(offset, laui).samePlant()).isTrue();
    assertThat(related(offset, laui).kin()).isEqualTo("one and the same plant");
    assertThat(related(offset, laui).inbreedingOfSeedlings()).isEqualTo(0.5);
    assertThat(CloseCross.of(bench.store, offset, laui)).isEmpty();
    assertThat(CloseCross.of(bench.store, laui, agavoides)).isEmpty();
    assertThat(CloseCross.of(bench.store, sister, other).map(CloseCross::text))
        .contains(
            "a close cross: "
                + sister.text()
                + " and "
                + other.text()
                + " are as close as full sibs, or parent and offspring; their seedlings would be"
                + " inbred by 25 %");
  }

  @Test
  void aRecordedCrossIsCloseByItsOwnPedigree() {
    Code close = bench.cross(sister, laui);
    Code selfed = bench.selfed(sister);
    for (Code cross : List.of(close, selfed, f1)) {
      RegisterPedigree behind = RegisterPedigree.of(bench.store, List.of(cross), false);
      assertThat(CloseCross.of(bench.store, behind, cross).isPresent())
          .isEqualTo(cross.equals(close));
    }
  }

  @Test
  void aCrossNamedTwiceIsTwoSeedlingsOfIt() {
    Related two = related(f1, f1);

    assertThat(two.one()).isEqualTo(f1.text());
    assertThat(two.other()).isEqualTo("another of " + f1.text());
    assertThat(two.samePlant()).isFalse();
    assertThat(two.coancestry()).isEqualTo(0.25);
    assertThat(KinshipQuestion.of(bench.store).among(List.of(f1, f1, f1)).plants())
        .containsExactly(f1.text(), "another of " + f1.text(), "another of " + f1.text() + " (2)");
  }

  @Test
  void seedlingsOfAnAcquiredPacketAreFullSibs() {
    Code packet = bench.packet(LAUI);
    Code one = bench.seedling(packet);
    Code two = bench.seedling(packet);

    assertThat(related(one, two).coancestry()).isEqualTo(0.25);
    assertThat(related(one, two).notes())
        .containsExactly(
            "Seedlings of the acquired packet "
                + packet.text()
                + " are taken as full sibs; nobody recorded their parents.");
    assertThat(related(one, laui).coancestry()).isZero();
    assertThat(KinshipQuestion.of(bench.store).of(one).inbreeding()).isZero();
  }

  @Test
  void plantsOfOneFieldNumberAreShownAsUnrelatedHalfSibsAndFullSibs() {
    Code one = bench.plant(Determination.of(LAUI), "FO 12");
    Code two = bench.plant(Determination.of(LAUI), "FO 12");
    Code elsewhere = bench.plant(Determination.of(AGAVOIDES), "FO 12");

    Related pair = related(one, two);
    assertThat(pair.coancestry()).isZero();
    assertThat(pair.ifAkin())
        .containsExactly(
            new IfAkin(FieldNumberKin.HALF_SIBS, 0.125, 0.125),
            new IfAkin(FieldNumberKin.FULL_SIBS, 0.25, 0.25));
    assertThat(related(one, elsewhere).ifAkin()).as("another species is another number").isEmpty();
    assertThat(related(one, sister).ifAkin()).isEmpty();
  }

  @Test
  void numbersOfOnePopulationCountAsOne() {
    Code one = bench.plant(Determination.of(LAUI), "FO 12");
    Code two = bench.plant(Determination.of(LAUI), "FO 14");
    assertThat(related(one, two).ifAkin()).isEmpty();

    bench.say(new PopulationDeclared(List.of("FO 12", "FO 14"), null));

    assertThat(related(one, two).ifAkin().get(1).coancestry()).isEqualTo(0.25);
    assertThat(KinshipQuestion.of(bench.store).among(List.of(one, two, sister)).notes().get(0))
        .startsWith("Plants acquired apart as Echeveria laui FO 12 are taken as unrelated");
  }

  @Test
  void seedlingsOfATriploidAreNotReckoned() {
    bench.taxon("Echeveria lilacina", null, 4);
    Code four = bench.plant("Echeveria lilacina");
    Code triploid = bench.seedling(bench.cross(four, laui));

    Related pair = related(triploid, laui);
    assertThat(pair.coancestry()).isCloseTo(1 / 6.0, within(1e-12));
    assertThat(pair.kin()).as("of unlike ploidy no degree is named").isEqualTo("related");
    assertThat(related(triploid, triploid).samePlant()).isTrue();
    assertThat(pair.inbreedingOfSeedlings()).isNull();
    assertThat(pair.notes()).anyMatch(note -> note.contains("has 3 chromosome sets"));
    assertThat(CloseCross.of(bench.store, triploid, laui)).isEmpty();
  }

  @Test
  void doubleReductionIsThatOfTheTaxon() {
    bench.taxon("Echeveria lilacina", null, 4);
    Code four = bench.plant("Echeveria lilacina");
    Code selfed = bench.seedling(bench.selfed(four));
    assertThat(KinshipQuestion.of(bench.store).of(selfed).inbreeding())
        .isCloseTo(1 / 6.0, within(1e-12));
    bench.say(
        new ProfileStated(
            "Echeveria lilacina",
            Map.of(),
            ProfileStated.Pairing.TETRASOMIC,
            Fraction.of(1, 7),
            null));
    Inbred inbred = KinshipQuestion.of(bench.store).of(selfed);
    assertThat(inbred.inbreeding()).isCloseTo(1 - (5 / 6.0 - 1 / 21.0), within(1e-12));
    assertThat(inbred.notes())
        .anyMatch(note -> note.contains("double reduction 1/7, as stated of"));
  }

  /**
   * By hand, double reduction being 1/7: a selfed seedling is inbred by F = 1 − (5/6 − 1/21) =
   * 3/14, so that two sets of one of its gametes are alike with 1/7 + 6/7 × 3/14 = 16/49, of a
   * stranger's with 7/49. Two sets of a seedling of both are of one gamete in 1/3: ⅓ × 23/98 =
   * 23/294 (7.8 %), none of it by kinship. Two sibs by selfing have a coancestry of ¼, two sets of
   * their seedling are of both in ⅔: 1/6 by kinship, and ⅓ × 16/49 besides, 81/294 (27.6 %) in all.
   */
  @Test
  void inbreedingByDoubleReductionMakesNoCloseCross() {
    bench.taxon("Echeveria lilacina", null, 4);
    bench.say(
        new ProfileStated(
            "Echeveria lilacina",
            Map.of(),
            ProfileStated.Pairing.TETRASOMIC,
            Fraction.of(1, 7),
            null));
    Code selfing = bench.selfed(bench.plant("Echeveria lilacina"));
    Code one = bench.seedling(selfing);
    Code two = bench.seedling(selfing);
    Code stranger = bench.plant("Echeveria lilacina");
    Related apart = related(one, stranger);
    assertThat(apart.inbreedingOfSeedlings()).isCloseTo(23 / 294.0, within(1e-12));
    assertThat(apart.inbreedingByKinship()).isZero();
    assertThat(apart.isClose()).isFalse();
    assertThat(CloseCross.of(bench.store, one, stranger)).isEmpty();
    assertThat(related(one, two).inbreedingByKinship()).isCloseTo(1 / 6.0, within(1e-12));
    assertThat(related(one, two).isClose()).isTrue();
    assertThat(CloseCross.of(bench.store, one, two).map(CloseCross::text).orElseThrow())
        .endsWith(
            "closer kin than full sibs; their seedlings would be inbred by 27.6 %, 16.7 % by"
                + " that kinship");
  }

  @Test
  void whatIsStatedOfAGenusHoldsAndWhatDiffersIsSaid() {
    bench.taxon("Echeveria lilacina", null, 4);
    Code selfed = bench.seedling(bench.selfed(bench.plant("Echeveria lilacina")));
    bench.say(
        new ProfileStated(
            "Echeveria", Map.of(), ProfileStated.Pairing.TETRASOMIC, Fraction.of(1, 7), null));
    assertThat(KinshipQuestion.of(bench.store).of(selfed).inbreeding())
        .isCloseTo(1 - (5 / 6.0 - 1 / 21.0), within(1e-12));
    bench.taxon("Echeveria setosa", null, 4);
    Code other = bench.plant("Echeveria setosa");
    bench.say(
        new ProfileStated(
            "Echeveria setosa",
            Map.of(),
            ProfileStated.Pairing.TETRASOMIC,
            Fraction.of(1, 10),
            null));
    assertThat(related(selfed, other).notes())
        .anyMatch(note -> note.contains("stated differently of others"));
    bench.say(
        new ProfileStated(
            "Echeveria lilacina", Map.of(), ProfileStated.Pairing.DISOMIC, null, null));
    assertThat(KinshipQuestion.of(bench.store).of(selfed).notes())
        .anyMatch(note -> note.contains("pair only within subgenomes"));
  }

  @Test
  void tetraploidSibsAreCalledSibs() {
    bench.taxon("Echeveria lilacina", null, 4);
    Code family = bench.cross(bench.plant("Echeveria lilacina"), bench.plant("Echeveria lilacina"));

    assertThat(related(family, family).coancestry()).isCloseTo(0.125, within(1e-12));
    assertThat(related(family, family).kin())
        .isEqualTo("as close as full sibs, or parent and offspring");
  }

  @Test
  void plantsOfUnlikePloidyUnderOneFieldNumberHaveNoParentsInCommon() {
    Code one = bench.plant(Determination.of(LAUI), "FO 12");
    Code two = bench.plant(Determination.of(LAUI), "FO 12");
    bench.taxon("Echeveria lilacina", null, 4);
    Code four = bench.plant(withPloidy(LAUI, 4), "FO 12");
    Code triploid = bench.seedling(bench.cross(two, four));

    assertThat(related(one, two).ifAkin().get(1).coancestry()).isEqualTo(0.25);
    assertThat(related(one, four).ifAkin()).isEmpty();
    assertThat(related(four, one).ifAkin()).isEmpty();
    assertThat(related(triploid, one).ifAkin()).hasSize(2);
  }

  private static Determination withPloidy(String taxon, int ploidy) {
    return new Determination(taxon, null, Map.of(), null, ploidy);
  }

  @Test
  void foundersStandBehindAPlantByTheirShares() {
    Code bc1 = bench.seedling(bench.cross(sister, laui));
    Inbred inbred = KinshipQuestion.of(bench.store).of(bc1);

    assertThat(inbred.inbreeding()).isEqualTo(0.25);
    assertThat(inbred.founders())
        .containsExactly(
            new Contribution(laui.text(), 0.75), new Contribution(agavoides.text(), 0.25));
    assertThat(inbred.effectiveFounders()).isCloseTo(1.6, within(1e-12));
  }

  /** 1 / Σ p² (Lacy 1989), by hand: p is 5/8 and 3/8. */
  @Test
  void offsetsAreNotCountedAgainAmongWhatTheFoundersGave() {
    Code bc1 = bench.seedling(bench.cross(sister, laui));
    Code offset = bench.offset(bc1, false);
    Founded founded = FoundersQuestion.of(bench.store).ask(List.of(sister, bc1, offset));

    assertThat(founded.contributions().genotypes()).isEqualTo(2);
    assertThat(founded.contributions().founders().get(0).share()).isEqualTo(0.625);
    assertThat(founded.contributions().effectiveNumber()).isCloseTo(64 / 34.0, within(1e-12));
    assertThat(founded.meanCoancestry()).isCloseTo((0.5 + 0.625 + 2 * 0.375) / 4, within(1e-12));
    assertThat(founded.contributions().unknownParents()).isZero();
    assertThatThrownBy(() -> FoundersQuestion.of(bench.store).ask(List.of()))
        .isInstanceOf(RegisterRefusal.class);
  }

  @Test
  void aCodeNobodyGaveOutIsRefused() {
    assertThatThrownBy(
            () -> KinshipQuestion.of(bench.store).of(NextCode.in(bench.store).ofYear(2026)))
        .isInstanceOf(RegisterRefusal.class);
  }
}
