/**
 * What labels, drawings and pages have in common: text that nothing in it can be taken for markup,
 * and how wide it becomes.
 */
@org.jspecify.annotations.NullMarked
package dev.filial.cli.paper;
