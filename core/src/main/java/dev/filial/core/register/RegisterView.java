package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ObjLongConsumer;

/**
 * A register as rules and questions read it: one thing at a time, by its code. The in-memory
 * register and the store on disk both implement it; neither has to load the whole book to answer.
 */
public interface RegisterView {

  /** The number of the last entry; 0 for an empty book. */
  long size();

  /** The entry of that number as it was written. */
  Optional<Entry> entry(long number);

  /** What that entry says now: amended where it was amended; empty when struck or not there. */
  Optional<Statement> effective(long number);

  /**
   * The entries that now make a statement of one of those kinds, by number, in order. Cost: here,
   * reading the whole book; a store looks only at what kind each entry is of.
   */
  default List<Long> entriesOf(Set<Class<? extends Statement>> kinds) {
    List<Long> entries = new ArrayList<>();
    for (long entry = 1; entry <= size(); entry++) {
      if (effective(entry).filter(statement -> kinds.contains(statement.getClass())).isPresent()) {
        entries.add(entry);
      }
    }
    return List.copyOf(entries);
  }

  /**
   * Reads, in order, what each entry says now that makes a statement of one of those kinds. Cost:
   * here, reading the whole book; a store reads the others no further than to see of what kind they
   * are, and many entries together.
   *
   * @param taker is given the statement and the number of its entry; it may read on here meanwhile
   */
  default void readAll(Set<Class<? extends Statement>> kinds, ObjLongConsumer<Statement> taker) {
    long last = size();
    for (long entry = 1; entry <= last; entry++) {
      Statement statement = effective(entry).orElse(null);
      if (statement != null && kinds.contains(statement.getClass())) {
        taker.accept(statement, entry);
      }
    }
  }

  /** The entries that now change something about {@code subject}, by number. */
  List<Long> entriesOn(Subject subject);

  /** The entries that now lean on {@code subject} without changing it, by number. */
  List<Long> entriesMentioning(Subject subject);

  /** The first entry that now leans on {@code subject} without changing it; empty for none. */
  default OptionalLong firstMention(Subject subject) {
    List<Long> entries = entriesMentioning(subject);
    return entries.isEmpty() ? OptionalLong.empty() : OptionalLong.of(entries.get(0));
  }

  /** The keys of all things of that kind that entries now change something about, in order. */
  List<String> keys(Subject.Kind kind);

  /** What {@code code} stands for, struck ones too; empty when it was never given out. */
  Optional<Item> taken(Code code);

  /** What is known of the taxon of that folded name; empty when nobody declared or renamed it. */
  Optional<Taxon> taxon(String key);

  /** The trait of that name in lower case. */
  Optional<TraitDeclared> trait(String key);

  /** The codes taken under a whole code, itself included, in order of their text. */
  List<Code> codesUnder(Code whole);

  /**
   * Plants by their own name: those whose name begins so, in either case, by name; at most {@code
   * most}.
   */
  Map<String, List<Code>> named(String beginning, int most);

  /** Things by their own name, in either case and without outer spaces, in order of their codes. */
  default List<Code> called(String name) {
    Set<Code> called = new TreeSet<>();
    named(name, Integer.MAX_VALUE)
        .forEach(
            (other, codes) -> {
              if (Names.folded(other).equals(Names.folded(name))) {
                called.addAll(codes);
              }
            });
    return List.copyOf(called);
  }

  /** Codes whose text begins so, in order; at most {@code most}. */
  List<Code> codesBeginning(String text, int most);

  /**
   * The highest running number given out in that year (two digits), struck ones too; 0 for none.
   */
  long lastNumber(int year);

  /** The highest suffix number of that kind given out under a whole code; 0 for none. */
  long lastSuffix(Code whole, Item.Kind kind);

  /** Every coded thing of those kinds that was not struck, in order of entry. */
  List<Item> items(Set<Item.Kind> kinds);

  /** Every taxon that was declared or renamed, by key. */
  List<Taxon> taxa();

  /** Every trait, by name. */
  List<TraitDeclared> traits();

  /** Whether nothing recorded departs from two chromosome sets. */
  boolean isAllDiploid();

  /** What {@code code} stands for; empty when it was never given out, or struck. */
  default Optional<Item> item(Code code) {
    return taken(code).filter(item -> !item.struck());
  }

  /** What those of {@code codes} stand for that were given out and not struck, by code. */
  default Map<Code, Item> itemsOf(Collection<Code> codes) {
    Map<Code, Item> found = new LinkedHashMap<>();
    for (Code code : codes) {
      item(code).ifPresent(item -> found.put(code, item));
    }
    return found;
  }

  /**
   * What a thing was when a statement about it was made, by all that is said of it of an earlier
   * day, or of the same day in an earlier entry; empty if nothing is.
   *
   * @param entry the entry of that statement
   */
  default Optional<Item> itemBefore(Code code, long entry) {
    return Derivation.itemBefore(this, code, entry);
  }

