/**
 * Exact inference over discrete variables that are tied to each other by tables: the weight of
 * everything possible together, and the distribution of one variable or of a few together, loops
 * being no exception. What an exact answer would cost is known before anything is paid, and where
 * it is too much a sampler takes over that says how far off it may be. No genetics here.
 *
 * <p>May import nothing of Filial. For {@code dev.filial.core.inference} alone.
 */
package dev.filial.core.inference.factor;
