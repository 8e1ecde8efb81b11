package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A register with entries added or amended that are not yet accepted: the rules look at this, and
 * if they refuse, the register beneath has seen nothing of it.
 */
final class Draft implements RegisterView {

  private final RegisterView base;
  private final TreeMap<Long, Entry> entries = new TreeMap<>();
  private final TreeMap<Long, Change> changes = new TreeMap<>();
  private final Map<Code, Item> items = new HashMap<>();
  private final Map<String, Optional<Taxon>> taxa = new HashMap<>();
  private final Map<String, Optional<TraitDeclared>> traits = new HashMap<>();

  Draft(RegisterView base) {
    this.base = base;
  }

  void add(Entry entry) {
    entries.put(entry.number(), entry);
  }

  /** Sets what an entry says from now on, without deriving anything from it. */
  void say(long number, Optional<Statement> statement) {
    Change known = changes.get(number);
    changes.put(
        number,
        known == null
            ? Change.of(number, base.effective(number), statement)
            : known.withAfter(statement));
  }

  /** What entries say now that said something else before, in order of number. */
  Collection<Change> changes() {
    return changes.values();
  }

  /** Derives anew what is true of {@code subjects}. */
  void derive(Collection<Subject> subjects) {
    for (Subject subject : subjects) {
      switch (subject.kind()) {
        case CODE -> derive(Code.parse(subject.key()));
        case TAXON -> taxa.put(subject.key(), Derivation.taxon(this, subject.key()));
        case TRAIT -> traits.put(subject.key(), Derivation.trait(this, subject.key()));
        case LOCUS,
            FIELD_NUMBER,
            ENTRY,
            PLACE,
            INTERVAL,
            CAUTION -> {} // what is said of these is read where it stands
      }
    }
  }

  private void derive(Code code) {
    Optional<Item> item = Derivation.item(this, code);
    if (item.isPresent()) {
      items.put(code, item.get());
    } else {
      // The code stays taken, so that no second plant ever stands under it.
      taken(code).ifPresent(before -> items.put(code, before.asStruck()));
    }
  }

  Delta delta() {
    return new Delta(
        List.copyOf(entries.values()), List.copyOf(changes.values()), items.values(), taxa, traits);
  }

  @Override
  public long size() {
    return entries.isEmpty() ? base.size() : entries.lastKey();
  }

  @Override
  public Optional<Entry> entry(long number) {
    Entry entry = entries.get(number);
    return entry == null ? base.entry(number) : Optional.of(entry);
  }

  @Override
  public Optional<Statement> effective(long number) {
    Change change = changes.get(number);
    return change == null ? base.effective(number) : change.after();
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return overlaid(base.entriesOn(subject), concern -> concern.subjects().contains(subject));
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return overlaid(
        base.entriesMentioning(subject), concern -> concern.mentions().contains(subject));
  }

  @Override
  public List<String> keys(Subject.Kind kind) {
    TreeSet<String> keys = new TreeSet<>(base.keys(kind));
    for (Change change : changes.values()) {
      for (Concerns concerned : List.of(change.concernedBefore(), change.concernedAfter())) {
        for (Subject subject : concerned.subjects()) {
          if (subject.kind() != kind) {
            continue;
          }
          if (entriesOn(subject).isEmpty()) {
            keys.remove(subject.key());
          } else {
            keys.add(subject.key());
          }
        }
      }
    }
    return List.copyOf(keys);
  }

  private List<Long> overlaid(List<Long> below, Predicate<Concerns> about) {
    TreeSet<Long> numbers = null;
    for (Change change : changes.values()) {
      boolean listed = about.test(change.concernedAfter());
      if (listed == (Collections.binarySearch(below, change.entry()) >= 0)) {
        continue;
      }
      numbers = numbers == null ? new TreeSet<>(below) : numbers;
      if (listed) {
        numbers.add(change.entry());
      } else {
        numbers.remove(change.entry());
      }
    }
    return numbers == null ? below : List.copyOf(numbers);
  }

  @Override
  public Optional<Item> taken(Code code) {
    Item item = items.get(code);
    return item == null ? base.taken(code) : Optional.of(item);
  }

  @Override
  public Optional<Taxon> taxon(String key) {
    Optional<Taxon> taxon = taxa.get(key);
    return taxon == null ? base.taxon(key) : taxon;
  }

