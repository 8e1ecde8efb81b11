package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.answer.CrossOdds.Scenario;
import dev.filial.core.answer.OddsQuestion.Side;
import dev.filial.core.name.Code;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A stated genotype says how linked genes lie together, whichever of them are asked about. */
class StatedPhaseTest {

  private final InventedBench bench = new InventedBench();

  /** Two genes at 10 % in coupling in one plant, and a third on another chromosome. */
  private Code linkedAndNot(String... stated) {
    bench.gene("L", "L", "l");
    bench.geneBeside("L", "1/10", "M", "M", "m");
    bench.gene("A", "A", "a");
    bench.trait("tl", "long,short", "L", "L_=long", "ll=short");
    bench.trait("tm", "matt,bright", "M", "M_=matt", "mm=bright");
    bench.trait("both", "yes,no", "L,M", "L_ M_=yes", "*=no");
    bench.trait("ta", "armed,bare", "A", "A_=armed", "aa=bare");
    Code plant = bench.plant(LAUI);
    for (String one : stated) {
      String[] parts = one.split(": ", -1);
      bench.genotype(plant, parts[1], parts[0].split(",", -1));
    }
    return plant;
  }

  @Test
  void howLinkedGenesLieIsKeptOfAnEntryThatNamesMoreGenes() {
    Code plant = linkedAndNot("L,M,A: LM/lm Aa");

    // Of gametes 9/20 are LM, 9/20 lm, 1/20 Lm and 1/20 lM, so that of a backcross's seedlings.
    Scenario both = only(question("tl", "tm").ask(plant(plant), genes("lm/lm")));
    assertThat(both.seedGenes()).isEqualTo("LM/lm");
    assertThat(text(both))
        .isEqualTo("9/20 long matt, 1/20 long bright, 1/20 short matt, 9/20 short bright");
    assertThat(only(question("tl").ask(plant(plant), genes("ll"))).seedGenes()).isEqualTo("Ll");
    assertThat(text(only(question("both").ask(plant(plant), genes("lm/lm")))))
        .isEqualTo("9/20 yes, 11/20 no");
  }

  @Test
  void entriesOfDifferentChromosomesAreTakenTogetherEachAsItLies() {
    Code plant = linkedAndNot("L,M: Lm/lM", "A: Aa");

    Scenario all = only(question("tl", "tm", "ta").ask(plant(plant), genes("lm/lm aa")));
    assertThat(all.seedGenes()).isEqualTo("Lm/lM Aa");
    // In repulsion 1/20 of the gametes are LM, half of these with A.
    assertThat(all.classes())
        .filteredOn(one -> one.states().equals(List.of("long", "matt", "armed")))
        .extracting(one -> one.chance().toString())
        .containsExactly("1/40");
  }

  @Test
  void whatIsLikelyOfAPlantKeepsItToo() {
    Code plant = linkedAndNot("L,M,A: LM/lm Aa");

    LikelyGenes likely = LikelyGenesQuestion.of(bench.store, List.of("tl", "tm")).ask(plant);
    assertThat(likely.ways().get(0).genotypes())
        .extracting(one -> one.genes() + " " + one.chance())
        .containsExactly("LM/lm 1.0");
  }

  private OddsQuestion question(String... traits) {
    return OddsQuestion.of(bench.store, List.of(traits));
  }

  private static Side plant(Code code) {
    return new Side(code, null, null);
  }

  private static Side genes(String genes) {
    return new Side(null, genes, null);
  }

  private static Scenario only(CrossOdds odds) {
    assertThat(odds.scenarios()).hasSize(1);
    return odds.scenarios().get(0);
  }

  private static String text(Scenario scenario) {
    return String.join(
        ", ",
        scenario.classes().stream()
            .map(one -> one.chance() + " " + String.join(" ", one.states()))
            .toList());
  }
}
