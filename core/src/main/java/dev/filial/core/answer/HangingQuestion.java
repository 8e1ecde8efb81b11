package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Counted;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.Moved;
import dev.filial.core.register.Named;
import dev.filial.core.register.Noted;
import dev.filial.core.register.Observed;
import dev.filial.core.register.Photographed;
import dev.filial.core.register.PlaceDeclared;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.PopulationDeclared;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.Promised;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedKept;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tallied;
import dev.filial.core.register.Taxon;
import dev.filial.core.register.TaxonDeclared;
import dev.filial.core.register.TaxonRenamed;
import dev.filial.core.register.Tended;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.register.Treated;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What hangs on a statement: if it was wrong, which descendants, entries and gifts are touched.
 *
 * <p>Breadth-first from what the entry speaks of, through everything that leans on it; cost in
 * proportion to what is found. An entry on where something stands, how many there are or what was
 * seen of it touches that thing alone; one on where it came from or what it is, all that came of it
 * too.
 */
public final class HangingQuestion {

  private final RegisterView view;

  private HangingQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static HangingQuestion of(RegisterView view) {
    return new HangingQuestion(view);
  }

  /**
   * One thing that is touched.
   *
   * @param code its code
   * @param kind what it is, in a grower's words
   * @param what its taxon or parents
   * @param steps how many steps from the statement
   */
  public record Touched(Code code, String kind, String what, int steps) {}

  /**
   * What hangs on a statement.
   *
   * @param entry the entry asked about
   * @param things plants, crosses, lots and pots that are touched, nearest first
   * @param entries the numbers of the entries made about them, in order
   * @param gifts those of them by which plants or seed left the house
   */
  public record Hanging(Said entry, List<Touched> things, List<Long> entries, List<Said> gifts) {
    /** How many of the things are plants with a number. */
    public long plants() {
      return things.stream()
          .filter(
              thing ->
                  thing.kind().equals(Item.Kind.PLANT.word())
                      || thing.kind().equals(Item.Kind.SEEDLING.word()))
          .count();
    }
  }

  /** What hangs on the entry that introduced {@code code}. */
  public Hanging onCode(Code code) {
    return onEntry(Things.required(view, code).entry());
  }

  /**
   * What hangs on entry {@code number}.
   *
   * @throws RegisterRefusal if there is no such entry
   */
  public Hanging onEntry(long number) {
    if (view.entry(number).isEmpty()) {
      throw new RegisterRefusal("there is no entry " + number + "; the last one is " + view.size());
    }
    Statement statement = meant(number);
    Map<Code, Integer> steps = new LinkedHashMap<>();
    if (statement != null) {
      Set<Code> roots = roots(statement);
      if (bearsOnOffspring(statement)) {
        steps = walk(roots);
      } else {
        for (Code root : roots) {
          steps.put(root, 0);
        }
      }
    }
    List<Touched> things = new ArrayList<>();
    TreeSet<Long> entries = new TreeSet<>();
    steps.forEach(
        (code, distance) -> {
          view.item(code)
              .ifPresent(
                  item ->
                      things.add(
                          new Touched(
                              code, item.kind().word(), Describing.of(view, item), distance)));
          entries.addAll(view.entriesOn(Subject.of(code)));
        });
    if (statement != null) {
      entries.addAll(leaning(statement));
    }
    entries.remove(number);
    things.sort(Comparator.comparingInt(Touched::steps).thenComparing(Touched::code));
    return new Hanging(
        Said.of(view, number), List.copyOf(things), List.copyOf(entries), gifts(entries));
  }

  /** What an entry says; of an amendment, or of a mark as a guess, what the entry it names says. */
  private @Nullable Statement meant(long number) {
    Statement statement = view.effective(number).orElse(null);
    while (true) {
      long named;
      if (statement instanceof Amended amended) {
        named = amended.entry();
      } else if (statement instanceof Doubted doubted) {
        named = doubted.entry();
      } else {
        return statement;
      }
      // What was struck is looked at as it was: that is what the striking changed.
      Statement first = view.entry(named).orElseThrow().statement();
      statement = view.effective(named).orElse(first);
    }
  }

  /** Whether offspring are touched too: by where a plant came from, not by where it stands. */
  private static boolean bearsOnOffspring(Statement statement) {
    return !(statement instanceof FateRecorded
        || statement instanceof Moved
        || statement instanceof Named
        || statement instanceof Noted
        || statement instanceof Counted
        || statement instanceof FruitRecorded
        || statement instanceof Observed
        || statement instanceof Tallied
        || statement instanceof Flowered
        || statement instanceof PollenKept
        || statement instanceof SeedKept
        || statement instanceof Promised
        || statement instanceof Treated
        || statement instanceof Tended
        || statement instanceof Photographed
        || statement instanceof PlaceDeclared
        || statement instanceof IntervalStated
        || statement instanceof TraitDeclared
        || statement instanceof LocusDeclared
        || statement instanceof ModelDeclared
        || statement instanceof ProfileStated
        || statement instanceof GenotypeStated);
  }

