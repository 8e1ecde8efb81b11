package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What plans of several seasons say of kept seedlings that refuse each other's pollen. */
class NextSAllelesTest {

  private static final String UNKNOWN =
      "The S alleles of a parent are not known, so it is not reckoned with that what is kept may"
          + " refuse the pollen of its mate, of a sib, or its own: keep more than the plan says, and"
          + " pollinate several.";

  @TempDir Path folder;

  private String typed(String... words) {
    Outcome outcome = new CommandLineRun().in(folder).run(words);
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return outcome.out();
  }

  private static String[] with(String[] words, String... more) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  private String next(String... more) {
    return typed(with(NEXT, more));
  }

  private static String flat(String told) {
    return told.replaceAll("\\s+", " ");
  }

  private JsonNode plan(String... more) {
    return JsonMapper.shared()
        .readTree(next(with(more, "--show", "1", "--json")))
        .get("plans")
        .get(0);
  }

  private static final String[] NEXT = {"next", "--want", "edge=green", "--want", "wax=waxy"};

  /** 20-001 RR ww, Echeveria agavoides; 20-002 rr WW, Echeveria laui. */
  private void twoRecessives() {
    typed("start", "KB", "--grower", "Klara");
    typed("trait", "edge", "--states", "red,green");
    typed("trait", "wax", "--states", "bare,waxy");
    typed("gene", "R", "R", "r");
    typed("gene", "W", "W", "w");
    typed("model", "edge", "R_=red", "*=green");
    typed("model", "wax", "W_=bare", "*=waxy");
    typed("plant", "Echeveria agavoides", "--date", "2020-03-01");
    typed("plant", "Echeveria laui", "--date", "2020-03-01");
    typed("genotype", "20-001", "RR ww");
    typed("genotype", "20-002", "rr WW");
  }

  private void alleles(String... ofThese) {
    typed("gene", "S", "S1", "S2", "S3", "S4", "Sf", "--self-incompatible", "--self-fertile", "Sf");
    for (int i = 0; i < ofThese.length; i++) {
      typed("genotype", "20-00" + (i + 1), ofThese[i]);
    }
  }

  /**
   * By hand: a seedling is S1S3, S1S4, S2S3 or S2S4, and one sib in four is as it is. Of four pairs
   * none sets 1 time in 256; log(1 − 0.95 · 256/255) / log 15/16 = 47.6.
   */
  @Test
  void oneInFourOfFullSibsIsRefusedSoFourPairsAreKept() {
    twoRecessives();
    alleles("S1/S2", "S3/S4");
    assertThat(next())
        .isEqualTo(
            """
            Wanted: edge green, wax waxy; one at least, 95 % sure. 2 plants can be parents.
            1. two seasons, 56 seedlings in all
              season 1 20-001N (Echeveria agavoides) × 20-002P (Echeveria laui): raise 8,
              keep 4 pairs, all are alike to look at (edge red, wax bare)
              season 2 one kept × its sib: raise 48, 6.3 % (1/16) wanted
                by their S alleles 75 % (3/4) of such pairs set seed: pollinate up to 4, sow
                of one that has set
              inbred 25 % (1/4)
            left out  2 pairs and selfings that set no seed by their S alleles
            Next: when you pollinate: filial cross 20-001N 20-002P
            """);
    JsonNode plan = plan();
    JsonNode first = plan.get("seasons").get(0);
    JsonNode second = plan.get("seasons").get(1);
    assertThat(first.get("kept").intValue()).isEqualTo(1);
    assertThat(first.get("spare").intValue()).isEqualTo(3);
    assertThat(first.get("setting").isNull()).isTrue();
    assertThat(second.get("setting").doubleValue()).isEqualTo(0.75, within(1e-12));
    assertThat(second.get("spare").intValue()).isZero();
    assertThat(plan.get("certainty").doubleValue())
        .isEqualTo(255.0 / 256 * (1 - Math.pow(15.0 / 16, 48)), within(1e-12));
  }

  /**
   * By hand: half of S1Sf × S2S3 have the allele that no style refuses, and hand it on to half of
   * what comes of them.
   */
  @Test
  void aQuarterSelfAfterABackcrossWhereOnePlantHadAnAlleleThatNoStyleRefuses() {
    twoRecessives();
    alleles("S1/Sf", "S2/S3");
    assertThat(flat(next("--share", "Echeveria laui=3/4", "--seasons", "3")))
        .contains("season 3 each one kept selfed: raise 6 of each, 12.5 % (1/8) wanted")
        .contains(
            "by their S alleles 25 % (1/4) of such seedlings set seed with their own pollen:"
                + " pollinate up to 16 of each, sow of 4 that have set")
        .contains("may not carry what it takes, or sets no seed. These numbers come to 95 %");
  }

  /**
   * By hand: of S1S2 × S1S3 half are S1S3 as their pollen parent and refuse it; a hair fewer, since
   * one refused grain in a hundred comes through and leaves a few S1S1.
   */
  @Test
  void aBackcrossToAPollenParentWithOneAlleleOfTheSeedParentSetsOnHalf() {
    twoRecessives();
    alleles("S1/S2", "S1/S3");
    assertThat(flat(next("--share", "Echeveria laui=3/4", "--seasons", "3")))
        .contains(
            "a backcross: raise 62 of each, keep 20 pairs of each with edge green, wax bare, 50 %"
                + " (1/2) by their S alleles 50.5 % of such seedlings set seed so: pollinate up to"
                + " 11, sow of 2 that have set season 3 each one kept × its sib: raise 6 of each");
  }

