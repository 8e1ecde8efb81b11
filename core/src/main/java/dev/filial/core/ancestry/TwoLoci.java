package dev.filial.core.ancestry;

import java.util.Arrays;

/**
 * The chance that two loci both are of a taxon, for every genotype behind a plant, every taxon, and
 * every linkage of a rule at once; the last linkage is one locus with itself.
 *
 * <p>Of a genotype are kept: {@code same}, both loci on one and the same of its sets; {@code
 * cross}, one locus on the set of either parent; and {@code own}, what it adds to the covariance
 * that its parents do not explain, the diagonal of D in T D Tᵀ.
 */
final class TwoLoci {

  private static final int[] NONE = {};

  private final TaxonLines lines;
  private final GeneFlow flow;
  private final PairsOnMap pairs;
  private final int linkages;
  private final int width;
  private final double[] value;
  private final double[][] mean;
  private final double[][] same;
  private final double[][] cross;
  private final double[][] own;

  /** The taxa in which a genotype adds anything; those it has none of, or nothing but, are not. */
  private final int[][] varying;

  private final Trace trace;
  private final double[] explained;

  TwoLoci(TaxonLines lines, PairsOnMap pairs) {
    this.lines = lines;
    this.pairs = pairs;
    flow = lines.flow();
    linkages = pairs.size() + 1;
    width = lines.width() * linkages;
    value = new double[linkages];
    for (int k = 0; k < pairs.size(); k++) {
      value[k] = pairs.value(k);
    }
    value[linkages - 1] = 1;
    mean = new double[flow.size()][];
    same = new double[flow.size()][];
    cross = new double[flow.size()][];
    own = new double[flow.size()][];
    varying = new int[flow.size()][];
    trace = new Trace(flow);
    explained = new double[width];
  }

  void run() {
    for (int i = 0; i < flow.size(); i++) {
      mean[i] = new double[lines.width()];
      varying[i] = NONE;
      same[i] = new double[width];
      cross[i] = new double[width];
      if (flow.isFounder(i)) {
        founder(i);
      } else if (flow.isPlain(i)) {
        plain(i);
      } else {
        severalWays(i);
      }
    }
  }

  private void founder(int i) {
    int taxon = lines.founderTaxon(i);
    mean[i][taxon] = 1;
    for (int k = 0; k < linkages; k++) {
      same[i][taxon * linkages + k] = 1;
      cross[i][taxon * linkages + k] = 1;
    }
  }

  private void plain(int i) {
    int seed = flow.seed(i);
    int pollen = flow.pollen(i);
    addMean(i, seed, 0.5);
    addMean(i, pollen, 0.5);
    if (isConstant(i)) {
      founderLike(i);
      return;
    }
    addGamete(i, seed, 0.5);
    addGamete(i, pollen, 0.5);
    trace.add(seed, 0.5);
    trace.add(pollen, 0.5);
    explain();
    addCross(i, seed, pollen, 1);
    addOwn(i);
  }

  private void severalWays(int i) {
    for (GeneFlow.Way way : flow.ways(i)) {
      if (way instanceof GeneFlow.Way.Cross one) {
        addMean(i, one.seed(), 0.5 * way.share());
        addMean(i, one.pollen(), 0.5 * way.share());
        addGamete(i, one.seed(), 0.5 * way.share());
        addGamete(i, one.pollen(), 0.5 * way.share());
        trace.add(one.seed(), 0.5);
        trace.add(one.pollen(), 0.5);
        explain();
        addCross(i, one.seed(), one.pollen(), way.share());
      } else if (way instanceof GeneFlow.Way.Copy copy) {
        addMean(i, copy.of(), way.share());
        for (int c = 0; c < width; c++) {
          same[i][c] += way.share() * same[copy.of()][c];
          cross[i][c] += way.share() * cross[copy.of()][c];
        }
      }
    }
    trace.addParents(i, 1);
    explain();
    addOwn(i);
  }

  private void addMean(int i, int parent, double weight) {
    if (parent < 0) {
      mean[i][lines.unknownTaxon()] += weight;
      return;
    }
    for (int taxon = 0; taxon < mean[i].length; taxon++) {
      mean[i][taxon] += weight * mean[parent][taxon];
    }
  }

