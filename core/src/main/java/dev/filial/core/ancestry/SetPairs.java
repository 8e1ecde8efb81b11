package dev.filial.core.ancestry;

/**
 * How likely two different chromosome sets of a plant are identical by descent at a locus, from the
 * gametes it came of, at any ploidy.
 *
 * <p>Of gametes of g₁ and g₂ sets, F = [C(g₁,2) φ₁ + C(g₂,2) φ₂ + g₁ g₂ θ₁₂] / C(g₁+g₂,2), where φ
 * is the chance that two sets of one gamete are identical by descent, and θ₁₂ the coancestry of the
 * parents. Two sets of a gamete are two of its parent's, φ its F; save that a tetraploid's gamete
 * of two sets carries one chromosome's allele twice with the chance α of double reduction: φ = α +
 * (1 − α) F (Haldane 1930, Journal of Genetics 22:359-372, from memory). An unreduced gamete is
 * taken as its parent again, as first-division restitution leaves it near the centromere.
 *
 * <p>Of several ways in which a plant may have come about, the mean by their shares.
 *
 * @param flow whose plants these are
 * @param doubleReduction α, 0 to 1/6
 */
record SetPairs(GeneFlow flow, double doubleReduction) {

  private static final int TETRAPLOID = 4;

  /** F of a plant, that of the plants behind it being known. */
  double inbreeding(GeneFlow.Way[] ways, Kin kin) {
    double sum = 0;
    for (GeneFlow.Way way : ways) {
      sum += way.share() * inbreeding(way, kin);
    }
    return sum;
  }

  /** The coancestry of a plant with itself: two draws out of its sets, the first put back. */
  double self(GeneFlow.Way[] ways, Kin kin) {
    double sum = 0;
    for (GeneFlow.Way way : ways) {
      sum +=
          way.share()
              * (way instanceof GeneFlow.Way.Cross cross
                  ? self(inbreeding(cross, kin), cross.ploidy())
                  // Each allele twice, or once: two draws are as likely alike.
                  : kin.self(((GeneFlow.Way.Copy) way).of()));
    }
    return sum;
  }

  static double self(double inbreeding, int ploidy) {
    return (1 + (ploidy - 1) * inbreeding) / ploidy;
  }

  private double inbreeding(GeneFlow.Way way, Kin kin) {
    if (way instanceof GeneFlow.Way.Copy copy) {
      double before = kin.inbreeding(copy.of());
      if (!copy.doubled()) {
        return before;
      }
      double sets = flow.ploidy(copy.of());
      return (1 + (2 * sets - 2) * before) / (2 * sets - 1);
    }
    GeneFlow.Way.Cross cross = (GeneFlow.Way.Cross) way;
    double pairs = pairs(cross.ploidy());
    if (pairs == 0) {
      return 0;
    }
    return (pairs(cross.seedSets()) * ofGamete(cross.seed(), cross.seedSets(), kin)
            + pairs(cross.pollenSets()) * ofGamete(cross.pollen(), cross.pollenSets(), kin)
            + cross.seedSets() * cross.pollenSets() * kin.between(cross.seed(), cross.pollen()))
        / pairs;
  }

  private double ofGamete(int parent, int sets, Kin kin) {
    if (parent == GeneFlow.UNKNOWN || sets < 2) {
      return 0;
    }
    double inbreeding = kin.inbreeding(parent);
    return sets == 2 && flow.ploidy(parent) == TETRAPLOID
        ? doubleReduction + (1 - doubleReduction) * inbreeding
        : inbreeding;
  }

  private static double pairs(double sets) {
    return sets * (sets - 1) / 2;
  }
}
