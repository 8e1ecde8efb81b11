package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Noted;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterRefusal;
import java.util.List;
import org.junit.jupiter.api.Test;

class HistoryQuestionTest {

  private final InventedBench bench = new InventedBench();
  private final Code laui = bench.plant(LAUI);

  private HistoryQuestion history() {
    return HistoryQuestion.of(bench.store);
  }

  private void undo() {
    bench.say(new Amended(history().undoable().entry(), null, "undone"));
  }

  @Test
  void anAmendedEntrySaysWhatItSaysNowAndWhatItSaidFirst() {
    PlantAcquired mended =
        new PlantAcquired(
            laui,
            Determination.of(AGAVOIDES),
            Provenance.UNKNOWN,
            null,
            List.of(),
            false,
            null,
            null);
    long amendment = bench.say(new Amended(2, mended, "misread the label"));
    bench.say(new Doubted(2, "Anton", null));

    HistoryQuestion.History told = history().entry(2);

    assertThat(told.said().text()).contains(AGAVOIDES);
    assertThat(told.said().amended()).isTrue();
    assertThat(told.said().guess()).isEqualTo("Anton");
    assertThat(told.firstText()).contains(LAUI);
    assertThat(told.body()).contains(AGAVOIDES);
    assertThat(told.later()).extracting(Said::entry).containsExactly(amendment, amendment + 1);
  }

  @Test
  void undoingTwiceGoesBackTwoEntries() {
    long first = bench.say(new Noted(laui, "one", null));
    long second = bench.say(new Noted(laui, "two", null));

    assertThat(history().undoable().entry()).isEqualTo(second);
    undo();
    assertThat(history().undoable().entry()).isEqualTo(first);
    undo();
    assertThat(history().entry(second).said().struck()).isTrue();
    assertThat(history().undoable().entry()).isEqualTo(2);
    undo();
    assertThatThrownBy(() -> history().undoable())
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("there is nothing to undo");
  }

  @Test
  void theLastEntriesAreToldOldestFirst() {
    bench.say(new Noted(laui, "one", null));

    assertThat(history().last(2)).extracting(Said::entry).containsExactly(2L, 3L);
    assertThat(history().last(99)).hasSize(3);
  }

  @Test
  void setsThatDepartFromHalfTheParentsAreTold() {
    Code agavoides = bench.plant(AGAVOIDES);
    bench.pollination(laui, new Pollen.OnePlant(agavoides)).sets(2, 1).made();

    assertThat(history().last(1).get(0).text())
        .endsWith("3 flowers, egg of 2 chromosome sets, pollen of 1 chromosome set");
  }

  @Test
  void theNextCodesAreThoseThatNothingHas() {
    Code cross = bench.cross(laui, laui);
    Code seedling = bench.seedling(cross);
    bench.say(new Amended(bench.store.size(), null, "never pricked out"));
    NextCode next = NextCode.in(bench.store);

    assertThat(next.ofYear(2025)).isEqualTo(Code.of(25, cross.number() + 1));
    assertThat(next.ofYear(2031)).isEqualTo(Code.of(31, 1));
    assertThat(next.seedling(cross)).as("a code is never used again").isNotEqualTo(seedling);
    assertThat(next.lot(cross)).isEqualTo(cross.lot(1));
    assertThat(next.group(cross)).isEqualTo(cross.group(1));
    assertThat(next.sowing(cross)).isEqualTo(cross.sowing(1));
  }
}
