package dev.filial.core.spreadsheet;

import dev.filial.core.spreadsheet.Mapping.Source;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A mapping laid against a table: the place of each column it names. */
final class BoundMapping {

  private final Sheet sheet;
  private final Mapping mapping;
  private final Map<Field, Integer> places = new EnumMap<>(Field.class);
  private final Map<Field, String> same = new EnumMap<>(Field.class);
  private final Map<String, Integer> traits = new LinkedHashMap<>();
  private final List<Integer> kept = new ArrayList<>();
  private final List<String> unmapped = new ArrayList<>();
  private final int reason;

  /** The name of each column, for whoever complains of a cell; asked with every cell. */
  private final List<String> headers = new ArrayList<>();

  /**
   * Finds the columns.
   *
   * @throws SheetException if one is not there
   */
  BoundMapping(Sheet sheet, Mapping mapping) {
    this.sheet = sheet;
    this.mapping = mapping;
    boolean[] used = new boolean[sheet.columns().size()];
    mapping
        .fields()
        .forEach(
            (field, source) -> {
              if (source instanceof Source.Same text) {
                same.put(field, text.text());
              } else {
                places.put(field, used(used, ((Source.Column) source).header()));
              }
            });
    mapping.traits().forEach((trait, column) -> traits.put(trait, used(used, column)));
    mapping.kept().forEach(column -> kept.add(used(used, column)));
    mapping.ignored().forEach(column -> used(used, column));
    reason = sheet.columns().indexOf(Sheet.REASON);
    for (int i = 0; i < used.length; i++) {
      headers.add(sheet.nameOf(i));
      if (!used[i] && i != reason) {
        unmapped.add(sheet.nameOf(i));
      }
    }
  }

  private int used(boolean[] used, String column) {
    int place = sheet.place(column);
    used[place] = true;
    return place;
  }

  Mapping mapping() {
    return mapping;
  }

  Sheet sheet() {
    return sheet;
  }

  /** Where a column of reasons stands, that an earlier run wrote; -1 where there is none. */
  int reason() {
    return reason;
  }

  List<String> unmapped() {
    return List.copyOf(unmapped);
  }

  @Nullable Integer place(Field field) {
    return places.get(field);
  }

  @Nullable String same(Field field) {
    return same.get(field);
  }

  Map<String, Integer> traits() {
    return traits;
  }

  List<Integer> kept() {
    return kept;
  }

  String header(int place) {
    return headers.get(place);
  }
}
