package dev.filial.core.register;

/** What seed, seedlings or plants are treated with, by what it is and does. */
public enum Treatment {
  /** An oxidiser: peroxide, bleach, permanganate. */
  OXIDISER,
  /** A fungicide, copper and sulphur among them. */
  FUNGICIDE,
  /** Something against insects or mites. */
  INSECTICIDE,
  /** Gibberellic acid, an auxin, colchicine. */
  HORMONE,
  /** Left in water. */
  SOAK,
  /** Scratched, rubbed, nicked. */
  SCARIFICATION,
  /** Kept cold and moist. */
  COLD,
  /** Kept hot: water, oven, steam. */
  HEAT,
  /** Smoke or smoke water. */
  SMOKE,
  /** Fertiliser. */
  FEED,
  /** Anything else. */
  OTHER
}
