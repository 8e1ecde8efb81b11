/**
 * What things are called: label codes with their check letters, the travelling and machine-readable
 * forms, the text of a tag; taxon names, synonyms and hybrid formulas; pedigree notation.
 *
 * <p>The lowest floor, beside {@code number}: everything here is text in and values out. Imports
 * nothing of Filial but {@code number}, and nothing outside the JDK but JSpecify's annotations.
 */
package dev.filial.core.name;
