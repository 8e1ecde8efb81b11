package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** Care from day to day, on the demo bench; the day is 15 June 2026. */
class DiaryVerbsTest {

  @TempDir Path folder;

  private DemoStory demo;

  @BeforeEach
  void aBench() throws IOException {
    demo = new DemoStory(folder);
  }

  /** What is due, one line a task: {@code look into: 26-006V P2, 26-006V P3 since 2026-06-13}. */
  private String due(String... more) {
    String[] words = new String[more.length + 1];
    words[0] = "due";
    System.arraycopy(more, 0, words, 1, more.length);
    StringBuilder lines = new StringBuilder();
    for (JsonNode task : demo.json(words).get("tasks")) {
      lines.append(task.get("work").stringValue()).append(':');
      for (JsonNode code : task.get("codes")) {
        lines.append(' ').append(code.stringValue()).append(',');
      }
      lines.append(' ').append(task.get("due").stringValue()).append('\n');
    }
    return lines.toString();
  }

  /**
   * By hand from the entries of the demo. The bag: last counted on 30 May, and two weeks. P2 had 12
   * of 20 up on 30 May, one more than before, and a week; P3 stood at 16 twice. 26-011C P2 was sown
   * on 16 May, and the bench's own sowings took three weeks. The fungicide of 21 May is repeated
   * after two weeks. Of the harvests of 14 May 2022 and 13 May 2023 seed is left, and three years
   * are 1095 days. Eight other pots of 2026 were counted but once, on 25 April.
   */
  @Test
  void theWorkListOfTheDemoIsRightByHand() {
    assertThat(due())
        .startsWith(
            """
            look_into: 26-006V P2, 26-006V P3, 2026-06-13
            count: 26-004R P1, 26-005T P1, 26-006V P1, 26-007W P1, 26-008X P1, 26-009Y P1, 26-010A P1, 26-011C P1, 2026-05-02
            count: 26-006V P2, 2026-06-06
            nothing_up: 26-011C P2, 2026-06-06
            treat: 26-006V P2, 26-006V P3, 2026-06-04
            send: 26-006V H1, 2026-04-12
            sow_soon: 22-009R H1, 22-010T H1, 2025-05-13
            sow_soon: 23-004E H1, 23-005H H1, 23-006J H1, 2026-05-12
            rewrite_tag: 22-001E, 22-002H, 2024-01-15
            """);
  }

  @Test
  void whatWasDoneIsDueNoLonger() {
    demo.told("look", "--in", "bag 1");
    demo.told("treat", "fungicide", "--in", "bag 1", "--remark", "the last time");
    demo.told("count", "--in", "bag 1", "--up", "13,16", "--alive", "12,14");
    demo.told("retag", "22-001", "22-002");
    demo.told("give", "26-006 H1", "--count", "15", "--to", "Jonas Muster");

    assertThat(due())
        .doesNotContain("look_into", "treat", "send", "22-001E")
        .contains("nothing_up: 26-011C P2");
    // One more came up in P2 than the last time, so it is counted again in a week.
    assertThat(due("--within", "7")).contains("count: 26-006V P2, 2026-06-22");
  }

  @Test
  void aBagIsOpenedWhenItsTimeHasCome() {
    assertThat(due("--on", "2026-06-27")).contains("open: 26-006V P2, 26-006V P3, 2026-06-27");
    assertThat(due("--within", "12")).contains("open: 26-006V P2, 26-006V P3, 2026-06-27");
    demo.told("open", "26-006 P2", "26-006 P3");
    assertThat(due("--within", "12")).doesNotContain("open").doesNotContain("look_into");
  }

  @Test
  void anIntervalOfTheGrowersOwnIsKept() {
    assertThat(demo.told("interval", "tag-fading", "3650"))
        .startsWith("Entry 260: from writing a tag until it is rewritten: 3650 days.");
    assertThat(due()).doesNotContain("rewrite_tag");
    assertThat(demo.refused(1, "interval", "tag-fading", "0")).contains("0");
    assertThat(demo.refused(2, "interval", "moonrise", "5")).contains("is none of coming-up,");
  }

