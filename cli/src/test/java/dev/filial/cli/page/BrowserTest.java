package dev.filial.cli.page;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.answer.ListQuestion;
import dev.filial.core.register.RegisterView;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a browser makes of it. Skipped, saying so, where Chromium is not installed. */
class BrowserTest {

  private static final int WIDTH = 900;
  private static final int HEIGHT = 1600;

  @TempDir Path folder;

  @BeforeEach
  void onlyWithChromium() {
    boolean there =
        Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
            .anyMatch(path -> Files.isExecutable(Path.of(path, "chromium")));
    if (!there) {
      System.out.println("Not looked at in a browser: there is no chromium on the path.");
    }
    Assumptions.assumeTrue(there, "there is no chromium on the path");
  }

  @Test
  void theDrawingShowsItsColoursAndNothingOnDark() throws Exception {
    Path file = folder.resolve("drawing.svg");
    Files.writeString(
        file, PedigreeDrawing.of(Bookshelf.behind(Bookshelf.of(Bookshelf.five()), "24-005-1")));

    Set<Integer> light = colours(screenshot(file));
    Set<Integer> dark =
        colours(screenshot(file, "--blink-settings=preferredColorScheme=0", "--force-dark-mode"));

    assertThat(light).contains(0xFFFFFF, 0xE69F00, 0x56B4E9);
    assertThat(dark).contains(0x16181A, 0xE69F00, 0x56B4E9);
  }

  @Test
  void thePageKeepsToTheWindowOnDarkAndIsPrinted() throws Exception {
    Path file = folder.resolve("page.html");
    Files.writeString(file, PlantPageTest.page(Bookshelf.manyWays(), "24-009-1"));

    Set<Integer> light = colours(screenshot(file));
    Set<Integer> dark =
        colours(screenshot(file, "--blink-settings=preferredColorScheme=0", "--force-dark-mode"));
    assertThat(light).contains(0xFFFFFF, 0xE69F00).doesNotContain(0x16181A);
    assertThat(dark).contains(0x16181A, 0xE69F00);

    // A page that measures itself: nothing sticks out of a window as narrow as a telephone's.
    Path frame = folder.resolve("telephone.html");
    Files.writeString(
        frame,
        "<body><iframe id='f' src='page.html' width='360' height='600'></iframe><script>"
            + "f.onload=()=>document.title='wide '+f.contentDocument.documentElement.scrollWidth"
            + "</script>");
    chromium(
        List.of("--dump-dom", "--allow-file-access-from-files", "--virtual-time-budget=5000"),
        frame);
    Matcher wide = Pattern.compile("<title>wide (\\d+)</title>").matcher(said());
    assertThat(wide.find()).as(said()).isTrue();
    assertThat(Integer.parseInt(wide.group(1))).isLessThanOrEqualTo(360);

    Path paper = folder.resolve("page.pdf");
    chromium(List.of("--print-to-pdf=" + paper), file);
    assertThat(Files.readString(paper, StandardCharsets.ISO_8859_1)).startsWith("%PDF");
  }

  @Test
  void theIndexIsSearchedAndSorted() throws Exception {
    RegisterView view = Bookshelf.of(Bookshelf.manyWays());
    Files.writeString(
        folder.resolve("index.html"),
        IndexPage.of(ListQuestion.of(view).ask(), "Klara", view.size()));
    Path frame = folder.resolve("frame.html");
    Files.writeString(
        frame,
        """
        <body><iframe id='f' src='index.html'></iframe><script>
        f.onload = () => {
          const page = f.contentDocument;
          const first = () => page.querySelector('tbody tr:not([hidden]) th').textContent;
          const code = page.querySelector('thead button');
          const search = page.getElementById('search');
          code.click();
          const up = first();
          code.click();
          const down = first();
          search.value = 'PLANT laui';
          search.dispatchEvent(new Event('input'));
          document.title = [up, down, first(), page.getElementById('found').textContent].join(';');
        };
        </script>
        """);

    chromium(
        List.of("--dump-dom", "--allow-file-access-from-files", "--virtual-time-budget=5000"),
        frame);

    // 24-001 to 24-009: four plants and five crosses, each with a seedling.
    assertThat(said()).contains("<title>24-001W;24-009J-1;24-001W;1 of 14</title>");
  }

  private String said() throws IOException {
    return Files.readString(folder.resolve("said"));
  }

  private static Set<Integer> colours(BufferedImage image) {
    Set<Integer> found = new HashSet<>();
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        found.add(image.getRGB(x, y) & 0xFFFFFF);
      }
    }
    return found;
  }

  private BufferedImage screenshot(Path file, String... more) throws Exception {
    Path picture = folder.resolve("picture.png");
    Files.deleteIfExists(picture);
    List<String> words =
        new ArrayList<>(
            List.of("--screenshot=" + picture, "--window-size=" + WIDTH + "," + HEIGHT));
    words.addAll(List.of(more));
    chromium(words, file);
    return ImageIO.read(picture.toFile());
  }

  private void chromium(List<String> words, Path file) throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                "chromium",
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--hide-scrollbars",
                "--user-data-dir=" + folder.resolve("profile")));
    command.addAll(words);
    command.add(file.toUri().toString());
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("said").toFile())
            .start();
    try {
      assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
    } finally {
      process.destroyForcibly();
    }
    assertThat(process.exitValue()).as(said()).isZero();
  }
}
