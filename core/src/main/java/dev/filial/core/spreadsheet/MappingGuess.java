package dev.filial.core.spreadsheet;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.name.NameException;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.spreadsheet.Mapping.DayOrder;
import dev.filial.core.spreadsheet.Mapping.DecimalSign;
import dev.filial.core.spreadsheet.Mapping.Source;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A mapping proposed for a table: by its headers, in English or German, and by how the values of
 * its first rows look. What cannot be told is left to the grower; a column that nothing is guessed
 * of goes into the remark, so that nothing is lost.
 */
public final class MappingGuess {

  /** Rows that are looked at. */
  private static final int LOOKED_AT = 200;

  private static final Pattern SLASHED =
      Pattern.compile("(\\d{1,2})[/-](\\d{1,2})[/-](\\d{2}|\\d{4})");
  private static final Pattern WITH_COMMA = Pattern.compile("[+-]?\\d+,\\d+");
  private static final Pattern WITH_POINT = Pattern.compile("[+-]?\\d+\\.\\d+");

  private static final List<Field> TOLD_BY =
      List.of(
          Field.TAXON,
          Field.CULTIVAR,
          Field.CODE,
          Field.OLD_CODE,
          Field.NAME,
          Field.DONOR_CODE,
          Field.FIELD_NUMBER);

  private final Sheet sheet;
  private final List<SheetRow> sample;
  private final RegisterView register;
  private final List<String> notes = new ArrayList<>();

  private MappingGuess(Sheet sheet, List<SheetRow> sample, RegisterView register) {
    this.sheet = sheet;
    this.sample = sample;
    this.register = register;
  }

  /**
   * What was guessed.
   *
   * @param mapping the mapping proposed
   * @param notes what the grower should look at, a sentence each
   */
  public record Proposal(Mapping mapping, List<String> notes) {
    /** Copies the list. */
    public Proposal {
      notes = List.copyOf(notes);
    }

    /** As a file to be looked over: the mapping, with comments that say what else can be said. */
    public String text(Sheet sheet) {
      StringBuilder text = new StringBuilder();
      text.append("# Which column of ").append(sheet.file().getFileName()).append(" is what.\n");
      text.append("# This is a guess: look it over and change what is wrong.\n");
      text.append("#   field = Header     says in which column it stands (or: field = column 3)\n");
      text.append("#   field = \"text\"     says the same of every row\n");
      text.append("#   keep = Header      puts a column into the remark, under its header\n");
      text.append("#   ignore = Header    leaves a column out\n");
      text.append("#   dates = day month year, month day year or year month day\n");
      text.append("#   decimal = comma or point\n");
      text.append("# Rows can be ");
      text.append(
          String.join(", ", java.util.Arrays.stream(RowKind.values()).map(RowKind::word).toList()));
      text.append(".\n");
      for (String note : notes) {
        text.append("#\n# Look here: ").append(note).append("\n");
      }
      text.append("\n").append(MappingText.write(mapping));
      text.append("\n# What else can be said of ").append(mapping.rows().word()).append(":\n");
      for (Field field : mapping.rows().fields()) {
        if (!mapping.fields().containsKey(field)) {
          text.append("# ").append(field.word()).append(" =      ").append(field.meaning());
          text.append("\n");
        }
      }
      if (mapping.rows() == RowKind.MEASUREMENTS) {
        text.append("# trait NAME =      the column in which a trait of the register stands\n");
      }
      return text.toString();
    }
  }

  /**
   * Guesses.
   *
   * @param rows what a row stands for, if that is known
   * @param register the register it is for: a column headed like one of its traits is that trait
   * @throws SheetException if nothing can be guessed
   * @throws IOException if the file cannot be read
   */
  public static Proposal of(Sheet sheet, Optional<RowKind> rows, RegisterView register)
      throws IOException {
    ExportedTable.requireNoCrosses(sheet);
    if (ExportedTable.isPlants(sheet) && rows.orElse(RowKind.PLANTS) == RowKind.PLANTS) {
      return ExportedTable.plants();
    }
    MappingGuess guess = new MappingGuess(sheet, sheet.sample(LOOKED_AT), register);
    return guess.proposal(rows);
  }

  private Proposal proposal(Optional<RowKind> stated) {
    RowKind kind = stated.orElseGet(this::kind);
    Map<Field, Integer> found = byHeader(kind);
    byValues(kind, found);
    codes(kind, found);
    Map<String, String> traits = kind == RowKind.MEASUREMENTS ? traits(found) : Map.of();
    Map<Field, Source> fields = new LinkedHashMap<>();
    for (Field field : kind.fields()) {
      Integer place = found.get(field);
      if (place != null) {
        fields.put(field, new Source.Column(sheet.nameOf(place)));
      }
    }
    List<String> kept = new ArrayList<>();
    for (int place = 0; place < sheet.columns().size(); place++) {
      String name = sheet.nameOf(place);
      boolean isReason = sheet.columns().get(place).equals(Sheet.REASON);
      if (!found.containsValue(place) && !traits.containsValue(name) && !isReason) {
        kept.add(name);
      }
    }
    Optional<DayOrder> order = dayOrder(found);
    Optional<DecimalSign> decimal = decimal();
    noteKept(kept);
    try {
      requireTold(kind, found);
      return new Proposal(
          new Mapping(kind, order, decimal, fields, traits, kept, List.of()), notes);
    } catch (SheetException e) {
      throw new SheetException(
          "it cannot be guessed which column is what: "
              + e.getMessage()
              + ". The columns are "
              + String.join(", ", sheet.columns())
              + "; write the mapping yourself, or say what the rows are",
          e);
    }
  }

