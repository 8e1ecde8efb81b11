package dev.filial.core.pedigree;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;

/** Explains why records are no pedigree: the shortest loop among the plants that loop. */
final class Loop {

  /** Plants looked at before the search for a still shorter loop in one knot is given up. */
  private static final int EFFORT = 200_000;

  private Loop() {}

  /**
   * The exception for a draft in which the last plant of the trail, each the offspring of the next,
   * has a parent on the trail.
   */
  static PedigreeException explain(Draft draft, int[] trail) {
    int last = trail[trail.length - 1];
    for (int k = 0; k < draft.parentCount(last); k++) {
      if (draft.parent(last, k) == last) {
        return explained(draft, List.of(last, last));
      }
    }
    List<Integer> shortest = List.of();
    for (Graph<Integer, DefaultEdge> knot :
        new KosarajuStrongConnectivityInspector<>(ancestors(draft, last))
            .getStronglyConnectedComponents()) {
      if (knot.vertexSet().size() > 1) {
        List<Integer> loop = shortestIn(knot);
        if (shortest.isEmpty() || loop.size() < shortest.size()) {
          shortest = loop;
        }
      }
    }
    return explained(draft, shortest);
  }

  private static Graph<Integer, DefaultEdge> ancestors(Draft draft, int plant) {
    Graph<Integer, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);
    graph.addVertex(plant);
    List<Integer> todo = new ArrayList<>(List.of(plant));
    while (!todo.isEmpty()) {
      int offspring = todo.remove(todo.size() - 1);
      for (int k = 0; k < draft.parentCount(offspring); k++) {
        int parent = draft.parent(offspring, k);
        if (parent >= 0 && parent != offspring) {
          if (graph.addVertex(parent)) {
            todo.add(parent);
          }
          graph.addEdge(offspring, parent);
        }
      }
    }
    return graph;
  }

  private static List<Integer> shortestIn(Graph<Integer, DefaultEdge> knot) {
    List<Integer> shortest = List.of();
    int left = EFFORT / knot.vertexSet().size();
    for (int start : knot.vertexSet()) {
      if (left-- < 0 && !shortest.isEmpty()) {
        break;
      }
      var paths = new BFSShortestPath<>(knot).getPaths(start);
      for (DefaultEdge edge : knot.incomingEdgesOf(start)) {
        GraphPath<Integer, DefaultEdge> path = paths.getPath(knot.getEdgeSource(edge));
        if (path != null && (shortest.isEmpty() || path.getLength() + 2 < shortest.size())) {
          shortest = new ArrayList<>(path.getVertexList());
          shortest.add(start);
        }
      }
    }
    return shortest;
  }

  private static PedigreeException explained(Draft draft, List<Integer> loop) {
    List<String> codes =
        new ArrayList<>(loop.subList(1, loop.size()).stream().map(p -> draft.codes[p]).toList());
    // The same loop reads the same wherever the search met it.
    Collections.rotate(codes, -codes.indexOf(Collections.min(codes)));
    codes.add(codes.get(0));
    return new PedigreeException(
        codes.get(0)
            + " is its own ancestor: "
            + String.join(" <- ", codes)
            + " (offspring <- parent); correct a parent of one of them");
  }
}
