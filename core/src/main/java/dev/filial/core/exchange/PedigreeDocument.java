package dev.filial.core.exchange;

import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeGraph;
import dev.filial.core.pedigree.PedigreeGraph.Parentage;
import java.io.IOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jgrapht.Graph;
import org.jgrapht.nio.Attribute;
import org.jgrapht.nio.AttributeType;
import org.jgrapht.nio.DefaultAttribute;
import org.jgrapht.nio.ExportException;
import org.jgrapht.nio.dot.DOTExporter;
import org.jgrapht.nio.graphml.GraphMLExporter;
import org.jgrapht.nio.graphml.GraphMLExporter.AttributeCategory;

/**
 * A pedigree as a file of GraphML or of DOT, the language of Graphviz. Edges run from parent to
 * offspring; a selfed plant has two from its one parent. An unknown parent is no node: the
 * offspring's doubts say so.
 */
public final class PedigreeDocument {

  /** What stands for a character that XML cannot hold. */
  private static final String REPLACEMENT = "\uFFFD";

  private final Graph<String, Parentage> graph;
  private final Map<String, Node> nodes = new LinkedHashMap<>();
  private final Map<String, String> ids = new LinkedHashMap<>();

  /**
   * A plant of the pedigree as others see it.
   *
   * @param code its code with the grower's mark; two plants never have one code
   * @param kind what it is in a grower's words
   * @param name its own names; empty when it has none
   * @param taxon its taxon or hybrid formula; empty when not known
   * @param generation its generation in short; empty when there is none
   * @param state what became of it; empty for what is no numbered plant
   * @param doubts what is doubtful about it
   */
  public record Node(
      String code,
      String kind,
      String name,
      String taxon,
      String generation,
      String state,
      List<String> doubts) {
    /** Copies the list. */
    public Node {
      doubts = List.copyOf(doubts);
    }

    private Map<String, String> attributes() {
      Map<String, String> attributes = new LinkedHashMap<>();
      put(attributes, "code", code);
      put(attributes, "kind", kind);
      put(attributes, "name", name);
      put(attributes, "taxon", taxon);
      put(attributes, "generation", generation);
      put(attributes, "state", state);
      put(attributes, "doubts", Cells.several(doubts, "; "));
      return attributes;
    }

    private static void put(Map<String, String> attributes, String key, String value) {
      if (!value.isEmpty()) {
        attributes.put(key, value);
      }
    }

    private String label() {
      return code + "\n" + (name.isEmpty() ? "" : name + "\n") + taxon;
    }
  }

  private PedigreeDocument(Graph<String, Parentage> graph) {
    this.graph = graph;
  }

  /**
   * The document of a pedigree.
   *
   * @param node each plant as others see it, by what it is called in the pedigree
   */
  public static PedigreeDocument of(Pedigree pedigree, Function<String, Node> node) {
    PedigreeDocument document = new PedigreeDocument(PedigreeGraph.of(pedigree));
    for (String plant : document.graph.vertexSet()) {
      document.nodes.put(plant, node.apply(plant));
      document.ids.put(plant, "n" + (document.ids.size() + 1));
    }
    return document;
  }

  /** How many plants it shows. */
  public int plants() {
    return nodes.size();
  }

  /** How many edges lead from a parent to its offspring. */
  public int parents() {
    return graph.edgeSet().size();
  }

  /**
   * Writes it as GraphML. Characters that XML cannot hold become U+FFFD.
   *
   * @throws IOException if it cannot be written
   */
  public void graphml(Writer out) throws IOException {
    GraphMLExporter<String, Parentage> exporter = new GraphMLExporter<>(this::id);
    for (String key : List.of("code", "kind", "name", "taxon", "generation", "state", "doubts")) {
      exporter.registerAttribute(key, AttributeCategory.NODE, AttributeType.STRING);
    }
    exporter.registerAttribute("role", AttributeCategory.EDGE, AttributeType.STRING);
    exporter.registerAttribute("how", AttributeCategory.EDGE, AttributeType.STRING);
    exporter.registerAttribute("way", AttributeCategory.EDGE, AttributeType.INT);
    exporter.registerAttribute("share", AttributeCategory.EDGE, AttributeType.DOUBLE);
    exporter.setVertexAttributeProvider(
        plant -> texts(node(plant).attributes(), PedigreeDocument::forXml));
    exporter.setEdgeAttributeProvider(PedigreeDocument::edge);
    export(() -> exporter.exportGraph(graph, out), out);
  }

