package dev.filial.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Ramet;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Seedling;
import dev.filial.core.pedigree.StatedGeneration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What textbooks say of carriers, test crosses and loops, and how evidence is to be weighed. */
class PedigreeOddsTest {

  private static final Offset<Double> ROUNDING = within(1e-12);
  private static final Locus A = Locus.of("tips", "T", "t");
  private static final Genome GENOME = Genome.unlinked(A);
  private static final TraitModel TIPS = TraitModel.dominant("tips", A, List.of("red", "plain"));

  private static PedigreeOdds odds(PlantRecord... plants) {
    return PedigreeOdds.of(Pedigree.of(List.of(plants)), GENOME, List.of(TIPS));
  }

  private static Evidence carries(String plant, String genes) {
    return Evidence.Carried.of(plant, GENOME.genotype(genes), plant);
  }

  private static Evidence red(String plant) {
    return Evidence.Shown.of(plant, "tips", "red", plant);
  }

  private static Evidence plain(String plant) {
    return Evidence.Shown.of(plant, "tips", "plain", plant);
  }

  private static PlantRecord pure(String code) {
    return PlantRecord.pure(code, "Echeveria laui");
  }

  private static FounderPriors even(String taxon) {
    return FounderPriors.none()
        .withFrequencies(taxon, "tips", Map.of("T", Fraction.HALF, "t", Fraction.HALF));
  }

  private static PlantRecord eitherOf(Route route, String code, String one, String other) {
    return new PlantRecord(
        code,
        new Seedling(
            List.of(
                new Case.Copy(Fraction.HALF, route, one),
                new Case.Copy(Fraction.HALF, route, other))));
  }

  @Test
  void unseenSeedlingsOfTwoCarriersAreMendels() {
    PedigreeOdds odds =
        odds(pure("a"), pure("b"), PlantRecord.cross("f2", "a", "b"))
            .withEvidence(List.of(carries("a", "Tt"), carries("b", "Tt")));
    GenotypeOdds seedling = odds.genotype("f2");
    assertThat(seedling.of("TT")).isEqualTo(0.25, ROUNDING);
    assertThat(seedling.of("Tt")).isEqualTo(0.5, ROUNDING);
    assertThat(seedling.of("tt")).isEqualTo(0.25, ROUNDING);
  }

  /** Two to one: Mendel 1866 of F2 dominants; any textbook. */
  @Test
  void aDominantSeedlingOfTwoCarriersIsACarrierWithOddsTwoToOne() {
    PedigreeOdds odds =
        odds(pure("a"), pure("b"), PlantRecord.cross("s", "a", "b"))
            .withEvidence(List.of(carries("a", "Tt"), carries("b", "Tt"), red("s")));
    assertThat(odds.genotype("s").of("Tt")).isEqualTo(2.0 / 3, ROUNDING);
    assertThat(odds.genotype("s").carries(A, "t")).isEqualTo(2.0 / 3, ROUNDING);
  }

  /** A test cross of n dominants leaves (2/3)(1/2)^n against 1/3: by Bayes' rule. */
  @Test
  void fiveRedTestCrossSeedlingsLeaveACarrierOneInSeventeen() {
    List<PlantRecord> plants =
        new ArrayList<>(
            List.of(pure("a"), pure("b"), pure("tester"), PlantRecord.cross("s", "a", "b")));
    List<Evidence> seen =
        new ArrayList<>(
            List.of(carries("a", "Tt"), carries("b", "Tt"), red("s"), carries("tester", "tt")));
    for (int i = 0; i < 5; i++) {
      plants.add(PlantRecord.cross("t" + i, "s", "tester"));
      seen.add(red("t" + i));
    }
    double carrier = 2.0 / 3 / 32;
    PedigreeOdds odds = odds(plants.toArray(new PlantRecord[0])).withEvidence(seen);
    assertThat(odds.genotype("s").of("Tt")).isEqualTo(carrier / (carrier + 1.0 / 3), ROUNDING);
    // The same five, counted and not numbered.
    PedigreeOdds counted =
        odds(
                pure("a"),
                pure("b"),
                pure("tester"),
                PlantRecord.cross("s", "a", "b"),
                PlantRecord.cross("t", "s", "tester"))
            .withEvidence(
                List.of(
                    seen.get(0),
                    seen.get(1),
                    seen.get(2),
                    seen.get(3),
                    new Evidence.Counted("t", "tips", Map.of("red", 5L, "plain", 0L), "tally")));
    assertThat(counted.genotype("s").of("Tt")).isEqualTo(carrier / (carrier + 1.0 / 3), ROUNDING);
  }

