package dev.filial.core.ancestry;

import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Makes gametes with crossovers over a map. For one thread. */
final class Meioses {

  private final double[] chromosomeEnd;
  private final UniformRandomProvider random;
  private final ContinuousSampler toCrossover;
  private long bits;
  private int bitsLeft;

  Meioses(GeneticMap map, UniformRandomProvider random) {
    chromosomeEnd = new double[map.chromosomes()];
    double end = 0;
    for (int i = 0; i < chromosomeEnd.length; i++) {
      end += map.length(i);
      chromosomeEnd[i] = end;
    }
    this.random = random;
    toCrossover = ZigguratSampler.Exponential.of(random);
  }

  double total() {
    return chromosomeEnd[chromosomeEnd.length - 1];
  }

  UniformRandomProvider random() {
    return random;
  }

  private boolean coin() {
    if (bitsLeft == 0) {
      bits = random.nextLong();
      bitsLeft = Long.SIZE;
    }
    boolean heads = (bits & 1) != 0;
    bits >>>= 1;
    bitsLeft--;
    return heads;
  }

  /**
   * Writes a gamete of a plant with these two sets into {@code gamete}, which has to be neither.
   *
   * <p>Distances between crossovers are exponential, so that what is left of one at the end of a
   * chromosome is as good as a new one on the next.
   */
  void gamete(Haplotype one, Haplotype other, Haplotype gamete) {
    gamete.clear();
    Haplotype here = one;
    Haplotype there = other;
    int at = 0;
    int thereAt = 0;
    if (coin()) {
      here = other;
      there = one;
    }
    double crossover = toCrossover.sample();
    int chromosome = 0;
    double from = 0;
    while (true) {
      boolean ends = chromosomeEnd[chromosome] <= crossover;
      double to = ends ? chromosomeEnd[chromosome] : crossover;
      while (here.end[at] <= from) {
        at++;
      }
      while (here.end[at] < to) {
        gamete.add(here.end[at], here.taxon[at]);
        at++;
      }
      gamete.add(to, here.taxon[at]);
      from = to;
      boolean change = true;
      if (ends) {
        if (++chromosome == chromosomeEnd.length) {
          return;
        }
        change = coin();
      } else {
        crossover = to + toCrossover.sample();
      }
      if (change) {
        Haplotype left = here;
        here = there;
        there = left;
        int leftAt = at;
        at = thereAt;
        thereAt = leftAt;
      }
    }
  }
}
