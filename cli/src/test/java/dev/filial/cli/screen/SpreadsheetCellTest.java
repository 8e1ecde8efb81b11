package dev.filial.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells that a spreadsheet opens. */
class SpreadsheetCellTest {

  @ParameterizedTest
  @ValueSource(strings = {"=1+1", "+1", "-1", "@sum", "\tx", "\rx"})
  void whatBeginsLikeAFormulaIsText(String cell) {
    assertThat(SpreadsheetCell.text(cell)).isEqualTo("'" + cell);
  }

  @Test
  void otherTextStaysAsItIs() {
    assertThat(SpreadsheetCell.text("")).isEmpty();
    assertThat(SpreadsheetCell.text("a=b")).isEqualTo("a=b");
    assertThat(SpreadsheetCell.text("~40")).isEqualTo("~40");
  }

  /** RFC 4180, section 2: quotes are doubled, commas and line breaks stand within quotes. */
  @Test
  void commasQuotesAndLineBreaksAreQuoted() {
    assertThat(SpreadsheetCell.line(List.of("a", "b,c", "d\"e", "f\ng", "=h")))
        .isEqualTo("a,\"b,c\",\"d\"\"e\",\"f\ng\",'=h");
  }
}
