package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodesInText;
import dev.filial.core.name.GrowersMark;
import dev.filial.core.name.TravellingCode;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;

/**
 * Codes as they leave the house, with the grower's mark before them.
 *
 * @param mark the grower's mark
 */
record OutwardCodes(GrowersMark mark) {

  /**
   * Those of a register.
   *
   * @throws RegisterRefusal if it has no mark
   */
  static OutwardCodes of(RegisterView view) {
    return view.opening()
        .map(opening -> new OutwardCodes(new GrowersMark(opening.mark())))
        .orElseThrow(
            () ->
                new RegisterRefusal(
                    "this register has no grower's mark, which stands before every code that"
                        + " leaves the house; begin one with a mark of two to four letters"));
  }

  /** One code. */
  String of(Code code) {
    return new TravellingCode(mark, code).text();
  }

  /** A text of ours that has codes in it; none of a grower's, who may have written anything. */
  String in(String text) {
    return CodesInText.in(text).replaceAll(mark.letters() + " $0");
  }
}