  private static PedigreeOdds sixRed(boolean picked) {
    List<PlantRecord> plants =
        new ArrayList<>(
            List.of(
                pure("AA"),
                pure("het"),
                PlantRecord.cross("doubtful", "AA", "het"),
                pure("other")));
    List<Evidence> seen =
        new ArrayList<>(List.of(carries("AA", "TT"), carries("het", "Tt"), carries("other", "Tt")));
    for (int i = 0; i < 6; i++) {
      plants.add(PlantRecord.cross("s" + i, "other", "doubtful"));
      seen.add(new Evidence.Shown("s" + i, "tips", "red", picked, "s" + i));
    }
    return odds(plants.toArray(new PlantRecord[0])).withEvidence(seen);
  }

  @Test
  void sixPickedDominantsSayNothingOfTheirParents() {
    assertThat(sixRed(true).genotype("doubtful").of("TT")).isEqualTo(0.5, ROUNDING);
    assertThat(sixRed(false).genotype("doubtful").of("TT"))
        .isEqualTo(1 / (1 + Math.pow(0.75, 6)), ROUNDING);
  }

  @Test
  void aPickedDominantStillSaysWhatItIsItself() {
    // Of Tt × (TT or Tt, even): TT with ½·½ + ½·¼, Tt with ½·½ + ½·½, divided by the chance of red
    // within each kind of pollen parent, so that that stays even.
    double homozygous = 0.5 * (0.5 / 1) + 0.5 * (0.25 / 0.75);
    assertThat(sixRed(true).genotype("s0").of("TT")).isEqualTo(homozygous, ROUNDING);
  }

  @Test
  void twoOffsetsThatDoNotShowAreOneDrawing() {
    TraitModel eighty = TIPS.withPenetrance("red", Fraction.of(4, 5), "plain");
    PedigreeOdds odds =
        PedigreeOdds.of(
                Pedigree.of(
                    List.of(
                        pure("a"),
                        pure("b"),
                        PlantRecord.cross("s", "a", "b"),
                        new PlantRecord("s offset", new Ramet("s", false)))),
                GENOME,
                List.of(eighty))
            .withEvidence(
                List.of(carries("a", "Tt"), carries("b", "tt"), plain("s"), plain("s offset")));
    // Tt and tt are even; Tt stays plain once in five, and both ramets are that one plant.
    assertThat(odds.genotype("s").of("Tt")).isEqualTo(0.2 / 1.2, ROUNDING);
    assertThat(odds.genotype("s offset").of("Tt")).isEqualTo(0.2 / 1.2, ROUNDING);
  }

  @Test
  void misreadingIsDrawnForEachSighting() {
    PedigreeOdds odds =
        odds(
                pure("a"),
                pure("b"),
                PlantRecord.cross("s", "a", "b"),
                new PlantRecord("s offset", new Ramet("s", false)))
            .withMisreading(0.1)
            .withEvidence(
                List.of(carries("a", "Tt"), carries("b", "tt"), plain("s"), plain("s offset")));
    assertThat(odds.genotype("s").of("Tt")).isEqualTo(0.01 / (0.01 + 0.81), ROUNDING);
  }

