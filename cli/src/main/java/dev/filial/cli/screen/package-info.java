/**
 * What is seen: the terminal's facts, text laid out to its width, JSON, and questions asked.
 *
 * <p>Imports no other package of this module, and of the library only its numbers.
 */
package dev.filial.cli.screen;
