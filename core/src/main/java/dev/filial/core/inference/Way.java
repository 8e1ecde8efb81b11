package dev.filial.core.inference;

/** One way in which a plant may have come about, and its share. */
sealed interface Way {

  /** Its share of all ways of the plant, above 0 and at most 1. */
  double share();

  /** The same way with another share. */
  Way sharing(double share);

  /** Two gametes. */
  record Union(double share, Gift egg, Gift grain) implements Way {
    @Override
    public Way sharing(double share) {
      return new Union(share, egg, grain);
    }
  }

  /** One gamete, twice: what an inbred founder has. */
  record Twice(double share, Gift gamete) implements Way {
    @Override
    public Way sharing(double share) {
      return new Twice(share, gamete);
    }
  }

  /** The genotype of another plant. */
  record Again(double share, int plant) implements Way {
    @Override
    public Way sharing(double share) {
      return new Again(share, plant);
    }
  }

  /** The genotype of a diploid with each chromosome twice. */
  record Doubled(double share, int plant) implements Way {
    @Override
    public Way sharing(double share) {
      return new Doubled(share, plant);
    }
  }
}
