package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Crosses of unequal ploidy, of unreduced gametes, and of hybrids whose generation was stated. */
class UnevenCrossesTest {

  @TempDir Path folder;

  private BenchStory bench;

  /** 26-001 is a diploid laui, 26-002 a tetraploid agavoides. */
  @BeforeEach
  void twoPlants() {
    bench = new BenchStory(folder);
    bench.done("plant", "Echeveria laui");
    bench.done("plant", "Echeveria agavoides", "--ploidy", "4");
  }

  private String shares(String code) {
    JsonNode ancestry = bench.json("ancestry", code);
    StringBuilder text = new StringBuilder();
    ancestry
        .get("taxa")
        .forEach(
            taxon ->
                text.append(taxon.get("taxon").stringValue().replace("Echeveria ", ""))
                    .append(' ')
                    .append(fraction(taxon.get("share")))
                    .append(", "));
    return text.append("unknown ").append(fraction(ancestry.get("unknown"))).toString();
  }

  private static String fraction(JsonNode share) {
    return share.get("exact").stringValue();
  }

  @Test
  void whatThePollenCarriedIsNotSaidOfSelfsAndStrays() {
    bench.done("cross", "26-001", "26-002", "--unprotected", "--selfs", "10%", "--strays", "10%");
    bench.done(
        "cross",
        "26-001",
        "26-002",
        "--unprotected",
        "--selfs",
        "10%",
        "--strays",
        "10%",
        "--pollen-sets",
        "2");

    // 4/5 of 1/3, a tenth all laui, a tenth half; the unknown share is half of the strays.
    assertThat(shares("26-003")).isEqualTo("agavoides 8/15, laui 5/12, unknown 1/20");
    assertThat(shares("26-004")).isEqualTo(shares("26-003"));
  }

  @Test
  void openPollinationOfAnUnreducedEggGivesATriploid() {
    bench.done("cross", "26-001", "--open", "--egg-sets", "2");

    assertThat(shares("26-003")).isEqualTo("laui 2/3, unknown 1/3");
    assertThat(bench.json("ancestry", "26-003").get("ploidy").intValue()).isEqualTo(3);
  }

  @Test
  void aGameteOfMoreSetsThanTheParentHasIsRefused() {
    assertThat(
            bench
                .type("cross", "26-002", "26-001", "--pollen-sets", "3")
                .err()
                .replaceAll("\\s+", " "))
        .contains("has 2 chromosome sets, so its pollen cannot have carried 3");
  }

  @Test
  void selfsOfATriploidCannotBeReckoned() {
    bench.done("plant", "Echeveria elegans", "--ploidy", "3");

    assertThat(
            bench
                .type(
                    "cross",
                    "26-003",
                    "26-001",
                    "--egg-sets",
                    "2",
                    "--unprotected",
                    "--selfs",
                    "10%")
                .err()
                .replaceAll("\\s+", " "))
        .contains("has 3 chromosome sets, and what selfs of it carry cannot be reckoned");
    assertThat(bench.type("cross", "26-003", "26-001", "--egg-sets", "2").status()).isZero();
  }

  @Test
  void aStatedBackcrossIsToTheTaxonItHasMoreOf() {
    bench.done(
        "plant",
        "--makeup",
        "Echeveria agavoides=1/4",
        "--makeup",
        "Echeveria laui=3/4",
        "--generation",
        "BC1");

    assertThat(bench.done("ancestry", "26-003")).startsWith("26-003P: BC1 to Echeveria laui");
  }

  @Test
  void aStatedF1OfUnevenSharesIsNotCountedFrom() {
    bench.done(
        "plant",
        "--makeup",
        "Echeveria agavoides=1/4",
        "--makeup",
        "Echeveria laui=3/4",
        "--generation",
        "F1");

    assertThat(bench.done("ancestry", "26-003").replaceAll("\\s+", " "))
        .contains("no generation class")
        .contains("F1, does not go with its shares, and is not counted from");
  }

  @Test
  void whatStandsBelowADeclaredHybridIsNoPurePlant() {
    bench.done(
        "taxon",
        "Echeveria gilva",
        "--hybrid",
        "--makeup",
        "Echeveria agavoides=1/2",
        "--makeup",
        "Echeveria elegans=1/2");
    bench.done("plant", "Echeveria gilva var. alba");

    assertThat(bench.done("ancestry", "26-003")).doesNotContain("pure").contains("agavoides");
    assertThat(bench.done("ancestry", "26-003", "--species")).doesNotContain("pure");
  }

  @Test
  void aTagSaysTheGenerationOnWhichAllWaysAgree() {
    bench.done("plant", "Echeveria laui");
    bench.done("plant", "Echeveria elegans");
    bench.done("cross", "26-001", "26-004", "--bagged");
    bench.done("number", "26-005", "2");
    bench.done("cross", "26-005-1", "26-005-2", "--unprotected", "--selfs", "10%");

    assertThat(bench.done("tag", "26-006")).contains("F2");
  }

  @Test
  void aSeedlingDoesNotBearThePacketsCultivar() {
    bench.done("seed", "Echeveria laui", "20", "--cultivar", "Blue");
    bench.done("number", "26-003", "1");

    assertThat(bench.done("tag", "26-003")).contains("Blue");
    assertThat(bench.done("tag", "26-003-1")).contains("laui").doesNotContain("Blue");
  }
}
