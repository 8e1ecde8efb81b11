package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** What counts, scores and measurements come to, asked of the demo bench. */
class MeasureVerbsTest {

  @TempDir Path folder;

  private DemoStory demo;

  @BeforeEach
  void theDemoBench() throws IOException {
    demo = new DemoStory(folder);
  }

  /**
   * By hand: S2 of 2 May was counted on days 7, 11, 18 and 28 with 3, 8, 11 and 12 up, S3 with 7,
   * 13, 16 and 16. Mean days (3·7 + 5·11 + 3·18 + 1·28)/12 = 158/12 = 13.2 and (7·7 + 6·11 +
   * 3·18)/16 = 169/16 = 10.6; half of 12 on day 7 + (6 − 3)·4/5 = 9.4, of 16 on day 7 + (8 − 7)·4/6
   * = 7.7. S1 was counted once. Of both together (158 + 169)/28 = 11.7, and half of 28 on day 7 +
   * (14 − 10)·4/11 = 8.5. Ranges are Wilson's, by R in core/src/test/reference/germination.R.
   */
  @Test
  void theThreeSowingsOfOneCross() {
    assertThat(demo.told("germination", "26-006"))
        .contains("sowing      seeds  up     %   95 % between  mean days  half by day\n")
        .contains("26-006V S1     30  25  83.3  66.4 and 92.7\n")
        .contains("26-006V S2     20  12    60  38.7 and 78.1       13.2          9.4\n")
        .contains("26-006V S3     20  16    80  58.4 and 91.9       10.6          7.7\n")
        .contains("all            70  53  75.7  64.5 and 84.2       11.7          8.5\n")
        .contains("no times  1: all that came up were up at the first count (26-006V S1)\n")
        .contains("filial howmany 1/4 --germination\n      53/70\n");
    JsonNode times = demo.json("germination", "26-006 S2").get("groups").get(0).get("times");
    assertThat(times.get("meanDays").doubleValue()).isEqualTo(158.0 / 12);
    assertThat(times.get("curve").get(1).get("up").intValue()).isEqualTo(8);
  }

  /**
   * By hand, of the sowings whose seeds and seedlings were counted: 24 of 30 in bottom heat
   * (25-003V), 16 of 20 soaked, 18 + 15 + 16 = 49 of 60 in peroxide; 924 seeds and 651 seedlings in
   * all, so 814 and 562 without a word.
   */
  @Test
  void byTreatmentGuessesAreLeftOutAndNumbered() {
    assertThat(demo.told("germination", "--by", "treatment"))
        .contains("bottom heat, 22 degrees     30   24    80  62.7 and 90.5\n")
        .contains("soak, tap water, one        20   16    80  58.4 and 91.9       10.6")
        .contains("soaked in 3 % hydrogen      60   49  81.7  70.1 and 89.4\n")
        .contains("not said                   814  562    69  65.8 and 72.1")
        .contains("times of  2 of 24 sowings, in \"not said\"\n")
        .contains(
            "left out  6: how many were sown is a guess (22-010T S1, 23-004E S1, 24-004A S1,");
  }

  @Test
  void theOtherWaysOfPuttingSowingsTogether() {
    assertThat(demo.told("germination", "--by", "age"))
        .contains("under 3 months")
        .contains("The seed of 2 sowings is aged from the day it came");
    assertThat(demo.told("germination", "--by", "medium"))
        .contains("pumice and peat, 2 : 1    924");
    assertThat(demo.told("germination", "--by", "lot")).contains("26-006V H1     70   53  75.7");
    assertThat(demo.told("germination", "--by", "cross"))
        .contains("26-006V 24-008H-1 ×         70   53  75.7  64.5 and 84.2");
    assertThat(demo.told("germination")).contains("Echeveria lilacina          40   31  77.5");
  }

  /**
   * 26-012 is laui and lilacina and was never sown: 23-006 with 33 of 40 was, and 24-011 with 3 of
   * 9.
   */
  @Test
  void seedsToSowGoByTheSameCounts() {
    demo.told("genotype", "22-006", "Tt");

    assertThat(
            demo.told("odds", "26-012", "--want", "tips=red", "--germination", "recorded")
                .replaceAll("\\s+", " "))
        .contains("sowings of Echeveria laui × Echeveria lilacina, 2 of them, which differ")
        .contains("and not as 49");
    assertThat(demo.told("germination")).contains("49   36  73.5");
  }

  @Test
  void theCurveIsDrawnAndWritten() {
    assertThat(demo.told("germination", "26-006 S2", "--curve"))
        .contains("26-006V S2: of 20 seeds, by the day of the count\n")
        .contains("  day  7  ###### 3 (15 %)\n")
        .contains("  day 28  ######################## 12 (60 %)\n");
    assertThat(demo.told("germination", "26-006 S2", "--curve", "--csv"))
        .isEqualTo(
            String.join(
                "\r\n",
                "sowing,seeds,day,newly,up,share",
                "26-006V S2,20,7,3,3,0.150000",
                "26-006V S2,20,11,5,8,0.400000",
                "26-006V S2,20,18,3,11,0.550000",
                "26-006V S2,20,28,1,12,0.600000",
                ""));
    assertThat(demo.refused(2, "germination", "--csv", "--json"))
        .contains("two forms of one answer");
    assertThat(demo.refused(2, "germination", "--sure", "100%"))
        .contains("\"100%\" is more than can be had; write 95% or 99%");
  }

