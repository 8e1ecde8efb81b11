package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What is asked of a cross before it is made and after it came up. Inheritance is invented. */
class ExpectVerbsTest {

  @TempDir Path folder;
  private BenchStory bench;

  @BeforeEach
  void twoSpeciesThatDifferInTheirTips() {
    bench = new BenchStory(folder);
    bench.done("plant", "Echeveria laui", "--date", "2024-05");
    bench.done("plant", "Echeveria agavoides", "--date", "2024-05");
    bench.done("trait", "leaf tips", "--states", "red,plain");
    bench.done("gene", "tips", "T", "t");
    bench.done("model", "leaf tips", "--dominant", "tips");
    bench.done("profile", "Echeveria agavoides", "tips=T");
    bench.done("profile", "Echeveria laui", "tips=t");
    bench.done("cross", "24-001", "24-002", "--date", "2025-03-01");
    bench.done("number", "25-001", "2", "--date", "2025-09-01");
    bench.done("cross", "25-001-1", "--selfed", "--date", "2026-03-01");
  }

  private static void refuses(Outcome outcome, int status, String... parts) {
    assertThat(outcome.status()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    String said = outcome.err().replaceAll("\\s+", " ");
    for (String part : parts) {
      assertThat(said).contains(part);
    }
  }

  @Test
  void aSentenceComesFirstThenTheTableThenWhatIsNext() {
    String said = bench.done("odds", "26-001");
    assertThat(said).startsWith("About 3 in 4 will be red; 1 in 4 plain.");
    assertThat(said).contains("25-001R-1 (Tt) × 25-001R-1 (Tt)").contains("3:1");
    assertThat(said.replaceAll("\\s+", " "))
        .contains("Next: how many to sow for some: filial odds")
        .doesNotContain("Each parent's gametes");
    assertThat(bench.done("odds", "26-001", "--method")).contains("Each parent's gametes");
  }

  @Test
  void threeOfAQuarterNeedThirtyFiveSeedsOfWhichEighteenInTwentyFiveWereCountedToComeUp() {
    String said =
        bench.done(
            "odds",
            "26-001",
            "--want",
            "leaf tips=plain",
            "--at-least",
            "3",
            "--germination",
            "18/25");
    assertThat(said.replaceAll("\\s+", " "))
        .startsWith("About 1 in 4 will be plain; sow 35 seeds to be 95 % sure of at least 3.")
        .contains("Next: harvest its seed first: filial harvest 26-001");
    // The same without a cross: Sedcole's 23, and 33 through a rate that is taken as certain.
    assertThat(bench.done("howmany", "1/4", "--at-least", "3")).contains("raise 23 seedlings");
    assertThat(bench.done("howmany", "1/4", "--at-least", "3", "--germination", "72%"))
        .contains("sow 33 seeds");
  }

  @Test
  void theCrossesOwnSowingsTellItsGerminationWithoutBeingAsked() {
    bench.done("harvest", "26-001", "60", "--date", "2026-03-02");
    bench.done("sow", "26-001", "25", "--date", "2026-03-02");
    bench.done("count", "26-001 S1", "--up", "18", "--date", "2026-03-20");
    JsonNode hope =
        bench
            .json("odds", "26-001", "--want", "leaf tips=plain", "--at-least", "3")
            .at("/scenarios/0/hope");
    assertThat(hope.at("/seeds").intValue()).isEqualTo(35);
    assertThat(hope.at("/rates/0/from").stringValue()).contains("own sowings of 26-001");
    assertThat(bench.done("howmany", "1/4", "--at-least", "3", "--germination", "recorded"))
        .contains("sow 35 seeds");
    assertThat(bench.done("odds", "26-001", "--want", "leaf tips=plain", "--selfings", "2"))
        .contains("raise");
  }

  @Test
  void whereSomeWerePrickedOutNothingTellsHowManyLiveAndThatIsSaid() {
    bench.done("harvest", "26-001", "60", "--date", "2026-03-02");
    bench.done("sow", "26-001", "25", "--date", "2026-03-02");
    bench.done("count", "26-001 S1", "--up", "18", "--alive", "15", "--date", "2026-03-20");
    assertThat(bench.done("howmany", "1/4", "--survival", "recorded")).contains("15 of 18");

    bench.done("number", "26-001 S1", "2", "--date", "2026-03-21");
    refuses(bench.type("howmany", "1/4", "--survival", "recorded"), 1, "none were pricked out");
    assertThat(bench.done("howmany", "1/4", "--germination", "recorded")).contains("18 of 25");
  }

  /**
   * By hand: LL dies. Of Ll selfed ⅔ of those that live are Ll and ⅓ ll; of the seedlings of these,
   * one each, 1/6 are LL and die, ⅓ are Ll and ½ ll. Of five raised all lack ll in 1/32, of four in
   * 1/16; of eight all lack Ll in (⅔)⁸ = 256/6561 = 0.039, of seven in 0.059.
   */
  @Test
  void seedlingsThatDieAfterASelfingAreRaisedToo() {
    bench.done("gene", "gl", "L", "l");
    bench.done("trait", "tl", "--states", "Ldom,lrec");
    bench.done("model", "tl", "--dominant", "gl", "--lethal", "LL");
    assertThat(selfedOnce("tl=lrec")).contains("3 in 5").contains("raise 5 seedlings");
    assertThat(selfedOnce("tl=Ldom")).contains("2 in 5").contains("raise 8 seedlings");
    assertThat(selfedOnce("tl=Ldom")).containsIgnoringCase("1 in 6 of the seedlings will die");
  }

  /**
   * By hand: of LL × Ll, LL dying, half live and are Ll. Of five raised all die in 1/32, of four in
   * 1/16.
   */
  @Test
  void whyMoreAreRaisedThanTheChanceAsksForIsSaidWithTheNumber() {
    bench.done("gene", "gl", "L", "l");
    bench.done("trait", "tl", "--states", "Ldom,lrec");
    bench.done("model", "tl", "--dominant", "gl", "--lethal", "LL");
    String said =
        bench
            .done("odds", "--seed-genes", "LL", "--pollen-genes", "Ll", "--want", "tl=Ldom")
            .replaceAll("\\s+", " ");
    assertThat(said)
        .startsWith(
            "All of those that live will be Ldom, and 1 in 2 of the seedlings will die before they"
                + " can be looked at; raise 5 seedlings to be 95 % sure of at least one.")
        .containsOnlyOnce("will die");
    assertThat(bench.done("odds", "--seed-genes", "Ll", "--selfed", "--trait", "tl"))
        .startsWith("About 2 in 3 will be Ldom")
        .contains("About 1 in 4 of the seedlings will die");
  }

  private String selfedOnce(String want) {
    return bench
        .done("odds", "--seed-genes", "Ll", "--selfed", "--want", want, "--selfings", "1")
        .replaceAll("\\s+", " ");
  }

  @Test
  void genesTypedInNeedNoPlants() {
    JsonNode classes =
        bench.json("odds", "--seed-genes", "Tt", "--pollen-genes", "tt").at("/scenarios/0/classes");
    assertThat(classes.at("/0/states/0").stringValue()).isEqualTo("red");
    assertThat(classes.at("/0/chance/exact").stringValue()).isEqualTo("1/2");
    assertThat(bench.done("odds", "--seed-genes", "Tt", "--selfed", "--grid"))
        .contains("Eggs down the side");
  }

  @Test
  void aTallyIsToldWhetherItFits() {
    bench.done("harvest", "26-001", "60", "--date", "2026-03-02");
    bench.done("sow", "26-001", "40", "--date", "2026-03-02");
    String tallied =
        bench.done("tally", "26-001 S1", "leaf tips", "red=31", "plain=9", "--date", "2026-03-03");
    assertThat(tallied).contains("does it fit? filial fit 26-001");
    String said = bench.done("fit", "26-001", "--trait", "leaf tips", "--method");
    assertThat(said.replaceAll("\\s+", " "))
        .contains("the counts fit 3:1. Families that fit no better come up in 72 of 100")
        .contains("chi-square 0.13, 1 degree of freedom; p 0.72; chosen because five or more");
    JsonNode rows = bench.json("fit", "26-001", "--trait", "leaf tips").at("/families/0/rows");
    assertThat(rows.at("/1/expected").doubleValue()).isEqualTo(10);
  }

  @Test
  void countsThatSpeakAgainstARatioSaySo() {
    String said =
        bench
            .done("fit", "--counts", "red=30,plain=30", "--ratio", "3:1", "--or-ratio", "9:7")
            .replaceAll("\\s+", " ");
    assertThat(said).contains("do not fit 3:1").contains("9:7 fits best");
    assertThat(bench.done("fit", "--counts", "a=9,b=1,c=2,d=0", "--ratio", "9:3:3:1", "--method"))
        .contains("exact");
  }

  /**
   * SciPy 1.17.1: of 40 with 3/4, binomial probabilities no larger than that of 31 sum to 0.8556,
   * with 9/16 to 0.0064; by G, {@code power_divergence(..., lambda_="log-likelihood")}, the sums of
   * two families have 4.97 and the families differ by 6.67.
   */
  @Test
  void theTestThatIsAskedForIsUsedThroughout() {
    assertThat(fitted("--counts", "a=31,b=9", "--or-ratio", "9:7", "--test", "exact"))
        .contains("in 86 of 100")
        .containsPattern("3:1 0[.0-9]+ 0\\.86")
        .containsPattern("9:7 0[.0-9]+ 0\\.0064");
    assertThat(fitted("--counts", "a=31,b=9", "--counts", "a=20,b=20", "--test", "g"))
        .contains("pooled G 4.97, 1 degree of freedom; p 0.026")
        .contains("heterogeneity G 6.67, 1 degree of freedom")
        .doesNotContain("chi-square");
    assertThat(fitted("--counts", "a=31,b=9", "--counts", "a=20,b=20", "--test", "exact"))
        .contains("pooled exact")
        .contains("Exact probabilities of families do not add up");
  }

  private String fitted(String... words) {
    List<String> all = new ArrayList<>(List.of("fit", "--ratio", "3:1", "--method"));
    all.addAll(List.of(words));
    return bench.done(all.toArray(String[]::new)).replaceAll("\\s+", " ");
  }

  /** What the parent carries is what is to be found out, and cannot be recorded first. */
  @Test
  void aFamilyOfAnUncertainParentIsTestedAgainstARatioThatIsStated() {
    bench.done("plant", "Echeveria elegans", "--date", "2024-05");
    bench.done("cross", "24-003", "--selfed", "--date", "2025-05");
    bench.done("harvest", "25-002", "60", "--date", "2025-08");
    bench.done("sow", "25-002", "40", "--date", "2025-08");
    bench.done("tally", "25-002 S1", "leaf tips", "red=31", "plain=9", "--date", "2026-01");
    Outcome refused = bench.type("fit", "25-002", "--trait", "leaf tips");
    refuses(
        refused,
        1,
        "should segregate into does not follow from the genes of its parents: what 24-003Y carries",
        "State the ratio to be tested, as --ratio 3:1, and what else it may be, as --or-ratio 1:1",
        "filial carries 24-003Y");
    assertThat(refused.err()).doesNotContain("--seed-genes").doesNotContain("filial genotype");
    assertThat(bench.done("fit", "25-002", "--trait", "leaf tips", "--ratio", "3:1"))
        .contains("fit 3:1");
  }

  @Test
  void fishersMaizeIsLinked() {
    // Fisher, Statistical Methods for Research Workers: recombination 0.189.
    assertThat(bench.done("linkage", "repulsion", "1997", "906", "904", "32"))
        .contains("18.9 % of the gametes are recombined");
    assertThat(bench.done("linkage", "coupling", "3", "1", "1", "1")).contains("not shown");
  }

  /** Stam and Zeven 1981, Euphytica 30:227-238, abstract, from memory. */
  @Test
  void sixBackcrossesLeaveThirtyTwoCentimorgansOfTheDonor() {
    String said = bench.done("attached", "BC6", "--left", "50", "--right", "50", "--at-most", "20");
    assertThat(said.replaceAll("\\s+", " "))
        .startsWith(
            "After 6 backcrosses, a piece of about 32 cM of the donor still hangs on around the"
                + " gene, likely between 5.9 and 68 cM. To a piece of at most 20 cM it takes 10"
                + " backcrosses on the average, and 20 backcrosses to be 90 % sure of it.")
        .contains("kept for the gene alone");
    JsonNode json = bench.json("attached", "6", "--left", "50", "--right", "50");
    assertThat(json.at("/pieces/5/mean").doubleValue()).isBetween(31.5, 32.5);
    assertThat(json.at("/plant").isNull()).isTrue();
    assertThat(
            bench.done(
                "attached",
                "1",
                "--left",
                "0",
                "--right",
                "40",
                "--at-most",
                "0.01",
                "--chance",
                "50%"))
        .startsWith("After 1 backcross, a piece")
        .contains("more than 1000 backcrosses")
        .contains("50 % between");
  }

  @Test
  void aBackcrossedPlantSaysItselfHowOften() {
    bench.type("cross", "25-001-1", "24-001", "--date", "2026-03-02");
    String said = bench.done("attached", "26-002").replaceAll("\\s+", " ");
    assertThat(said)
        .startsWith("In 26-002N, after 1 backcross, a piece of about 79 cM")
        .contains("BC1 to Echeveria laui")
        .contains("11 chromosomes of 100 cM, which is an assumption");
    assertThat(bench.done("attached", "25-001-1").replaceAll("\\s+", " "))
        .startsWith(
            "In 25-001R-1, an F1, the whole chromosome that the gene came on is still the donor's:"
                + " 100 cM.");
    bench.done("profile", "Echeveria", "--map", "27x80");
    assertThat(bench.done("attached", "26-002")).contains("80 cM, the gene 40 cM from one end");

    refuses(bench.type("attached", "26-001"), 1, "is F2", "say through how many");
    refuses(bench.type("attached", "6", "--left", "50"), 2, "go together", "Give --right too");
    refuses(bench.type("attached", "1001"), 1, "0, for the F1, to 1000 are reckoned with");
    refuses(bench.type("attached", "6", "--left", "-1", "--right", "5"), 1, "state 0 to 10000");
    refuses(bench.type("attached", "6", "--chance", "90"), 2, "--chance:", "no part of a whole");
    refuses(bench.type("attached", "6", "--chance", "1"), 1, "below 1, as 0.9");
    refuses(bench.type("attached", "6", "--at-most", "0"), 1, "state more than 0");
  }

  @Test
  void variegationFollowsTheSecondLayer() {
    assertThat(bench.done("forecast", "--layers", "GWG")).contains("All seedlings will be white");
    assertThat(bench.done("forecast", "--layers", "WGW")).contains("All seedlings will be green");
    assertThat(bench.done("forecast", "--layers", "gmg")).contains("no ratio is expected");
  }

  @Test
  void halfThePollenWorksWhereOneAlleleIsInCommon() {
    bench.done("gene", "S", "S1", "S2", "S3", "--self-incompatible");
    bench.done("genotype", "24-001", "S1/S2");
    bench.done("genotype", "24-002", "S1/S3");
    assertThat(bench.done("compatible", "24-001", "24-002")).contains("half the pollen works");
  }

  @Test
  void whatWasDeclaredOfGenesIsListed() {
    assertThat(bench.done("genes"))
        .contains("T, t")
        .contains("leaf tips goes by the gene tips: T_ red; tt plain.")
        .contains("Echeveria laui");
  }

  @Test
  void whatCannotBeReckonedSaysWhyAndWhatToTypeInstead() {
    refuses(bench.type("odds"), 2, "which cross?");
    refuses(bench.type("odds", "24-001"), 2, "with whose pollen?");
    refuses(bench.type("odds", "26-001", "24-001"), 2, "is a cross and comes of its own parents");
    refuses(bench.type("odds", "26-001", "--want", "leaf tips=blue"), 1, "has no state \"blue\"");
    refuses(bench.type("odds", "26-001", "--at-least", "3"), 2, "how many of what?");
    bench.done("plant", "Echeveria elegans", "--date", "2024-05");
    refuses(
        bench.type("odds", "24-003", "24-001"),
        1,
        "what 24-003Y carries (tips) is not known: it may be TT or Tt or tt.",
        "If you know it, record it: filial genotype 24-003Y ALLELES.",
        "--seed-genes or --pollen-genes");
    refuses(
        bench.type("odds", "--seed-genes", "TTt", "--pollen-genes", "tt"),
        1,
        "TTt is triploid",
        "Say how they form with --eggs-form");
    refuses(bench.type("odds", "26-001", "--trait", "spines"), 1, "no trait is called \"spines\"");
    refuses(
        bench.type("odds", "--seed-genes", "Tx", "--pollen-genes", "tt"), 1, "not made of alleles");
    refuses(
        bench.type("odds", "--seed-genes", "TTtt", "--selfed", "--eggs-form", "tetrasomic:1/5"),
        2,
        "--eggs-form:",
        "between 0 and 1/6");
    refuses(bench.type("odds", "26-001", "--selfings", "1000"), 1, "ask for 0 to 200");
    refuses(bench.type("odds", "26-001", "--keep-wanted"), 2, "Add --want TRAIT=STATE");
    refuses(bench.type("howmany", "1.5"), 2, "CHANCE:", "no part of a whole");
    refuses(bench.type("howmany", "0"), 2, "no chance");
    refuses(bench.type("howmany", "1/4", "--at-least", "0"), 1, "ask for 1 or more");
    refuses(bench.type("howmany", "1/4", "--sure", "100%"), 2, "--sure:");
    refuses(bench.type("howmany", "1/4", "--germination", "26/25"), 2, "--germination:");
    refuses(bench.type("howmany", "1/4", "--germination", "recorded"), 1, "no sowing");
    refuses(bench.type("fit"), 2, "which family?");
    refuses(bench.type("fit", "26-001"), 2, "which trait?");
    refuses(bench.type("fit", "26-001", "--trait", "leaf tips"), 1, "nobody counted leaf tips");
    refuses(bench.type("fit", "--counts", "red=3.5,plain=1", "--ratio", "3:1"), 2, "--counts:");
    refuses(bench.type("fit", "--counts", "red=-3,plain=1", "--ratio", "3:1"), 2, "0 or more");
    refuses(bench.type("fit", "--counts", "red=0,plain=0", "--ratio", "3:1"), 1, "of none");
    refuses(bench.type("fit", "--counts", "red=3,plain=1", "--ratio", "3:1:1"), 1, "3 terms");
    refuses(bench.type("fit", "--counts", "red=3,plain=1"), 2, "what is expected?");
    refuses(bench.type("linkage", "repulsion", "1", "2", "3"), 2, "Give four");
    refuses(bench.type("linkage", "coupling", "0", "0", "0", "0"), 1, "a family of none");
    refuses(bench.type("forecast", "24-001", "24-002"), 2, "a forecast of what?");
    refuses(bench.type("forecast", "--layers", "GXG"), 2, "--layers:");
    refuses(
        bench.type("forecast", "24-001", "24-002", "--trait", "leaf tips"),
        1,
        "nothing to forecast from");
    refuses(bench.type("compatible", "24-001"), 1, "no S locus was declared");
  }
}