  /**
   * First cousins: a plant carries t through a loop with a chance that no method for trees alone
   * finds. Grandparent known carrier Tt, all others TT: children Tt with ½, grandchildren ¼ each,
   * and the cousins' seedling is tt with the chance that both handed it on, 1/64 of identity.
   */
  @Test
  void theSeedlingOfCousinsIsPlainThroughTheLoop() {
    PedigreeOdds odds =
        odds(
                pure("carrier"),
                pure("mate"),
                PlantRecord.cross("child 1", "carrier", "mate"),
                PlantRecord.cross("child 2", "carrier", "mate"),
                pure("mate 1"),
                pure("mate 2"),
                PlantRecord.cross("cousin 1", "child 1", "mate 1"),
                PlantRecord.cross("cousin 2", "child 2", "mate 2"),
                PlantRecord.cross("s", "cousin 1", "cousin 2"))
            .withEvidence(
                List.of(
                    carries("carrier", "Tt"),
                    carries("mate", "TT"),
                    carries("mate 1", "TT"),
                    carries("mate 2", "TT")));
    assertThat(odds.genotype("s").of("tt")).isEqualTo(1.0 / 4 * 1 / 4 * 1 / 4, ROUNDING);
    assertThat(odds.genotype("cousin 1").of("Tt")).isEqualTo(0.25, ROUNDING);
  }

