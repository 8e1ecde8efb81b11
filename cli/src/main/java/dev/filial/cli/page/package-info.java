/**
 * What is drawn and set for the eye: the pedigree as SVG, pages as HTML. Each is text made from a
 * library's answer; nothing here opens a register or writes a file. The layout library is loaded by
 * what stands in this package alone, so that no other verb waits for it.
 */
@org.jspecify.annotations.NullMarked
package dev.filial.cli.page;
