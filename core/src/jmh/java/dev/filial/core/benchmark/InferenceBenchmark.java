package dev.filial.core.benchmark;

import dev.filial.core.inference.EveryPlant;
import dev.filial.core.inference.GenotypeOdds;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.inference.Reckoning;
import dev.filial.core.inference.TangledPedigreeException;
import java.util.List;
import java.util.Locale;
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
import weka.classifiers.bayes.net.EditableBayesNet;
import weka.classifiers.bayes.net.MarginCalculator;

/**
 * Odds over whole pedigrees: a half-diallel beside Weka, the register of a grower's bench, and
 * structures that tie many plants to each other. Each call begins with the records and findings; no
 * table is kept from one to the next.
 */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(value = 1, jvmArgsAppend = {"-Xms2g", "-Xmx2g"})
public class InferenceBenchmark {

  /** A half-diallel, one seedling of each cross looked at. */
  @State(Scope.Benchmark)
  public static class HalfDiallel {
    /** How many parents. */
    @Param({"10", "11", "12"})
    public int parents;

    PedigreeOdds odds = empty();

    /** Draws it. */
    @Setup
    public void build() {
      odds = new Diallel(parents, 1).odds();
      tell("half-diallel of " + parents, odds.everyPlant().reckoning());
    }
  }

  /** The same for Weka, whose answers are compared before anything is timed. */
  @State(Scope.Benchmark)
  public static class WekasDiallel {
    /** How many parents. */
    @Param({"10", "11", "12"})
    public int parents;

    Diallel diallel = new Diallel(2, 1);
    EditableBayesNet net = new EditableBayesNet(true);

    /** Draws it, and compares every plant's odds. */
    @Setup
    public void build() throws Exception {
      diallel = new Diallel(parents, 1);
      net = diallel.net();
      double[] ours = diallel.answers(diallel.odds().everyPlant());
      long start = System.nanoTime();
      new MarginCalculator().calcMargins(net);
      double tree = (System.nanoTime() - start) / 1e6;
      double[] wekas = diallel.wekaAnswers(net);
      double most = 0;
      for (int i = 0; i < ours.length; i++) {
        most = Math.max(most, Math.abs(ours[i] - wekas[i]));
      }
      if (!(most < 1e-9)) {
        throw new IllegalStateException("Weka's odds differ by " + most);
      }
      System.out.printf(Locale.ROOT, 
          "Weka's odds of %d parents differ by at most %.1g; its tree before anything was seen took"
              + " %.0f ms%n",
          parents,
          most,
          tree);
    }
  }

  /** The register of a grower's bench: 10,000 plants, 1,000 of them looked at. */
  @State(Scope.Benchmark)
  public static class Register {
    /** Whether the two loci of the trait are linked. */
    @Param({"false", "true"})
    public boolean linked;

    /** Whether the frequencies of the alleles in each species are stated. */
    @Param("false")
    public boolean known;

    PedigreeOdds odds = empty();
    String plant = "";

    /** Grows it. */
    @Setup
    public void build() {
      odds = GrowersBench.of(10_000, 1_000, linked, known);
      plant = GrowersBench.plant(10_000);
      String what = linked ? "register, linked" : "register, unlinked";
      tell(what + ", one plant", odds.genotype(plant).reckoning());
      tell(what + ", all", odds.everyPlant().reckoning());
    }
  }

  /** What still has an exact answer. */
  @State(Scope.Benchmark)
  public static class Hard {
    /** The kind, and how many parents or linked loci. */
    @Param({"sibs-1", "sibs-5", "backcrosses-1", "backcrosses-5", "diallel-16"})
    public String structure = "";

    PedigreeOdds odds = empty();

    /** Draws it. */
    @Setup
    public void build() {
      odds = structure(structure);
      tell(structure, odds.everyPlant().reckoning());
    }
  }

