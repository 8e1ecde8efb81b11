package dev.filial.cli.page;

import static dev.filial.cli.page.Bookshelf.behind;
import static dev.filial.cli.page.Bookshelf.cross;
import static dev.filial.cli.page.Bookshelf.five;
import static dev.filial.cli.page.Bookshelf.manyWays;
import static dev.filial.cli.page.Bookshelf.plant;
import static dev.filial.cli.page.Bookshelf.rows;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import dev.filial.cli.paper.FontWidths;
import dev.filial.cli.paper.MarkupTest;
import dev.filial.cli.paper.Parsed;
import dev.filial.core.answer.PlantsBehindQuestion;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.name.Code;
import dev.filial.core.register.Statement;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.NotBlank;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Element;

class PedigreeDrawingTest {

  private static String draw(List<Statement> register, String code) {
    return PedigreeDrawing.of(behind(Bookshelf.of(register), code));
  }

  static Stream<PlantsBehind> pedigrees() {
    return Stream.of(
        behind(Bookshelf.of(five()), "24-005-1"),
        behind(Bookshelf.of(manyWays()), "24-009-1"),
        behind(Bookshelf.of(rows(200)), "26-999-1"));
  }

  private static PedigreeLayout layout(PlantsBehind behind) {
    Palette palette = new Palette(behind.taxa());
    return PedigreeLayout.of(
        behind,
        plant ->
            FontWidths.Weights.read()
                        .regular()
                        .width(PedigreeDrawing.words(plant, palette).second())
                    * 11
                + 20,
        68);
  }

  @ParameterizedTest
  @MethodSource("pedigrees")
  void eachPlantIsDrawnOnceAndEachParentHasItsLine(PlantsBehind behind) {
    Parsed svg = Parsed.of(PedigreeDrawing.of(behind));

    List<String> codes =
        svg.all("g", "fp-plant").stream()
            .map(box -> Parsed.under(box, "text").get(0).getTextContent().replace('\u00A0', ' '))
            .toList();
    assertThat(codes)
        .doesNotHaveDuplicates()
        .containsExactlyElementsOf(
            behind.plants().stream().map(PlantsBehindQuestion.Plant::name).toList());
    assertThat(svg.all("g", "fp-line")).hasSameSizeAs(behind.parents());
    for (PlantsBehindQuestion.Parent parent : behind.parents()) {
      String who = parent.parent() == null ? "unknown" : parent.parent();
      assertThat(svg.all("g", "fp-line"))
          .anyMatch(
              line ->
                  Parsed.under(line, "title")
                      .get(0)
                      .getTextContent()
                      .startsWith(parent.offspring() + ": " + parent.role().text() + " " + who));
    }
  }

  @Test
  void sharedAncestorsSelfingsAndDoubtsAreDrawnOnce() {
    Parsed svg = Parsed.of(draw(manyWays(), "24-009-1"));

    assertThat(svg.all("g", "fp-plant")).hasSize(9);
    // The F1 stands once, though the F2, the backcross and the offset all come of it.
    assertThat(svg.all("path", "fp-self")).hasSize(2);
    assertThat(svg.all("path", "fp-self-in")).hasSize(2);
    assertThat(svg.all("path", "fp-copy")).hasSize(2);
    assertThat(svg.all("rect", "fp-inner")).hasSize(1);
    assertThat(svg.all("text", "fp-label").stream().map(Element::getTextContent))
        .containsExactly("pollen? 37.5 %", "pollen? 37.5 %", "pollen? 25 %");
    assertThat(svg.all("circle", "fp-none")).hasSize(1);
  }

