package dev.filial.core.answer;

import dev.filial.core.ancestry.DonorSegment;
import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;

/**
 * How much of the donor still hangs on around a gene of it that was held through backcrosses. All
 * lengths are in centimorgans.
 *
 * @param plant the plant, or the family one seedling of which is meant; null if only a number of
 *     backcrosses was asked about
 * @param generation its generation in words; null without a plant
 * @param backcrosses how many backcrosses there were, 0 for an F1
 * @param left how far the gene is from one end of its chromosome
 * @param right how far it is from the other
 * @param chance how likely each piece lies within its range, between 0 and 1
 * @param pieces the piece after each backcross up to these, of many after the first ten and the
 *     last; of an F1 the whole chromosome
 * @param goal what it takes to a piece of at most some length; null if that was not asked
 * @param notes what the grower should bear in mind, one sentence each
 */
public record Attached(
    @Nullable Code plant,
    @Nullable String generation,
    int backcrosses,
    double left,
    double right,
    double chance,
    List<Piece> pieces,
    @Nullable Goal goal,
    List<String> notes) {

  /** So many rows are read; of more backcrosses the last is added. */
  private static final int MOST_ROWS = 10;

  /** Copies the lists. */
  public Attached {
    pieces = List.copyOf(pieces);
    notes = List.copyOf(notes);
  }

  /**
   * The piece after some backcrosses.
   *
   * @param backcrosses how many
   * @param mean its mean length, both sides of the gene together
   * @param least the lower end of its range
   * @param most the upper end of its range
   * @param whole the chance that the whole chromosome is still the donor's, 0 to 1
   * @param elsewhere the mean length of the donor's that lies loose on the same chromosome
   */
  public record Piece(
      int backcrosses, double mean, double least, double most, double whole, double elsewhere) {}

  /**
   * What it takes to a piece of at most some length, counted from the F1.
   *
   * @param length the length
   * @param onAverage backcrosses until it is as short on the average; null if more than are
   *     reckoned with
   * @param surely backcrosses until it is as short with the chance; null if more than are reckoned
   *     with
   */
  public record Goal(double length, @Nullable Integer onAverage, @Nullable Integer surely) {

    static Goal of(DonorSegment around, double length, double chance) {
      double morgans = length / AttachedQuestion.CENTIMORGANS;
      return new Goal(
          length,
          orNull(around.backcrossesToMean(morgans)),
          orNull(around.backcrossesTo(morgans, chance)));
    }

    private static @Nullable Integer orNull(OptionalInt number) {
      return number.isPresent() ? number.getAsInt() : null;
    }
  }

  /** The piece after all of the backcrosses. */
  public Piece last() {
    return pieces.get(pieces.size() - 1);
  }

  static List<Piece> pieces(DonorSegment around, int backcrosses, double chance) {
    List<Piece> pieces = new ArrayList<>();
    for (int number = 1; number < backcrosses && number <= MOST_ROWS; number++) {
      pieces.add(piece(around.after(number), chance));
    }
    pieces.add(piece(around.after(backcrosses), chance));
    return pieces;
  }

  private static Piece piece(DonorSegment segment, double chance) {
    DonorSegment.Interval range = segment.interval(chance);
    double hundred = AttachedQuestion.CENTIMORGANS;
    return new Piece(
        segment.backcrosses(),
        segment.mean() * hundred,
        range.least() * hundred,
        range.most() * hundred,
        segment.chanceWhole(),
        segment.meanElsewhere() * hundred);
  }
}
