package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.GerminationQuestion.Germination;
import dev.filial.core.answer.GerminationQuestion.Group;
import dev.filial.core.answer.GerminationQuestion.LeftOut;
import dev.filial.core.answer.GerminationQuestion.Point;
import dev.filial.core.answer.GerminationQuestion.Times;
import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The part of a page that tells how much of the seed of a family came up, and when. */
final class GerminationSection {

  private final PageWriter page;
  private final Markup html;
  private final @Nullable Germination found;

  /**
   * On this page.
   *
   * @param found how its sowings came up, each by itself; null if none is recorded
   */
  GerminationSection(PageWriter page, @Nullable Germination found) {
    this.page = page;
    this.html = page.html();
    this.found = found;
  }

  /** Writes it. */
  void write() {
    page.section("came-up", "How it came up");
    if (found == null) {
      html.element("p", "Nothing recorded.").line();
    } else {
      if (found.groups().isEmpty()) {
        html.element(
                "p", "Nothing can be said: no sowing was counted exactly, seeds and seedlings.")
            .line();
      } else {
        curve(found);
        table(found);
      }
      leftOut(found);
      page.notes(found.notes());
    }
    page.endSection();
  }

  /** What a sowing is called within its family: what stands behind the code of that. */
  private static String shortened(String sowing) {
    int space = sowing.lastIndexOf(' ');
    return space < 0 ? sowing : sowing.substring(space + 1);
  }

  private void curve(Germination germination) {
    List<CurveDrawing.Line> lines = new ArrayList<>();
    int drawn = 0;
    for (Group group : germination.groups()) {
      Times times = group.times();
      if (times != null && !times.curve().isEmpty()) {
        drawn++;
        if (lines.size() < CurveDrawing.MOST) {
          lines.add(new CurveDrawing.Line(shortened(group.label()), times.curve()));
        }
      }
    }
    if (lines.isEmpty()) {
      return;
    }
    html.open("figure", "class", "expected");
    new CurveDrawing(lines).write(html);
    html.element(
            "figcaption",
            "Each line goes up on the day of a count, since between two counts nobody knows."
                + (drawn > lines.size()
                    ? " Drawn are the first " + lines.size() + " of " + drawn + " sowings."
                    : ""))
        .close()
        .line();
  }

  private void table(Germination germination) {
    String sure = ChanceWords.certainty(germination.certainty()).replace(' ', '\u00A0');
    page.table(
        "came-up",
        List.of(
            Column.words("sowing"),
            Column.numbers("seeds"),
            Column.numbers("up"),
            Column.numbers("per cent"),
            Column.numbers(sure + " between"),
            Column.numbers("mean days"),
            Column.numbers("half by day (T50)"),
            Column.words("counted")));
    germination.groups().forEach(this::row);
    Group all = germination.all();
    if (germination.groups().size() > 1 && all != null) {
      row(all);
    }
    page.endTable();
    boolean early =
        germination.groups().stream().anyMatch(group -> isHalfEarly(group.times()))
            || (germination.groups().size() > 1 && all != null && isHalfEarly(all.times()));
    if (early) {
      html.element(
              "p",
              "Where it says \"by\", half were up at the first count already, of several sowings at"
                  + " the first day on which all were counted; when before it nobody knows.",
              "class",
              "said")
          .line();
    }
  }

  private static boolean isHalfEarly(@Nullable Times times) {
    return times != null && times.halfByFirstCount();
  }

  private void row(Group group) {
    Times times = group.times();
    html.open("tr")
        .element("th", group.label(), "scope", "row", "class", "code")
        .element("td", Integer.toString(group.seeds()), "class", "number")
        .element("td", Integer.toString(group.up()), "class", "number")
        .element("td", percent(group.share()), "class", "number")
        .element("td", percent(group.lower()) + " and " + percent(group.upper()), "class", "number")
        .element("td", days(times == null ? null : times.meanDays()), "class", "number")
        .element(
            "td",
            (isHalfEarly(times) ? "by " : "") + days(times == null ? null : times.halfDays()),
            "class",
            "number")
        .element("td", group.sowings().size() > 1 ? "" : counts(times), "class", "words counts")
        .close()
        .line();
  }

  private static String counts(@Nullable Times times) {
    return times == null
        ? ""
        : times.curve().stream().map(GerminationSection::count).collect(Collectors.joining(", "));
  }

  private static String count(Point point) {
    return point.up() + "\u00A0by\u00A0day\u00A0" + point.day();
  }

  private static String percent(double share) {
    return tenths(100 * share);
  }

  private static String days(@Nullable Double days) {
    return days == null ? "" : tenths(days);
  }

  /** Always with its decimal, so that those of a column stand below each other. */
  private static String tenths(double number) {
    return String.format(Locale.ROOT, "%.1f", number);
  }

  private void leftOut(Germination germination) {
    if (germination.leftOut().isEmpty() && germination.withoutTimes().isEmpty()) {
      return;
    }
    html.element("h3", "What was left out").open("ul");
    germination.leftOut().forEach(one -> leftOut("left out", one));
    germination.withoutTimes().forEach(one -> leftOut("no times and no line", one));
    html.close().line();
  }

  private void leftOut(String how, LeftOut one) {
    page.item(
        one.codes().stream().map(Code::text).collect(Collectors.joining(", "))
            + ": "
            + how
            + ", since "
            + one.why()
            + ".");
  }
}