  @ParameterizedTest
  @MethodSource("pedigrees")
  void linesEndAtTheBoxesTheyJoinAndNoTwoBoxesOverlap(PlantsBehind behind) {
    PedigreeLayout layout = layout(behind);

    for (PedigreeLayout.Line line : layout.lines()) {
      PedigreeLayout.Point end = line.points().get(line.points().size() - 1);
      assertThat(layout.boxes())
          .filteredOn(box -> box.plant().name().equals(line.parent().offspring()))
          .singleElement()
          .satisfies(
              box -> {
                assertThat(end.x()).isCloseTo(box.x(), offset(0.1));
                assertThat(end.y()).isBetween(box.y(), box.y() + box.height());
              });
      if (line.parent().parent() != null) {
        PedigreeLayout.Point start = line.points().get(0);
        assertThat(layout.boxes())
            .filteredOn(box -> box.plant().name().equals(line.parent().parent()))
            .singleElement()
            .satisfies(box -> assertThat(start.x()).isCloseTo(box.x() + box.width(), offset(0.1)));
      }
    }
    List<double[]> fields = new ArrayList<>();
    layout.boxes().forEach(b -> fields.add(new double[] {b.x(), b.y(), b.width(), b.height()}));
    layout.lines().stream()
        .map(PedigreeLayout.Line::label)
        .filter(label -> label != null)
        .forEach(b -> fields.add(new double[] {b.x(), b.y(), b.width(), b.height()}));
    for (int i = 0; i < fields.size(); i++) {
      assertThat(fields.get(i)[0]).isNotNegative();
      assertThat(fields.get(i)[0] + fields.get(i)[2]).isLessThanOrEqualTo(layout.width());
      assertThat(fields.get(i)[1] + fields.get(i)[3]).isLessThanOrEqualTo(layout.height());
      for (int j = 0; j < i; j++) {
        assertThat(overlap(fields.get(i), fields.get(j))).as(i + " and " + j).isFalse();
      }
    }
  }

  private static boolean overlap(double[] one, double[] other) {
    return one[0] < other[0] + other[2]
        && other[0] < one[0] + one[2]
        && one[1] < other[1] + other[3]
        && other[1] < one[1] + one[3];
  }

  /** Measured in the face that this machine has for sans-serif, not by the table of widths. */
  @ParameterizedTest
  @MethodSource("pedigrees")
  void noTextIsWiderThanItsBox(PlantsBehind behind) {
    Parsed svg = Parsed.of(PedigreeDrawing.of(behind));

    assertWordsFit(svg);
  }

