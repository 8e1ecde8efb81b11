package dev.filial.cli.page;

import dev.filial.cli.page.PedigreeLayout.Box;
import dev.filial.cli.page.PedigreeLayout.Label;
import dev.filial.cli.page.PedigreeLayout.Line;
import dev.filial.cli.page.PedigreeLayout.Point;
import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.PlantsBehindQuestion.Parent;
import dev.filial.core.answer.PlantsBehindQuestion.Part;
import dev.filial.core.answer.PlantsBehindQuestion.Plant;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A pedigree as SVG: each plant a box, each parent a line. Colours are never the only sign: taxa
 * also go by letters, and lines by their strokes.
 */
public final class PedigreeDrawing {

  /** The fills, letters and strokes that a reader has to tell apart, on light and on dark. */
  static final class Ink {
    static final String PAPER = "#ffffff";
    static final String BOX = "#faf9f6";
    static final String TEXT = "#1a1a1a";
    static final String SOFT = "#4d4d4d";
    static final String STROKE = "#333333";
    static final String DARK_PAPER = "#16181a";
    static final String DARK_BOX = "#1f2225";
    static final String DARK_TEXT = "#f1efe9";
    static final String DARK_SOFT = "#c3c0b8";
    static final String DARK_STROKE = "#d0cdc6";

    private Ink() {}
  }

  static final double CODE_SIZE = 13;
  static final double WORD_SIZE = 11;
  static final double TITLE_SIZE = 17;
  static final double INSET = 9;
  private static final double BOX_HEIGHT = 68;
  private static final double LEAST = 104;
  private static final double MOST = 250;
  private static final double BAR = 8;
  private static final double MARGIN = 20;
  private static final double LEGEND_LINE = 22;
  private static final double SWATCH = 30;
  private static final double LEGEND_GAP = 18;
  private static final double LEGEND_LEAST = 620;

  private static final String FONTS =
      "system-ui,-apple-system,'Segoe UI',Roboto,'Helvetica Neue',Arial,'DejaVu Sans',sans-serif";

  private final PlantsBehind behind;
  private final Palette palette;
  private final PedigreeLayout layout;
  private final Markup svg;

  private PedigreeDrawing(PlantsBehind behind, Markup svg) {
    this.behind = behind;
    this.palette = new Palette(behind.taxa());
    this.layout = PedigreeLayout.of(behind, this::width, BOX_HEIGHT);
    this.svg = svg;
  }

  /** The drawing as the text of a file. */
  public static String of(PlantsBehind behind) {
    Markup svg = new Markup();
    new PedigreeDrawing(behind, svg).write();
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg.written() + "\n";
  }

  /** Writes the drawing as an element of what {@code into} is writing. */
  static void into(PlantsBehind behind, Markup into) {
    new PedigreeDrawing(behind, into).write();
  }

  /** What a plant's box says, and how: each word a text of its own in the drawing. */
  record Words(String code, String names, String second, String third) {}

  /** The words of a plant's box, cut to what the widest box holds. */
  static Words words(Plant plant, Palette palette) {
    double room = MOST - 2 * INSET;
    String code = plant.numbered() ? plant.name().replace(' ', '\u00A0') : plant.name();
    code = PedigreeLayout.LETTERS.bold().fit(code, CODE_SIZE, room);
    double rest = room - PedigreeLayout.LETTERS.bold().width(code + " ", CODE_SIZE);
    String names = String.join(", ", plant.names());
    names =
        names.isEmpty() || rest < WORD_SIZE * 2
            ? ""
            : PedigreeLayout.LETTERS.regular().fit(names, WORD_SIZE, rest);
    String second = plant.what().isEmpty() ? plant.generation() : plant.what();
    String third = parts(plant, palette, room);
    return new Words(
        code, names, PedigreeLayout.LETTERS.regular().fit(second, WORD_SIZE, room), third);
  }

