package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Plans of two crosses in the first season, what is kept of both crossed in the second. */
class NextOfTwoCrossesTest {

  @TempDir Path folder;

  private String typed(String... words) {
    Outcome outcome = new CommandLineRun().in(folder).run(words);
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return outcome.out();
  }

  private JsonNode json(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add("--json");
    return JsonMapper.shared().readTree(typed(all.toArray(String[]::new)));
  }

  /** Four plants, 20-001 to 20-004, and three or four traits that each go by one gene. */
  private void bench(String... genotypes) {
    typed("start", "KB", "--grower", "Klara");
    trait("tips", "A", "red", "plain");
    trait("edge", "B", "wavy", "green");
    trait("wax", "C", "waxy", "bare");
    trait("form", "D", "tall", "round");
    List<String> taxa = List.of("agavoides", "colorata", "laui", "elegans");
    for (int i = 0; i < taxa.size(); i++) {
      typed("plant", "Echeveria " + taxa.get(i), "--date", "2020-03-01");
      typed("genotype", "20-00" + (i + 1), genotypes[i]);
    }
  }

  private void trait(String trait, String gene, String dominant, String recessive) {
    typed("trait", trait, "--states", dominant + "," + recessive);
    typed("gene", gene, gene, gene.toLowerCase(Locale.ROOT));
    typed("model", trait, gene + "_=" + dominant, "*=" + recessive);
  }

  private static final String[] ALL_FOUR = {
    "next", "--want", "tips=red", "--want", "edge=wavy", "--want", "wax=waxy", "--want", "form=tall"
  };

  /** Each of the four has one of the four dominants twice. */
  private void fourDominants() {
    bench("AA bb cc dd", "aa BB cc dd", "aa bb CC dd", "aa bb cc DD");
  }

