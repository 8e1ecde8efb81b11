package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The years of the demo bench, added up by hand from its entries. */
class SeasonVerbTest {

  @TempDir Path folder;

  @BeforeEach
  void aBench() throws IOException {
    DemoRegister.in(folder);
  }

  private Outcome filial(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  private JsonNode year(String year) {
    Outcome outcome = filial("seasons", year, "--json");
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return JsonMapper.shared().readTree(outcome.out()).get("years").get(0);
  }

  private static long counted(JsonNode year, String figure) {
    return year.get("figures").get(figure).get("counted").longValue();
  }

  @Test
  void aRowForEachYear() {
    // Entries 10 to 29 are of 2022: 180 seeds counted and ~90; sown 40 + 60 and ~40; up 31 + 48.
    assertThat(filial("seasons").out())
        .contains("2022       8        2    2  180+  100+   79 of 100+         0             0\n")
        .contains("2026       1       10    9  730+  295+  196 of 295+         9             1\n")
        .contains("deaths noted  only those somebody wrote down; what only a lower count shows is")
        .doesNotContain("no day");
    assertThat(filial("seasons").out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void theFirstYearInFull() {
    assertThat(filial("seasons", "22").out())
        .contains("flowers pollinated   11\n") // 6 + 5
        .contains("flowers that set     8\n") // 5 + 3
        .contains("flowers that failed  3\n") // 1 + 2
        .contains("seed harvested       180 counted, about 90 guessed\n")
        .contains("of that came up      79 of 100; 1 sowing left out, not counted exactly\n")
        // The parents 22-001E, 22-003J, 22-004K and 22-005L.
        .contains("flowered first       4\n")
        .doesNotContain("deaths");
  }

  @Test
  void thirtyFourFruitsOfElevenHarvests() {
    JsonNode year = year("2026");
    assertThat(counted(year, "harvests")).isEqualTo(11);
    // 80 + 70 + 110 + 25 + 60 + 65 + 120 + 120 + 80; ~40 of 26-010A and many of 26-007W.
    assertThat(counted(year, "seed")).isEqualTo(730);
    assertThat(year.get("figures").get("seed").get("guessed").longValue()).isEqualTo(40);
    assertThat(year.get("figures").get("seed").get("withoutNumber").longValue()).isEqualTo(1);
    // 4 + 2 + 2 + 4 + 5 of entries 226 to 230.
    assertThat(counted(year, "set")).isEqualTo(17);
    // 2 of 25-001R in January and 7 of 26-013E in June.
    assertThat(counted(year, "numbered")).isEqualTo(9);
    assertThat(year.get("losses").get(0).get("cause").stringValue()).isEqualTo("damping off");
  }

  @Test
  void theCrossThatFailedStandsInItsYear() {
    JsonNode year = year("2023");
    assertThat(counted(year, "crosses")).isEqualTo(3);
    assertThat(counted(year, "crosses_set")).isEqualTo(2);
    assertThat(counted(year, "crosses_failed")).isEqualTo(1);
    assertThat(counted(year, "open")).isEqualTo(1);
  }

  @Test
  void anEntryThatIsStruckIsGoneFromItsYear() {
    assertThat(filial("died", "22-001", "--date", "2026-06-10").status()).isZero();
    assertThat(counted(year("2026"), "died")).isEqualTo(2);
    assertThat(filial("undo").status()).isZero();
    assertThat(counted(year("2026"), "died")).isEqualTo(1);
  }

  @Test
  void rowsForASpreadsheet() {
    assertThat(filial("seasons", "2024", "--csv").out())
        .startsWith("year,figure,cause,counted,guessed,guesses,without_number\r\n")
        .contains("2024,seed,,594,80,1,0\r\n")
        .contains("2024,died_of,rot after a wet June,1,0,0,0\r\n");
    assertThat(filial("seasons", "--csv", "--json").status()).isEqualTo(2);
  }

  @Test
  void ofAYearWithoutEntriesThatIsSaidAndOfNoYearThatItIsNone() {
    assertThat(filial("seasons", "2019").out()).startsWith("Nothing to sum up is written of 2019.");
    assertThat(filial("seasons", "500").err()).contains("500 is not a year of a register");
  }
}
