package dev.filial.cli.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** Text that is written is read back, and nothing in it is taken for markup. */
public class MarkupTest {

  @Test
  void whatLooksLikeMarkupIsText() {
    String written =
        new Markup()
            .open("p", "title", "\"a\" < b & c\n")
            .text("<b>&amp;</b> ]]>")
            .close()
            .written();

    assertThat(written)
        .isEqualTo(
            "<p title=\"&quot;a&quot; &lt; b &amp; c&#10;\">"
                + "&lt;b&gt;&amp;amp;&lt;/b&gt; ]]&gt;</p>");
  }

  @Test
  void anElementLeftOpenIsAMistake() {
    assertThatThrownBy(() -> new Markup().open("p").written())
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("p");
  }

  /** Whatever the text: it comes back as it was, what XML cannot hold as U+FFFD. */
  @Property(tries = 300)
  void everyTextReadsBack(@ForAll String text) {
    String written = new Markup().open("p", "title", text).text(text).close().written();

    Element element = Parsed.of(written).document().getDocumentElement();

    assertThat(element.getTextContent()).isEqualTo(holdable(text));
    assertThat(element.getAttribute("title")).isEqualTo(holdable(text));
  }

  /**
   * What XML 1.0 calls a Char, section 2.2, and HTML neither a control nor a noncharacter, without
   * the marks of UAX 9 that turn the direction; written another way than in the class.
   */
  public static String holdable(String text) {
    StringBuilder all = new StringBuilder();
    text.codePoints()
        .filter(
            letter -> "\u202A\u202B\u202C\u202D\u202E\u2066\u2067\u2068\u2069".indexOf(letter) < 0)
        .map(
            letter ->
                letter == 0x9 || letter == 0xA || letter == 0xD || !isRefused(letter)
                    ? letter
                    : 0xFFFD)
        .forEach(all::appendCodePoint);
    return all.toString();
  }

  private static boolean isRefused(int letter) {
    return Character.isISOControl(letter)
        || Character.getType(letter) == Character.SURROGATE
        || (letter & 0xFFFF) >= 0xFFFE
        || (letter >= 0xFDD0 && letter <= 0xFDEF);
  }
}
