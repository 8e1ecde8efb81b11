package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.heredity.Compatibility.Verdict;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who can set seed on whom: East and Mangelsdorf 1925, Proceedings of the National Academy of
 * Sciences 11:166-171.
 */
class SelfIncompatibilityTest {

  private static final Locus S = Locus.of("S", "S1", "S2", "S3", "S4", "Sf");
  private static final Locus A = Locus.of("edge", "A", "a");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));

  private static final SelfIncompatibility STRICT =
      new SelfIncompatibility(S, Fraction.ZERO, List.of("Sf"));

  private static Genome alone(SelfIncompatibility refusing) {
    return Genome.unlinked(S).withSelfIncompatibility(refusing);
  }

  private static Genome linked(Fraction recombination, SelfIncompatibility refusing) {
    return Genome.of(LinkageGroup.of(S, recombination, A)).withSelfIncompatibility(refusing);
  }

  private static Map<String, Fraction> seedlings(Genome genome, String seed, String pollen) {
    Map<String, Fraction> seedlings = new TreeMap<>();
    Cross.of(genome.genotype(seed), genome.genotype(pollen))
        .genotypes()
        .forEach(each -> seedlings.put(each.genotype().text(), each.chance()));
    return seedlings;
  }

  @ParameterizedTest
  @CsvSource({
    "S1S2, S1S3, SOME, 1/2",
    "S1S2, S1S2, NONE, 0",
    "S1S2, S3S4, ALL, 1",
    "S1S2, S1Sf, SOME, 1/2",
    "S1S2, S3Sf, ALL, 1",
    "S1Sf, S1Sf, SOME, 1/2",
    "SfSf, S1S2, ALL, 1",
    "S1S1, S1S2, SOME, 1/2",
    "S1S1, S1S1, NONE, 0"
  })
  void pollenWorksByItsOwnAllele(String seed, String pollen, Verdict verdict, String working) {
    Genome genome = alone(STRICT);

    Compatibility compatibility = Compatibility.of(genome.genotype(seed), genome.genotype(pollen));

    assertThat(compatibility.verdict()).isEqualTo(verdict);
    assertThat(compatibility.working()).isEqualTo(Fraction.parse(working));
    assertThat(compatibility.effective()).isEqualTo(Fraction.parse(working));
  }

  /** Of the refused half one grain in a hundred comes through. */
  @Test
  void someRefusedPollenLeaks() {
    Genome genome = alone(SelfIncompatibility.of(S));

    Compatibility half = Compatibility.of(genome.genotype("S1S2"), genome.genotype("S1S3"));
    Compatibility none = Compatibility.of(genome.genotype("S1S2"), genome.genotype("S1S2"));

    assertThat(half.effective()).isEqualTo(Fraction.of(101, 200));
    assertThat(none.verdict()).isEqualTo(Verdict.NONE);
    assertThat(none.effective()).isEqualTo(SelfIncompatibility.USUAL_LEAK);
  }

  /** Only S3 comes through, on either egg. */
  @Test
  void halfCompatibleSeedlingsAllHaveTheStrangersAllele() {
    assertThat(seedlings(alone(STRICT), "S1S2", "S1S3"))
        .isEqualTo(Map.of("S1/S3", Fraction.HALF, "S2/S3", Fraction.HALF));
    assertThat(seedlings(alone(STRICT), "S1S3", "S1S2"))
        .isEqualTo(Map.of("S1/S2", Fraction.HALF, "S2/S3", Fraction.HALF));
  }

  /** S1 leaks ℓ against 1 of S3, so it has ℓ/(1 + ℓ) of the seed. */
  @Test
  void whatLeaksHasItsShareOfTheSeed() {
    Genome genome = alone(STRICT.withLeak(Fraction.of(1, 9)));

    Map<String, Fraction> seedlings = seedlings(genome, "S1S2", "S1S3");

    assertThat(seedlings.get("S1/S1")).isEqualTo(Fraction.of(1, 20));
    assertThat(seedlings.get("S1/S3")).isEqualTo(Fraction.of(9, 20));
  }

  /** Where all pollen is refused alike, the little that leaks segregates evenly. */
  @Test
  void selfedSeedThatLeaksSegregatesEvenly() {
    Genome genome = alone(SelfIncompatibility.of(S));

    assertThat(seedlings(genome, "S1S2", "S1S2"))
        .isEqualTo(
            Map.of(
                "S1/S1", Fraction.of(1, 4),
                "S1/S2", Fraction.HALF,
                "S2/S2", Fraction.of(1, 4)));
  }

  @Test
  void withoutALeakSelfingIsRefused() {
    Genome genome = alone(STRICT);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.selfing(genome.genotype("S1S2")))
        .withMessage(
            "no pollen comes through: the style carries every S allele of the pollen parent, and"
                + " none leaks");
  }

  /** The cross itself sets seed; it is its seedlings that refuse their own pollen. */
  @Test
  void ofSeedlingsThatRefuseTheirOwnPollenNoLineCanBeSelfed() {
    Genome genome = linked(Fraction.of(1, 10), STRICT);
    Cross cross = Cross.of(genome.genotype("S1.A/S2.a"), genome.genotype("S3.A/S3.a"));
    Wish red = Wish.any().andShowing(EDGE, "red");

    assertThat(cross.chance(red)).isEqualTo(Fraction.of(3, 4));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SelfedLine.of(cross).chance(1, red))
        .withMessage(
            "nothing comes of a seedling that is selfed: by its S alleles it refuses all of its own"
                + " pollen, and none leaks");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> cross.chance(red.andBreedingTrue(EDGE)))
        .withMessageStartingWith("nothing comes of a seedling that is selfed");
  }

  /** Selfed S1Sf: the grain is Sf, so S1S1 never comes and half are SfSf. */
  @Test
  void theSelfFertileAlleleFixesItself() {
    Genome genome = alone(STRICT);
    Cross selfed = Cross.selfing(genome.genotype("S1Sf"));
    Wish fixed = Wish.any().andCarrying(Pattern.read(List.of(S), "Sf/Sf"));

    assertThat(seedlings(genome, "S1Sf", "S1Sf"))
        .isEqualTo(Map.of("S1/Sf", Fraction.HALF, "Sf/Sf", Fraction.HALF));
    assertThat(SelfedLine.of(selfed).chance(4, fixed)).isEqualTo(Fraction.of(31, 32));
  }

  /**
   * S1.a/S3.A pollinates S1S2: grains with S3 alone work, and of these 1 − r carry A. On a
   * recessive seed parent that is what shows.
   */
  @ParameterizedTest
  @CsvSource({"0", "1/100", "1/10", "1/3", "1/2"})
  void anAlleleLinkedToTheAcceptedOneIsHandedOnMoreOften(String recombination) {
    Fraction r = Fraction.parse(recombination);
    Genome genome = linked(r, STRICT);
    Cross cross = Cross.of(genome.genotype("S1.a/S2.a"), genome.genotype("S1.a/S3.A"));

    assertThat(cross.odds(EDGE).chanceOf("red")).isEqualTo(Fraction.ONE.minus(r));
  }

  /** With a leak ℓ: ((1 − r) + ℓr)/(1 + ℓ). */
  @Test
  void aLeakMakesTheDistortionSmaller() {
    Genome genome = linked(Fraction.of(1, 10), STRICT.withLeak(Fraction.of(1, 4)));
    Cross cross = Cross.of(genome.genotype("S1.a/S2.a"), genome.genotype("S1.a/S3.A"));

    assertThat(cross.odds(EDGE).chanceOf("red")).isEqualTo(Fraction.of(37, 50)); // 0.925/1.25
  }

  /** Eggs are not chosen, and a compatible cross is not distorted. */
  @Test
  void onTheSeedSideNothingIsDistorted() {
    Genome genome = linked(Fraction.of(1, 10), STRICT);

    assertThat(
            Cross.of(genome.genotype("S1.a/S3.A"), genome.genotype("S1.a/S2.a")).odds(EDGE).ratio())
        .contains("1:1");
    assertThat(
            Cross.of(genome.genotype("S2.a/S4.a"), genome.genotype("S1.a/S3.A")).odds(EDGE).ratio())
        .contains("1:1");
  }

  @Test
  void polyploidsAndUnknownPlantsAreNotReckoned() {
    Genome genome = alone(STRICT);
    Parent tetraploid =
        Parent.of(genome.genotype("S1S2").doubled(), Meiosis.tetrasomic(Fraction.ZERO));
    Parent diploid = Parent.of(genome.genotype("S3S4"));
    Parent taxon =
        new Parent.OfTaxon(Map.of("S", Map.of("S1", Fraction.HALF, "S2", Fraction.HALF)));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.of(genome, tetraploid, diploid))
        .withMessage(
            "the S locus S is reckoned with between diploids, whose pollen has one set; leave it"
                + " out");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.of(genome, diploid, taxon))
        .withMessage(
            "which pollen is refused depends on the S alleles of both parents; name both, or leave"
                + " the S locus out");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Compatibility.of(genome.genotype("S1S2").doubled(), genome.genotype("S3S4")))
        .withMessageStartingWith("the S locus is reckoned with between diploids");
  }

  @Test
  void withoutAnSLocusAllPollenWorks() {
    Genome genome = Genome.unlinked(S);

    assertThatIllegalArgumentException()
        .isThrownBy(() -> Compatibility.of(genome.genotype("S1S2"), genome.genotype("S1S2")))
        .withMessage("no S locus is among the genes; without one all pollen works");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Compatibility.of(alone(STRICT).genotype("S1S2"), alone(STRICT).genotype("S1S2")))
        .withMessage("the two genotypes were read for different genes");
  }

  @Test
  void aLeakIsAShare() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> STRICT.withLeak(Fraction.of(5, 4)))
        .withMessage("a leak of 5/4 at S; it lies between 0 and 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SelfIncompatibility(S, Fraction.ZERO, List.of("S9")))
        .withMessage("the gene S has no allele S9; it has S1, S2, S3, S4, Sf");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Genome.unlinked(A).withSelfIncompatibility(STRICT));
  }
}
