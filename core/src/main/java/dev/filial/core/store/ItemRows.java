package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Route;
import dev.filial.core.register.Count;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Determination;
import dev.filial.core.register.Fate;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Puts items together out of the rows of one query, a row for each way a thing may have come about.
 *
 * <p>What nearly all things have in common comes as one text, and what is as it nearly always is
 * stays out of it: a column costs as much to fetch as a dozen to put together, and a deep lineage
 * has hundreds of things, read by a Java that has just started.
 */
final class ItemRows {

  /** The columns of an item {@code i} alone with a row {@code d} of its descent. */
  static final String ALONE = text("i") + ", " + Columns.DESCENT + ", " + Columns.SAYINGS;

  /** The same, {@code d} being that of the family it stands under, and that family's own text. */
  static final String WITH_FAMILY =
      ALONE
          + ", CASE WHEN i.suffix > 0 AND family.code IS NOT NULL THEN "
          + text("family")
          + " END, CASE WHEN i.kind = 'SEEDLING' AND family.kind = 'CROSS' AND "
          + Columns.PLAIN_CROSS
          + " AND "
          + plain("i")
          + " AND i.since IS NULL AND "
          + plain("family")
          + " THEN format('%s,%d,%d,%s,%s,%s', i.code, i.entry, family.entry, family.since, d.seed,"
          + " d.pollen) END";

  /** The columns by their numbers. */
  private static final class Columns {
    static final int ITEM = 1;
    static final int WAY = 2;
    static final int TAXON = 3;
    static final int CULTIVAR = 4;
    static final int MAKEUP = 5;
    static final int GENERATION = 6;
    static final int PLOIDY = 7;
    static final int FIELD_NUMBER = 8;
    static final int NAMES = 9;
    static final int PLACE = 10;
    static final int GUESS = 11;
    static final int FAMILY = 12;
    static final int SEEDLING = 13;

    static final String PLAIN_CROSS =
        """
        d.form = 'SEXUAL' AND d.route = 'CROSS' AND d.share = '1' AND d.seed_sets = 0
            AND d.pollen_sets = 0""";

    static final String DESCENT =
        "CASE WHEN "
            + PLAIN_CROSS
            + """
               THEN format('%s,%s', d.seed, d.pollen)
          WHEN d.form IS NOT NULL THEN format('%s,%s,%s,%s,%s,%d,%d', d.seed, d.pollen, d.form,
            d.route, d.share, d.seed_sets, d.pollen_sets) END""";

    static final String SAYINGS =
        """
        i.taxon, i.cultivar, i.makeup, i.generation, i.ploidy, i.field_number, i.names, i.place,
          i.guess""";

    private Columns() {}
  }

  private final Map<String, Code> codes = new HashMap<>();
  private final Map<String, PartialDate> dates = new HashMap<>();
  private final Map<Code, Item> found = new LinkedHashMap<>();

  /** By which row each came: a family comes again with each of its seedlings. */
  private final Map<Code, Code> broughtBy = new HashMap<>();

  private final Set<Code> sayingMore = new LinkedHashSet<>();

  /** All items, with every way of descent, in the order they came. */
  Map<Code, Item> found() {
    return found;
  }

  /** Families that say more than came with their seedlings. */
  Set<Code> sayingMore() {
    return sayingMore;
  }

  /** Takes an item read otherwise. */
  void put(Item item) {
    found.put(item.code(), item);
  }

  /** Reads a row of the columns {@link #ALONE}. */
  Item alone(ResultSet row) throws SQLException {
    Item item = item(row, ways(row));
    Item before = found.putIfAbsent(item.code(), item);
    if (before != null) {
      found.put(item.code(), before.withFurtherDescent(item.descent().get(0)));
    }
    return item;
  }

  /** Reads a row of the columns {@link #WITH_FAMILY}. */
  Item withFamily(ResultSet row) throws SQLException {
    String seedling = row.getString(Columns.SEEDLING);
    if (seedling != null) {
      return seedling(new Parts(seedling));
    }
    String family = row.getString(Columns.FAMILY);
    if (family == null) {
      Item item = item(row, ways(row));
      add(item, item.code());
      return item;
    }
    Item item = item(row, List.of());
    add(item, item.code());
    Code whole = item.code().whole();
    Code first = broughtBy.putIfAbsent(whole, item.code());
    if (first == null || first.equals(item.code())) {
      Parts parts = new Parts(family);
      Item plain =
          Item.plain(
              knownCode(parts.next()),
              Item.Kind.valueOf(parts.next()),
              Long.parseLong(parts.next()),
              date(parts.next()),
              ways(row));
      if (parts.isMore()) {
        sayingMore.add(whole);
      }
      add(plain, item.code());
    }
    return item;
  }

