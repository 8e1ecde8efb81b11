/**
 * One class a verb: its options, the question it puts to the library, and how the answer reads.
 *
 * <p>May import {@code dev.filial.cli.frame}, {@code dev.filial.cli.screen} and the library.
 */
package dev.filial.cli.command;
