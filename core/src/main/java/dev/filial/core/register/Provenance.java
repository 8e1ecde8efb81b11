package dev.filial.core.register;

import org.jspecify.annotations.Nullable;

/**
 * Where an acquired plant or packet came from.
 *
 * @param donor who gave or sold it
 * @param donorCode the donor's own code, kept beside ours
 * @param fieldNumber the collector's field number
 * @param locality the place it was collected, as written
 */
public record Provenance(
    @Nullable String donor,
    @Nullable String donorCode,
    @Nullable String fieldNumber,
    @Nullable String locality) {

  /** Nothing is known of it. */
  public static final Provenance UNKNOWN = new Provenance(null, null, null, null);

  /** Where what a statement tells of came from; unknown of one that tells of no acquisition. */
  public static Provenance of(@Nullable Statement statement) {
    if (statement instanceof PlantAcquired plant) {
      return plant.provenance();
    }
    return statement instanceof SeedAcquired seed ? seed.provenance() : UNKNOWN;
  }

  /** An absent JSON property reaches a record's constructor as null. */
  static Provenance orUnknown(@Nullable Provenance provenance) {
    return provenance == null ? UNKNOWN : provenance;
  }
}
