package dev.filial.core.inference;

import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Odds;
import dev.filial.core.heredity.Parent;
import dev.filial.core.heredity.TraitModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.special.Gamma;

/**
 * What seedlings of a test cross would tell of a plant's genotype: how many it takes to settle it.
 *
 * <p>Genotypes whose test-cross seedlings look alike are one possibility: no such cross can part
 * them, and the likeliest of them is named ({@link #alike}). Genotypes are told apart by what they
 * have at the genes of the trait. Of n seedlings the expected information is the mutual information
 * of possibility and counts in bits (Lindley 1956, Annals of Mathematical Statistics 27:986-1005).
 * Cost: the ways in which n seedlings can fall into the states, times the possibilities.
 */
public final class TestCross {

  /** More ways to fall are not gone through. */
  private static final double MOST = 3e5;

  private static final int MOST_SEEDLINGS = 500;

  private final Genotype tester;
  private final List<double[]> shows;
  private final double[] chances;
  private final double[] likeliest;
  private final List<List<String>> alike;

  private TestCross(
      Genotype tester,
      List<double[]> shows,
      double[] chances,
      double[] likeliest,
      List<List<String>> alike) {
    this.tester = tester;
    this.shows = shows;
    this.chances = chances;
    this.likeliest = likeliest;
    this.alike = List.copyOf(alike);
  }

  /**
   * Of a plant by a tester.
   *
   * @param plant what the plant may carry
   * @param meiosis how it makes its gametes
   * @param tester what it is crossed with, a diploid or as the plant
   * @throws IllegalArgumentException if some cross cannot be reckoned
   */
  public static TestCross of(
      GenotypeOdds plant, Meiosis meiosis, Genotype tester, TraitModel model) {
    Map<List<Double>, Map<String, Double>> showing = new LinkedHashMap<>();
    for (GenotypeOdds.Chance one : plant.genotypes()) {
      Odds odds =
          Cross.of(
                  one.genotype().genome(),
                  Parent.of(one.genotype(), meiosis),
                  Parent.of(tester, meiosis))
              .odds(model);
      List<Double> row = new ArrayList<>();
      for (String state : model.states()) {
        row.add(odds.chanceOf(state).toDouble());
      }
      showing
          .computeIfAbsent(row, any -> new LinkedHashMap<>())
          .merge(genes(one.genotype(), model), one.chance(), Double::sum);
    }
    List<double[]> shows = new ArrayList<>();
    double[] chances = new double[showing.size()];
    double[] likeliest = new double[showing.size()];
    List<List<String>> alike = new ArrayList<>();
    for (Map.Entry<List<Double>, Map<String, Double>> one : showing.entrySet()) {
      int place = shows.size();
      for (double chance : one.getValue().values()) {
        chances[place] += chance;
        likeliest[place] = Math.max(likeliest[place], chance);
      }
      if (one.getValue().size() > 1) {
        alike.add(List.copyOf(one.getValue().keySet()));
      }
      shows.add(one.getKey().stream().mapToDouble(Double::doubleValue).toArray());
    }
    return new TestCross(tester, shows, chances, likeliest, alike);
  }

  /** What it has at the genes of the trait, as {@code Aa Bb}. */
  private static String genes(Genotype genotype, TraitModel model) {
    List<String> genes = new ArrayList<>();
    for (Locus locus : model.loci()) {
      List<String> alleles = genotype.alleles(locus);
      boolean letters = alleles.stream().allMatch(allele -> allele.length() == 1);
      genes.add(String.join(letters ? "" : "/", alleles));
    }
    return String.join(" ", genes);
  }

  /** What it is crossed with. */
  public Genotype tester() {
    return tester;
  }

  /** How many possibilities the cross can part. */
  public int possibilities() {
    return chances.length;
  }

  /**
   * Genotypes that no number of such seedlings tells apart, as they are at the genes of the trait:
   * two or more in each list, the likeliest first.
   */
  public List<List<String>> alike() {
    return alike;
  }

  /**
   * How surely the genotype is named once all is told that such a cross can tell, 0 to 1; 1 if no
   * genotypes are alike.
   */
  public double atMost() {
    return alike.isEmpty() ? 1 : Arrays.stream(likeliest).sum();
  }

