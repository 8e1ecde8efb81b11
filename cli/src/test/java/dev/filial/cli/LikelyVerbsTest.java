package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What plants carry, who pollinated, what an unlabelled plant is, and which record is wrong. */
class LikelyVerbsTest {

  private static final int REFUSED = 1;
  private static final int USAGE = 2;

  /** Of four seedlings two are plain: tt with ¼ (1/2)⁴ against Tt with ½ (1/4)²(3/4)². */
  private static final double TWO_OF_FOUR = 0.25 / 16 / (0.25 / 16 + 0.5 * 9 / 256);

  @TempDir Path folder;

  private DemoStory demo;

  @BeforeEach
  void theDemoBench() throws IOException {
    demo = new DemoStory(folder);
  }

  /** Two in three dominants of an F2 are carriers: Mendel 1866. */
  @Test
  void aRedSecondGenerationIsACarrierTwiceInThree() {
    assertThat(demo.told("carries", "24-001-3", "--trait", "tips"))
        .startsWith("24-001W-3 most likely carries Tt: 66.7 %")
        .contains("breeds true       33.3 %")
        .contains("look at 4 seedlings of a cross with tt");
    JsonNode told = demo.json("carries", "24-001-3", "--trait", "tips").get("genes").get(0);
    JsonNode likeliest = told.get("ways").get(0).get("genotypes").get(0);
    assertThat(likeliest.get("genes").stringValue()).isEqualTo("Tt");
    assertThat(likeliest.get("chance").doubleValue()).isEqualTo(2.0 / 3, within(1e-12));
  }

  @Test
  void theTallyOfACrossProvesTheCarrierAndIsNamed() {
    assertThat(demo.told("carries", "24-001-1", "--trait", "tips", "--why"))
        .startsWith("24-001W-1 certainly carries Tt")
        .containsPattern("202  2026-06-10  26-005T P1, tips: 10 red, 9 plain +66\\.7 %");
    demo.told("strike", "202", "--why", "counted in the wrong pot");
    assertThat(demo.told("carries", "24-001-1", "--trait", "tips"))
        .startsWith("24-001W-1 most likely carries Tt: 66.7 %");
  }

  /** A register of one cross, Tt × a plant of a taxon in which half of the alleles are T. */
  private void oneCross() {
    start();
    typed("profile", "Echeveria laui", "tips=T:1/2,t:1/2");
    typed("plant", "Echeveria agavoides", "--date", "2018-01-01");
    typed("genotype", "18-001", "Tt");
    typed("plant", "Echeveria laui", "--date", "2018-01-01");
    typed("cross", "18-001", "18-002", "--date", "2019-01-01");
    typed("harvest", "19-001", "10", "--date", "2019-06-01");
    typed("sow", "19-001", "10", "--pots", "1", "--date", "2019-06-02");
    typed("count", "19-001 P1", "--up", "4", "--date", "2019-07-01");
  }

  private void twoPlainOnes() {
    typed("observe", "19-001-1", "tips", "plain", "--date", "2020-02-01");
    typed("observe", "19-001-2", "tips", "plain", "--date", "2020-02-01");
  }

  private void start() {
    typed("start", "KB", "--grower", "Klara");
    typed("trait", "tips", "--states", "red,plain");
    typed("gene", "tips", "T", "t");
    typed("model", "tips", "T_=red", "*=plain");
  }

  private String typed(String... words) {
    Outcome outcome = inOwn(words);
    assertThat(outcome.status()).as("%s: %s", List.of(words), outcome.err()).isZero();
    return outcome.out();
  }

  private Outcome inOwn(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--register", "own.register"));
    return demo.type(all.toArray(String[]::new));
  }

  private JsonNode asked(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add("--json");
    return JsonMapper.shared().readTree(typed(all.toArray(String[]::new)));
  }

  private double chanceOf(String genes, String plant) {
    JsonNode told = asked("carries", plant, "--trait", "tips").get("genes").get(0);
    for (JsonNode one : told.get("ways").get(0).get("genotypes")) {
      if (one.get("genes").stringValue().equals(genes)) {
        return one.get("chance").doubleValue();
      }
    }
    return 0;
  }

