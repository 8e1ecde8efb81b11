package dev.filial.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a browser makes of the page of a cross. Skipped, saying so, where there is none. */
class CrossPageInBrowserTest {

  private static final int TELEPHONE = 360;

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

  /** Everything, and four ways in which a tetraploid may pair. */
  private List<Path> pages() throws IOException {
    return List.of(
        Files.writeString(
            folder.resolve("cross.html"), CrossPageTest.page(FamilyShelf.everything(), "24-010")),
        Files.writeString(
            folder.resolve("four.html"), CrossPageTest.page(FamilyShelf.tetraploid(), "24-010")));
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
  void itAsksForNothingElseAndNothingSticksOutOfATelephone() throws IOException {
    for (Path page : pages()) {
      browser.window(TELEPHONE, 700).open(page);

      assertThat(browser.sideways()).as(page.toString()).isZero();
      assertThat(browser.requests()).containsExactly(page.toUri().toString());
      assertThat(browser.complaints()).isEmpty();
    }
  }

  @Test
  void theStripAndTheCurveShowTheirColoursOnLightAndOnDark() throws IOException {
    Path page = pages().get(0);
    for (boolean dark : new boolean[] {false, true}) {
      browser.dark(dark).open(page);
      for (String part : List.of(".strip", ".curve")) {
        browser.run("document.querySelector('" + part + "').scrollIntoView(); return true;");
        assertThat(colours()).as(part + dark).contains(0xE69F00, 0x56B4E9);
      }
    }
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
  void itIsPrintedWithAllThatItTells() throws IOException {
    browser.open(pages().get(0));
    try (PDDocument pdf = Loader.loadPDF(browser.printed(210, 297))) {
      assertThat(new PDFTextStripper().getText(pdf))
          .contains("What it may throw", "green, bare", "days after sowing", "25-001");
    }
  }
}
