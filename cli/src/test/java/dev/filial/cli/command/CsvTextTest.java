package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Rows that a spreadsheet opens. */
class CsvTextTest {

  /** RFC 4180, section 2: quotes are doubled, commas and line breaks stand within quotes. */
  @Test
  void commasQuotesAndLineBreaksAreQuoted() {
    assertThat(new CsvText().row("a", "b,c", "d\"e", "f\ng", "=h", null, 2.5).text())
        .isEqualTo("a,\"b,c\",\"d\"\"e\",\"f\ng\",'=h,,2.500000\r\n");
  }

  /** What a spreadsheet takes for a formula; a number is none. */
  @Test
  void whatBeginsLikeAFormulaIsText() {
    assertThat(new CsvText().row("=1+1", "@sum", "\tx", "-x", "-12", "a=b", "~40").text())
        .isEqualTo("'=1+1,'@sum,'\tx,'-x,-12,a=b,~40\r\n");
  }
}
