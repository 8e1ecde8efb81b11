package dev.filial.cli.label;

import dev.filial.cli.paper.FontWidths;
import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.ItalicNames;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Sheets of labels as one HTML file that needs nothing else: a page for each sheet, drawn in
 * millimetres, which a browser prints in the exact size.
 */
public final class LabelSheets {

  /** Below this a code is not read by everybody; millimetres, common practice, no source. */
  private static final double SMALL = 2;

  private static final double HAIRLINE = 0.1;
  private static final double MARK = 1.5;

  private final LabelGrid grid;
  private final LabelStyle style;
  private final Size side;
  private final Panel panel;
  private final List<FittedLabel> labels;
  private final int skipped;
  private final boolean cutMarks;
  private final FontWidths.Weights fonts;

  private LabelSheets(
      Order order, Panel panel, List<FittedLabel> labels, FontWidths.Weights fonts) {
    this.grid = order.grid();
    this.style = order.style();
    this.side = order.side();
    this.skipped = order.skipped();
    this.cutMarks = order.cutMarks();
    this.panel = panel;
    this.labels = List.copyOf(labels);
    this.fonts = fonts;
  }

  /**
   * What is printed.
   *
   * @param style the sort of label
   * @param side the size of one side of it
   * @param grid where they lie
   * @param skipped places of the first sheet that are used up, 0 or more
   * @param cutMarks whether crosses at the corners show where to cut
   * @param withQr whether each bears a QR code
   */
  public record Order(
      LabelStyle style, Size side, LabelGrid grid, int skipped, boolean cutMarks, boolean withQr) {

    /**
     * Checks that a label is left on the first sheet, and that a tag lies on its side.
     *
     * @throws IllegalArgumentException if one of these is not so
     */
    public Order {
      if (style == LabelStyle.TAGS && side.width() < side.height()) {
        throw new IllegalArgumentException(
            "a tag of "
                + side.text()
                + " would stand upright; it is printed lying on its side, so write the longer side"
                + " first: "
                + Millimetres.text(side.height())
                + "x"
                + Millimetres.text(side.width()));
      }
      if (skipped < 0 || skipped >= grid.perSheet()) {
        throw new IllegalArgumentException(
            skipped
                + " places cannot be skipped: a sheet has "
                + grid.perSheet()
                + ", "
                + grid.columns()
                + " across and "
                + grid.rows()
                + " down");
      }
    }
  }

  /**
   * How one label came out.
   *
   * @param code what it is for
   * @param codeHeight how high the code's letters and digits are, millimetres, to a tenth
   * @param lines the other lines, front first
   * @param qr what its QR code says; empty for none
   * @param leftOut what there was no room for
   */
  public record Printed(
      String code, double codeHeight, List<String> lines, String qr, List<String> leftOut) {

    /** Copies the lists. */
    public Printed {
      lines = List.copyOf(lines);
      leftOut = List.copyOf(leftOut);
    }
  }

  /**
   * Lays the labels out.
   *
   * @throws IllegalArgumentException if a code or a QR code cannot be had on labels of this size
   */
  public static LabelSheets of(Order order, List<TagQuestion.Label> labels) {
    FontWidths.Weights fonts = FontWidths.Weights.read();
    Panel panel = Panel.of(order.side(), order.style());
    LabelFitter fitter = new LabelFitter(panel, order.style().sides(), order.withQr(), fonts);
    return new LabelSheets(order, panel, fitter.fitAll(labels), fonts);
  }

  /** How many sheets there are. */
  public int sheets() {
    return grid.sheets(labels.size(), skipped);
  }

  /** How each label came out. */
  public List<Printed> printed() {
    return labels.stream()
        .map(
            label ->
                new Printed(
                    label.code(),
                    Math.floor(label.capHeight() * 10) / 10,
                    label.text().lines(),
                    label.qr() == null ? "" : label.label().machineReadable(),
                    label.leftOut()))
        .toList();
  }

