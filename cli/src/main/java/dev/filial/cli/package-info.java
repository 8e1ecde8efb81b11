/**
 * The entry class, the table of verbs, and how one is picked and run.
 *
 * <p>May import every package of this module.
 */
package dev.filial.cli;