  /** A column of days or numbers is seldom a remark: it is one that nothing was guessed of. */
  private void noteKept(List<String> kept) {
    for (int place = 0; place < sheet.columns().size(); place++) {
      String name = sheet.nameOf(place);
      String what =
          !kept.contains(name)
              ? null
              : share(place, this::isDate) * 2 >= 1
                  ? "dates"
                  : share(place, MappingGuess::isNumber) * 2 >= 1 ? "numbers" : null;
      if (what != null) {
        notes.add(
            "the column "
                + name
                + " holds "
                + what
                + " and goes into the remark; if it is one of what else can be said, write that"
                + " instead of keep");
      }
    }
  }

  /** A row that says neither what it is nor which one is none of a plant. */
  private static void requireTold(RowKind kind, Map<Field, Integer> found) {
    boolean acquired = kind == RowKind.PLANTS || kind == RowKind.SEED;
    if (acquired && TOLD_BY.stream().noneMatch(found::containsKey)) {
      throw new SheetException("no column has a species, a name or a number of what was acquired");
    }
  }

  /** The kind whose fields most headers name; those that only it has count twice. */
  private RowKind kind() {
    RowKind best = RowKind.PLANTS;
    int most = -1;
    for (RowKind kind : RowKind.values()) {
      Map<Field, Integer> found = byHeader(kind);
      boolean measured =
          kind == RowKind.MEASUREMENTS
              && found.containsKey(Field.PLANT)
              && !traits(found).isEmpty();
      int score = found.size() + (measured || isTelling(kind, found) ? 3 : -2);
      score += measured ? 3 * traits(found).size() : 0;
      if (score > most) {
        most = score;
        best = kind;
      }
    }
    notes.add(
        "each row is taken for what it says behind \"rows =\"; change that line if it is wrong");
    return best;
  }

  private static boolean isTelling(RowKind kind, Map<Field, Integer> found) {
    return switch (kind) {
      case PLANTS -> found.containsKey(Field.TAXON) && !found.containsKey(Field.SEEDS);
      case SEED -> found.containsKey(Field.TAXON) && found.containsKey(Field.SEEDS);
      case CROSSES ->
          found.containsKey(Field.SEED_PARENT) && found.containsKey(Field.POLLEN_PARENT);
      case SOWINGS -> found.containsKey(Field.LOT) && found.containsKey(Field.MEDIUM);
      case COUNTS ->
          found.containsKey(Field.POT)
              && (found.containsKey(Field.CAME_UP) || found.containsKey(Field.ALIVE));
      case MEASUREMENTS ->
          found.containsKey(Field.PLANT)
              && found.containsKey(Field.TRAIT)
              && found.containsKey(Field.VALUE);
    };
  }

  /** Fields by what stands over the columns, the header that is usual for a field first. */
  private Map<Field, Integer> byHeader(RowKind kind) {
    Map<Field, Integer> found = new EnumMap<>(Field.class);
    boolean[] used = new boolean[sheet.columns().size()];
    for (int rank = 0; rank < 40; rank++) {
      for (Field field : kind.fields()) {
        if (rank >= field.headers().size() || found.containsKey(field)) {
          continue;
        }
        for (int place = 0; place < used.length; place++) {
          if (!used[place] && plain(sheet.columns().get(place)).equals(field.headers().get(rank))) {
            used[place] = true;
            found.put(field, place);
            break;
          }
        }
      }
    }
    return found;
  }

  private static String plain(String header) {
    return header.toLowerCase(Locale.ROOT).replaceAll("[\\s._:()#°-]+", " ").strip();
  }

  /** What the values of columns without a telling header look like. */
  private void byValues(RowKind kind, Map<Field, Integer> found) {
    for (int place = 0; place < sheet.columns().size(); place++) {
      if (found.containsValue(place)) {
        continue;
      }
      if (kind.fields().contains(Field.DATE)
          && !found.containsKey(Field.DATE)
          && most(place, this::isDate)) {
        found.put(Field.DATE, place);
        note(place, "holds dates, and is taken for the day", Field.DATE);
      } else if (kind.fields().contains(Field.TAXON)
          && !found.containsKey(Field.TAXON)
          && most(place, MappingGuess::isTaxon)) {
        found.put(Field.TAXON, place);
        note(place, "holds names of species, and is taken for the label", Field.TAXON);
      } else if (kind.fields().contains(Field.CODE)
          && !found.containsKey(Field.CODE)
          && most(place, MappingGuess::isCode)) {
        found.put(Field.CODE, place);
        note(place, "holds codes of this register's form", Field.CODE);
      }
    }
  }

