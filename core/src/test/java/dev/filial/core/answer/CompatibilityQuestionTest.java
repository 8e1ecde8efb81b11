package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.answer.CompatibilityQuestion.Compatible;
import dev.filial.core.answer.CompatibilityQuestion.Pair;
import dev.filial.core.heredity.Compatibility.Verdict;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.RegisterRefusal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Who can set seed on whom. */
class CompatibilityQuestionTest {

  private final InventedBench bench = new InventedBench();

  private static Pair pair(Compatible found, Code seed, Code pollen) {
    return found.pairs().stream()
        .filter(one -> one.seed().equals(seed) && one.pollen().equals(pollen))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void oneAlleleInCommonLetsHalfThePollenWorkAndTwoNone() {
    bench.refusingGene("S", "S1", "S2", "S3", "S4");
    Code one = bench.plant(LAUI);
    Code half = bench.plant(LAUI);
    Code same = bench.plant(LAUI);
    Code other = bench.plant(LAUI);
    Code unknown = bench.plant(LAUI);
    bench.genotype(one, "S1/S2", "S");
    bench.genotype(half, "S1/S3", "S");
    bench.genotype(same, "S1/S2", "S");
    bench.genotype(other, "S3/S4", "S");

    Compatible found =
        CompatibilityQuestion.of(bench.store).ask(List.of(one, half, same, other, unknown));
    assertThat(pair(found, one, half).verdict()).isEqualTo(Verdict.SOME);
    assertThat(pair(found, one, half).working()).isEqualTo(Fraction.HALF);
    assertThat(pair(found, one, same).verdict()).isEqualTo(Verdict.NONE);
    assertThat(pair(found, one, one).verdict()).isEqualTo(Verdict.NONE);
    assertThat(pair(found, one, other).verdict()).isEqualTo(Verdict.ALL);
    assertThat(pair(found, one, unknown).verdict()).isNull();
    assertThat(found.plants().get(1).alleles()).isEqualTo("S1/S3");
  }

  @Test
  void oddsSayThatHardlyAnySeedWillSet() {
    bench.refusingGene("S", "S1", "S2");
    bench.gene("edge", "R", "r");
    bench.trait("leaf edge", "red,green", "edge", "R_=red", "rr=green");
    Code plant = bench.plant(LAUI);
    bench.genotype(plant, "S1/S2", "S");
    bench.genotype(plant, "Rr", "edge");
    OddsQuestion.Side side = new OddsQuestion.Side(plant, null, null);

    assertThat(OddsQuestion.of(bench.store, List.of("leaf edge")).ask(side, side).notes())
        .anyMatch(note -> note.contains("hardly any seed will set"));
  }

  @Test
  void aPotIsNoPlant() {
    bench.refusingGene("S", "S1", "S2");
    Code cross = bench.cross(bench.plant(LAUI), bench.plant(LAUI));
    assertThatThrownBy(() -> CompatibilityQuestion.of(bench.store).ask(List.of(cross)))
        .hasMessageContaining("name single plants");
  }

  @Test
  void withoutADeclaredSLocusThereIsNothingToSay() {
    Code plant = bench.plant(LAUI);
    assertThatThrownBy(() -> CompatibilityQuestion.of(bench.store).ask(List.of(plant)))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessageContaining("no S locus was declared");
  }
}
