package dev.filial.core.spreadsheet;

import dev.filial.core.name.NameException;
import dev.filial.core.register.Count;
import dev.filial.core.register.PartialDate;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads what a row says, cell by cell; what is wrong with one is told with its column. */
final class RowReading {

  /** What the classes of pedigrees are called, and what joins several that may be. */
  private static final Pattern OF_A_PEDIGREE =
      Pattern.compile("^pure$|three-way|double cross|no class|complex|×| or ");

  private final BoundMapping columns;
  private final SheetRow row;
  private final SheetDates dates;
  private final SheetNumbers numbers;

  RowReading(BoundMapping columns, SheetRow row, SheetDates dates, SheetNumbers numbers) {
    this.columns = columns;
    this.row = row;
    this.dates = dates;
    this.numbers = numbers;
    int wanted = columns.sheet().columns().size();
    int found = row.cells().size();
    if (found != wanted) {
      throw new CellRefusal(
          "",
          "it has "
              + found
              + (found == 1 ? " cell" : " cells")
              + " where the header has "
              + wanted
              + "; put a cell with a separator in it between quotes, or add what is missing");
    }
  }

  /** What a cell says on one line; null where nothing, or a dash, stands in it. */
  @Nullable String text(Field field) {
    Integer place = columns.place(field);
    return place == null ? columns.same(field) : cell(place);
  }

  private @Nullable String cell(int place) {
    String cell = row.cells().get(place);
    String text = plain(cell) ? cell.strip() : oneLine(place, cell);
    if (text.isEmpty() || text.equals("-") || text.equals("–") || text.equals("—")) {
      return null;
    }
    if (text.charAt(0) == '=') {
      throw new CellRefusal(
          columns.header(place),
          "\""
              + shortened(text)
              + "\" is a formula and not what it comes to; save the table with the values shown");
    }
    return text;
  }

  private static boolean plain(String cell) {
    for (int i = 0; i < cell.length(); i++) {
      char c = cell.charAt(i);
      if (c < ' ' || (c >= 0x7F && c < 0xA0) || c == '\uFFFD' || Character.isSurrogate(c)) {
        return false;
      }
    }
    return true;
  }

  /** A line break in a cell is only how it was laid out; a control character is damage. */
  private String oneLine(int place, String cell) {
    String line = cell.replaceAll("[ \\t]*[\\r\\n\\t\\u000B\\f]+[ \\t]*", " ").strip();
    boolean halved = false;
    for (int i = 0; i < line.length(); i += Character.charCount(line.codePointAt(i))) {
      int point = line.codePointAt(i);
      halved |= Character.isISOControl(point) || point == 0xFFFD;
      halved |= point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
    }
    if (halved) {
      throw new CellRefusal(
          columns.header(place),
          "\""
              + shortened(line.replaceAll("\\p{Cntrl}", "?"))
              + "\" has a letter in it that could not be read; type it again, and save the table as"
              + " UTF-8");
    }
    return line;
  }

  static String shortened(String text) {
    return text.codePointCount(0, text.length()) <= 60
        ? text
        : text.substring(0, text.offsetByCodePoints(0, 60)) + "…";
  }

  /** What a cell says, which has to say something. */
  String required(Field field) {
    String text = text(field);
    if (text == null) {
      throw new CellRefusal(header(field), "nothing stands in it; write " + field.meaning());
    }
    return text;
  }

  /** Reads a cell; what is wrong with it is told with its column. */
  <T> @Nullable T read(Field field, Function<String, T> reading) {
    String text = text(field);
    return text == null ? null : reading(header(field), text, reading);
  }

  /** Reads a cell that has to say something. */
  <T> T require(Field field, Function<String, T> reading) {
    return reading(header(field), required(field), reading);
  }

  static <T> T reading(String header, String text, Function<String, T> reading) {
    try {
      return reading.apply(text);
    } catch (CellRefusal e) {
      throw e;
    } catch (NameException e) {
      throw new CellRefusal(header, sentence(e));
    } catch (IllegalArgumentException e) {
      throw new CellRefusal(header, String.valueOf(e.getMessage()));
    } catch (dev.filial.core.register.RegisterRefusal e) {
      throw new CellRefusal(header, String.valueOf(e.getMessage()));
    }
  }

  /** Without the picture of where in the name it is, which no cell of a table has room for. */
  private static String sentence(NameException e) {
    String whole = String.valueOf(e.getMessage());
    int end = whole.indexOf('\n');
    return (end < 0 ? whole : whole.substring(0, end)).replaceFirst("^column \\d+: ", "");
  }

  String header(Field field) {
    Integer place = columns.place(field);
    return place == null ? field.word() : columns.header(place);
  }

  @Nullable PartialDate date(Field field) {
    return read(field, dates::read);
  }

  @Nullable Count count(Field field) {
    return read(field, numbers::count);
  }

  boolean yes(Field field) {
    Boolean said =
        read(
            field,
            text ->
                switch (text.toLowerCase(Locale.ROOT)) {
                  case "yes", "y", "x", "ja", "j", "1", "true", "wahr" -> true;
                  case "no", "n", "nein", "0", "false", "falsch" -> false;
                  default ->
                      throw new IllegalArgumentException(
                          "\"" + text + "\" is neither yes nor no; write one of them");
                });
    return said != null && said;
  }

  /**
   * The generation that is stated. A class of a plant's pedigree that nobody states of an acquired
   * one, as {@code pure} or {@code three-way}, states none.
   */
  @Nullable String generation() {
    String text = text(Field.GENERATION);
    return text == null || OF_A_PEDIGREE.matcher(text).find() ? null : text;
  }

  /**
   * The remark, and behind it what stands in the columns that are kept there, and a generation that
   * cannot be stated.
   */
  @Nullable String remark() {
    String remark = text(Field.REMARK);
    String generation = text(Field.GENERATION);
    boolean keptGeneration =
        generation != null && !generation.equals("pure") && generation() == null;
    if (columns.kept().isEmpty() && !keptGeneration) {
      return remark;
    }
    StringBuilder all = new StringBuilder(remark == null ? "" : remark);
    if (keptGeneration) {
      all.append(all.isEmpty() ? "" : "; ").append("generation: ").append(generation);
    }
    for (int place : columns.kept()) {
      String text = cell(place);
      if (text != null) {
        String header = columns.sheet().columns().get(place);
        all.append(all.isEmpty() ? "" : "; ");
        all.append(header.isEmpty() ? "" : header.replaceAll("\\s+", " ") + ": ").append(text);
      }
    }
    return all.isEmpty() ? null : all.toString();
  }

  /** What stands in the column of each trait that has one, by trait; where nothing does, not. */
  Map<String, String> traits() {
    Map<String, String> values = new LinkedHashMap<>();
    columns
        .traits()
        .forEach(
            (trait, place) -> {
              String text = cell(place);
              if (text != null) {
                values.put(trait, text);
              }
            });
    return values;
  }

  /** The header of a trait's column. */
  String traitHeader(String trait) {
    Integer place = columns.traits().get(trait);
    return place == null ? header(Field.VALUE) : columns.header(place);
  }

  SheetNumbers numbers() {
    return numbers;
  }
}
