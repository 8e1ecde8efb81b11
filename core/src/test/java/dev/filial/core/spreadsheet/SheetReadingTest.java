package dev.filial.core.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** However a spreadsheet wrote its table, the same cells are read, each on its line. */
class SheetReadingTest {

  private static final String TABLE = "Nr;Art;Größe\n1;Echeveria laui;3,5\n";

  @TempDir Path folder;

  private Path file(byte[] mark, String text, Charset charset) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    bytes.writeBytes(mark);
    bytes.writeBytes(text.getBytes(charset));
    return Files.write(folder.resolve("table.csv"), bytes.toByteArray());
  }

  private Path file(String text) throws IOException {
    return file(new byte[0], text, StandardCharsets.UTF_8);
  }

  private static List<String> rows(Path file) throws IOException {
    List<String> found = new ArrayList<>();
    try (SheetRows rows = Sheet.of(file).rows(Files.newInputStream(file))) {
      for (var row = rows.next(); row.isPresent(); row = rows.next()) {
        found.add(row.get().line() + ":" + String.join("|", row.get().cells()));
      }
    }
    return found;
  }

  private static byte[] bytes(int... values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return bytes;
  }

  @Test
  void everyEncodingGivesTheSameCells() throws IOException {
    List<Path> files =
        List.of(
            file(new byte[0], TABLE, StandardCharsets.UTF_8),
            Files.copy(
                file(bytes(0xEF, 0xBB, 0xBF), TABLE, StandardCharsets.UTF_8),
                folder.resolve("mark.csv")),
            Files.copy(
                file(bytes(0xFF, 0xFE), TABLE, StandardCharsets.UTF_16LE),
                folder.resolve("le.csv")),
            Files.copy(
                file(bytes(0xFE, 0xFF), TABLE, StandardCharsets.UTF_16BE),
                folder.resolve("be.csv")),
            Files.copy(
                file(new byte[0], TABLE, Charset.forName("windows-1252")),
                folder.resolve("latin.csv")),
            file(new byte[0], TABLE, StandardCharsets.UTF_8));
    for (Path file : files) {
      assertThat(Sheet.of(file).columns()).containsExactly("Nr", "Art", "Größe");
      assertThat(rows(file)).containsExactly("2:1|Echeveria laui|3,5");
    }
    assertThat(Sheet.of(folder.resolve("latin.csv")).form().inWords())
        .startsWith("windows-1252 (it is not UTF-8");
    assertThat(Sheet.of(folder.resolve("mark.csv")).form().inWords())
        .isEqualTo("UTF-8 with a byte-order mark, columns parted by semicolons");
  }

  @Test
  void aLetterOutsideAsciiFarDownIsSeen() throws IOException {
    String text = "Nr,Art\n" + "1,Echeveria laui\n".repeat(20_000) + "2,grün\n";
    Path file = file(new byte[0], text, StandardCharsets.ISO_8859_1);
    assertThat(rows(file).get(20_000)).isEqualTo("20002:2|grün");
  }

  @Test
  void theSeparatorIsTheOneMostUsedInTheHeader() throws IOException {
    assertThat(Sheet.of(file("a,b;c,d\n")).columns()).containsExactly("a", "b;c", "d");
    assertThat(Sheet.of(file("a\tb, c\td\n")).columns()).containsExactly("a", "b, c", "d");
    assertThat(Sheet.of(file("\"a,b,c,d\";e;f\n")).columns()).containsExactly("a,b,c,d", "e", "f");
    assertThat(Sheet.of(file("alone\n")).columns()).containsExactly("alone");
  }

  @Test
  void aFirstLineThatNamesTheSeparatorIsNoRow() throws IOException {
    Path file = file("sep=;\r\na;b,c,d\r\n1;2\r\n");
    assertThat(Sheet.of(file).columns()).containsExactly("a", "b,c,d");
    assertThat(rows(file)).containsExactly("3:1|2");
  }

  @Test
  void linesAreCountedThroughCellsOfSeveralLinesAndBlankRows() throws IOException {
    Path file = file("a;b\r\n1;\"two\r\nlines\"\r\n\r\n;\r\n5;\"a \"\"b\"\" c\"\r\n6;5\" pot");
    assertThat(rows(file))
        .containsExactly("2:1|two\r\nlines", "4:", "5:|", "6:5|a \"b\" c", "7:6|5\" pot");
  }

  @Test
  void anOldMacintoshsLineEndsAreRead() throws IOException {
    assertThat(rows(file("a;b\r1;2\r3;4\r"))).containsExactly("2:1|2", "3:3|4");
  }

  @Test
  void aCellMadeSafeIsReadAsItWas() throws IOException {
    assertThat(rows(file("a;b\n'=1+1;'tis\n"))).containsExactly("2:=1+1|'tis");
  }

  @Test
  void whatIsNoTableIsRefusedWithARemedy() throws IOException {
    assertThatThrownBy(() -> Sheet.of(file("")))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining("is empty; save the table again as CSV");
    assertThatThrownBy(() -> Sheet.of(file("\n1;2\n")))
        .hasMessageContaining("does not begin with a row of column headers");
    assertThatThrownBy(() -> Sheet.of(file("PK\u0003\u0004 and so on")))
        .hasMessageContaining("save it as CSV");
    assertThatThrownBy(() -> Sheet.of(file("a\u0000b;c\n"))).hasMessageContaining("is no text");
    Path claims = file(bytes(0xEF, 0xBB, 0xBF), TABLE, StandardCharsets.ISO_8859_1);
    assertThatThrownBy(() -> Sheet.of(claims)).hasMessageContaining("says it is UTF-8 and is not");
  }

  @Test
  void aQuoteThatIsNeverClosedIsToldWithItsLine() throws IOException {
    Path file = file("a;b\n1;2\n3;\"never\n5;6\n");
    assertThatThrownBy(() -> rows(file))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining("line 3: from here on the file cannot be parted into cells");
  }

  @Test
  void columnsOfOneHeaderAreNamedByTheirPlace() throws IOException {
    Sheet sheet = Sheet.of(file("Name;name;;Ort\n"));
    assertThat(sheet.place("ORT")).isEqualTo(3);
    assertThat(sheet.place("column 2")).isEqualTo(1);
    assertThat(List.of(sheet.nameOf(0), sheet.nameOf(2), sheet.nameOf(3)))
        .containsExactly("column 1", "column 3", "Ort");
    assertThatThrownBy(() -> sheet.place("Name"))
        .hasMessageContaining("two columns are headed \"name\"")
        .hasMessageContaining("column 1 or column 2");
    assertThatThrownBy(() -> sheet.place("column 9"))
        .hasMessageContaining("no column is headed \"column 9\"");
  }
}
