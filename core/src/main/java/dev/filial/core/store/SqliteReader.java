package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.register.Entry;
import dev.filial.core.register.EntryJson;
import dev.filial.core.register.Item;
import dev.filial.core.register.Names;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.store.StoreException.Reason;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ObjLongConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Reads the register out of its tables, one thing at a time. */
final class SqliteReader implements RegisterView {

  /**
   * All that {@code roots} come of; SQLite's recursive common table expression visits each once.
   */
  private static final String UPWARDS =
      // The same steps as Lineage.next, save that from a seedling it goes on to the parents of its
      // family at once. Three columns of one row: a thing and its descent are each looked up once.
      // Over a view of all the steps SQLite would first write out the steps of the whole register,
      // and with a term for each kind of step it would look everything up four times.
      """
      WITH RECURSIVE up(code) AS (
        SELECT value FROM json_each(?)
        UNION
        SELECT CASE way.n WHEN 0 THEN i.same_as WHEN 1 THEN d.seed ELSE d.pollen END AS next
        FROM up CROSS JOIN item i ON i.code = up.code
          LEFT JOIN descent d ON d.code = i.whole AND i.struck = 0 AND i.same_as IS NULL
          CROSS JOIN (SELECT 0 AS n UNION ALL SELECT 1 UNION ALL SELECT 2) way
        WHERE next IS NOT NULL
      )
      """;

  /** All of the lineage. CROSS JOIN has SQLite begin with it; it might go through all items. */
  static final String LINEAGE =
      UPWARDS
          + "SELECT "
          + ItemRows.WITH_FAMILY
          + """

              FROM up CROSS JOIN item i ON i.code = up.code
                LEFT JOIN item family ON family.code = i.whole AND i.same_as IS NULL
                  AND family.struck = 0
                LEFT JOIN descent d ON d.code = i.whole AND (i.suffix = 0 OR i.same_as IS NULL)
              WHERE i.struck = 0
              """;

  private static final String ITEMS =
      "SELECT " + ItemRows.ALONE + " FROM item i LEFT JOIN descent d ON d.code = i.code ";

  /** Items by their codes, each looked up; a descent lies in the key in its order. */
  static final String ITEMS_OF =
      "SELECT "
          + ItemRows.ALONE
          + """

              FROM (SELECT DISTINCT value AS code FROM json_each(?)) wanted
                CROSS JOIN item i ON i.code = wanted.code
                LEFT JOIN descent d ON d.code = i.code
              WHERE i.struck = 0
              """;

  /** No character sorts behind it, in the UTF-8 by which SQLite compares. */
  private static final String LAST = Character.toString(Character.MAX_CODE_POINT);

  private final Sql sql;

  SqliteReader(Sql sql) {
    this.sql = sql;
  }

  @Override
  public long size() {
    return sql.number("SELECT max(number) FROM entry");
  }

  @Override
  public Optional<Entry> entry(long number) {
    Optional<Entry> entry =
        sql.one("SELECT * FROM entry WHERE number = ?", SqliteRows::entry, number);
    if (entry.isPresent()) {
      requireIntact(entry.get());
    }
    return entry;
  }

  /** The whole book in order, digests unchecked. */
  List<Entry> entries() {
    return sql.all("SELECT * FROM entry ORDER BY number", SqliteRows::entry);
  }

  private void requireIntact(Entry entry) {
    if (!entry.isIntact(digestBefore(entry.number()))) {
      throw damaged(entry.number());
    }
  }

  private String digestBefore(long number) {
    return number == 1
        ? Entry.NO_DIGEST
        : sql.one("SELECT digest FROM entry WHERE number = ?", row -> row.getString(1), number - 1)
            .orElse("");
  }

  private StoreException damaged(long number) {
    return new StoreException(
        Reason.DAMAGED,
        sql.file()
            + " is damaged: entry "
            + number
            + " is not as it was written. Restore the register from a copy, or save what can"
            + " still be read");
  }

  /**
   * How many entries are looked over at a time before something is written. A Java that has just
   * started takes two milliseconds for each.
   */
  private static final int STRETCH = 4;

