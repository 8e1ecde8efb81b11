package dev.filial.core.inference.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BlockSamplerTest {

  /** Small enough to be done exactly, and far past the bound the sampler is held to. */
  private static final FactorGraph TANGLE = Pedigrees.random(5, 7, 0.05, 11);

  private static final int[] ASKED = {40, 38};

  @Test
  void smallBlocksGiveTheExactAnswerWithinTheirErrors() {
    double[] exact = Elimination.of(TANGLE, ASKED).run(10_000_000).joint();
    Sampled sampled =
        BlockSampler.of(TANGLE).withBound(400).withSeed(5).withSweeps(4000).run(ASKED);
    double[] errors = sampled.standardErrors();
    for (int i = 0; i < exact.length; i++) {
      assertThat(errors[i]).as("error %d", i).isBetween(1e-5, 0.02);
      assertThat(sampled.joint()[i]).as("entry %d", i).isCloseTo(exact[i], within(5 * errors[i]));
    }
    assertThat(sampled.sweeps()).isEqualTo(4000);
  }

  @Test
  void everyOtherVariableIsSampledToo() {
    Calibrated exact = Elimination.of(TANGLE).run(10_000_000);
    Sampled sampled =
        BlockSampler.of(TANGLE).withBound(400).withSeed(5).withSweeps(4000).run(ASKED);
    for (int v = 0; v < TANGLE.variables(); v++) {
      assertThat(sampled.marginal(v))
          .as("variable %d", v)
          .containsExactly(exact.marginal(v), within(0.05));
    }
  }

  @Test
  void sixteenTimesTheSweepsQuarterTheErrors() {
    double few = meanError(BlockSampler.of(TANGLE).withBound(400).withSweeps(1000));
    double many = meanError(BlockSampler.of(TANGLE).withBound(400).withSweeps(16_000));
    assertThat(many / few).isBetween(0.15, 0.4);
  }

  private static double meanError(BlockSampler sampler) {
    double sum = 0;
    for (double error : sampler.run(ASKED).standardErrors()) {
      sum += error;
    }
    return sum;
  }

  @Test
  void aGraphThatIsOneBlockIsAnsweredExactly() {
    double[] exact = Elimination.of(TANGLE, ASKED).run(10_000_000).joint();
    Sampled sampled =
        BlockSampler.of(TANGLE).withBound(10_000_000).withSweeps(40).withBurnIn(0).run(ASKED);
    assertThat(sampled.joint()).containsExactly(exact, within(1e-12));
  }

  @Test
  void theSameSeedGivesTheSameAndAnotherAnother() {
    BlockSampler sampler = BlockSampler.of(TANGLE).withBound(400).withSweeps(100);
    assertThat(sampler.run(ASKED).joint()).isEqualTo(sampler.run(ASKED).joint());
    assertThat(sampler.withSeed(2).run(ASKED).joint()).isNotEqualTo(sampler.run(ASKED).joint());
  }

  @Test
  void whatEvidenceRulesOutIsNeverDrawn() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int mother = Pedigrees.founder(builder);
    int father = Pedigrees.founder(builder);
    Pedigrees.seen(builder, Pedigrees.offspring(builder, mother, father), true, 0);
    Sampled sampled = BlockSampler.of(builder.build()).withSweeps(400).run(mother);
    assertThat(sampled.joint()[0]).isZero();
    assertThat(sampled.marginal(father)[0]).isZero();
    assertThat(sampled.joint()).containsExactly(new double[] {0, 0.5, 0.5}, within(1e-12));
  }

  @Test
  void aStartIsFoundWhereItTakesASearch() {
    // Neighbours on a ring of odd length differ: no table alone rules out any of three colours.
    FactorGraph.Builder builder = FactorGraph.builder();
    int n = 41;
    double[] differ = {0, 1, 1, 1, 0, 1, 1, 1, 0};
    for (int i = 0; i < n; i++) {
      builder.variable(3);
    }
    SplittableRandom random = new SplittableRandom(4);
    for (int i = 0; i < n; i++) {
      builder.factor(new int[] {i, (i + 1) % n}, differ);
      int j = random.nextInt(n);
      if (i % 3 == 0 && j != i) {
        builder.factor(new int[] {i, j}, differ);
      }
    }
    FactorGraph graph = builder.build();
    double[] exact = Elimination.of(graph, 0, 5).run(100_000_000).joint();
    Sampled sampled = BlockSampler.of(graph).withBound(3000).withSweeps(2000).run(0, 5);
    for (int i = 0; i < exact.length; i++) {
      assertThat(sampled.joint()[i])
          .isCloseTo(exact[i], within(5 * sampled.standardErrors()[i] + 1e-12));
    }
  }

  @Test
  void thereIsNoStartWhereFourColoursWouldBeNeeded() {
    FactorGraph.Builder builder = FactorGraph.builder();
    double[] differ = {0, 1, 1, 1, 0, 1, 1, 1, 0};
    for (int i = 0; i < 4; i++) {
      builder.variable(3);
      for (int j = 0; j < i; j++) {
        builder.factor(new int[] {i, j}, differ);
      }
    }
    FactorGraph graph = builder.build();
    assertThat(Elimination.of(graph).run(1000).isPossible()).isFalse();
    assertThatIllegalStateException()
        .isThrownBy(() -> BlockSampler.of(graph).run(0))
        .withMessageContaining("nothing is possible");
  }

  @Test
  void aTableThatIsItselfPastTheBoundIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BlockSampler.of(TANGLE).withBound(8).run(ASKED))
        .withMessageContaining("9");
    assertThatIllegalArgumentException().isThrownBy(() -> BlockSampler.of(TANGLE).withSweeps(39));
  }
}
