package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Route;
import org.jspecify.annotations.Nullable;

/**
 * One way in which a plant may have come about, with its share: what the register hands a pedigree.
 *
 * @param form which of the three
 * @param route why this case is there
 * @param share its share of all cases of the plant, above 0
 * @param seed the seed parent; for a copy the plant copied or doubled; for a sibling the code whose
 *     seedling it is
 * @param seedSets chromosome sets of the egg, 0 for half of its parent
 * @param pollen the pollen parent, or null when nobody knows
 * @param pollenSets chromosome sets of the pollen, 0 for half of its parent
 */
public record Descent(
    Form form,
    Route route,
    Fraction share,
    Code seed,
    int seedSets,
    @Nullable Code pollen,
    int pollenSets) {

  /** How the plant relates to what is named. */
  public enum Form {
    /** A seedling of two gametes. */
    SEXUAL,
    /** The same genotype as {@code seed}. */
    COPY,
    /** The same genotype with its chromosomes doubled. */
    DOUBLED,
    /** A seedling of the family, pot or lot {@code seed}. */
    SIBLING
  }

  /** A seedling of two plants' ordinary gametes, for certain. */
  public static Descent cross(Code seed, @Nullable Code pollen) {
    return new Descent(Form.SEXUAL, Route.CROSS, Fraction.ONE, seed, 0, pollen, 0);
  }

  static Descent copy(Route route, Fraction share, Code of) {
    return new Descent(Form.COPY, route, share, of, 0, null, 0);
  }

  static Descent sibling(Route route, Fraction share, Code of) {
    return new Descent(Form.SIBLING, route, share, of, 0, null, 0);
  }
}
