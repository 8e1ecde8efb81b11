package dev.filial.core.pedigree;

/** What is known of an acquired plant's breeding. */
public enum Standing {
  /** A plant of one taxon, as found in the wild or bred true. */
  PURE,
  /** A hybrid; also a plant of a hybrid taxon, which is never pure. */
  HYBRID,
  /** Nobody knows. */
  UNKNOWN
}
