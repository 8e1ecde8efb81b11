package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the register holds, by kind, and narrowed by what is asked. */
public final class ListQuestion {

  private final RegisterView view;
  private final Set<Item.Kind> kinds;
  private final boolean gone;
  private final @Nullable String text;
  private final @Nullable Integer year;
  private final boolean byParents;

  private ListQuestion(
      RegisterView view,
      Set<Item.Kind> kinds,
      boolean gone,
      @Nullable String text,
      @Nullable Integer year,
      boolean byParents) {
    this.byParents = byParents;
    this.view = view;
    this.kinds = kinds;
    this.gone = gone;
    this.text = text;
    this.year = year;
  }

  /** Asks {@code view} for everything that is here. */
  public static ListQuestion of(RegisterView view) {
    return new ListQuestion(view, EnumSet.allOf(Item.Kind.class), false, null, null, true);
  }

  /** The same of some kinds only. */
  public ListQuestion withKinds(Set<Item.Kind> only) {
    return new ListQuestion(view, Set.copyOf(only), gone, text, year, byParents);
  }

  /** The same, with what has died, left or was used up, and what never stood here. */
  public ListQuestion withGone(boolean also) {
    return new ListQuestion(view, kinds, also, text, year, byParents);
  }

  /**
   * The same, only where code, kind, name, taxon (also as it came), field number, place, and the
   * codes, names and taxa of the parents hold all of these words, in either case.
   */
  public ListQuestion withText(@Nullable String words) {
    return new ListQuestion(view, kinds, gone, words, year, byParents);
  }

  /** The same, the words being looked for in what is said of a thing itself, not of its parents. */
  ListQuestion withItselfAlone() {
    return new ListQuestion(view, kinds, gone, text, year, false);
  }

  /** The same, only codes of calendar year {@code only}. */
  public ListQuestion withYear(@Nullable Integer only) {
    return new ListQuestion(view, kinds, gone, text, only, byParents);
  }

  /**
   * One thing of the list.
   *
   * @param code its code
   * @param kind what it is, in a grower's words
   * @param what its taxon or parents
   * @param names its own names
   * @param fieldNumber the collector's field number, or null
   * @param since the day it came about or came here, or null
   * @param count how many there are now, or null
   * @param place where it stands, or null
   * @param fate what became of it; nothing for a cross or a packet, of which nothing becomes
   */
  public record Line(
      Code code,
      String kind,
      String what,
      List<String> names,
      @Nullable String fieldNumber,
      @Nullable PartialDate since,
      @Nullable Count count,
      @Nullable String place,
      String fate) {}

  /** The list, in order of entry. Everything that is looked at is read together. */
  public List<Line> ask() {
    List<Item> items = view.items(kinds);
    ItemsAtHand atHand = new ItemsAtHand(view);
    atHand.keep(items);
    List<Item> asked = items.stream().filter(this::isAskedFor).toList();
    List<Code> families = new ArrayList<>();
    for (Item item : asked) {
      if (!item.code().isWhole()) {
        families.add(item.code().whole());
      }
    }
    atHand.fetch(families);
    if (text != null && byParents) {
      atHand.fetch(parents(asked, atHand));
    }
    return new Lines(atHand).of(asked);
  }

  private boolean isAskedFor(Item item) {
    return item.sameAs() == null
        && (gone || (item.fate().isHere() && !item.neverHeld()))
        && (year == null || item.code().year() == Math.floorMod(year, 100));
  }

  private static List<Code> parents(List<Item> items, ItemsAtHand atHand) {
    List<Code> parents = new ArrayList<>();
    for (Item item : items) {
      for (Descent way : atHand.item(item.code().whole()).orElse(item).descent()) {
        parents.add(way.seed());
        if (way.pollen() != null) {
          parents.add(way.pollen());
        }
      }
    }
    return parents;
  }

  /** Makes lines of things, each cross being put into words once for all that stands under it. */
  private final class Lines {
    private final RegisterView atHand;
    private final ParentNames parents;
    private final List<String> words;
    private final Map<Code, String> crosses = new HashMap<>();

    Lines(RegisterView atHand) {
      this.atHand = atHand;
      this.parents = ParentNames.in(atHand);
      this.words =
          text == null
              ? List.of()
              : List.of(text.strip().toLowerCase(Locale.ROOT).split("\\s+", -1));
    }

    List<Line> of(List<Item> items) {
      List<Line> lines = new ArrayList<>();
      for (Item item : items) {
        String what = what(item);
        if (words.isEmpty() || holdsWords(item, what)) {
          lines.add(line(item, what));
        }
      }
      return lines;
    }

    private String what(Item item) {
      Item origin = Describing.origin(atHand, item);
      return origin.kind() == Item.Kind.CROSS
          ? crosses.computeIfAbsent(origin.code(), any -> Describing.of(atHand, origin))
          : Describing.of(atHand, item);
    }

    private Line line(Item item, String what) {
      return new Line(
          item.code(),
          item.kind().word(),
          what,
          item.names(),
          item.fieldNumber(),
          item.since(),
          item.count(),
          item.place(),
          Describing.fate(item));
    }

    /** Whether each of the words stands somewhere in what is said of it, in any order. */
    private boolean holdsWords(Item item, String what) {
      StringBuilder all = new StringBuilder();
      all.append(item.code().text()).append('\n').append(what).append('\n');
      all.append(item.kind().word());
      item.names().forEach(name -> all.append('\n').append(name));
      // The name it came under is known to some who never heard the one that is accepted now.
      add(all, item.determination().taxon());
      add(all, item.fieldNumber());
      add(all, item.place());
      String said = all.toString().toLowerCase(Locale.ROOT);
      List<String> missing = new ArrayList<>();
      for (String word : words) {
        if (!said.contains(word)) {
          missing.add(word);
        }
      }
      if (missing.isEmpty() || !byParents) {
        return missing.isEmpty();
      }
      List<String> names = parents.of(item.code());
      if (names.isEmpty()) {
        return false;
      }
      String behind = String.join("\n", names).toLowerCase(Locale.ROOT);
      return missing.stream().allMatch(behind::contains);
    }
  }

  private static void add(StringBuilder all, @Nullable String words) {
    if (words != null) {
      all.append('\n').append(words);
    }
  }
}