  /**
   * Looks over the digests of the last entries and of one stretch of older ones, so that a book
   * that was damaged is not long written to: to look over all of it takes longer than to write.
   * Which stretch it is follows from the last digest, and so is another after each writing.
   *
   * @throws StoreException if one of them is not as it was written
   */
  void requireSound() {
    long last = size();
    requireIntact(Math.max(1, last - STRETCH + 1), last);
    long older = last - STRETCH;
    if (older > 0) {
      long stretches = (older + STRETCH - 1) / STRETCH;
      long drawn = Math.floorMod(digestBefore(last + 1).hashCode(), stretches);
      requireIntact(drawn * STRETCH + 1, Math.min(older, (drawn + 1) * STRETCH));
    }
  }

  private void requireIntact(long first, long last) {
    String previous = digestBefore(first);
    long number = first;
    for (Entry entry :
        sql.all(
            "SELECT * FROM entry WHERE number BETWEEN ? AND ? ORDER BY number",
            SqliteRows::entry,
            first,
            last)) {
      if (entry.number() != number || !entry.isIntact(previous)) {
        throw damaged(number);
      }
      previous = entry.digest();
      number++;
    }
    if (number <= last) {
      throw damaged(number);
    }
  }

  @Override
  public Optional<Statement> effective(long number) {
    Optional<Optional<String>> changed =
        sql.one(
            "SELECT body FROM in_force WHERE entry = ?",
            row -> Optional.ofNullable(row.getString(1)),
            number);
    return changed.isPresent()
        ? changed.get().map(EntryJson::read)
        : entry(number).map(Entry::statement);
  }

  /**
   * By what each entry says now; one that was struck says nothing, and one that cannot be read is
   * left to whoever reads it, who then tells so.
   */
  private static final String OF_KINDS =
      """
      WITH now(number, body) AS (
        SELECT number, CASE WHEN in_force.entry IS NULL THEN entry.body ELSE in_force.body END
        FROM entry LEFT JOIN in_force ON in_force.entry = number
      )
      SELECT number FROM now
      WHERE CASE WHEN json_valid(body)
          THEN json_extract(body, '$.kind') IN (SELECT value FROM json_each(?))
          ELSE body IS NOT NULL END
      ORDER BY number
      """;

  @Override
  public List<Long> entriesOf(Set<Class<? extends Statement>> kinds) {
    return sql.all(OF_KINDS, row -> row.getLong(1), words(kinds));
  }

  private static String words(Set<Class<? extends Statement>> kinds) {
    return kinds.stream()
        .map(kind -> '"' + EntryJson.kind(kind) + '"')
        .collect(Collectors.joining(",", "[", "]"));
  }

  /**
   * The next entries of some kinds as they read now, each with what seals it unless it was amended.
   * In one text, for a column costs as much to fetch as to check; the writer, who may have any
   * name, comes last. What cannot be read is among them, so that it is not passed over.
   */
  static final String NEXT_OF_KINDS =
      """
      SELECT entry.number, CASE WHEN now.entry IS NULL THEN entry.body ELSE now.body END AS says,
        CASE WHEN now.entry IS NULL THEN coalesce(before.digest, '') || char(10) || entry.digest
          || char(10) || entry.time || char(10) || entry.writer END
      FROM entry LEFT JOIN in_force now ON now.entry = entry.number
        LEFT JOIN entry before ON before.number = entry.number - 1
      WHERE entry.number > ?1 AND CASE WHEN json_valid(says)
        THEN json_extract(says, '$.kind') IN (SELECT value FROM json_each(?2))
        ELSE says IS NOT NULL END
      ORDER BY entry.number
      LIMIT ?3
      """;

  /** How many entries are held at once while many are read. */
  private static final int AT_ONCE = 2000;

  /**
   * An entry as it lies in the file.
   *
   * @param seal what it was sealed with; null when it was amended, for then another entry says it
   */
  private record Lying(long number, String body, @Nullable String seal) {

