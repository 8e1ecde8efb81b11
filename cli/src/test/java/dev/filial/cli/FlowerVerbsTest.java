package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Flowers, pollen and what set on what, on the demo bench on 15 June 2026. */
class FlowerVerbsTest {

  private static final String ODD_NAME = "=Köhler's <b>\"Rose\"</b> 🌵" + "x".repeat(300);

  @TempDir Path folder;
  @TempDir Path elsewhere;

  @BeforeEach
  void aBench() throws IOException {
    DemoRegister.in(folder);
  }

  private Outcome filial(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  private JsonNode json(String... words) {
    Outcome outcome = filial(words);
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return JsonMapper.shared().readTree(outcome.out());
  }

  @Test
  void whatIsInFlowerAndSinceWhen() {
    assertThat(filial("flowering").out())
        .isEqualTo(
            """
            In flower on 2026-06-15:
            plant    what it is             since                  to
            ───────  ─────────────────────  ─────────────────────  ───────────
            22-001E  Echeveria laui "Rosa"  2026-06-05, its first  ~2026-06-26
            22-004K  Echeveria colorata     2026-06-05, its first  ~2026-06-26
            Perhaps still, for nobody looked again:
            plant      what it is           since                  to
            ─────────  ───────────────────  ─────────────────────  ───────────
            24-007E-2  22-009R-1 × 22-001E  2026-05-22, its first  ~2026-06-12
            note  ~ is 21 days (common practice) after it was last seen open
            Next: which can be crossed: filial pairs
            """);
  }

  @Test
  void aPlantSeenTodayIsInFlowerAndSeenOverIsNot() {
    assertThat(filial("flower", "Morgenrot").out()).startsWith("Entry 260: 24-007E-1 in flower.");
    assertThat(json("flowering", "--json").get("open")).hasSize(3);
    assertThat(filial("flower", "Morgenrot", "--over", "--date", "yesterday").status()).isZero();
    // Seen open on the 15th and over on the 14th: what was seen last holds.
    assertThat(json("flowering", "--json").get("open")).hasSize(3);
    assertThat(filial("flower", "Morgenrot", "--over").out()).contains("out of flower");
    assertThat(json("flowering", "--on", "2026-06-16", "--json").get("open")).hasSize(2);
  }

  @Test
  void earlierDaysAreAskedAbout() {
    JsonNode open = json("flowering", "--on", "14 may 2026", "--json").get("open");
    assertThat(open).hasSize(2);
    assertThat(open.get(0).get("plant").stringValue()).isEqualTo("22-003J");
    assertThat(open.get(0).get("last").stringValue()).isEqualTo("2026-05-15");
    assertThat(open.get(0).get("seenOver").booleanValue()).isTrue();
  }

  @Test
  void aCrossDoesNotFlower() {
    Outcome outcome = filial("flower", "26-012");
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err()).contains("26-012D");
  }

  @ParameterizedTest
  @ValueSource(strings = {"26-099", "22-001Z", "", "<script>", "🌵", "'; --"})
  void aWrongCodeIsRefusedAndNothingWritten(String code) {
    for (String verb : new String[] {"flower", "pollen", "bridge", "sets"}) {
      Outcome outcome = verb.equals("pollen") ? filial(verb, code, "gathered") : filial(verb, code);
      assertThat(outcome.status()).as(verb + outcome.out()).isBetween(1, 2);
      assertThat(outcome.err()).startsWith("filial " + verb + ": ");
    }
    assertThat(filial("flower", "22-001").out()).startsWith("Entry 260:");
  }

  @Test
  void pollenIsGatheredDriedFrozenAndUsedUp() {
    assertThat(filial("pollen", "22-001", "gathered", "--place", "silica gel").out())
        .startsWith("Entry 260: pollen of 22-001E gathered, silica gel.");
    filial("pollen", "22-001", "frozen", "--place", "freezer");
    JsonNode box = json("pollenbox", "--json").get("pollen");
    assertThat(box).hasSize(2);
    assertThat(box.get(0).get("plant").stringValue()).isEqualTo("22-001E");
    assertThat(box.get(0).get("step").stringValue()).isEqualTo("frozen");
    assertThat(box.get(0).get("age").intValue()).isZero();
    // 10 May to 15 June: 21 days of May and 15 of June.
    assertThat(box.get(1).get("age").intValue()).isEqualTo(36);
    filial("pollen", "22-001", "used-up");
    assertThat(json("pollenbox", "--json").get("pollen")).hasSize(1);
    assertThat(json("pollenbox", "--all", "--json").get("pollen")).hasSize(3);
  }

  @Test
  void pollenNobodyGatheredCannotBeUsedUp() {
    assertThat(filial("pollen", "22-001", "used-up").err())
        .contains("no pollen of 22-001E was left on 2026-06-15");
    assertThat(filial("pollen", "22-001", "gathered", "--of", "1 jun").status()).isEqualTo(2);
    assertThat(filial("pollen", "22-003", "dried", "--from", "Lena").status()).isEqualTo(2);
    assertThat(filial("pollen", "22-003", "eaten").err()).contains("gathered");
  }

