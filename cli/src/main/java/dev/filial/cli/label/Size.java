package dev.filial.cli.label;

/**
 * A width and a height.
 *
 * @param width in millimetres, 5 to 2000
 * @param height in millimetres, 5 to 2000
 */
public record Size(double width, double height) {

  /** The sheet most printers take. */
  public static final Size A4 = new Size(210, 297);

  /** Half an A4. */
  public static final Size A5 = new Size(148, 210);

  /** 8.5 by 11 inches. */
  public static final Size LETTER = new Size(215.9, 279.4);

  /**
   * Checks the lengths.
   *
   * @throws IllegalArgumentException if one is out of its range
   */
  public Size {
    check(width);
    check(height);
  }

  /** As it is typed: {@code 62x58}. */
  public String typed() {
    return Millimetres.text(width) + "x" + Millimetres.text(height);
  }

  private static void check(double length) {
    if (!(length >= 5 && length <= 2000)) {
      throw new IllegalArgumentException(
          Millimetres.text(length) + " mm is no length for a label or a sheet; 5 to 2000 mm are");
    }
  }

  /** As people write it: {@code 50 × 25 mm}. */
  public String text() {
    return Millimetres.text(width) + " × " + Millimetres.text(height) + " mm";
  }
}
