package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.LinkageQuestion.PairCounts;
import dev.filial.core.name.Code;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.TraitDeclared;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two traits seen on the same seedlings. */
class LinkageQuestionTest {

  private final InventedBench bench = new InventedBench();

  @Test
  void seedlingsAreSortedByBothTraitsAndPickedOnesLeftOut() {
    bench.say(new TraitDeclared("edge", List.of("red", "green"), null, null, null, null));
    bench.say(new TraitDeclared("bloom", List.of("thick", "thin"), null, null, null, null));
    Code cross = bench.cross(bench.plant(LAUI), bench.plant(AGAVOIDES));
    String[][] seen = {
      {"red", "thick"}, {"red", "thick"}, {"red", "thin"}, {"green", "thick"}, {"green", "thin"}
    };
    for (String[] one : seen) {
      Code seedling = bench.seedling(cross);
      bench.showed(seedling, "edge", one[0]);
      bench.showed(seedling, "bloom", one[1]);
    }
    bench.showed(bench.seedling(cross), "edge", "red");
    bench.say(new Numbered(cross, 7, 7, null, "bloom", null, null));
    bench.showed(cross.seedling(7), "edge", "red");
    bench.showed(cross.seedling(7), "bloom", "thin");

    PairCounts counts = LinkageQuestion.of(bench.store).ask(cross, "edge", "bloom");
    assertThat(List.of(counts.both(), counts.firstAlone(), counts.secondAlone(), counts.neither()))
        .containsExactly(2L, 1L, 1L, 1L);
    assertThat(counts.picked()).isEqualTo(1);
    assertThatThrownBy(() -> LinkageQuestion.of(bench.store).ask(cross, "edge", "Edge"))
        .hasMessageContaining("between two traits");
  }
}
