package dev.filial.cli.page;

/**
 * A column of a table on a page.
 *
 * @param heading what stands above it
 * @param numbers whether it holds numbers, which stand below each other at its right edge
 */
record Column(String heading, boolean numbers) {

  static Column words(String heading) {
    return new Column(heading, false);
  }

  static Column numbers(String heading) {
    return new Column(heading, true);
  }
}
