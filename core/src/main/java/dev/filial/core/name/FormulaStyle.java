package dev.filial.core.name;

/**
 * How a hybrid formula is written out.
 *
 * @param alphabetical whether the names stand in alphabetical order; else the seed parent stands
 *     first, and a page that shows formulas so says so (ICN Rec. H.2A)
 * @param sexSigns whether ♀ stands behind the seed parent and ♂ behind the pollen parent
 * @param authors whether authors are written
 * @param ascii whether × is written x, ♀ (seed), ♂ (pollen), and letters without their marks
 */
public record FormulaStyle(boolean alphabetical, boolean sexSigns, boolean authors, boolean ascii) {

  /** Seed parent first, with authors as they were given, no sex signs. */
  public static final FormulaStyle PLAIN = new FormulaStyle(false, false, true, false);

  /** This, in alphabetical order. */
  public FormulaStyle inAlphabeticalOrder() {
    return new FormulaStyle(true, sexSigns, authors, ascii);
  }

  /** This, with ♀ and ♂. */
  public FormulaStyle withSexSigns() {
    return new FormulaStyle(alphabetical, true, authors, ascii);
  }

  /** This, without authors. */
  public FormulaStyle withoutAuthors() {
    return new FormulaStyle(alphabetical, sexSigns, false, ascii);
  }

  /** This, in plain ASCII. */
  public FormulaStyle inAscii() {
    return new FormulaStyle(alphabetical, sexSigns, authors, true);
  }
}
