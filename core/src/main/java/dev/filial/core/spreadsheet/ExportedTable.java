package dev.filial.core.spreadsheet;

import dev.filial.core.exchange.CrossTable;
import dev.filial.core.exchange.PlantTable;
import dev.filial.core.spreadsheet.Mapping.Source;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The tables that another register wrote for its grower's friends, known by their headers. */
final class ExportedTable {

  /** What is the friend's own concern, and nothing of the plant that was passed on. */
  private static final List<String> NOT_TAKEN =
      List.of("kind", "since", "state", "until", "cytoplasm");

  private static final List<String> REMARKED =
      List.of(
          "other codes",
          "donor's code",
          "donor",
          "seed parent",
          "pollen parent",
          "same plant as",
          "pedigree",
          "doubts");

  private ExportedTable() {}

  static boolean isPlants(Sheet sheet) {
    return has(sheet, new PlantTable().columns());
  }

  private static boolean has(Sheet sheet, List<String> columns) {
    return sheet.columns().stream()
        .filter(header -> !header.equals(Sheet.REASON))
        .toList()
        .equals(columns);
  }

  /**
   * Refuses a list of crosses that was exported: its parents are codes of another register, which
   * here mean other plants or none.
   */
  static void requireNoCrosses(Sheet sheet) {
    if (has(sheet, new CrossTable().columns())) {
      throw new SheetException(
          "this is a list of crosses exported from a register; the codes of parents in it are that"
              + " register's, and here they are other plants or none. Take in its list of plants,"
              + " which has the pedigree of each, or make a register of your own of its whole book");
    }
  }

  /** How its columns are taken: each plant as one that was given, under the code it has there. */
  static MappingGuess.Proposal plants() {
    Map<Field, Source> fields = new LinkedHashMap<>();
    fields.put(Field.TAXON, new Source.Column("name"));
    fields.put(Field.CF_OR_AFF, new Source.Column("cf. or aff."));
    fields.put(Field.MAKEUP, new Source.Column("shares"));
    fields.put(Field.CULTIVAR, new Source.Column("cultivar"));
    fields.put(Field.GENERATION, new Source.Column("generation"));
    fields.put(Field.NAME, new Source.Column("own names"));
    fields.put(Field.DONOR_CODE, new Source.Column("code"));
    fields.put(Field.FIELD_NUMBER, new Source.Column("field number"));
    fields.put(Field.LOCALITY, new Source.Column("locality"));
    return new MappingGuess.Proposal(
        new Mapping(
            RowKind.PLANTS,
            Optional.empty(),
            Optional.empty(),
            fields,
            Map.of(),
            REMARKED,
            NOT_TAKEN),
        List.of(
            "this is a list of plants exported from a register; each row becomes a plant that you"
                + " were given, and its code there the giver's code, so take the rows out of what"
                + " you did not get",
            "it says neither who gave them to you nor when; add a line donor = \"NAME\" and a line"
                + " date = \"DAY\"",
            "what each was there, since when and what became of it is left out; what else it came"
                + " of goes into the remark"));
  }
}
