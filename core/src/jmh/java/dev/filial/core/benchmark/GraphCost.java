package dev.filial.core.benchmark;

import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeGraph;
import org.jgrapht.Graph;

/** What a million plants take as arrays and as graph objects: time and heap, roughly. */
public final class GraphCost {

  private GraphCost() {}

  /** Prints time and heap of both, a second round after a first one that warmed up. */
  public static void main(String[] args) {
    Nursery nursery = new Nursery(20);
    for (int round = 0; round < 2; round++) {
      long before = used();
      long begin = System.nanoTime();
      Pedigree arrays =
          Pedigree.ofParents(nursery.codes, nursery.seed, nursery.pollen, nursery.taxa);
      long built = System.nanoTime();
      long arraysUse = used() - before;
      long graphBegin = System.nanoTime();
      Graph<String, PedigreeGraph.Parentage> graph = PedigreeGraph.of(arrays);
      long graphBuilt = System.nanoTime();
      long graphUse = used() - before - arraysUse;
      System.out.printf(
          "arrays %d ms, %d MB beside the codes; graph of %d edges %d ms, %d MB%n",
          (built - begin) / 1_000_000,
          arraysUse >> 20,
          graph.edgeSet().size(),
          (graphBuilt - graphBegin) / 1_000_000,
          graphUse >> 20);
    }
  }

  private static long used() {
    System.gc();
    Runtime runtime = Runtime.getRuntime();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