  @Test
  void aSeedlingNumberedAfterTheTallyAndSeenByItselfIsTakenOutOfIt() {
    oneCross();
    typed("number", "19-001 P1", "2", "--date", "2020-04-01");
    twoPlainOnes();
    typed("tally", "19-001 P1", "tips", "plain=2", "red=2", "--date", "2020-03-01");

    assertThat(chanceOf("tt", "18-002")).isEqualTo(TWO_OF_FOUR, within(1e-12));
  }

  @Test
  void aSeedlingNumberedBeforeTheTallyIsOneMore() {
    oneCross();
    typed("number", "19-001 P1", "2", "--date", "2020-01-01");
    twoPlainOnes();
    typed("tally", "19-001 P1", "tips", "plain=2", "red=2", "--date", "2020-03-01");

    // Four plain of six: of Tt ½ · (¼)⁴ · (¾)², of tt ¼ · (½)⁶.
    assertThat(chanceOf("tt", "18-002")).isEqualTo(32 / 41.0, within(1e-12));
  }

  @Test
  void pickedSeedlingsTellNothingOfTheirParentsUnlessTheirPotWasTallied() {
    oneCross();
    typed("number", "19-001 P1", "2", "--picked-for", "tips", "--date", "2020-01-01");
    twoPlainOnes();
    // A TT parent is ruled out; between Tt and tt, ½ and ¼, nothing is told.
    assertThat(chanceOf("tt", "18-002")).isEqualTo(1.0 / 3, within(1e-12));

    typed("tally", "19-001 P1", "tips", "plain=2", "red=2", "--date", "2019-12-01");
    assertThat(chanceOf("tt", "18-002")).isEqualTo(TWO_OF_FOUR, within(1e-12));
  }

  @Test
  void aContradictionInPlantsThatHaveNothingToDoWithItRefusesNothing() {
    oneCross();
    typed("profile", "Echeveria lilacina", "tips=t");
    typed("plant", "Echeveria lilacina", "--date", "2018-01-01");
    typed("observe", "18-003", "tips", "red", "--date", "2020-01-01");
    assertThat(inOwn("carries", "18-003", "--trait", "tips").status()).isEqualTo(REFUSED);
    assertThat(chanceOf("Tt", "18-002")).isEqualTo(0.5, within(1e-12));
    // That strangers are said to be of the same kind does not make one entry the wrong one.
    for (String[] strangers : new String[][] {{}, {"--strangers", "Echeveria lilacina"}}) {
      List<String> words = new ArrayList<>(List.of("mistakes", "--trait", "tips"));
      words.addAll(List.of(strangers));
      JsonNode found = asked(words.toArray(String[]::new)).get(0).get("contradictions").get(0);
      assertThat(found.get("entries")).hasSize(3);
      assertThat(found.get("mends")).hasSize(3);
    }
  }

  /** Selfed, a tetraploid F1 of TTTT and tttt is plain once in 36, a diploid one once in four. */
  @Test
  void whatATetraploidIsIsJudgedAsOne() {
    start();
    typed("profile", "Echeveria laui", "tips=t");
    typed("profile", "Echeveria agavoides", "tips=T");
    typed("plant", "Echeveria", "--ploidy", "4", "--date", "2018-01-01");
    typed("observe", "18-001", "tips", "red", "--date", "2018-02-01");
    typed("cross", "18-001", "--selfed", "--date", "2019-01-01");
    typed("number", "19-001", "1", "--date", "2020-01-01");
    typed("observe", "19-001-1", "tips", "plain", "--date", "2020-02-01");
    typed("offset", "18-001", "--date", "2020-01-01");

    JsonNode made =
        asked("makeup", "18-001", "Echeveria laui", "Echeveria agavoides").get("makeups");
    double f1 = 0;
    double sum = 0;
    for (JsonNode one : made) {
      sum += one.get("after").doubleValue();
      if (one.get("makeup").stringValue().startsWith("F1")) {
        f1 = one.get("after").doubleValue();
      }
      if (one.get("makeup").stringValue().equals("Echeveria agavoides")) {
        assertThat(one.get("after").doubleValue()).isZero();
      }
    }
    assertThat(sum).isEqualTo(1, within(1e-12));
    // An F1 of four sets is TTtt: one in 36 of its seedlings is plain. Its gametes are TT, Tt, tt
    // by
    // 1:4:1; with tt they give TTtt, Tttt and plain ones, with TT of the red species only a sixth
    // can have a plain seedling.
    double toPlain = 1.0 / 6 / 36 + 4.0 / 6 / 4;
    double toRed = 1.0 / 6 / 36;
    double second = secondGeneration();
    assertThat(f1).isEqualTo(1.0 / 36 / (1.0 / 36 + toPlain + toRed + second), within(1e-12));
    // Its offset is the same plant.
    assertThat(asked("makeup", "20-001", "Echeveria laui", "Echeveria agavoides").get("makeups"))
        .isEqualTo(made);
  }

