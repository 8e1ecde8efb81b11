package dev.filial.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.paper.Parsed;
import dev.filial.core.answer.SeasonsQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.name.ItalicNames;
import dev.filial.core.register.Count;
import dev.filial.core.register.Determination;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The part of a page that tells what happened in each year. */
class SeasonSectionTest {

  private static Statement packet(String code, @Nullable String day, String count) {
    return new SeedAcquired(
        Code.parse(code),
        Determination.of("Echeveria laui"),
        Provenance.UNKNOWN,
        day == null ? null : PartialDate.parse(day),
        Count.parse(count),
        null,
        null);
  }

  private static Statement sowing(String code, String day, String seeds) {
    Code packet = Code.parse(code);
    return new Sown(
        packet.sowing(1),
        packet.lot(1),
        PartialDate.parse(day),
        Count.parse(seeds),
        null,
        null,
        false,
        null,
        false,
        null,
        null,
        List.of(),
        List.of(),
        null,
        null);
  }

  private static Parsed section(Statement... register) {
    PageWriter page = new PageWriter("A page", PageLinks.NONE, ItalicNames.NONE);
    SeasonSection.write(page, SeasonsQuestion.of(Bookshelf.of(List.of(register))));
    return Parsed.of(page.end("Klara", 1).replaceFirst("^<!DOCTYPE html>\n", ""));
  }

  private static List<String> texts(List<Element> elements) {
    return elements.stream().map(Element::getTextContent).toList();
  }

  @Test
  void theNewestYearComesFirstAndTheUndatedLast() {
    Parsed page =
        section(
            packet("24-001", "2024-02", "40"),
            packet("25-001", "2025-02-01", "40"),
            sowing("25-001", "2026-03-01", "20"),
            packet("25-002", null, "~40"));

    assertThat(texts(page.all("h2"))).containsExactly("Season by season");
    assertThat(
            page.all("th").stream()
                .filter(th -> th.getAttribute("scope").equals("row"))
                .map(Element::getTextContent))
        .containsExactly("2026", "2025", "2024", "no day");
    assertThat(page.all("th")).allMatch(th -> th.getAttribute("scope").matches("row|col"));
    Element newest = page.all("tr").get(1);
    // Packets are in the second column of numbers, seed sown in the seventh.
    assertThat(texts(Parsed.under(newest, "td")).get(1)).isEqualTo("0");
    assertThat(texts(Parsed.under(newest, "td")).get(6)).isEqualTo("20");
    assertThat(Parsed.under(newest, "td"))
        .hasSize(13)
        .allMatch(td -> td.getAttribute("class").equals("number"));
    assertThat(page.all("section").get(0).getAttribute("aria-labelledby"))
        .isEqualTo(page.all("h2").get(0).getAttribute("id"));
  }

  @Test
  void whatIsLeftOutOfTheSumsIsSaid() {
    Parsed page =
        section(packet("24-001", "2024-02", "~40"), sowing("24-001", "2024-03-01", "~20"));

    assertThat(texts(page.all("td"))).contains("0+");
    assertThat(texts(page.all("p")))
        .anyMatch(text -> text.contains("A plus sign says that there was more"))
        .contains(
            "In no sum, since nobody counted: seed that came (about 40 guessed); seed sown (about"
                + " 20 guessed); came up (1 sowing not counted exactly).");
  }

  @Test
  void whereAllWasCountedNothingIsSaidToBeLeftOut() {
    Parsed page = section(packet("24-001", "2024-02", "40"));

    assertThat(texts(page.all("p")))
        .noneMatch(text -> text.contains("plus sign") || text.contains("In no sum"));
  }

  @Test
  void ofAnEmptyRegisterThereIsNoTable() {
    Parsed page = section();

    assertThat(page.all("table")).isEmpty();
    assertThat(texts(page.all("p"))).containsExactly("Nothing to sum up so far.");
  }
}
