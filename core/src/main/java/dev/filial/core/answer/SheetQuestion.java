package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What one walks along the bench with a pencil for: pots and sowings to be counted, crosses whose
 * fruit is awaited, plants to be looked at, in the order of their places.
 */
public final class SheetQuestion {

  /** What is asked of a thing. */
  public enum Sort {
    /** Seedlings: how many came up, are alive, were lost. */
    SEEDLINGS,
    /** Flowers: how many set, how many failed. */
    FLOWERS,
    /** A plant: whether it died. */
    PLANT
  }

  /**
   * A row of the sheet.
   *
   * @param number counted from 1
   * @param code what it is about
   * @param sort what is asked of it
   * @param what its taxon or parents, and its own names
   * @param count how many there were last, or null
   * @param place where it stands, or null
   */
  public record Row(
      int number,
      Code code,
      Sort sort,
      String what,
      @Nullable Count count,
      @Nullable String place) {}

  /**
   * A sheet.
   *
   * @param upTo the last entry that it knows of
   * @param rows its rows
   */
  public record Sheet(long upTo, List<Row> rows) {}

  private static final Set<Item.Kind> USUAL =
      Set.of(Item.Kind.GROUP, Item.Kind.SOWING, Item.Kind.CROSS);

  private final RegisterView view;
  private final Set<Item.Kind> kinds;
  private final @Nullable String text;
  private final long upTo;

  private SheetQuestion(RegisterView view, Set<Item.Kind> kinds, @Nullable String text, long upTo) {
    this.view = view;
    this.kinds = kinds;
    this.text = text;
    this.upTo = upTo;
  }

  /** Asks {@code view} for pots, sowings without pots, and crosses whose fruit is awaited. */
  public static SheetQuestion of(RegisterView view) {
    return new SheetQuestion(view, USUAL, null, view.size());
  }

  /** The same of these kinds: pots, sowings, crosses, plants, seedlings. */
  public SheetQuestion withKinds(Set<Item.Kind> only) {
    return new SheetQuestion(view, Set.copyOf(only), text, upTo);
  }

  /** The same, only what {@link ListQuestion#withText} would find. */
  public SheetQuestion withText(@Nullable String words) {
    return new SheetQuestion(view, kinds, words, upTo);
  }

  /**
   * The same as it was when {@code entry} was the last one, so that a sheet printed then can be
   * typed in: what came later is left out, and what went away later still has its row.
   */
  public SheetQuestion upTo(long entry) {
    return new SheetQuestion(view, kinds, text, Math.min(entry, view.size()));
  }

  /** The sheet. Cost in proportion to what of those kinds there is. */
  public Sheet ask() {
    EnumSet<Item.Kind> wanted = EnumSet.noneOf(Item.Kind.class);
    wanted.addAll(kinds);
    List<ListQuestion.Line> lines = new ArrayList<>();
    for (ListQuestion.Line line :
        ListQuestion.of(view)
            .withKinds(wanted)
            .withText(text)
            .withItselfAlone()
            .withGone(upTo < view.size())
            .ask()) {
      Item item = view.item(line.code()).orElseThrow();
      if (item.entry() <= upTo && wasHere(item) && isAwaited(item)) {
        lines.add(line);
      }
    }
    // Sorting keeps the order of entry among those of one place.
    lines.sort(Comparator.comparing(line -> line.place() == null ? "" : line.place()));
    List<Row> rows = new ArrayList<>();
    for (ListQuestion.Line line : lines) {
      StringBuilder what = new StringBuilder(line.what());
      line.names().forEach(name -> what.append(" \"").append(name).append('"'));
      rows.add(
          new Row(
              rows.size() + 1,
              line.code(),
              sort(view.item(line.code()).orElseThrow()),
              what.toString(),
              line.count(),
              line.place()));
    }
    return new Sheet(upTo, List.copyOf(rows));
  }

  private static Sort sort(Item item) {
    return switch (item.kind()) {
      case GROUP, SOWING -> Sort.SEEDLINGS;
      case CROSS -> Sort.FLOWERS;
      case PLANT, SEEDLING, LOT, SEED, MIXTURE -> Sort.PLANT;
    };
  }

  /** Whether it was here when the sheet was printed, going by when it was last written of. */
  private boolean wasHere(Item item) {
    if (item.neverHeld()) {
      return false;
    }
    List<Long> entries = view.entriesOn(Subject.of(item.code()));
    return item.fate().isHere() || (!entries.isEmpty() && entries.get(entries.size() - 1) > upTo);
  }

  private boolean isAwaited(Item item) {
    if (item.kind() == Item.Kind.SOWING) {
      return !Holdings.isDivided(view, item);
    }
    return item.kind() != Item.Kind.CROSS || fruitIsAwaited(item);
  }

  /** Nothing was harvested yet, and not all that was written of its flowers is that they failed. */
  private boolean fruitIsAwaited(Item cross) {
    for (Code under : view.codesUnder(cross.code())) {
      if (under.isLot() && view.item(under).filter(lot -> lot.entry() <= upTo).isPresent()) {
        return false;
      }
    }
    boolean written = false;
    for (long entry : view.entriesOn(Subject.of(cross.code()))) {
      Statement said = view.effective(entry).orElse(null);
      if (entry <= upTo && said instanceof FruitRecorded fruit) {
        if (fruit.set() != null && !fruit.set().equals(Count.of(0))) {
          return true;
        }
        written = true;
      }
    }
    return !written;
  }
}
