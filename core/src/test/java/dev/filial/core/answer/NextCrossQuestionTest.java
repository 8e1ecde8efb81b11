package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.answer.NextCrosses.Part;
import dev.filial.core.answer.NextCrosses.Plan;
import dev.filial.core.answer.NextCrosses.Season;
import dev.filial.core.name.Code;
import dev.filial.core.register.Propagated;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which cross next, asked of small registers; every number is worked by hand. */
class NextCrossQuestionTest {

  private final InventedBench bench = new InventedBench();

  private NextCrosses green() {
    Wanted wanted =
        new Wanted(
            List.of(new Wanted.State("leaf edge", "green")), null, List.of(), 1, 0.95, List.of());
    return NextCrossQuestion.of(bench.store, wanted).ask();
  }

  private void edge() {
    bench.gene("edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");
  }

  private Code offsetThatDiffersIn(Code of, String trait) {
    Code code = NextCode.in(bench.store).ofYear(2024);
    bench.say(new Propagated(code, of, null, null, false, List.of(trait), List.of(), null, null));
    return code;
  }

  /** The crosses that stand in the first season of a plan, each with its two plants. */
  private static List<List<Code>> begun(NextCrosses answer) {
    return answer.plans().stream()
        .map(plan -> plan.seasons().get(0))
        .map(season -> List.of(season.seed().plant().code(), season.pollen().plant().code()))
        .toList();
  }

  /**
   * A clone refuses its own pollen, from whichever of its pots it is. By hand: Rr by its offset
   * would be rr 1 in 4; but there is one plant to cross with nothing.
   */
  @Test
  void twoPotsOfACloneThatRefusesItselfAreNoPair() {
    edge();
    bench.refusingGene("S", "S1", "S2", "S3", "S4");
    Code first = bench.plant(LAUI);
    Code offset = bench.offset(first, false);
    bench.genotype(first, "Rr", "edge");
    bench.genotype(offset, "S1/S2", "S");

    NextCrosses answer = green();

    assertThat(answer.parents()).isEqualTo(1);
    assertThat(answer.plans()).isEmpty();
    assertThat(answer.refused()).isEqualTo(1);
  }

  /** By hand: rr 1 in 4 of Rr × Rr, log 0.05 / log 0.75 = 10.4. Inbred 0, as nobody knows kin. */
  @Test
  void aCloneStandsForAllItsPotsBesideAnotherPlant() {
    edge();
    bench.refusingGene("S", "S1", "S2", "S3", "S4");
    Code first = bench.plant(LAUI);
    Code offset = bench.offset(first, false);
    Code other = bench.plant(AGAVOIDES);
    bench.genotype(offset, "Rr", "edge");
    bench.genotype(first, "S1/S2", "S");
    bench.genotype(other, "Rr", "edge");
    bench.genotype(other, "S3/S4", "S");

    NextCrosses answer = green();

    assertThat(answer.parents()).isEqualTo(2);
    assertThat(begun(answer)).containsExactly(List.of(first, other));
    Plan plan = answer.plans().get(0);
    assertThat(plan.seasons().get(0).seed().plant().sameClone()).containsExactly(offset);
    assertThat(plan.seasons()).singleElement().extracting(Season::seeds).isEqualTo(11);
    assertThat(plan.inbreeding()).isZero();
    assertThat(answer.refused()).isEqualTo(2);
  }

  /**
   * An offset that differs in the edge is a candidate of its own, and of the same clone for all
   * else: by its S alleles it refuses the plant it was taken from.
   */
  @Test
  void aSportRefusesThePlantItCameFromToo() {
    edge();
    bench.refusingGene("S", "S1", "S2", "S3", "S4");
    Code first = bench.plant(LAUI);
    Code sport = offsetThatDiffersIn(first, "leaf edge");
    bench.genotype(first, "RR", "edge");
    bench.genotype(first, "S1/S2", "S");
    bench.genotype(sport, "Rr", "edge");

    NextCrosses answer = green();

    assertThat(answer.parents()).isEqualTo(2);
    assertThat(answer.plans()).isEmpty();
    assertThat(answer.refused()).isEqualTo(3);
  }

  /**
   * By hand: a sport is related to its clone as the clone to itself, 1/2; seedlings are inbred so.
   */
  @Test
  void aSportThatDoesNotRefuseIsInbredAsASelfing() {
    edge();
    Code first = bench.plant(LAUI);
    Code sport = offsetThatDiffersIn(first, "leaf edge");
    bench.genotype(first, "RR", "edge");
    bench.genotype(sport, "Rr", "edge");

    NextCrosses answer = green();

    Plan selfed = answer.plans().get(0);
    assertThat(begun(answer).get(0)).containsExactly(sport, sport);
    assertThat(selfed.seasons().get(0).seeds()).isEqualTo(11);
    assertThat(selfed.inbreeding()).isEqualTo(0.5, within(1e-12));
    answer.plans().forEach(plan -> assertThat(plan.inbreeding()).isGreaterThanOrEqualTo(0.5));
  }

  /** By hand: the sport's offset is Rr as the sport is, the source RR as its other offset: two. */
  @Test
  void offsetsOfASportCountWithTheSport() {
    edge();
    Code first = bench.plant(LAUI);
    Code second = bench.offset(first, false);
    Code sport = offsetThatDiffersIn(first, "leaf edge");
    Code itsOffset = bench.offset(sport, false);
    bench.genotype(first, "RR", "edge");
    bench.genotype(itsOffset, "Rr", "edge");

    NextCrosses answer = green();

    assertThat(answer.parents()).isEqualTo(2);
    NextCrosses.Plant selfed = answer.plans().get(0).seasons().get(0).seed().plant();
    assertThat(selfed.code()).isEqualTo(sport);
    assertThat(selfed.sameClone()).containsExactly(itsOffset);
    assertThat(begun(answer)).flatExtracting(pair -> pair).doesNotContain(second);
  }

  /**
   * A seedling of two plants that refuse themselves is not selfed. By hand: a pair of sibs instead.
   */
  @Test
  void aSeedlingOfParentsThatRefuseThemselvesIsCrossedWithItsSib() {
    edge();
    bench.refusingGene("S", "S1", "S2", "S3", "S4");
    Code red = bench.plant(LAUI);
    Code carrier = bench.plant(AGAVOIDES);
    bench.genotype(red, "RR", "edge");
    bench.genotype(carrier, "Rr", "edge");
    bench.genotype(red, "S1/S2", "S");
    bench.genotype(carrier, "S3/S4", "S");

    NextCrosses answer = green();

    assertThat(answer.plans())
        .isNotEmpty()
        .allMatch(plan -> plan.seasons().get(1).pollen().part() != Part.KEPT);
  }
}