  /** By hand: a seedling of S1S2 by S3S4 has one of its parent's alleles and one that is not. */
  @Test
  void aBackcrossToAParentThatSharesNoAlleleWithTheOtherAlwaysSets() {
    twoRecessives();
    alleles("S1/S2", "S3/S4");
    JsonNode seasons = plan("--share", "Echeveria laui=3/4", "--seasons", "3").get("seasons");
    assertThat(seasons.get(1).get("backcross").booleanValue()).isTrue();
    assertThat(seasons.get(1).get("setting").doubleValue()).isEqualTo(1);
    assertThat(seasons.get(0).get("spare").intValue()).isZero();
    assertThat(flat(next("--share", "Echeveria laui=3/4", "--seasons", "3")))
        .doesNotContain("a backcross: raise 2 by their")
        .contains(
            "keep " + (8 + seasons.get(1).get("spare").intValue()) + " pairs of each with edge")
        .containsPattern(
            "of such pairs set seed: pollinate up to \\d+ of each, sow of 8 that have");
  }

  /**
   * By hand: one in eight of S1S2 × S3S4 by S1S2 × S3S5 has the same two, S1S3 or S2S3. Of three
   * pairs none sets 1 time in 512; 511/512 · (1 − (15/16)ⁿ) is 0.95 from 48 on.
   */
  @Test
  void seedlingsOfTwoCrossesAreTakenTwoByTwoUntilTwoSet() {
    typed("start", "KB", "--grower", "Klara");
    typed("gene", "S", "S1", "S2", "S3", "S4", "S5", "--self-incompatible");
    String[] genotypes = {"AA bb cc dd", "aa BB cc dd", "aa bb CC dd", "aa bb cc DD"};
    String[] alleles = {"S1/S2", "S3/S4", "S1/S2", "S3/S5"};
    List<String> words = new ArrayList<>(List.of("next", "--show", "1"));
    for (String gene : List.of("a", "b", "c", "d")) {
      String big = gene.toUpperCase(Locale.ROOT);
      typed("trait", "t" + gene, "--states", "yes,no");
      typed("gene", big, big, gene);
      typed("model", "t" + gene, big + "_=yes", "*=no");
      words.addAll(List.of("--want", "t" + gene + "=yes"));
    }
    for (int i = 0; i < 4; i++) {
      typed("plant", "Echeveria laui", "--date", "2020-03-01");
      typed("genotype", "20-00" + (i + 1), genotypes[i]);
      typed("genotype", "20-00" + (i + 1), alleles[i]);
    }
    String told = flat(typed(words.toArray(String[]::new)));
    assertThat(told)
        .contains("(Echeveria laui): raise 3, keep 3, all are alike")
        .contains("the second cross: raise 3, keep 3, all are alike")
        .contains("season 2 one kept of the first cross × one of the second: raise 48, 6.3 %")
        .contains("by their S alleles 87.5 % (7/8) of such pairs set seed: pollinate up to 3, sow");
  }

  @Test
  void whereTheAllelesOfAParentAreNotKnownThePlanSaysSo() {
    twoRecessives();
    alleles("S1/S2");
    assertThat(flat(next())).contains("note " + UNKNOWN);
    JsonNode plan = plan();
    assertThat(plan.get("seasons").get(1).get("setting").isNull()).isTrue();
    assertThat(plan.get("notes").valueStream().map(JsonNode::stringValue)).contains(UNKNOWN);
    assertThat(flat(next("--from", "20-001", "--from", "20-002", "--seasons", "1")))
        .doesNotContain(UNKNOWN);
  }

  @Test
  void withNoWordOfSAllelesNothingIsSaidOfThem() {
    twoRecessives();
    assertThat(next()).doesNotContain("S alleles").doesNotContain("self-incompatible");
  }

  @Test
  void aTaxonRecordedAsSelfIncompatibleIsEnoughToSaySo() {
    twoRecessives();
    typed("taxon", "Echeveria laui", "--self-incompatible");
    assertThat(flat(next())).contains("note " + UNKNOWN);
    assertThat(flat(typed("next", "--want", "edge=green", "--from", "20-002")))
        .contains("20-002P (Echeveria laui) selfed: raise 1, all are wanted")
        .contains(
            "note 20-002P (Echeveria laui) is of nothing but taxa recorded as self-incompatible;"
                + " selfed it may set little or nothing.");
  }

  /** What is chosen by its looks is then not of each S allele as often as all are. */
  @Test
  void anSLocusBesideTheGenesIsNotReckonedWith() {
    twoRecessives();
    typed(
        "gene",
        "S",
        "S1",
        "S2",
        "S3",
        "S4",
        "--self-incompatible",
        "--next-to",
        "R",
        "--recombination",
        "10%");
    typed("genotype", "20-001", "S1/S2");
    typed("genotype", "20-002", "S3/S4");
    assertThat(flat(next()))
        .contains("The S locus S lies beside the genes chosen by, so it is not reckoned with that");
    assertThat(plan().get("seasons").get(1).get("setting").isNull()).isTrue();
  }

  @Test
  void allelesThatCannotBeTrueAreToldOnce() {
    twoRecessives();
    alleles("S1/S2", "S3/S4");
    typed("genotype", "20-002", "S1/S2");
    assertThat(flat(next()))
        .contains("Which plants set seed on which is not reckoned with")
        .doesNotContain(UNKNOWN);
  }

  @Test
  void linesStayWithinEightyLetters() {
    twoRecessives();
    alleles("S1/S2", "S3/S4");
    assertThat(Arrays.asList(next("--seasons", "3").split("\n", -1)))
        .allMatch(line -> line.length() <= 80);
  }
}