  /** The codes that came out so small that not everybody reads them. */
  public List<String> small() {
    return labels.stream()
        .filter(label -> label.capHeight() < SMALL)
        .map(FittedLabel::code)
        .toList();
  }

  /** The codes that came out so small on the end that is buried, and there alone. */
  public List<String> smallWhenBuried() {
    return labels.stream()
        .filter(label -> label.capHeight() >= SMALL && label.smallestCode() < SMALL)
        .map(FittedLabel::code)
        .toList();
  }

  /** Writes the file: HTML that is well-formed XML too. */
  public void write(Appendable out) throws IOException {
    String width = Millimetres.text(grid.paper().width());
    String height = Millimetres.text(grid.paper().height());
    out.append(
            "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">\n<head>\n")
        .append("<meta charset=\"utf-8\"/>\n<title>Labels</title>\n<style>\n")
        .append("@page { size: " + width + "mm " + height + "mm; margin: 0 }\n")
        .append("html, body { margin: 0; padding: 0 }\n")
        .append(".sheet { display: block; width: " + width + "mm; height: " + height + "mm;")
        .append(" overflow: hidden; break-after: page; break-inside: avoid }\n")
        .append(".sheet:last-child { break-after: auto }\n")
        .append("svg { display: block }\n")
        .append("text { font-family: \"DejaVu Sans\", Verdana, sans-serif; white-space: pre }\n")
        .append(".code { font-weight: bold }\n")
        .append(".taxon { font-style: italic }\n")
        .append(".cut, .fold { fill: none; stroke: #000; stroke-width: " + HAIRLINE + " }\n")
        .append(".fold { stroke: #777; stroke-dasharray: 1 1 }\n")
        .append(".how { font: 16px sans-serif; margin: 1em; max-width: 40em }\n")
        .append("@media screen { .sheet { margin: 1em; outline: 1px solid #999 } }\n")
        .append("@media print { .how { display: none } }\n</style>\n</head>\n<body>\n")
        .append("<p class=\"how\">Print this page at 100 % (\"actual size\"), without margins and")
        .append(" without headers, on paper of " + grid.paper().text() + ". If one sheet measures")
        .append(" right, all do.</p>\n");
    for (int sheet = 0; sheet < sheets(); sheet++) {
      sheet(out, sheet);
    }
    out.append("</body>\n</html>\n");
  }

  private void sheet(Appendable out, int sheet) throws IOException {
    String width = Millimetres.text(grid.paper().width());
    String height = Millimetres.text(grid.paper().height());
    out.append("<div class=\"sheet\"><svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
        .append(width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 ")
        .append(width + " " + height + "\">\n");
    int per = grid.perSheet();
    List<Integer> places = new ArrayList<>();
    for (int place = sheet == 0 ? skipped : 0; place < per; place++) {
      int index = sheet * per + place - skipped;
      if (index < labels.size()) {
        places.add(place);
        label(out, labels.get(index), grid.x(place), grid.y(place));
      }
    }
    if (cutMarks) {
      cutMarks(out, places);
    }
    out.append("</svg></div>\n");
  }

  private void label(Appendable out, FittedLabel label, double x, double y) throws IOException {
    out.append("<g transform=\"translate(" + Millimetres.text(x) + " " + Millimetres.text(y))
        .append(")\">\n");
    side(out, label, label.text().front(), 0);
    if (style.sides() == 2) {
      side(out, label, label.text().back(), side.height());
      line(out, "fold", 0, side.height(), side.width(), side.height());
      // Where the soil begins, at both edges.
      line(out, "fold", panel.buried(), 0, panel.buried(), MARK);
      line(
          out, "fold", panel.buried(), 2 * side.height() - MARK, panel.buried(), 2 * side.height());
    }
    out.append("</g>\n");
  }

  private void side(Appendable out, FittedLabel label, List<String> lines, double top)
      throws IOException {
    double cap = label.capHeight();
    double size = label.fontSize();
    double gap = LabelFitter.gapBelow(cap);
    double below =
        lines.isEmpty()
            ? 0
            : gap
                + size
                    * (FontWidths.CAP_HEIGHT
                        + FontWidths.DESCENT
                        + (lines.size() - 1) * LabelFitter.PITCH);
    double above = label.fromTop() ? panel.padding() : (side.height() - cap - below) / 2;
    double y = top + above + cap;
    ItalicNames names = ItalicNames.of(label.label().taxa()).alsoEpithetsAlone();
    code(out, label.code(), panel.padding(), y, cap);
    y += gap + FontWidths.CAP_HEIGHT * size;
    for (String line : lines) {
      if (!line.isEmpty()) {
        String words = marked(names, line);
        text(out, "line", words, new Place(panel.padding(), y, size), fonts.regular().width(line));
      }
      y += LabelFitter.PITCH * size;
    }
    if (label.buriedCapHeight() > 0) {
      double again = label.buriedCapHeight();
      code(
          out,
          label.code(),
          panel.buried() + panel.padding(),
          top + (side.height() + again) / 2,
          again);
    }
    FittedLabel.QrPlace qr = label.qr();
    if (qr != null && top == 0) {
      out.append("<path class=\"qr\" transform=\"translate(")
          .append(Millimetres.text(qr.left()) + " " + Millimetres.text(qr.top()))
          .append(") scale(" + Millimetres.text(qr.module()) + ")\" d=\"")
          .append(qr.code().path() + "\"/>\n");
    }
  }

  private void code(Appendable out, String code, double x, double baseline, double cap)
      throws IOException {
    double size = cap / FontWidths.CAP_HEIGHT;
    text(out, "code", Markup.escaped(code), new Place(x, baseline, size), fonts.bold().width(code));
  }

  /** A line as markup, the scientific names in italics: they are as wide as upright letters. */
  private static String marked(ItalicNames names, String line) {
    Markup words = new Markup();
    for (ItalicNames.Run run : names.runs(line)) {
      if (run.italic()) {
        words.element("tspan", run.text(), "class", "taxon");
      } else {
        words.text(run.text());
      }
    }
    return words.written();
  }

  private record Place(double x, double baseline, double fontSize) {}

  /** A text that takes the width reckoned for it, whatever font the browser has. */
  private static void text(Appendable out, String kind, String markup, Place place, double width)
      throws IOException {
    out.append("<text class=\"" + kind + "\" xml:space=\"preserve\" x=\"")
        .append(Millimetres.text(place.x()))
        .append("\" y=\"" + Millimetres.text(place.baseline()))
        .append("\" font-size=\"" + Millimetres.text(place.fontSize()))
        .append("\" textLength=\"" + Millimetres.text(width * place.fontSize()))
        .append("\" lengthAdjust=\"spacingAndGlyphs\">")
        .append(markup)
        .append("</text>\n");
  }

  private static void line(
      Appendable out, String kind, double fromX, double fromY, double toX, double toY)
      throws IOException {
    out.append("<path class=\"" + kind + "\" d=\"M" + Millimetres.text(fromX) + " ")
        .append(Millimetres.text(fromY) + "L" + Millimetres.text(toX) + " ")
        .append(Millimetres.text(toY) + "\"/>\n");
  }

  /** A cross at each corner of each label, on its edges; neighbours without a gap share it. */
  private void cutMarks(Appendable out, List<Integer> places) throws IOException {
    Set<String> crosses = new LinkedHashSet<>();
    for (int place : places) {
      for (double x : new double[] {grid.x(place), grid.x(place) + grid.label().width()}) {
        for (double y : new double[] {grid.y(place), grid.y(place) + grid.label().height()}) {
          String arm = Millimetres.text(2 * MARK);
          crosses.add(
              "M"
                  + Millimetres.text(x - MARK)
                  + " "
                  + Millimetres.text(y)
                  + "h"
                  + arm
                  + "M"
                  + Millimetres.text(x)
                  + " "
                  + Millimetres.text(y - MARK)
                  + "v"
                  + arm);
        }
      }
    }
    out.append("<path class=\"cut\" d=\"" + String.join("", crosses) + "\"/>\n");
  }
}
