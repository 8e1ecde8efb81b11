/**
 * Odds over a whole pedigree: what each plant most likely carries, given everything that was seen.
 *
 * <p>A {@link PedigreeOdds} takes a pedigree, the genes and tables of some traits, what is known of
 * the taxa ({@link FounderPriors}) and what was seen ({@link Evidence}). It turns them into a
 * factor graph and works that through exactly, loops and all; what would cost more than a stated
 * bound is refused, or sampled where that is asked for. Knows no register. May import {@code
 * pedigree}, {@code heredity}, {@code trial} and {@code number}.
 */
package dev.filial.core.inference;
