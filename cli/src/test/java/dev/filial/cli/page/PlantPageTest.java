package dev.filial.cli.page;

import static dev.filial.cli.page.Bookshelf.cross;
import static dev.filial.cli.page.Bookshelf.manyWays;
import static dev.filial.cli.page.Bookshelf.plant;
import static dev.filial.cli.page.Bookshelf.rows;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.paper.MarkupTest;
import dev.filial.cli.paper.Parsed;
import dev.filial.core.answer.AncestryQuestion;
import dev.filial.core.answer.CardQuestion;
import dev.filial.core.answer.ListQuestion;
import dev.filial.core.answer.SeasonsQuestion;
import dev.filial.core.answer.SpreadQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class PlantPageTest {

  private static final String DOCTYPE = "<!DOCTYPE html>\n";

  static String page(List<Statement> register, String code) {
    RegisterView view = Bookshelf.of(register);
    Code plant = Code.parse(code);
    return PlantPage.of(
        new PlantPage.Content(
            CardQuestion.of(view).ask(plant),
            AncestryQuestion.of(view).withSpread(SpreadQuestion.usual()).ask(plant),
            Bookshelf.behind(view, code),
            List.of(new PlantPage.Came("24-099", "came <of> it")),
            new PageFrame("Klara & Co", view.size(), PageLinks.NONE, null)));
  }

  private static Parsed parsed(String page) {
    assertThat(page).startsWith(DOCTYPE);
    return Parsed.of(page.substring(DOCTYPE.length()));
  }

  private static List<String> texts(Parsed page, String tag) {
    return page.all(tag).stream().map(Element::getTextContent).toList();
  }

  @Test
  void allOfAPlantStandsUnderItsHeadings() {
    Parsed page = parsed(page(manyWays(), "24-008-1"));

    assertThat(texts(page, "h1")).containsExactly("24-008H-1");
    assertThat(texts(page, "h2"))
        .containsExactly(
            "What it is", "Who is in it", "Pedigree", "What was recorded of it", "What came of it");
    assertThat(texts(page, "h3")).contains("The ways it may have come about");
    assertThat(page.all("g", "fp-plant")).hasSize(6);
    assertThat(texts(page, "td")).anyMatch(text -> text.contains("24-008H-1 numbered"));
    assertThat(texts(page, "li")).contains("24-099 came <of> it");
    assertThat(texts(page, "footer")).singleElement().asString().contains("Klara & Co");
  }

  @Test
  void whoListensFindsTheirWay() {
    Parsed page = parsed(page(manyWays(), "24-009-1"));

    assertThat(page.document().getDocumentElement().getAttribute("lang")).isEqualTo("en");
    for (String landmark : List.of("header", "main", "footer")) {
      assertThat(page.all(landmark)).hasSize(1);
    }
    assertThat(page.all("th")).allMatch(one -> !one.getAttribute("scope").isEmpty());
    assertThat(page.all("svg"))
        .allMatch(one -> one.getAttribute("role").equals("img"))
        .allMatch(one -> one.hasAttribute("aria-label") || one.hasAttribute("aria-labelledby"));
    List<String> ids =
        page.all("*").stream()
            .map(one -> one.getAttribute("id"))
            .filter(id -> !id.isEmpty())
            .toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(page.all("*").stream().map(one -> one.getAttribute("aria-labelledby")))
        .allMatch(names -> names.isEmpty() || ids.containsAll(List.of(names.split(" ", -1))));
    assertThat(page.all("div", "wide")).allMatch(one -> one.getAttribute("tabindex").equals("0"));
  }

  @Test
  void theRangeOnTheBarIsTheOneInTheTable() {
    Parsed page = parsed(page(manyWays(), "24-005-1"));

    List<Element> rows =
        page.all("tr").stream().filter(row -> !Parsed.under(row, "svg").isEmpty()).toList();
    assertThat(rows).hasSize(2);
    for (Element row : rows) {
      List<Element> cells = Parsed.under(row, "td");
      String percent = cells.get(0).getTextContent().split(", ", -1)[1];
      assertThat(Parsed.under(row, "svg").get(0).getAttribute("aria-label"))
          .isEqualTo(
              Parsed.under(row, "th").get(0).getTextContent()
                  + " "
                  + percent
                  + ", likely between "
                  + cells.get(1).getTextContent());
    }
  }

  @Test
  void thePageAsksTheNetworkForNothing() {
    String page = page(manyWays(), "24-009-1");

    assertThat(
            page.replace("http://www.w3.org/1999/xhtml", "")
                .replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http")
        .doesNotContain("@import")
        .doesNotContain("<script ")
        .doesNotContain("src=")
        .doesNotContain("<link");
    assertThat(page.split("url\\(", -1))
        .allMatch(after -> after.startsWith("#") || after.startsWith("<!"));
  }

  /** A style sheet is no place for escapes: a browser reads it as it stands. */
  @Test
  void theStyleSheetsNeedNoEscapes() {
    for (Element style : parsed(page(manyWays(), "24-009-1")).all("style")) {
      assertThat(style.getTextContent()).doesNotContain("&", "<", ">");
    }
  }

  @Property(tries = 40)
  void aNameIsTextWhateverItIs(@ForAll @NotBlank @StringLength(max = 40) String name) {
    List<Statement> register = new ArrayList<>();
    register.add(plant("24-001", "Echeveria laui", name));
    register.add(plant("24-002", "Echeveria agavoides"));
    register.addAll(cross("24-003", "24-001", "24-002"));
    String kept =
        MarkupTest.holdable(
            CardQuestion.of(Bookshelf.of(register)).ask(Code.parse("24-001")).names().get(0));

    Parsed page = parsed(page(register, "24-001"));

    assertThat(texts(page, "h1")).containsExactly("24-001W " + kept);
    assertThat(page.all("bdi").stream().map(Element::getTextContent).collect(Collectors.toList()))
        .contains(kept);
    assertThat(page.all("section")).hasSize(5);
  }

  @Test
  void twoHundredPlantsMakeAPageToo() {
    Parsed page = parsed(page(rows(200), "26-999-1"));

    assertThat(page.all("g", "fp-plant")).hasSizeGreaterThan(200);
  }

  @Test
  void theIndexHasARowForEachThingAndIsWellFormed() {
    RegisterView view = Bookshelf.of(manyWays());
    List<ListQuestion.Line> lines = ListQuestion.of(view).ask();

    String page =
        IndexPage.of(
            new IndexPage.Content(
                lines,
                Map.of(),
                lines,
                SeasonsQuestion.of(view),
                "Klara & Co",
                view.size(),
                PageLinks.NONE));
    Parsed parsed = parsed(page);

    assertThat(texts(parsed, "h1")).containsExactly("The register of Klara & Co");
    assertThat(parsed.all("span", "code").stream().map(Element::getTextContent))
        .containsExactlyElementsOf(lines.stream().map(line -> line.code().text()).toList());
    assertThat(texts(parsed, "td")).contains("Rosa", "Echeveria agavoides");
    // A browser reads a script as it stands, so it may hold nothing that was escaped.
    assertThat(texts(parsed, "script"))
        .hasSize(2)
        .allSatisfy(script -> assertThat(script).doesNotContain("&", "<", ">"));
    assertThat(texts(parsed, "style"))
        .allSatisfy(style -> assertThat(style).doesNotContain("&", "<", ">"));
    assertThat(page.replace("http://www.w3.org/1999/xhtml", "")).doesNotContain("http");
  }
}
