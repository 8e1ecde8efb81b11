package dev.filial.cli.label;

import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.LabelFacts;
import dev.filial.core.name.LabelRoom;
import dev.filial.core.name.LabelText;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays out labels of one size: the code as large as there is room for, the rest below it in the
 * largest letters in which nothing has to be left out.
 */
final class LabelFitter {

  /** What is read at arm's length, millimetres; common practice, no source. */
  static final double ARMS_LENGTH = 4;

  /** Below this a code is read with a lens only, and such a label is refused. */
  private static final double SMALLEST_CODE = 1;

  private static final double LARGEST_CODE = 8;

  /** How much of the height the code may take, unless that is less than arm's length asks for. */
  private static final double CODE_SHARE = 0.42;

  private static final double LARGEST_FONT = 3.6;
  private static final double SMALLEST_FONT = 1.8;
  private static final double FONT_STEP = 0.1;

  /** From one line to the next, in parts of the font size. */
  static final double PITCH = 1.2;

  private final Panel panel;
  private final int sides;
  private final boolean withQr;
  private final FontWidths.Weights fonts;

  LabelFitter(Panel panel, int sides, boolean withQr, FontWidths.Weights fonts) {
    this.panel = panel;
    this.sides = sides;
    this.withQr = withQr;
    this.fonts = fonts;
  }

  /**
   * The label of one thing.
   *
   * @throws IllegalArgumentException if not even the code has room, or the QR code would be too
   *     fine to print
   */
  FittedLabel fit(TagQuestion.Label label) {
    String code = label.facts().code();
    double cap =
        Math.min(
            widthFor(code, panel.text()),
            Math.max(CODE_SHARE * panel.height(), Math.min(ARMS_LENGTH, panel.height())));
    if (cap < SMALLEST_CODE) {
      throw new IllegalArgumentException(
          "on a label of "
              + panel.side().text()
              + " the code "
              + code
              + " would be "
              + Millimetres.text(Math.max(0, cap))
              + " mm high; a code is printed 1 mm high or more. Take a larger label"
              + (withQr ? ", or leave the QR code out." : "."));
    }
    double buriedCap =
        panel.buriedText() > 0
            ? Math.min(ARMS_LENGTH, Math.min(panel.height(), widthFor(code, panel.buriedText())))
            : 0;
    QrCode qr = withQr ? qr(label) : null;
    return withText(label, cap, buriedCap, qr);
  }

  /** How high letters can be for the code to be no wider than this. */
  private double widthFor(String code, double width) {
    return Math.min(
        LARGEST_CODE, FontWidths.CAP_HEIGHT * width / Math.max(1, fonts.bold().width(code)));
  }

  private QrCode qr(TagQuestion.Label label) {
    if (label.machineReadable().isEmpty()) {
      throw new IllegalArgumentException(
          "a QR code carries the grower's mark, and this register has none");
    }
    QrCode qr = QrCode.of(label.machineReadable());
    double module = panel.qr() / qr.side();
    if (module < QrCode.SMALLEST_MODULE) {
      throw new IllegalArgumentException(
          "the QR code of "
              + label.facts().code()
              + " takes "
              + Millimetres.inTenths(Math.ceil(10 * QrCode.SMALLEST_MODULE * qr.side()) / 10)
              + " mm with its white border, at "
              + Millimetres.text(QrCode.SMALLEST_MODULE)
              + " mm a module, the finest that scans; this label has room for "
              + Millimetres.inTenths(Math.floor(10 * panel.qr()) / 10)
              + " mm. Take a larger label, or leave the QR code out.");
    }
    return qr;
  }

  private FittedLabel withText(
      TagQuestion.Label label, double cap, double buriedCap, @Nullable QrCode qr) {
    double room = panel.height() - cap - gapBelow(cap);
    @Nullable FittedLabel fitted = null;
    int steps = (int) Math.round((LARGEST_FONT - SMALLEST_FONT) / FONT_STEP);
    for (int i = 0; i <= steps; i++) {
      double size = LARGEST_FONT - i * FONT_STEP;
      int lines = lines(room, size);
      if (lines < 1) {
        continue;
      }
      LabelText text =
          LabelRoom.of(panel.text(), lines, sides, fonts.regular().at(size))
              .withCodeApart()
              .fit(label.facts());
      List<String> leftOut = leftOut(label.facts(), text);
      fitted =
          new FittedLabel(label, label.facts().code(), cap, buriedCap, size, text, leftOut, qr);
      if (leftOut.isEmpty()) {
        return fitted;
      }
    }
    return fitted == null ? codeOnly(label, cap, buriedCap, qr) : fitted;
  }

  private FittedLabel codeOnly(
      TagQuestion.Label label, double cap, double buriedCap, @Nullable QrCode qr) {
    LabelFacts facts = label.facts();
    List<String> leftOut = new ArrayList<>();
    if (!facts.parentsOrTaxon().isEmpty()) {
      leftOut.add(facts.parentsOrTaxon().get(0));
    }
    // A line too short for anything names everything it has no room for.
    double none = 1e-6;
    leftOut.addAll(
        LabelRoom.of(none, 1, 1, fonts.regular().at(1)).withCodeApart().fit(facts).leftOut());
    LabelText nothing = new LabelText(List.of(), List.of(), facts.code(), leftOut);
    return new FittedLabel(label, facts.code(), cap, buriedCap, 0, nothing, leftOut, qr);
  }

  /** White between the code and the line below it. */
  static double gapBelow(double cap) {
    return Math.max(0.7, 0.25 * cap);
  }

  /** How many lines have room. */
  private static int lines(double room, double size) {
    double first = FontWidths.CAP_HEIGHT + FontWidths.DESCENT;
    return Math.min(20, (int) Math.floor((room / size - first) / PITCH + 1 + 1e-9));
  }

  /** What was left out, and the parents or the taxon where even their shortest form was cut. */
  private static List<String> leftOut(LabelFacts facts, LabelText text) {
    List<String> ways = facts.parentsOrTaxon();
    if (ways.isEmpty()) {
      return text.leftOut();
    }
    String ellipsis = "…";
    boolean shown =
        text.lines().stream().anyMatch(line -> ways.stream().anyMatch(way -> begins(line, way)));
    boolean mayBeCut = ways.stream().noneMatch(way -> way.contains(ellipsis));
    boolean cut = !shown || (mayBeCut && String.join("", text.lines()).contains(ellipsis));
    if (!cut) {
      return text.leftOut();
    }
    List<String> leftOut = new ArrayList<>();
    leftOut.add((shown ? "the end of " : "") + ways.get(ways.size() - 1));
    leftOut.addAll(text.leftOut());
    return leftOut;
  }

  private static boolean begins(String line, String way) {
    return way.isEmpty() || line.contains(Character.toString(way.codePointAt(0)));
  }
}
