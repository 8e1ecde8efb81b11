/**
 * Registers and pedigrees in other forms: entries as lines of JSON, a pedigree in notation as
 * entries.
 *
 * <p>Turns text into entries and statements and back; who keeps them is not its business. May
 * import everything below it; nothing of {@code store} or {@code answer}.
 */
package dev.filial.core.exchange;
