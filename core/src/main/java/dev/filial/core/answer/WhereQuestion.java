package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Introduction;
import dev.filial.core.register.Item;
import dev.filial.core.register.LotSplit;
import dev.filial.core.register.LotsMerged;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Places;
import dev.filial.core.register.Potted;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Where things stand: all that is in a place and in the places within it, and where the seed and
 * the seedlings of a cross, a packet, a fruit's lot, a sowing or a pot are now.
 *
 * <p>Places nest as they were last said to ({@link Places}). A seedling stands where it was pricked
 * out to or moved to; where nobody said, it has no place.
 */
public final class WhereQuestion {

  private static final int NAMED = 12;

  /** What stands somewhere; of a cross its seed and its pots do. */
  private static final Set<Item.Kind> STANDING =
      Set.of(Item.Kind.PLANT, Item.Kind.SEEDLING, Item.Kind.GROUP, Item.Kind.SOWING, Item.Kind.LOT);

  private final RegisterView view;
  private final Places places;
  private final boolean gone;

  private WhereQuestion(RegisterView view, boolean gone) {
    this.view = view;
    this.places = Places.of(view);
    this.gone = gone;
  }

  /** Asks {@code view} for what is here. */
  public static WhereQuestion of(RegisterView view) {
    return new WhereQuestion(view, false);
  }

  /** The same, with what has died, left or was used up, where it stood last. */
  public WhereQuestion withGone(boolean also) {
    return new WhereQuestion(view, also);
  }

  /**
   * One thing and where it stands.
   *
   * @param code its code
   * @param kind what it is, in a grower's words
   * @param what its taxon or parents
   * @param count how many there are, or null for a single plant and what was not counted
   * @param places where it stands, from the smallest place to the largest; empty when nobody said
   * @param fate what became of it
   * @param mixed whether it comes of a mixed packet, so that only some of it is what was asked for
   */
  public record Line(
      Code code,
      String kind,
      String what,
      @Nullable Count count,
      List<String> places,
      String fate,
      boolean mixed) {

    /** Copies the list. */
    public Line {
      places = List.copyOf(places);
    }
  }

  /**
   * The answer.
   *
   * @param asked the code or the place asked for
   * @param lines what stands where: of a place in order of places and codes, of a thing in order of
   *     codes
   * @param gone how many plants, pots and lots of it are here no longer
   */
  public record Report(String asked, List<Line> lines, int gone) {

    /** Copies the list. */
    public Report {
      lines = List.copyOf(lines);
    }
  }

  /**
   * All that stands in a place.
   *
   * @throws RegisterRefusal if nothing ever stood there and nobody spoke of it; the message names
   *     the places there are
   */
  public Report inPlace(String place) {
    int left = 0;
    List<Line> lines = new ArrayList<>();
    for (Item item : itemsIn(place, STANDING)) {
      boolean here = Holdings.isHere(item);
      left += here ? 0 : 1;
      if (here || gone) {
        lines.add(line(item, false));
      }
    }
    lines.sort(
        (one, other) -> {
          int byPlace =
              String.join("\n", reversed(one.places()))
                  .compareToIgnoreCase(String.join("\n", reversed(other.places())));
          return byPlace == 0 ? one.code().compareTo(other.code()) : byPlace;
        });
    return new Report(places.around(place).get(0), lines, left);
  }

  /**
   * What of these kinds stands in a place now, in order of codes; a sowing that was divided into
   * pots is named by these.
   *
   * @throws RegisterRefusal if there is no such place, or nothing of these kinds is in it
   */
  public List<Code> codesIn(String place, Set<Item.Kind> kinds) {
    List<Code> codes =
        itemsIn(place, kinds).stream().filter(Holdings::isHere).map(Item::code).sorted().toList();
    if (codes.isEmpty()) {
      throw new RegisterRefusal(
          "nothing of that kind stands in "
              + places.around(place).get(0)
              + "; name it by its code");
    }
    return codes;
  }

