package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The register in memory: the entries and what is derived from them, as plain maps. Changes as
 * deltas are applied; not safe for use by several threads. {@link Register} is the immutable view
 * of one.
 */
public final class RegisterTables implements RegisterView {

  private final List<Entry> entries;
  private final Map<Long, Optional<Statement>> statements;
  private final Map<Subject, NavigableSet<Long>> on;
  private final Map<Subject, NavigableSet<Long>> mentioning;

  /** Of the kinds of which there are few; codes and entries are found among the subjects. */
  private final Map<Subject.Kind, NavigableSet<String>> keys;

  private final NavigableMap<String, Item> items;
  private final NavigableMap<String, NavigableMap<String, NavigableSet<Code>>> names;
  private final TreeMap<String, Taxon> taxa;
  private final TreeMap<String, TraitDeclared> traits;
  private final Map<Integer, Long> lastNumbers;
  private long departures;

  /** An empty book. */
  public RegisterTables() {
    entries = new ArrayList<>();
    statements = new HashMap<>();
    on = new HashMap<>();
    mentioning = new HashMap<>();
    keys = new EnumMap<>(Subject.Kind.class);
    items = new TreeMap<>();
    names = new TreeMap<>();
    taxa = new TreeMap<>();
    traits = new TreeMap<>();
    lastNumbers = new HashMap<>();
  }

  /** A copy that shares nothing that changes; cost in proportion to the book. */
  public RegisterTables(RegisterTables other) {
    entries = new ArrayList<>(other.entries);
    statements = new HashMap<>(other.statements);
    on = deepCopy(other.on);
    mentioning = deepCopy(other.mentioning);
    keys = new EnumMap<>(Subject.Kind.class);
    other.keys.forEach((kind, known) -> keys.put(kind, new TreeSet<>(known)));
    items = new TreeMap<>(other.items);
    names = new TreeMap<>();
    other.names.forEach(
        (folded, spelt) -> {
          NavigableMap<String, NavigableSet<Code>> copy = new TreeMap<>();
          spelt.forEach((name, codes) -> copy.put(name, new TreeSet<>(codes)));
          names.put(folded, copy);
        });
    taxa = new TreeMap<>(other.taxa);
    traits = new TreeMap<>(other.traits);
    lastNumbers = new HashMap<>(other.lastNumbers);
    departures = other.departures;
  }

  private static Map<Subject, NavigableSet<Long>> deepCopy(Map<Subject, NavigableSet<Long>> map) {
    Map<Subject, NavigableSet<Long>> copy = new HashMap<>(map.size() * 2);
    map.forEach((subject, numbers) -> copy.put(subject, new TreeSet<>(numbers)));
    return copy;
  }

  /** Applies what a {@link Clerk} accepted. */
  public void apply(Delta delta) {
    entries.addAll(delta.entries());
    for (Change change : delta.changes()) {
      unlink(change.entry(), change.concernedBefore());
      statements.put(change.entry(), change.after());
      link(change.entry(), change.concernedAfter());
    }
    delta.items().forEach(this::put);
    delta
        .taxa()
        .forEach(
            (key, taxon) -> {
              departures -= taxon(key).filter(old -> !Ploidies.isDiploid(old)).isPresent() ? 1 : 0;
              departures += taxon.filter(now -> !Ploidies.isDiploid(now)).isPresent() ? 1 : 0;
              taxon.ifPresentOrElse(now -> taxa.put(key, now), () -> taxa.remove(key));
            });
    delta
        .traits()
        .forEach(
            (key, trait) ->
                trait.ifPresentOrElse(now -> traits.put(key, now), () -> traits.remove(key)));
  }

  private void link(long entry, Concerns concerns) {
    for (Subject subject : concerns.subjects()) {
      on.computeIfAbsent(subject, any -> new TreeSet<>()).add(entry);
      if (isFew(subject.kind())) {
        keys.computeIfAbsent(subject.kind(), any -> new TreeSet<>()).add(subject.key());
      }
    }
    concerns
        .mentions()
        .forEach(s -> mentioning.computeIfAbsent(s, any -> new TreeSet<>()).add(entry));
  }

  private void unlink(long entry, Concerns concerns) {
    for (Subject subject : concerns.subjects()) {
      remove(on, subject, entry);
      NavigableSet<String> known = keys.get(subject.kind());
      if (known != null && !on.containsKey(subject)) {
        known.remove(subject.key());
      }
    }
    concerns.mentions().forEach(s -> remove(mentioning, s, entry));
  }

  private static void remove(Map<Subject, NavigableSet<Long>> index, Subject subject, long entry) {
    NavigableSet<Long> numbers = index.get(subject);
    if (numbers != null && numbers.remove(entry) && numbers.isEmpty()) {
      index.remove(subject);
    }
  }

