package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What the register holds, by kind, and narrowed by what is asked. */
public final class ListQuestion {

  private final RegisterView view;
  private final Set<Item.Kind> kinds;
  private final boolean gone;
  private final @Nullable String text;
  private final @Nullable Integer year;

  private ListQuestion(
      RegisterView view,
      Set<Item.Kind> kinds,
      boolean gone,
      @Nullable String text,
      @Nullable Integer year) {
    this.view = view;
    this.kinds = kinds;
    this.gone = gone;
    this.text = text;
    this.year = year;
  }

  /** Asks {@code view} for everything that is here. */
  public static ListQuestion of(RegisterView view) {
    return new ListQuestion(view, EnumSet.allOf(Item.Kind.class), false, null, null);
  }

  /** The same of some kinds only. */
  public ListQuestion withKinds(Set<Item.Kind> only) {
    return new ListQuestion(view, Set.copyOf(only), gone, text, year);
  }

  /** The same, with what has died, left or was used up, and what never stood here. */
  public ListQuestion withGone(boolean also) {
    return new ListQuestion(view, kinds, also, text, year);
  }

  /** The same, only where code, name, taxon, parents, field number or place hold these words. */
  public ListQuestion withText(@Nullable String words) {
    return new ListQuestion(view, kinds, gone, words, year);
  }

  /** The same, only codes of calendar year {@code only}. */
  public ListQuestion withYear(@Nullable Integer only) {
    return new ListQuestion(view, kinds, gone, text, only);
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
   * @param fate what became of it
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

  /** The list, in order of entry. */
  public List<Line> ask() {
    return view.items(kinds).stream()
        .filter(item -> item.sameAs() == null)
        .filter(item -> gone || (item.fate().isHere() && !item.neverHeld()))
        .filter(item -> year == null || item.code().year() == Math.floorMod(year, 100))
        .map(this::line)
        .filter(this::holdsText)
        .toList();
  }

  private Line line(Item item) {
    return new Line(
        item.code(),
        item.kind().word(),
        Describing.of(view, item),
        item.names(),
        item.fieldNumber(),
        item.since(),
        item.count(),
        item.place(),
        item.neverHeld()
            ? "never held"
            : item.fate().name().toLowerCase(Locale.ROOT).replace('_', ' '));
  }

  private boolean holdsText(Line line) {
    if (text == null) {
      return true;
    }
    String all =
        String.join(
                "\n",
                line.code().text(),
                line.what(),
                String.join("\n", line.names()),
                line.fieldNumber() == null ? "" : line.fieldNumber(),
                line.place() == null ? "" : line.place())
            .toLowerCase(Locale.ROOT);
    return all.contains(text.strip().toLowerCase(Locale.ROOT));
  }
}
