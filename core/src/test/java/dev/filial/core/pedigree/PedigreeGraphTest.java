package dev.filial.core.pedigree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.PedigreeGraph.Parentage;
import dev.filial.core.pedigree.PedigreeGraph.Role;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.traverse.TopologicalOrderIterator;
import org.junit.jupiter.api.Test;

/** The graph view, run through a general-purpose graph library. */
class PedigreeGraphTest {

  private final Pedigree pedigree =
      Pedigree.of(
          List.of(
              PlantRecord.selfing("F2", "offset"),
              PlantRecord.ramet("offset", "F1"),
              PlantRecord.cross("F1", "A", "B"),
              PlantRecord.seedling(
                  "M",
                  Case.cross(Fraction.of(3, 4), Route.POLLEN_MIX, "A", "F1"),
                  Case.apomict(Fraction.of(1, 4), "A")),
              PlantRecord.openPollinated("O", "F2"),
              PlantRecord.pure("A", "E. x"),
              PlantRecord.pure("B", "E. y")));

  private final Graph<String, Parentage> graph = PedigreeGraph.of(pedigree);

  @Test
  void theGraphHasEveryPlantAndEveryParent() {
    assertThat(graph.vertexSet()).hasSize(7);
    assertThat(graph.edgeSet()).hasSize(2 + 1 + 2 + 3 + 1);
    assertThat(graph.getAllEdges("offset", "F2"))
        .extracting(Parentage::role)
        .containsExactlyInAnyOrder(Role.SEED, Role.POLLEN);
    assertThat(graph.getAllEdges("A", "M"))
        .extracting(Parentage::share)
        .containsExactlyInAnyOrder(Fraction.of(3, 4), Fraction.of(1, 4));
    assertThat(graph.getEdge("F1", "offset").role()).isEqualTo(Role.COPY);
  }

  @Test
  void theLibraryFindsNoCycleAndAgreesThatParentsComeFirst() {
    assertThat(new CycleDetector<>(graph).detectCycles()).isFalse();
    assertThat(new TopologicalOrderIterator<>(graph)).toIterable().hasSize(7);
    for (Parentage edge : graph.edgeSet()) {
      assertThat(pedigree.level(pedigree.indexOf(edge.parent())))
          .isLessThan(pedigree.level(pedigree.indexOf(edge.offspring())));
    }
  }

  @Test
  void theGraphCannotBeChanged() {
    assertThatThrownBy(() -> graph.removeVertex("A"))
        .isInstanceOf(UnsupportedOperationException.class);
  }
}