  private static String[] with(String[] words, String... more) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of(more));
    return all.toArray(String[]::new);
  }

  private static String code(JsonNode side) {
    assertThat(side.get("part").stringValue()).isEqualTo("plant");
    return side.get("plant").get("code").stringValue();
  }

  /** By hand: one and one, all alike; 1/2 to the fourth, log 0.05 / log 15/16 = 46.4. */
  @Test
  void whatToCrossSowKeepAndCrossNextStandsThereForBothCrosses() {
    fourDominants();
    assertThat(typed(with(ALL_FOUR, "--show", "1")))
        .isEqualTo(
            """
            Wanted: tips red, edge wavy, wax waxy, form tall; one at least, 95 % sure. 4
            plants can be parents.
            1. two seasons, 49 seedlings in all
              season 1 20-001N (Echeveria agavoides) × 20-002P (Echeveria colorata): raise
              1, keep one, all are alike to look at (tips red, edge wavy, wax bare, form
              round)
              season 1 20-003R (Echeveria laui) × 20-004T (Echeveria elegans), the second
              cross: raise 1, keep one, all are alike to look at (tips plain, edge green,
              wax waxy, form tall)
              season 2 the one kept of the first cross × the one of the second: raise 47,
              6.3 % (1/16) wanted
              inbred 0 %
            more  2 other first crosses lead there too
            Next: when you pollinate: filial cross 20-001N 20-002P and filial cross 20-003R
                  20-004T
            """);
  }

  @Test
  void aProgramReadsTheSecondCrossBesideTheFirst() {
    fourDominants();
    JsonNode plan = json(with(ALL_FOUR, "--show", "1")).get("plans").get(0);
    JsonNode first = plan.get("seasons").get(0);
    assertThat(code(first.get("seed"))).isEqualTo("20-001N");
    assertThat(code(first.get("pollen"))).isEqualTo("20-002P");
    JsonNode beside = first.get("beside");
    assertThat(beside.propertyNames())
        .containsExactly("seed", "pollen", "keep", "all", "chance", "seeds", "kept");
    assertThat(code(beside.get("seed"))).isEqualTo("20-003R");
    assertThat(code(beside.get("pollen"))).isEqualTo("20-004T");
    assertThat(beside.get("keep").stringValue())
        .isEqualTo("tips plain, edge green, wax waxy, form tall");
    assertThat(beside.get("all").booleanValue()).isTrue();
    assertThat(beside.get("chance").doubleValue()).isEqualTo(1);
    assertThat(beside.get("seeds").intValue()).isEqualTo(1);
    assertThat(beside.get("kept").intValue()).isEqualTo(1);
    JsonNode second = plan.get("seasons").get(1);
    assertThat(second.get("seed").get("part").stringValue()).isEqualTo("kept");
    assertThat(second.get("seed").get("plant").isNull()).isTrue();
    assertThat(second.get("pollen").get("part").stringValue()).isEqualTo("other");
    assertThat(second.get("pollen").get("plant").isNull()).isTrue();
    assertThat(second.get("beside").isNull()).isTrue();
    assertThat(second.get("seeds").intValue()).isEqualTo(47);
    assertThat(plan.get("total").intValue()).isEqualTo(49);
    assertThat(plan.get("inbreeding").doubleValue()).isZero();
  }

  /**
   * By hand: at a germination of one in two one of each cross is had at 95 % of 95 % or so, and all
   * seeds together are those of the three sowings.
   */
  @Test
  void withARateSeedsOfBothCrossesAreSownAndCounted() {
    fourDominants();
    String[] words = with(ALL_FOUR, "--show", "1", "--germination", "50%");
    JsonNode plan = json(words).get("plans").get(0);
    JsonNode first = plan.get("seasons").get(0);
    int one = first.get("seeds").intValue();
    int other = first.get("beside").get("seeds").intValue();
    int last = plan.get("seasons").get(1).get("seeds").intValue();
    assertThat(one + other + last).isEqualTo(plan.get("total").intValue());
    double sure =
        (1 - Math.pow(0.5, one)) * (1 - Math.pow(0.5, other)) * (1 - Math.pow(31.0 / 32, last));
    assertThat(plan.get("certainty").doubleValue()).isEqualTo(sure, within(1e-12));
    assertThat(sure).isBetween(0.95, 0.951);
    assertThat(typed(words).replaceAll("\\s+", " "))
        .contains("20-002P (Echeveria colorata): sow " + one + ", keep one, all are alike")
        .contains("20-004T (Echeveria elegans), the second cross: sow " + other + ", keep one, all")
        .contains("the one kept of the first cross × the one of the second: sow " + last + ", 6.3");
  }

  /**
   * What is recessive and hidden is in half of the kept ones only, so several are kept of both. By
   * hand: Aa by Aa 1 in 4 of what is kept, and then 1/4 · 1/2 · 1/2 = 1/16, 1/64 in all.
   */
  @Test
  void severalKeptOfBothAreCrossedTwoByTwo() {
    bench("AA BB cc dd", "Aa bb cc dd", "AA bb CC dd", "Aa bb cc dd");
    String[] words = {
      "next", "--want", "tips=plain", "--want", "edge=wavy", "--want", "wax=waxy", "--show", "1"
    };
    assertThat(typed(words))
        .isEqualTo(
            """
            Wanted: tips plain, edge wavy, wax waxy; one at least, 95 % sure. 4 plants can
            be parents.
            1. two seasons, 264 seedlings in all
              season 1 20-001N (Echeveria agavoides) × 20-002P (Echeveria colorata): raise
              8, keep 8, all are alike to look at (tips red, edge wavy, wax bare)
              season 1 20-003R (Echeveria laui) × 20-004T (Echeveria elegans), the second
              cross: raise 8, keep 8, all are alike to look at (tips red, edge green, wax
              waxy)
              season 2 each one kept of the first cross × another one of the second: raise
              31 of each pair, 1.6 % (1/64) wanted
              inbred 0 %
              not as sure as you want: however many are raised, 90 % at most, since a parent
              or what is kept may not carry what it takes. These numbers come to 95 % of
              that; with them you are 86 % sure
            more  1 other first cross leads there too
            Next: when you pollinate: filial cross 20-001N 20-002P and filial cross 20-003R
                  20-004T
            """);
    JsonNode first = json(words).get("plans").get(0).get("seasons").get(0);
    assertThat(first.get("kept").intValue()).isEqualTo(8);
    assertThat(first.get("beside").get("kept").intValue()).isEqualTo(8);
    assertThat(first.get("pairs").booleanValue()).isFalse();
  }

  /** By hand: 8 of the first season, 15 of each of 4 pairs, 9 of each of 4 · 3 plants make 176. */
  @Test
  void whatIsKeptOfEachPairIsToldToBeOfEach() {
    bench("AA BB cc dd", "Aa bb cc dd", "AA bb CC dd", "Aa bb cc dd");
    String told =
        typed(
                "next",
                "--want",
                "tips=plain",
                "--want",
                "edge=wavy",
                "--want",
                "wax=waxy",
                "--seasons",
                "3")
            .replaceAll("\\s+", " ");
    assertThat(told)
        .contains("three seasons, 176 seedlings in all")
        .contains(
            "raise 15 of each pair, keep 3 of each with tips red, edge wavy, wax waxy, 23.4 %")
        .contains("season 3 each one kept selfed: raise 9 of each, 5.6 % wanted");
  }

  /**
   * One of the two crosses may be a selfing. By hand: plain 1 in 4, log 0.05 / log 0.75, and more.
   */
  @Test
  void aSelfingBesideACrossIsTold() {
    bench("AA BB cc dd", "Aa bb cc dd", "AA bb CC dd", "aa bb cc dd");
    String told =
        typed(
                "next",
                "--want",
                "tips=plain",
                "--want",
                "edge=wavy",
                "--want",
                "wax=waxy",
                "--seasons",
                "3",
                "--from",
                "20-001",
                "--from",
                "20-002",
                "--from",
                "20-003")
            .replaceAll("\\s+", " ");
    assertThat(told)
        .contains(
            "20-002P (Echeveria colorata) selfed, the second cross: raise 16, keep one with tips"
                + " plain, edge green, wax bare, 25 % (1/4)");
  }
}