  private static boolean isFew(Subject.Kind kind) {
    return kind != Subject.Kind.CODE && kind != Subject.Kind.ENTRY;
  }

  private void put(Item item) {
    Item before = items.put(item.code().text(), item);
    if (before != null) {
      departures -= Ploidies.isDiploid(before) ? 0 : 1;
      for (String name : before.names()) {
        NavigableMap<String, NavigableSet<Code>> spelt = names.get(Names.folded(name));
        if (spelt != null && spelt.containsKey(name)) {
          spelt.get(name).remove(item.code());
          spelt.values().removeIf(NavigableSet::isEmpty);
          if (spelt.isEmpty()) {
            names.remove(Names.folded(name));
          }
        }
      }
    }
    departures += Ploidies.isDiploid(item) ? 0 : 1;
    for (String name : item.names()) {
      names
          .computeIfAbsent(Names.folded(name), any -> new TreeMap<>())
          .computeIfAbsent(name, any -> new TreeSet<>())
          .add(item.code());
    }
    lastNumbers.merge(item.code().year(), item.code().number(), Math::max);
  }

  @Override
  public long size() {
    return entries.size();
  }

  @Override
  public Optional<Entry> entry(long number) {
    return number < 1 || number > entries.size()
        ? Optional.empty()
        : Optional.of(entries.get((int) number - 1));
  }

  @Override
  public Optional<Statement> effective(long number) {
    return statements.getOrDefault(number, Optional.empty());
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return numbers(on, subject);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return numbers(mentioning, subject);
  }

  @Override
  public List<String> keys(Subject.Kind kind) {
    return isFew(kind)
        ? List.copyOf(keys.getOrDefault(kind, Collections.emptyNavigableSet()))
        : on.keySet().stream()
            .filter(subject -> subject.kind() == kind)
            .map(Subject::key)
            .sorted()
            .toList();
  }

  private static List<Long> numbers(Map<Subject, NavigableSet<Long>> index, Subject subject) {
    NavigableSet<Long> numbers = index.get(subject);
    return numbers == null ? List.of() : List.copyOf(numbers);
  }

  @Override
  public Optional<Item> taken(Code code) {
    return Optional.ofNullable(items.get(code.text()));
  }

  @Override
  public Optional<Taxon> taxon(String key) {
    return Optional.ofNullable(taxa.get(key));
  }

  @Override
  public Optional<TraitDeclared> trait(String key) {
    return Optional.ofNullable(traits.get(key));
  }

  @Override
  public List<Code> codesUnder(Code whole) {
    return codesBeginning(whole.text(), Integer.MAX_VALUE);
  }

  @Override
  public List<Code> codesBeginning(String text, int most) {
    // Codes are printable ASCII, so that the largest character closes the range.
    return items.subMap(text, true, text + Character.MAX_VALUE, true).values().stream()
        .limit(most)
        .map(Item::code)
        .toList();
  }

  @Override
  public Map<String, List<Code>> named(String beginning, int most) {
    String from = Names.folded(beginning);
    NavigableMap<String, NavigableSet<Code>> found = new TreeMap<>();
    for (NavigableMap<String, NavigableSet<Code>> spelt :
        names.subMap(from, true, from + Character.MAX_VALUE, true).values()) {
      found.putAll(spelt);
    }
    return Names.first(found, most);
  }

  @Override
  public List<Code> called(String name) {
    NavigableSet<Code> called = new TreeSet<>();
    names
        .getOrDefault(Names.folded(name), Collections.emptyNavigableMap())
        .values()
        .forEach(called::addAll);
    return List.copyOf(called);
  }

  @Override
  public long lastNumber(int year) {
    return lastNumbers.getOrDefault(year, 0L);
  }

  @Override
  public long lastSuffix(Code whole, Item.Kind kind) {
    return codesUnder(whole).stream()
        .filter(code -> taken(code).filter(item -> item.kind() == kind).isPresent())
        .mapToLong(code -> code.part().number())
        .max()
        .orElse(0);
  }

  @Override
  public List<Item> items(Set<Item.Kind> kinds) {
    return items.values().stream()
        .filter(item -> !item.struck() && kinds.contains(item.kind()))
        .sorted(Item.IN_ORDER)
        .toList();
  }

  @Override
  public List<Taxon> taxa() {
    return List.copyOf(taxa.values());
  }

  @Override
  public List<TraitDeclared> traits() {
    return List.copyOf(traits.values());
  }

  @Override
  public boolean isAllDiploid() {
    return departures == 0;
  }
}
