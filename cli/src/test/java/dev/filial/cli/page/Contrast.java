package dev.filial.cli.page;

/** The contrast ratio of WCAG 2.2 ("contrast ratio" and "relative luminance" in its glossary). */
final class Contrast {

  private Contrast() {}

  /** Between two colours written as {@code #rrggbb}: 1 to 21. */
  static double between(String one, String other) {
    double first = luminance(one);
    double second = luminance(other);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(String colour) {
    return 0.2126 * linear(colour, 1) + 0.7152 * linear(colour, 3) + 0.0722 * linear(colour, 5);
  }

  private static double linear(String colour, int at) {
    double value = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
