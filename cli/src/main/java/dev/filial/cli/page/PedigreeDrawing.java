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
import dev.filial.core.name.ItalicNames;
import dev.filial.core.number.Decimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * A pedigree as SVG: each plant a box, each parent a line. Colours are never the only sign: taxa
 * also go by letters, and lines by their strokes.
 */
public final class PedigreeDrawing {

  static final double CODE_SIZE = 13;
  static final double WORD_SIZE = 11;
  static final double TITLE_SIZE = 17;
  static final double INSET = 9;
  private static final double BOX_HEIGHT = 68;
  private static final double LEAST = 104;
  private static final double MOST = 250;
  private static final double BAR = 8;
  private static final double MARGIN = 20;
  private static final double LEGEND_LEAST = 620;

  private final PlantsBehind behind;
  private final Palette palette;
  private final PedigreeLayout layout;
  private final PageLinks links;
  private final ItalicNames names;
  private final Markup svg;

  private PedigreeDrawing(PlantsBehind behind, PageLinks links, Markup svg) {
    this.behind = behind;
    this.palette = new Palette(behind.taxa());
    this.layout = PedigreeLayout.of(behind, this::width, BOX_HEIGHT);
    this.links = links;
    this.names = names(behind);
    this.svg = svg;
  }

  /** The scientific names among what a pedigree and {@code others} say. */
  static ItalicNames names(PlantsBehind behind, String... others) {
    List<String> said = new ArrayList<>(behind.taxa());
    behind.plants().forEach(plant -> said.add(plant.what()));
    said.addAll(List.of(others));
    return ItalicNames.of(said);
  }

  /**
   * Words with the scientific names among them in italics, which are as wide as upright letters.
   */
  static void words(Markup svg, ItalicNames names, String words) {
    for (ItalicNames.Run run : names.runs(words)) {
      if (run.italic()) {
        svg.element("tspan", run.text(), "class", "fp-taxon");
      } else {
        svg.text(run.text());
      }
    }
  }

  /** The drawing as the text of a file. */
  public static String of(PlantsBehind behind) {
    Markup svg = new Markup();
    new PedigreeDrawing(behind, PageLinks.NONE, svg).write();
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg.written() + "\n";
  }

  /**
   * Writes the drawing as an element of what {@code into} is writing; each plant that has a page of
   * its own leads there.
   */
  static void into(PlantsBehind behind, PageLinks links, Markup into) {
    new PedigreeDrawing(behind, links, into).write();
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
    String text = Decimal.text(share * 100, 1);
    return (share > 0 && text.equals("0") ? "<0.1" : text) + "\u00A0%";
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
    DrawingLegend legend = new DrawingLegend(behind, palette, wide);
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
            isLeading() ? "group" : "img",
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
        .element("style", DrawingStyle.sheet())
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
    legend.write(svg, names, MARGIN, MARGIN + TITLE_SIZE + 12);
    svg.open("g", "transform", "translate(" + number(MARGIN) + " " + number(top) + ")").line();
    layout.lines().forEach(this::line);
    layout.lines().forEach(this::label);
    layout.doubts().forEach(doubt -> unknownParent(doubt.middle()));
    layout.boxes().forEach(this::box);
    svg.close().line().close();
  }

  /** A picture is read as a whole, and what is in it cannot be reached; with links it is none. */
  private boolean isLeading() {
    return behind.plants().stream().anyMatch(plant -> links.to(plant.name()) != null);
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

  private void line(Line line) {
    String path = path(line.points());
    LineStroke stroke = LineStroke.of(line.parent());
    svg.open("g", "class", "fp-line")
        .element("title", line.parent().offspring() + ": " + told(line.parent()))
        .empty("path", "class", stroke.look(), "d", path);
    if (stroke == LineStroke.SELF) {
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
    String to = links.to(plant.name());
    if (to != null) {
      svg.open("a", "href", to);
    }
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
    svg.open("text", "class", "fp-word", "x", number(INSET), "y", number(top + 34));
    words(svg, names, words.second());
    svg.close();
    bar(plant, INSET, top + 40, box.width() - 2 * INSET);
    word(words.third(), "fp-word", INSET, top + 60);
    if (plant.cut()) {
      svg.empty("path", "class", "fp-doubt", "d", "M-14 " + number(box.height() / 2) + "h14");
    }
    if (to != null) {
      svg.close();
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
            parent ->
                parent.offspring().equals(plant.name())
                    && LineStroke.of(parent) == LineStroke.COPY);
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