  /** Tables, profiles and genotypes are about no coded thing, or about one that is not touched. */
  private Set<Long> leaning(Statement statement) {
    Set<Long> entries = new TreeSet<>();
    for (Subject subject : statement.subjects()) {
      if (subject.kind() == Subject.Kind.LOCUS || subject.kind() == Subject.Kind.TRAIT) {
        entries.addAll(view.entriesOn(subject));
        entries.addAll(view.entriesMentioning(subject));
      }
    }
    return entries;
  }

  private Set<Code> roots(Statement statement) {
    List<Code> introduced = Introduction.codes(statement);
    if (!introduced.isEmpty()) {
      return new LinkedHashSet<>(introduced);
    }
    if (statement instanceof Joined joined) {
      return new LinkedHashSet<>(List.of(joined.other()));
    }
    Set<Code> roots = new LinkedHashSet<>();
    if (statement instanceof TaxonRenamed renamed) {
      addPlantsOf(renamed.from(), roots, new HashSet<>());
      return roots;
    }
    if (statement instanceof TaxonDeclared taxon) {
      addPlantsOf(taxon.name(), roots, new HashSet<>());
      return roots;
    }
    if (statement instanceof ProfileStated profile) {
      addPlantsOf(profile.taxon(), roots, new HashSet<>());
      addPlantsBelow(profile.taxon(), roots);
      return roots;
    }
    if (statement instanceof PopulationDeclared population) {
      for (Item item : view.items(EnumSet.of(Item.Kind.PLANT, Item.Kind.SEED))) {
        String number = item.fieldNumber();
        if (number != null && population.subjects().contains(Subject.fieldNumber(number))) {
          roots.add(item.code());
        }
      }
      return roots;
    }
    for (Subject subject : statement.subjects()) {
      if (subject.kind() == Subject.Kind.CODE) {
        roots.add(Code.parse(subject.key()));
      } else {
        for (long entry : view.entriesMentioning(subject)) {
          view.effective(entry).orElseThrow().subjects().stream()
              .filter(other -> other.kind() == Subject.Kind.CODE)
              .forEach(other -> roots.add(Code.parse(other.key())));
        }
      }
    }
    return roots;
  }

  /** What was recorded as of that taxon, or of one that is read as it. */
  private void addPlantsOf(String name, Set<Code> plants, Set<Subject> seen) {
    Subject taxon = Subject.taxon(name);
    if (!seen.add(taxon)) {
      return;
    }
    for (long entry : view.entriesMentioning(taxon)) {
      plants.addAll(Introduction.codes(view.effective(entry).orElseThrow()));
    }
    for (Taxon known : view.taxon(taxon.key()).stream().toList()) {
      known.readAlso().forEach(other -> addPlantsOf(other, plants, seen));
    }
  }

  /**
   * What came as of a taxon below that one, a species of a genus: a profile holds for those too. In
   * proportion to all that came from elsewhere.
   */
  private void addPlantsBelow(String name, Set<Code> plants) {
    Subject above = Subject.taxon(view.accepted(name).name());
    for (Item item : view.items(Set.of(Item.Kind.PLANT, Item.Kind.SEED))) {
      Set<String> taxa = new HashSet<>(item.determination().makeup().keySet());
      if (item.determination().taxon() != null) {
        taxa.add(item.determination().taxon());
      }
      for (String taxon : taxa) {
        if (TaxonProfile.upwards(view, taxon).stream()
            .map(Subject::taxon)
            .anyMatch(above::equals)) {
          plants.add(item.code());
        }
      }
    }
  }

  private Map<Code, Integer> walk(Set<Code> roots) {
    Map<Code, Integer> steps = new HashMap<>();
    Deque<Code> open = new ArrayDeque<>();
    roots.forEach(
        root -> {
          steps.put(root, 0);
          open.add(root);
        });
    while (!open.isEmpty()) {
      Code here = open.remove();
      for (Code next : Offspring.next(view, here)) {
        if (!steps.containsKey(next)) {
          steps.put(next, steps.getOrDefault(here, 0) + 1);
          open.add(next);
        }
      }
    }
    return steps;
  }

  private List<Said> gifts(Set<Long> entries) {
    return entries.stream()
        .filter(
            entry ->
                view.effective(entry).orElse(null) instanceof FateRecorded fate
                    && fate.fate() == Fate.GIVEN)
        .map(entry -> Said.of(view, entry))
        .toList();
  }
}
