package dev.filial.core.spreadsheet;

import dev.filial.core.answer.Holdings;
import dev.filial.core.answer.NextCode;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Determination;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Item;
import dev.filial.core.register.Named;
import dev.filial.core.register.Observed;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Turns a row into the statements that would have been typed for it. */
final class RowEntries {

  private final RegisterView book;
  private final RowKind kind;
  private final Labels labels;
  private final NamedThings things;
  private final long before;
  private final int thisYear;
  private final Consumer<String> warnings;

  /**
   * For one table.
   *
   * @param before the last entry before the first row
   * @param warnings told what looks unlikely and is taken all the same
   */
  RowEntries(
      RegisterView book, RowKind kind, long before, int thisYear, Consumer<String> warnings) {
    this.book = book;
    this.kind = kind;
    this.labels = new Labels(book);
    this.things = new NamedThings(book);
    this.before = before;
    this.thisYear = thisYear;
    this.warnings = warnings;
  }

  /**
   * The statements of one row, in the order in which they are written.
   *
   * @throws CellRefusal if a cell cannot be read
   */
  List<Statement> of(RowReading row) {
    return switch (kind) {
      case PLANTS -> plant(row);
      case SEED -> seed(row);
      case CROSSES -> cross(row);
      case SOWINGS -> sowing(row);
      case COUNTS -> count(row);
      case MEASUREMENTS -> measurements(row);
    };
  }

  /** What tells one plant or packet from another, beside a number of its row. */
  private static final List<Field> TELLING =
      List.of(
          Field.TAXON,
          Field.MAKEUP,
          Field.CULTIVAR,
          Field.GENERATION,
          Field.PLOIDY,
          Field.NAME,
          Field.DONOR,
          Field.DONOR_CODE,
          Field.FIELD_NUMBER,
          Field.LOCALITY,
          Field.DATE,
          Field.SEEDS,
          Field.PLACE);

  /** A row with a number alone is one that was never filled in. */
  private static void requireAnything(RowReading row) {
    if (row.remark() == null && TELLING.stream().allMatch(field -> row.text(field) == null)) {
      throw new CellRefusal(
          "",
          "nothing is said of it; write ? for its taxon if nothing is known, or take the row out");
    }
  }

  private List<Statement> plant(RowReading row) {
    requireAnything(row);
    boolean neverHeld = row.yes(Field.ELSEWHERE);
    PartialDate date = row.date(Field.DATE);
    Code code = code(row, date);
    List<String> names = new ArrayList<>();
    String old = oldCode(row);
    if (old != null) {
      names.add(old);
    }
    for (String name : several(row.text(Field.NAME))) {
      if (!names.contains(name)) {
        noteNamesakes(name);
        names.add(name);
      }
    }
    return List.of(
        new PlantAcquired(
            code,
            labels.determination(row, warnings),
            provenance(row),
            date,
            names,
            neverHeld,
            row.text(Field.PLACE),
            row.remark()));
  }

  private static List<String> several(@Nullable String names) {
    return names == null
        ? List.of()
        : Arrays.stream(names.split(";", -1)).map(String::strip).filter(n -> !n.isEmpty()).toList();
  }

  private void noteNamesakes(String name) {
    List<Code> others = things.called(name);
    if (!others.isEmpty()) {
      warnings.accept(
          "\""
              + name
              + "\" is also what "
              + others.get(0).text()
              + (others.size() == 1 ? "" : " and " + (others.size() - 1) + " more")
              + (others.size() == 1 ? " is" : " are")
              + " called; from now on each is to be named by its code");
    }
  }

  private List<Statement> seed(RowReading row) {
    requireAnything(row);
    PartialDate date = row.date(Field.DATE);
    Code code = code(row, date);
    String old = oldCode(row);
    Determination determination = labels.determination(row, warnings);
    List<Statement> statements = new ArrayList<>();
    statements.add(
        new SeedAcquired(
            code,
            determination,
            provenance(row),
            date,
            or(row.count(Field.SEEDS), Count.unknown()),
            row.text(Field.PLACE),
            row.remark()));
    called(code, old, statements);
    return statements;
  }

  private static void called(Code code, @Nullable String old, List<Statement> statements) {
    if (old != null) {
      statements.add(new Named(code, old, null));
    }
  }

  private static Provenance provenance(RowReading row) {
    return new Provenance(
        row.text(Field.DONOR),
        row.text(Field.DONOR_CODE),
        row.text(Field.FIELD_NUMBER),
        row.text(Field.LOCALITY));
  }

  private List<Statement> cross(RowReading row) {
    PartialDate date = row.date(Field.DATE);
    Code code = code(row, date);
    String old = oldCode(row);
    Code seedParent = row.require(Field.SEED_PARENT, things::one).code();
    List<Statement> statements = new ArrayList<>();
    statements.add(
        new Pollinated(
            code,
            seedParent,
            row.require(Field.POLLEN_PARENT, this::pollen),
            date,
            row.count(Field.FLOWERS),
            or(row.read(Field.PROTECTION, RowEntries::protection), List.of()),
            Fraction.ZERO,
            Fraction.ZERO,
            Fraction.ZERO,
            null,
            null,
            false,
            row.text(Field.PLACE),
            row.remark()));
    called(code, old, statements);
    PartialDate harvested = row.date(Field.HARVEST_DATE);
    PartialDate seen = row.date(Field.FRUIT_DATE);
    Count set = row.count(Field.SET);
    Count failed = row.count(Field.FAILED);
    if (set != null || failed != null) {
      statements.add(
          new FruitRecorded(
              code, seen == null ? harvested : seen, set, failed, null, null, null, null));
    }
    Count seeds = row.count(Field.SEEDS);
    Count fruits = row.count(Field.FRUITS);
    if (seeds != null || fruits != null || harvested != null) {
      statements.add(
          new Harvested(
              code.lot(1),
              harvested,
              fruits,
              false,
              or(seeds, Count.unknown()),
              null,
              null,
              row.text(Field.SEED_PLACE),
              null));
    }
    return statements;
  }

