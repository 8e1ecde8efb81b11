package dev.filial.core.benchmark;

import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.plan.Candidate;
import dev.filial.core.plan.Goal;
import dev.filial.core.plan.PlanGenes;
import dev.filial.core.plan.PlanSearch;
import dev.filial.core.plan.Relations;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Which cross next among 60 plants of uncertain genotype at two loci, no two of the same odds, for a
 * seedling that shows both recessives; beside it the same for one season with an exact cross of
 * each two genotypes of each pair.
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 4)
@Fork(value = 1, jvmArgsAppend = {"-Xms1g", "-Xmx1g"})
@State(Scope.Benchmark)
public class PlanBenchmark {

  private static final int PLANTS = 60;
  private static final Locus A = Locus.of("A", "A", "a");
  private static final Locus B = Locus.of("B", "B", "b");
  private static final TraitModel EDGE = TraitModel.dominant("edge", A, List.of("red", "green"));
  private static final TraitModel WAX = TraitModel.dominant("wax", B, List.of("bare", "waxy"));

  private final Genome genome = Genome.unlinked(A, B);
  private final Wish wish = Wish.showing(EDGE, "green").andShowing(WAX, "waxy");
  private final List<double[]> odds = new ArrayList<>();

  /** Draws what the plants may be, and compares the answers of both. */
  @Setup
  public void draw() {
    Random dice = new Random(1);
    for (int plant = 0; plant < PLANTS; plant++) {
      double[] its = new double[9];
      double sum = 0;
      for (int n = 0; n < its.length; n++) {
        its[n] = dice.nextDouble();
        sum += its[n];
      }
      for (int n = 0; n < its.length; n++) {
        its[n] /= sum;
      }
      odds.add(its);
    }
    double best = crossByCross();
    double needed = Math.max(1, Math.log(0.05) / Math.log(1 - best));
    double found = ways(1).get(0).cost();
    if (Math.abs(found - needed) > 1e-9 * needed) {
      throw new IllegalStateException(found + " seeds, by exact crosses " + needed);
    }
  }

  private List<PlanSearch.Found> ways(int seasons) {
    PlanGenes genes =
        PlanGenes.of(GenomeStates.of(genome), List.of(EDGE, WAX), List.of(), wish);
    List<Candidate> plants = new ArrayList<>();
    double[][] coancestry = new double[PLANTS][PLANTS];
    for (int plant = 0; plant < PLANTS; plant++) {
      plants.add(Candidate.of("plant " + plant, odds.get(plant)));
      coancestry[plant][plant] = 0.5;
    }
    return PlanSearch.of(
            genes, plants, Relations.of(coancestry, new double[PLANTS][0]), Goal.of(1, 0.95))
        .withSeasons(seasons)
        .ways();
  }

  /** All pairs and selfings. */
  @Benchmark
  public List<PlanSearch.Found> oneSeason() {
    return ways(1);
  }

  /** The same and one more cross of what is kept. */
  @Benchmark
  public List<PlanSearch.Found> twoSeasons() {
    return ways(2);
  }

  /** The same and a third season, by the beam. */
  @Benchmark
  public List<PlanSearch.Found> threeSeasons() {
    return ways(3);
  }

  /** The best chance of one season, by an exact cross of each two genotypes of each pair. */
  @Benchmark
  public double oneSeasonCrossByCross() {
    return crossByCross();
  }

  private double crossByCross() {
    List<Genotype> genotypes =
        PlanGenes.of(GenomeStates.of(genome), List.of(EDGE, WAX), List.of(), wish).genotypes();
    double best = 0;
    for (int seed = 0; seed < PLANTS; seed++) {
      for (int pollen = seed; pollen < PLANTS; pollen++) {
        double chance = 0;
        for (int i = 0; i < genotypes.size(); i++) {
          for (int j = 0; j < genotypes.size(); j++) {
            double both =
                seed == pollen
                    ? (i == j ? odds.get(seed)[i] : 0)
                    : odds.get(seed)[i] * odds.get(pollen)[j];
            if (both > 0) {
              chance += both * Cross.of(genotypes.get(i), genotypes.get(j)).chance(wish).toDouble();
            }
          }
        }
        best = Math.max(best, chance);
      }
    }
    return best;
  }
}
