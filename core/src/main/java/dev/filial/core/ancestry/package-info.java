/**
 * Who is in a plant: the expected share of each taxon, exactly for one plant and in bulk for a
 * million, the seed-parent line, the generation class (F1, F2, BC1 and so on), and how much of a
 * donor still hangs on around a gene after backcrosses.
 *
 * <p>May import {@code dev.filial.core.pedigree} and what stands below it.
 */
package dev.filial.core.ancestry;
