package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What hangs on a statement: if it was wrong, which descendants, entries and gifts are touched.
 *
 * <p>Breadth-first from what the entry speaks of, through everything that leans on it; cost in
 * proportion to what is found.
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
    Statement statement = view.effective(number).orElse(null);
    Set<Code> roots = new LinkedHashSet<>();
    Set<Code> introduced = new LinkedHashSet<>();
    if (statement != null) {
      introduced.addAll(Introduction.codes(statement));
      roots.addAll(introduced);
      if (introduced.isEmpty()) {
        roots.addAll(codes(statement));
      }
    }
    Map<Code, Integer> steps = walk(roots);
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
    entries.remove(number);
    things.sort(java.util.Comparator.comparingInt(Touched::steps).thenComparing(Touched::code));
    return new Hanging(
        Said.of(view, number), List.copyOf(things), List.copyOf(entries), gifts(entries));
  }

  /** The things a statement speaks of that gives out no code: its own, or those of its taxon. */
  private Set<Code> codes(Statement statement) {
    Set<Code> codes = new LinkedHashSet<>();
    for (Subject subject : statement.subjects()) {
      if (subject.kind() == Subject.Kind.CODE) {
        codes.add(Code.parse(subject.key()));
      } else {
        for (long entry : view.entriesMentioning(subject)) {
          codes.addAll(Introduction.codes(view.effective(entry).orElseThrow()));
        }
      }
    }
    return codes;
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