    boolean isIntact() {
      if (seal == null) {
        return true;
      }
      int digest = seal.indexOf('\n') + 1;
      int time = seal.indexOf('\n', digest) + 1;
      int writer = seal.indexOf('\n', time) + 1;
      if (time == 0 || writer == 0) {
        return false;
      }
      return Entry.isSealed(
          number,
          seal.substring(time, writer - 1),
          seal.substring(writer),
          body,
          seal.substring(digest, time - 1),
          number == 1 ? Entry.NO_DIGEST : seal.substring(0, digest - 1));
    }
  }

  @Override
  public void readAll(Set<Class<? extends Statement>> kinds, ObjLongConsumer<Statement> taker) {
    String words = words(kinds);
    long last = 0;
    List<Lying> some;
    do {
      // Read before they are handed on, since whoever takes them may ask for others.
      some =
          sql.all(
              NEXT_OF_KINDS,
              row -> new Lying(row.getLong(1), row.getString(2), row.getString(3)),
              last,
              words,
              AT_ONCE);
      for (Lying lying : some) {
        last = lying.number();
        // One that does not look as it was sealed is read by itself, which tells what is wrong.
        Statement statement =
            lying.isIntact()
                ? EntryJson.read(lying.body())
                : effective(lying.number()).orElseThrow();
        if (kinds.contains(statement.getClass())) {
          taker.accept(statement, last);
        }
      }
    } while (some.size() == AT_ONCE);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return concerns(subject, 0);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return concerns(subject, 1);
  }

  @Override
  public OptionalLong firstMention(Subject subject) {
    long first =
        sql.number(
            "SELECT min(entry) FROM concerns WHERE subject = ? AND leaning = 1", key(subject));
    return first == 0 ? OptionalLong.empty() : OptionalLong.of(first);
  }

  private List<Long> concerns(Subject subject, int leaning) {
    return sql.all(
        "SELECT entry FROM concerns WHERE subject = ? AND leaning = ? ORDER BY entry",
        row -> row.getLong(1),
        key(subject),
        leaning);
  }

  /** The highest number of a kind under a family; as the index holds only what has one, it asks. */
  static final String LAST_SUFFIX =
      "SELECT max(suffix) FROM item WHERE whole = ? AND kind = ? AND suffix > 0";

  /** What stands under a family, and the family itself. */
  static final String UNDER =
      """
      SELECT code FROM item WHERE code = ?1
      UNION ALL SELECT code FROM item WHERE whole = ?1 AND suffix > 0
      ORDER BY code
      """;

  /** The subjects of one kind: they begin alike and so lie beside each other in the key. */
  static final String KEYS =
      "SELECT DISTINCT subject FROM concerns WHERE subject >= ? AND subject < ? AND leaning = 0";

  @Override
  public List<String> keys(Subject.Kind kind) {
    String prefix = prefix(kind);
    return sql
        .all(KEYS, row -> row.getString(1).substring(prefix.length()), prefix, prefix + LAST)
        .stream()
        .sorted()
        .toList();
  }

  static String key(Subject subject) {
    return prefix(subject.kind()) + subject.key();
  }

  private static String prefix(Subject.Kind kind) {
    return switch (kind) {
      case CODE -> "code:";
      case TAXON -> "taxon:";
      case TRAIT -> "trait:";
      case LOCUS -> "locus:";
      case FIELD_NUMBER -> "number:";
      case ENTRY -> "entry:";
      case PLACE -> "place:";
      case INTERVAL -> "interval:";
      case CAUTION -> "caution:";
    };
  }

  @Override
  public Optional<Item> taken(Code code) {
    return Optional.ofNullable(
        itemsIn(ITEMS + "WHERE i.code = ? ORDER BY d.place", code.text()).get(code));
  }

  @Override
  public Map<Code, Item> itemsOf(Collection<Code> codes) {
    return itemsIn(ITEMS_OF, array(codes));
  }

  @Override
  public Map<Code, Item> lineage(Collection<Code> roots) {
    ItemRows rows = new ItemRows();
    sql.each(LINEAGE, rows::withFamily, unused -> {}, array(roots));
    // Few, and their other columns would have to be asked for with every seedling.
    rows.sayingMore().forEach(family -> taken(family).ifPresent(rows::put));
    return rows.found();
  }