  private boolean isConstant(int i) {
    for (double share : mean[i]) {
      if (share != 0 && share != 1) {
        return false;
      }
    }
    return true;
  }

  private void founderLike(int i) {
    for (int taxon = 0; taxon < mean[i].length; taxon++) {
      for (int k = 0; k < linkages; k++) {
        same[i][taxon * linkages + k] = mean[i][taxon];
        cross[i][taxon * linkages + k] = mean[i][taxon];
      }
    }
  }

  /** Both loci of a parent's gamete: on one of its sets, or, recombined, on both. */
  private void addGamete(int i, int parent, double weight) {
    if (parent < 0) {
      int taxon = lines.unknownTaxon();
      for (int k = 0; k < linkages; k++) {
        same[i][taxon * linkages + k] += weight;
      }
      return;
    }
    for (int taxon = 0; taxon < mean[parent].length; taxon++) {
      if (mean[parent][taxon] == 0) {
        continue;
      }
      int c = taxon * linkages;
      for (int k = 0; k < linkages; k++) {
        same[i][c + k] +=
            weight
                * 0.5
                * ((1 + value[k]) * same[parent][c + k] + (1 - value[k]) * cross[parent][c + k]);
      }
    }
  }

  /** Sums up the covariance of what was added to the trace. */
  private void explain() {
    trace.run();
    Arrays.fill(explained, 0);
    for (int t = 0; t < trace.count(); t++) {
      int node = trace.node(t);
      double square = trace.part(t) * trace.part(t);
      double[] its = own[node];
      for (int taxon : varying[node]) {
        int to = (taxon + 1) * linkages;
        for (int c = taxon * linkages; c < to; c++) {
          explained[c] += square * its[c];
        }
      }
    }
  }

  /**
   * One locus on a set from either parent. The covariance of half the one and half the other holds
   * that of each with itself a quarter, and that of the pair a half.
   */
  private void addCross(int i, int seed, int pollen, double share) {
    for (int taxon = 0; taxon < mean[i].length; taxon++) {
      if (mean[i][taxon] == 0) {
        continue;
      }
      double product = meanOf(seed, taxon) * meanOf(pollen, taxon);
      for (int k = 0; k < linkages; k++) {
        int c = taxon * linkages + k;
        double covariance =
            seed < 0 || pollen < 0
                ? 0
                : 2 * explained[c]
                    - 0.5 * (withItself(seed, c, taxon) + withItself(pollen, c, taxon));
        cross[i][c] += share * (product + covariance);
      }
    }
  }

  private double meanOf(int node, int taxon) {
    return node >= 0 ? mean[node][taxon] : taxon == lines.unknownTaxon() ? 1 : 0;
  }

  /** The covariance of two independent draws of alleles, one at each locus, from a genotype. */
  private double withItself(int node, int c, int taxon) {
    return 0.5 * (same[node][c] + cross[node][c]) - mean[node][taxon] * mean[node][taxon];
  }

  private void addOwn(int i) {
    own[i] = new double[width];
    int[] taxa = new int[mean[i].length];
    int count = 0;
    for (int taxon = 0; taxon < mean[i].length; taxon++) {
      if (mean[i][taxon] == 0) {
        continue;
      }
      taxa[count++] = taxon;
      for (int k = 0; k < linkages; k++) {
        int c = taxon * linkages + k;
        own[i][c] = withItself(i, c, taxon) - explained[c];
      }
    }
    varying[i] = Arrays.copyOf(taxa, count);
  }

  /** The expected share of a taxon in the plant asked about. */
  double mean(int taxon) {
    return mean[lines.target()][taxon];
  }

  /** The variance of its share. */
  double variance(int taxon) {
    double sum = 0;
    for (int k = 0; k < pairs.size(); k++) {
      sum += pairs.weight(k) * withItself(lines.target(), taxon * linkages + k, taxon);
    }
    return Math.max(0, sum);
  }

  /** The chance that at one locus both sets are of a taxon. */
  double inBothSets(int taxon) {
    return cross[lines.target()][taxon * linkages + linkages - 1];
  }
}
