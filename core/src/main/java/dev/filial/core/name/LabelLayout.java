package dev.filial.core.name;

/**
 * The room on a label that is written by hand, counted in characters.
 *
 * <p>Facts find their places by the rules of {@link LabelRoom}.
 *
 * <p>Columns are counted as a reader sees characters: letters with their accents are one, emoji and
 * East Asian characters two.
 *
 * @param columns characters in a line, at least 7
 * @param lines lines on a side, 1 to 20
 * @param sides sides that are written on, 1 or 2
 * @param ascii whether the text is brought to plain ASCII: × as x, letters without marks, and ? for
 *     what has no like
 */
public record LabelLayout(int columns, int lines, int sides, boolean ascii) {

  /** A plastic tag of 10 × 1.3 cm, written on both sides: two lines of 24 on each. */
  public static final LabelLayout STANDARD = new LabelLayout(24, 2, 2, false);

  /**
   * Checks the room.
   *
   * @throws IllegalArgumentException if there is not room for any code, or more than any label has
   */
  public LabelLayout {
    if (columns < 7 || columns > 1000) {
      throw new IllegalArgumentException(
          "a label has 7 to 1000 columns, the shortest code taking 7; not " + columns);
    }
    if (lines < 1 || lines > 20) {
      throw new IllegalArgumentException("a label has 1 to 20 lines on a side, not " + lines);
    }
    if (sides < 1 || sides > 2) {
      throw new IllegalArgumentException("a label has 1 side or 2, not " + sides);
    }
  }

  /** This layout for plain ASCII. */
  public LabelLayout inAscii() {
    return new LabelLayout(columns, lines, sides, true);
  }

  /**
   * The facts on this label.
   *
   * @throws IllegalArgumentException if the code does not fit into one line
   */
  public LabelText fit(LabelFacts facts) {
    LabelRoom room = LabelRoom.of(columns, lines, sides, Columns.MEASURE);
    return (ascii ? room.inAscii() : room)
        .fit(
            facts,
            code ->
                "the code "
                    + code
                    + " needs "
                    + Columns.width(code)
                    + " columns and a line of this label has "
                    + columns
                    + "; a code is never cut. Take a wider label or smaller letters.");
  }
}
