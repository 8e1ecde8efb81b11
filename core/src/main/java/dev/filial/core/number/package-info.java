/**
 * Exact rational numbers, in which shares of a genome and odds of a cross are stated, and how
 * numbers that were reckoned in doubles are written.
 *
 * <p>The lowest floor: imports nothing of Filial.
 */
package dev.filial.core.number;
