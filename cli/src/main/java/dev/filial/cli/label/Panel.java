package dev.filial.cli.label;

/**
 * The parts of one side of a label, millimetres from its upper left corner: where the code and the
 * lines stand, where the QR code and where the code is once more.
 *
 * @param side the whole side
 * @param text the width of what is written; it begins at the padding
 * @param qr the side of the square for the QR code at the right of the text; 0 for none
 * @param buried where the end that is buried begins; the whole width where none is
 */
record Panel(Size side, double text, double qr, double buried) {

  /** White between the edge and what is written; common practice, no source. */
  private static final double PADDING = 1.5;

  /** A QR code larger than this is read no better at the bench; common practice, no source. */
  private static final double LARGEST_QR = 18;

  /**
   * Divides a side up.
   *
   * @throws IllegalArgumentException if nothing is left for the text
   */
  static Panel of(Size side, LabelStyle style, boolean withQr) {
    double buried =
        style == LabelStyle.TAGS ? side.width() * (1 - LabelStyle.BURIED) : side.width();
    double qr = withQr ? Math.min(LARGEST_QR, Math.min(side.height(), buried / 2)) : 0;
    // The white border of the QR code keeps the text away from it.
    double text = buried - padding(side) - (withQr ? qr : padding(side));
    return new Panel(side, text, qr, buried);
  }

  private static double padding(Size side) {
    return Math.min(PADDING, side.height() / 8);
  }

  double padding() {
    return padding(side);
  }

  /** The height of what is written. */
  double height() {
    return side.height() - 2 * padding();
  }

  /** The width of the code on the end that is buried. */
  double buriedText() {
    return side.width() - buried - 2 * padding();
  }

  /** The left edge of the square for the QR code. */
  double qrLeft() {
    return buried - qr;
  }
}
