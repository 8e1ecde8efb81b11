package dev.filial.core.benchmark;

import dev.filial.core.ancestry.GenomeDrop;
import dev.filial.core.ancestry.GenomeSpread;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
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

/** How far shares spread: exactly behind 200 plants, and by dropped genomes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 6, time = 2)
@Fork(value = 1, jvmArgsAppend = {"-Xms2g", "-Xmx2g"})
public class SpreadBenchmark {

  /** How many F1 gametes a call makes: one for each genome of a backcross. */
  static final int GAMETES = 200_000;

  private static final int ANCESTORS = 200;
  private static final int TAXA = 5;
  private static final int SELFINGS = 10;

  private Pedigree tangle = Pedigree.of(List.of());
  private Pedigree cross = Pedigree.of(List.of());

  /** Builds the pedigrees. */
  @Setup
  public void build() {
    Random random = new Random(7);
    List<PlantRecord> records = new ArrayList<>();
    for (int i = 0; i < TAXA; i++) {
      records.add(PlantRecord.pure("P" + i, "E. species" + i));
    }
    // Each plant has the one before it as a parent, so that all stand behind the last.
    for (int i = TAXA; i <= ANCESTORS; i++) {
      String before = "P" + (i - 1);
      records.add(PlantRecord.cross("P" + i, before, "P" + random.nextInt(i)));
    }
    tangle = Pedigree.of(records);
    List<PlantRecord> line = new ArrayList<>();
    line.add(PlantRecord.pure("A", "E. agavoides"));
    line.add(PlantRecord.pure("B", "E. laui"));
    line.add(PlantRecord.cross("F1", "A", "B"));
    line.add(PlantRecord.cross("BC1", "F1", "A"));
    String last = "F1";
    for (int i = 0; i < SELFINGS; i++) {
      line.add(PlantRecord.selfing("S" + i, last));
      last = "S" + i;
    }
    cross = Pedigree.of(line);
  }

  /** The exact spread of five taxa behind 200 plants. */
  @Benchmark
  public GenomeSpread.Spread exact() {
    return GenomeSpread.of(tangle).of("P" + ANCESTORS);
  }

  /** The same as the first thing that a Java just started does. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(value = 10)
  public GenomeSpread.Spread exactCold() {
    return GenomeSpread.of(tangle).of("P" + ANCESTORS);
  }

  /** Gametes of an F1, both cores. */
  @Benchmark
  public GenomeDrop.Dropped gametes() {
    return GenomeDrop.of(cross).withGenomes(GAMETES).of("BC1");
  }

  /** The same, one core. */
  @Benchmark
  @Fork(
      value = 1,
      jvmArgsAppend = {
        "-Xms2g", "-Xmx2g", "-Djava.util.concurrent.ForkJoinPool.common.parallelism=0"
      })
  public GenomeDrop.Dropped gametesOneThread() {
    return GenomeDrop.of(cross).withGenomes(GAMETES).of("BC1");
  }

  /** A tenth as many genomes of a line selfed ten times: twenty gametes each. */
  @Benchmark
  public GenomeDrop.Dropped selfedLine() {
    return GenomeDrop.of(cross).withGenomes(GAMETES / 10).of("S" + (SELFINGS - 1));
  }
}
