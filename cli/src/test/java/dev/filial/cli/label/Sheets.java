package dev.filial.cli.label;

import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.LabelFacts;
import dev.filial.core.name.TravellingCode;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Sheets in tests: made of a few words, and read back by a parser that is not ours. */
final class Sheets {

  private Sheets() {}

  /** What belongs on a label of a grower whose mark is KB. */
  static TagQuestion.Label label(String code, String... parentsOrTaxon) {
    Code read = Code.parse(code);
    return new TagQuestion.Label(
        read,
        LabelFacts.of(read.text()).withParentsOrTaxon(Arrays.asList(parentsOrTaxon)),
        new TravellingCode(new GrowersMark("KB"), read).machineReadable(),
        Set.of("Echeveria agavoides", "Echeveria laui"));
  }

  static LabelSheets.Order order(LabelStyle style, Size size, boolean withQr) {
    LabelGrid grid =
        LabelGrid.of(
            Size.A4, style.onPaper(size), new LabelGrid.Gap(0, 0), LabelGrid.Asked.NOTHING);
    return new LabelSheets.Order(style, size, grid, 0, false, withQr);
  }

  static String html(LabelSheets sheets) {
    StringBuilder html = new StringBuilder();
    try {
      sheets.write(html);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return html.toString();
  }

  static Document parsed(LabelSheets sheets) {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(html(sheets))));
    } catch (SAXException | IOException | ParserConfigurationException e) {
      throw new AssertionError("not well-formed: " + html(sheets), e);
    }
  }

  static List<Element> texts(Document document, String kind) {
    NodeList all = document.getElementsByTagName("text");
    List<Element> texts = new ArrayList<>();
    for (int i = 0; i < all.getLength(); i++) {
      Element element = (Element) all.item(i);
      if (element.getAttribute("class").equals(kind)) {
        texts.add(element);
      }
    }
    return texts;
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }
}
