/**
 * Who is in a plant: the expected share of each taxon, exactly for one plant and in bulk for a
 * million, and how far a real plant's may be from it; the seed-parent line; the generation class
 * (F1, F2, BC1 and so on); how plants are related and how inbred they are; whether a line is true
 * to a field number; and how much of a donor still hangs on around a gene after backcrosses.
 *
 * <p>May import {@code dev.filial.core.pedigree} and what stands below it.
 */
package dev.filial.core.ancestry;