  /** What is not known of the possibilities now, in bits. */
  public double bits() {
    double bits = 0;
    for (double chance : chances) {
      bits -= chance > 0 ? chance * Math.log(chance) / Math.log(2) : 0;
    }
    return bits;
  }

  /**
   * What some seedlings are expected to tell.
   *
   * @param seedlings how many
   * @param bits the expected information, 0 to {@link TestCross#bits}
   * @param doubt the expected chance of naming the wrong possibility afterwards, 0 to 1
   * @param wrong the expected chance of naming the wrong genotype, {@code doubt} to 1
   */
  public record Expected(int seedlings, double bits, double doubt, double wrong) {}

  /**
   * What so many seedlings are expected to tell.
   *
   * @throws IllegalArgumentException if there are too many ways in which they can fall
   */
  public Expected after(int seedlings) {
    int states = shows.isEmpty() ? 1 : shows.get(0).length;
    if (ways(seedlings, states) > MOST) {
      throw new IllegalArgumentException(
          seedlings + " seedlings can fall into " + states + " states in too many ways");
    }
    double[] logFactorial = new double[seedlings + 1];
    for (int i = 0; i <= seedlings; i++) {
      logFactorial[i] = Gamma.logGamma(i + 1.0);
    }
    double[] sums = new double[3];
    fall(new int[states], 0, seedlings, logFactorial, sums);
    return new Expected(
        seedlings,
        Math.max(0, bits() - sums[0]),
        Math.max(0, 1 - sums[1]),
        Math.max(0, 1 - sums[2]));
  }

  private static double ways(int seedlings, int states) {
    double ways = 1;
    for (int i = 1; i < states; i++) {
      ways = ways * (seedlings + i) / i;
    }
    return ways;
  }

  /**
   * Adds to the sums what is left unknown, in bits, and how often the likeliest possibility and the
   * likeliest genotype is the true one.
   */
  private void fall(int[] counts, int place, int left, double[] logFactorial, double[] sums) {
    if (place < counts.length - 1) {
      for (int n = 0; n <= left; n++) {
        counts[place] = n;
        fall(counts, place + 1, left - n, logFactorial, sums);
      }
      return;
    }
    counts[place] = left;
    double orders = logFactorial[logFactorial.length - 1];
    for (int count : counts) {
      orders -= logFactorial[count];
    }
    double all = 0;
    double most = 0;
    double mostOfOne = 0;
    double[] each = new double[chances.length];
    for (int h = 0; h < chances.length; h++) {
      double log = orders;
      for (int i = 0; i < counts.length; i++) {
        if (counts[i] > 0) {
          log += counts[i] * Math.log(shows.get(h)[i]);
        }
      }
      double likelihood = Math.exp(log);
      each[h] = chances[h] * likelihood;
      all += each[h];
      most = Math.max(most, each[h]);
      mostOfOne = Math.max(mostOfOne, likeliest[h] * likelihood);
    }
    for (double one : each) {
      sums[0] -= one > 0 ? one * Math.log(one / all) / Math.log(2) : 0;
    }
    sums[1] += most;
    sums[2] += mostOfOne;
  }

  /**
   * The fewest seedlings after which the genotype is expected to be named with that sureness; empty
   * if that takes more than are gone through, or more than {@link #atMost}.
   *
   * @param sureness above 0 and below 1
   * @throws IllegalArgumentException if it is not
   */
  public OptionalInt seedlingsFor(double sureness) {
    return fewest(sureness, Expected::wrong);
  }

  /**
   * The fewest seedlings after which the possibility is expected to be named with that sureness,
   * genotypes that are alike being one; empty if that takes more than are gone through.
   *
   * @param sureness above 0 and below 1
   * @throws IllegalArgumentException if it is not
   */
  public OptionalInt seedlingsToPart(double sureness) {
    return fewest(sureness, Expected::doubt);
  }

  private OptionalInt fewest(double sureness, ToDoubleFunction<Expected> error) {
    if (!(sureness > 0 && sureness < 1)) {
      throw new IllegalArgumentException("a sureness of " + sureness + "; it lies between 0 and 1");
    }
    int states = shows.isEmpty() ? 1 : shows.get(0).length;
    for (int n = 0; n <= MOST_SEEDLINGS && ways(n, states) <= MOST; n++) {
      if (error.applyAsDouble(after(n)) <= 1 - sureness) {
        return OptionalInt.of(n);
      }
    }
    return OptionalInt.empty();
  }
}
