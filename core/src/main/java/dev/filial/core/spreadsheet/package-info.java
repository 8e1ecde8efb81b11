/**
 * A table that a grower already keeps in a spreadsheet, taken into the register: how the file is
 * read, which column is what, and each row turned into the entries that would have been typed.
 */
@NullMarked
package dev.filial.core.spreadsheet;

import org.jspecify.annotations.NullMarked;
