package dev.filial.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class MarkupTest {

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

  /** What XML 1.0 calls a Char, section 2.2, written another way than in the class. */
  static String holdable(String text) {
    StringBuilder all = new StringBuilder();
    text.codePoints()
        .map(
            letter ->
                letter == 0x9
                        || letter == 0xA
                        || letter == 0xD
                        || (letter >= 0x20
                            && !(letter >= 0xD800 && letter <= 0xDFFF)
                            && letter != 0xFFFE
                            && letter != 0xFFFF)
                    ? letter
                    : 0xFFFD)
        .forEach(all::appendCodePoint);
    return all.toString();
  }
}
