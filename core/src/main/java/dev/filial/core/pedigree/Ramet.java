package dev.filial.core.pedigree;

import java.util.Objects;

/**
 * An offset, cutting or grafted scion of another plant: the same genotype.
 *
 * @param of the code of the plant it was taken from
 * @param doubled whether its chromosomes were doubled (by colchicine): twice the sets, each allele
 *     twice
 */
public record Ramet(String of, boolean doubled) implements Origin {
  /** Checks that there is a plant it was taken from. */
  public Ramet {
    Objects.requireNonNull(of, "of");
  }
}