  private void note(int place, String what, Field field) {
    notes.add("the column " + sheet.nameOf(place) + " " + what + " (" + field.word() + ")");
  }

  /** A column of codes is one only where its codes are ours; any other is an old number. */
  private void codes(RowKind kind, Map<Field, Integer> found) {
    Integer code = found.get(Field.CODE);
    Integer old = found.get(Field.OLD_CODE);
    if (code != null && !most(code, MappingGuess::isCode)) {
      found.remove(Field.CODE);
      if (old == null && kind.fields().contains(Field.OLD_CODE)) {
        found.put(Field.OLD_CODE, code);
        notes.add(
            "what stands in "
                + sheet.nameOf(code)
                + " is not of the form of this register's codes (25-001): it is kept as a name, under"
                + " which each is found, and gets a code beside it");
      }
    } else if (code == null && old != null && most(old, MappingGuess::isCode)) {
      found.remove(Field.OLD_CODE);
      found.put(Field.CODE, old);
      note(old, "holds codes of this register's form", Field.CODE);
    }
  }

  private Map<String, String> traits(Map<Field, Integer> found) {
    Map<String, String> traits = new LinkedHashMap<>();
    for (int place = 0; place < sheet.columns().size(); place++) {
      String header = sheet.columns().get(place);
      if (!found.containsValue(place) && !header.isBlank()) {
        String name = sheet.nameOf(place);
        register
            .trait(Subject.trait(header).key())
            .or(() -> register.trait(Subject.trait(plain(header).split(" ", 2)[0]).key()))
            .ifPresent(trait -> traits.put(trait.trait(), name));
      }
    }
    return traits;
  }

  private Optional<DayOrder> dayOrder(Map<Field, Integer> found) {
    boolean slashed = false;
    boolean dayFirst = false;
    boolean monthFirst = false;
    for (Field field :
        List.of(Field.DATE, Field.HARVEST_DATE, Field.FRUIT_DATE, Field.COUNT_DATE)) {
      Integer place = found.get(field);
      if (place == null) {
        continue;
      }
      for (SheetRow row : sample) {
        var date = SLASHED.matcher(row.cells().get(place).strip());
        if (date.matches()) {
          slashed = true;
          dayFirst |= Integer.parseInt(date.group(1)) > 12;
          monthFirst |= Integer.parseInt(date.group(2)) > 12;
        }
      }
    }
    if (dayFirst && monthFirst) {
      notes.add(
          "some dates have the day first and some the month; none is read until that is mended");
    } else if (slashed && !dayFirst && !monthFirst) {
      notes.add(
          "no date tells whether the day or the month stands first; add a line dates = day month year,"
              + " or dates = month day year");
    }
    if (dayFirst == monthFirst) {
      return Optional.empty();
    }
    return Optional.of(dayFirst ? DayOrder.DAY_MONTH_YEAR : DayOrder.MONTH_DAY_YEAR);
  }

  private Optional<DecimalSign> decimal() {
    boolean comma = false;
    boolean point = false;
    for (SheetRow row : sample) {
      for (String cell : row.cells()) {
        comma |= WITH_COMMA.matcher(cell.strip()).matches();
        point |= WITH_POINT.matcher(cell.strip()).matches();
      }
    }
    if (comma == point) {
      return Optional.empty();
    }
    return Optional.of(comma ? DecimalSign.COMMA : DecimalSign.POINT);
  }

  /** Whether four of five values look so, of those that are there. */
  private boolean most(int place, Predicate<String> looks) {
    return share(place, looks) * 5 >= 4;
  }

  /** Which share of the values look so, of those that are there; 0 if none is. */
  private double share(int place, Predicate<String> looks) {
    int there = 0;
    int so = 0;
    for (SheetRow row : sample) {
      String cell = row.cells().get(place).strip();
      if (!cell.isEmpty()) {
        there++;
        so += looks.test(cell) ? 1 : 0;
      }
    }
    return there == 0 ? 0 : (double) so / there;
  }

  private boolean isDate(String cell) {
    if (!cell.matches(".*\\d{4}.*|.*[./-].*[./-].*")) {
      return false;
    }
    try {
      return new SheetDates(Optional.of(DayOrder.DAY_MONTH_YEAR), 2000).read(cell) != null;
    } catch (IllegalArgumentException e) {
      return SLASHED.matcher(cell).matches();
    }
  }

  private static boolean isNumber(String cell) {
    return cell.matches("[+-]?\\d+([.,]\\d+)?");
  }

  private static boolean isCode(String cell) {
    return cell.matches("\\d{2}-\\d{3,}.*") && code(cell) != null;
  }

  private static @Nullable Code code(String cell) {
    try {
      return Code.parse(cell);
    } catch (CodeException e) {
      return null;
    }
  }

  private static boolean isTaxon(String cell) {
    if (!cell.matches("\\p{Lu}(\\p{Ll}+|\\.) .*")) {
      return false;
    }
    try {
      return cell.charAt(1) == '.' || !TaxonName.parse(cell).epithets().isEmpty();
    } catch (NameException e) {
      return false;
    }
  }
}
