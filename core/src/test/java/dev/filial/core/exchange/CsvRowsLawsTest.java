package dev.filial.core.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.MappingIterator;
import tools.jackson.dataformat.csv.CsvMapper;
import tools.jackson.dataformat.csv.CsvReadFeature;

/** What is written as comma-separated values is read back by another reader, whatever it says. */
class CsvRowsLawsTest {

  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> cells =
        Arbitraries.oneOf(
            Arbitraries.strings().withChars("=+-@'\t\r\n\",; 01.aé<ß\\").ofMaxLength(9),
            Arbitraries.of("\uD83C\uDF35", "x".repeat(300), "a\r\nb", "\"", "", "- 3", "-3"));
    return cells.list().ofSize(3).list().ofMaxSize(8);
  }

  @Property(tries = 300)
  void anotherReaderReadsBackWhatWasWritten(@ForAll("tables") List<List<String>> table)
      throws IOException, JacksonException {
    StringWriter text = new StringWriter();
    CsvRows rows = new CsvRows(text);
    for (List<String> row : table) {
      rows.row(row);
    }
    List<List<String>> read = new ArrayList<>();
    try (MappingIterator<String[]> found =
        CsvMapper.builder()
            .enable(CsvReadFeature.WRAP_AS_ARRAY)
            .build()
            .readerFor(String[].class)
            .readValues(text.toString())) {
      while (found.hasNextValue()) {
        read.add(List.of(found.nextValue()).stream().map(SafeCell::read).toList());
      }
    }
    assertThat(read).isEqualTo(table);
  }
}