  /**
   * Writes it in DOT: edges of seed parents are solid, those of pollen parents dashed, those of
   * copies dotted.
   *
   * @throws IOException if it cannot be written
   */
  public void dot(Writer out) throws IOException {
    DOTExporter<String, Parentage> exporter =
        new DOTExporter<>(plant -> '"' + forDot(node(plant).code()).replace("\"", "'") + '"');
    exporter.setGraphAttributeProvider(
        () -> Map.of("rankdir", DefaultAttribute.createAttribute("LR")));
    exporter.setVertexAttributeProvider(
        plant -> {
          Map<String, String> attributes = node(plant).attributes();
          attributes.put("label", node(plant).label());
          return texts(attributes, PedigreeDocument::forDot);
        });
    exporter.setEdgeAttributeProvider(
        parentage -> {
          Map<String, Attribute> attributes = edge(parentage);
          String style =
              switch (parentage.role()) {
                case SEED -> "solid";
                case POLLEN -> "dashed";
                case COPY -> "dotted";
              };
          attributes.put("style", DefaultAttribute.createAttribute(style));
          return attributes;
        });
    export(() -> exporter.exportGraph(graph, out), out);
  }

  private String id(String plant) {
    return ids.getOrDefault(plant, plant);
  }

  private Node node(String plant) {
    Node node = nodes.get(plant);
    if (node == null) {
      throw new IllegalStateException(plant + " is not in the document");
    }
    return node;
  }

  private static Map<String, Attribute> edge(Parentage parentage) {
    Map<String, Attribute> attributes = new LinkedHashMap<>();
    attributes.put(
        "role", DefaultAttribute.createAttribute(parentage.role().name().toLowerCase(Locale.ROOT)));
    attributes.put("how", DefaultAttribute.createAttribute(parentage.route().text()));
    attributes.put("way", DefaultAttribute.createAttribute(parentage.caseNumber() + 1));
    attributes.put("share", DefaultAttribute.createAttribute(parentage.share().toDouble()));
    return attributes;
  }

  private static Map<String, Attribute> texts(
      Map<String, String> texts, Function<String, String> written) {
    Map<String, Attribute> attributes = new LinkedHashMap<>();
    texts.forEach(
        (key, text) -> attributes.put(key, DefaultAttribute.createAttribute(written.apply(text))));
    return attributes;
  }

  /** Only what XML 1.0 may hold (section 2.2), from memory. */
  static String forXml(String text) {
    StringBuilder kept = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              boolean held =
                  c == '\t'
                      || c == '\n'
                      || (c >= 0x20 && c <= 0xD7FF)
                      || (c >= 0xE000 && c <= 0xFFFD)
                      || c >= 0x10000;
              kept.append(held ? Character.toString(c) : REPLACEMENT);
            });
    return kept.toString();
  }

  /**
   * Readers of DOT differ on what a backslash is, above all before a quote, so a backslash becomes
   * a slash; ends of lines are written as DOT has them, and quotes are escaped by the exporter.
   */
  static String forDot(String text) {
    return forXml(text).replace("\t", " ").replace('\\', '/').replace("\n", "\\n");
  }

  private static void export(Runnable export, Writer out) throws IOException {
    try {
      export.run();
      out.flush();
    } catch (ExportException e) {
      for (Throwable cause = e.getCause(); cause != null; cause = cause.getCause()) {
        if (cause instanceof IOException failure) {
          throw failure;
        }
      }
      throw e;
    }
  }
}
