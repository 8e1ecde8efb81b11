package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.page.Browser;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The handbook's pictures of pages and sheets, taken of the demo bench in a browser. Each build
 * takes them anew into {@code cli/target/pictures}; {@code mvn verify -Dpictures=keep} puts them
 * into the handbook. Letters differ from machine to machine, so those of the handbook are held
 * against the new ones by size alone. Skipped, saying so, where there is no browser.
 */
class HandbookPicturesTest {

  private static final Path KEPT = Path.of("..", "docs", "pictures");
  private static final Path TAKEN = Path.of("target", "pictures");
  private static final int TELEPHONE = 360;
  private static final double A4_WIDTH = 210;
  private static final double A4_HEIGHT = 297;
  private static final float DPI = 72;

  @TempDir Path folder;

  /** A picture that is taken no more is not to lie there for ever. */
  private static void clear() throws IOException {
    Files.createDirectories(TAKEN);
    try (var old = Files.list(TAKEN)) {
      for (Path file : old.toList()) {
        Files.delete(file);
      }
    }
  }

  private void take(String name, BufferedImage picture) throws IOException {
    ImageIO.write(picture, "png", TAKEN.resolve(name).toFile());
    if ("keep".equals(System.getProperty("pictures"))) {
      Files.createDirectories(KEPT);
      ImageIO.write(picture, "png", KEPT.resolve(name).toFile());
    }
  }

  private static void scrollTo(Browser browser, String id) {
    browser.run(
        "document.getElementById('"
            + id
            + "').scrollIntoView(); window.scrollBy(0, -12);"
            + " return true;");
  }

  private BufferedImage printed(Browser browser, String file) throws IOException {
    browser.open(folder.resolve(file));
    try (PDDocument pdf = Loader.loadPDF(browser.printed(A4_WIDTH, A4_HEIGHT))) {
      return new PDFRenderer(pdf).renderImageWithDPI(0, DPI);
    }
  }

  @Test
  void thePicturesAreTakenOfTheDemoBench() throws IOException {
    clear();
    try (Browser browser = Browser.start()) {
      DemoStory bench = new DemoStory(folder);
      bench.told("page", "Morgenrot", "--to", "plant.html");
      bench.told("page", "24-002", "--to", "cross.html");
      bench.told("page", "26-006", "--to", "sown.html");
      bench.told("index");
      bench.told("labels", "26-013", "--for", "packets", "--qr", "--to", "packets.html");
      bench.told("labels", "26-013", "--to", "tags.html");
      bench.told("sheet", "--to", "bench.html");

      browser.window(1000, 1400).open(folder.resolve("plant.html"));
      take("page-plant.png", browser.picture());
      browser.window(1000, 1250).open(folder.resolve("cross.html"));
      scrollTo(browser, "odds");
      take("page-cross.png", browser.picture());
      browser.window(1000, 900).open(folder.resolve("register.html"));
      take("page-register.png", browser.picture());
      browser.dark(true).window(TELEPHONE, 720).open(folder.resolve("sown.html"));
      scrollTo(browser, "came-up");
      take("page-telephone.png", browser.picture());
      browser.dark(false).window(1000, 900);
      take("sheet-packets.png", printed(browser, "packets.html"));
      take("sheet-tags.png", printed(browser, "tags.html"));
      take("sheet-bench.png", printed(browser, "bench.html"));
      take("page-plant-paper.png", printed(browser, "plant.html"));
    }

    List<String> shown = new ArrayList<>();
    for (String page : List.of("pages.md", "labels.md", "fast-entry.md")) {
      Pattern.compile("\\(pictures/([^)]+[.]png)\\)")
          .matcher(Files.readString(Path.of("..", "docs", page)))
          .results()
          .forEach(found -> shown.add(found.group(1)));
    }
    try (var taken = Files.list(TAKEN)) {
      assertThat(shown)
          .containsExactlyInAnyOrderElementsOf(
              taken.map(file -> file.getFileName().toString()).toList());
    }
    for (String name : shown) {
      BufferedImage kept = ImageIO.read(KEPT.resolve(name).toFile());
      BufferedImage taken = ImageIO.read(TAKEN.resolve(name).toFile());
      assertThat(List.of(kept.getWidth(), kept.getHeight()))
          .as(name)
          .containsExactly(taken.getWidth(), taken.getHeight());
    }
  }
}
