package dev.filial.core.benchmark;

import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Arrays from a million unordered records, beside sorting the same codes. Strings are made anew
 * before every call: a string remembers its hash, and a second call would find it remembered.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5)
@Measurement(iterations = 11)
@Fork(value = 1, jvmArgsAppend = {"-Xms6g", "-Xmx6g"})
public class ArrayBuilding {

  private Nursery nursery;
  private List<PlantRecord> records;

  /** Makes all strings anew. */
  @Setup(Level.Invocation)
  public void fresh() {
    records = null;
    nursery = null;
    nursery = new Nursery(20);
    records = Arrays.asList(nursery.records());
    System.gc();
  }

  /** What the building is measured against. */
  @Benchmark
  public String[] sortCodes() {
    String[] codes = nursery.codes.clone();
    Arrays.sort(codes);
    return codes;
  }

  /** From records. */
  @Benchmark
  public Pedigree buildFromRecords() {
    return Pedigree.of(records);
  }

  /** From columns of codes. */
  @Benchmark
  public Pedigree buildFromColumns() {
    return Pedigree.ofParents(nursery.codes, nursery.seed, nursery.pollen, nursery.taxa);
  }
}
