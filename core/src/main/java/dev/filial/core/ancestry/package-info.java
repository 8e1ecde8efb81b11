/**
 * Who is in a plant: the expected share of each taxon, exactly for one plant and in bulk for a
 * million, the seed-parent line, and the generation class (F1, F2, BC1 and so on).
 *
 * <p>May import {@code dev.filial.core.pedigree} and what stands below it.
 */
package dev.filial.core.ancestry;