  /** A numbered seedling of a cross, nothing else being said of either, as nearly all are. */
  private Item seedling(Parts parts) {
    Code code = knownCode(parts.next());
    Item item = Item.plain(code, Item.Kind.SEEDLING, Long.parseLong(parts.next()), null, List.of());
    add(item, code);
    Code whole = code.whole();
    if (broughtBy.putIfAbsent(whole, code) == null) {
      long entry = Long.parseLong(parts.next());
      PartialDate since = date(parts.next());
      Descent cross = Descent.cross(knownCode(parts.next()), code(parts.next()));
      add(Item.plain(whole, Item.Kind.CROSS, entry, since, List.of(cross)), code);
    }
    return item;
  }

  private void add(Item item, Code row) {
    broughtBy.putIfAbsent(item.code(), row);
    Item before = found.putIfAbsent(item.code(), item);
    if (before != null && !item.descent().isEmpty() && row.equals(broughtBy.get(item.code()))) {
      found.put(item.code(), before.withFurtherDescent(item.descent().get(0)));
    }
  }

  private Item item(ResultSet row, List<Descent> descent) throws SQLException {
    Parts parts = new Parts(row.getString(Columns.ITEM));
    Code code = knownCode(parts.next());
    Item.Kind kind = Item.Kind.valueOf(parts.next());
    long entry = Long.parseLong(parts.next());
    PartialDate since = date(parts.next());
    return parts.isMore()
        ? new Item(
            code,
            kind,
            entry,
            parts.next().equals("1"),
            since,
            date(parts.next()),
            Fate.valueOf(parts.next()),
            count(parts.next()),
            determination(row),
            row.getString(Columns.FIELD_NUMBER),
            SqliteRows.lines(row.getString(Columns.NAMES)),
            row.getString(Columns.PLACE),
            descent,
            code(parts.next()),
            parts.next().equals("1"),
            parts.next().equals("1"),
            row.getString(Columns.GUESS))
        : Item.plain(code, kind, entry, since, descent);
  }

  private static Determination determination(ResultSet row) throws SQLException {
    String taxon = row.getString(Columns.TAXON);
    String cultivar = row.getString(Columns.CULTIVAR);
    String makeup = row.getString(Columns.MAKEUP);
    String generation = row.getString(Columns.GENERATION);
    Integer ploidy = SqliteRows.integer(row, Columns.PLOIDY);
    return taxon == null
            && cultivar == null
            && makeup == null
            && generation == null
            && ploidy == null
        ? Determination.UNKNOWN
        : new Determination(taxon, cultivar, SqliteRows.shares(makeup), generation, ploidy);
  }

  private List<Descent> ways(ResultSet row) throws SQLException {
    String text = row.getString(Columns.WAY);
    if (text == null) {
      return List.of();
    }
    Parts parts = new Parts(text);
    Code seed = knownCode(parts.next());
    Code pollen = code(parts.next());
    return List.of(
        parts.isMore()
            ? new Descent(
                Descent.Form.valueOf(parts.next()),
                Route.valueOf(parts.next()),
                Fraction.parse(parts.next()),
                seed,
                Integer.parseInt(parts.next()),
                pollen,
                Integer.parseInt(parts.next()))
            : Descent.cross(seed, pollen));
  }

  private @Nullable Code code(String text) {
    return text.isEmpty() ? null : knownCode(text);
  }

  /** Each code is read once: most come as a plant of its own, and as a parent of others. */
  private Code knownCode(String text) {
    Code known = codes.get(text);
    if (known == null) {
      known = Code.parse(text);
      codes.put(text, known);
    }
    return known;
  }

  private @Nullable PartialDate date(String text) {
    if (text.isEmpty()) {
      return null;
    }
    PartialDate known = dates.get(text);
    if (known == null) {
      known = PartialDate.parse(text);
      dates.put(text, known);
    }
    return known;
  }

  private static @Nullable Count count(String text) {
    return text.isEmpty() ? null : Count.parse(text);
  }

  /** What cannot hold a comma, with commas between; what comes after the date only if need be. */
  private static String text(String item) {
    return """
           format('%s,%s,%d,%s%s', i.code, i.kind, i.entry, i.since,
             CASE WHEN PLAIN THEN '' ELSE format(',%d,%s,%s,%s,%s,%d,%d', i.struck, i.until, i.fate, i.count, i.same_as,
                 i.never_held, i.unprotected) END)"""
        .replace("PLAIN", plain("i"))
        .replace("i.", item + ".");
  }

  /** Whether nothing is said of an item but what it is, its entry and its date. */
  private static String plain(String item) {
    return """
           i.struck = 0 AND i.fate = 'ALIVE' AND i.never_held = 0 AND i.unprotected = 0
             AND coalesce(i.until, i.count, i.same_as, i.taxon, i.cultivar, i.makeup, i.generation,
               i.ploidy, i.field_number, i.names, i.place, i.guess) IS NULL"""
        .replace("i.", item + ".");
  }

  /** The parts of a text between commas, one after the other. */
  private static final class Parts {
    private final String text;
    private int next;

    Parts(String text) {
      this.text = text;
    }

    boolean isMore() {
      return next <= text.length();
    }

    String next() {
      int comma = text.indexOf(',', next);
      int end = comma < 0 ? text.length() : comma;
      String part = text.substring(next, end);
      next = end + 1;
      return part;
    }
  }
}
