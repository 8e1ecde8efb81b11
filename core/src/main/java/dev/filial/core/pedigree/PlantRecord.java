package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Objects;

/**
 * One plant and where it comes from: what a {@link Pedigree} is built of.
 *
 * <p>An unnumbered parent out of a group of sister seedlings is a plant like any other, under a
 * code the producer of the records makes up, a new one for each use: two parents drawn from one
 * group are sibs, not one plant.
 *
 * @param code what the plant is called in this pedigree; no two plants share one
 * @param origin where it comes from
 */
public record PlantRecord(String code, Origin origin) {

  /**
   * Checks the code.
   *
   * @throws PedigreeException if it is blank
   */
  public PlantRecord {
    Objects.requireNonNull(origin, "origin");
    if (code.isBlank()) {
      throw new PedigreeException("a plant has a blank code; give it one: " + origin);
    }
  }

  /** An acquired diploid plant of one taxon. */
  public static PlantRecord pure(String code, String taxon) {
    return new PlantRecord(code, Founder.pure(taxon));
  }

  /** An acquired plant of one taxon, of a given ploidy. */
  public static PlantRecord pure(String code, String taxon, int ploidy) {
    return new PlantRecord(code, Founder.pure(taxon, ploidy));
  }

  /** An acquired diploid plant of which nothing is known. */
  public static PlantRecord unknown(String code) {
    return new PlantRecord(code, Founder.unknown());
  }

  /** An acquired diploid hybrid of stated make-up, its generation unstated. */
  public static PlantRecord hybrid(String code, Makeup makeup) {
    return new PlantRecord(code, Founder.hybrid(makeup));
  }

  /** A seedling of a cross, both parents known and giving ordinary gametes. */
  public static PlantRecord cross(String code, String seed, String pollen) {
    return new PlantRecord(code, Seedling.cross(seed, pollen));
  }

  /** A seedling of a cross whose gametes are stated. */
  public static PlantRecord cross(String code, Gamete seed, Gamete pollen) {
    boolean selfed = seed.parent() != null && seed.parent().equals(pollen.parent());
    Route route = selfed ? Route.SELFING : Route.CROSS;
    return seedling(code, new Case.Sexual(Fraction.ONE, route, seed, pollen));
  }

  /** A seedling of a plant pollinated with its own pollen. */
  public static PlantRecord selfing(String code, String plant) {
    return new PlantRecord(code, Seedling.cross(plant, plant));
  }

  /** A seedling of open pollination by nobody knows what. */
  public static PlantRecord openPollinated(String code, String seed) {
    return seedling(code, Case.unknownPollen(Fraction.ONE, Route.OPEN_POLLINATION, seed));
  }

  /** A seedling that repeats its seed parent: seed without fertilisation. */
  public static PlantRecord apomict(String code, String seed) {
    return seedling(code, Case.apomict(Fraction.ONE, seed));
  }

  /**
   * A seedling that may have come about in several ways.
   *
   * @throws PedigreeException if the shares of the cases do not sum to exactly 1
   */
  public static PlantRecord seedling(String code, Case... cases) {
    try {
      return new PlantRecord(code, new Seedling(List.of(cases)));
    } catch (PedigreeException e) {
      PedigreeException named = new PedigreeException(code + ": " + e.getMessage());
      named.initCause(e);
      throw named;
    }
  }

  /** An offset, cutting or scion of a plant. */
  public static PlantRecord ramet(String code, String of) {
    return new PlantRecord(code, new Ramet(of, false));
  }

  /** A ramet whose chromosomes were doubled. */
  public static PlantRecord doubled(String code, String of) {
    return new PlantRecord(code, new Ramet(of, true));
  }
}
