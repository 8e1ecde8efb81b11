package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.GerminationQuestion.Point;
import dev.filial.core.number.Decimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How seed came up over the days, as SVG: a line for each sowing that goes up at each count. Lines
 * are told apart by their strokes and by the words at their ends; the colour below the stroke is
 * never the only sign.
 *
 * @param lines the sowings, in order
 */
record CurveDrawing(List<Line> lines) {

  /** More lines than these cannot be told apart. */
  static final int MOST = 6;

  /**
   * One sowing.
   *
   * @param mark the words at its end
   * @param counts its counts by day, at least one
   */
  record Line(String mark, List<Point> counts) {
    double last() {
      return counts.get(counts.size() - 1).share();
    }
  }

  private static final double WIDTH = 400;
  private static final double HEIGHT = 252;
  private static final double LEFT = 44;
  private static final double RIGHT = 46;
  private static final double TOP = 26;
  private static final double BOTTOM = 40;
  private static final double LEAST_APART = 13;
  private static final int MOST_TICKS = 7;
  private static final int[] STEPS = {1, 2, 5, 7, 10, 14, 20, 28, 50, 70, 100, 140, 200, 365};
  private static final List<String> STROKES =
      List.of("none", "7 3", "2 3", "10 3 2 3", "14 4", "5 2 1 2 1 2");

  private int days() {
    return Math.max(
        1,
        lines.stream()
            .flatMap(line -> line.counts().stream())
            .mapToInt(Point::day)
            .max()
            .orElse(1));
  }

  private int step() {
    for (int step : STEPS) {
      if (days() <= step * MOST_TICKS) {
        return step;
      }
    }
    return (days() + MOST_TICKS - 1) / MOST_TICKS;
  }

  /** The whole drawing in words. */
  String told() {
    List<String> all = new ArrayList<>();
    for (Line line : lines) {
      List<String> counts = new ArrayList<>();
      for (Point point : line.counts()) {
        counts.add(Decimal.percent(point.share(), 1) + " by day " + point.day());
      }
      all.add(line.mark() + " " + String.join(", ", counts));
    }
    return "How much of the seed had come up by the days it was counted: " + String.join("; ", all);
  }

  /** Writes it. */
  void write(Markup svg) {
    svg.open(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "class",
            "curve",
            "role",
            "img",
            "aria-label",
            told(),
            "viewBox",
            "0 0 " + number(WIDTH) + " " + number(HEIGHT))
        .line();
    axes(svg);
    double[] marks = markHeights();
    for (int i = 0; i < lines.size(); i++) {
      line(svg, i, marks[i]);
    }
    svg.close().line();
  }

  private double x(double day) {
    double end = Math.ceil((double) days() / step()) * step();
    return LEFT + (WIDTH - LEFT - RIGHT) * day / end;
  }

  private static double y(double share) {
    return HEIGHT - BOTTOM - (HEIGHT - TOP - BOTTOM) * share;
  }

  private void axes(Markup svg) {
    text(svg, "per cent of the seed up", "start", 4, 14);
    for (int percent = 0; percent <= 100; percent += 25) {
      double y = y(percent / 100.0);
      svg.empty(
          "path",
          "class",
          percent == 0 ? "axis" : "grid",
          "d",
          "M" + number(LEFT) + " " + number(y) + "H" + number(WIDTH - RIGHT));
      text(svg, String.valueOf(percent), "end", LEFT - 7, y + 4);
    }
    svg.line();
    for (int day = 0; x(day) <= WIDTH - RIGHT + 0.01; day += step()) {
      svg.empty("path", "class", "axis", "d", "M" + number(x(day)) + " " + number(y(0)) + "v4");
      text(svg, String.valueOf(day), "middle", x(day), y(0) + 17);
    }
    text(svg, "days after sowing", "middle", LEFT + (WIDTH - LEFT - RIGHT) / 2, HEIGHT - 7);
    svg.line();
  }

  private void line(Markup svg, int at, double mark) {
    Line line = lines.get(at);
    StringBuilder path = new StringBuilder("M" + number(x(0)) + " " + number(y(0)));
    for (Point point : line.counts()) {
      path.append("H").append(number(x(point.day()))).append("V").append(number(y(point.share())));
    }
    svg.empty(
        "path",
        "class",
        "under",
        "d",
        path.toString(),
        "stroke",
        Palette.COLOURS.get(at % Palette.COLOURS.size()));
    svg.empty(
        "path",
        "class",
        "step",
        "d",
        path.toString(),
        "stroke-dasharray",
        STROKES.get(at % STROKES.size()));
    for (Point point : line.counts()) {
      svg.empty(
          "circle",
          "class",
          "edge",
          "cx",
          number(x(point.day())),
          "cy",
          number(y(point.share())),
          "r",
          "3.5",
          "fill",
          Palette.COLOURS.get(at % Palette.COLOURS.size()));
    }
    double end = x(line.counts().get(line.counts().size() - 1).day());
    svg.element("text", line.mark(), "class", "name", "x", number(end + 8), "y", number(mark + 4))
        .line();
  }

  /** Where the words at the ends stand: beside them, and moved apart where they would meet. */
  private double[] markHeights() {
    List<Integer> upwards = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      upwards.add(i);
    }
    upwards.sort(Comparator.comparing(i -> lines.get(i).last()));
    double[] heights = new double[lines.size()];
    double below = Double.MAX_VALUE;
    for (int i : upwards) {
      heights[i] = Math.min(y(lines.get(i).last()), below - LEAST_APART);
      below = heights[i];
    }
    return heights;
  }

  private static void text(Markup svg, String words, String anchor, double x, double y) {
    svg.element(
        "text", words, "class", "label", "text-anchor", anchor, "x", number(x), "y", number(y));
  }

  private static String number(double value) {
    return PedigreeDrawing.number(value);
  }
}