  /**
   * What a spreadsheet would run as a formula is kept from it, in the one place where text is free.
   */
  @Test
  void aMediumThatLooksLikeAFormulaIsNone() {
    demo.told("sow", "26-012", "10", "--medium", "=1+1, \"sharp\"", "--date", "2026-05-01");
    demo.told("count", "26-012", "--up", "6", "--date", "2026-06-01");

    assertThat(demo.told("germination", "26-012", "--by", "medium", "--csv"))
        .contains("\"'=1+1, \"\"sharp\"\"\",1,10,6,0.600000,");
  }

  /** 12 of 20 against 16 of 20: chi-square 40(12·4 − 8·16)²/(28·12·20·20) = 1.905, p 0.168. */
  @Test
  void twoSowingsAreHeldAgainstEachOther() {
    assertThat(demo.told("compare", "26-006 S2", "26-006 S3"))
        .contains("difference       -20 in a hundred, with a certainty of 95 % between -44.5 and")
        .contains("0.17 (chi-square 1.9, one degree of freedom)")
        .contains("One sowing stands against one");
    JsonNode found =
        demo.json("compare", "soak", "not said", "--by", "treatment", "--within", "26-006");
    assertThat(found.get("method").stringValue()).isEqualTo("exact");
    assertThat(found.get("other").get("seeds").intValue()).isEqualTo(50);
    assertThat(demo.refused(2, "compare", "a", "b", "--within", "26-006"))
        .contains("--within goes with --by");
    assertThat(demo.refused(1, "compare", "bark", "soak", "--by", "treatment"))
        .contains("no sowing has \"bark\"; there are: bottom heat, 22 degrees; soak, tap water");
  }

  /**
   * By hand: 18 + 15 + 16 = 49 up on day 21 (week 3), 17 + 14 + 12 = 43 alive on day 42 (week 6),
   * so 6 died: 43/49 = 87.8 %. Seven were pricked out on day 63 (week 9) and one of them looked at
   * since.
   */
  @Test
  void survivalByWeek() {
    assertThat(demo.told("survival", "26-013"))
        .contains("Of 49 seedlings 6 died while they were watched.")
        .contains("   3       0       49     0          0         100\n")
        .contains("   6      49        0     6          0        87.8  74.8 and 94.3\n");
    // One of 16 died on day 22 and one was missing on day 28: 15/16 · 14/15 = 87.5 %.
    assertThat(demo.told("survival", "26-006 S3"))
        .contains("   4      16        0     2         14        87.5  58.6 and 96.7\n");
    assertThat(demo.told("survival", "26-006 S3", "--csv"))
        .startsWith("week,before,came_up,died,last_seen,surviving,standard_error,lower,upper\r\n")
        .contains("\r\n4,16,0,2,14,0.875000,0.082680,0.585981,0.967189\r\n");
    assertThat(demo.told("survival", "26-007"))
        .contains("no seedling could be followed")
        .contains("never counted");
  }

  @Test
  void seedlingsAreRankedWithWhatWasDecided() {
    assertThat(demo.told("rank", "farina", "24-007"))
        .containsSubsequence(
            "1  24-007E-3                   5  2025-10-04\n",
            "2  24-007E-1 \"Morgenrot\"       4  2025-10-04  keep\n",
            "4  24-007E-4                   1  2025-10-04  discarded\n");
    assertThat(demo.told("rank", "farina")).contains("  =3  22-009R-1").contains("  =3  24-007E-2");
    assertThat(demo.told("rank", "farina", "24-007", "--until", "2024"))
        .contains("Nobody was measured for farina.")
        .contains("not measured  24-007E-1, 24-007E-2, 24-007E-3");
    assertThat(demo.told("rank", "farina", "24-007", "--csv"))
        .contains("\r\n2,no,24-007E-1,22-009R-1 × 22-001E,4,,2025-10-04,keep\r\n");
    assertThat(demo.refused(1, "rank", "tips", "24-007"))
        .contains("tips has states (red, plain) and no numbers");
    assertThat(demo.refused(1, "rank", "farina", "24-007 P1")).contains("only single plants");
  }

  /** 64 to 83 mm in the 245 days from 5 October to 7 June: 19 · 30/245 = 2.33 in 30 days. */
  @Test
  void aPlantGrows() {
    assertThat(demo.told("growth", "width", "24-007-2"))
        .contains("24-007E-2  2025-10-05         64\n")
        .contains("           2026-06-07         83      19        2.33\n");
    assertThat(demo.told("growth", "width", "24-007-2", "--csv"))
        .contains("\r\n24-007E-2,2026-06-07,83,mm,19,2.326531,\r\n");
  }

  /** 98, 83, 90 and 74 mm make 86.25; the parents' 85 and 110 make 97.5; 11.25 less. */
  @Test
  void aFamilyBesideItsParents() {
    assertThat(demo.told("means", "width", "24-007"))
        .contains("24-007E  22-009R-1 × 22-001E   4  86.25    70 and 102.5      10.21    74  98\n")
        .contains("parents' mean 97.5: 22-009R-1 85 (measured once) and 22-001E 110")
        .contains("off it by -11.25");
    assertThat(demo.told("means", "farina"))
        .contains("22-009R  no mean of its parents: 22-001E and 22-003J never measured\n")
        .contains("24-007E  no mean of its parents: 22-001E never measured\n")
        .contains("0.53 and 5 "); // farina is scored 0 to 5
    assertThat(demo.told("means", "width", "24-007", "--csv"))
        .contains("86.250000,10.210289,74.000000,98.000000,");
  }
}
