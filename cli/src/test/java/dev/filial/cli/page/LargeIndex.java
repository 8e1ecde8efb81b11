package dev.filial.cli.page;

import dev.filial.core.answer.ListQuestion.Line;
import dev.filial.core.answer.SeasonsQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.PartialDate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * The index of a large register, and how long the browser is busy at a stretch with it. The name
 * keeps it out of the build: {@code cli/src/bench/index} runs it.
 */
class LargeIndex {

  /** The Long Tasks API of W3C: what takes 50 ms or longer. */
  private static final String WATCH =
      "window.tasks = [];"
          + "new PerformanceObserver(function (list) { list.getEntries().forEach(function (one) {"
          + " window.tasks.push(Math.round(one.duration)); }); })"
          + ".observe({ type: 'longtask', buffered: true }); return true;";

  @TempDir Path folder;

  /** An invented plant; every hundredth has died. */
  static Line line(int i, String... names) {
    return line(i, i % 100 == 99 ? "dead" : "alive", names);
  }

  /** One in that state. */
  static Line in(String state, int i) {
    return line(i, state, new String[0]);
  }

  private static Line line(int i, String state, String[] names) {
    return new Line(
        Code.of(20 + i % 7, i / 7 + 1),
        "plant",
        "Echeveria " + Bookshelf.TAXA[i % Bookshelf.TAXA.length],
        List.of(names),
        i % 5 == 0 ? "XM " + i : null,
        PartialDate.parse("202%d-0%d-1%d".formatted(i % 7, i % 9 + 1, i % 10)),
        null,
        "bench " + (char) ('A' + i % 4),
        state);
  }

  /** So many; every third has a name of its own. */
  static List<Line> lines(int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> i % 3 == 0 ? line(i, "Nr. " + i) : line(i))
        .toList();
  }

  static String page(List<Line> lines) {
    return IndexPage.of(
        new IndexPage.Content(
            lines,
            Map.of(),
            lines,
            SeasonsQuestion.of(Bookshelf.of(Bookshelf.manyWays())),
            "Klara",
            lines.size() + 1,
            PageLinks.NONE));
  }

  private static void tell(Browser browser, String what) {
    browser.run("return new Promise(function (done) { setTimeout(done, 600, true); });");
    System.out.println(what + ": " + browser.run("return window.tasks.splice(0);"));
  }

  @Test
  void howLongTheBrowserIsBusyAtAStretch() throws IOException {
    Path file = Files.writeString(folder.resolve("index.html"), page(lines(10_000)));
    System.out.println(
        "10,000 plants, " + Files.size(file) / 1024 + " KiB; tasks of 50 ms and longer, in ms");
    try (Browser browser = Browser.start()) {
      browser.window(1000, 900);
      for (int run = 1; run <= 3; run++) {
        browser.open(file);
        browser.run(WATCH);
        tell(browser, "open");
        browser.one("#search").sendKeys("laui nr");
        tell(browser, "type seven letters");
        browser.one("#search").sendKeys(Keys.chord(Keys.CONTROL, "a"), Keys.DELETE);
        tell(browser, "empty the field");
        browser.one("#state").sendKeys("dead");
        tell(browser, "by state");
        browser.one("#state").sendKeys(Keys.HOME);
        tell(browser, "any state");
        browser.one("#more").click();
        tell(browser, "200 more");
        for (WebElement head : browser.all(".list thead button")) {
          String what = head.getText();
          head.click();
          tell(browser, "sort by " + what);
        }
      }
    }
  }
}
