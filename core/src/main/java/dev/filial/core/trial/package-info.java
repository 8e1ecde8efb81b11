/**
 * Counts against expectation: does a family fit a ratio, do several families agree, how closely are
 * two loci linked, how sure is a rate, and how many seeds to sow.
 *
 * <p>Works on numbers alone and knows no register. May import {@code number}.
 */
package dev.filial.core.trial;
