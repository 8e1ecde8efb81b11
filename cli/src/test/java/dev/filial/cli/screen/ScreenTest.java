package dev.filial.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.io.Writer;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class ScreenTest {

  private static String shown(int columns, Consumer<Screen> page) {
    StringWriter out = new StringWriter();
    Terminal terminal =
        Terminal.of(
            new PrintWriter(out),
            new PrintWriter(Writer.nullWriter()),
            new BufferedReader(Reader.nullReader()),
            "",
            null,
            Map.of("COLUMNS", String.valueOf(columns)));
    Screen screen = new Screen(terminal);
    page.accept(screen);
    screen.flush();
    terminal.out().flush();
    return out.toString();
  }

  private static Table crosses() {
    return new Table()
        .column("Code")
        .column("Parents")
        .numbers("Seeds")
        .row("26-001A", "Echeveria laui × Echeveria colorata", 80)
        .row("26-002C", "E. agavoides × self", 1200);
  }

  @Test
  void valuesOfLinesThatFollowEachOtherStandAligned() {
    assertThat(
            shown(
                80,
                screen ->
                    screen
                        .field("Seed parent", "24-003H")
                        .field("Pollen", "24-007P")
                        .next("wait for the fruit.")))
        .isEqualTo(
            """
            Seed parent  24-003H
            Pollen       24-007P
            Next: wait for the fruit.
            """);
  }

  @Test
  void aTableTakesWhatItNeedsAndNumbersStandFlushRight() {
    assertThat(shown(80, screen -> screen.table(crosses())))
        .isEqualTo(
            """
            Code     Parents                              Seeds
            ───────  ───────────────────────────────────  ─────
            26-001A  Echeveria laui × Echeveria colorata     80
            26-002C  E. agavoides × self                   1200
            """);
  }

  @Test
  void whereTheWindowIsNarrowerTheWidestColumnWraps() {
    assertThat(shown(36, screen -> screen.table(crosses())))
        .isEqualTo(
            """
            Code     Parents               Seeds
            ───────  ────────────────────  ─────
            26-001A  Echeveria laui ×         80
                     Echeveria colorata
            26-002C  E. agavoides × self    1200
            """);
  }

  @Test
  void whereNoWordWouldStayWholeTheRowsAreStacked() {
    assertThat(shown(24, screen -> screen.table(crosses())))
        .isEqualTo(
            """
            Code: 26-001A
            Parents: Echeveria laui
            × Echeveria colorata
            Seeds: 80

            Code: 26-002C
            Parents: E. agavoides ×
            self
            Seeds: 1200
            """);
  }

  @Test
  void anEmptyTableIsNothing() {
    assertThat(shown(80, screen -> screen.table(new Table().column("Code")))).isEmpty();
  }

  @Test
  void aRowMustHaveAllItsCells() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Table().column("Code").column("Seeds").row("26-001A"))
        .withMessage("1 cells for 2 columns");
  }

  @Test
  void aTagOfSeveralLinesStandsByItself() {
    assertThat(shown(80, screen -> screen.tag("26-013E", "LAUI × COLORATA")))
        .isEqualTo("Write on the tag:\n    26-013E\n    LAUI × COLORATA\n");
  }

  @Test
  void aTreeWrapsUnderItself() {
    assertThat(shown(20, screen -> screen.indented(2, "Echeveria agavoides")))
        .isEqualTo("    Echeveria\n    agavoides\n");
  }

  @Test
  void jsonKeepsAFractionExactAndGivesItsNumber() {
    assertThat(Json.write(Map.of("share", dev.filial.core.number.Fraction.of(2, 3))))
        .contains("\"exact\" : \"2/3\"")
        .contains("\"value\" : 0.666666666");
  }
}