  @Test
  void aTreatmentOfAWholeBagIsOneEntry() {
    assertThat(
            demo.told(
                "treat", "oxidiser", "--in", "bag 1", "--product", "peroxide", "--dilution", "3 %"))
        .startsWith("Entry 260: 26-006V P2, 26-006V P3: oxidiser, peroxide, 3 %.");
    assertThat(demo.refused(2, "treat", "oxidiser")).contains("WHAT is missing", "--in PLACE");
    assertThat(demo.refused(1, "treat", "oxidiser", "--in", "attic"))
        .contains("nothing stands in a place called \"attic\"; there are bag 1, balcony, bench A");
    assertThat(demo.refused(1, "look", "--in", "seed tin"))
        .contains("nothing of that kind stands in seed tin");
    assertThat(demo.refused(1, "look", "22-001")).contains("is a plant");
  }

  @Test
  void whereTheSeedlingsOfALotStandIsOneQuestion() {
    JsonNode lines = demo.json("where", "26-006 H1").get("lines");
    assertThat(lines.size()).isEqualTo(4);
    assertThat(lines.get(1).get("code").stringValue()).isEqualTo("26-006V P2");
    assertThat(lines.get(1).get("places").toString())
        .isEqualTo("[\"bag 1\",\"shelf\",\"kitchen\"]");
    assertThat(demo.told("where", "bag 1"))
        .contains("bag 1, shelf, kitchen  26-006V P2  pot      11  24-008H-1 × 22-002H");
    assertThat(demo.refused(1, "where", "attic")).contains("nothing stands in a place");
    assertThat(demo.refused(1, "where", "26-099")).contains("26-099");
  }

  @Test
  void aPlaceThatIsMovedTakesAllInItAlong() {
    demo.told("place", "bag 1", "--within", "bench A");
    assertThat(demo.json("where", "balcony").get("lines").toString())
        .contains("[\"bag 1\",\"bench A\",\"balcony\"]");
    assertThat(demo.refused(1, "place", "balcony", "--within", "bag 1"))
        .contains("would stand in itself");
    assertThat(demo.refused(1, "place", "shelf", "--within", "Shelf"))
        .contains("cannot stand in itself");
  }

  @Test
  void aPlaceCalledLikeAPlantIsAskedForAsAPlace() {
    demo.told("place", "Rosa", "--within", "shelf");
    demo.told("move", "26-001", "--to", "rosa");
    assertThat(demo.json("where", "Rosa").get("asked").stringValue()).isEqualTo("22-001E");
    JsonNode place = demo.json("where", "--in", "Rosa");
    assertThat(place.get("lines").get(0).get("code").stringValue()).isEqualTo("26-001M");
    assertThat(demo.refused(2, "where")).contains("where is what?");
    assertThat(demo.refused(2, "where", "Rosa", "--in", "Rosa")).contains("where is what?");
  }

  @Test
  void countsOfAPlaceAreInTheOrderOfTheirCodes() {
    Outcome outcome = demo.type("count", "--in", "bag 1", "--up", "13");
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("--up has 1 number for 2 codes");
    assertThat(demo.told("count", "--in", "bag 1", "--up", "13,16"))
        .startsWith("Entry 260: 26-006V P2: 13 came up; 26-006V P3: 16 came up.");
  }

  @Test
  void aPotOfWhichNothingIsUpYetStaysInItsBag() {
    demo.told("sow", "26-012", "40", "--pots", "2", "--place", "bag 2", "--closed");
    assertThat(demo.told("count", "--in", "bag 2", "--up", "0,0"))
        .contains("Next: when it is to be looked at again: filial due");
    assertThat(demo.told("count", "--in", "bag 2", "--up", "3,0")).contains("26-012D P2: 0");
    assertThat(demo.told("open", "--in", "bag 2"))
        .startsWith("Entry 263: 26-012D P1, 26-012D P2 opened.");
    assertThat(demo.told("where", "bag 2")).contains("26-012D P2").doesNotContain("no longer");
    // A pot that was emptied is no more in it.
    demo.told("number", "26-012 P1", "3");
    assertThat(demo.told("where", "bag 2")).doesNotContain("26-012D P1 ").contains("26-012D P2");
  }

  @Test
  void hardeningOffAndPottingOnAreKept() {
    assertThat(demo.told("harden", "26-013 P1", "--date", "yesterday"))
        .startsWith("Entry 260: 26-013E P1 hardened off.");
    assertThat(
            demo.told("poton", "24-007-2", "--container", "9 cm pot", "--medium", "pumice, loam"))
        .startsWith("Entry 261: 24-007E-2 potted on into 9 cm pot, pumice, loam.");
    assertThat(demo.refused(2, "harden", "26-013 P1", "--medium", "loam"))
        .contains("there is no option --medium");
  }
}
