/**
 * The invented bench that examples are tried on.
 *
 * <p>May import the library only.
 */
package dev.filial.cli.demo;
