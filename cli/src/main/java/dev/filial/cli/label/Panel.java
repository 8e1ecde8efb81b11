package dev.filial.cli.label;

/**
 * The parts of one side of a label, in millimetres.
 *
 * @param side the whole side
 * @param buried where the end that is buried begins; the whole width where none is
 */
record Panel(Size side, double buried) {

  /** White between the edge and what is written; common practice, no source. */
  private static final double PADDING = 1.5;

  /** A QR code larger than this is read no better at the bench; common practice, no source. */
  private static final double LARGEST_QR = 18;

  /** Divides a side up. */
  static Panel of(Size side, LabelStyle style) {
    return new Panel(
        side, style == LabelStyle.TAGS ? side.width() * (1 - LabelStyle.BURIED) : side.width());
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

  /** The width of what is written where nothing else stands beside it. */
  double widest() {
    return buried - 2 * padding();
  }

  /** The same beside a QR code of that side, whose white border keeps the text away. */
  double beside(double qr) {
    return buried - padding() - qr;
  }

  /** The side of a QR code beside the text, its white border counted in. */
  double qr() {
    return Math.min(largestQr(), side.height());
  }

  /** The most that a QR code takes of the width. */
  double largestQr() {
    return Math.min(LARGEST_QR, buried / 2);
  }
}
