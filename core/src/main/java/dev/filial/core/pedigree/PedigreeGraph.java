package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.DirectedMultigraph;

/**
 * A pedigree as a JGraphT graph, for whatever graph algorithm, layout or exporter one wants to run.
 *
 * <p>Vertices are codes; edges run from parent to offspring. A selfed plant has two edges from the
 * one parent, so this is a multigraph; it has no directed cycle. Graph objects take some fifteen
 * times the memory of the arrays: make it of a part of a large pedigree ({@link
 * Pedigree#ancestorsOf}).
 */
public final class PedigreeGraph {

  /** What a parent is to its offspring. */
  public enum Role {
    /** It bore the seed. */
    SEED,
    /** It gave the pollen. */
    POLLEN,
    /** The offspring repeats it: a ramet, an apomict, or a plant that may be it. */
    COPY
  }

  /**
   * A parent of a plant in one of its cases.
   *
   * @param parent the parent's code
   * @param offspring the offspring's code
   * @param role what the parent is to the offspring
   * @param caseNumber which case of the offspring, counted from 0
   * @param share how likely that case is
   * @param route how the offspring came about in that case; for a ramet {@link Route#IDENTITY}
   */
  public record Parentage(
      String parent, String offspring, Role role, int caseNumber, Fraction share, Route route) {}

  private PedigreeGraph() {}

  /** The graph of the pedigree; it cannot be changed. Unknown parents have no vertex. */
  public static Graph<String, Parentage> of(Pedigree pedigree) {
    Graph<String, Parentage> graph = new DirectedMultigraph<>(Parentage.class);
    for (int plant = 0; plant < pedigree.size(); plant++) {
      String code = pedigree.code(plant);
      graph.addVertex(code);
      if (pedigree.isRamet(plant)) {
        String of = pedigree.code(pedigree.rametOf(plant));
        add(graph, new Parentage(of, code, Role.COPY, 0, Fraction.ONE, Route.IDENTITY));
      }
      List<Descent> descents = pedigree.descents(plant);
      for (int k = 0; k < descents.size(); k++) {
        Descent descent = descents.get(k);
        if (descent instanceof Descent.Sexual cross) {
          link(graph, pedigree, cross.seed(), plant, Role.SEED, k, descent);
          link(graph, pedigree, cross.pollen(), plant, Role.POLLEN, k, descent);
        } else if (descent instanceof Descent.Copy copy) {
          link(graph, pedigree, copy.of(), plant, Role.COPY, k, descent);
        }
      }
    }
    return new AsUnmodifiableGraph<>(graph);
  }

  private static void link(
      Graph<String, Parentage> graph,
      Pedigree pedigree,
      int parent,
      int offspring,
      Role role,
      int caseNumber,
      Descent descent) {
    if (parent != Pedigree.UNKNOWN) {
      add(
          graph,
          new Parentage(
              pedigree.code(parent),
              pedigree.code(offspring),
              role,
              caseNumber,
              descent.share(),
              descent.route()));
    }
  }

  private static void add(Graph<String, Parentage> graph, Parentage edge) {
    graph.addEdge(edge.parent(), edge.offspring(), edge);
  }
}
