/**
 * Registers and pedigrees in other forms: entries as lines of JSON, a pedigree in notation as
 * entries; plants and crosses as tables of comma-separated values, as passport descriptors of
 * genebanks or as occurrences of Darwin Core; pedigrees as GraphML and DOT.
 *
 * <p>Turns text into entries and statements, and what it is given into text; who keeps or reckons
 * it is not its business. May import everything below it; nothing of {@code store} or {@code
 * answer}.
 */
package dev.filial.core.exchange;
