package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a row of a table may say of a genotype. */
class PatternTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final Locus S = Locus.of("S", "S1", "S2", "S3");
  private static final Locus COAT = Locus.of("coat", "C", "cch", "ch", "c");
  private static final Locus CYTOPLASM = Locus.cytoplasmic("cytoplasm", "N", "F");
  private static final List<Locus> LOCI = List.of(A, B, S, CYTOPLASM);

  private static boolean fits(String pattern, String genotype) {
    Genome genome = Genome.unlinked(A);
    List<Integer> alleles = genome.genotype(genotype).alleles(A).stream().map(A::index).toList();
    return Pattern.read(List.of(A), pattern)
        .get(0)
        .matches(alleles.stream().mapToInt(Integer::intValue).toArray());
  }

  @ParameterizedTest
  @CsvSource({
    "A_, AA Aa AAa AAaa Aaaa",
    "AA_, AA AAa AAaa AAAa",
    "Aa, Aa AAa Aaa AAaa Aaaa",
    "aa, aa aaa aaaa",
    "AA, AA AAA AAAA",
    "AAAa, AAAa",
    "AAa, AAa",
    "Aa_, Aa AAa AAaa"
  })
  void whatFits(String pattern, String genotypes) {
    for (String genotype : genotypes.split(" ", -1)) {
      assertThat(fits(pattern, genotype)).as(pattern + " and " + genotype).isTrue();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "A_, aa aaa aaaa",
    "AA_, Aa Aaa Aaaa",
    "Aa, AA aa AAAA aaa",
    "aa, Aa AAaa AA",
    "AAAa, Aa AAaa AAAA Aaaa AAa",
    "AAa, Aa Aaa AAAa",
    "Aa_, AA aa"
  })
  void whatDoesNotFit(String pattern, String genotypes) {
    for (String genotype : genotypes.split(" ", -1)) {
      assertThat(fits(pattern, genotype)).as(pattern + " and " + genotype).isFalse();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "A_ bb, A_ bb",
    "A_bb, A_ bb",
    "AaB_, Aa B_",
    "A___ bbbb, A_ bbbb",
    "S1/_, S1/_",
    "S1_, S1/_",
    "S1/S2 A_, S1/S2 A_",
    "S2.S2, S2/S2",
    "'A_, N', A_ N",
    "N, N",
    "*, ''",
    "'* A_', A_",
    "'', ''"
  })
  void patternsMayBeWrittenInManyWays(String text, String read) {
    List<Pattern> patterns = Pattern.read(LOCI, text);

    String written = String.join(" ", patterns.stream().map(Pattern::text).toList());
    assertThat(written).isEqualTo(read);
    assertThat(Pattern.read(LOCI, written)).isEqualTo(patterns);
  }

  @Test
  void aSymbolThatIsTwoOthersIsReadBackFromItsStroke() {
    Pattern pattern = new Pattern(COAT, List.of("cch"), true);

    assertThat(pattern.text()).isEqualTo("cch/_");
    assertThat(Pattern.read(List.of(COAT), "cch/_")).containsExactly(pattern);
    assertThat(Pattern.read(List.of(COAT), "c.ch_"))
        .containsExactly(new Pattern(COAT, List.of("c", "ch"), true));
  }

  private static void refused(String text, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pattern.read(LOCI, text))
        .withMessage(message);
  }

  @Test
  void patternsThatSayTooLittleAreRefused() {
    refused(
        "A",
        "\"A\" does not say what stands beside it; write A_ for one at least, or AA for nothing"
            + " else");
    refused(
        "S1",
        "\"S1\" does not say what stands beside it; write S1_ for one at least, or S1/S1 for"
            + " nothing else");
    refused("_A", "\"_A\" in \"_A\" begins with _; write A_ for one A at least");
    refused("AAAaa", "5 alleles of the gene edge; write one to four");
    refused(
        "N_",
        "the gene cytoplasm sits in the cytoplasm; write the one allele that a plant has there");
    refused("Xx", "\"Xx\" is made of no known alleles; they are A, a, B, b, S1, S2, S3, N, F");
  }

  @ParameterizedTest
  @CsvSource({"A_ aa", "A_A_", "Aa B_ Aa", "A_ bb A_"})
  void aGeneStandsInOnePlace(String text) {
    refused(text, "the gene edge stands in two places in \"" + text + "\"; write it once");
  }

  @Test
  void aPatternNamesAllelesOfItsGene() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Pattern(A, List.of("B"), true))
        .withMessage("the gene edge has no allele B; it has A, a");
    assertThatIllegalArgumentException().isThrownBy(() -> new Pattern(A, List.of(), true));
  }

  @Test
  void symbolsThatCouldNotBeReadAreRefused() {
    for (String symbol : Arrays.asList("", "A B", "A/", "_", "a*", "A|", "x".repeat(13), "'")) {
      assertThatIllegalArgumentException()
          .as(symbol)
          .isThrownBy(() -> Locus.of("edge", symbol, "b"))
          .withMessageContaining("cannot be the symbol of an allele");
    }
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Locus.of("edge", "A"))
        .withMessage("the gene edge has 1 alleles; it has 2 or more, at most 30");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Locus.of("edge", "A", "A"))
        .withMessage("the allele A of the gene edge is named twice; name it once");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Locus.of(" ", "A", "a"))
        .withMessage("a gene has a name; give it one");
  }
}