  /** A red F2 of four sets and a plain seedling of its own: by the gametes 1:4:1 of TTtt. */
  private static double secondGeneration() {
    double[] gametes = {1.0 / 6, 4.0 / 6, 1.0 / 6};
    double[] plainSelfed = {1, 1.0 / 4, 1.0 / 36, 0, 0};
    double sum = 0;
    for (int egg = 0; egg < 3; egg++) {
      for (int grain = 0; grain < 3; grain++) {
        int dominant = egg + grain;
        sum += dominant == 0 ? 0 : gametes[egg] * gametes[grain] * plainSelfed[dominant];
      }
    }
    return sum;
  }

  @Test
  void aContradictionInOneTraitDoesNotTakeTheOthersWithIt() {
    assertThat(demo.told("carries", "25-004"))
        .contains("on tips.")
        .contains("Of down: what is recorded cannot all be true");
  }

  @Test
  void moreSeedlingsMakeItSurer() {
    JsonNode usual = settled("95%");
    JsonNode surer = settled("99.9%");
    assertThat(surer.get("seedlings").intValue()).isGreaterThan(usual.get("seedlings").intValue());
    // (2/3)(1/2)^n against 1/3, so that the wrong one is named with (2/3)(1/2)^n: n is 4, then 10.
    assertThat(usual.get("seedlings").intValue()).isEqualTo(4);
    assertThat(surer.get("seedlings").intValue()).isEqualTo(10);
  }

  private JsonNode settled(String sure) {
    return demo.json("carries", "24-001-3", "--trait", "tips", "--sure", sure)
        .get("genes")
        .get(0)
        .get("ways")
        .get(0)
        .get("traits")
        .get(0)
        .get("test");
  }

  /** A dominant seedling of a selfed AAaa, of a tetraploid whose gametes are as stated. */
  private void aTetraploidSeedling(String doubleReduction) {
    typed("start", "KB", "--grower", "Klara");
    typed("trait", "ta", "--states", "dom,rec");
    typed("gene", "ga", "A", "a");
    typed("model", "ta", "--dominant", "ga");
    typed("profile", "Aus tetra", "--pairing", "tetrasomic", "--double-reduction", doubleReduction);
    typed("plant", "Aus tetra", "--ploidy", "4", "--date", "2020");
    typed("genotype", "20-001", "AAaa");
    typed("cross", "20-001", "--selfed", "--date", "2020-03");
    typed("number", "20-002", "2", "--date", "2021");
    typed("observe", "20-002-1", "ta", "dom", "--date", "2022");
  }

  private JsonNode tested(String sure) {
    return asked("carries", "20-002-1", "--trait", "ta", "--sure", sure)
        .get("genes")
        .get(0)
        .get("ways")
        .get(0)
        .get("traits")
        .get(0)
        .get("test");
  }

  /**
   * With double reduction 1/7 gametes of AAaa are AA, Aa, aa as 3:8:3 of 14, so that of 187
   * dominant seedlings 9 are AAAA, 48 AAAa, 82 AAaa and 48 Aaaa; by aaaa these throw recessives
   * with 0, 1/28, 3/14 and 15/28. SciPy 1.17.1, {@code core/src/test/reference/test_crosses.py}:
   *
   * <pre>
   * stated 1/7     0.80  15  0.90  33  0.95  55  0.97  67  0.99  95
   * </pre>
   */
  @Test
  void aTestCrossReckonsWithTheDoubleReductionThatIsStated() {
    aTetraploidSeedling("1/7");
    assertThat(typed("carries", "20-002-1", "--trait", "ta"))
        .contains("AAaa   43.9 %")
        .contains("look at 55 seedlings of a cross with aaaa: that makes it 95 %")
        .doesNotContain("cannot tell");
    List<Integer> needed = new ArrayList<>();
    for (String sure : List.of("80%", "90%", "97%", "99%")) {
      needed.add(tested(sure).get("seedlings").intValue());
    }
    assertThat(needed).containsExactly(15, 33, 67, 95);
  }

