package dev.filial.core.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Ramet;
import dev.filial.core.pedigree.Route;
import dev.filial.core.pedigree.Seedling;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedPseudograph;
import org.jgrapht.nio.BaseEventDrivenImporter;
import org.jgrapht.nio.dot.DOTImporter;
import org.jgrapht.nio.graphml.GraphMLImporter;

/** A pedigree is read back by readers of the forms it is written in, whatever its plants' names. */
class PedigreeDocumentLawsTest {

  /** Two founders, a cross, its selfing, a copy, and one that may be of two ways. */
  private static final Pedigree PEDIGREE =
      Pedigree.of(
          List.of(
              new PlantRecord("a", Founder.pure("Echeveria laui")),
              new PlantRecord("b", Founder.pure("Echeveria agavoides")),
              new PlantRecord(
                  "c", new Seedling(List.of(Case.cross(Fraction.ONE, Route.CROSS, "a", "b")))),
              new PlantRecord("d", new Seedling(List.of(Case.selfing(Fraction.ONE, "c")))),
              new PlantRecord("e", new Ramet("d", false)),
              new PlantRecord(
                  "f",
                  new Seedling(
                      List.of(
                          Case.cross(Fraction.of(3, 4), Route.CROSS, "e", "a"),
                          Case.unknownPollen(Fraction.of(1, 4), Route.STRAY, "e"))))));

  private static final List<String> EDGES =
      List.of(
          "a>c seed 1.0",
          "b>c pollen 1.0",
          "c>d seed 1.0",
          "c>d pollen 1.0",
          "d>e copy 1.0",
          "e>f seed 0.75",
          "a>f pollen 0.75",
          "e>f seed 0.25");

  @Provide
  Arbitrary<String> names() {
    return Arbitraries.oneOf(
        Arbitraries.strings().withChars("\"<>&'\\;{}[]=\t\n\r\u0001\u0000 aé").ofMaxLength(12),
        Arbitraries.strings().ofMaxLength(6),
        Arbitraries.of("\uD83C\uDF35", "\uD83C", "x".repeat(300), "]]>", "</data>", "\\", "\\\""));
  }

  private static PedigreeDocument document(String name) {
    return PedigreeDocument.of(
        PEDIGREE,
        plant ->
            new PedigreeDocument.Node(
                "KB " + plant, "plant", name, "Echeveria laui", "", "alive", List.of()));
  }

  /** What a reader found: edges as texts, and the names of plants by their code. */
  private static final class Found {
    final Graph<String, DefaultEdge> graph =
        new DirectedPseudograph<>(null, DefaultEdge::new, false);
    final Map<String, Map<String, String>> plants = new HashMap<>();
    final Map<DefaultEdge, Map<String, String>> parents = new HashMap<>();

    List<String> edges() {
      List<String> edges = new ArrayList<>();
      for (DefaultEdge edge : graph.edgeSet()) {
        edges.add(
            code(graph.getEdgeSource(edge))
                + ">"
                + code(graph.getEdgeTarget(edge))
                + " "
                + parents.get(edge).get("role")
                + " "
                + parents.get(edge).get("share"));
      }
      return edges;
    }

    private String code(String vertex) {
      return plants.get(vertex).get("code").substring(3);
    }

    void listen(BaseEventDrivenImporter<String, DefaultEdge> importer) {
      importer.addVertexAttributeConsumer(
          (of, value) ->
              plants
                  .computeIfAbsent(of.getFirst(), any -> new HashMap<>())
                  .put(of.getSecond(), value.getValue()));
      importer.addEdgeAttributeConsumer(
          (of, value) ->
              parents
                  .computeIfAbsent(of.getFirst(), any -> new HashMap<>())
                  .put(of.getSecond(), value.getValue()));
    }
  }

  @Property(tries = 200)
  void graphmlReadsBack(@ForAll("names") String name) throws IOException {
    StringWriter text = new StringWriter();
    document(name).graphml(text);
    Found found = new Found();
    GraphMLImporter<String, DefaultEdge> importer = new GraphMLImporter<>();
    importer.setVertexFactory(id -> id);
    importer.setSchemaValidation(true);
    found.listen(importer);
    importer.importGraph(found.graph, new StringReader(text.toString()));
    assertThat(found.edges()).containsExactlyInAnyOrderElementsOf(EDGES);
    String read = found.plants.values().iterator().next().getOrDefault("name", "");
    assertThat(read).isEqualTo(PedigreeDocument.forXml(name));
  }

  @Property(tries = 200)
  void dotReadsBack(@ForAll("names") String name) throws IOException {
    StringWriter text = new StringWriter();
    document(name).dot(text);
    Found found = new Found();
    DOTImporter<String, DefaultEdge> importer = new DOTImporter<>();
    importer.setVertexFactory(id -> id);
    found.listen(importer);
    importer.importGraph(found.graph, new StringReader(text.toString()));
    assertThat(found.edges()).containsExactlyInAnyOrderElementsOf(EDGES);
    assertThat(found.plants).hasSize(6);
  }
}
