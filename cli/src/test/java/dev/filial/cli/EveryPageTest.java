package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.page.Browser;
import dev.filial.cli.page.Camera;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every page, drawing and sheet that can be made of the demo bench, opened in a browser. Skipped,
 * saying so, where there is none.
 */
class EveryPageTest {

  private static final int TELEPHONE = 360;

  @TempDir Path folder;

  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().matches(".*[.](html|svg)")).sorted().toList();
    }
  }

  @Test
  void nonePageComplainsAsksForAnythingOrSticksOut() throws IOException {
    try (Browser browser = Browser.start()) {
      DemoStory bench = new DemoStory(folder);
      Camera.jpeg(folder.resolve("rosa.jpg"), 800, 600, 6);
      bench.told("photo", "Rosa", "rosa.jpg");
      bench.told("pages", "site", "--all", "--photos", "small");
      bench.told("draw", "24-010-1");
      bench.told("labels", "22-009");
      bench.told("labels", "Rosa", "--for", "tags", "--qr", "--to", "tags.html");

      bench.told("sheet", "--to", "site/bench.html");
      List<Path> files = files();
      assertThat(files).hasSizeGreaterThan(90);
      List<String> wrong = new ArrayList<>();
      for (int i = 0; i < files.size(); i++) {
        Path file = files.get(i);
        boolean page = file.getParent().endsWith("site");
        // By turns, so that each kind of page is seen in every light.
        browser.dark(i % 2 == 0).window(i % 3 == 0 ? TELEPHONE : 1000, 800).open(file);
        browser.requests().stream()
            .filter(url -> !url.equals(file.toUri().toString()))
            .forEach(url -> wrong.add(file.getFileName() + " asks for " + url));
        browser.complaints().forEach(said -> wrong.add(file.getFileName() + " says " + said));
        if (page) {
          if (browser.sideways() > 0) {
            wrong.add(file.getFileName() + " sticks out by " + browser.sideways());
          }
          browser.violations().forEach(found -> wrong.add(file.getFileName() + " has " + found));
        }
      }
      assertThat(wrong).isEmpty();
    }
  }
}
