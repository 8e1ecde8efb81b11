package dev.filial.core.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.exchange.SafeCell;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A cell that leaves here is never run by a spreadsheet, and comes back as it was. */
class SafeCellLawsTest {

  @Provide
  Arbitrary<String> cells() {
    return Arbitraries.oneOf(
        Arbitraries.strings()
            .withChars("=+-@'\t\r\n\",; 0123456789.,aé<ß")
            .withChars('\u00A0', '\u00D7')
            .ofMaxLength(8),
        Arbitraries.of(
            "=1+1", "'=1", "''@x", "-3", "-3,5", "- 3", "+49 30", "\uD83C\uDF35", "x".repeat(300)));
  }

  @Provide
  Arbitrary<List<List<String>>> tables() {
    return cells().list().ofSize(3).list().ofMaxSize(12);
  }

  @Property
  void noWrittenCellIsRun(@ForAll("cells") String cell) {
    String written = SafeCell.written(cell);
    boolean isNumber = written.matches("[+-]?\\d+([.,]\\d+)?");
    assertThat(isNumber || !written.matches("(?s)[=+\\-@\t\r].*")).isTrue();
  }

  @Property
  void readingUndoesWriting(@ForAll("cells") String cell) {
    assertThat(SafeCell.read(SafeCell.written(cell))).isEqualTo(cell);
  }

  @Property(tries = 200)
  void aTableReadsBackAsItWasWritten(@ForAll("tables") List<List<String>> table) {
    try {
      Path folder = Files.createTempDirectory("table");
      Path original = Files.writeString(folder.resolve("a.csv"), "a;b;c\n");
      Path written = folder.resolve("b.csv");
      Sheet sheet = Sheet.of(original);
      BoundMapping columns =
          new BoundMapping(sheet, MappingText.read("rows = plants\nname = a\nkeep = b\nkeep = c"));
      try (RejectedRows rejected = RejectedRows.into(written, columns)) {
        table.forEach(row -> rejected.add(new SheetRow(2, row), "because"));
        rejected.publish();
      }
      List<List<String>> back = new ArrayList<>();
      try (SheetRows rows = Sheet.of(written).rows(Files.newInputStream(written))) {
        for (var row = rows.next(); row.isPresent(); row = rows.next()) {
          List<String> cells = row.get().cells();
          assertThat(cells.get(0)).isEqualTo("because");
          back.add(cells.subList(1, cells.size()));
        }
      }
      assertThat(back).isEqualTo(table);
      assertThat(folder.toFile().list()).hasSize(2);
      Files.delete(original);
      Files.delete(written);
      Files.delete(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
