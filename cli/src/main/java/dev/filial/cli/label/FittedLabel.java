package dev.filial.cli.label;

import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.LabelText;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A label laid out: what stands on it, in which size.
 *
 * @param label what it is for
 * @param code the code as it is printed
 * @param capHeight how high the code's letters and digits are, millimetres
 * @param buriedCapHeight the same on the end that is buried; 0 where there is none
 * @param fontSize of the other lines, millimetres; 0 where there is no room for any
 * @param text the other lines
 * @param leftOut what there was no room for
 * @param qr its QR code, if one was asked for
 * @param fromTop whether the code stands at the upper edge; otherwise all stands in the middle
 */
record FittedLabel(
    TagQuestion.Label label,
    String code,
    double capHeight,
    double buriedCapHeight,
    double fontSize,
    LabelText text,
    List<String> leftOut,
    @Nullable QrPlace qr,
    boolean fromTop) {

  /**
   * A QR code and where it stands on the front.
   *
   * @param code the code
   * @param left the left edge of its white border, millimetres
   * @param top the upper edge of its white border, millimetres
   * @param side how long its white border is, millimetres
   */
  record QrPlace(QrCode code, double left, double top, double side) {

    /** The length of a module, millimetres. */
    double module() {
      return side / code.side();
    }
  }

  /** Copies the list. */
  public FittedLabel {
    leftOut = List.copyOf(leftOut);
  }

  /** The smaller of the two heights of the code, millimetres. */
  double smallestCode() {
    return buriedCapHeight > 0 ? Math.min(capHeight, buriedCapHeight) : capHeight;
  }
}
