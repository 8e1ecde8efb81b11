package dev.filial.core.spreadsheet;

import dev.filial.core.exchange.SafeCell;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.dataformat.csv.CsvFactory;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;
import tools.jackson.dataformat.csv.CsvSchema;

/** Reads a table row after row, keeping none, and knows on which line of the file each begins. */
final class SheetRows implements AutoCloseable {

  /**
   * No grower's cell is longer; a quote that is never closed would swallow the rest of the file.
   */
  private static final int LONGEST_CELL = 1_000_000;

  private static final CsvMapper MAPPER =
      CsvMapper.builder(
              CsvFactory.builder()
                  .streamReadConstraints(
                      StreamReadConstraints.builder().maxStringLength(LONGEST_CELL).build())
                  .build())
          .enable(CsvReadFeature.WRAP_AS_ARRAY)
          .build();

  private final Reader reader;
  private final JsonParser parser;
  private long line = 1;
  private long next = 1;

  SheetRows(Reader reader, char separator) {
    this.reader = reader;
    this.parser =
        MAPPER.reader(CsvSchema.emptySchema().withColumnSeparator(separator)).createParser(reader);
  }

  /**
   * The next row, blank ones too; empty at the end.
   *
   * @throws SheetException if the quotes of the file do not match
   */
  Optional<SheetRow> next() {
    try {
      @Nullable JsonToken token = parser.nextToken();
      while (token == JsonToken.START_ARRAY) {
        token = parser.nextToken();
      }
      if (token == null || (token == JsonToken.END_ARRAY && parser.streamReadContext().inRoot())) {
        return Optional.empty();
      }
      line = next;
      List<String> cells = new ArrayList<>();
      while (token != null && token != JsonToken.END_ARRAY) {
        String cell = parser.getString();
        next += lineEnds(cell);
        cells.add(SafeCell.read(cell));
        token = parser.nextToken();
      }
      next++;
      return Optional.of(new SheetRow(line, cells));
    } catch (JacksonException e) {
      throw new SheetException(
          "line "
              + next
              + ": from here on the file cannot be parted into cells, because a quote \" is not"
              + " closed, or something follows the quote that closes a cell; mend that line, a quote"
              + " within quotes being written twice",
          e);
    }
  }

  private static int lineEnds(String cell) {
    int ends = 0;
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c == '\n' || (c == '\r' && (i + 1 == cell.length() || cell.charAt(i + 1) != '\n'))) {
        ends++;
      }
    }
    return ends;
  }

  @Override
  public void close() throws IOException {
    parser.close();
    reader.close();
  }
}
