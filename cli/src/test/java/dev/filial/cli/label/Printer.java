package dev.filial.cli.label;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Assumptions;

/** Chromium, which prints a page into a PDF file as it would on paper. */
final class Printer {

  private Printer() {}

  /**
   * The PDF that is printed from sheets. Without Chromium the test is skipped, and says so.
   *
   * @param folder where the files are put
   */
  static PDDocument print(LabelSheets sheets, Path folder) throws Exception {
    Optional<Path> chromium = chromium();
    if (chromium.isEmpty()) {
      System.out.println("skipped: there is no Chromium here to print with");
    }
    Assumptions.assumeTrue(chromium.isPresent());
    Path html = Files.writeString(folder.resolve("labels.html"), Sheets.html(sheets));
    Path pdf = folder.resolve("labels.pdf");
    Path log = folder.resolve("chromium.log");
    Process process =
        new ProcessBuilder(
                chromium.orElseThrow().toString(),
                "--headless",
                "--no-sandbox",
                "--disable-gpu",
                "--user-data-dir=" + folder.resolve("profile"),
                "--no-pdf-header-footer",
                "--print-to-pdf=" + pdf,
                html.toUri().toString())
            .redirectErrorStream(true)
            .redirectOutput(log.toFile())
            .start();
    if (!process.waitFor(120, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
    if (!Files.exists(pdf)) {
      throw new IOException("Chromium printed nothing: " + Files.readString(log));
    }
    return Loader.loadPDF(pdf.toFile());
  }

  private static Optional<Path> chromium() {
    String path = System.getenv().getOrDefault("PATH", "");
    return Stream.of(path.split(File.pathSeparator, -1))
        .flatMap(
            folder -> Stream.of("chromium", "chromium-browser").map(name -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }
}