  private Pollen pollen(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "self", "selfed", "selbst", "selbstung", "geselbstet", "selfing" -> new Pollen.Itself();
      case "open", "bees", "offen", "frei", "bienen", "open pollinated", "frei abgeblüht" ->
          new Pollen.Open(List.of(), Fraction.ONE);
      default -> new Pollen.OnePlant(things.one(text).code());
    };
  }

  private static List<Protection> protection(String text) {
    List<Protection> all = new ArrayList<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[,;+/]|\\s(and|und)\\s", -1)) {
      all.add(
          switch (word.strip()) {
            case "emasculated", "kastriert" -> Protection.EMASCULATED;
            case "bagged", "bag", "eingetütet", "tüte", "beutel" -> Protection.BAGGED;
            case "isolated", "isoliert" -> Protection.ISOLATED;
            case "none", "no", "keine", "kein", "nein" -> Protection.NONE;
            default ->
                throw new IllegalArgumentException(
                    "\""
                        + word.strip()
                        + "\" is no protection; write emasculated, bagged, isolated or none");
          });
    }
    return List.copyOf(all);
  }

  private List<Statement> sowing(RowReading row) {
    Code lot = row.require(Field.LOT, text -> Holdings.in(book).lot(things.one(text)).code());
    Code sowing = NextCode.in(book).sowing(lot);
    PartialDate date = row.date(Field.DATE);
    List<Statement> statements = new ArrayList<>();
    statements.add(
        new Sown(
            sowing,
            lot,
            date,
            or(row.count(Field.SEEDS), Count.unknown()),
            row.text(Field.MEDIUM),
            null,
            false,
            row.text(Field.CONTAINER),
            false,
            null,
            null,
            List.of(),
            List.of(),
            row.text(Field.PLACE),
            row.remark()));
    Count up = row.count(Field.CAME_UP);
    Count alive = row.count(Field.ALIVE);
    PartialDate counted = row.date(Field.COUNT_DATE);
    if (up != null || alive != null) {
      statements.add(
          new Counted(
              counted == null ? date : counted,
              List.of(new Counted.Reading(sowing, up, alive)),
              null));
    }
    return statements;
  }

  private List<Statement> count(RowReading row) {
    Code pot = row.require(Field.POT, text -> Holdings.in(book).pot(things.one(text)).code());
    Count up = row.count(Field.CAME_UP);
    Count alive = row.count(Field.ALIVE);
    PartialDate date = row.date(Field.DATE);
    return List.of(new Counted(date, List.of(new Counted.Reading(pot, up, alive)), row.remark()));
  }

  private List<Statement> measurements(RowReading row) {
    Code plant = row.require(Field.PLANT, things::one).code();
    PartialDate date = row.date(Field.DATE);
    String remark = row.remark();
    List<Statement> statements = new ArrayList<>();
    String trait = row.text(Field.TRAIT);
    if (trait != null) {
      statements.add(
          new Observed(
              plant, trait, value(row, trait, row.required(Field.VALUE)), date, null, remark));
    }
    for (Map.Entry<String, String> measured : row.traits().entrySet()) {
      String value = value(row, measured.getKey(), measured.getValue());
      statements.add(new Observed(plant, measured.getKey(), value, date, null, remark));
    }
    if (statements.isEmpty()) {
      throw new CellRefusal("", "nothing was measured in this row; fill it in, or take it out");
    }
    return statements;
  }

  /** A state as it is spelt, a score or a measurement as a number with a point. */
  private String value(RowReading row, String trait, String written) {
    Optional<TraitDeclared> declared = book.trait(Subject.trait(trait).key());
    if (declared.isEmpty()) {
      return written; // the rules say that nobody declared it
    }
    if (declared.get().states().isEmpty()) {
      Function<String, String> number = text -> row.numbers().number(text).toPlainString();
      return RowReading.reading(row.traitHeader(trait), written, number);
    }
    return declared.get().states().stream()
        .filter(state -> state.equalsIgnoreCase(written))
        .findFirst()
        .orElse(written);
  }

  /** The code that the row states, or the next of its year. */
  private Code code(RowReading row, @Nullable PartialDate date) {
    Code stated = row.read(Field.CODE, Code::parse);
    if (stated == null) {
      return NextCode.in(book).ofYear(date == null ? thisYear : date.year());
    }
    Optional<Item> taken = book.taken(stated);
    if (taken.isPresent() && taken.get().entry() > before) {
      throw new CellRefusal(
          row.header(Field.CODE),
          stated.text() + " is the code of an earlier row too; give each row a code of its own");
    }
    return stated;
  }

  /** The grower's own number until now: no two things have the same. */
  private @Nullable String oldCode(RowReading row) {
    String old = row.text(Field.OLD_CODE);
    if (old == null) {
      return null;
    }
    List<Code> bearers = things.called(old);
    if (!bearers.isEmpty()) {
      Code first = bearers.get(0);
      boolean inFile = book.taken(first).filter(item -> item.entry() > before).isPresent();
      throw new CellRefusal(
          row.header(Field.OLD_CODE),
          "\""
              + RowReading.shortened(old)
              + (inFile
                  ? "\" is the number of an earlier row too; give each row one of its own, or map"
                      + " the column as a name"
                  : "\" is what "
                      + first.text()
                      + " is called already; is this row in the register?"));
    }
    return old;
  }

  private static <T> T or(@Nullable T value, T otherwise) {
    return value == null ? otherwise : value;
  }
}
