/**
 * Sheets of labels for a printer: where each label lies on the paper, text that fits because its
 * width is known, QR codes, and the one HTML file they are written to. Lengths are millimetres.
 */
@org.jspecify.annotations.NullMarked
package dev.filial.cli.label;
