package dev.filial.core.inference.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EliminationTest {

  @Test
  void tenThousandTinyWeightsDoNotVanish() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int before = builder.variable(2);
    for (int i = 0; i < 10_000; i++) {
      int next = builder.variable(2);
      builder.factor(new int[] {before, next}, new double[] {3e-300, 1e-300, 1e-300, 3e-300});
      before = next;
    }
    builder.factor(new int[] {before}, new double[] {1, 3});
    FactorGraph chain = builder.build();
    Calibrated calibrated = Elimination.of(chain).run(1_000_000);
    // Each step adds the same factor, whatever the state: 4e-300.
    assertThat(calibrated.logWeight())
        .isCloseTo(10_000 * Math.log(4e-300) + Math.log(4), within(1e-6));
    assertThat(calibrated.marginal(before))
        .containsExactly(new double[] {0.25, 0.75}, within(1e-12));
    assertThat(Elimination.of(chain, 0).run(1_000_000).logWeight())
        .isCloseTo(calibrated.logWeight(), within(1e-6));
  }

  @Test
  void thousandWitnessesAgainstThousandLeaveItEven() {
    // The product over the first thousand is 1e-2000 of the other state's: no double holds it.
    FactorGraph.Builder builder = FactorGraph.builder();
    int accused = builder.variable(2);
    for (int i = 0; i < 2000; i++) {
      double[] said = i < 1000 ? new double[] {1, 0.01} : new double[] {0.01, 1};
      builder.factor(new int[] {accused}, said);
    }
    int friend = builder.variable(2);
    builder.factor(new int[] {accused, friend}, new double[] {0.9, 0.1, 0.2, 0.8});
    Calibrated calibrated = Elimination.of(builder.build()).run(1000);
    assertThat(calibrated.marginal(accused)).containsExactly(new double[] {0.5, 0.5}, within(1e-9));
    assertThat(calibrated.marginal(friend))
        .containsExactly(new double[] {0.55, 0.45}, within(1e-9));
    assertThat(calibrated.logWeight()).isCloseTo(1000 * Math.log(0.01) + Math.log(2), within(1e-6));
  }

  @Test
  void witnessesHeardInTwoRoomsAreWeighedTogether() {
    // Each room's message is beyond any double by itself; only together do they come out even.
    FactorGraph.Builder builder = FactorGraph.builder();
    int left = builder.variable(2);
    int truth = builder.variable(2);
    int right = builder.variable(2);
    double[] same = {1, 0, 0, 1};
    builder.factor(new int[] {left, truth}, same);
    builder.factor(new int[] {truth, right}, same);
    for (int i = 0; i < 500; i++) {
      builder.factor(new int[] {left}, new double[] {1, 0.01});
      builder.factor(new int[] {right}, new double[] {0.01, 1});
    }
    FactorGraph graph = builder.build();
    Calibrated calibrated = Elimination.of(graph).run(1000);
    for (int v = 0; v < 3; v++) {
      assertThat(calibrated.marginal(v)).containsExactly(new double[] {0.5, 0.5}, within(1e-9));
    }
    assertThat(calibrated.logWeight()).isCloseTo(500 * Math.log(0.01) + Math.log(2), within(1e-9));
    assertThat(Elimination.of(graph, left, right).run(1000).joint())
        .containsExactly(new double[] {0.5, 0, 0, 0.5}, within(1e-9));
  }

  @Test
  void twoRecessivesHaveNoDominantOffspring() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int mother = Pedigrees.founder(builder);
    int father = Pedigrees.founder(builder);
    int child = Pedigrees.offspring(builder, mother, father);
    Pedigrees.seen(builder, mother, true, 0);
    Pedigrees.seen(builder, father, true, 0);
    Pedigrees.seen(builder, child, false, 0);
    Calibrated calibrated = Elimination.of(builder.build()).run(1000);
    assertThat(calibrated.isPossible()).isFalse();
    assertThat(calibrated.logWeight()).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThatIllegalStateException().isThrownBy(() -> calibrated.marginal(mother));
    assertThatIllegalStateException().isThrownBy(calibrated::joint);
  }

  @Test
  void whatIsImpossibleElsewhereIsImpossibleForTheAskedToo() {
    // Three that all differ in two colours: no table alone shows it. The asked one is not tied.
    FactorGraph.Builder builder = FactorGraph.builder();
    double[] differ = {0, 1, 1, 0};
    for (int i = 0; i < 3; i++) {
      builder.variable(2);
    }
    builder.factor(new int[] {0, 1}, differ);
    builder.factor(new int[] {1, 2}, differ);
    builder.factor(new int[] {2, 0}, differ);
    int aside = builder.variable(2);
    FactorGraph graph = builder.build();
    assertThat(Elimination.of(graph, aside).run(1000).isPossible()).isFalse();
    assertThat(Elimination.of(graph).run(1000).isPossible()).isFalse();
  }

  @Test
  void askedVariablesThatAreNotTiedAreIndependent() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int one = builder.variable(2);
    int other = builder.variable(3);
    builder.factor(new int[] {one}, new double[] {1, 3});
    builder.factor(new int[] {other}, new double[] {2, 0, 2});
    builder.factor(new int[] {}, new double[] {5});
    Calibrated calibrated = Elimination.of(builder.build(), other, one).run(100);
    assertThat(calibrated.joint())
        .containsExactly(new double[] {0.125, 0.375, 0, 0, 0.125, 0.375}, within(1e-15));
    assertThat(calibrated.logWeight()).isCloseTo(Math.log(80), within(1e-12));
  }

  @Test
  void anAnswerThatCostsTooMuchIsRefusedWithItsPrice() {
    FactorGraph diallel = Pedigrees.halfDiallel(60, 0.01, 1);
    Elimination plan = Elimination.of(diallel);
    assertThat(plan.width()).isEqualTo(59);
    assertThat(plan.largestTable()).isCloseTo(Math.pow(3, 60), within(1e15));
    TooTangledException refused =
        catchThrowableOfType(TooTangledException.class, () -> plan.run(1_000_000_000L));
    assertThat(refused.width()).isEqualTo(59);
    assertThat(refused.largestTable()).isEqualTo(plan.largestTable());
    assertThat(refused.entries()).isEqualTo(plan.entries()).isGreaterThan(plan.largestTable());
    assertThat(refused.bound()).isEqualTo(1_000_000_000L);
    assertThat(refused).hasMessageContaining("60 variables");
  }

  @Test
  void theBoundIsOnTheEntriesOfAllTablesTogether() {
    Elimination plan = Elimination.of(Pedigrees.halfDiallel(6, 0.01, 1));
    long entries = (long) plan.entries();
    assertThat(plan.run(entries).isPossible()).isTrue();
    assertThatExceptionOfType(TooTangledException.class).isThrownBy(() -> plan.run(entries - 1));
  }

  @Test
  void aJointTableThatCannotBeHeldIsRefusedTooThoughLittleOfItIsPossible() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int[] all = new int[40];
    for (int i = 0; i < 40; i++) {
      all[i] = builder.variable(4);
      builder.factor(new int[] {i}, new double[] {1, 0, 0, 0});
    }
    Elimination plan = Elimination.of(builder.build(), all);
    assertThat(plan.largestTable()).isEqualTo(Math.pow(4, 40));
    assertThatExceptionOfType(TooTangledException.class).isThrownBy(() -> plan.run(Long.MAX_VALUE));
  }

  @Test
  void evidenceThatSettlesEveryParentLeavesNothingToPayFor() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int[] parents = new int[60];
    for (int i = 0; i < 60; i++) {
      parents[i] = Pedigrees.founder(builder);
      builder.factor(new int[] {parents[i]}, new double[] {0, 1, 0});
    }
    int child = -1;
    for (int i = 0; i < 60; i++) {
      for (int j = 0; j < i; j++) {
        child = Pedigrees.offspring(builder, parents[i], parents[j]);
      }
    }
    Elimination plan = Elimination.of(builder.build());
    assertThat(plan.width()).isZero();
    assertThat(plan.run(10_000).marginal(child))
        .containsExactly(new double[] {0.25, 0.5, 0.25}, within(1e-15));
  }

  @Test
  void descendantsNobodyHasSeenCostNothingWhereAParentIsAskedFor() {
    // Thirty parents in every cross, and their offspring in crosses again.
    FactorGraph.Builder builder = FactorGraph.builder();
    int[] parents = new int[30];
    for (int i = 0; i < 30; i++) {
      parents[i] = Pedigrees.founder(builder);
    }
    int before = -1;
    for (int i = 0; i < 30; i++) {
      for (int j = 0; j < i; j++) {
        int child = Pedigrees.offspring(builder, parents[i], parents[j]);
        before = before < 0 ? child : Pedigrees.offspring(builder, before, child);
      }
    }
    int seen = Pedigrees.offspring(builder, parents[3], parents[4]);
    Pedigrees.seen(builder, seen, true, 0);
    FactorGraph graph = builder.build();
    assertThat(Elimination.of(graph).entries()).isGreaterThan(1e10);
    Elimination plan = Elimination.of(graph, parents[3]);
    assertThat(plan.entries()).isLessThan(100);
    Calibrated calibrated = plan.run(100);
    assertThat(calibrated.joint()).containsExactly(new double[] {0, 0.5, 0.5}, within(1e-12));
    assertThat(calibrated.logWeight()).isCloseTo(Math.log(0.25), within(1e-10));
  }

  @Test
  void manyOffspringOfEachCrossAreEachHeard() {
    // The same with every offspring but one summed over by hand, and then every assignment.
    FactorGraph.Builder whole = FactorGraph.builder();
    FactorGraph.Builder small = FactorGraph.builder();
    for (int i = 0; i < 5; i++) {
      Pedigrees.founder(whole);
      Pedigrees.founder(small);
    }
    int child = -1;
    int lone = -1;
    for (int i = 0; i < 5; i++) {
      for (int j = 0; j < i; j++) {
        for (int k = 0; k < 4; k++) {
          child = Pedigrees.offspring(whole, i, j);
          boolean recessive = (i + j + k) % 3 == 0;
          Pedigrees.seen(whole, child, recessive, 0.2);
          boolean last = i == 4 && j == 3 && k == 3;
          if (last) {
            lone = Pedigrees.offspring(small, i, j);
            Pedigrees.seen(small, lone, recessive, 0.2);
          } else {
            double[] likelihood = new double[9];
            for (int a = 0; a < 3; a++) {
              for (int b = 0; b < 3; b++) {
                double q = a * b / 4.0;
                likelihood[3 * a + b] =
                    recessive ? 0.8 * q + 0.2 * (1 - q) : 0.2 * q + 0.8 * (1 - q);
              }
            }
            small.factor(new int[] {i, j}, likelihood);
          }
        }
      }
    }
    FactorGraph known = small.build();
    Calibrated calibrated = Elimination.of(whole.build()).run(100_000);
    for (int v = 0; v < 5; v++) {
      assertThat(calibrated.marginal(v))
          .containsExactly(Enumeration.joint(known, v), within(1e-12));
    }
    assertThat(calibrated.marginal(child))
        .containsExactly(Enumeration.joint(known, lone), within(1e-12));
    assertThat(calibrated.logWeight())
        .isCloseTo(Math.log(Enumeration.weight(known)), within(1e-10));
  }

  @Test
  void tenLinesBesideEachOtherAreGoneThroughByGenerations() {
    // Without an eye for their length the tables take 6e10 entries.
    FactorGraph.Builder builder = FactorGraph.builder();
    int[] lines = new int[10];
    for (int i = 0; i < 10; i++) {
      lines[i] = Pedigrees.founder(builder);
    }
    for (int g = 0; g < 30; g++) {
      int[] next = new int[10];
      for (int i = 0; i < 10; i++) {
        next[i] = Pedigrees.offspring(builder, lines[i], lines[(i + 1) % 10]);
      }
      lines = next;
    }
    assertThat(Elimination.of(builder.build()).entries()).isLessThan(5e8);
  }

  @Test
  void twentyLinesOfThreeThousandGenerationsAreDone() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int[] lines = new int[20];
    for (int i = 0; i < 20; i++) {
      lines[i] = Pedigrees.founder(builder);
    }
    for (int g = 0; g < 3000; g++) {
      int[] next = new int[20];
      for (int i = 0; i < 20; i++) {
        next[i] = Pedigrees.offspring(builder, lines[i & ~1], lines[i | 1]);
      }
      lines = next;
    }
    Pedigrees.seen(builder, lines[7], true, 0);
    FactorGraph graph = builder.build();
    Calibrated calibrated = Elimination.of(graph).run(10_000_000);
    // Sibs were crossed with sibs until they could no longer differ.
    assertThat(calibrated.marginal(lines[6])).containsExactly(new double[] {0, 0, 1}, within(1e-9));
    assertThat(calibrated.marginal(lines[5]))
        .containsExactly(new double[] {0.5, 0, 0.5}, within(1e-9));
    assertThat(calibrated.logWeight()).isCloseTo(Math.log(0.5), within(1e-9));
  }

  @Test
  void aParentOfTensOfThousandsIsDone() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int father = Pedigrees.founder(builder);
    for (int i = 0; i < 20_000; i++) {
      Pedigrees.seen(
          builder, Pedigrees.offspring(builder, father, Pedigrees.founder(builder)), i % 4 == 0, 0);
    }
    // A quarter recessive of random mothers is what a heterozygote gives, by a margin of millions.
    Calibrated calibrated = Elimination.of(builder.build()).run(10_000_000);
    assertThat(calibrated.marginal(father)).containsExactly(new double[] {0, 1, 0}, within(1e-12));
  }

  @Test
  void nothingAskedOfNothingIsCertain() {
    FactorGraph empty = FactorGraph.builder().build();
    assertThat(Elimination.of(empty).run(0).logWeight()).isZero();
    assertThat(Elimination.of(empty, new int[0]).run(1).joint()).containsExactly(1);
    FactorGraph no = FactorGraph.builder().factor(new int[0], new double[] {0}).build();
    assertThat(Elimination.of(no).run(0).isPossible()).isFalse();
  }

  @Test
  void whatWasNotAskedForIsNotTold() {
    FactorGraph graph = Pedigrees.halfDiallel(3, 0.01, 1);
    Calibrated asked = Elimination.of(graph, 1).run(1000);
    assertThatIllegalStateException().isThrownBy(() -> asked.marginal(0));
    assertThatIllegalStateException().isThrownBy(() -> Elimination.of(graph).run(1000).joint());
    assertThatIllegalArgumentException().isThrownBy(() -> asked.marginal(6));
    assertThatIllegalArgumentException().isThrownBy(() -> Elimination.of(graph, 6));
    assertThatIllegalArgumentException().isThrownBy(() -> Elimination.of(graph, 1, 1));
  }

  @Test
  void tablesAreCheckedWhenTheyArePutIn() {
    FactorGraph.Builder builder = FactorGraph.builder();
    int one = builder.variable(2);
    int other = builder.variable(2);
    assertThatIllegalArgumentException().isThrownBy(() -> builder.variable(0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.factor(new int[] {one}, new double[3]));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.factor(new int[] {one, one}, new double[4]));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.factor(new int[] {2}, new double[2]));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.factor(new int[] {other}, new double[] {1, -1}));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> builder.factor(new int[] {other}, new double[] {1, Double.NaN}));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> builder.factor(new int[] {other}, new double[] {1, Double.POSITIVE_INFINITY}));
  }

  @Test
  void aGraphKeepsItsOwnNumbers() {
    FactorGraph.Builder builder = FactorGraph.builder();
    builder.variable(2);
    double[] mine = {1, 3};
    builder.factor(new int[] {0}, mine);
    FactorGraph graph = builder.build();
    mine[0] = 100;
    graph.factors().get(0).values()[1] = 100;
    assertThat(Elimination.of(graph).run(10).marginal(0)).containsExactly(0.25, 0.75);
  }
}
