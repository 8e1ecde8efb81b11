package dev.filial.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayWidthTest {

  // Wide and Fullwidth by Unicode Standard Annex 11 (East Asian Width), clusters by Annex 29.
  @ParameterizedTest
  @CsvSource({
    "Echeveria, 9",
    "×, 1",
    "♀, 1",
    "é, 1",
    "e\u0301, 1",
    "ä\u0323\u0301, 1",
    "東京, 4",
    "한글, 4",
    "ﾊ, 1",
    "Ａ, 2",
    "\uD83C\uDF35, 2",
    "\uD83D\uDC69\u200D\uD83C\uDF3E, 2",
    "\u2600\uFE0F, 2",
    "\uD83C\uDDF2\uD83C\uDDFD, 2",
    "a\u200Bb, 2"
  })
  void columnsOnATerminal(String text, int columns) {
    assertThat(DisplayWidth.of(text)).isEqualTo(columns);
  }
}
