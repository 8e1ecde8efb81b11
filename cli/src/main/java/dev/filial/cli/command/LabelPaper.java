package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.cli.label.LabelGrid;
import dev.filial.cli.label.LabelSheets;
import dev.filial.cli.label.LabelStyle;
import dev.filial.cli.label.Size;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;

/** How labels lie on the paper. */
final class LabelPaper {

  private final Supplier<Optional<Size>> size;
  private final Supplier<Optional<Size>> paper;
  private final Supplier<Optional<Integer>> columns;
  private final Supplier<Optional<Integer>> rows;
  private final Supplier<Optional<Double>> left;
  private final Supplier<Optional<Double>> top;
  private final Supplier<Optional<Double>> across;
  private final Supplier<Optional<Double>> down;
  private final Supplier<Optional<Integer>> skip;
  private final BooleanSupplier cutMarks;
  private final BooleanSupplier noCutMarks;

  /** Adds the options. */
  LabelPaper(Words words) {
    size =
        words.option(
            "--size",
            "WxH",
            "Width and height of a label, or of one side of a tag, in millimetres; otherwise "
                + words(LabelStyle.PACKETS)
                + " for packets and "
                + words(LabelStyle.TAGS)
                + " for tags.",
            PaperReadings.SIZE);
    paper =
        words.option(
            "--paper",
            "SHEET",
            "a4, a5, letter, or width and height in millimetres; otherwise a4.",
            PaperReadings.SHEET);
    columns =
        words.option(
            "--columns", "N", "Labels across; otherwise as many as fit.", Reading.WHOLE_NUMBER);
    rows =
        words.option("--rows", "N", "Labels down; otherwise as many as fit.", Reading.WHOLE_NUMBER);
    left =
        words.option(
            "--margin-left",
            "MM",
            "From the edge of the paper to the first column; otherwise the labels stand in the"
                + " middle.",
            PaperReadings.LENGTH);
    top = words.option("--margin-top", "MM", "The same to the first row.", PaperReadings.LENGTH);
    across =
        words.option(
            "--gap-across", "MM", "Between columns; otherwise none.", PaperReadings.LENGTH);
    down = words.option("--gap-down", "MM", "Between rows; otherwise none.", PaperReadings.LENGTH);
    skip =
        words.option(
            "--skip",
            "N",
            "Leave the first N places of the first sheet empty: they are used up.",
            Reading.WHOLE_NUMBER);
    cutMarks =
        words.flag(
            "--cut-marks",
            "Crosses at the corners, to cut along; they are printed anyway unless margins, gaps or"
                + " used places say that the sheet is cut already, or the paper is one label.");
    noCutMarks = words.flag("--no-cut-marks", "None of these crosses.");
  }

  private static String words(LabelStyle style) {
    return style.usual().text();
  }

  /** The order for labels of that sort. */
  LabelSheets.Order order(LabelStyle style, boolean withQr) {
    Size side = size.get().orElse(style.usual());
    Size sheet = paper.get().orElse(Size.A4);
    requireRoomForSides(style, side, sheet);
    LabelGrid grid =
        LabelGrid.of(
            sheet,
            style.onPaper(side),
            new LabelGrid.Gap(across.get().orElse(0.0), down.get().orElse(0.0)),
            new LabelGrid.Asked(
                columns.get().orElse(null),
                rows.get().orElse(null),
                left.get().orElse(null),
                top.get().orElse(null)));
    return new LabelSheets.Order(style, side, grid, skip.get().orElse(0), isToBeCut(grid), withQr);
  }

  /** On paper that takes one side only, it is the two sides of a tag that are in the way. */
  private static void requireRoomForSides(LabelStyle style, Size side, Size sheet) {
    Size whole = style.onPaper(side);
    boolean oneFits = side.width() <= sheet.width() && side.height() <= sheet.height();
    if (style.sides() > 1 && oneFits && whole.height() > sheet.height()) {
      throw Trouble.usage(
          "a tag has two sides, one below the other, and takes "
              + whole.text()
              + "; the paper is "
              + sheet.text(),
          "Print one side alone with --for packets, or name larger paper: --paper "
              + whole.typed());
    }
  }

  /** Paper that comes in labels has its own margins or gaps; on any other nobody sees the edges. */
  private boolean isToBeCut(LabelGrid grid) {
    if (cutMarks.getAsBoolean() && noCutMarks.getAsBoolean()) {
      throw Trouble.usage(
          "--cut-marks and --no-cut-marks cannot both be meant", "Leave one of them out.");
    }
    boolean cutAlready =
        left.get().isPresent()
            || top.get().isPresent()
            || across.get().isPresent()
            || down.get().isPresent()
            || skip.get().isPresent()
            || grid.label().equals(grid.paper());
    return cutMarks.getAsBoolean() || !(noCutMarks.getAsBoolean() || cutAlready);
  }
}
