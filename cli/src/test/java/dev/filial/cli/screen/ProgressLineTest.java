package dev.filial.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

/** A line that says how far it is, where somebody watches. */
class ProgressLineTest {

  private final StringWriter err = new StringWriter();
  private final AtomicLong now = new AtomicLong();

  private ProgressLine line(String attached) {
    return new ProgressLine(
        Terminal.of(
            new PrintWriter(new StringWriter()),
            new PrintWriter(err),
            new BufferedReader(new StringReader("")),
            attached,
            null,
            Map.of()),
        now::get);
  }

  @Test
  void itIsDrawnOverItselfAndTakenAway() {
    ProgressLine line = line("2");
    line.at(1_000, "rows", 0.1);
    assertThat(err.toString()).as("too soon to be worth a line").isEmpty();
    now.addAndGet(200_000_000L);
    line.at(1_250_000, "rows", 0.5);
    now.addAndGet(1);
    line.at(1_250_001, "rows", 0.5);
    line.clear();
    line.clear();
    assertThat(err)
        .hasToString("\r[" + "#".repeat(15) + " ".repeat(15) + "] 50 %  1,250,000 rows\r\u001B[K");
  }

  @Test
  void nothingIsDrawnIntoALog() {
    ProgressLine line = line("01");
    now.addAndGet(200_000_000L);
    line.at(1_000, "rows", 0.5);
    line.clear();
    assertThat(err.toString()).isEmpty();
  }
}