  @Test
  void pairsOfToday() {
    assertThat(json("pairs", "--json").get("pairs"))
        .singleElement()
        .satisfies(
            pair -> {
              assertThat(pair.get("one").stringValue()).isEqualTo("22-001E");
              assertThat(pair.get("other").stringValue()).isEqualTo("22-004K");
              assertThat(pair.get("to").stringValue()).isEqualTo("2026-06-26");
            });
    assertThat(filial("pairs", "--on", "2026-06-15", "--year", "2026").status()).isEqualTo(2);
    assertThat(filial("pairs", "--year", "1999").out()).contains("No two plants");
    assertThat(filial("pairs", "--year", "999999999").status()).isZero();
  }

  @Test
  void anOffsetInFlowerIsAPairOnlyWhenAskedFor() {
    filial("flower", "23-003");
    assertThat(json("pairs", "--json").get("leftOut").intValue()).isEqualTo(1);
    assertThat(json("pairs", "--json").get("pairs")).hasSize(2);
    assertThat(json("pairs", "--clones", "--json").get("pairs")).hasSize(3);
  }

  @Test
  void frozenPollenBridgesTheGap() {
    String told = filial("bridge", "22-006").out();
    assertThat(told)
        .contains("22-006M (Echeveria lilacina) is not known to be in flower on 2026-06-15.")
        .contains("2026-05-12 to 2026-06-06")
        .contains("22-003J Echeveria")
        .contains("frozen 2026-05-12");
    assertThat(filial("bridge", "22-007").err()).contains("22-007N is not here on 2026-06-15");
    assertThat(filial("bridge", "22-003").out()).contains("1 of its own clone left out");
  }

  @Test
  void whatSetBothWaysAndWhatIsNotKnown() {
    assertThat(filial("sets", "22-008").out())
        .isEqualTo(
            """
            Flowers that set, of those it is known of:
            one      other    one bears, pollen of other  other bears, pollen of one
            ───────  ───────  ──────────────────────────  ──────────────────────────
            22-001E  22-008P                              2 of 3 (21–94 %), 1 eaten
            """);
    filial("cross", "22-001", "22-008", "--flowers", "4", "--bagged");
    filial("fruit", "26-015", "--failed", "3");
    assertThat(filial("sets", "22-008").out())
        .contains("0 of 3 (0–56 %), 1 unknown")
        .contains("note  1 flower of which nobody wrote whether it set");
  }

  @Test
  void fruitMayDropOrBeEaten() {
    assertThat(filial("fruit", "26-014", "--set", "2", "--eaten", "1").out())
        .startsWith("Entry 260: flowers of 26-014H: 2 set, 1 eaten.");
    assertThat(filial("fruit", "26-014", "--aborted", "3").err())
        .contains("3 fruits of 26-014H dropped unripe, and 2 had set");
    assertThat(filial("fruit", "26-014", "--aborted", "-1").status()).isEqualTo(2);
    assertThat(filial("fruit", "26-014").status()).isEqualTo(2);
  }

  @Test
  void aBeeIsNotThoughtToComeFromAPlantThatWasNotInFlower() {
    Outcome outcome =
        filial("cross", "22-001", "--open", "--perhaps", "22-003", "--unknown", "1/2");
    assertThat(outcome.err())
        .contains("22-003J was seen in flower that year, and by what was seen not on\n2026-06-15;");
    assertThat(filial("cross", "22-001", "--open", "--perhaps", "22-004", "--unknown", "1/2").err())
        .doesNotContain("seen in flower");
  }

  @Test
  void anOddNameIsKeptAndShownAsItIs() {
    filial("plant", "Echeveria laui", "--name", ODD_NAME);
    filial("flower", "26-015");
    assertThat(json("flowering", "--json").get("open").get(2).get("names").get(0).stringValue())
        .isEqualTo(ODD_NAME);
    assertThat(filial("flowering").out()).contains("Köhler's").contains("🌵");
    assertThat(filial("flowering").out().lines()).allMatch(line -> line.length() <= 80);
  }

  @Test
  void anEmptyRegisterHasNothing() {
    CommandLineRun empty = new CommandLineRun().in(elsewhere);
    empty.run("start", "KB", "--grower", "Klara");
    assertThat(empty.run("flowering").out()).startsWith("Nothing was seen in flower");
    assertThat(empty.run("pollenbox").out()).startsWith("No pollen is kept.");
    assertThat(empty.run("pairs").out()).startsWith("No two plants");
    assertThat(empty.run("sets").out()).startsWith("Nothing was pollinated by hand");
    assertThat(empty.run("sets", "--by", "taxon").status()).isZero();
    assertThat(empty.run("sets", "--by", "colour").status()).isEqualTo(2);
  }
}
