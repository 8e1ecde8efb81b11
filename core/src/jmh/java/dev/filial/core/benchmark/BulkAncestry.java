package dev.filial.core.benchmark;

import dev.filial.core.ancestry.ExpectedShares;
import dev.filial.core.pedigree.Pedigree;
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

/** Expected shares of a million plants over 12 taxa, beside a plain copy of as many doubles. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(value = 1, jvmArgsAppend = {"-Xms4g", "-Xmx4g"})
public class BulkAncestry {

  private Pedigree pedigree;
  private ExpectedShares shares;
  private double[] written;
  private double[] copy;

  /** Builds the pedigree and the arrays that are written again and again. */
  @Setup
  public void build() {
    Nursery nursery = new Nursery(20);
    pedigree = Pedigree.ofParents(nursery.codes, nursery.seed, nursery.pollen, nursery.taxa);
    shares = ExpectedShares.of(pedigree);
    written = new double[Nursery.PLANTS * Nursery.TAXA];
    copy = new double[Nursery.PLANTS * Nursery.TAXA];
  }

  /** All threads, into memory that is there. */
  @Benchmark
  public ExpectedShares reused() {
    shares = ExpectedShares.of(pedigree, shares);
    return shares;
  }

  /** One thread, into memory that is there. */
  @Benchmark
  @Fork(
      value = 1,
      jvmArgsAppend = {
        "-Xms4g", "-Xmx4g", "-Djava.util.concurrent.ForkJoinPool.common.parallelism=0"
      })
  public ExpectedShares reusedOneThread() {
    shares = ExpectedShares.of(pedigree, shares);
    return shares;
  }

  /** All threads, into new memory. */
  @Benchmark
  public ExpectedShares fresh() {
    return ExpectedShares.of(pedigree);
  }

  /** The shares there are, written into an array of doubles that is there. */
  @Benchmark
  public double[] writtenOut() {
    shares.copyTo(written);
    return written;
  }

  /** As many doubles copied from array to array. */
  @Benchmark
  public double[] plainCopy() {
    System.arraycopy(written, 0, copy, 0, written.length);
    return copy;
  }
}
