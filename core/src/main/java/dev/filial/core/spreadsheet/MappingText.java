package dev.filial.core.spreadsheet;

import dev.filial.core.spreadsheet.Mapping.DayOrder;
import dev.filial.core.spreadsheet.Mapping.DecimalSign;
import dev.filial.core.spreadsheet.Mapping.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A mapping as plain text, to be read and changed by hand: one thing a line, {@code seed parent =
 * Mutter}; what stands in double quotes is said of every row; a line that begins with {@code #} is
 * a comment.
 */
public final class MappingText {

  private static final String TRAIT = "trait ";

  private @Nullable RowKind rows;
  private @Nullable DayOrder dayOrder;
  private @Nullable DecimalSign decimal;
  private final Map<Field, Source> fields = new LinkedHashMap<>();
  private final Map<String, String> traits = new LinkedHashMap<>();
  private final List<String> kept = new ArrayList<>();
  private final List<String> ignored = new ArrayList<>();

  private MappingText() {}

  /**
   * Reads one.
   *
   * @throws SheetException if a line cannot be read, naming it
   */
  public static Mapping read(String text) {
    MappingText reading = new MappingText();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      String said = (number == 1 && line.startsWith("\uFEFF") ? line.substring(1) : line).strip();
      if (said.isEmpty() || said.startsWith("#")) {
        continue;
      }
      try {
        reading.take(said);
      } catch (SheetException e) {
        throw new SheetException("line " + number + " of the mapping: " + e.getMessage(), e);
      }
    }
    if (reading.rows == null) {
      throw new SheetException(
          "the mapping does not say what a row is; add a line \"rows = plants\", or "
              + Arrays.stream(RowKind.values())
                  .skip(1)
                  .map(RowKind::word)
                  .collect(Collectors.joining(", ")));
    }
    return new Mapping(
        reading.rows,
        Optional.ofNullable(reading.dayOrder),
        Optional.ofNullable(reading.decimal),
        reading.fields,
        reading.traits,
        reading.kept,
        reading.ignored);
  }

  private void take(String line) {
    int sign = line.indexOf('=');
    if (sign < 1 || line.substring(sign + 1).isBlank()) {
      throw new SheetException(
          "\""
              + line
              + "\" is not of the form \"place = Standort\"; write it so, or a # before it");
    }
    String key = line.substring(0, sign).strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    String value = line.substring(sign + 1).strip();
    switch (key) {
      case "rows" -> rows = RowKind.of(value);
      case "dates" -> dayOrder = dayOrder(value);
      case "decimal" -> decimal = decimal(value);
      case "keep" -> kept.add(value);
      case "ignore" -> ignored.add(value);
      default -> field(line.substring(0, sign).strip(), key, value);
    }
  }

  private void field(String written, String key, String value) {
    if (key.startsWith(TRAIT)) {
      String trait = written.substring(TRAIT.length()).strip();
      if (traits.put(trait, value) != null) {
        throw new SheetException("the trait " + trait + " has a column already; name it once");
      }
      return;
    }
    Field field =
        Field.of(key)
            .orElseThrow(
                () ->
                    new SheetException(
                        "\""
                            + written
                            + "\" is nothing that a column can say; that is rows, dates, decimal,"
                            + " keep, ignore, "
                            + Arrays.stream(Field.values())
                                .map(Field::word)
                                .collect(Collectors.joining(", "))));
    if (fields.put(field, source(value)) != null) {
      throw new SheetException("\"" + key + "\" is said twice; leave one of the lines out");
    }
  }

  private static Source source(String value) {
    boolean quoted = value.length() > 1 && value.startsWith("\"") && value.endsWith("\"");
    return quoted
        ? new Source.Same(value.substring(1, value.length() - 1))
        : new Source.Column(value);
  }

  private static DayOrder dayOrder(String value) {
    String plain = value.toLowerCase(Locale.ROOT).replaceAll("[^a-z]+", " ").strip();
    return Arrays.stream(DayOrder.values())
        .filter(order -> order.word().equals(plain))
        .findFirst()
        .orElseThrow(
            () ->
                new SheetException(
                    "\""
                        + value
                        + "\" is no order of a date; write day month year, month day year or year"
                        + " month day"));
  }

  private static DecimalSign decimal(String value) {
    return switch (value.toLowerCase(Locale.ROOT)) {
      case "comma", "," -> DecimalSign.COMMA;
      case "point", "." -> DecimalSign.POINT;
      default ->
          throw new SheetException("\"" + value + "\" is no decimal sign; write comma or point");
    };
  }

  /** A mapping as text, one line for each thing, without comments. */
  public static String write(Mapping mapping) {
    List<String> lines = new ArrayList<>();
    BiConsumer<String, String> line = (key, value) -> lines.add(key + " = " + value);
    line.accept("rows", mapping.rows().word());
    mapping.dayOrder().ifPresent(order -> line.accept("dates", order.word()));
    mapping
        .decimal()
        .ifPresent(sign -> line.accept("decimal", sign.name().toLowerCase(Locale.ROOT)));
    mapping.fields().forEach((field, source) -> line.accept(field.word(), written(source)));
    mapping.traits().forEach((trait, column) -> line.accept(TRAIT + trait, column));
    mapping.kept().forEach(column -> line.accept("keep", column));
    mapping.ignored().forEach(column -> line.accept("ignore", column));
    return String.join("\n", lines) + "\n";
  }

  /** A source as it is written. */
  static String written(Source source) {
    return source instanceof Source.Same same
        ? "\"" + same.text() + "\""
        : ((Source.Column) source).header();
  }
}
