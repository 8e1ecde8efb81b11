package dev.filial.core.benchmark;

import dev.filial.core.ancestry.Coancestry;
import dev.filial.core.pedigree.Pedigree;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Inbreeding coefficients of all plants of a register, and the coancestry of two of them. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = {"-Xms2g", "-Xmx2g"})
public class KinshipBenchmark {

  /** A hundred parents in each of twenty generations. */
  @State(Scope.Benchmark)
  public static class FewParents {
    /** How many plants there are. */
    @Param({"100000", "1000000"})
    public int plants;

    Pedigree pedigree = Pedigree.of(List.of());
    double[] copy = new double[0];

    /** Builds the pedigree. */
    @Setup
    public void build() {
      pedigree = Society.of(plants, Society.PARENTS);
      copy = new double[plants];
    }
  }

  /** Every plant but those of the last generation is a parent. */
  @State(Scope.Benchmark)
  public static class AllParents {
    /** How many plants there are. */
    @Param({"20000", "100000"})
    public int plants;

    Pedigree pedigree = Pedigree.of(List.of());

    /** Builds the pedigree. */
    @Setup
    public void build() {
      pedigree = Society.of(plants, 0);
    }
  }

  /** Of all plants, where few are parents. */
  @Benchmark
  public double[] inbreeding(FewParents society) {
    return Coancestry.of(society.pedigree).inbreeding();
  }

  /** The least that has to move for that: both parents read, a number written. */
  @Benchmark
  public double[] readingParents(FewParents society) {
    Pedigree pedigree = society.pedigree;
    for (int i = 0; i < society.copy.length; i++) {
      society.copy[i] = pedigree.seedParent(i) + pedigree.pollenParent(i);
    }
    return society.copy;
  }

  /** Of two plants of the last generation. */
  @Benchmark
  public double coancestryOfTwo(FewParents society) {
    int last = society.pedigree.size() - 1;
    return Coancestry.of(society.pedigree).between(last, last - 1);
  }

  /** Of all plants, where each is a parent. */
  @Benchmark
  @Measurement(iterations = 3, time = 2)
  @Warmup(iterations = 1, time = 2)
  public double[] inbreedingWhereAllAreParents(AllParents society) {
    return Coancestry.of(society.pedigree).inbreeding();
  }
}