  /** The letters and shares, as many of them as there is room for. */
  private static String parts(Plant plant, Palette palette, double room) {
    StringBuilder text = new StringBuilder();
    for (Part part : plant.parts()) {
      String next =
          (text.isEmpty() ? "" : " · ")
              + palette.letter(part.taxon())
              + "\u00A0"
              + percent(part.share());
      if (PedigreeLayout.LETTERS.regular().width(text + next + " …", WORD_SIZE) > room) {
        return text.append(" …").toString();
      }
      text.append(next);
    }
    return text.toString();
  }

  /** With one decimal where it has any. */
  static String percent(double share) {
    double hundred = share * 100;
    String text = String.format(Locale.ROOT, "%.1f", hundred);
    if (share > 0 && text.equals("0.0")) {
      return "<0.1\u00A0%";
    }
    return (text.endsWith(".0") ? text.substring(0, text.length() - 2) : text) + "\u00A0%";
  }

  private double width(Plant plant) {
    Words words = words(plant, palette);
    double first =
        PedigreeLayout.LETTERS.bold().width(words.code(), CODE_SIZE)
            + (words.names().isEmpty()
                ? 0
                : PedigreeLayout.LETTERS.bold().width(" ", CODE_SIZE)
                    + PedigreeLayout.LETTERS.regular().width(words.names(), WORD_SIZE));
    double most =
        Math.max(
            first,
            Math.max(
                PedigreeLayout.LETTERS.regular().width(words.second(), WORD_SIZE),
                PedigreeLayout.LETTERS.regular().width(words.third(), WORD_SIZE)));
    return Math.ceil(Math.min(MOST, Math.max(LEAST, most + 2 * INSET)));
  }

  // --- the whole ---

  private void write() {
    double wide = Math.max(layout.width(), LEGEND_LEAST);
    Legend legend = new Legend(wide);
    double top = MARGIN + TITLE_SIZE + 12 + legend.height() + 12;
    double width = wide + 2 * MARGIN;
    double height = top + layout.height() + MARGIN;
    svg.open(
            "svg",
            "xmlns",
            "http://www.w3.org/2000/svg",
            "class",
            "fp",
            "role",
            "img",
            "aria-labelledby",
            "fp-title fp-desc",
            "width",
            number(width),
            "height",
            number(height),
            "viewBox",
            "0 0 " + number(width) + " " + number(height))
        .line()
        .element("title", title(), "id", "fp-title")
        .line()
        .element("desc", description(), "id", "fp-desc")
        .line()
        .element("style", style())
        .line()
        .open("defs")
        .line();
    palette.define(svg);
    svg.close()
        .line()
        .empty("rect", "class", "fp-paper", "width", number(width), "height", number(height))
        .line()
        .element(
            "text",
            PedigreeLayout.LETTERS.bold().fit(title(), TITLE_SIZE, wide),
            "class",
            "fp-head",
            "x",
            number(MARGIN),
            "y",
            number(MARGIN + TITLE_SIZE - 3))
        .line();
    legend.write(MARGIN + TITLE_SIZE + 12);
    svg.open("g", "transform", "translate(" + number(MARGIN) + " " + number(top) + ")").line();
    layout.lines().forEach(this::line);
    layout.lines().forEach(this::label);
    layout.doubts().forEach(doubt -> unknownParent(doubt.middle()));
    layout.boxes().forEach(this::box);
    svg.close().line().close();
  }

  private String title() {
    return "Pedigree of " + behind.name();
  }

  /** The drawing in words, for who does not see it. */
  private String description() {
    Map<String, List<Parent>> parents =
        behind.parents().stream().collect(Collectors.groupingBy(Parent::offspring));
    StringBuilder text = new StringBuilder();
    int plants = behind.plants().size();
    text.append(plants == 1 ? "One plant." : plants + " plants, parents before offspring.");
    for (Plant plant : behind.plants()) {
      text.append(' ').append(told(plant));
      for (Parent parent : parents.getOrDefault(plant.name(), List.of())) {
        text.append("; ").append(told(parent));
      }
      text.append('.');
    }
    for (String note : behind.notes()) {
      text.append(" Note: ").append(note);
    }
    return text.toString();
  }