  /** What {@code code} stands for, read as the record it was joined with. */
  default Optional<Item> resolved(Code code) {
    Optional<Item> item = item(code);
    // Joins were checked for loops when they were accepted.
    while (item.isPresent() && item.get().sameAs() != null) {
      item = item(item.get().sameAs());
    }
    return item;
  }

  /** What those of {@code codes} stand for as {@link #resolved} has it, by the codes asked for. */
  default Map<Code, Item> resolvedOf(Collection<Code> codes) {
    Map<Code, Item> found = itemsOf(codes);
    Map<Code, Item> resolved = new LinkedHashMap<>();
    found.forEach(
        (code, item) -> {
          if (item.sameAs() == null) {
            resolved.put(code, item);
          } else {
            resolved(code).ifPresent(kept -> resolved.put(code, kept));
          }
        });
    return resolved;
  }

  /**
   * The trait of that name.
   *
   * @throws RegisterRefusal if nobody declared it; the message names those there are
   */
  default TraitDeclared requiredTrait(String name) {
    return trait(Subject.trait(name).key())
        .orElseThrow(
            () -> {
              String known =
                  String.join(", ", traits().stream().map(TraitDeclared::trait).toList());
              return new RegisterRefusal(
                  "no trait is called \""
                      + name
                      + "\""
                      + (known.isEmpty()
                          ? "; declare it first"
                          : "; the traits are " + known + ", or declare it first"));
            });
  }

  /**
   * The locus of that name; outer spaces do not count, case does. Empty when nobody declared it.
   */
  default Optional<LocusDeclared> locus(String name) {
    for (long entry : entriesOn(Subject.locus(name))) {
      if (effective(entry).orElse(null) instanceof LocusDeclared locus) {
        return Optional.of(locus);
      }
    }
    return Optional.empty();
  }

  /** Every locus, by name. */
  default List<LocusDeclared> loci() {
    return keys(Subject.Kind.LOCUS).stream().flatMap(name -> locus(name).stream()).toList();
  }

  /** How the trait of that name in lower case is inherited; empty when nobody said. */
  default Optional<ModelDeclared> model(String traitKey) {
    for (long entry : entriesOn(new Subject(Subject.Kind.TRAIT, traitKey))) {
      if (effective(entry).orElse(null) instanceof ModelDeclared model) {
        return Optional.of(model);
      }
    }
    return Optional.empty();
  }

  /**
   * What plants of a taxon carry, whatever name it was said of: all that was stated of the accepted
   * name and of those read as it, under the accepted name; of one locus, of how chromosomes pair
   * and of how long they are, the later statement holds. Empty when nobody said anything.
   *
   * @throws IllegalArgumentException if the name cannot be read
   */
  default Optional<ProfileStated> profile(String taxonName) {
    return Profiles.of(this, taxonName);
  }

  /**
   * The field numbers of the population that {@code fieldNumber} is of: itself, and all that were
   * declared to be of one population with it, over any number of declarations; sorted. Outer spaces
   * do not count.
   */
  default NavigableSet<String> population(String fieldNumber) {
    return Populations.of(this, fieldNumber, null);
  }

  /** The opening entry; empty for an empty book. */
  default Optional<RegisterOpened> opening() {
    return effective(1).map(RegisterOpened.class::cast);
  }

  /**
   * The taxon that {@code name} is to be read as: its accepted name, and what was declared of it
   * or, failing that, of a name that is read as it. A name nobody declared is its own.
   *
   * @throws IllegalArgumentException if the name cannot be read
   */
  default Taxon accepted(String name) {
    String key = Subject.taxon(name).key();
    String spelt = name;
    Optional<Taxon> taxon = taxon(key);
    while (taxon.isPresent() && taxon.get().acceptedAs() != null) {
      spelt = taxon.get().acceptedAs();
      key = Subject.taxon(spelt).key();
      taxon = taxon(key);
    }
    if (taxon.isEmpty()) {
      return new Taxon(key, spelt, null, List.of(), null);
    }
    Taxon found = taxon.get();
    return found.declared() != null
        ? found
        : NameChains.declaredUnderOlderName(this, found)
            .map(older -> new Taxon(found.key(), found.name(), null, found.readAlso(), older))
            .orElse(found);
  }

  /**
   * All things that the given ones descend from, themselves included, under the codes that children
   * name; joined records appear beside what they are read as, and for seedlings, groups, lots and
   * sowings the whole code they stand under.
   */
  default Map<Code, Item> lineage(Collection<Code> roots) {
    Map<Code, Item> found = new LinkedHashMap<>();
    Set<Code> seen = new HashSet<>(roots);
    Deque<Code> open = new ArrayDeque<>(roots);
    while (!open.isEmpty()) {
      Optional<Item> item = item(open.remove());
      if (item.isEmpty()) {
        continue;
      }
      found.put(item.get().code(), item.get());
      for (Code next : Lineage.next(item.get())) {
        if (seen.add(next)) {
          open.add(next);
        }
      }
    }
    return found;
  }
}