  /** Codes as one value of a query; they hold nothing that JSON would escape. */
  private static String array(Collection<Code> codes) {
    StringBuilder array = new StringBuilder("[");
    for (Code code : codes) {
      array.append(array.length() > 1 ? "," : "").append('"').append(code.text()).append('"');
    }
    return array.append(']').toString();
  }

  /** Reads items with their descent, the rows of one thing's descent beside each other. */
  private Map<Code, Item> itemsIn(String query, Object value) {
    ItemRows rows = new ItemRows();
    sql.each(query, rows::alone, unused -> {}, value);
    return rows.found();
  }

  @Override
  public Optional<Taxon> taxon(String key) {
    return sql.one("SELECT * FROM taxon WHERE key = ?", SqliteRows::taxon, key);
  }

  @Override
  public List<Taxon> taxa() {
    return sql.all("SELECT * FROM taxon ORDER BY key", SqliteRows::taxon);
  }

  @Override
  public Optional<TraitDeclared> trait(String key) {
    return sql.one(
        "SELECT body FROM trait WHERE key = ?",
        row -> (TraitDeclared) EntryJson.read(row.getString(1)),
        key);
  }

  @Override
  public List<TraitDeclared> traits() {
    return sql.all(
        "SELECT body FROM trait ORDER BY key",
        row -> (TraitDeclared) EntryJson.read(row.getString(1)));
  }

  @Override
  public List<Code> codesUnder(Code whole) {
    return sql.all(UNDER, row -> Code.parse(row.getString(1)), whole.text());
  }

  @Override
  public List<Code> codesBeginning(String text, int most) {
    return sql.all(
        "SELECT code FROM item WHERE code >= ? AND code < ? ORDER BY code LIMIT ?",
        row -> Code.parse(row.getString(1)),
        text,
        text + LAST,
        most);
  }

  @Override
  public Map<String, List<Code>> named(String beginning, int most) {
    String from = Names.folded(beginning);
    Map<String, List<Code>> found = new TreeMap<>();
    sql.all(
        """
        SELECT name, code FROM own_name
        WHERE folded >= ?1 AND folded < ?2 AND name IN (
          SELECT DISTINCT name FROM own_name WHERE folded >= ?1 AND folded < ?2
          ORDER BY name LIMIT ?3)
        """,
        row ->
            found
                .computeIfAbsent(row.getString(1), any -> new ArrayList<>())
                .add(Code.parse(row.getString(2))),
        from,
        from + LAST,
        most);
    found.values().forEach(Collections::sort);
    return Collections.unmodifiableMap(found);
  }

  @Override
  public List<Code> called(String name) {
    return sql
        .all(
            "SELECT DISTINCT code FROM own_name WHERE folded = ?",
            row -> Code.parse(row.getString(1)),
            Names.folded(name))
        .stream()
        .sorted()
        .toList();
  }

  @Override
  public long lastNumber(int year) {
    return sql.number("SELECT max(number) FROM item WHERE year = ?", year);
  }

  @Override
  public long lastSuffix(Code whole, Item.Kind kind) {
    return sql.number(LAST_SUFFIX, whole.text(), kind.name());
  }

  @Override
  public List<Item> items(Set<Item.Kind> kinds) {
    String wanted =
        kinds.stream()
            .map(kind -> '"' + kind.name() + '"')
            .collect(Collectors.joining(",", "[", "]"));
    return itemsIn(
            ITEMS
                + """
                  WHERE i.struck = 0 AND i.kind IN (SELECT value FROM json_each(?))
                  ORDER BY i.code, d.place
                  """,
            wanted)
        .values()
        .stream()
        .sorted(Item.IN_ORDER)
        .toList();
  }

  @Override
  public boolean isAllDiploid() {
    return sql.number(
            """
            SELECT EXISTS (SELECT 1 FROM item WHERE not_diploid = 1)
              OR EXISTS (SELECT 1 FROM taxon WHERE ploidy <> 2)
            """)
        == 0;
  }
}
