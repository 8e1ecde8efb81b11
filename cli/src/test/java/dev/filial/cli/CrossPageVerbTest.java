package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.paper.Parsed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The page of a cross, written of the demo bench. */
class CrossPageVerbTest {

  @TempDir Path folder;

  private DemoStory demo;

  @BeforeEach
  void theDemoBench() throws IOException {
    demo = new DemoStory(folder);
  }

  private String written(String file) throws IOException {
    return Files.readString(folder.resolve(file));
  }

  @Test
  void theOddsOnThePageAreThoseOfTheVerb() throws IOException {
    demo.told("page", "26-013");

    String page = written("26-013E.html");
    assertThat(page)
        .contains("What it may throw")
        .contains("ratio 1:1")
        .contains("Of 16 seedlings there are expected: p 8 red; q 8 plain")
        .contains("Germination is reckoned as 49 of 60, own sowings of 26-013E");
    JsonNode hope =
        demo.json("odds", "26-013", "--want", "tips=plain").get("scenarios").get(0).get("hope");
    assertThat(page).contains("<td class=\"number\">" + hope.get("seeds").asInt() + "</td>");
    assertThat(Parsed.of(page.substring(page.indexOf('\n') + 1)).all("section")).hasSize(10);
  }

  @Test
  void thePageSaysOfATallyWhatTheFitSays() throws IOException {
    demo.told("page", "26-013", "--to", "cross.html");

    // 9 and 8 of a tally, and one red of a pot that was not tallied: 1/9 + 1/9 = 0.22, p 0.64.
    String said = demo.told("fit", "26-013", "--trait", "tips").replaceAll("\\s+", " ");
    assertThat(said).contains("the counts fit 1:1. Families that fit no better come up in 64");
    assertThat(written("cross.html"))
        .contains("The counts fit 1:1. Families that fit no better come up in 64 of 100");
  }

  @Test
  void aSeedLotASowingAndAPotStandForTheirCross() throws IOException {
    assertThat(demo.told("page", "26-013 H2")).contains("26-013E into 26-013E.html");
    for (String of : new String[] {"26-013 S1", "26-013 P1"}) {
      demo.told("page", of, "--to", of + ".html");
      assertThat(written(of + ".html")).isEqualTo(written("26-013E.html"));
    }
  }

  @Test
  void photographsOfItsPotsAreOnThePageOnceWhereTheyAreAskedFor() throws IOException {
    Files.writeString(folder.resolve("pots.jpg"), "a picture");
    demo.told("photo", "26-013 P1", "pots.jpg");
    demo.told("photo", "26-013 P2", "pots.jpg");

    demo.told("page", "26-013", "--to", "without.html");
    demo.told("page", "26-013", "--to", "with.html", "--photos", "linked");

    assertThat(written("without.html")).doesNotContain("Photographs");
    assertThat(written("with.html").split("href=\"./pots.jpg\"", -1)).hasSize(2);
  }

  @Test
  void aSeedlingKeepsItsOwnPage() throws IOException {
    demo.told("page", "26-013-1", "--to", "seedling.html");

    assertThat(written("seedling.html")).doesNotContain("What it may throw");
  }

  @Test
  void noPageFailsForWhatIsNotKnownOfItsFamily() throws IOException {
    for (JsonNode line : demo.json("list", "--kind", "crosses", "--all").get("things")) {
      String code = line.get("code").asString();

      JsonNode said = demo.json("page", code, "--to", code + ".html");

      assertThat(said.get("code").asString()).isEqualTo(code);
      assertThat(said.get("entries").asInt()).isPositive();
      assertThat(written(code + ".html")).contains("What it may throw");
    }
    // A triploid, a mixture, a packet, and pollen nobody knows of.
    demo.type("page", "24-011", "--to", "a.html");
    assertThat(written("a.html"))
        .contains("What is not reckoned")
        .contains("what <span class=\"whole\">23-001A</span> carries (tips)");
    demo.type("page", "25-001", "--to", "b.html");
    assertThat(written("b.html")).contains("is a mixed packet of which no two parents");
    demo.type("page", "22-011", "--to", "c.html");
    assertThat(written("c.html")).contains("packet of seed");
    demo.type("page", "23-004", "--to", "d.html");
    assertThat(written("d.html")).contains("nobody knows whose pollen");
  }
}
