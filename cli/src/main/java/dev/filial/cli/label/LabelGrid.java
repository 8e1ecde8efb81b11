package dev.filial.cli.label;

import org.jspecify.annotations.Nullable;

/**
 * Where labels lie on a sheet: rows and columns of one size, the first in the upper left corner.
 *
 * @param paper the sheet
 * @param label one label
 * @param columns labels across, 1 or more
 * @param rows labels down, 1 or more
 * @param marginLeft from the edge of the paper to the first column, millimetres
 * @param marginTop from the edge of the paper to the first row, millimetres
 * @param gap between the columns and between the rows, millimetres
 */
public record LabelGrid(
    Size paper, Size label, int columns, int rows, double marginLeft, double marginTop, Gap gap) {

  /** What most printers leave white at every edge; common practice, no source. */
  static final double UNPRINTED = 8;

  /** Ten nanometres: what a sum of decimal fractions may be off by. */
  private static final double SLACK = 1e-5;

  /**
   * The room between labels.
   *
   * @param across between columns, millimetres, 0 or more
   * @param down between rows, millimetres, 0 or more
   */
  public record Gap(double across, double down) {}

  /**
   * What was asked of a grid; what was not is worked out.
   *
   * @param columns labels across, or null for as many as there is room for
   * @param rows labels down, or null for as many as there is room for
   * @param marginLeft or null for labels in the middle of the paper
   * @param marginTop or null for labels in the middle of the paper
   */
  public record Asked(
      @Nullable Integer columns,
      @Nullable Integer rows,
      @Nullable Double marginLeft,
      @Nullable Double marginTop) {

    /** Nothing in particular. */
    public static final Asked NOTHING = new Asked(null, null, null, null);
  }

  /**
   * Lays the labels out.
   *
   * @throws IllegalArgumentException if they do not fit on the paper; the message says how many do
   */
  public static LabelGrid of(Size paper, Size label, Gap gap, Asked asked) {
    Along across =
        Along.of(
            new Words("column", "columns", "wide", "left"),
            new Lengths(paper.width(), label.width(), gap.across()),
            asked.columns(),
            asked.marginLeft());
    Along down =
        Along.of(
            new Words("row", "rows", "high", "top"),
            new Lengths(paper.height(), label.height(), gap.down()),
            asked.rows(),
            asked.marginTop());
    return new LabelGrid(
        paper, label, across.count(), down.count(), across.margin(), down.margin(), gap);
  }

  /** How many labels a sheet holds. */
  public int perSheet() {
    return columns * rows;
  }

  /** How many sheets so many labels take when {@code skipped} places of the first are used up. */
  public int sheets(int labels, int skipped) {
    return Math.floorDiv(labels + skipped + perSheet() - 1, perSheet());
  }

  /** The left edge of the label in that place of a sheet, counted by rows from 0. */
  public double x(int place) {
    return marginLeft + (place % columns) * (label.width() + gap.across());
  }

  /** The upper edge of the label in that place of a sheet, counted by rows from 0. */
  public double y(int place) {
    return marginTop + Math.floorDiv(place, columns) * (label.height() + gap.down());
  }

  private record Words(String one, String several, String extent, String edge) {}

  private record Lengths(double paper, double label, double gap) {

    double taken(int count) {
      return count * label + (count - 1) * gap;
    }

    int room(double length) {
      return (int) Math.floor((length + gap + SLACK) / (label + gap));
    }
  }

  /** One direction. */
  private record Along(int count, double margin) {

    static Along of(
        Words words, Lengths lengths, @Nullable Integer asked, @Nullable Double margin) {
      double from = margin == null ? 0 : margin;
      int most = lengths.room(lengths.paper() - from);
      if (asked != null && asked < 1) {
        throw new IllegalArgumentException(
            asked + " " + words.several() + " hold no label; " + fitting(most));
      }
      int count = asked == null ? usual(lengths, margin, most) : asked;
      if (count < 1 || most < 1 || count > most) {
        throw new IllegalArgumentException(refusal(words, lengths, Math.max(1, count), from, most));
      }
      return new Along(count, margin == null ? (lengths.paper() - lengths.taken(count)) / 2 : from);
    }

    /** What keeps clear of the edges that a printer leaves white, if anything does. */
    private static int usual(Lengths lengths, @Nullable Double margin, int most) {
      if (margin != null) {
        return most;
      }
      int clear = lengths.room(lengths.paper() - 2 * UNPRINTED);
      return clear < 1 ? most : clear;
    }

    private static String refusal(Words words, Lengths lengths, int count, double from, int most) {
      String between =
          lengths.gap() > 0 && count > 1
              ? " with " + Millimetres.text(lengths.gap()) + " mm between them"
              : "";
      String after =
          from > 0 ? " and the " + words.edge() + " margin " + Millimetres.text(from) : "";
      return (count == 1 ? "1 " + words.one() : count + " " + words.several())
          + " of "
          + Millimetres.text(lengths.label())
          + " mm"
          + between
          + (count == 1 ? " takes " : " take ")
          + Millimetres.text(lengths.taken(count))
          + " mm"
          + after
          + ", and the paper is "
          + Millimetres.text(lengths.paper())
          + " mm "
          + words.extent()
          + "; "
          + fitting(most);
    }

    private static String fitting(int most) {
      return most < 1 ? "none fits" : most == 1 ? "1 fits" : most + " fit";
    }
  }
}