  @Override
  public Optional<TraitDeclared> trait(String key) {
    Optional<TraitDeclared> trait = traits.get(key);
    return trait == null ? base.trait(key) : trait;
  }

  @Override
  public List<Code> codesUnder(Code whole) {
    return codes(
        base.codesUnder(whole).stream(), code -> code.whole().equals(whole), Integer.MAX_VALUE);
  }

  @Override
  public List<Code> codesBeginning(String text, int most) {
    return codes(
        base.codesBeginning(text, most).stream(), code -> code.text().startsWith(text), most);
  }

  private List<Code> codes(Stream<Code> below, Predicate<Code> concerns, int most) {
    TreeMap<String, Code> all = new TreeMap<>();
    Stream.concat(below, items.keySet().stream().filter(concerns))
        .forEach(code -> all.put(code.text(), code));
    return all.values().stream().limit(most).toList();
  }

  @Override
  public Map<String, List<Code>> named(String beginning, int most) {
    // A name may be gone from below for each name that a changed thing bore there.
    long hidden =
        items.keySet().stream()
            .flatMap(code -> base.taken(code).stream())
            .mapToLong(item -> item.names().size())
            .sum();
    TreeMap<String, TreeSet<Code>> names = new TreeMap<>();
    base.named(beginning, (int) Math.min(Integer.MAX_VALUE, most + hidden))
        .forEach(
            (name, codes) -> {
              TreeSet<Code> kept =
                  codes.stream()
                      .filter(code -> !items.containsKey(code))
                      .collect(Collectors.toCollection(TreeSet::new));
              if (!kept.isEmpty()) {
                names.put(name, kept);
              }
            });
    for (Item item : items.values()) {
      for (String name : item.names()) {
        if (Names.begins(name, beginning)) {
          names.computeIfAbsent(name, any -> new TreeSet<>()).add(item.code());
        }
      }
    }
    return Names.first(names, most);
  }

  @Override
  public long lastNumber(int year) {
    return items.keySet().stream()
        .filter(code -> code.year() == year)
        .mapToLong(Code::number)
        .reduce(base.lastNumber(year), Math::max);
  }

  @Override
  public long lastSuffix(Code whole, Item.Kind kind) {
    return items.values().stream()
        .filter(item -> item.kind() == kind && item.code().whole().equals(whole))
        .mapToLong(item -> item.code().part().number())
        .reduce(base.lastSuffix(whole, kind), Math::max);
  }

  @Override
  public List<Item> items(Set<Item.Kind> kinds) {
    return Stream.concat(
            base.items(kinds).stream().filter(item -> !items.containsKey(item.code())),
            items.values().stream().filter(item -> !item.struck() && kinds.contains(item.kind())))
        .sorted(Item.IN_ORDER)
        .toList();
  }

  @Override
  public List<Taxon> taxa() {
    TreeMap<String, Taxon> all = new TreeMap<>();
    base.taxa().forEach(taxon -> all.put(taxon.key(), taxon));
    overlay(all, taxa);
    return List.copyOf(all.values());
  }

  @Override
  public List<TraitDeclared> traits() {
    TreeMap<String, TraitDeclared> all = new TreeMap<>();
    base.traits().forEach(trait -> all.put(Subject.trait(trait.trait()).key(), trait));
    overlay(all, traits);
    return List.copyOf(all.values());
  }

  private static <T> void overlay(Map<String, T> below, Map<String, Optional<T>> above) {
    above.forEach(
        (key, value) ->
            value.ifPresentOrElse(kept -> below.put(key, kept), () -> below.remove(key)));
  }

  /** As below, unless the draft departs; it may say no where the accepted entries will say yes. */
  @Override
  public boolean isAllDiploid() {
    return base.isAllDiploid()
        && items.values().stream().allMatch(Ploidies::isDiploid)
        && taxa.values().stream().flatMap(Optional::stream).allMatch(Ploidies::isDiploid);
  }

  @Override
  public Map<Code, Item> lineage(Collection<Code> roots) {
    Map<Code, Item> below = base.lineage(roots);
    // The register beneath answers in one go wherever nothing on the way was changed here.
    boolean untouched =
        items.keySet().stream().noneMatch(code -> below.containsKey(code) || roots.contains(code));
    return untouched ? below : RegisterView.super.lineage(roots);
  }
}
