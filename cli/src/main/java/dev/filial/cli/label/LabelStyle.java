package dev.filial.cli.label;

/** What sort of label is printed. */
public enum LabelStyle {
  /** For a packet of seed: one side. */
  PACKETS(60, 30),

  /**
   * For a pot: a long strip with two sides to be folded along their common edge, whose last third
   * goes into the soil and has the code again.
   */
  TAGS(95, 13);

  /** How much of a tag stands in the soil. */
  static final double BURIED = 1 / 3.0;

  private final double width;
  private final double height;

  LabelStyle(double width, double height) {
    this.width = width;
    this.height = height;
  }

  /** The size taken where none is asked for: of a tag, of one side. */
  public Size usual() {
    return new Size(width, height);
  }

  /** How many sides are printed beside each other. */
  public int sides() {
    return this == TAGS ? 2 : 1;
  }

  /** What a label takes on the paper when one side has this size. */
  public Size onPaper(Size side) {
    return new Size(side.width(), side.height() * sides());
  }
}