  private static void assertWordsFit(Parsed svg) {
    for (Element box : svg.all("g", "fp-plant")) {
      double width = Double.parseDouble(Parsed.under(box, "rect").get(0).getAttribute("width"));
      for (Element text : Parsed.under(box, "text")) {
        double from = Double.parseDouble(text.getAttribute("x"));
        boolean bold = text.getAttribute("class").equals("fp-code");
        Font font =
            new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 1)
                .deriveFont(bold ? 13f : 11f);
        double wide =
            font.getStringBounds(text.getTextContent(), new FontRenderContext(null, true, true))
                .getWidth();
        assertThat(from + wide).as(text.getTextContent()).isLessThanOrEqualTo(width - 8);
      }
    }
  }

  @Test
  void theOrderOfTheEntriesChangesNothing() {
    List<Statement> one = new ArrayList<>(manyWays());
    List<Statement> other = new ArrayList<>(one);
    // The unknown plant first, then the two species the other way round.
    other.add(0, other.remove(8));
    Collections.swap(other, 1, 2);

    assertThat(draw(other, "24-009-1")).isEqualTo(draw(one, "24-009-1"));
  }

  @Test
  void drawnAgainItIsTheSameToTheByte() {
    PlantsBehind behind = behind(Bookshelf.of(rows(60)), "26-999-1");

    assertThat(PedigreeDrawing.of(behind)).isEqualTo(PedigreeDrawing.of(behind));
  }

  /**
   * Names of any letters at all, with brackets, quotes, emoji and right-to-left ones among them.
   */
  @Property(tries = 60)
  void aNameIsTextWhateverItIs(@ForAll @NotBlank @StringLength(max = 60) String name) {
    List<Statement> register = new ArrayList<>();
    register.add(plant("24-001", "Echeveria laui", name));
    register.add(plant("24-002", "Echeveria agavoides"));
    register.addAll(cross("24-003", "24-001", "24-002"));

    PlantsBehind behind = behind(Bookshelf.of(register), "24-003-1");
    Parsed svg = Parsed.of(PedigreeDrawing.of(behind));

    String kept = behind.plants().get(0).names().get(0);
    assertThat(svg.all("desc").get(0).getTextContent()).contains(MarkupTest.holdable(kept));
    assertThat(svg.all("g", "fp-plant")).hasSize(3);
  }

  @Test
  void strangeNamesFitTheirBoxesToo() {
    List<Statement> register = new ArrayList<>();
    String[] names = {
      "<b>&\"bold\"</b>",
      "ורד לבן",
      "العربية",
      "😀🌵😀🌵😀🌵😀🌵😀🌵😀🌵😀🌵😀",
      "W".repeat(80),
      "雪の女王雪の女王雪の女王雪の女王",
      "Ж".repeat(40)
    };
    for (int i = 0; i < names.length; i++) {
      register.add(plant("24-00" + (i + 1), "Echeveria laui", names[i]));
      if (i > 0) {
        String seed = i == 1 ? "24-001" : "25-00" + i + "-1";
        register.addAll(cross("25-00" + (i + 1), seed, "24-00" + (i + 1)));
      }
    }

    Parsed svg = Parsed.of(draw(register, "25-007-1"));

    assertWordsFit(svg);
    assertThat(svg.all("text", "fp-name").stream().map(Element::getTextContent))
        .hasSize(names.length)
        .contains(names[0], names[1], names[2])
        .anyMatch(text -> text.startsWith("WWW") && text.endsWith("…"));
  }

  @Test
  void moreTaxaThanColoursAreToldApartByStripesAndLetters() {
    List<String> taxa = new ArrayList<>();
    for (int i = 0; i < 30; i++) {
      taxa.add("Echeveria " + (char) ('a' + i % 26) + i);
    }
    Palette palette = new Palette(taxa);

    assertThat(taxa.stream().map(palette::letter)).doesNotHaveDuplicates();
    assertThat(taxa.stream().map(palette::fill)).doesNotHaveDuplicates();
    assertThat(palette.letter(taxa.get(26))).isEqualTo("AA");
    assertThat(palette.letter("unknown")).isEqualTo("?");
  }

  @Test
  void aPedigreeCutShortSaysSo() {
    PlantsBehind two =
        PlantsBehindQuestion.of(Bookshelf.of(five()))
            .withGenerations(1)
            .ask(Code.parse("24-005-1"));

    Parsed svg = Parsed.of(PedigreeDrawing.of(two));

    assertThat(svg.all("g", "fp-plant")).hasSize(3);
    assertThat(svg.all("desc").get(0).getTextContent()).contains("whose parents are left out");
  }

  /** WCAG 2.2: 1.4.3 asks 4.5 for text, 1.4.11 asks 3 for what has to be seen to understand. */
  @Test
  void wordsAndLinesStandOutFromTheirGround() {
    for (String[] pair :
        new String[][] {
          {Ink.TEXT, Ink.PAPER},
          {Ink.TEXT, Ink.BOX},
          {Ink.SOFT, Ink.PAPER},
          {Ink.SOFT, Ink.BOX},
          {Ink.DARK_TEXT, Ink.DARK_PAPER},
          {Ink.DARK_TEXT, Ink.DARK_BOX},
          {Ink.DARK_SOFT, Ink.DARK_PAPER},
          {Ink.DARK_SOFT, Ink.DARK_BOX}
        }) {
      assertThat(Contrast.between(pair[0], pair[1]))
          .as(String.join(" on ", pair))
          .isGreaterThanOrEqualTo(4.5);
    }
    for (String[] pair :
        new String[][] {
          {Ink.STROKE, Ink.PAPER},
          {Ink.DARK_STROKE, Ink.DARK_PAPER},
          {Ink.DARK_STROKE, Ink.DARK_BOX}
        }) {
      assertThat(Contrast.between(pair[0], pair[1]))
          .as(String.join(" on ", pair))
          .isGreaterThanOrEqualTo(3.0);
    }
    // The edge between two fields of a bar, and on dark the fields themselves.
    for (String colour : Palette.COLOURS) {
      assertThat(Contrast.between(colour, Palette.EDGE)).as(colour).isGreaterThanOrEqualTo(3.0);
      assertThat(Contrast.between(colour, Ink.DARK_BOX))
          .as(colour + " on dark")
          .isGreaterThanOrEqualTo(3.0);
    }
  }

  /** The colours as Okabe and Ito publish them, in red, green and blue of 0 to 255. */
  @Test
  void theColoursAreThoseOfOkabeAndIto() {
    int[][] published = {
      {230, 159, 0},
      {86, 180, 233},
      {0, 158, 115},
      {240, 228, 66},
      {0, 114, 178},
      {213, 94, 0},
      {204, 121, 167}
    };
    List<String> as =
        Stream.of(published)
            .map(rgb -> String.format(Locale.ROOT, "#%02X%02X%02X", rgb[0], rgb[1], rgb[2]))
            .toList();

    assertThat(Palette.COLOURS).isEqualTo(as);
  }
}
