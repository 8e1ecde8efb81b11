package dev.filial.cli.command;

import dev.filial.cli.screen.DisplayWidth;
import dev.filial.cli.screen.Wrap;
import dev.filial.core.answer.SheetQuestion.Row;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A bench sheet as plain text for A4 upright: {@value #WIDTH} columns of a letter of 12 to the
 * inch, {@value #HEIGHT} lines of 6 to the inch, a form feed between pages. Two lines a row, so
 * that a pencil has room.
 */
final class SheetPaper {

  static final int WIDTH = 78;
  static final int HEIGHT = 62;

  private static final int ROWS = (HEIGHT - 6) / 3;
  private static final int CODE = 13;
  private static final int WHAT = 21;

  private final String title;
  private final LocalDate day;
  private final String filling;

  SheetPaper(String title, LocalDate day, String filling) {
    this.title = title;
    this.day = day;
    this.filling = filling;
  }

  String text(List<Row> rows) {
    int pages = Math.max(1, (rows.size() + ROWS - 1) / ROWS);
    List<String> sheets = new ArrayList<>();
    for (int page = 0; page < pages; page++) {
      sheets.add(
          page(
              page + 1,
              pages,
              rows.subList(page * ROWS, Math.min(rows.size(), (page + 1) * ROWS))));
    }
    return String.join("\f", sheets);
  }

  private String page(int page, int pages, List<Row> rows) {
    StringBuilder text = new StringBuilder();
    String right = pages == 1 ? "" : "page " + page + " of " + pages;
    line(text, pad(title + ", printed " + day, WIDTH - right.length()) + right);
    line(text, "Seen on ____________________   by ____________________");
    line(text, "");
    for (Row row : rows) {
      line(
          text,
          pad(Integer.toString(row.number()), 3)
              + " "
              + pad(row.code().text(), CODE)
              + " "
              + pad(row.what(), WHAT)
              + " "
              + right(row.count() == null ? "" : row.count().toString(), 4)
              + "  "
              + boxes(row));
      String place = pad(row.place() == null ? "" : row.place(), CODE);
      String before = "    " + place + " remark ";
      line(text, before + "_".repeat(WIDTH - DisplayWidth.of(before)));
      line(text, "");
    }
    line(text, "Typed in with: " + filling);
    return text.toString();
  }

  private static String boxes(Row row) {
    return switch (row.sort()) {
      case SEEDLINGS -> "up[____] alive[____] lost[___]";
      case FLOWERS -> "set[____] failed[____]";
      case PLANT -> "died[__] of____________________";
    };
  }

  private static void line(StringBuilder page, String text) {
    page.append(text.stripTrailing()).append('\n');
  }

  /** Cut or filled up to a width; what is cut ends in three dots. */
  private static String pad(String text, int width) {
    String shown = Wrap.printable(text);
    if (DisplayWidth.of(shown) > width) {
      int end = shown.length();
      while (DisplayWidth.of(shown.substring(0, end)) > width - 1) {
        end = shown.offsetByCodePoints(end, -1);
      }
      shown = shown.substring(0, end) + "…";
    }
    return shown + " ".repeat(width - DisplayWidth.of(shown));
  }

  private static String right(String text, int width) {
    return " ".repeat(Math.max(0, width - text.length())) + text;
  }
}
