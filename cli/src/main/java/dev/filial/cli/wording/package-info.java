/**
 * How chances and tests are put into a grower's words, on the terminal and on pages alike. Text
 * made of numbers; nothing here knows where it will stand.
 */
@org.jspecify.annotations.NullMarked
package dev.filial.cli.wording;