  /**
   * Where one thing is, and what was raised or taken from it without a further cross: of a cross or
   * packet all its seed and seedlings; of a lot what was sown of it and what came of that.
   *
   * @throws RegisterRefusal if there is no such thing
   */
  public Report ofThing(Code code) {
    Map<Code, Boolean> found = closure(code);
    int left = 0;
    List<Line> lines = new ArrayList<>();
    for (Map.Entry<Code, Boolean> one : new TreeMap<>(found).entrySet()) {
      Item item = Things.required(view, one.getKey());
      if (item.kind().isFamily() || Holdings.isDivided(view, item)) {
        continue;
      }
      boolean here = Holdings.isHere(item);
      left += here ? 0 : 1;
      if (here || gone) {
        lines.add(line(item, one.getValue()));
      }
    }
    return new Report(code.text(), lines, left);
  }

  private Map<Code, Boolean> closure(Code start) {
    Map<Code, Boolean> found = new LinkedHashMap<>();
    Deque<Code> open = new ArrayDeque<>();
    found.put(Things.required(view, start).code(), false);
    open.add(start);
    while (!open.isEmpty()) {
      Code code = open.remove();
      boolean mixed = found.getOrDefault(code, false);
      for (Map.Entry<Code, Boolean> next : next(code).entrySet()) {
        if (view.item(next.getKey()).isPresent()
            && found.putIfAbsent(next.getKey(), mixed || next.getValue()) == null) {
          open.add(next.getKey());
        }
      }
    }
    return found;
  }

  /** What was taken out of it by one step, and whether mixed with other seed by that. */
  private Map<Code, Boolean> next(Code code) {
    Map<Code, Boolean> next = new LinkedHashMap<>();
    Item item = Things.required(view, code);
    if (item.kind().isFamily()) {
      view.codesUnder(code.whole()).forEach(under -> next.putIfAbsent(under, false));
    }
    if (item.kind().isPlant()) {
      return next;
    }
    TreeSet<Long> entries = new TreeSet<>(view.entriesOn(Subject.of(code)));
    entries.addAll(view.entriesMentioning(Subject.of(code)));
    for (long entry : entries) {
      Statement statement = view.effective(entry).orElseThrow();
      if (isTakenFrom(statement, code)) {
        boolean mixed = statement instanceof LotsMerged;
        Introduction.codes(statement).forEach(taken -> next.putIfAbsent(taken, mixed));
      }
    }
    return next;
  }

  private static boolean isTakenFrom(Statement statement, Code code) {
    if (statement instanceof Sown sown) {
      return sown.lot().equals(code) || sown.sowing().equals(code);
    }
    if (statement instanceof LotSplit split) {
      return split.from().equals(code);
    }
    if (statement instanceof Potted potted) {
      return potted.from().equals(code);
    }
    if (statement instanceof Numbered numbered) {
      return numbered.from().equals(code);
    }
    return statement instanceof LotsMerged merged
        && merged.parts().stream().anyMatch(part -> part.lot().equals(code));
  }

  private List<Item> itemsIn(String place, Set<Item.Kind> kinds) {
    Map<String, Boolean> within = new LinkedHashMap<>();
    List<Item> there = new ArrayList<>();
    boolean known = places.all().stream().anyMatch(name -> same(name, place));
    for (Item item : view.items(STANDING)) {
      if (item.place() == null || item.neverHeld() || item.sameAs() != null) {
        continue;
      }
      if (within.computeIfAbsent(item.place(), name -> places.isWithin(name, place))) {
        known = true;
        if (kinds.contains(item.kind()) && !Holdings.isDivided(view, item)) {
          there.add(item);
        }
      }
    }
    if (!known) {
      throw new RegisterRefusal(unknown(place, within.keySet()));
    }
    return there;
  }

  private String unknown(String place, Set<String> used) {
    TreeSet<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    names.addAll(used);
    names.addAll(places.all());
    String some = String.join(", ", names.stream().limit(NAMED).toList());
    return "nothing stands in a place called \""
        + place
        + "\""
        + (names.isEmpty()
            ? ", and no place was ever named"
            : "; there are "
                + some
                + (names.size() > NAMED ? " and " + (names.size() - NAMED) + " more" : ""));
  }

  private static boolean same(String one, String other) {
    return Subject.place(one).equals(Subject.place(other));
  }

  private Line line(Item item, boolean mixed) {
    return new Line(
        item.code(),
        item.kind().word(),
        Describing.of(view, item),
        item.count(),
        item.place() == null ? List.of() : places.around(item.place()),
        Describing.fate(item),
        mixed);
  }

  private static List<String> reversed(List<String> path) {
    List<String> outermostFirst = new ArrayList<>(path);
    Collections.reverse(outermostFirst);
    return outermostFirst;
  }
}