  private static String told(Plant plant) {
    StringBuilder text = new StringBuilder(plant.name());
    if (!plant.names().isEmpty()) {
      text.append(", called ").append(String.join(", ", plant.names()));
    }
    text.append(": ").append(plant.what().isEmpty() ? "" : plant.what() + ", ");
    text.append(plant.generation());
    if (plant.cut()) {
      text.append(", whose parents are left out");
    }
    return text.toString();
  }

  private static String told(Parent parent) {
    String who = parent.parent() == null ? "unknown" : parent.parent();
    String doubt =
        parent.isCertain()
            ? ""
            : " (" + parent.share().toPercent(1) + ", " + String.join(", ", parent.ways()) + ")";
    return parent.role().text() + " " + who + doubt;
  }

  // --- lines ---

  private static String stroke(Parent parent) {
    if (!parent.isCertain() || parent.parent() == null) {
      return "fp-doubt";
    }
    return switch (parent.role()) {
      case SEED -> "fp-seed";
      case POLLEN -> "fp-pollen";
      case SELFED -> "fp-self";
      case OFFSET, DOUBLED, SAME, REPEATED -> "fp-copy";
    };
  }

  private void line(Line line) {
    String path = path(line.points());
    String stroke = stroke(line.parent());
    svg.open("g", "class", "fp-line")
        .element("title", line.parent().offspring() + ": " + told(line.parent()))
        .empty("path", "class", stroke, "d", path);
    if (stroke.equals("fp-self")) {
      svg.empty("path", "class", "fp-self-in", "d", path);
    }
    svg.close().line();
  }

  private void label(Line line) {
    Label label = line.label();
    if (label == null) {
      return;
    }
    svg.empty(
            "rect",
            "class",
            "fp-paper",
            "x",
            number(label.x()),
            "y",
            number(label.y()),
            "width",
            number(label.width()),
            "height",
            number(label.height()))
        .element(
            "text",
            label.text(),
            "class",
            "fp-label",
            "text-anchor",
            "middle",
            "x",
            number(label.x() + label.width() / 2),
            "y",
            number(label.y() + label.height() - 4))
        .line();
  }

  private static String path(List<Point> points) {
    StringBuilder path = new StringBuilder();
    for (Point point : points) {
      path.append(path.isEmpty() ? "M" : "L")
          .append(number(point.x()))
          .append(' ')
          .append(number(point.y()));
    }
    return path.toString();
  }

  private void unknownParent(Point middle) {
    svg.empty(
            "circle",
            "class",
            "fp-none",
            "cx",
            number(middle.x()),
            "cy",
            number(middle.y()),
            "r",
            number(PedigreeLayout.DOUBT / 2 - 1))
        .element(
            "text",
            "?",
            "class",
            "fp-code",
            "text-anchor",
            "middle",
            "x",
            number(middle.x()),
            "y",
            number(middle.y() + 4.5))
        .line();
  }

  // --- boxes ---

  private void box(Box box) {
    Plant plant = box.plant();
    Words words = words(plant, palette);
    svg.open(
            "g",
            "class",
            "fp-plant",
            "transform",
            "translate(" + number(box.x()) + " " + number(box.y()) + ")")
        .element("title", inFull(plant));
    frame(plant.numbered() ? "fp-box" : "fp-box fp-unnumbered", box, 0, "4");
    if (isAsked(plant)) {
      frame("fp-asked", box, 0, "4");
    }
    if (isCopy(plant)) {
      frame("fp-inner", box, 3, "2");
    }
    double top = (box.height() - BOX_HEIGHT) / 2;
    word(words.code(), "fp-code", INSET, top + 19);
    if (!words.names().isEmpty()) {
      double x = INSET + PedigreeLayout.LETTERS.bold().width(words.code() + " ", CODE_SIZE);
      word(words.names(), "fp-name", x, top + 19);
    }
    word(words.second(), "fp-word", INSET, top + 34);
    bar(plant, INSET, top + 40, box.width() - 2 * INSET);
    word(words.third(), "fp-word", INSET, top + 60);
    if (plant.cut()) {
      svg.empty("path", "class", "fp-doubt", "d", "M-14 " + number(box.height() / 2) + "h14");
    }
    svg.close().line();
  }

