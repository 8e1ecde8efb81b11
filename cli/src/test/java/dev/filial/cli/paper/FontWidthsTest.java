package dev.filial.cli.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.TextLayout;
import java.io.File;
import java.io.IOException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Widths of text, against the font file itself as Java's own reader of fonts has it. */
class FontWidthsTest {

  private static final FontWidths.Weights FONTS = FontWidths.Weights.read();

  private static Font installed(String name) throws IOException, FontFormatException {
    File file = new File("/usr/share/fonts/truetype/dejavu/" + name + ".ttf");
    if (!file.exists()) {
      System.out.println("skipped: the font " + name + " is not installed here");
    }
    Assumptions.assumeTrue(file.exists());
    return Font.createFont(Font.TRUETYPE_FONT, file).deriveFont(1000f);
  }

  @ParameterizedTest
  @CsvSource({"DejaVuSans, false", "DejaVuSans-Bold, true"})
  void theWidthOfEachLetterIsTheFonts(String name, boolean bold)
      throws IOException, FontFormatException {
    Font font = installed(name);
    FontRenderContext exact = new FontRenderContext(null, true, true);
    FontWidths widths = bold ? FONTS.bold() : FONTS.regular();
    int compared = 0;
    for (int c = 0x20; c < 0x500; c++) {
      boolean phonetic = c >= 0x250 && c < 0x370; // not in the table
      if (!phonetic && font.canDisplay(c) && Character.isLetterOrDigit(c)) {
        String letter = Character.toString(c);
        double there = font.createGlyphVector(exact, letter).getGlyphMetrics(0).getAdvanceX();
        assertThat(widths.width(letter) * 1000).as(letter).isBetween(there - 0.6, there + 1.1);
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(800);
  }

  @Test
  void aLineIsNoWiderThanItsLettersTogether() throws IOException, FontFormatException {
    Font font = installed("DejaVuSans");
    FontRenderContext exact = new FontRenderContext(null, true, true);
    for (String line :
        new String[] {
          "Echeveria agavoides × E. laui", "4 MAR 26  F1  XM 014", "AVAToWaÄÉß", "שלום"
        }) {
      double there = new TextLayout(line, font, exact).getAdvance();
      assertThat(FONTS.regular().width(line) * 1000).as(line).isCloseTo(there, within(20.0));
    }
  }

  @Test
  void aLetterWithItsAccentIsAsWideAsTheLetter() {
    assertThat(FONTS.regular().width("e\u0301")).isEqualTo(FONTS.regular().width("e"));
  }

  @Test
  void anEmojiIsOneHoweverManyItIsMadeOf() {
    assertThat(FONTS.regular().width("🌵")).isEqualTo(1.4);
    assertThat(FONTS.regular().width("👩‍🌾")).isEqualTo(1.4);
    assertThat(FONTS.regular().width("♀️")).isEqualTo(1.4);
  }

  @Property
  void theBeginningThatIsTakenFitsAndTheNextCharacterWouldNot(@ForAll String text) {
    double room = 5;
    String start = FONTS.regular().at(1).start(text, room);

    assertThat(text).startsWith(start);
    assertThat(FONTS.regular().width(start)).isLessThanOrEqualTo(room + 1e-9);
    if (start.length() < text.length()) {
      assertThat(FONTS.regular().width(text)).isGreaterThan(room - 1e-9);
    }
  }
}
