package dev.filial.core.ancestry;

import java.util.ArrayList;
import java.util.List;

/**
 * The classic generations from two pure taxa, each as the pair of two expectations: the share of
 * one taxon, and the share of loci whose two sets are of different taxa.
 *
 * <p>The pair tells more than the share: an F1, an F2 and an F3 are all half and half, but differ
 * at all, at a half and at a quarter of the loci. Figures follow by Mendel's rules; the pair as
 * coordinates of a hybrid's class is common in the study of natural hybrids (from memory).
 */
public enum ClassicPlace {
  /** Of one taxon. */
  PURE("a pure plant", 1, 0),
  /** Two pure plants crossed. */
  F1("an F1", 0.5, 1),
  /** An F1 selfed, or crossed with a sib; an F3 by a sib cross of two F2 is there too. */
  F2("an F2", 0.5, 0.5),
  /** An F2 selfed. */
  F3_SELFED("an F3 by selfing", 0.5, 0.25),
  /** An F3 selfed. */
  F4_SELFED("an F4 by selfing", 0.5, 0.125),
  /** An F1 crossed back once. */
  BC1("a BC1", 0.75, 0.5),
  /** A BC1 selfed. */
  BC1F2("a BC1F2 by selfing", 0.75, 0.25),
  /** Crossed back twice. */
  BC2("a BC2", 0.875, 0.25),
  /** Crossed back three times. */
  BC3("a BC3", 0.9375, 0.125);

  private static final double NEAR = 1e-9;

  private final String text;
  private final double share;
  private final double different;

  ClassicPlace(String text, double share, double different) {
    this.text = text;
    this.share = share;
    this.different = different;
  }

  /** The generation in words, as {@code an F2}. */
  public String text() {
    return text;
  }

  /** The expected share of the taxon it has more of. */
  public double share() {
    return share;
  }

  /** The expected share of loci whose two sets are of different taxa. */
  public double different() {
    return different;
  }

  /**
   * The classic generation or generations nearest to a plant of two taxa, in the plane of share and
   * difference; several if they are as near.
   *
   * @param share the share of either taxon, 0 to 1
   * @param different the share of loci whose two sets are of different taxa, 0 to 1
   */
  public static List<ClassicPlace> nearest(double share, double different) {
    List<ClassicPlace> nearest = new ArrayList<>();
    double least = Double.MAX_VALUE;
    for (ClassicPlace place : values()) {
      double away = place.distance(share, different);
      if (away < least - NEAR) {
        nearest.clear();
        least = away;
      }
      if (away <= least + NEAR) {
        nearest.add(place);
      }
    }
    return nearest;
  }

  /** Whether the plant has just that share and that difference. */
  public boolean isAt(double share, double different) {
    return distance(share, different) < NEAR;
  }

  private double distance(double its, double itsDifferent) {
    return Math.hypot(Math.max(its, 1 - its) - share, itsDifferent - different);
  }
}
