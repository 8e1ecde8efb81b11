/**
 * Every question asked of a register: each builds the pedigree it needs, calls the floors below,
 * and returns an answer record, with what it leant on.
 *
 * <p>The uppermost floor; may import all others. Questions read a {@link
 * dev.filial.core.register.RegisterView}, so that they work on a store and in memory alike.
 */
package dev.filial.core.answer;
