/**
 * What every command shares: where it runs, what it answers, how it fails, dates as people write
 * them, and the options that recur.
 *
 * <p>May import {@code dev.filial.cli.screen} and the library.
 */
package dev.filial.cli.frame;