  /**
   * Without double reduction neither AAAA nor AAAa ever throws a recessive. Of 35 dominant
   * seedlings of a selfed AAaa 1 is AAAA, 8 are AAAa, 18 AAaa and 8 Aaaa: whoever calls what throws
   * none AAAa is wrong once in 35, however many seedlings there were. SciPy 1.17.1, {@code
   * core/src/test/reference/test_crosses.py}:
   *
   * <pre>
   * none           0.80  10  0.90  16  0.95  28  0.97  60  0.99   -
   * none, parted   0.80   9  0.90  14  0.95  19  0.97  24  0.99  36
   * </pre>
   */
  @Test
  void aTestCrossSaysWhichGenotypesItCannotTellApart() {
    aTetraploidSeedling("0");
    assertThat(onOneLine(typed("carries", "20-002-1", "--trait", "ta")))
        .contains(
            "look at 28 seedlings of a cross with aaaa: that makes it 95 % sure on the average; it"
                + " cannot tell AAAa and AAAA apart, and names the right one in 97.1 % at most");
    assertThat(onOneLine(typed("carries", "20-002-1", "--trait", "ta", "--sure", "99%")))
        .contains(
            "no number of seedlings of a cross with aaaa makes it 99 % sure: it cannot tell AAAa"
                + " and AAAA apart, and names the right one in 97.1 % at most; all else it tells"
                + " after 36 seedlings, 99 % sure");
    JsonNode test = tested("99%");
    assertThat(test.get("seedlings").isNull()).isTrue();
    assertThat(test.get("atMost").doubleValue()).isEqualTo(34 / 35.0, within(1e-12));
    assertThat(test.get("parting").intValue()).isEqualTo(36);
    assertThat(test.get("alike").get(0).get(1).stringValue()).isEqualTo("AAAA");
    assertThat(tested("97%").get("seedlings").intValue()).isEqualTo(60);
  }

  private static String onOneLine(String told) {
    return told.replaceAll("\\s+", " ");
  }

  @Test
  void aCrossIsWeighedOverAllItsParentsMayBe() {
    assertThat(demo.told("carries", "24-001-3", "24-001-2", "--trait", "tips"))
        .containsPattern("red +66\\.7 %")
        .containsPattern("Tt +tt +66\\.7 %");
    assertThat(demo.told("carries", "24-001-3", "24-001-3", "--trait", "tips"))
        .startsWith("A seedling of 24-001W-3 selfed will show, of tips:")
        .containsPattern("plain +16\\.7 %");
  }

  @Test
  void theBeeIsMostLikelyTheOneWhosePollenFits() {
    JsonNode bees = demo.json("pollinator", "24-006", "--trait", "tips").get("candidates");
    assertThat(bees.get(0).get("who").stringValue()).isEqualTo("22-004K");
    assertThat(bees.get(0).get("after").doubleValue()).isGreaterThan(0.6);
    assertThat(bees.get(2).get("who").stringValue()).isEqualTo("22-003J");
    assertThat(bees.get(2).get("after").doubleValue()).isZero();
    double sum = 0;
    for (JsonNode one : bees) {
      sum += one.get("after").doubleValue();
    }
    assertThat(sum).isEqualTo(1, within(1e-12));
    assertThat(
            demo.told(
                "pollinator", "24-006", "--trait", "tips", "--strangers", "Echeveria agavoides"))
        .startsWith("24-006D certainly came of 22-004K");
  }

  @Test
  void whatSisterSeedsShowDoesNotTellWhoPollinatedOneMore() {
    assertThat(demo.told("pollinator", "24-006", "--trait", "tips", "--seed-by-seed"))
        .startsWith(
            """
            What was seen does not tell who it was; by what was thought beforehand, 24-006D
            perhaps came of 22-003J: 50 %.
            """)
        .doesNotContain("if one plant pollinated it all");
  }

