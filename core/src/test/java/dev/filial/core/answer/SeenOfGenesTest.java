package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.heredity.MapFunction;
import dev.filial.core.inference.Evidence;
import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Potted;
import dev.filial.core.register.Tallied;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Of what was seen one by one and what was tallied, each seedling is evidence once. */
class SeenOfGenesTest {

  private static final String EDGE = "leaf edge";

  private final InventedBench bench = new InventedBench();
  private final Code cross = bench.cross(bench.plant(LAUI), bench.plant(AGAVOIDES));
  private final Code sowing = bench.sowing(bench.harvest(cross), "2025-10-01", 1);

  @BeforeEach
  void redEdgesHideGreen() {
    bench.gene("edge", "R", "r");
    bench.trait(EDGE, "red,green", "edge", "R_=red", "rr=green");
  }

  @Test
  void aSeedlingNumberedAfterTheTallyIsTakenOutOfIt() {
    tally(sowing, "2026-02-01", 9, 8);
    Code seedling = numbered(sowing, "2026-02-02", null, "red");

    assertThat(counts()).containsExactly(Map.of("red", 8L, "green", 8L));
    assertThat(shown()).extracting(Evidence.Shown::plant).containsExactly(seedling.text());
  }

  @Test
  void aSeedlingNumberedBeforeTheTallyIsAnother() {
    numbered(sowing, "2026-01-01", null, "red");
    tally(sowing, "2026-02-01", 9, 8);

    assertThat(counts()).containsExactly(Map.of("red", 9L, "green", 8L));
    assertThat(shown()).hasSize(1);
  }

  @Test
  void aSeedlingPickedBeforeTheTallyTellsOfItselfAlone() {
    numbered(sowing, "2026-01-01", EDGE, "green");
    tally(sowing, "2026-02-01", 9, 8);

    assertThat(counts()).containsExactly(Map.of("red", 9L, "green", 8L));
    assertThat(shown()).extracting(Evidence.Shown::picked).containsExactly(true);
  }

  @Test
  void aSeedlingPickedAfterTheTallyIsOneOfAllThatWereCounted() {
    tally(sowing, "2026-02-01", 9, 8);
    numbered(sowing, "2026-02-02", EDGE, "green");

    assertThat(counts()).containsExactly(Map.of("red", 9L, "green", 7L));
    assertThat(shown()).extracting(Evidence.Shown::picked).containsExactly(false);
  }

  @Test
  void whereTheDatesDoNotTellItIsTakenOutRatherThanCountedTwice() {
    tally(sowing, "2026-02-01", 9, 8);
    numbered(sowing, "2026", null, "red");

    assertThat(counts()).containsExactly(Map.of("red", 8L, "green", 8L));
    assertThat(shown()).hasSize(1);
  }

  @Test
  void aSeedlingIsInTheTallyThatWasMadeBeforeItWasPottedOn() {
    tally(sowing, "2026-02-01", 9, 8);
    Code pot = potted("2026-02-10");
    numbered(pot, "2026-03-01", null, "red");

    assertThat(counts()).containsExactly(Map.of("red", 8L, "green", 8L));
  }

  @Test
  void aSeedlingPottedOnBeforeTheTallyIsNotInIt() {
    Code pot = potted("2026-01-10");
    tally(sowing, "2026-02-01", 9, 8);
    numbered(pot, "2026-03-01", null, "red");
    bench.showed(pot, EDGE, "green");

    assertThat(counts())
        .as("the tally, and one of the pot that was out of it before")
        .containsExactlyInAnyOrder(Map.of("red", 9L, "green", 8L), Map.of("green", 1L));
    assertThat(shown()).hasSize(1);
  }

  @Test
  void oneOfAPotThatWasTalliedIsInItsTally() {
    tally(sowing, "2026-02-01", 9, 8);
    bench.showed(sowing, EDGE, "green");
    bench.showed(potted("2026-02-10"), EDGE, "green");

    assertThat(counts()).containsExactly(Map.of("red", 9L, "green", 8L));
  }

  private void tally(Code pot, String date, long red, long green) {
    bench.say(
        new Tallied(pot, EDGE, Map.of("red", red, "green", green), PartialDate.parse(date), null));
  }

  private Code potted(String date) {
    Code pot = NextCode.in(bench.store).group(cross);
    bench.say(new Potted(pot, sowing, PartialDate.parse(date), Count.of(5), null, null));
    return pot;
  }

  private Code numbered(Code from, String date, @Nullable String pickedFor, String shows) {
    Code seedling = NextCode.in(bench.store).seedling(cross);
    int number = seedling.part().number();
    bench.say(new Numbered(from, number, number, PartialDate.parse(date), pickedFor, null, null));
    bench.showed(seedling, EDGE, shows);
    return seedling;
  }

  private List<Evidence> seen() {
    return SeenOfGenes.in(
            bench.store, GenesInPlay.of(bench.store, List.of(EDGE), MapFunction.HALDANE, false))
        .evidence();
  }

  private List<Map<String, Long>> counts() {
    return seen().stream()
        .filter(Evidence.Counted.class::isInstance)
        .map(Evidence.Counted.class::cast)
        .map(Evidence.Counted::counts)
        .toList();
  }

  private List<Evidence.Shown> shown() {
    return seen().stream()
        .filter(Evidence.Shown.class::isInstance)
        .map(Evidence.Shown.class::cast)
        .toList();
  }
}
