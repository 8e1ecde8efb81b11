package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.heredity.Odds;
import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * The family that is to be expected, as a strip: so many seedlings seen from above that each kind
 * has exactly its share of them, or where that would take more than 64, a bar cut by the shares.
 *
 * @param classes what may come up; at least two kinds
 * @param seedlings how many seedlings are drawn of each kind; empty for a bar
 */
record FamilyStrip(List<Odds.Share> classes, List<Integer> seedlings) {

  private static final int MOST = 64;
  private static final int ROW = 16;
  private static final double CELL = 24;
  private static final double WIDTH = ROW * CELL;
  private static final double BAR = 26;
  private static final int LEAVES = 8;

  /** As many seedlings as make whole numbers of each kind, at least a row where that goes. */
  static FamilyStrip of(List<Odds.Share> classes, boolean exact) {
    BigInteger common = BigInteger.ONE;
    for (Odds.Share one : classes) {
      BigInteger denominator = one.chance().denominator();
      common = common.divide(common.gcd(denominator)).multiply(denominator);
    }
    if (!exact || common.compareTo(BigInteger.valueOf(MOST)) > 0) {
      return new FamilyStrip(classes, List.of());
    }
    int least = common.intValueExact();
    int all = least <= ROW ? least * (ROW / least) : least;
    List<Integer> seedlings = new ArrayList<>();
    for (Odds.Share one : classes) {
      seedlings.add(one.chance().times(Fraction.of(all, 1)).numerator().intValueExact());
    }
    return new FamilyStrip(classes, List.copyOf(seedlings));
  }

  /** How many seedlings are drawn; 0 for a bar. */
  int size() {
    return seedlings.stream().mapToInt(Integer::intValue).sum();
  }

  /** The whole strip in words. */
  String told() {
    List<String> parts = new ArrayList<>();
    for (int kind = 0; kind < classes.size(); kind++) {
      String states = String.join(", ", classes.get(kind).states());
      String much =
          seedlings.isEmpty()
              ? ChanceWords.percent(classes.get(kind).chance())
              : String.valueOf(seedlings.get(kind));
      parts.add(KindMarks.letter(kind) + " " + much + " " + states);
    }
    return (seedlings.isEmpty()
            ? "A bar cut by what is expected: "
            : "Of " + size() + " seedlings there are expected: ")
        + String.join("; ", parts);
  }

  /**
   * Writes it.
   *
   * @param definesRosette whether it is the first on the page, and brings what the others use too
   */
  void write(Markup html, boolean definesRosette) {
    int rows = Math.max(1, (size() + ROW - 1) / ROW);
    double width = seedlings.isEmpty() ? WIDTH : Math.min(size(), ROW) * CELL;
    double height = seedlings.isEmpty() ? BAR + 18 : rows * CELL;
    html.open(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "class",
            "strip",
            "role",
            "img",
            "aria-label",
            told(),
            "width",
            number(width),
            "height",
            number(height),
            "viewBox",
            "0 0 " + number(width) + " " + number(height))
        .line();
    if (seedlings.isEmpty()) {
      bar(html);
    } else {
      if (definesRosette) {
        html.open("defs").empty("path", "id", "fs-rosette", "d", rosette()).close().line();
      }
      int at = 0;
      for (int kind = 0; kind < classes.size(); kind++) {
        for (int i = 0; i < seedlings.get(kind); i++) {
          seedling(html, kind, at++);
        }
      }
    }
    html.close().line();
  }

  private static void seedling(Markup html, int kind, int at) {
    int column = at % ROW;
    int row = at / ROW;
    String x = number(column * CELL + CELL / 2);
    String y = number(row * CELL + CELL / 2);
    html.open("g", "class", "seedling")
        .empty(
            "use",
            "href",
            "#fs-rosette",
            "class",
            "edge",
            "x",
            x,
            "y",
            y,
            "fill",
            KindMarks.colour(kind))
        .empty("circle", "class", "heart", "cx", x, "cy", y, "r", "6")
        .element(
            "text",
            KindMarks.letter(kind),
            "class",
            "mark",
            "x",
            x,
            "y",
            number(row * CELL + CELL / 2 + 3.2))
        .close()
        .line();
  }

  private void bar(Markup html) {
    double x = 0;
    for (int kind = 0; kind < classes.size(); kind++) {
      double share = classes.get(kind).chance().toDouble() * WIDTH;
      html.empty(
          "rect",
          "class",
          "edge part",
          "x",
          number(x),
          "y",
          "1",
          "width",
          number(share),
          "height",
          number(BAR - 2),
          "fill",
          KindMarks.colour(kind));
      if (share >= 9) {
        html.element(
            "text",
            KindMarks.letter(kind),
            "class",
            "under",
            "x",
            number(x + share / 2),
            "y",
            number(BAR + 13));
      }
      html.line();
      x += share;
    }
  }

  /** A rosette seen from above, around its middle. */
  private static String rosette() {
    StringBuilder path = new StringBuilder("M" + point(0, 7.4));
    for (int leaf = 0; leaf < LEAVES; leaf++) {
      path.append("Q")
          .append(point(leaf + 0.12, 10.6))
          .append(" ")
          .append(point(leaf + 0.5, 11.2))
          .append("Q")
          .append(point(leaf + 0.88, 10.6))
          .append(" ")
          .append(point(leaf + 1, 7.4));
    }
    return path.append("Z").toString();
  }

  private static String point(double leaf, double radius) {
    double angle = 2 * Math.PI * leaf / LEAVES;
    return number(radius * Math.sin(angle)) + " " + number(-radius * Math.cos(angle));
  }

  private static String number(double value) {
    return PedigreeDrawing.number(value);
  }
}
