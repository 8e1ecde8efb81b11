package dev.filial.core.spreadsheet;

import static dev.filial.core.spreadsheet.Field.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a row of the table stands for; each becomes the entries that would have been typed. */
public enum RowKind {
  /** A plant that was bought, given or collected. */
  PLANTS(
      CODE,
      OLD_CODE,
      TAXON,
      CF_OR_AFF,
      MAKEUP,
      CULTIVAR,
      GENERATION,
      PLOIDY,
      NAME,
      DONOR,
      DONOR_CODE,
      FIELD_NUMBER,
      LOCALITY,
      DATE,
      PLACE,
      ELSEWHERE,
      REMARK),
  /** A packet of seed that was bought, swapped or collected. */
  SEED(
      CODE,
      OLD_CODE,
      TAXON,
      CF_OR_AFF,
      MAKEUP,
      CULTIVAR,
      GENERATION,
      PLOIDY,
      SEEDS,
      DONOR,
      DONOR_CODE,
      FIELD_NUMBER,
      LOCALITY,
      DATE,
      PLACE,
      REMARK),
  /** A pollination, with what set and what was harvested of it if that is in the row too. */
  CROSSES(
      CODE,
      OLD_CODE,
      SEED_PARENT,
      POLLEN_PARENT,
      DATE,
      FLOWERS,
      PROTECTION,
      PLACE,
      SET,
      FAILED,
      FRUIT_DATE,
      SEEDS,
      FRUITS,
      HARVEST_DATE,
      SEED_PLACE,
      REMARK),
  /** A sowing of one seed lot, with what came up if that is in the row too. */
  SOWINGS(LOT, DATE, SEEDS, MEDIUM, CONTAINER, PLACE, CAME_UP, ALIVE, COUNT_DATE, REMARK),
  /** Seedlings counted in one sowing or pot. */
  COUNTS(POT, DATE, CAME_UP, ALIVE, REMARK),
  /** What one plant measured or showed, in a column for each trait or in one. */
  MEASUREMENTS(PLANT, DATE, TRAIT, VALUE, REMARK);

  @SuppressWarnings("ImmutableEnumChecker") // made by List.of
  private final List<Field> fields;

  RowKind(Field... fields) {
    this.fields = List.of(fields);
  }

  /** What can be said of such a row. */
  public List<Field> fields() {
    return fields;
  }

  /** As a mapping names it. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /**
   * The kind of that word.
   *
   * @throws SheetException if there is none
   */
  public static RowKind of(String word) {
    return Arrays.stream(values())
        .filter(kind -> kind.word().equals(word.strip().toLowerCase(Locale.ROOT)))
        .findFirst()
        .orElseThrow(
            () ->
                new SheetException(
                    "\""
                        + word
                        + "\" is no kind of row; rows are "
                        + Arrays.stream(values())
                            .map(RowKind::word)
                            .collect(Collectors.joining(", "))));
  }
}
