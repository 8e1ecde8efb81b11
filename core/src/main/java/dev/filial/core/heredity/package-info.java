/**
 * Loci, gametes and what shows: one cross at a time, exactly.
 *
 * <p>Loci stand in linkage groups ({@link LinkageGroup}) and these in a {@link Genome}; a {@link
 * TraitModel} says what a {@link Genotype} shows; a {@link Cross} says what two plants throw. All
 * chances are whole numbers over a common denominator and sum to exactly one. Knows no register.
 * May import {@code number}.
 */
package dev.filial.core.heredity;
