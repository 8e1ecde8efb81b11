package dev.filial.core.ancestry;

import java.util.Arrays;
import org.apache.commons.rng.UniformRandomProvider;

/** Drops one genome after the other down the lines behind a plant. For one thread. */
final class Genomes {

  private final TaxonLines lines;
  private final GeneFlow flow;
  private final Meioses meioses;
  private final double total;

  /** Sets wholly of a taxon, which nothing has to be drawn for. */
  private final Haplotype[] whole;

  private final Haplotype[] egg;
  private final Haplotype[] pollen;
  private final Haplotype[] ownEgg;
  private final Haplotype[] ownPollen;

  Genomes(TaxonLines lines, GeneticMap map, UniformRandomProvider random) {
    this.lines = lines;
    flow = lines.flow();
    meioses = new Meioses(map, random);
    total = meioses.total();
    whole = new Haplotype[lines.width()];
    for (int taxon = 0; taxon < whole.length; taxon++) {
      whole[taxon] = Haplotype.whole(taxon, total);
    }
    egg = new Haplotype[flow.size()];
    pollen = new Haplotype[flow.size()];
    ownEgg = new Haplotype[flow.size()];
    ownPollen = new Haplotype[flow.size()];
    for (int i = 0; i < flow.size(); i++) {
      if (flow.isFounder(i)) {
        egg[i] = whole[lines.founderTaxon(i)];
        pollen[i] = egg[i];
      } else {
        ownEgg[i] = new Haplotype();
        ownPollen[i] = new Haplotype();
      }
    }
  }

  /** Drops genomes and writes the shares of each taxon, and of what differs, into columns. */
  void fill(double[][] found, int from, int to) {
    double[] lengths = new double[lines.width() + 1];
    for (int genome = from; genome < to; genome++) {
      for (int i = 0; i < flow.size(); i++) {
        if (!flow.isFounder(i)) {
          drop(i);
        }
      }
      Arrays.fill(lengths, 0);
      measure(egg[lines.target()], pollen[lines.target()], lengths);
      for (int k = 0; k < lengths.length - 1; k++) {
        found[k][genome] = lengths[k] / (2 * total);
      }
      found[lengths.length - 1][genome] = lengths[lengths.length - 1] / total;
    }
  }

  /** The set a plant had from its seed parent in the genome dropped last. */
  Haplotype egg(int node) {
    return egg[node];
  }

  private void drop(int i) {
    if (flow.isPlain(i)) {
      egg[i] = gamete(flow.seed(i), ownEgg[i]);
      pollen[i] = gamete(flow.pollen(i), ownPollen[i]);
      return;
    }
    GeneFlow.Way way = drawn(flow.ways(i));
    if (way instanceof GeneFlow.Way.Cross cross) {
      egg[i] = gamete(cross.seed(), ownEgg[i]);
      pollen[i] = gamete(cross.pollen(), ownPollen[i]);
    } else {
      int of = ((GeneFlow.Way.Copy) way).of();
      egg[i] = egg[of];
      pollen[i] = pollen[of];
    }
  }

  private GeneFlow.Way drawn(GeneFlow.Way[] ways) {
    if (ways.length == 1) {
      return ways[0];
    }
    double left = meioses.random().nextDouble();
    for (GeneFlow.Way way : ways) {
      left -= way.share();
      if (left < 0) {
        return way;
      }
    }
    return ways[ways.length - 1];
  }

  private Haplotype gamete(int parent, Haplotype into) {
    if (parent < 0) {
      return whole[lines.unknownTaxon()];
    }
    Haplotype one = egg[parent];
    Haplotype other = pollen[parent];
    if (one.isWhole() && other.isWhole() && one.taxon[0] == other.taxon[0]) {
      return whole[one.taxon[0]];
    }
    meioses.gamete(one, other, into);
    return into;
  }

  /** Adds up how long each taxon is in both sets, and last how far they differ. */
  private void measure(Haplotype one, Haplotype other, double[] lengths) {
    int i = 0;
    int j = 0;
    double from = 0;
    while (i < one.size && j < other.size) {
      double to = Math.min(one.end[i], other.end[j]);
      int taxon = one.taxon[i];
      int opposite = other.taxon[j];
      double length = to - from;
      lengths[taxon] += length;
      lengths[opposite] += length;
      boolean known = taxon < lines.taxa().size() && opposite < lines.taxa().size();
      if (known && taxon != opposite) {
        lengths[lengths.length - 1] += length;
      }
      i += one.end[i] <= to ? 1 : 0;
      j += other.end[j] <= to ? 1 : 0;
      from = to;
    }
  }
}