  /** What has none any more. */
  @State(Scope.Benchmark)
  public static class Past {
    /** As {@link Hard#structure}. */
    @Param({"diallel-17", "sibs-6", "backcrosses-6"})
    public String structure = "";

    PedigreeOdds odds = empty();

    /** Draws it. */
    @Setup
    public void build() {
      odds = structure(structure);
      System.out.println("Odds: " + structure + ": " + refused(odds));
    }
  }

  /** What can be had both ways: exactly, with a bound twice the usual one, and sampled. */
  @State(Scope.Benchmark)
  public static class Sampling {
    /** How many numbers the tables of what is drawn together may have. */
    @Param({"1000", "32768"})
    public long bound;

    /** How often everything is drawn. */
    @Param("2000")
    public int sweeps;

    PedigreeOdds odds = empty();

    /** Draws it, and compares with the exact answer. */
    @Setup
    public void build() {
      PedigreeOdds all = structure("diallel-17");
      odds = all.withBound(bound).withSampling(sweeps, 7);
      GenotypeOdds exact = all.withBound(2 * PedigreeOdds.USUAL_BOUND).genotype("P0");
      for (GenotypeOdds.Chance one : odds.genotype("P0").genotypes()) {
        double truly = exact.of(one.genotype().text());
        System.out.printf(
            Locale.ROOT,
            "Odds: diallel-17, %d drawn together, P0 %s: sampled %.6f, error %.6f, exact %.6f:"
                + " %.1f errors%n",
            bound,
            one.genotype().text(),
            one.chance(),
            one.error(),
            truly,
            (one.chance() - truly) / one.error());
      }
    }
  }

  private static PedigreeOdds structure(String name) {
    String[] words = name.split("-", -1);
    int size = Integer.parseInt(words[1]);
    return switch (words[0]) {
      case "sibs" -> HardStructures.fullSibs(12, 4, size);
      case "backcrosses" -> HardStructures.backcrosses(20, 4, size);
      default -> new Diallel(size, 1).odds();
    };
  }

  private static PedigreeOdds empty() {
    return new Diallel(2, 1).odds().withEvidence(List.of());
  }

  /** The same, nothing of its answers being known yet. */
  private static PedigreeOdds anew(PedigreeOdds odds) {
    return odds.withEvidence(odds.evidence());
  }

  private static void tell(String what, Reckoning reckoning) {
    System.out.printf(
        Locale.ROOT,
        "Odds: %s: %d findings, width %d, %.3g numbers%n",
        what,
        reckoning.findings(),
        reckoning.width(),
        reckoning.entries());
  }

  private static String refused(PedigreeOdds odds) {
    try {
      return "answered: " + anew(odds).everyPlant().reckoning();
    } catch (TangledPedigreeException | IllegalArgumentException e) {
      return e.getMessage();
    }
  }

  /** All odds of a half-diallel. */
  @Benchmark
  public EveryPlant halfDiallel(HalfDiallel of) {
    return anew(of.odds).everyPlant();
  }

  /** The same odds by Weka, what was seen told one by one, as it has to be. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public double[] halfDiallelByWeka(WekasDiallel of) throws Exception {
    return of.diallel.wekaAnswers(of.net);
  }

  /** One plant of the last generation. */
  @Benchmark
  public GenotypeOdds onePlant(Register of) {
    return anew(of.odds).genotype(of.plant);
  }

  /** Every plant. */
  @Benchmark
  public EveryPlant everyPlant(Register of) {
    return anew(of.odds).everyPlant();
  }

  /** All odds of what is hard. */
  @Benchmark
  public EveryPlant hard(Hard of) {
    return anew(of.odds).everyPlant();
  }

  /** How long it takes to be refused. */
  @Benchmark
  public String pastIt(Past of) {
    return refused(of.odds);
  }

  /** One plant's odds, sampled. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 0)
  @Measurement(iterations = 1)
  public GenotypeOdds sampled(Sampling of) {
    return anew(of.odds).genotype("P0");
  }
}
