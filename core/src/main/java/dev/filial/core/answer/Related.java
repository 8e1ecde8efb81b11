package dev.filial.core.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How two plants are related.
 *
 * @param one a plant, or a family one seedling of which is meant
 * @param other another; the same family again is another seedling of it
 * @param samePlant whether both are one genotype, as a plant and its offset
 * @param coancestry the chance that an allele drawn from either is one by descent, 0 to 1
 * @param kin what that is as close as, in words
 * @param through the youngest plants that both descend from, or that one is and the other descends
 *     from
 * @param inbreedingOfOne the inbreeding coefficient of the first, 0 to 1
 * @param inbreedingOfOther that of the other
 * @param inbreedingOfSeedlings that their seedlings would have; null if their gametes are not known
 *     to be half of each
 * @param inbreedingByKinship how much of that comes of the two being kin, all of it for diploids;
 *     null with it
 * @param ifAkin what it would be if plants of one field number were related; empty if none of it
 *     hangs on that
 * @param notes what the answer leans on, a sentence each
 */
public record Related(
    String one,
    String other,
    boolean samePlant,
    double coancestry,
    String kin,
    List<String> through,
    double inbreedingOfOne,
    double inbreedingOfOther,
    @Nullable Double inbreedingOfSeedlings,
    @Nullable Double inbreedingByKinship,
    List<IfAkin> ifAkin,
    List<String> notes) {

  /** Copies the lists. */
  public Related {
    through = List.copyOf(through);
    ifAkin = List.copyOf(ifAkin);
    notes = List.copyOf(notes);
  }

  /** Whether a cross of the two is a close one. */
  public boolean isClose() {
    return !samePlant && inbreedingByKinship != null && CloseCross.isClose(inbreedingByKinship);
  }

  /**
   * What would be if plants acquired apart under one field number were kin.
   *
   * @param kin what kin
   * @param coancestry of the two plants
   * @param inbreedingOfSeedlings that their seedlings would have; null if it cannot be said
   */
  public record IfAkin(
      FieldNumberKin kin, double coancestry, @Nullable Double inbreedingOfSeedlings) {}
}
