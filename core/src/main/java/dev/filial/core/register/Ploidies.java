package dev.filial.core.register;

/** Whether a thing departs from the two chromosome sets that are taken for granted. */
public final class Ploidies {

  private Ploidies() {}

  /** Whether neither its statement nor its gametes name another number of sets than two. */
  public static boolean isDiploid(Item item) {
    Integer stated = item.determination().ploidy();
    return (stated == null || stated == 2)
        && item.descent().stream()
            .allMatch(
                descent ->
                    descent.form() != Descent.Form.DOUBLED
                        && descent.seedSets() <= 1
                        && descent.pollenSets() <= 1);
  }

  /** Whether it was not declared with another number of sets than two. */
  public static boolean isDiploid(Taxon taxon) {
    Integer stated = taxon.ploidy();
    return stated == null || stated == 2;
  }
}
