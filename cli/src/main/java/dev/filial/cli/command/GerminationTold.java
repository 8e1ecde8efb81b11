package dev.filial.cli.command;

import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.core.answer.GerminationQuestion.Germination;
import dev.filial.core.answer.GerminationQuestion.Group;
import dev.filial.core.answer.GerminationQuestion.LeftOut;
import dev.filial.core.answer.GerminationQuestion.Point;
import dev.filial.core.answer.GerminationQuestion.Times;
import dev.filial.core.name.Code;
import dev.filial.core.number.Decimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * How much seed came up, and when.
 *
 * @param found what was found
 * @param curve whether the curve is drawn
 * @param csv whether it is written for a spreadsheet
 */
record GerminationTold(Germination found, boolean curve, boolean csv) implements CsvOrTable {

  private static final int NAMED = 8;

  @Override
  public String rows() {
    return curve ? curveRows() : groupRows();
  }

  @Override
  public void lay(Screen screen) {
    if (found.groups().isEmpty()) {
      screen.say("Nothing can be said: no sowing was counted exactly, seeds and seedlings.");
      leftOut(screen, "left out", found.leftOut());
      return;
    }
    screen.table(table());
    if (curve) {
      found.groups().forEach(group -> draw(screen, group));
      screen.blank();
    }
    leftOut(screen, "left out", found.leftOut());
    leftOut(screen, "no times", found.withoutTimes());
    for (Group group : found.groups()) {
      Times times = group.times();
      if (times != null && times.sowings() < group.sowings().size()) {
        screen.field(
            "times of",
            times.sowings()
                + " of "
                + group.sowings().size()
                + " sowings, in \""
                + group.label()
                + "\"");
      }
    }
    if (found.groups().stream().anyMatch(group -> halfEarly(group.times()))
        || (found.all() != null && halfEarly(found.all().times()))) {
      screen.field(
          "by",
          "Half were up at the first count already, of several sowings at the first day on which"
              + " all were counted; when before it nobody knows.");
    }
    found.notes().forEach(note -> screen.field("note", note));
    Group all = found.all();
    if (all != null && all.up() > 0) {
      screen.next(
          "how many seeds to sow for 1 plant in 4: filial howmany 1/4 --germination "
              + all.up()
              + "/"
              + all.seeds());
    }
  }

  private static boolean halfEarly(@Nullable Times times) {
    return times != null && times.halfByFirstCount();
  }

  private String by() {
    return found.by().name().toLowerCase(Locale.ROOT);
  }

  private Table table() {
    Table table =
        new Table()
            .column(by())
            .numbers("seeds")
            .numbers("up")
            .numbers("%")
            .numbers(ChanceWords.certainty(found.certainty()) + " between")
            .numbers("mean days")
            .numbers("half by day");
    found.groups().forEach(group -> row(table, group));
    if (found.groups().size() > 1 && found.all() != null) {
      row(table, found.all());
    }
    return table;
  }

  private static void row(Table table, Group group) {
    Times times = group.times();
    table.row(
        group.label(),
        group.seeds(),
        group.up(),
        percent(group.share()),
        percent(group.lower()) + " and " + percent(group.upper()),
        days(times == null ? null : times.meanDays()),
        (halfEarly(times) ? "by " : "") + days(times == null ? null : times.halfDays()));
  }

  /** A bare percentage to a tenth. */
  static String percent(double share) {
    return Decimal.text(100 * share, 1);
  }

  private static String days(@Nullable Double days) {
    return days == null ? "" : Decimal.text(days, 1);
  }

  private static void draw(Screen screen, Group group) {
    Times times = group.times();
    if (times == null || times.curve().isEmpty()) {
      return;
    }
    screen.blank();
    screen.heading(
        group.label()
            + ": of "
            + times.seeds()
            + " seeds, by the day of the count"
            + (times.sowings() < group.sowings().size()
                ? ", of " + times.sowings() + " of " + group.sowings().size() + " sowings"
                : ""));
    int width = String.valueOf(times.curve().get(times.curve().size() - 1).day()).length();
    for (Point point : times.curve()) {
      String day = String.valueOf(point.day());
      screen.bar(
          "day " + " ".repeat(width - day.length()) + day,
          point.share(),
          point.up() + " (" + percent(point.share()) + " %)");
    }
  }

  /** Tells what was left out, in numbers, with the codes and why. */
  static void leftOut(Screen screen, String name, List<LeftOut> leftOut) {
    for (LeftOut one : leftOut) {
      List<String> codes = new ArrayList<>();
      one.codes().stream().limit(NAMED).map(Code::text).forEach(codes::add);
      int more = one.codes().size() - codes.size();
      screen.field(
          name,
          one.codes().size()
              + ": "
              + one.why()
              + " ("
              + String.join(", ", codes)
              + (more > 0 ? " and " + more + " more" : "")
              + ")");
    }
  }

  private String groupRows() {
    CsvText rows =
        new CsvText()
            .row(
                by(),
                "sowings",
                "seeds",
                "up",
                "share",
                "lower",
                "upper",
                "mean_days",
                "deviation_days",
                "t50_days",
                "speed_per_day");
    for (Group group : found.groups()) {
      Times times = group.times();
      rows.row(
          group.label(),
          group.sowings().size(),
          group.seeds(),
          group.up(),
          group.share(),
          group.lower(),
          group.upper(),
          times == null ? null : times.meanDays(),
          times == null ? null : times.deviationDays(),
          times == null || halfEarly(times) ? null : times.halfDays(),
          times == null ? null : times.speed());
    }
    return rows.text();
  }

  private String curveRows() {
    CsvText rows = new CsvText().row(by(), "seeds", "day", "newly", "up", "share");
    for (Group group : found.groups()) {
      Times times = group.times();
      if (times != null) {
        times
            .curve()
            .forEach(
                point ->
                    rows.row(
                        group.label(),
                        times.seeds(),
                        point.day(),
                        point.newly(),
                        point.up(),
                        point.share()));
      }
    }
    return rows.text();
  }
}
