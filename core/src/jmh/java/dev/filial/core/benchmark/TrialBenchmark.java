package dev.filial.core.benchmark;

import dev.filial.core.trial.Fit;
import dev.filial.core.trial.GoodnessOfFit;
import dev.filial.core.trial.Ratio;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The exact multinomial test of 200 seedlings in four classes: 1,373,701 outcomes. */
@State(Scope.Benchmark)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class TrialBenchmark {

  private final GoodnessOfFit test =
      GoodnessOfFit.of(Ratio.of(9, 3, 3, 1)).withMethod(Fit.Method.EXACT);

  /** Once the code is warm. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  @Warmup(iterations = 3, time = 1)
  @Measurement(iterations = 5, time = 1)
  @Fork(1)
  public Fit exactWarm() {
    return test.test(120, 36, 32, 12);
  }

  /** The first time in a program that has just started, as of a command. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  @Fork(11)
  public Fit exactCold() {
    return test.test(120, 36, 32, 12);
  }
}