  @Test
  void theContradictionIsPinnedDownToThePollen() {
    String told = demo.told("mistakes", "--trait", "down");
    assertThat(told)
        .startsWith("Of down these 4 entries cannot all be true, and no fewer contradict each")
        .contains("  117  2025-03-01  25-004W: 22-010T-1 × 22-010T-2")
        .containsPattern("117  the pollen of 25-004W was another plant's.* 6\\d\\.\\d %")
        .endsWith("Next: filial history 117\n");
    for (JsonNode mend :
        demo.json("mistakes", "--trait", "down").get(0).get("contradictions").get(0).get("mends")) {
      assertThat(mend.get("entry").intValue()).isEqualTo(117); // whatever happened, it was there
    }
    assertThat(demo.refused(REFUSED, "carries", "25-004", "--trait", "down"))
        .contains("cannot all be true")
        .contains("filial mistakes");
    assertThat(demo.told("carries", "25-004", "--trait", "down", "--misread", "5%"))
        .startsWith("25-004W certainly carries dd"); // what the species are is not doubted
  }

  @Test
  void whatIsHardlyLikelyIsListedWhereNothingContradicts() {
    assertThat(demo.told("mistakes", "--trait", "tips"))
        .startsWith("Of tips nothing contradicts itself");
    // One plain among a hundred red of a backcross where half should be plain.
    demo.told("tally", "24-007 P1", "tips", "red=26", "plain=1", "--date", "2026-06-14");
    assertThat(demo.told("mistakes", "--trait", "tips"))
        .contains("Possible, but with a chance below 1 %")
        .contains("24-007E P1, tips: 26 red, 1 plain");
  }

  @Test
  void redTipsRuleOutLauiAndLittleElse() {
    JsonNode made =
        demo.json("makeup", "26-013-7", "Echeveria laui", "Echeveria agavoides", "--trait", "tips")
            .get("makeups");
    // Red of laui 0, agavoides 1, F1 1, F2 3/4, BC1 to laui 1/2, BC1 to agavoides 1: in all 17/4.
    assertThat(made.get(0).get("after").doubleValue()).isEqualTo(4.0 / 17, within(1e-12));
    assertThat(made.get(3).get("after").doubleValue()).isEqualTo(3.0 / 17, within(1e-12));
    assertThat(made.get(5).get("makeup").stringValue()).isEqualTo("Echeveria laui");
    assertThat(made.get(5).get("after").doubleValue()).isZero();
    assertThat(
            demo.told(
                "makeup",
                "26-013-7",
                "Echeveria laui",
                "Echeveria agavoides",
                "--trait",
                "tips",
                "--why"))
        .containsPattern("197  2026-06-06  26-013E-7: tips red +16\\.7 %");
  }

  @Test
  void whatCannotBeAskedSaysWhy() {
    assertThat(demo.refused(REFUSED, "carries", "24-001-3", "--trait", "farina"))
        .contains("nobody said how farina is inherited");
    assertThat(demo.refused(REFUSED, "carries", "24-001-3", "--trait", "nonsense"))
        .contains("nonsense");
    assertThat(demo.refused(REFUSED, "pollinator", "24-007", "--trait", "tips"))
        .contains("recorded to have come about in one way");
    assertThat(demo.refused(REFUSED, "makeup", "24-009-1", "Echeveria laui", "Echeveria agavoides"))
        .contains("nothing was seen of 24-009J-1");
    assertThat(demo.refused(REFUSED, "makeup", "26-013-7", "Echeveria laui", "--trait", "tips"))
        .contains("name two taxa or more");
    assertThat(demo.refused(REFUSED, "makeup", "26-013", "Echeveria laui", "Echeveria agavoides"))
        .contains("name a single plant");
    assertThat(demo.refused(USAGE, "carries", "24-001-1", "24-001-2", "24-001-3"))
        .contains("one plant, or the two of a cross");
    assertThat(demo.refused(USAGE, "carries", "24-001-3", "--misread", "2")).contains("--misread");
    assertThat(demo.refused(REFUSED, "carries", "24-001-3", "--sure", "0", "--trait", "tips"))
        .contains("sureness of 0");
  }

  @Test
  void anEmptyRegisterHasNoModels() {
    demo.told("start", "XY", "--grower", "Klara", "--register", "empty.register");
    assertThat(demo.refused(REFUSED, "mistakes", "--register", "empty.register"))
        .contains("of no trait it is said how it is inherited");
  }
}
