package dev.filial.cli.page;

/**
 * How wide a text becomes at most, whatever sans-serif face the reader has: the advances of DejaVu
 * Sans, the widest of the common ones, so that a drawing is the same on every machine and needs no
 * fonts to be made. Letters beyond ASCII are reckoned by generous classes.
 */
final class LetterWidths {

  /** Upright or slanting letters of the usual weight. */
  static final LetterWidths PLAIN =
      new LetterWidths(
          318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636,
          636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698,
          770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732,
          684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635,
          634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592,
          525, 636, 337, 636, 838);

  /** Bold letters. */
  static final LetterWidths BOLD =
      new LetterWidths(
          348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696,
          696, 696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734,
          830, 683, 683, 821, 837, 372, 372, 775, 637, 995, 837, 850, 733, 850, 770, 720, 682, 812,
          774, 1103, 771, 724, 725, 457, 365, 457, 838, 500, 500, 675, 716, 593, 716, 678, 435, 716,
          712, 343, 343, 665, 343, 1042, 712, 687, 716, 716, 493, 595, 478, 712, 652, 924, 645, 652,
          582, 712, 365, 712, 838);

  private static final int FIRST = ' ';
  private static final int LAST = '~';
  private static final int NO_BREAK_SPACE = 0xA0;
  private static final int MIDDLE_DOT = 0xB7;
  private static final int ALPHABETIC = 1250;
  private static final int WIDEST = 1450;
  private static final int FIRST_SYMBOL = 0x2E80;
  private static final double UNITS = 1000;

  private final int[] advances;

  private LetterWidths(int... advances) {
    this.advances = advances;
  }

  /** The most a text can take, in the unit in which the size of its letters is given. */
  double of(String text, double size) {
    long units = 0;
    for (int i = 0; i < text.length(); ) {
      int letter = text.codePointAt(i);
      i += Character.charCount(letter);
      units += advance(letter);
    }
    return units * size / UNITS;
  }

  /** The text, or as much of it as is not wider, with three dots where it was cut. */
  String fit(String text, double size, double most) {
    if (of(text, size) <= most) {
      return text;
    }
    int end = text.length();
    while (end > 0 && of(text.substring(0, end) + "…", size) > most) {
      end = text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  private int advance(int letter) {
    if (letter >= FIRST && letter <= LAST) {
      return advances[letter - FIRST];
    }
    if (letter == NO_BREAK_SPACE || letter == MIDDLE_DOT) {
      return advances['-' - FIRST];
    }
    return switch (Character.getType(letter)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK -> 0;
      default -> letter < FIRST_SYMBOL ? ALPHABETIC : WIDEST;
    };
  }
}
