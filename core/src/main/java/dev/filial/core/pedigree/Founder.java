package dev.filial.core.pedigree;

import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A plant whose parents are not recorded: where a pedigree begins.
 *
 * @param makeup which taxa, by share; the remainder is unknown
 * @param ploidy number of chromosome sets, 1 to {@link #MAX_PLOIDY}
 * @param standing whether it is a plant of one taxon, a hybrid, or nobody knows; a plant of a
 *     hybrid taxon is a hybrid
 * @param stated the generation its donor stated, for a hybrid
 * @param cultivar the cultivar it is, if any
 * @param fieldNumber the collector's field number it goes back to, if any; outer spaces are left
 *     out, and a blank one is none
 */
public record Founder(
    Makeup makeup,
    int ploidy,
    Standing standing,
    Optional<StatedGeneration> stated,
    @Nullable String cultivar,
    @Nullable String fieldNumber)
    implements Origin {

  /** The highest ploidy accepted, of founders and of what is bred from them. */
  public static final int MAX_PLOIDY = 1024;

  /**
   * Checks that the statements can hold together, and leaves out spaces around a field number.
   *
   * @throws PedigreeException if the ploidy is out of range, a pure plant is not wholly of one
   *     taxon, or a generation is stated for a plant that is no hybrid
   */
  public Founder {
    Objects.requireNonNull(stated, "stated");
    fieldNumber = fieldNumber == null || fieldNumber.isBlank() ? null : fieldNumber.strip();
    if (ploidy < 1 || ploidy > MAX_PLOIDY) {
      throw new PedigreeException(
          "a ploidy of " + ploidy + " cannot be: state 1 to " + MAX_PLOIDY + ", usually 2 or 4");
    }
    if (standing == Standing.PURE
        && !(makeup.shares().size() == 1 && makeup.unknownShare().isZero())) {
      throw new PedigreeException(
          "a pure plant is wholly of one taxon, but this is stated as "
              + makeup.shares()
              + "; state it as a hybrid or as unknown");
    }
    if (stated.isPresent() && standing != Standing.HYBRID) {
      throw new PedigreeException(
          "a generation is stated ("
              + stated.get()
              + ") for a plant that is no hybrid;"
              + " state its standing as hybrid");
    }
  }

  /** A diploid plant of one taxon. */
  public static Founder pure(String taxon) {
    return pure(taxon, 2);
  }

  /** A plant of one taxon, of a given ploidy. */
  public static Founder pure(String taxon, int ploidy) {
    return new Founder(Makeup.pure(taxon), ploidy, Standing.PURE, Optional.empty(), null, null);
  }

  /** A diploid plant of which nothing is known. */
  public static Founder unknown() {
    return new Founder(Makeup.unknown(), 2, Standing.UNKNOWN, Optional.empty(), null, null);
  }

  /** A diploid hybrid of a stated make-up, its generation unstated. */
  public static Founder hybrid(Makeup makeup) {
    return new Founder(makeup, 2, Standing.HYBRID, Optional.empty(), null, null);
  }

  /** This founder, its generation stated; it must be a hybrid. */
  public Founder withStated(StatedGeneration generation) {
    return new Founder(makeup, ploidy, standing, Optional.of(generation), cultivar, fieldNumber);
  }

  /** This founder as a plant of the named cultivar. */
  public Founder withCultivar(String name) {
    return new Founder(makeup, ploidy, standing, stated, name, fieldNumber);
  }

  /** This founder as a plant that goes back to a collector's field number. */
  public Founder withFieldNumber(String number) {
    return new Founder(makeup, ploidy, standing, stated, cultivar, number);
  }
}
