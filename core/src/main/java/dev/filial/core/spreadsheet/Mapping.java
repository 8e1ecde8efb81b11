package dev.filial.core.spreadsheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which column of a table says what: what a row stands for, where each thing said of it is found,
 * and how dates and numbers are written.
 *
 * @param rows what a row stands for
 * @param dayOrder in which order a date with slashes is written; empty when nobody said
 * @param decimal what parts the whole from the tenths; empty when nobody said
 * @param fields where each thing is found
 * @param traits of rows that are measurements: the column of each trait that has one
 * @param kept columns that go into the remark, each under its header
 * @param ignored columns that are left out knowingly
 */
public record Mapping(
    RowKind rows,
    Optional<DayOrder> dayOrder,
    Optional<DecimalSign> decimal,
    Map<Field, Source> fields,
    Map<String, String> traits,
    List<String> kept,
    List<String> ignored) {

  /** Where a thing that is said of a row is found. */
  public sealed interface Source {

    /**
     * In a column.
     *
     * @param header its header, or {@code column 3}
     */
    record Column(String header) implements Source {}

    /**
     * In none: it is the same for all rows.
     *
     * @param text what is said of each
     */
    record Same(String text) implements Source {}
  }

  /** In which order the parts of a date stand. */
  public enum DayOrder {
    /** 31/12/2025. */
    DAY_MONTH_YEAR("day month year"),
    /** 12/31/2025. */
    MONTH_DAY_YEAR("month day year"),
    /** 2025/12/31. */
    YEAR_MONTH_DAY("year month day");

    private final String word;

    DayOrder(String word) {
      this.word = word;
    }

    /** As a mapping names it. */
    public String word() {
      return word;
    }
  }

  /** What stands before the tenths of a number. */
  public enum DecimalSign {
    /** 12,5. */
    COMMA(','),
    /** 12.5. */
    POINT('.');

    private final char sign;

    DecimalSign(char sign) {
      this.sign = sign;
    }

    /** The sign itself. */
    public char sign() {
      return sign;
    }

    /** What may part thousands beside it. */
    char thousands() {
      return this == COMMA ? '.' : ',';
    }
  }

  /**
   * Copies the collections, keeping their order.
   *
   * @throws SheetException if something is said that rows of that kind have not, or too little
   */
  public Mapping {
    fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    traits = Collections.unmodifiableMap(new LinkedHashMap<>(traits));
    kept = List.copyOf(kept);
    ignored = List.copyOf(ignored);
    for (Field field : fields.keySet()) {
      if (!rows.fields().contains(field)) {
        throw new SheetException(
            "\""
                + field.word()
                + "\" is nothing that is said of "
                + rows.word()
                + "; that is "
                + String.join(", ", rows.fields().stream().map(Field::word).toList()));
      }
    }
    if (!traits.isEmpty() && rows != RowKind.MEASUREMENTS) {
      throw new SheetException("traits go with rows = measurements, not with " + rows.word());
    }
    @Nullable String missing = missing(rows, fields, traits);
    if (missing != null) {
      throw new SheetException(
          "rows that are " + rows.word() + " need a line " + missing + "; add it");
    }
  }

  private static @Nullable String missing(
      RowKind rows, Map<Field, Source> fields, Map<String, String> traits) {
    return switch (rows) {
      case PLANTS, SEED -> null;
      case CROSSES ->
          fields.containsKey(Field.SEED_PARENT)
              ? fields.containsKey(Field.POLLEN_PARENT) ? null : "\"pollen parent = …\""
              : "\"seed parent = …\"";
      case SOWINGS -> fields.containsKey(Field.LOT) ? null : "\"lot = …\"";
      case COUNTS ->
          !fields.containsKey(Field.POT)
              ? "\"pot = …\""
              : fields.containsKey(Field.CAME_UP) || fields.containsKey(Field.ALIVE)
                  ? null
                  : "\"came up = …\" or \"alive = …\"";
      case MEASUREMENTS ->
          !fields.containsKey(Field.PLANT)
              ? "\"plant = …\""
              : !traits.isEmpty()
                      || (fields.containsKey(Field.TRAIT) && fields.containsKey(Field.VALUE))
                  ? null
                  : "\"trait NAME = …\", or two lines \"trait = …\" and \"value = …\"";
    };
  }
}
