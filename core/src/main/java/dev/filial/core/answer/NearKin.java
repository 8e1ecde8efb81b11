package dev.filial.core.answer;

/** What kin two plants are as close as, by their coancestry. */
final class NearKin {

  private static final double EXACT = 1e-9;

  /** Halfway, in generations, between two degrees. */
  private static final double BETWEEN = Math.sqrt(0.5);

  private enum Degree {
    SIBS(1 / 4.0, "full sibs, or parent and offspring"),
    HALF_SIBS(1 / 8.0, "half sibs"),
    COUSINS(1 / 16.0, "first cousins"),
    COUSINS_ONCE_REMOVED(1 / 32.0, "a plant and its first cousin's offspring"),
    SECOND_COUSINS(1 / 64.0, "second cousins");

    private final double coancestry;
    private final String kin;

    Degree(double coancestry, String kin) {
      this.coancestry = coancestry;
      this.kin = kin;
    }
  }

  private NearKin() {}

  /**
   * In words that follow on "they are": coefficients of Wright 1922 for plants not inbred. With m
   * chromosome sets in both plants, an allele drawn is one of m, and each degree has 2/m of a
   * diploid's.
   *
   * @param ploidy of both plants; 0 if they differ in it, or it is not certain
   */
  static String of(double theta, int ploidy) {
    if (theta < EXACT) {
      return "not related, as far as is recorded";
    }
    if (ploidy == 0) {
      return "related";
    }
    double coancestry = theta * ploidy / 2;
    if (coancestry > Degree.SIBS.coancestry / BETWEEN) {
      return "closer kin than full sibs";
    }
    for (Degree degree : Degree.values()) {
      if (Math.abs(coancestry - degree.coancestry) < EXACT) {
        return "as close as " + degree.kin;
      }
      if (coancestry > degree.coancestry * BETWEEN) {
        return "about as close as " + degree.kin;
      }
    }
    return "hardly related";
  }
}