  /** One of the edges of a box, so far within it. */
  private void frame(String look, Box box, double inset, String corner) {
    svg.empty(
        "rect",
        "class",
        look,
        "x",
        number(inset),
        "y",
        number(inset),
        "width",
        number(box.width() - 2 * inset),
        "height",
        number(box.height() - 2 * inset),
        "rx",
        corner);
  }

  private boolean isAsked(Plant plant) {
    return plant.name().equals(behind.name());
  }

  /** Whether it is an offset of another plant, or another record of it. */
  private boolean isCopy(Plant plant) {
    return behind.parents().stream()
        .anyMatch(
            parent -> parent.offspring().equals(plant.name()) && stroke(parent).equals("fp-copy"));
  }

  private void word(String text, String look, double x, double y) {
    svg.element("text", text, "class", look, "x", number(x), "y", number(y));
  }

  private void bar(Plant plant, double x, double y, double width) {
    double from = 0;
    for (Part part : plant.parts()) {
      svg.empty(
          "rect",
          "class",
          "fp-part",
          "x",
          number(x + from * width),
          "y",
          number(y),
          "width",
          number(part.share() * width),
          "height",
          number(BAR),
          "fill",
          palette.fill(part.taxon()));
      from += part.share();
    }
  }

  private String inFull(Plant plant) {
    StringBuilder text = new StringBuilder(told(plant));
    text.append("\n").append(plant.generationInWords());
    for (Part part : plant.parts()) {
      text.append("\n").append(percent(part.share())).append(' ').append(part.taxon());
    }
    return text.toString();
  }

  // --- the legend ---

  /** What the fills and strokes mean, in as many lines as they take. */
  private final class Legend {
    private record Item(String text, String stroke, String taxon, double x, int row) {}

    private final List<Item> items = new ArrayList<>();
    private final double width;
    private double x;
    private int row;

    Legend(double width) {
      this.width = width;
      for (String taxon : behind.taxa()) {
        add(palette.letter(taxon) + "  " + taxon, "", taxon);
      }
      if (behind.plants().stream()
          .flatMap(plant -> plant.parts().stream())
          .anyMatch(part -> part.taxon().equals(Palette.UNKNOWN))) {
        add("?  unknown", "", Palette.UNKNOWN);
      }
      if (!behind.parents().isEmpty()) {
        x = 0;
        row++;
      }
      strokes().forEach((role, text) -> add(text, role.stroke, ""));
    }

    private void add(String text, String stroke, String taxon) {
      String fitted = PedigreeLayout.LETTERS.regular().fit(text, WORD_SIZE, width - SWATCH - 6);
      double needed = SWATCH + 6 + PedigreeLayout.LETTERS.regular().width(fitted, WORD_SIZE);
      if (x > 0 && x + needed > width) {
        x = 0;
        row++;
      }
      items.add(new Item(fitted, stroke, taxon, x, row));
      x += needed + LEGEND_GAP;
    }

    private Map<Stroke, String> strokes() {
      Map<Stroke, String> used = new EnumMap<>(Stroke.class);
      for (Parent parent : behind.parents()) {
        Stroke stroke = Stroke.of(stroke(parent));
        used.put(stroke, stroke.meaning);
      }
      return used;
    }

    double height() {
      return (row + 1) * LEGEND_LINE;
    }

