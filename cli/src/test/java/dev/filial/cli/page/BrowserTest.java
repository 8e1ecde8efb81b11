package dev.filial.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.ListQuestion;
import dev.filial.core.answer.ParentNames;
import dev.filial.core.answer.SeasonsQuestion;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** What a browser makes of pages and drawings. Skipped, saying so, where there is none. */
class BrowserTest {

  private static final int TELEPHONE = 360;
  private static final int LIGHT = 0xFFFFFF;
  private static final int DARK = 0x16181A;
  private static final double POINTS = 72 / 25.4;

  private static Browser browser;

  @TempDir Path folder;

  @BeforeAll
  static void start() {
    browser = Browser.start();
  }

  @AfterAll
  static void quit() {
    if (browser != null) {
      browser.close();
    }
  }

  @BeforeEach
  void asItIsAtFirst() {
    browser.dark(false).window(1000, 1600).scripts(true);
  }

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text);
  }

  private Path index(List<Statement> register) throws IOException {
    RegisterView view = Bookshelf.of(register);
    List<ListQuestion.Line> lines = ListQuestion.of(view).ask();
    return write(
        "index.html",
        IndexPage.of(
            new IndexPage.Content(
                lines,
                lines.stream()
                    .collect(
                        Collectors.toMap(
                            ListQuestion.Line::code, line -> ParentNames.in(view).of(line.code()))),
                lines,
                SeasonsQuestion.of(view),
                "Klara",
                view.size(),
                PageLinks.NONE)));
  }

  private Path plant() throws IOException {
    return write("page.html", PlantPageTest.page(Bookshelf.manyWays(), "24-009-1"));
  }

  private Path cross() throws IOException {
    return write("cross.html", CrossPageTest.page(FamilyShelf.everything(), "24-010"));
  }

  /** One of each kind; the last of a cross whose chromosomes may pair in four ways. */
  private List<Path> pages() throws IOException {
    return List.of(
        plant(),
        index(Bookshelf.manyWays()),
        cross(),
        write("four.html", CrossPageTest.page(FamilyShelf.tetraploid(), "24-010")));
  }

  private static Set<Integer> colours() throws IOException {
    BufferedImage image = browser.picture();
    Set<Integer> found = new HashSet<>();
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        found.add(image.getRGB(x, y) & 0xFFFFFF);
      }
    }
    return found;
  }

  @Test
  void theDrawingShowsItsColoursAndNothingOnDark() throws IOException {
    Path file =
        write(
            "drawing.svg",
            PedigreeDrawing.of(Bookshelf.behind(Bookshelf.of(Bookshelf.five()), "24-005-1")));

    browser.open(file);
    Set<Integer> light = colours();
    browser.dark(true).open(file);
    Set<Integer> dark = colours();

    assertThat(light).contains(LIGHT, 0xE69F00, 0x56B4E9).doesNotContain(DARK);
    assertThat(dark).contains(DARK, 0xE69F00, 0x56B4E9);
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void aPageAsksForNothingElseAndComplainsOfNothing() throws IOException {
    for (Path page : pages()) {
      browser.open(page);

      assertThat(browser.requests()).containsExactly(page.toUri().toString());
      assertThat(browser.complaints()).isEmpty();
    }
  }

  /** The harness can fail: a page that asks for a picture is found out. */
  @Test
  void aPageThatAsksForAPictureWouldBeFoundOut() throws IOException {
    Path page = write("asks.html", "<!DOCTYPE html><title>x</title><img src='there.png'>");

    browser.open(page);

    assertThat(browser.requests()).anyMatch(url -> url.endsWith("there.png"));
    assertThat(browser.complaints()).isNotEmpty();
    assertThat(browser.violations()).anyMatch(told -> told.startsWith("image-alt"));
  }

  @Test
  void axeFindsNothingWrongOnLightOrDarkWideOrNarrow() throws IOException {
    for (Path page : pages()) {
      for (boolean dark : new boolean[] {false, true}) {
        for (int width : new int[] {1000, TELEPHONE}) {
          browser.dark(dark).window(width, 900).open(page);
          assertThat(browser.violations())
              .as(page.getFileName() + (dark ? " dark " : " light ") + width)
              .isEmpty();
        }
      }
    }
  }

  @Test
  void aPageIsLightOrDarkAsTheScreenIs() throws IOException {
    Path page = plant();

    browser.open(page);
    Set<Integer> light = colours();
    browser.dark(true).open(page);
    Set<Integer> dark = colours();

    assertThat(light).contains(LIGHT, 0xE69F00).doesNotContain(DARK);
    assertThat(dark).contains(DARK, 0xE69F00);
  }

  @Test
  void theStripAndTheCurveShowTheirColoursOnLightAndOnDark() throws IOException {
    Path page = cross();
    for (boolean dark : new boolean[] {false, true}) {
      browser.dark(dark).open(page);
      browser.run("document.querySelector('.strip').scrollIntoView(); return true;");
      assertThat(colours()).as("strip " + dark).contains(0xCC79A7, 0x0072B2);
      browser.run("document.querySelector('.curve').scrollIntoView(); return true;");
      assertThat(colours()).as("curve " + dark).contains(0xE69F00, 0x56B4E9);
    }
  }

  @Test
  void thePageOfACrossIsPrintedWithAllThatItTells() throws IOException {
    browser.open(cross());
    try (PDDocument pdf = Loader.loadPDF(browser.printed(210, 297))) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains("What it may throw", "green, bare", "days after sowing", "25-001");
    }
  }

  /** The rest of the list would be pushed out of sight, and rows made as high as the name. */
  @Test
  void aNameOfThreeHundredLettersLeavesTheOthersTheirColumns() throws IOException {
    List<Statement> register = new ArrayList<>(Bookshelf.manyWays());
    register.add(Bookshelf.plant("24-090", "Echeveria laui", "X" + "y".repeat(299)));

    browser.window(1100, 900).open(index(register));

    assertThat((Boolean) browser.run("return " + KIND_IN_SIGHT)).isTrue();
  }

  private static final String KIND_IN_SIGHT =
      "document.querySelector('table.list thead').rows[0].cells[3].getBoundingClientRect().right"
          + " < window.innerWidth;";

  @Test
  void aBarIsNarrowerOnATelephoneAndNoLower() throws IOException {
    browser.open(plant());
    List<?> wide = (List<?>) browser.run(BAR);
    browser.window(TELEPHONE, 700).open(plant());
    List<?> narrow = (List<?>) browser.run(BAR);

    assertThat((Long) narrow.get(0)).isLessThan((Long) wide.get(0));
    assertThat(narrow.get(1)).isEqualTo(wide.get(1));
  }

  private static final String BAR =
      "const bar = document.querySelector('.bar').getBoundingClientRect();"
          + "return [Math.round(bar.width), Math.round(bar.height)];";

  @Test
  void nothingSticksOutOfATelephone() throws IOException {
    for (Path page : pages()) {
      browser.window(TELEPHONE, 700).open(page);
      assertThat(browser.sideways()).as(page.toString()).isZero();
    }
  }

  /** What looks like a code and stands in two lines. */
  private static final String PARTED =
      "const parted = [];"
          + "const all = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);"
          + "while (all.nextNode()) {"
          + "  const text = all.currentNode;"
          + "  if (text.parentElement.closest('svg,script,style')) { continue; }"
          + "  for (const code of text.data.matchAll(/\\d\\d-\\d{3}[A-Z](-\\d+| [PHS]\\d+)?/g)) {"
          + "    const range = document.createRange();"
          + "    range.setStart(text, code.index);"
          + "    range.setEnd(text, code.index + code[0].length);"
          + "    const tops = new Set(Array.from(range.getClientRects(), one => one.top));"
          + "    if (tops.size > 1) { parted.push(code[0]); }"
          + "  }"
          + "}"
          + "return parted;";

  @Test
  void noCodeIsPartedAtTheEndOfALine() throws IOException {
    for (Path page : pages()) {
      for (int width : new int[] {TELEPHONE, 500, 1000}) {
        browser.window(width, 700).open(page);
        assertThat((List<?>) browser.run(PARTED)).as(page.getFileName() + " " + width).isEmpty();
      }
    }
    // The look can fail.
    browser.open(write("parted.html", "<p style='width:3em'>24-003Y-1 24-003Y-1</p>"));
    assertThat((List<?>) browser.run(PARTED)).isNotEmpty();
  }

  @Test
  void whatIsWiderThanThePageIsMovedWithTheKeyboard() throws IOException {
    browser.window(TELEPHONE, 700).open(plant());
    WebElement drawing = browser.one(".drawing");

    drawing.sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);

    browser.run("return new Promise(function (done) { setTimeout(done, 400, true); });");
    assertThat((Number) browser.run("return document.querySelector('.drawing').scrollLeft;"))
        .satisfies(left -> assertThat(left.doubleValue()).isPositive());
  }

  @Test
  void thePageIsPrintedOnA4AndOnLetter() throws IOException {
    Path page = plant();
    for (double[] paper : new double[][] {{210, 297}, {215.9, 279.4}}) {
      browser.open(page);
      try (PDDocument pdf = Loader.loadPDF(browser.printed(paper[0], paper[1]))) {
        PDRectangle box = pdf.getPage(0).getMediaBox();
        assertThat((double) box.getWidth()).isCloseTo(paper[0] * POINTS, within(1.0));
        assertThat((double) box.getHeight()).isCloseTo(paper[1] * POINTS, within(1.0));
        String text = new PDFTextStripper().getText(pdf);
        assertThat(text).contains("24-009J-1", "What came of it", "Klara & Co");
        assertThat(text).doesNotContain("can be moved sideways");
      }
    }
  }

  /** The codes of the list that are laid out. */
  private static List<String> shown() {
    List<?> codes =
        (List<?>)
            browser.run(
                "return Array.from(document.querySelectorAll('table.list tbody tr'))"
                    + ".filter(function (row) { return row.getClientRects().length > 0; })"
                    + ".map(function (row) { return row.cells[0].textContent; });");
    return codes.stream().map(String::valueOf).toList();
  }

  @Test
  void theIndexIsSearchedByTyping() throws IOException {
    browser.open(index(Bookshelf.manyWays()));
    assertThat(shown()).hasSize(14);

    browser.one("#search").sendKeys("PLANT laui");

    // 24-001 to 24-009: four plants and five crosses, each with a seedling.
    assertThat(shown()).containsExactly("24-001W");
    assertThat(browser.one("[role=status]").getText()).contains("1 of 14");

    browser.one("#search").sendKeys(Keys.chord(Keys.CONTROL, "a"), "no such thing");
    assertThat(shown()).isEmpty();
    browser.one("#search").sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
    assertThat(shown()).hasSize(14);
  }

  @Test
  void aCrossIsFoundByWhatItsParentsAreCalled() throws IOException {
    browser.open(index(Bookshelf.manyWays()));

    browser.one("#search").sendKeys("laui agavoides");

    assertThat(shown()).containsExactly("24-003Y", "24-003Y-1");
  }

  @Test
  void whoAsksForWhatIsAliveIsShownWhatIsKept() throws IOException {
    ListQuestion.Line alive = LargeIndex.line(0);
    browser.open(
        write(
            "kept.html",
            LargeIndex.page(List.of(alive, LargeIndex.in("kept", 1), LargeIndex.in("dead", 2)))));

    browser.one("#state").sendKeys("alive");
    assertThat(shown()).hasSize(2).doesNotContain(LargeIndex.line(2).code().text());
    browser.one("#state").sendKeys(Keys.HOME, Keys.ARROW_DOWN, Keys.ARROW_DOWN);
    assertThat(shown()).containsExactly(LargeIndex.line(1).code().text());
  }

  @Test
  void theListIsATabStopOnlyWhereItCanBeMoved() throws IOException {
    Path page = write("large.html", LargeIndex.page(LargeIndex.lines(10)));

    browser.open(page);
    assertThat(stops()).isEqualTo(0L);
    browser.window(TELEPHONE, 700).open(page);
    assertThat(stops()).isPositive();
    browser.scripts(false).open(page);
    assertThat(browser.all(".wide")).allMatch(one -> "0".equals(one.getDomAttribute("tabindex")));
  }

  private static final String ALL_STOPS_MOVE =
      "return Array.from(document.querySelectorAll('.wide[tabindex]'))"
          + ".every(one => one.scrollWidth > one.clientWidth);";

  @Test
  void everyPageIsStoppedAtOnlyWhereItCanBeMovedAndThereItHasAName() throws IOException {
    for (Path page : List.of(plant(), cross(), sheet())) {
      browser.scripts(true).window(1400, 900).open(page);
      assertThat(stops()).as(page.toString()).isZero();
      browser.window(TELEPHONE, 700).open(page);
      assertThat(stops()).as(page.toString()).isPositive();
      assertThat(browser.all(".wide[tabindex]"))
          .isNotEmpty()
          .allMatch(one -> !one.getAccessibleName().isEmpty());
      assertThat((Boolean) browser.run(ALL_STOPS_MOVE)).as(page.toString()).isTrue();
      browser.scripts(false).open(page);
      assertThat(browser.all(".wide"))
          .allMatch(one -> "0".equals(one.getDomAttribute("tabindex")))
          .allMatch(one -> !one.getAccessibleName().isEmpty());
    }
  }

  private Path sheet() throws IOException {
    return write("sheet.html", BenchSheetPage.of("1  24-003Y ".repeat(7)));
  }

  /** How many tables a reader with the Tab key stops at, once the page has come to rest. */
  private static long stops() {
    browser.run("return new Promise(function (done) { setTimeout(done, 200, true); });");
    return (Long) browser.run("return document.querySelectorAll('.wide[tabindex]').length;");
  }

  @Test
  void theIndexIsSortedByItsHeadingsWithTheKeyboardToo() throws IOException {
    browser.open(index(Bookshelf.manyWays()));
    WebElement code = browser.one(".list thead th button");

    code.click();
    List<String> up = shown();
    assertThat(browser.one(".list thead th").getDomAttribute("aria-sort")).isEqualTo("ascending");
    code.sendKeys(Keys.ENTER);
    List<String> down = shown();
    assertThat(browser.one(".list thead th").getDomAttribute("aria-sort")).isEqualTo("descending");

    assertThat(up).startsWith("24-001W").endsWith("24-009J-1");
    List<String> turned = new ArrayList<>(up);
    java.util.Collections.reverse(turned);
    assertThat(down).containsExactlyElementsOf(turned);
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void ofThousandsTheFirstAreShownAndAllAreFound() throws IOException {
    List<ListQuestion.Line> lines = LargeIndex.lines(1_000);
    browser.open(write("large.html", LargeIndex.page(lines)));

    assertThat(shown()).hasSize(IndexPage.SHOWN);
    assertThat(browser.one("[role=status]").getText())
        .isEqualTo("1,000 of 1,000, of which the first 200 are shown");
    browser.one("#more").click();
    assertThat(shown()).hasSize(2 * IndexPage.SHOWN).doesNotHaveDuplicates();

    browser.one("#search").sendKeys("nr. 999 ");
    assertThat(shown()).containsExactly(lines.get(999).code().text());
    browser.one("#search").sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
    assertThat(shown()).hasSize(IndexPage.SHOWN);
  }

  @Test
  void theIndexIsNarrowedByKindAndStateToo() throws IOException {
    List<ListQuestion.Line> lines = LargeIndex.lines(1_000);
    browser.open(write("large.html", LargeIndex.page(lines)));

    browser.one("#state").sendKeys("dead");

    assertThat(shown()).hasSize(10);
    assertThat(browser.one("#more").isDisplayed()).isFalse();
    browser.one("#search").sendKeys("laui");
    assertThat(shown())
        .containsExactlyElementsOf(
            lines.stream()
                .filter(line -> line.fate().equals("dead") && line.what().endsWith("laui"))
                .map(line -> line.code().text())
                .toList());
    browser.one("#kind").sendKeys("plant");
    assertThat(shown()).isNotEmpty();
  }

  @Test
  void numbersAreSortedAsNumbersAndLettersAsInABook() throws IOException {
    List<ListQuestion.Line> lines = new ArrayList<>();
    for (String name : List.of("Nr. 10", "Zoe", "nr. 9", "Äpfelchen", "Anna")) {
      lines.add(LargeIndex.line(lines.size(), name));
    }
    browser.open(write("names.html", LargeIndex.page(lines)));

    browser.all(".list thead button").get(1).click();

    assertThat(
            browser.all(".list tbody td:nth-child(2)").stream().map(WebElement::getText).toList())
        .containsExactly("Anna", "Äpfelchen", "nr. 9", "Nr. 10", "Zoe");
  }

  @Test
  void onPaperTheIndexHasAllThatWasFound() throws IOException {
    browser.open(write("large.html", LargeIndex.page(LargeIndex.lines(1_000))));
    browser.one("#state").sendKeys("alive");

    try (PDDocument pdf = Loader.loadPDF(browser.printed(210, 297))) {
      String text = new PDFTextStripper().getText(pdf);
      assertThat(Pattern.compile("\\b2\\d-\\d{3}[A-Z]\\b").matcher(text).results().count())
          .isEqualTo(990);
      assertThat(text).doesNotContain("more");
      // Each page has the headings of its columns.
      for (int page = 2; page <= pdf.getNumberOfPages() - 1; page++) {
        PDFTextStripper one = new PDFTextStripper();
        one.setStartPage(page);
        one.setEndPage(page);
        assertThat(one.getText(pdf)).as("page " + page).contains("what it is");
      }
    }
    assertThat(shown()).hasSize(IndexPage.SHOWN);
  }

  @Test
  void whereNoScriptsRunTheIndexIsATableToRead() throws IOException {
    browser.scripts(false).open(write("large.html", LargeIndex.page(LargeIndex.lines(250))));

    assertThat(browser.all("table.list tbody tr")).hasSize(250).allMatch(WebElement::isDisplayed);
    assertThat(browser.one("#search").isDisplayed()).isFalse();
    assertThat(browser.one("#more").isDisplayed()).isFalse();
  }

  /** How a browser turns a photograph, by what its camera noted, is how the small one stands. */
  @Test
  void theSmallPhotographStandsAsABrowserShowsTheLargeOne() throws IOException {
    for (int orientation = 1; orientation <= 8; orientation++) {
      Path photo = Camera.jpeg(folder.resolve(orientation + ".jpg"), 160, 80, orientation);
      SmallPicture small = SmallPicture.of(photo).orElseThrow();
      Path page =
          write(
              "both.html",
              "<!DOCTYPE html><title>both</title><body style='margin:0;background:#888'>"
                  + "<img style='position:absolute;left:0' src='"
                  + photo.getFileName()
                  + "'><img style='position:absolute;left:200px' src='"
                  + small.source()
                  + "'>");

      browser.open(page);

      BufferedImage seen = browser.picture();
      for (int[] at : new int[][] {{9, 9}, {9, 71}, {71, 9}, {71, 71}, {9, 151}, {151, 9}}) {
        Color large = new Color(seen.getRGB(at[0], at[1]));
        Color made = new Color(seen.getRGB(at[0] + 200, at[1]));
        assertThat(made.getRed()).as(orientation + " red").isCloseTo(large.getRed(), within(40));
        assertThat(made.getGreen())
            .as(orientation + " green")
            .isCloseTo(large.getGreen(), within(40));
        assertThat(made.getBlue()).as(orientation + " blue").isCloseTo(large.getBlue(), within(40));
      }
    }
  }
}
