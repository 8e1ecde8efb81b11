package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What may be written for a genotype, and what is said of what may not. */
class GenotypeReadingTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final Locus C = Locus.of("spine", "C", "c");
  private static final Locus S = Locus.of("S", "S1", "S2", "S3");
  private static final Locus CYTOPLASM = Locus.cytoplasmic("cytoplasm", "N", "F");

  private static final Genome UNLINKED = Genome.unlinked(A, B);
  private static final Genome LINKED =
      Genome.of(LinkageGroup.of(A, Fraction.of(1, 10), B), LinkageGroup.of(C));

  private static void refused(Genome genome, String text, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> genome.genotype(text))
        .withMessage(message);
  }

  @ParameterizedTest
  @CsvSource({
    "Aa Bb, Aa Bb",
    "A/a B/b, Aa Bb",
    "AaBb, Aa Bb",
    "bB aA, Aa Bb",
    "'Aa,Bb', Aa Bb",
    "' Aa;  Bb ', Aa Bb",
    "a/A BB, Aa BB",
    "AAaa BBBb, AAaa BBBb",
    "AAa Bbb, AAa Bbb",
    "AA|aa BB|BB, AA|aa BB|BB",
    "A/A|a/a BB|bb, AA|aa BB|bb",
    "aa|AA BB|BB, aa|AA BB|BB"
  })
  void unlinkedGenesMayBeWrittenInManyWays(String text, String read) {
    assertThat(UNLINKED.genotype(text).text()).isEqualTo(read);
  }

  @ParameterizedTest
  @CsvSource({
    "AB/ab Cc, AB/ab Cc",
    "ab/AB Cc, AB/ab Cc",
    "BA/ba Cc, AB/ab Cc",
    "A.B/a.b Cc, AB/ab Cc",
    "Ab/aB Cc, Ab/aB Cc",
    "Cc AA Bb, AB/Ab Cc",
    "AABb CC, AB/Ab CC",
    "aa bb cc, ab/ab cc"
  })
  void linkedGenesAreWrittenByChromosome(String text, String read) {
    assertThat(LINKED.genotype(text).text()).isEqualTo(read);
  }

  @Test
  void couplingIsNotRepulsion() {
    assertThat(LINKED.genotype("AB/ab CC")).isNotEqualTo(LINKED.genotype("Ab/aB CC"));
    assertThat(LINKED.genotype("AB/ab CC"))
        .isEqualTo(LINKED.genotype("ab/AB CC"))
        .hasSameHashCodeAs(LINKED.genotype("ab/AB CC"));
  }

  @Test
  void longSymbolsArePartedByStrokesAndDots() {
    Genome genome =
        Genome.of(LinkageGroup.of(S, Fraction.of(1, 20), A), LinkageGroup.of(CYTOPLASM));

    Genotype plant = genome.genotype("S2.a/S1.A F");

    assertThat(plant.text()).isEqualTo("S1.A/S2.a F").hasToString(plant.toString());
    assertThat(plant.alleles(S)).containsExactly("S1", "S2");
    assertThat(plant.alleles(CYTOPLASM)).containsExactly("F");
    assertThat(plant.isHomozygous(A)).isFalse();
    assertThat(plant.isHomozygous(CYTOPLASM)).isTrue();
    assertThat(Genome.unlinked(S).genotype("S1S3").text()).isEqualTo("S1/S3");
  }

  @Test
  void theNumberOfSetsIsCounted() {
    assertThat(UNLINKED.genotype("Aa Bb").ploidy()).isEqualTo(2);
    assertThat(UNLINKED.genotype("AAa BBb").ploidy()).isEqualTo(3);
    assertThat(UNLINKED.genotype("AAaa BBBb").ploidy()).isEqualTo(4);
    assertThat(UNLINKED.genotype("AAaa BBBb").isDisomic()).isFalse();
    assertThat(UNLINKED.genotype("AA|aa BB|bb").isDisomic()).isTrue();
  }

  @Test
  void aMissingGeneIsNamed() {
    refused(
        UNLINKED,
        "Aa",
        "\"Aa\" says nothing of the gene hair (B, b); write its alleles too, as Bb");
    refused(
        Genome.unlinked(A, S),
        "Aa",
        "\"Aa\" says nothing of the gene S (S1, S2, S3); write its alleles too, as S1/S2");
    refused(
        Genome.unlinked(A, CYTOPLASM),
        "Aa",
        "\"Aa\" says nothing of the gene cytoplasm (N, F); write its alleles too, as N");
    refused(
        LINKED,
        "A/a Cc",
        "\"A\" in \"A/a Cc\" lacks the gene hair, which lies on the same chromosome; write an"
            + " allele of each on either side of the stroke");
  }

  @Test
  void anUnknownAlleleIsNamed() {
    refused(
        UNLINKED, "Aa Bx", "\"Bx\" in \"Aa Bx\" is made of no known alleles; they are A, a, B, b");
    refused(UNLINKED, "Xx", "\"Xx\" is made of no known alleles; they are A, a, B, b");
  }

  @Test
  void aPhaseThatIsNotSaidIsAskedFor() {
    refused(
        LINKED,
        "Aa Bb Cc",
        "\"Aa Bb Cc\" does not say which alleles lie together on one chromosome; write AB/ab or"
            + " Ab/aB");
    refused(
        LINKED,
        "AAaa BBbb CCCC",
        "\"AAaa BBbb CCCC\" does not say which alleles lie together on one chromosome; write"
            + " AB/AB/ab/ab or another");
  }

  @Test
  void differentNumbersOfAllelesAreNoPlant() {
    refused(
        UNLINKED,
        "AAaa Bb",
        "\"AAaa Bb\" has 4 alleles of edge but 2 alleles of hair; a plant has as many of each as"
            + " it has chromosome sets");
    refused(
        LINKED,
        "AA B Cc",
        "\"AA B Cc\" has 2 alleles of edge but one allele of hair; a plant has as many of each as"
            + " it has chromosome sets");
    refused(UNLINKED, "A B", "\"A B\" has one allele of each gene; a plant has two, three or four");
    refused(UNLINKED, "AAAAA BB", "a plant of 5 chromosome sets; odds are reckoned for 2, 3 and 4");
    refused(
        Genome.unlinked(A, CYTOPLASM),
        "Aa N/F",
        "the gene cytoplasm sits in the cytoplasm; write the one allele that it has there");
  }

  @Test
  void twoReadingsAreNoneAndDotsPartThem() {
    Genome genome = Genome.unlinked(Locus.of("one", "R", "r"), Locus.of("two", "rr", "Q"));

    refused(
        genome,
        "Rrr QQ",
        "\"Rrr\" in \"Rrr QQ\" can be read in two ways; part its alleles by dots or strokes");
    assertThat(genome.genotype("R.r QQ").text()).isEqualTo("Rr QQ");
    assertThat(genome.genotype("R.r.rr.Q").text()).isEqualTo("Rr rr/Q");
  }

  /** Rabbits' coats: cch is a symbol, and c and ch are too. */
  @Test
  void betweenStrokesASymbolIsItself() {
    Genome genome = Genome.unlinked(Locus.of("coat", "C", "cch", "ch", "c"));

    assertThat(genome.genotype("cch/c").text()).isEqualTo("cch/c");
    assertThat(genome.genotype("c.ch").text()).isEqualTo("ch/c");
    assertThat(genome.genotype("Cc").text()).isEqualTo("Cc");
    refused(genome, "cch", "\"cch\" can be read in two ways; part its alleles by dots or strokes");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Aa Bb Aa", "A/a Bb A/a", "Aa Bb A/a", "A/a Bb AA"})
  void aGeneWrittenTwiceIsRefused(String text) {
    refused(UNLINKED, text, "the gene edge is written twice in \"" + text + "\"; write it once");
  }

  @ParameterizedTest
  @ValueSource(strings = {"/ Bb", "/a Bb", "A/ Bb", "A//a Bb"})
  void aStrokeHasAnAlleleOnEitherSide(String text) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> UNLINKED.genotype(text))
        .withMessageEndingWith("has nothing on one side of a stroke; write A/a");
  }

  @ParameterizedTest
  @ValueSource(strings = {"|", "AA|", "AA|a", "A|a", "AA|aa|AA", "/|/", "AAaa|", "AAa|a"})
  void twoSubgenomesHaveTwoAllelesEach(String text) {
    assertThatIllegalArgumentException().isThrownBy(() -> Genome.unlinked(A).genotype(text));
  }

  @Test
  void genesOfOneChromosomeAreNotMixedWithOthers() {
    refused(
        LINKED,
        "ABC/abc",
        "\"ABC/abc\" in \"ABC/abc\" has genes on different chromosomes; part these by a space");
    refused(
        LINKED,
        "AaB/AbB Cc",
        "\"AaB\" in \"AaB/AbB Cc\" has two alleles of the gene edge on one chromosome; write one"
            + " on each side of the stroke, as A/a");
  }

  @Test
  void aVeryLongTextIsNotRead() {
    refused(
        UNLINKED,
        "A".repeat(2001),
        "a genotype of 2001 characters; write only the genes that are asked about");
  }

  @Test
  void twoGenesMayNotShareASymbol() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Genome.unlinked(A, Locus.of("flower", "R", "a")))
        .withMessage(
            "the genes edge and flower both have an allele a, and a genotype could not be read;"
                + " call one of them otherwise");
  }

  @Test
  void doublingWritesEveryChromosomeTwice() {
    Genome genome =
        Genome.of(
            LinkageGroup.of(A, Fraction.of(1, 10), B),
            LinkageGroup.of(C),
            LinkageGroup.of(CYTOPLASM));

    assertThat(genome.genotype("AB/ab CC F").doubled().text()).isEqualTo("AB/AB/ab/ab CCCC F");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Genome.unlinked(A).genotype("AAa").doubled())
        .withMessage("a plant of 6 chromosome sets; odds are reckoned for 2, 3 and 4");
  }

  @Test
  void fourAllelesLieInTwoSubgenomesInAFewWays() {
    Genome one = Genome.unlinked(A);

    assertThat(texts(one.genotype("AAaa").disomicArrangements()))
        .containsExactlyInAnyOrder("AA|aa", "Aa|Aa");
    assertThat(texts(one.genotype("AAAa").disomicArrangements())).containsExactly("AA|Aa");
    assertThat(texts(one.genotype("aaaa").disomicArrangements())).containsExactly("aa|aa");
    assertThat(texts(one.genotype("Aa|Aa").disomicArrangements())).containsExactly("Aa|Aa");
    assertThat(texts(one.genotype("Aa").disomicArrangements())).containsExactly("Aa");
    assertThat(UNLINKED.genotype("AAaa BBbb").disomicArrangements()).hasSize(4);
  }

  @Test
  void whatIsSaidOfOneGeneLeavesTheOthersToBeArranged() {
    assertThat(texts(UNLINKED.genotype("Aa|Aa BBbb").disomicArrangements()))
        .containsExactlyInAnyOrder("Aa|Aa BB|bb", "Aa|Aa Bb|Bb");
  }

  private static List<String> texts(List<Genotype> genotypes) {
    return genotypes.stream().map(Genotype::text).toList();
  }
}
