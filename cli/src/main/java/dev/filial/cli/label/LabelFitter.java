package dev.filial.cli.label;

import dev.filial.cli.paper.FontWidths;
import dev.filial.core.answer.TagQuestion;
import dev.filial.core.name.LabelRoom;
import dev.filial.core.name.LabelText;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Lays out labels of one size: the code as large as there is room for, the rest below it in the
 * largest letters in which nothing has to be left out, or else in which least is.
 */
final class LabelFitter {

  /** What is read at arm's length, millimetres; common practice, no source. */
  static final double ARMS_LENGTH = 4;

  /** Below this a code is read with a lens only, and such a label is refused. */
  private static final double SMALLEST_CODE = 1;

  private static final double LARGEST_CODE = 8;

  /** Codes that differ by less are printed in one size. */
  private static final double NEARLY = 0.8;

  /** How much of the height the code may take, unless that is less than arm's length asks for. */
  private static final double CODE_SHARE = 0.42;

  /** How large the other lines are at most beside the code's capitals. */
  private static final double LINE_TO_CODE = 0.8;

  /** A module, millimetres, that a telephone reads easily; common practice, no source. */
  private static final double EASY_MODULE = 0.4;

  private static final double LARGEST_FONT = 4.5;

  /**
   * Where something has to be left out, letters are no larger than this; a common size of print.
   */
  private static final double READABLE_FONT = 2.4;

  private static final double SMALLEST_FONT = 1.8;
  private static final double FONT_STEP = 0.1;

  /** From one line to the next, in parts of the font size. */
  static final double PITCH = 1.2;

  private final Panel panel;
  private final int sides;
  private final boolean withQr;
  private final FontWidths.Weights fonts;
  private final double mostCode;
  private final double mostBuried;

  private LabelFitter(
      Panel panel,
      int sides,
      boolean withQr,
      FontWidths.Weights fonts,
      double mostCode,
      double mostBuried) {
    this.panel = panel;
    this.sides = sides;
    this.withQr = withQr;
    this.fonts = fonts;
    this.mostCode = mostCode;
    this.mostBuried = mostBuried;
  }

  LabelFitter(Panel panel, int sides, boolean withQr, FontWidths.Weights fonts) {
    this(panel, sides, withQr, fonts, LARGEST_CODE, ARMS_LENGTH);
  }

  /**
   * All these labels, their codes in one size where they come out nearly alike, so that a sheet
   * looks like one; a code much longer than the others is smaller by itself.
   *
   * @throws IllegalArgumentException if not even a code has room, or a QR code would be too fine to
   *     print
   */
  List<FittedLabel> fitAll(List<TagQuestion.Label> labels) {
    List<FittedLabel> each = labels.stream().map(this::fit).toList();
    double code = common(each.stream().mapToDouble(FittedLabel::capHeight).toArray());
    double buried = common(each.stream().mapToDouble(FittedLabel::buriedCapHeight).toArray());
    LabelFitter alike = new LabelFitter(panel, sides, withQr, fonts, code, buried);
    return labels.stream().map(alike::fit).toList();
  }

  /** The largest height that may stay: the least of those that are nearly the largest. */
  private static double common(double[] heights) {
    double most = Arrays.stream(heights).max().orElse(0);
    return Arrays.stream(heights).filter(height -> height >= NEARLY * most).min().orElse(most);
  }

  /**
   * How code, lines and QR code share the front.
   *
   * @param cap the height of the code's letters
   * @param lineWidth the width of the other lines
   * @param qr the QR code and its place
   * @param fromTop whether the code stands at the upper edge
   */
  private record Shares(
      double cap, double lineWidth, FittedLabel.@Nullable QrPlace qr, boolean fromTop) {}

  /**
   * The label of one thing.
   *
   * @throws IllegalArgumentException if not even the code has room, or the QR code would be too
   *     fine to print
   */
  FittedLabel fit(TagQuestion.Label label) {
    String code = label.facts().code();
    Shares shares = shares(label, code);
    boolean again = sides == 2;
    double buriedCap =
        again
            ? Math.min(mostBuried, Math.min(panel.height(), widthFor(code, panel.buriedText())))
            : 0;
    double smallest = again ? Math.min(shares.cap(), buriedCap) : shares.cap();
    if (smallest < SMALLEST_CODE) {
      throw new IllegalArgumentException(
          "on a label of "
              + panel.side().text()
              + " the code "
              + code
              + " would be "
              + Millimetres.inTenths(Math.max(0, smallest))
              + " mm high"
              + (smallest < shares.cap() ? " on the end that is buried" : "")
              + "; a code is printed 1 mm high or more. Take a larger label"
              + (withQr ? ", or leave the QR code out." : "."));
    }
    return withText(label, shares, buriedCap);
  }