  @Test
  void tenAlikeMakeTheEleventhLikelyAlike() {
    List<PlantRecord> plants = new ArrayList<>();
    List<Evidence> seen = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      plants.add(pure("p" + i));
      seen.add(carries("p" + i, "tt"));
    }
    plants.add(pure("eleventh"));
    PedigreeOdds odds = odds(plants.toArray(new PlantRecord[0])).withEvidence(seen);
    // Beta-binomial: after 20 t and no T, two more t with (20.5/21)(21.5/22).
    assertThat(odds.genotype("eleventh").of("tt"))
        .isEqualTo(20.5 / 21 * (21.5 / 22), within(1e-10));
    assertThat(odds.genotype("eleventh").reckoning().leanedOn())
        .containsExactly("tips in Echeveria laui");
  }

  @Test
  void inbredFoundersAreHomozygousMoreOften() {
    PedigreeOdds odds =
        odds(pure("a"))
            .withPriors(even("Echeveria laui").withInbreeding("Echeveria laui", Fraction.of(1, 5)));
    assertThat(odds.genotype("a").of("Tt")).isEqualTo(0.8 * 0.5, ROUNDING);
    assertThat(odds.genotype("a").of("TT")).isEqualTo(0.25 + 0.2 * 0.25, ROUNDING);
  }

  @Test
  void theBeeIsWorkedOutFromWhatTheSeedlingsShow() {
    List<Case> cases =
        List.of(
            Case.cross(Fraction.of(1, 2), Route.OPEN_POLLINATION, "seed", "red"),
            Case.cross(Fraction.of(1, 4), Route.OPEN_POLLINATION, "seed", "plain"),
            Case.unknownPollen(Fraction.of(1, 4), Route.OPEN_POLLINATION, "seed"));
    PedigreeOdds odds =
        odds(
                pure("seed"),
                pure("red"),
                pure("plain"),
                new PlantRecord("s1", new Seedling(cases)),
                new PlantRecord("s2", new Seedling(cases)))
            .withPriors(even(FounderPriors.UNKNOWN))
            .withEvidence(
                List.of(
                    carries("seed", "tt"),
                    carries("red", "TT"),
                    carries("plain", "tt"),
                    red("s1"),
                    red("s2")));
    WayOdds one = odds.ways("s1");
    double weight = 0.5 + 0.25 * 0.5;
    assertThat(one.ways().get(0).before()).isEqualTo(0.5);
    assertThat(one.ways().get(0).after()).isEqualTo(0.5 / weight, ROUNDING);
    assertThat(one.ways().get(1).after()).isZero();
    WayOdds together = odds.withOnePollinator(Set.of("s1", "s2")).ways("s1");
    // A stranger of TT, Tt or tt (¼, ½, ¼) gives two red seedlings with 1, ¼ and 0.
    double both = 0.5 + 0.25 * (0.25 + 0.5 * 0.25);
    assertThat(together.ways().get(0).after()).isEqualTo(0.5 / both, ROUNDING);
  }

  @Test
  void aCountOfAFamilyOfOnePollinatorSaysWhoItWas() {
    List<Case> cases =
        List.of(
            Case.cross(Fraction.HALF, Route.OPEN_POLLINATION, "seed", "het"),
            Case.cross(Fraction.HALF, Route.OPEN_POLLINATION, "seed", "plain"));
    PedigreeOdds odds =
        odds(pure("seed"), pure("het"), pure("plain"), new PlantRecord("f", new Seedling(cases)))
            .withOnePollinator(Set.of("f"))
            .withEvidence(
                List.of(
                    carries("seed", "tt"),
                    carries("het", "Tt"),
                    carries("plain", "tt"),
                    new Evidence.Counted("f", "tips", Map.of("red", 0L, "plain", 900L), "tally")));
    // (½)^900 is below the smallest double: the scale is kept beside it.
    assertThat(odds.ways("f").ways().get(1).after()).isEqualTo(1, ROUNDING);
    PedigreeOdds few =
        odds.withEvidence(
            List.of(
                carries("seed", "tt"),
                carries("het", "Tt"),
                carries("plain", "tt"),
                new Evidence.Counted("f", "tips", Map.of("plain", 3L), "tally")));
    assertThat(few.ways("f").ways().get(0).after()).isEqualTo(1.0 / 9, ROUNDING);
  }

  @Test
  void oneOfTheseTwoIsTheOneItLooksLike() {
    PedigreeOdds odds =
        odds(pure("x"), pure("y"), eitherOf(Route.IDENTITY, "found", "x", "y"))
            .withPriors(even("Echeveria laui"))
            .withEvidence(List.of(red("x"), plain("y"), plain("found")));
    assertThat(odds.ways("found").ways().get(1).after()).isEqualTo(1, ROUNDING);
  }

  /**
   * How often it shows is drawn once for a plant, whichever tag it bears: the one that showed red
   * is not the one that was found plain.
   */
  @Test
  void aPlantThatLostItsTagShowsAsItDidWhenItHadOne() {
    PedigreeOdds odds =
        PedigreeOdds.of(
                Pedigree.of(
                    List.of(pure("x"), pure("y"), eitherOf(Route.IDENTITY, "found", "x", "y"))),
                GENOME,
                List.of(TIPS.withPenetrance("red", Fraction.HALF, "plain")))
            .withEvidence(
                List.of(carries("x", "TT"), carries("y", "TT"), red("x"), plain("found")));
    assertThat(odds.ways("found").ways().get(0).after()).isEqualTo(0, ROUNDING);
    assertThat(odds.states("y", "tips").of("plain")).isEqualTo(1, ROUNDING);
    assertThat(odds.states("found", "tips").of("plain")).isEqualTo(1, ROUNDING);
  }

  private static PedigreeOdds halfOfEither(Evidence seen) {
    return odds(
            pure("f"),
            PlantRecord.pure("g", "Echeveria alba"),
            PlantRecord.cross("of f", "f", "f"),
            PlantRecord.cross("of g", "g", "g"),
            eitherOf(Route.LOT_SHARE, "mixed", "of f", "of g"))
        .withPriors(even("Echeveria laui"))
        .withEvidence(List.of(carries("g", "tt"), seen));
  }

  /**
   * By hand: half the seed is of f selfed, half plain. Two red ones of two are as likely as (1/2)²
   * if f is TT, a quarter of all, and as (3/8)² if it is Tt, half of all: 8 to 9.
   */
  @Test
  void countedSeedlingsOfAMixedPacketAreEachOfTheirOwn() {
    PedigreeOdds odds = halfOfEither(new Evidence.Counted("mixed", "tips", Map.of("red", 2L), "2"));
    assertThat(odds.genotype("f").of("TT")).isEqualTo(8.0 / 17, ROUNDING);
    assertThat(odds.genotype("f").of("Tt")).isEqualTo(9.0 / 17, ROUNDING);
  }

  /** A red one can be found unless f is tt; more than that it does not tell of f. */
  @Test
  void oneThatWasPickedFromAMixedPacketSaysNothingOfItsParents() {
    PedigreeOdds odds = halfOfEither(new Evidence.Shown("mixed", "tips", "red", true, "picked"));
    assertThat(odds.genotype("f").of("TT")).isEqualTo(1.0 / 3, ROUNDING);
    assertThat(odds.genotype("f").of("Tt")).isEqualTo(2.0 / 3, ROUNDING);
    assertThat(odds.ways("mixed").ways().get(0).after()).isEqualTo(1, ROUNDING);
  }

  @Test
  void strayPollenKeepsAPlainSeedlingOfARedParentPossible() {
    List<Case> cases =
        List.of(
            Case.cross(Fraction.of(19, 20), Route.CROSS, "seed", "pollen"),
            Case.unknownPollen(Fraction.of(1, 20), Route.STRAY, "seed"));
    PedigreeOdds odds =
        odds(pure("seed"), pure("pollen"), new PlantRecord("s", new Seedling(cases)))
            .withPriors(even(FounderPriors.UNKNOWN))
            .withEvidence(List.of(carries("seed", "tt"), carries("pollen", "TT"), plain("s")));
    assertThat(odds.ways("s").ways().get(1).after()).isEqualTo(1, ROUNDING);
  }

  @Test
  void whatCannotBeIsSaidToBeImpossible() {
    PedigreeOdds odds =
        odds(pure("a"), pure("b"), PlantRecord.cross("s", "a", "b"))
            .withEvidence(List.of(carries("a", "tt"), carries("b", "tt"), red("s")));
    assertThat(odds.isPossible()).isFalse();
    assertThatThrownBy(() -> odds.genotype("s")).isInstanceOf(ImpossibleFindingsException.class);
    assertThat(odds.withOtherPollen(Set.of("s")).isPossible()).isTrue();
    assertThat(odds.withUnknownOrigin(Set.of("s")).isPossible()).isTrue();
    assertThat(odds.withMisreading(0.01).isPossible()).isTrue();
  }

  @Test
  void cytoplasmComesFromTheSeedParentAlone() {
    Locus green = Locus.cytoplasmic("leaf", "G", "w");
    Genome genome = Genome.unlinked(green);
    TraitModel leaf = TraitModel.dominant("leaf", green, List.of("green", "white"));
    PedigreeOdds odds =
        PedigreeOdds.of(
                Pedigree.of(
                    List.of(
                        pure("a"),
                        pure("b"),
                        PlantRecord.cross("s", "a", "b"),
                        PlantRecord.cross("s2", "b", "s"))),
                genome,
                List.of(leaf))
            .withEvidence(List.of(Evidence.Shown.of("s", "leaf", "white", "s")));
    assertThat(odds.states("a", "leaf").of("white")).isEqualTo(1, ROUNDING);
    assertThat(odds.states("s2", "leaf").of("white"))
        .isEqualTo(odds.states("b", "leaf").of("white"), ROUNDING);
  }

  /** Duplex selfed 35:1 by chromosome, 187:9 by chromatid segregation: Haldane 1930. */
  @Test
  void aDuplexTetraploidSelfedThrowsThirtyFiveToOne() {
    PedigreeOdds odds =
        odds(PlantRecord.pure("p", "Echeveria laui", 4))
            .withEvidence(List.of(carries("p", "TTtt")));
    assertThat(odds.cross("p", "p", "tips").of("plain")).isEqualTo(1.0 / 36, ROUNDING);
    assertThat(
            odds.withTetraploids(Meiosis.tetrasomic(Fraction.of(1, 7)))
                .cross("p", "p", "tips")
                .of("plain"))
        .isEqualTo(9.0 / 196, ROUNDING);
  }

  @Test
  void tetraploidByDiploidGivesTriploidsOfTwoSetsAndOne() {
    PedigreeOdds odds =
        odds(
                PlantRecord.pure("four", "Echeveria laui", 4),
                pure("two"),
                PlantRecord.cross("three", "four", "two"))
            .withEvidence(List.of(carries("four", "Tttt"), carries("two", "tt"), red("three")));
    assertThat(odds.genotype("three").of("Ttt")).isEqualTo(1, ROUNDING);
  }

  @Test
  void couplingIsTakenOverFromTheGrandparents() {
    Locus b = Locus.of("wax", "W", "w");
    Genome linked = Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), b));
    TraitModel wax = TraitModel.dominant("wax", b, List.of("waxed", "bare"));
    PedigreeOdds odds =
        PedigreeOdds.of(
                Pedigree.of(
                    List.of(
                        pure("p"),
                        pure("q"),
                        pure("tester"),
                        PlantRecord.cross("f1", "p", "q"),
                        PlantRecord.cross("s", "f1", "tester"))),
                linked,
                List.of(TIPS, wax))
            .withEvidence(
                List.of(
                    Evidence.Carried.of("p", linked.genotype("TW/TW"), "p"),
                    Evidence.Carried.of("q", linked.genotype("tw/tw"), "q"),
                    Evidence.Carried.of("tester", linked.genotype("tw/tw"), "tester"),
                    red("s")));
    assertThat(odds.states("s", "wax").of("waxed")).isEqualTo(0.9, ROUNDING);
    // Without the grandparents both phases are possible, and red says nothing of wax.
    PedigreeOdds unphased =
        PedigreeOdds.of(
                Pedigree.of(
                    List.of(pure("f1"), pure("tester"), PlantRecord.cross("s", "f1", "tester"))),
                linked,
                List.of(TIPS, wax))
            .withPriors(
                even("Echeveria laui")
                    .withFrequencies(
                        "Echeveria laui", "wax", Map.of("W", Fraction.HALF, "w", Fraction.HALF)))
            .withEvidence(
                List.of(
                    new Evidence.Carried(
                        "f1",
                        List.of(
                            new Pattern(A, List.of("T", "t"), false),
                            new Pattern(b, List.of("W", "w"), false)),
                        Optional.empty(),
                        "f1"),
                    Evidence.Carried.of("tester", linked.genotype("tw/tw"), "tester"),
                    red("s")));
    assertThat(unphased.states("s", "wax").of("waxed")).isEqualTo(0.5, ROUNDING);
  }

  private static Founder half() {
    return Founder.hybrid(
        Makeup.of(Map.of("Echeveria laui", Fraction.HALF, "Echeveria alba", Fraction.HALF)));
  }

  private static FounderPriors fixed() {
    return FounderPriors.none()
        .withFrequencies("Echeveria laui", "tips", Map.of("T", Fraction.ONE))
        .withFrequencies("Echeveria alba", "tips", Map.of("t", Fraction.ONE));
  }

  @Test
  void aStatedF1HasOneAlleleOfEachTaxon() {
    Founder f1 = half().withStated(StatedGeneration.f1("Echeveria laui", "Echeveria alba"));
    assertThat(odds(new PlantRecord("f1", f1)).withPriors(fixed()).genotype("f1").of("Tt"))
        .isEqualTo(1, ROUNDING);
    Founder shares = half();
    assertThat(odds(new PlantRecord("h", shares)).withPriors(fixed()).genotype("h").of("Tt"))
        .isEqualTo(0.5, ROUNDING);
  }

  @Test
  void aStatedF3HasAQuarterHeterozygotesLeft() {
    Founder f3 = half().withStated(StatedGeneration.filial(3, "Echeveria laui", "Echeveria alba"));
    // Heterozygotes halve with each selfing: ½ in F2, ¼ in F3.
    assertThat(odds(new PlantRecord("f3", f3)).withPriors(fixed()).genotype("f3").of("Tt"))
        .isEqualTo(0.25, ROUNDING);
  }

  @Test
  void plantsThatDieOfTheirGenesAreNotAmongThoseSeen() {
    TraitModel yellow =
        TraitModel.intermediate("coat", A, List.of("dark", "yellow", "green"))
            .withLethal(Pattern.read(List.of(A), "TT"));
    PedigreeOdds odds =
        PedigreeOdds.of(
                Pedigree.of(List.of(pure("a"), pure("b"), PlantRecord.cross("s", "a", "b"))),
                GENOME,
                List.of(yellow))
            .withEvidence(List.of(carries("a", "Tt"), carries("b", "Tt")));
    // Lethal yellow, 2:1 (Cuénot 1905; Castle and Little 1910).
    assertThat(odds.states("s", "coat").of("yellow")).isEqualTo(2.0 / 3, ROUNDING);
    assertThat(odds.genotype("a").of("Tt")).isEqualTo(1, ROUNDING);
  }

  @Test
  void aSportSaysNothingOfItsSource() {
    PedigreeOdds odds =
        odds(pure("p"), new PlantRecord("sport", new Ramet("p", false)))
            .withPriors(even("Echeveria laui"))
            .withSports(Set.of("sport"))
            .withEvidence(List.of(plain("sport")));
    assertThat(odds.genotype("p").of("tt")).isEqualTo(0.25, ROUNDING);
  }

  @Test
  void plantsOfOneCultivarAreOnePlant() {
    PedigreeOdds odds =
        odds(
                new PlantRecord("mine", Founder.pure("Echeveria laui").withCultivar("Lola")),
                new PlantRecord("yours", Founder.pure("Echeveria laui").withCultivar("Lola")))
            .withPriors(even("Echeveria laui"))
            .withEvidence(List.of(plain("mine")));
    assertThat(odds.genotype("yours").of("tt")).isEqualTo(1, ROUNDING);
  }

  @Test
  void everyPlantInOnePassAgreesWithOneAtATime() {
    PedigreeOdds odds =
        odds(
                pure("a"),
                pure("b"),
                PlantRecord.cross("s", "a", "b"),
                PlantRecord.cross("t", "s", "a"),
                PlantRecord.selfing("u", "t"))
            .withPriors(even("Echeveria laui"))
            .withEvidence(List.of(red("s"), plain("u")));
    EveryPlant every = odds.everyPlant();
    for (String plant : every.plants()) {
      assertThat(every.carries(plant, A, "t"))
          .isEqualTo(odds.genotype(plant).carries(A, "t"), ROUNDING);
    }
  }

  @Test
  void twoPlantsTogetherKnowOfEachOther() {
    PedigreeOdds odds =
        odds(pure("a"), pure("b"), PlantRecord.cross("s", "a", "b"))
            .withPriors(even("Echeveria laui"))
            .withEvidence(List.of(plain("s")));
    JointOdds both = odds.jointly("a", "b");
    // tt × tt, tt × Tt, Tt × tt, Tt × Tt by 1·1/16, ½·2/16 twice, ¼·4/16: all alike.
    assertThat(both.pairs()).hasSize(4);
    both.pairs().forEach(pair -> assertThat(pair.chance()).isEqualTo(0.25, ROUNDING));
  }

  @Test
  void seedsWithoutFertilisationAreCountedAsTheirMotherAgain() {
    List<Evidence> seen = new ArrayList<>(List.of(carries("a", "Tt"), carries("b", "tt")));
    PedigreeOdds odds =
        odds(
            pure("a"),
            pure("b"),
            PlantRecord.cross("mother", "a", "b"),
            PlantRecord.apomict("s", "mother"),
            PlantRecord.ramet("s offset", "s"));
    double before = odds.withEvidence(seen).logLikelihood();
    seen.add(new Evidence.Counted("s offset", "tips", Map.of("red", 3L, "plain", 0L), "tally"));
    odds = odds.withEvidence(seen);
    // Three copies of the mother are red, and so is she; three sibs of hers would be, once in
    // eight.
    assertThat(odds.genotype("mother").of("Tt")).isEqualTo(1, ROUNDING);
    assertThat(odds.logLikelihood() - before).isEqualTo(Math.log(0.5), ROUNDING);
  }

  @Test
  void aGridTooCoarseForWhatWasCountedIsSaidToBe() {
    Locus b = Locus.of("wax", "W", "w");
    Genome linked = Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), b));
    List<PlantRecord> plants = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      plants.add(pure("p" + i));
    }
    assertThat(
            PedigreeOdds.of(Pedigree.of(plants), linked, List.of(TIPS))
                .withEvidence(List.of(red("p1"), plain("p2")))
                .genotype("p0")
                .reckoning()
                .leanedOn())
        .contains("tips in Echeveria laui");
    List<Evidence> many = new ArrayList<>();
    plants.forEach(plant -> many.add(red(plant.code())));
    assertThat(
            PedigreeOdds.of(Pedigree.of(plants), linked, List.of(TIPS))
                .withEvidence(many)
                .genotype("p0")
                .reckoning()
                .leanedOn())
        .anySatisfy(
            gene ->
                assertThat(gene)
                    .isEqualTo("tips in Echeveria laui (reckoned at 12 frequencies only)"));
  }

  private static PedigreeOdds oneLookAtLinkedGenes(int genes) {
    List<Locus> loci = new ArrayList<>();
    List<Fraction> between = new ArrayList<>();
    for (int i = 0; i < genes; i++) {
      loci.add(Locus.of("g" + i, "" + (char) ('A' + i), "" + (char) ('a' + i)));
      if (i > 0) {
        between.add(Fraction.of(1, 10));
      }
    }
    TraitModel shows = TraitModel.dominant("first", loci.get(0), List.of("yes", "no"));
    return PedigreeOdds.of(
            Pedigree.of(List.of(pure("p"), pure("q"), PlantRecord.cross("s", "p", "q"))),
            Genome.of(new LinkageGroup(loci, between, true)),
            List.of(shows))
        .withEvidence(List.of(Evidence.Shown.of("s", "first", "yes", "s")));
  }

  /** Frequencies p by Beta(½, ½): AA, Aa, aa as 3:2:3, and a seedling shows A. */
  @Test
  void genesNobodyLookedAtChangeNothing() {
    for (int genes = 1; genes <= 3; genes++) {
      PedigreeOdds odds = oneLookAtLinkedGenes(genes);
      Locus first = odds.genotype("p").genotypes().get(0).genotype().genome().locus("g0");
      assertThat(odds.genotype("p").carries(first, "a")).isEqualTo(0.4, ROUNDING);
    }
  }

  @Test
  void oddsThatCannotBeDrawnAreNotMadeUp() {
    // Drawn locus by locus the plants would stay as they began, whatever the dice.
    PedigreeOdds tied = oneLookAtLinkedGenes(5).withBound(1 << 20);
    assertThatThrownBy(() -> tied.genotype("p")).isInstanceOf(TangledPedigreeException.class);
    for (int dice = 1; dice <= 3; dice++) {
      PedigreeOdds drawn = tied.withSampling(100, dice);
      assertThatThrownBy(() -> drawn.genotype("p"))
          .isInstanceOf(UnsteadyDrawsException.class)
          .hasMessageContaining("would stay as it began");
    }
  }

  @Test
  void drawnOddsLieWithinTheirErrors() {
    List<PlantRecord> plants = new ArrayList<>();
    List<Evidence> seen = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      plants.add(pure("p" + i));
      for (int j = 0; j < i; j++) {
        plants.add(PlantRecord.cross(i + " x " + j, "p" + i, "p" + j));
        seen.add((i * j) % 3 == 1 ? plain(i + " x " + j) : red(i + " x " + j));
      }
    }
    PedigreeOdds odds =
        odds(plants.toArray(new PlantRecord[0]))
            .withPriors(even("Echeveria laui"))
            .withMisreading(0.05)
            .withEvidence(seen);
    GenotypeOdds exact = odds.genotype("p1");
    GenotypeOdds drawn = odds.withBound(3000).withSampling(400, 1).genotype("p1");
    assertThat(exact.reckoning().isExact()).isTrue();
    assertThat(drawn.reckoning().isExact()).isFalse();
    for (GenotypeOdds.Chance one : drawn.genotypes()) {
      assertThat(one.chance()).isCloseTo(exact.of(one.genotype()), within(5 * one.error() + 1e-9));
    }
  }
}
