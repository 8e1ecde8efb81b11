package dev.filial.cli.paper;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A document read back as XML. */
public record Parsed(Document document) {

  public static Parsed of(String text) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return new Parsed(
          factory.newDocumentBuilder().parse(new InputSource(new StringReader(text))));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError(e.getMessage() + "\n" + text, e);
    }
  }

  /** The elements of that tag, in order. */
  public List<Element> all(String tag) {
    return in(document.getElementsByTagName(tag));
  }

  /** The elements of that tag and class, in order. */
  public List<Element> all(String tag, String look) {
    return all(tag).stream()
        .filter(one -> List.of(one.getAttribute("class").split(" ", -1)).contains(look))
        .toList();
  }

  public static List<Element> under(Element above, String tag) {
    return in(above.getElementsByTagName(tag));
  }

  private static List<Element> in(NodeList nodes) {
    List<Element> found = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }
}
