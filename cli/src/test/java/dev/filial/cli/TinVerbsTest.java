package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The seed tin and the list for a club, on the demo bench on 15 June 2026. */
class TinVerbsTest {

  @TempDir Path folder;
  @TempDir Path elsewhere;

  @BeforeEach
  void aBench() throws IOException {
    DemoRegister.in(folder);
  }

  private Outcome filial(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  private JsonNode lot(String code) {
    Outcome outcome = filial("tin", "--json");
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return StreamSupport.stream(
            JsonMapper.shared().readTree(outcome.out()).get("lots").spliterator(), false)
        .filter(line -> line.get("lot").stringValue().equals(code))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsLeftHowOldAndPromisedToWhom() {
    // Harvested 110, cleaned to 80, two sowings of 20; 15 promised.
    JsonNode lot = lot("26-006V H1");
    assertThat(lot.get("left").stringValue()).isEqualTo("40");
    assertThat(lot.get("sureness").stringValue()).isEqualTo("counted");
    assertThat(lot.get("free").stringValue()).isEqualTo("25");
    assertThat(lot.get("promises").get(0).get("to").stringValue()).isEqualTo("Jonas Muster");
    // 28 March to 15 June: 3 days of March, 30, 31 and 15.
    assertThat(lot.get("age").intValue()).isEqualTo(79);
    assertThat(lot.get("old").booleanValue()).isFalse();
    assertThat(lot.get("keeping").stringValue()).isEqualTo("paper, over silica gel");
  }

  @Test
  void theOldIsListedByItself() {
    assertThat(filial("tin", "--old").out())
        .contains("22-009R H1")
        .contains("4 years, old")
        .doesNotContain("26-012D");
  }

  @Test
  void aPromiseIsKeptByAGiftAndTakenBack() {
    filial("promise", "26-012", "--count", "20", "--to", "Lena Muster");
    assertThat(lot("26-012D H1").get("free").stringValue()).isEqualTo("100");
    filial("give", "26-012 H1", "--count", "15", "--to", "lena muster");
    assertThat(lot("26-012D H1").get("left").stringValue()).isEqualTo("105");
    assertThat(lot("26-012D H1").get("free").stringValue()).isEqualTo("100");
    assertThat(filial("promise", "26-012", "--to", "Lena Muster", "--off").out())
        .startsWith("Entry 262: entry 260 struck");
    assertThat(lot("26-012D H1").get("free").stringValue()).isEqualTo("105");
  }

  @Test
  void ofSeveralThingsPromisedOneIsTakenBack() {
    filial("promise", "26-012", "26-004", "--count", "5", "--to", "Lena Muster");
    filial("promise", "26-004", "--to", "Lena Muster", "--off");
    assertThat(lot("26-004R H1").get("promises")).isEmpty();
    assertThat(lot("26-012D H1").get("promises")).hasSize(1);
  }

  @Test
  void whatWasNeverPromisedCannotBeTakenBack() {
    Outcome outcome = filial("promise", "26-012", "--to", "Nobody", "--off");
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("nothing of 26-012D H1 is promised to Nobody");
    assertThat(filial("promise", "26-012", "--to", "X", "--off", "--count", "3").status())
        .isEqualTo(2);
    assertThat(filial("promise", "26-012").status()).isEqualTo(2);
  }

  @Test
  void moreThanIsLeftMayBePromisedAndIsSaid() {
    assertThat(filial("promise", "26-012", "--count", "1000000000", "--to", "Lena").err())
        .contains("1000000000 of 26-012D H1 are promised in all, and 120 are left");
    assertThat(lot("26-012D H1").get("free").stringValue()).isEqualTo("0");
    assertThat(filial("promise", "26-012", "--count", "99999999999", "--to", "Lena").status())
        .isEqualTo(2);
  }

  @Test
  void seedIsCleanedWeighedStoredAndEmptied() {
    assertThat(filial("clean", "26-007", "--mg", "40", "--per-gram", "9000").status()).isZero();
    // 40 mg × 9000 a gram / 1000 = 360.
    assertThat(lot("26-007W H1").get("left").stringValue()).isEqualTo("~360");
    assertThat(lot("26-007W H1").get("sureness").stringValue()).isEqualTo("weighed");
    filial("store", "26-007", "--left", "300", "--in", "paper", "--place", "tin 2");
    assertThat(lot("26-007W H1").get("sureness").stringValue()).isEqualTo("counted");
    assertThat(lot("26-007W H1").get("place").stringValue()).isEqualTo("tin 2");
    assertThat(filial("empty", "26-007").out()).startsWith("Entry 262: 26-007W H1 used up.");
    assertThat(filial("tin").out()).doesNotContain("26-007W");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-3", "1e9", "12 mg", "99999999999"})
  void anAbsurdWeightIsRefused(String weight) {
    Outcome outcome = filial("clean", "26-007", "--mg", weight, "--per-gram", "9000");
    assertThat(outcome.status()).isBetween(1, 2);
    assertThat(outcome.err()).startsWith("filial clean: ");
    assertThat(filial("clean", "26-007").out()).startsWith("Entry 260:");
  }

  @Test
  void aWeightThatWouldBeMoreThanAnyBenchHoldsIsCut() {
    filial("clean", "26-007", "--mg", "999999999", "--per-gram", "999999999");
    assertThat(lot("26-007W H1").get("left").stringValue()).isEqualTo("~1000000000");
  }

  @Test
  void nothingToStoreIsAskedFor() {
    assertThat(filial("store", "26-007").err()).contains("where is it kept, or how much is left?");
    assertThat(filial("store", "26-007", "26-012", "--left", "3").status()).isEqualTo(2);
    assertThat(filial("store", "22-001", "--place", "tin").status()).isEqualTo(1);
    assertThat(filial("empty", "26-014").err()).contains("26-014H has no seed yet");
  }

  @Test
  void aBoughtPacketMayBeWeighed() {
    Outcome outcome = filial("seed", "Echeveria laui", "--mg", "15", "--per-gram", "8000");
    assertThat(outcome.out()).startsWith("Entry 260: 26-015J: seed acquired");
    assertThat(outcome.err()).contains("what it weighs is entry 261");
    assertThat(lot("26-015J H1").get("left").stringValue()).isEqualTo("~120");
    assertThat(lot("26-015J H1").get("harvested").booleanValue()).isFalse();
  }

  @Test
  void aClubIsToldEveryDoubt() {
    String told = filial("offer", "24-005", "24-006", "26-002", "26-012", "--json").out();
    assertThat(told)
        .contains("KB 24-005C H1")
        .contains("unprotected flowers")
        .contains("perhaps selfed (10 %)")
        .contains("open pollinated")
        .contains("name as it came")
        .contains("Echeveria lilacina × E. laui")
        .contains("CITES");
  }

  @Test
  void whatIsPromisedOrGoneIsNotOffered() {
    filial("promise", "26-012", "--to", "Lena Muster");
    assertThat(filial("offer").out()).doesNotContain("26-012D").contains("26-005T H1");
    assertThat(filial("offer", "26-013 H3").out()).isEqualTo("No seed is free to be offered.\n");
  }

  @Test
  void theListIsWrittenForASpreadsheetAndNeverOverAnother() throws IOException {
    filial("seed", "?", "20", "--field", "=1+1", "--cultivar", "A, \"B\" C");
    Outcome outcome = filial("offer", "26-015", "--csv", "offer.csv");
    assertThat(outcome.status()).as(outcome.err()).isZero();
    List<String> lines = Files.readAllLines(folder.resolve("offer.csv"));
    assertThat(lines.get(0)).isEqualTo("code,name,parents,field number,seeds,year,doubts");
    assertThat(lines.get(1)).contains("'=1+1").contains("\"'A, \"\"B\"\" C'\"");
    assertThat(lines).hasSize(2);
    assertThat(outcome.err()).contains("CITES");
    Outcome again = filial("offer", "--csv", "offer.csv");
    assertThat(again.status()).isEqualTo(3);
    assertThat(again.err()).contains("is there already");
    assertThat(filial("offer", "--csv", "nowhere/offer.csv").status()).isEqualTo(3);
    assertThat(filial("offer", "26-012", "--csv", "-").out())
        .startsWith("code,name,parents,field number,seeds,year,doubts\r\nKB 26-012D H1,");
  }

  @Test
  void anEmptyRegisterHasAnEmptyTin() {
    CommandLineRun empty = new CommandLineRun().in(elsewhere);
    empty.run("start", "KB", "--grower", "Klara");
    assertThat(empty.run("tin").out()).startsWith("No such seed is in the tin.");
    assertThat(empty.run("offer").out()).startsWith("No seed is free to be offered.");
    assertThat(empty.run("tin", "--json").status()).isZero();
  }

  @ParameterizedTest
  @ValueSource(strings = {"26-099", "22-001Z", "", "<script>", "🌵"})
  void aWrongLotIsRefused(String lot) {
    assertThat(filial("clean", lot).status()).isBetween(1, 2);
    assertThat(filial("store", lot, "--place", "x").status()).isBetween(1, 2);
    assertThat(filial("empty", lot).status()).isBetween(1, 2);
    assertThat(filial("promise", lot, "--to", "x").status()).isBetween(1, 2);
    assertThat(filial("offer", lot).status()).isBetween(1, 2);
    assertThat(filial("clean", "26-007").out()).startsWith("Entry 260:");
  }
}