    void write(double top) {
      for (Item item : items) {
        double left = MARGIN + item.x();
        double middle = top + item.row() * LEGEND_LINE + LEGEND_LINE / 2;
        if (item.stroke().isEmpty()) {
          svg.empty(
              "rect",
              "class",
              "fp-part",
              "x",
              number(left),
              "y",
              number(middle - 6),
              "width",
              number(SWATCH),
              "height",
              "12",
              "fill",
              palette.fill(item.taxon()));
        } else {
          String path = "M" + number(left) + " " + number(middle) + "h" + number(SWATCH);
          svg.empty("path", "class", item.stroke(), "d", path);
          if (item.stroke().equals("fp-self")) {
            svg.empty("path", "class", "fp-self-in", "d", path);
          }
        }
        word(item.text(), "fp-word", left + SWATCH + 6, middle + 4);
        svg.line();
      }
    }
  }

  /** The strokes of lines, as the legend explains them. */
  private enum Stroke {
    SEED("fp-seed", "seed parent"),
    POLLEN("fp-pollen", "pollen parent"),
    SELF("fp-self", "selfed: seed and pollen of one plant"),
    COPY("fp-copy", "offset, or the same plant again (box with two edges)"),
    DOUBT("fp-doubt", "not certain, with how likely it is; ? for a parent nobody knows");

    private final String stroke;
    private final String meaning;

    Stroke(String stroke, String meaning) {
      this.stroke = stroke;
      this.meaning = meaning;
    }

    static Stroke of(String name) {
      for (Stroke stroke : values()) {
        if (stroke.stroke.equals(name)) {
          return stroke;
        }
      }
      throw new IllegalArgumentException(name);
    }
  }

  // --- looks ---

  private static String style() {
    return """

        .fp text{font-family:%s;unicode-bidi:isolate}
        .fp path,.fp-none,.fp-asked,.fp-inner{fill:none}
        .fp-code{font-size:13px;font-weight:700}
        .fp-name{font-size:11px;font-style:italic}
        .fp-word{font-size:11px}
        .fp-label{font-size:10.5px}
        .fp-head{font-size:17px;font-weight:700}
        .fp-box{stroke-width:1}
        .fp-unnumbered{stroke-dasharray:3 3}
        .fp-asked{stroke-width:2.5}
        .fp-part{stroke:%s;stroke-width:.8}
        .fp-seed,.fp-pollen,.fp-copy,.fp-doubt{stroke-width:1.6;stroke-linejoin:round}
        .fp-pollen{stroke-dasharray:7 4}
        .fp-doubt{stroke-dasharray:.1 4.5;stroke-linecap:round;stroke-width:2}
        .fp-copy{stroke-dasharray:14 3 3 3;stroke-width:2.2}
        .fp-self{stroke-width:5}
        .fp-self-in{stroke-width:2.2}
        """
            .formatted(FONTS, Palette.EDGE)
        + colours(Ink.PAPER, Ink.BOX, Ink.TEXT, Ink.SOFT, Ink.STROKE)
        + "@media screen and (prefers-color-scheme:dark){\n"
        + colours(Ink.DARK_PAPER, Ink.DARK_BOX, Ink.DARK_TEXT, Ink.DARK_SOFT, Ink.DARK_STROKE)
        + "}\n";
  }

  private static String colours(String paper, String box, String text, String soft, String stroke) {
    return """
        .fp-paper{fill:%s}
        .fp-box{fill:%s;stroke:%s}
        .fp-code,.fp-name,.fp-head{fill:%s}
        .fp-word,.fp-label{fill:%s}
        .fp-seed,.fp-pollen,.fp-self,.fp-copy,.fp-doubt,.fp-none,.fp-asked,.fp-inner{stroke:%s}
        .fp-self-in{stroke:%s}
        """
        .formatted(paper, box, stroke, text, soft, stroke, paper);
  }

  /** With two decimals at most, and none where they say nothing. */
  static String number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths % 100 == 0) {
      return Long.toString(hundredths / 100);
    }
    String text = String.format(Locale.ROOT, "%.2f", hundredths / 100.0);
    return text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
  }
}
