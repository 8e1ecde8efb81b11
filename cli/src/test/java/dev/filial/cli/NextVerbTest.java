package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Which cross next, asked of small benches and of the demo. */
class NextVerbTest {

  private static final int REFUSED = 1;
  private static final int USAGE = 2;

  @TempDir Path folder;

  private Outcome type(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  private String typed(String... words) {
    Outcome outcome = type(words);
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return outcome.out();
  }

  private String flat(String... words) {
    return typed(words).replaceAll("\\s+", " ");
  }

  private JsonNode json(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add("--json");
    return JsonMapper.shared().readTree(typed(all.toArray(String[]::new)));
  }

  private String refused(int status, String... words) {
    Outcome outcome = type(words);
    assertThat(outcome.status()).as(outcome.err()).isEqualTo(status);
    return outcome.err().replaceAll("\\s+", " ");
  }

  /** 20-001 RR ww, Echeveria agavoides; 20-002 rr WW, Echeveria laui. */
  private void twoRecessives() {
    typed("start", "KB", "--grower", "Klara");
    typed("trait", "edge", "--states", "red,green");
    typed("trait", "wax", "--states", "bare,waxy");
    typed("trait", "size", "--states", "small,large");
    typed("gene", "R", "R", "r");
    typed("gene", "W", "W", "w");
    typed("model", "edge", "R_=red", "*=green");
    typed("model", "wax", "W_=bare", "*=waxy");
    typed("plant", "Echeveria agavoides", "--date", "2020-03-01");
    typed("plant", "Echeveria laui", "--date", "2020-03-01");
    typed("genotype", "20-001", "RR ww");
    typed("genotype", "20-002", "rr WW");
  }

  /** 9:3:3:1, Mendel 1866; log 0.05 / log 15/16 = 46.4. */
  @Test
  void twoRecessivesTakeAFirstGenerationAndFortySevenOfTheSecond() {
    twoRecessives();
    assertThat(flat("next", "--want", "edge=green", "--want", "wax=waxy"))
        .contains("two seasons, 48 seedlings in all")
        .contains("20-001N (Echeveria agavoides) × 20-002P (Echeveria laui): raise 1")
        .contains("selfed: raise 47, 6.3 % (1/16) wanted")
        .contains("inbred 50 % (1/2)")
        .endsWith("filial cross 20-001N 20-002P ");
    assertThat(typed("next", "--want", "edge=green", "--want", "wax=waxy").lines())
        .allMatch(line -> line.length() <= 80);
  }

  @Test
  void aShareTurnsThePlanRoundAndTheFullNameIsShown() {
    twoRecessives();
    String told =
        flat(
            "next",
            "--want",
            "edge=green",
            "--want",
            "wax=waxy",
            "--share",
            "E. laui=3/4",
            "--seasons",
            "3");
    assertThat(told)
        .contains("20-002P (Echeveria laui), a backcross")
        .contains("Echeveria laui 75 % (3/4)");
    assertThat(flat("next", "--want", "edge=green", "--share", "Echeveria nobody=1/2"))
        .contains("No plant here has any expected share of Echeveria nobody.");
  }

  @Test
  void theMostRelatedBoundsThePlan() {
    twoRecessives();
    JsonNode plans =
        json("next", "--want", "edge=green", "--want", "wax=waxy", "--most-related", "1/4")
            .get("plans");
    assertThat(plans.size()).isPositive();
    for (JsonNode plan : plans) {
      assertThat(plan.get("inbreeding").doubleValue()).isLessThanOrEqualTo(0.25);
    }
    assertThat(flat("next", "--want", "edge=green", "--want", "wax=waxy", "--most-related", "1/8"))
        .startsWith("Within two seasons no cross of these 2 plants leads to");
  }

  @Test
  void whatIsAsWantedIsToldFirstAndIsNoParentUnlessNamed() {
    twoRecessives();
    assertThat(flat("next", "--want", "edge=green"))
        .startsWith("As wanted already: 20-002P (Echeveria laui).");
    assertThat(flat("next", "--want", "edge=green", "--from", "20-002"))
        .contains("20-002P (Echeveria laui) selfed: raise 1, all are wanted");
  }

  /** The shown chance is what the odds of that cross say, 1/4, and so are the seeds. */
  @Test
  void oneSeasonSaysWhatTheOddsSay() {
    twoRecessives();
    typed("plant", "Echeveria pulvinata", "--date", "2020-03-01");
    typed("plant", "Echeveria elegans", "--date", "2020-03-01");
    typed("genotype", "20-003", "Rr WW");
    typed("genotype", "20-004", "Rr WW");
    JsonNode hope =
        json("odds", "20-003", "20-004", "--want", "edge=green", "--germination", "18/25")
            .get("scenarios")
            .get(0)
            .get("hope");
    JsonNode season =
        json(
                "next",
                "--want",
                "edge=green",
                "--germination",
                "18/25",
                "--seasons",
                "1",
                "--from",
                "20-003",
                "--from",
                "20-004",
                "--most-related",
                "0")
            .get("plans")
            .get(0)
            .get("seasons")
            .get(0);
    assertThat(season.get("chance").doubleValue())
        .isEqualTo(hope.get("chance").get("value").doubleValue(), within(1e-12));
    assertThat(season.get("seeds").intValue()).isEqualTo(hope.get("seeds").intValue());
  }

  /** Of a plant nobody knows what the likely cross says: both weigh what was seen. */
  @Test
  void ofUncertainPlantsTheChanceIsThatOfTheLikelyCross() throws IOException {
    DemoStory demo = new DemoStory(folder);
    JsonNode season =
        demo.json(
                "next",
                "--want",
                "tips=plain",
                "--seasons",
                "1",
                "--from",
                "24-001-3",
                "--from",
                "24-001-1",
                "--most-related",
                "60%",
                "--show",
                "1")
            .get("plans")
            .get(0)
            .get("seasons")
            .get(0);
    String seed = season.get("seed").get("plant").get("code").stringValue();
    String pollen = season.get("pollen").get("plant").get("code").stringValue();
    JsonNode shows =
        demo.json("carries", seed, pollen, "--trait", "tips")
            .get(0)
            .get("ways")
            .get(0)
            .get("traits")
            .get(0)
            .get("shows");
    for (JsonNode state : shows) {
      if (state.get("state").stringValue().equals("plain")) {
        assertThat(season.get("chance").doubleValue())
            .isEqualTo(state.get("chance").doubleValue(), within(1e-9));
      }
    }
  }

  @Test
  void plantsThatSetNoSeedOnEachOtherAreLeftOutAndCounted() {
    twoRecessives();
    typed("gene", "S", "S1", "S2", "S3", "--self-incompatible");
    typed("genotype", "20-001", "S1/S2");
    typed("genotype", "20-002", "S1/S2");
    assertThat(flat("next", "--want", "edge=green", "--want", "wax=waxy"))
        .contains("no cross of these 2 plants")
        .contains("3 pairs and selfings that set no seed by their S alleles");
  }

  /** Cuénot 1905: yellow mice; of what lives 1 in 3 is not yellow, of what is sown 1 in 4. */
  @Test
  void aLethalCountsAmongTheSeedsAndNotAmongTheSeen() {
    twoRecessives();
    typed("gene", "Y", "Y", "y");
    typed("trait", "coat", "--states", "yellow,grey");
    typed("model", "coat", "YY=dies", "Y_=yellow", "*=grey");
    typed("plant", "Echeveria pulvinata", "--date", "2020-03-01");
    typed("genotype", "20-003", "Yy");
    assertThat(flat("next", "--want", "coat=grey", "--from", "20-003", "--seasons", "1"))
        .contains("selfed: raise 11, 33.3 % wanted");
  }

  @Test
  void anEmptyBenchSaysWhatToEnter() {
    typed("start", "KB", "--grower", "Klara");
    assertThat(refused(REFUSED, "next", "--want", "edge=green"))
        .contains("no trait is called \"edge\"; declare it first");
    typed("trait", "edge", "--states", "red,green");
    assertThat(refused(REFUSED, "next", "--want", "edge=green"))
        .contains("declare a model of it, or ask for a forecast");
    typed("gene", "R", "R", "r");
    typed("model", "edge", "R_=red", "*=green");
    assertThat(flat("next", "--want", "edge=green"))
        .contains("No plant is here that could be a parent")
        .endsWith("filial plant TAXON ");
  }

  @Test
  void absurdNumbersAndWhatIsNotThereAreToldSo() {
    twoRecessives();
    assertThat(refused(USAGE, "next")).contains("which seedling do you hope for?");
    assertThat(refused(REFUSED, "next", "--want", "edge=green", "--seasons", "7"))
        .contains("1, 2 or 3 seasons");
    assertThat(refused(REFUSED, "next", "--want", "edge=green", "--show", "0"))
        .contains("ask for 1 or more");
    assertThat(refused(REFUSED, "next", "--want", "edge=green", "--at-least", "0"))
        .contains("ask for 1 or more");
    assertThat(
            refused(
                REFUSED,
                "next",
                "--want",
                "edge=green",
                "--at-least",
                "100000000",
                "--from",
                "20-002"))
        .contains("more than 1000000 seeds would be needed");
    assertThat(refused(REFUSED, "next", "--want", "edge=blue")).contains("no state \"blue\"");
    assertThat(refused(REFUSED, "next", "--want", "size=large"))
        .contains("nobody said how size is inherited");
    assertThat(refused(REFUSED, "next", "--want-genes", "qq"))
        .contains("not made of alleles of declared genes");
  }

  @Test
  void namesWithQuotesAndSignsStandAsTheyAre() {
    twoRecessives();
    typed("plant", "Echeveria laui", "--name", "Mo's <\"best\"> 🌵", "--date", "2020-03-01");
    typed("genotype", "20-003", "rr ww");
    assertThat(
            flat(
                "next",
                "--want",
                "edge=green",
                "--want",
                "wax=waxy",
                "--from",
                "Mo's <\"best\"> 🌵"))
        .contains("20-003R")
        .contains("all are wanted");
  }

  /** The trait down of the demo contradicts itself; that does not touch the trait tips. */
  @Test
  void aContradictionConcernsItsOwnTraitOnly() throws IOException {
    DemoStory demo = new DemoStory(folder);
    assertThat(demo.type("next", "--want", "tips=plain", "--show", "1").status()).isZero();
    assertThat(demo.refused(REFUSED, "next", "--want", "down=downy"))
        .contains("what is recorded cannot all be true")
        .contains("filial mistakes");
    assertThat(demo.type("next", "--want", "down=downy", "--misread", "1%", "--show", "1").status())
        .isZero();
  }
}
