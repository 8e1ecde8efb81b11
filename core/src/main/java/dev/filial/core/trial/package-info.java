/**
 * Counts against expectation: does a family fit a ratio, which of several models fits best, do
 * several families agree, how closely are two loci linked, how sure is a rate, how many seeds to
 * sow; how seed came up over the days, whether two sowings differ, how many live on; and what to
 * expect where no model is known, from like crosses or the mid-parent.
 *
 * <p>Works on numbers alone and knows no register. May import {@code number}.
 */
package dev.filial.core.trial;
