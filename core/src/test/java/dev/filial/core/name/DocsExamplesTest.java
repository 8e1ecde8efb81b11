package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What the handbook shows is what happens. */
class DocsExamplesTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Pattern ROW = Pattern.compile("\\| `([^`]+)` \\| `([^`]+)`.*\\|");

  private record Row(String typed, String result) {}

  /** The first two cells, where both are code, of the tables below a heading. */
  private static List<Row> rows(String page, String heading) throws IOException {
    List<Row> rows = new ArrayList<>();
    boolean below = false;
    for (String line : Files.readAllLines(DOCS.resolve(page))) {
      if (line.startsWith("#")) {
        below = line.replaceFirst("#+ ", "").equals(heading);
      }
      Matcher row = ROW.matcher(line);
      if (below && row.matches()) {
        rows.add(new Row(row.group(1), row.group(2)));
      }
    }
    assertThat(rows).as(page + ", " + heading).hasSizeGreaterThanOrEqualTo(3);
    return rows;
  }

  @Test
  void codesAreReadAsTheHandbookSays() throws IOException {
    assertThat(rows("codes-and-labels.md", "What may be typed"))
        .allSatisfy(row -> assertThat(Code.parse(row.typed()).text()).isEqualTo(row.result()));
  }

  @Test
  void smudgedTagsAreFoundAsTheHandbookSays() throws IOException {
    assertThat(rows("codes-and-labels.md", "Smudged tags"))
        .allSatisfy(
            row ->
                assertThat(SmudgedCode.parse(row.typed()).candidates(code -> true))
                    .extracting(Code::text)
                    .containsExactly(row.result()));
    assertThat(SmudgedCode.parse("26-0_3").candidates(code -> true)).hasSize(10);
  }

  @Test
  void travellingCodesAreWrittenAsTheHandbookSays() throws IOException {
    assertThat(rows("codes-and-labels.md", "When a plant leaves the house"))
        .allSatisfy(
            row -> {
              TravellingCode code = TravellingCode.parse(row.typed());
              assertThat(code.machineReadable()).isEqualTo(row.result());
              assertThat(TravellingCode.parseMachineReadable(row.result())).isEqualTo(code);
            });
  }

  @Test
  void theTableOfLettersIsTheAlphabet() throws IOException {
    String page = Files.readString(DOCS.resolve("codes-and-labels.md"));
    assertThat(page)
        .contains("| " + String.join(" | ", CheckLetter.FILIAL.alphabet().split("")) + " |");
  }

  @Test
  void theTagLooksAsTheHandbookShowsIt() throws IOException {
    LabelFacts facts =
        LabelFacts.of("26-013E")
            .withParentsOrTaxon(List.of("Echeveria agavoides × E. laui", "agavoides × laui"))
            .withDate(new TagDate(2026, 3, 4))
            .withGeneration("F1");
    LabelText both = LabelLayout.STANDARD.fit(facts);
    LabelText one = new LabelLayout(24, 2, 1, false).fit(facts);
    String shown =
        "front    %s\nback     %s\n         %s\nburied   %s\n"
            .formatted(
                both.front().get(0), both.back().get(0), both.back().get(1), both.buriedEnd());
    assertThat(Files.readString(DOCS.resolve("codes-and-labels.md")))
        .contains(shown)
        .contains("front    %s\n         %s\n".formatted(one.front().toArray()));
  }

  @Test
  void namesAreReadAsTheHandbookSays() throws IOException {
    assertThat(rows("notation.md", "Names of taxa"))
        .allSatisfy(row -> assertThat(TaxonName.parse(row.typed()).text()).isEqualTo(row.result()));
  }

  @Test
  void formulasAreReadAsTheHandbookSays() throws IOException {
    assertThat(rows("notation.md", "Hybrid formulas"))
        .allSatisfy(
            row -> assertThat(HybridFormula.parse(row.typed()).text()).isEqualTo(row.result()));
  }

  @Test
  void pedigreesAreReadAsTheHandbookSays() throws IOException {
    assertThat(rows("notation.md", "Pedigree notation"))
        .allSatisfy(row -> assertThat(Notation.parse(row.typed()).text()).isEqualTo(row.result()));
  }
}