  private Shares shares(TagQuestion.Label label, String code) {
    double widest = Math.min(mostCode, cap(code, panel.widest()));
    if (!withQr) {
      return new Shares(widest, panel.widest(), null, false);
    }
    QrCode qr = qr(label);
    double below = Math.min(panel.largestQr(), panel.side().height() - panel.padding() - widest);
    double besideQr = Math.min(mostCode, cap(code, panel.beside(panel.qr())));
    if (sides == 1 && besideQr < widest && below >= EASY_MODULE * qr.side()) {
      // The code across the whole label, the QR code under its end.
      double left = panel.buried() - below;
      double top = panel.side().height() - below;
      return new Shares(
          widest, panel.beside(below), new FittedLabel.QrPlace(qr, left, top, below), true);
    }
    double top = (panel.side().height() - panel.qr()) / 2;
    FittedLabel.QrPlace place =
        new FittedLabel.QrPlace(qr, panel.buried() - panel.qr(), top, panel.qr());
    if (place.module() < QrCode.SMALLEST_MODULE) {
      throw new IllegalArgumentException(
          "the QR code of "
              + code
              + " takes "
              + Millimetres.inTenths(Math.ceil(10 * QrCode.SMALLEST_MODULE * qr.side()) / 10)
              + " mm with its white border, at "
              + Millimetres.text(QrCode.SMALLEST_MODULE)
              + " mm a module, the finest that is printed; this label has room for "
              + Millimetres.inTenths(Math.floor(10 * panel.qr()) / 10)
              + " mm. Take a larger label, or leave the QR code out.");
    }
    return new Shares(besideQr, panel.beside(panel.qr()), place, false);
  }

  private double cap(String code, double width) {
    return Math.min(
        widthFor(code, width),
        Math.max(CODE_SHARE * panel.height(), Math.min(ARMS_LENGTH, panel.height())));
  }

  /** How high letters can be for the code to be no wider than this. */
  private double widthFor(String code, double width) {
    return Math.min(
        LARGEST_CODE, FontWidths.CAP_HEIGHT * width / Math.max(1, fonts.bold().width(code)));
  }

  private static QrCode qr(TagQuestion.Label label) {
    if (label.machineReadable().isEmpty()) {
      throw new IllegalArgumentException(
          "a QR code carries the grower's mark, and this register has none");
    }
    return QrCode.of(label.machineReadable());
  }

  private FittedLabel withText(TagQuestion.Label label, Shares shares, double buriedCap) {
    double cap = shares.cap();
    double room = panel.height() - cap - gapBelow(cap);
    double largest = Math.max(SMALLEST_FONT, Math.min(LARGEST_FONT, LINE_TO_CODE * cap));
    @Nullable FittedLabel fitted = null;
    List<FittedLabel> tried = new ArrayList<>();
    for (int i = 0; largest - i * FONT_STEP >= SMALLEST_FONT - 1e-9; i++) {
      double size = largest - i * FONT_STEP;
      int lines = lines(room, size);
      if (lines < 1 || shares.lineWidth() <= 0) {
        continue;
      }
      LabelText text =
          LabelRoom.of(shares.lineWidth(), lines, sides, fonts.regular().at(size))
              .withCodeApart()
              .fit(label.facts());
      List<String> leftOut = text.missing();
      FittedLabel here = fitted(label, shares, buriedCap, size, text, leftOut);
      if (leftOut.isEmpty()) {
        return here;
      }
      tried.add(here);
      boolean less = fitted == null || leftOut.size() < fitted.leftOut().size();
      if (size <= READABLE_FONT + 1e-9 && less) {
        fitted = here;
      }
    }
    return fitted == null ? codeOnly(label, shares, buriedCap) : largestLike(fitted, tried);
  }

  /**
   * What has no room in small letters either makes the rest no smaller; only what is cut is printed
   * small, to lose less of it.
   */
  private static FittedLabel largestLike(FittedLabel fitted, List<FittedLabel> tried) {
    if (fitted.text().cut() != null) {
      return fitted;
    }
    return tried.stream()
        .filter(one -> one.leftOut().equals(fitted.leftOut()))
        .findFirst()
        .orElse(fitted);
  }

  private static FittedLabel fitted(
      TagQuestion.Label label,
      Shares shares,
      double buriedCap,
      double size,
      LabelText text,
      List<String> leftOut) {
    return new FittedLabel(
        label,
        label.facts().code(),
        shares.cap(),
        buriedCap,
        size,
        text,
        leftOut,
        shares.qr(),
        shares.fromTop());
  }

  private FittedLabel codeOnly(TagQuestion.Label label, Shares shares, double buriedCap) {
    // A line too short for anything names everything it has no room for.
    double none = 1e-6;
    LabelText nothing =
        LabelRoom.of(none, 1, 1, fonts.regular().at(1)).withCodeApart().fit(label.facts());
    return fitted(label, shares, buriedCap, 0, nothing, nothing.missing());
  }

  /** White between the code and the line below it. */
  static double gapBelow(double cap) {
    return Math.max(0.8, 0.3 * cap);
  }

  /** How many lines have room. */
  private static int lines(double room, double size) {
    double first = FontWidths.CAP_HEIGHT + FontWidths.DESCENT;
    return Math.min(20, (int) Math.floor((room / size - first) / PITCH + 1 + 1e-9));
  }
}
