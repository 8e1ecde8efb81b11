package dev.filial.cli.page;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Chromium, looking at pages as a reader does. What a page complains of or asks for is kept. */
public final class Browser implements AutoCloseable {

  /** Tags of axe-core's rules: the success criteria of WCAG 2.2 A and AA, and what it advises. */
  private static final String RULES =
      "['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']";

  private static final JsonMapper JSON = JsonMapper.shared();

  /** It warns of each Chromium newer than itself about what is not used here. */
  private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

  private static final int MOST_TRIES = 4;

  private final ChromeDriver driver;
  private final String axe;

  private Browser(Path chromium, Path chromedriver) {
    SELENIUM.setLevel(Level.SEVERE);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.toFile());
    options.addArguments(
        "--headless=new",
        "--hide-scrollbars",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-dev-shm-usage");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    driver =
        new ChromeDriver(
            new ChromeDriverService.Builder()
                .usingDriverExecutable(chromedriver.toFile())
                .usingAnyFreePort()
                .withLogOutput(OutputStream.nullOutputStream())
                .build(),
            options);
    driver.manage().timeouts().scriptTimeout(Duration.ofMinutes(2));
    axe = resource("/axe-core/axe.min.js");
  }

  /** Starts one; where it is not installed the test is skipped, and says so. */
  public static Browser start() {
    Optional<Path> chromium = onThePath("chromium");
    Optional<Path> chromedriver = onThePath("chromedriver");
    boolean there = chromium.isPresent() && chromedriver.isPresent();
    if (!there) {
      System.out.println(
          "Not looked at in a browser: chromium and chromedriver are not both on the path.");
    }
    Assumptions.assumeTrue(there, "chromium and chromedriver are not both on the path");
    return new Browser(chromium.orElseThrow(), chromedriver.orElseThrow());
  }

  private static Optional<Path> onThePath(String program) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
        .map(folder -> Path.of(folder, program))
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static String resource(String name) {
    try (InputStream in = Objects.requireNonNull(Browser.class.getResourceAsStream(name))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Opens a file, and forgets what pages before it complained of and asked for. */
  public Browser open(Path file) {
    driver.manage().logs().get(LogType.BROWSER);
    driver.manage().logs().get(LogType.PERFORMANCE);
    driver.get(file.toUri().toString());
    return this;
  }

  /** From now on the reader's screen is dark, or light. */
  public Browser dark(boolean dark) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of(
            "features",
            List.of(Map.of("name", "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    return this;
  }

  /** From now on the window is so wide and so high, in pixels of a style sheet. */
  public Browser window(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
    return this;
  }

  /** From now on pages run scripts, or do not. Elements are then found all the same. */
  public Browser scripts(boolean run) {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", !run));
    return this;
  }

  /** What the console says of the page opened last. */
  public List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(entry -> entry.getLevel() + " " + entry.getMessage())
        .toList();
  }

  /** Everything that was asked for since the page was opened, the page itself as the first. */
  public List<String> requests() {
    List<String> asked = new ArrayList<>();
    driver.manage().logs().get(LogType.PERFORMANCE).getAll().stream()
        .map(entry -> JSON.readTree(entry.getMessage()).path("message"))
        .filter(event -> event.path("method").asString().equals("Network.requestWillBeSent"))
        .map(event -> event.path("params").path("request").path("url").asString())
        .filter(url -> !url.startsWith("data:"))
        .forEach(asked::add);
    return asked;
  }

  /** What axe-core finds wrong in the page, each with the places where. */
  public List<String> violations() {
    driver.executeScript(axe);
    Object found =
        driver.executeAsyncScript(
            "var done = arguments[0];"
                + "axe.run(document, { runOnly: { type: 'tag', values: "
                + RULES
                + " }, resultTypes: ['violations'] })"
                + ".then(function (r) { done(JSON.stringify(r.violations)); },"
                + " function (e) { done(JSON.stringify([{ id: 'axe', help: String(e) }])); });");
    List<String> told = new ArrayList<>();
    for (JsonNode one : JSON.readTree(String.valueOf(found))) {
      StringBuilder text =
          new StringBuilder(one.path("id").asString() + ": " + one.path("help").asString());
      one.path("nodes").forEach(node -> text.append("\n    ").append(node.path("html").asString()));
      told.add(text.toString());
    }
    return told;
  }

  /** What a script in the page returns. */
  public Object run(String script, Object... arguments) {
    return Objects.requireNonNull(driver.executeScript(script, arguments), script);
  }

  /** The elements that a selector finds. */
  public List<WebElement> all(String selector) {
    return driver.findElements(By.cssSelector(selector));
  }

  /** The one element that a selector finds first. */
  public WebElement one(String selector) {
    return driver.findElement(By.cssSelector(selector));
  }

  /** By how many pixels the page is wider than its window: 0 if it need not be moved sideways. */
  public long sideways() {
    return (Long)
        run(
            "return document.documentElement.scrollWidth"
                + " - document.documentElement.clientWidth;");
  }

  /** The window as it is seen. */
  public BufferedImage picture() throws IOException {
    return ImageIO.read(new ByteArrayInputStream(driver.getScreenshotAs(OutputType.BYTES)));
  }

  /** The page on paper of that size in millimetres, as PDF. */
  public byte[] printed(double width, double height) {
    // A Chromium on a busy machine now and then says "Printing failed", and prints when asked
    // again.
    for (int tries = 1; ; tries++) {
      try {
        return print(width, height);
      } catch (WebDriverException e) {
        if (tries == MOST_TRIES) {
          throw e;
        }
      }
    }
  }

  private byte[] print(double width, double height) {
    Map<String, Object> answer =
        driver.executeCdpCommand(
            "Page.printToPDF",
            Map.of(
                "paperWidth",
                width / 25.4,
                "paperHeight",
                height / 25.4,
                "printBackground",
                false,
                "displayHeaderFooter",
                false));
    return Base64.getDecoder().decode((String) Objects.requireNonNull(answer.get("data")));
  }

  @Override
  public void close() {
    driver.quit();
  }
}
