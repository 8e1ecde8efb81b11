package dev.filial.core.benchmark;

import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.CrossScores;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Interaction;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Odds;
import dev.filial.core.heredity.Outcome;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Exact odds of one cross from its genotypes, and scores of all crosses among 1000 plants. A plant
 * is crossed with every other both ways, itself included.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(1)
public class HeredityBenchmark {

  /** How many plants are scored against each other. */
  static final int PLANTS = 1000;

  private static final int PAIRS = PLANTS * PLANTS;

  private static final int LINKED_PLANTS = 250;

  private final List<Locus> loci = new ArrayList<>();
  private final List<TraitModel> each = new ArrayList<>();
  private TraitModel together;
  private Genotype unlinked;
  private Genotype coupling;
  private Genotype repulsion;
  CrossScores apart;
  CrossScores joint;
  private Wish threeTraits;
  private Wish oneTable;
  private List<Genotype> plants;
  private Wish linkedWish;
  private List<Genotype> linkedPlants;

  /** Makes the genes, the tables and the plants. */
  @Setup
  public void build() {
    List<Pattern> allDominant = new ArrayList<>();
    StringBuilder hybrid = new StringBuilder();
    for (int i = 0; i < 8; i++) {
      Locus locus = locus(i);
      loci.add(locus);
      each.add(TraitModel.dominant("trait " + i, locus, List.of("shown", "hidden")));
      allDominant.add(new Pattern(locus, List.of(locus.alleles().get(0)), true));
      hybrid.append(String.join("", locus.alleles()));
    }
    together =
        new TraitModel(
            "all",
            List.of("shown", "hidden"),
            List.of(
                new TraitModel.Row(allDominant, Outcome.of("shown")),
                new TraitModel.Row(List.of(), Outcome.of("hidden"))));
    unlinked = Genome.unlinked(loci.toArray(Locus[]::new)).genotype(hybrid.toString());
    Genome linked =
        Genome.of(
            new LinkageGroup(
                loci.subList(0, 4), Collections.nCopies(3, Fraction.of(1, 10)), true));
    coupling = linked.genotype("ABCD/abcd");
    repulsion = linked.genotype("AbCd/aBcD");
    plants = plants(loci);
    linkedPlants = linkedPlants(linked);
    linkedWish =
        Wish.showing(each.get(0), "shown")
            .andShowing(each.get(1), "hidden")
            .andShowing(each.get(2), "shown")
            .andShowing(each.get(3), "hidden");
    threeTraits =
        Wish.showing(each.get(0), "shown")
            .andShowing(each.get(1), "hidden")
            .andShowing(each.get(2), "hidden");
    oneTable = Wish.showing(flower(loci), "purple").andShowing(each.get(2), "hidden");
    apart = CrossScores.of(threeTraits, plants);
    joint = CrossScores.of(oneTable, plants);
  }

  /** A locus with one letter, large and small. */
  static Locus locus(int number) {
    return Locus.of(
        "gene " + number,
        String.valueOf((char) ('A' + number)),
        String.valueOf((char) ('a' + number)));
  }

  /** Two genes that are both needed, and a third that holds them back. */
  static TraitModel flower(List<Locus> loci) {
    List<TraitModel.Row> rows = new ArrayList<>();
    rows.add(
        new TraitModel.Row(
            List.of(new Pattern(loci.get(2), List.of("C"), true)), Outcome.of("white")));
    rows.addAll(
        TraitModel.interaction(
                "flower",
                Interaction.COMPLEMENTARY,
                loci.get(0),
                loci.get(1),
                List.of("purple", "white"))
            .rows());
    return new TraitModel("flower", List.of("purple", "white"), rows);
  }

  /** Plants of three unlinked genes, their alleles drawn evenly. */
  static List<Genotype> plants(List<Locus> loci) {
    Genome genome = Genome.unlinked(loci.get(0), loci.get(1), loci.get(2));
    Random random = new Random(20);
    List<Genotype> plants = new ArrayList<>();
    for (int plant = 0; plant < PLANTS; plant++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < 3; i++) {
        text.append(loci.get(i).alleles().get(random.nextInt(2)));
        text.append(loci.get(i).alleles().get(random.nextInt(2)));
      }
      plants.add(genome.genotype(text.toString()));
    }
    return plants;
  }

  /** Plants of four linked genes, their alleles drawn evenly. */
  private static List<Genotype> linkedPlants(Genome linked) {
    Random random = new Random(20);
    List<Genotype> plants = new ArrayList<>();
    for (int plant = 0; plant < LINKED_PLANTS; plant++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < 8; i++) {
        String letter = i % 4 == 0 && i > 0 ? "/" : "";
        text.append(letter).append(linked.loci().get(i % 4).alleles().get(random.nextInt(2)));
      }
      plants.add(linked.genotype(text.toString()));
    }
    return plants;
  }

  /** One trait of a cross of two genotypes. */
  @Benchmark
  public Odds oneGene() {
    return Cross.selfing(unlinked).odds(each.get(0));
  }

  /** Eight traits together: 256 classes. */
  @Benchmark
  public Odds eightTraits() {
    return Cross.selfing(unlinked).odds(each);
  }

  /** One table of eight genes. */
  @Benchmark
  public Odds tableOfEightGenes() {
    return Cross.selfing(unlinked).odds(together);
  }

  /** Four traits of four linked genes: 16 classes. */
  @Benchmark
  public Odds fourLinkedTraits() {
    return Cross.of(coupling, repulsion).odds(each.subList(0, 4));
  }

  /** A pair out of a million, three traits that do not touch each other. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double scoreThreeTraits() {
    return best(apart);
  }

  /** A pair out of a million, a table of three genes and a trait of one of them. */
  @Benchmark
  @OperationsPerInvocation(PAIRS)
  public double scoreTableOfThreeGenes() {
    return best(joint);
  }

  /** What is worked out before the first pair is scored. */
  @Benchmark
  public CrossScores prepareScores() {
    return CrossScores.of(oneTable, plants);
  }

  /** A pair out of 62,500 of four linked genes, most genotypes unlike, all preparation included. */
  @Benchmark
  @OperationsPerInvocation(LINKED_PLANTS * LINKED_PLANTS)
  public double scoreLinkedFromTheStart() {
    CrossScores scores = CrossScores.of(linkedWish, linkedPlants);
    double best = 0;
    for (int seed = 0; seed < LINKED_PLANTS; seed++) {
      for (int pollen = 0; pollen < LINKED_PLANTS; pollen++) {
        best = Math.max(best, scores.chance(seed, pollen));
      }
    }
    return best;
  }

  private static double best(CrossScores scores) {
    double best = 0;
    for (int seed = 0; seed < PLANTS; seed++) {
      for (int pollen = 0; pollen < PLANTS; pollen++) {
        best = Math.max(best, scores.chance(seed, pollen));
      }
    }
    return best;
  }
}
