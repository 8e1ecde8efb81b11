package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.Protection;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What has set on what, and which way round: the hand pollinations of every two plants, or of every
 * two taxa, the one as seed parent beside the other.
 */
public final class SetsQuestion {

  /** What is set beside each other. */
  public enum By {
    /** Each plant by itself; all plants of one clone, and records joined, are one. */
    PLANT,
    /** Taxa; a hybrid is all taxa behind it. */
    TAXON
  }

  private final RegisterView view;
  private final By by;

  private SetsQuestion(RegisterView view, By by) {
    this.view = view;
    this.by = by;
  }

  /** Asks {@code view}, plant by plant. */
  public static SetsQuestion of(RegisterView view) {
    return new SetsQuestion(view, By.PLANT);
  }

  /** The same by plants or by taxa. */
  public SetsQuestion by(By other) {
    return new SetsQuestion(view, other);
  }

  /**
   * Two plants or taxa.
   *
   * @param one the one, a code or a taxon, before the other in the alphabet
   * @param other the other; of a selfing the same
   * @param oneBears with {@code one} as the seed parent
   * @param otherBears with {@code other} as the seed parent; none where both are called the same
   * @param isSelfing whether every plant of it bore with its own pollen, or with that of another
   *     plant of its clone. What is called the same without it was crossed between different
   *     plants, which tells nothing of selfing.
   */
  public record Row(
      String one, String other, Tries oneBears, Tries otherBears, boolean isSelfing) {}

  /**
   * The table.
   *
   * @param rows every two that were crossed by hand, in order of the alphabet
   * @param notes what was left out or is to be minded, a sentence each
   */
  public record Sets(List<Row> rows, List<String> notes) {}

  /** The table. One pass over all crosses and what was written of their fruit. */
  public Sets ask() {
    List<Pollinated> crosses = new ArrayList<>();
    Map<Code, List<FruitRecorded>> fruit = new HashMap<>();
    CloneNames clones = CloneNames.toBeRead(view);
    view.readAll(
        Set.of(Pollinated.class, FruitRecorded.class, Propagated.class, Joined.class),
        (statement, entry) -> {
          if (statement instanceof Pollinated cross) {
            crosses.add(cross);
          } else if (statement instanceof FruitRecorded of) {
            fruit.computeIfAbsent(of.cross(), any -> new ArrayList<>()).add(of);
          } else {
            clones.read(statement);
          }
        });
    return ask(crosses, names(atHand(), clones), clones, new OfAll(view, fruit));
  }

  /** By taxon each plant is come upon, and what stands behind it; by plant none. */
  private RegisterView atHand() {
    ItemsAtHand items = new ItemsAtHand(view);
    if (by == By.TAXON) {
      items.keep(view.items(EnumSet.complementOf(EnumSet.of(Item.Kind.LOT, Item.Kind.SOWING))));
    }
    return items;
  }

  /** The same of the crosses in which that plant, or an offset of it, is a parent. */
  public Sets ofPlant(Code plant) {
    Set<Code> clone = Clone.of(view, Things.required(view, plant).code());
    CloneNames clones = new CloneNames(view);
    return ask(
        Offspring.of(view, clone).stream()
            .flatMap(code -> view.item(code).stream())
            .filter(item -> item.kind() == Item.Kind.CROSS)
            .sorted(Item.IN_ORDER)
            .toList(),
        names(view, clones),
        clones);
  }

  private Function<Code, String> names(RegisterView read, CloneNames clones) {
    TaxaBehind taxa = TaxaBehind.in(read);
    return plant -> by == By.TAXON ? taxa.of(plant).text() : clones.of(plant).text();
  }

  /** The table of those crosses, each parent being called as {@code name} has it. */
  Sets ask(List<Item> crosses, Function<Code, String> name, CloneNames clones) {
    List<Pollinated> read = new ArrayList<>();
    for (Item item : crosses) {
      Statement statement = view.effective(item.entry()).orElse(null);
      if (statement instanceof Pollinated cross && cross.code().equals(item.code())) {
        read.add(cross);
      }
    }
    return ask(read, name, clones, new OneByOne(view));
  }

  private static Sets ask(
      List<Pollinated> crosses, Function<Code, String> name, CloneNames clones, Written written) {
    Map<Two, Beside> rows = new TreeMap<>();
    Left left = new Left();
    for (Pollinated cross : crosses) {
      Code pollen = left.pollenParent(cross);
      if (pollen != null) {
        Tries tries = written.tries(cross);
        left.note(written, cross, tries);
        add(
            rows,
            name.apply(cross.seedParent()),
            name.apply(pollen),
            isSelfing(cross, pollen, clones),
            tries);
      }
    }
    List<Row> all = new ArrayList<>();
    rows.forEach(
        (two, both) ->
            all.add(
                new Row(
                    two.one(),
                    two.other(),
                    Tries.sum(both.oneBears()),
                    Tries.sum(both.otherBears()),
                    two.selfing())));
    return new Sets(List.copyOf(all), left.notes());
  }

  /** What was written of crosses. */
  private sealed interface Written {

    Tries tries(Pollinated cross);

    boolean isHarvested(Code cross);
  }

  /** Looked up cross by cross, as is best for a few. */
  private record OneByOne(RegisterView view) implements Written {
    @Override
    public Tries tries(Pollinated cross) {
      return Tries.of(view, cross);
    }

    @Override
    public boolean isHarvested(Code cross) {
      return view.codesUnder(cross).stream()
          .anyMatch(code -> code.isLot() && view.item(code).isPresent());
    }
  }

  /** Read of all crosses together. */
  private static final class OfAll implements Written {
    private final RegisterView view;
    private final Map<Code, List<FruitRecorded>> fruit;
    private @Nullable Set<Code> harvested;

    OfAll(RegisterView view, Map<Code, List<FruitRecorded>> fruit) {
      this.view = view;
      this.fruit = fruit;
    }

    @Override
    public Tries tries(Pollinated cross) {
      return Tries.of(cross, fruit.getOrDefault(cross.code(), List.of()));
    }

    @Override
    public boolean isHarvested(Code cross) {
      Set<Code> known = harvested;
      if (known == null) {
        known = new HashSet<>();
        for (Item lot : view.items(EnumSet.of(Item.Kind.LOT))) {
          known.add(lot.code().whole());
        }
        harvested = known;
      }
      return known.contains(cross);
    }
  }

  /** The crosses of two, one by one. */
  private record Beside(List<Tries> oneBears, List<Tries> otherBears) {
    Beside() {
      this(new ArrayList<>(), new ArrayList<>());
    }
  }

  /** What a row is called; of one name the selfings come first. */
  private record Two(String one, String other, boolean selfing) implements Comparable<Two> {
    private static final Comparator<Two> IN_ORDER =
        Comparator.comparing(Two::one).thenComparing(Two::other).thenComparing(two -> !two.selfing);

    @Override
    public int compareTo(Two two) {
      return IN_ORDER.compare(this, two);
    }
  }

  /** Plants of one unnumbered pot are different plants, so one of them on another is no selfing. */
  private static boolean isSelfing(Pollinated cross, Code pollen, CloneNames clones) {
    return cross.pollen() instanceof Pollen.Itself
        || (!cross.seedParent().isGroup()
            && clones.of(cross.seedParent()).equals(clones.of(pollen)));
  }

  private static void add(
      Map<Two, Beside> rows, String seed, String pollen, boolean selfing, Tries tries) {
    boolean inOrder = seed.compareTo(pollen) <= 0;
    Two two = inOrder ? new Two(seed, pollen, selfing) : new Two(pollen, seed, selfing);
    Beside both = rows.computeIfAbsent(two, any -> new Beside());
    (inOrder ? both.oneBears() : both.otherBears()).add(tries);
  }

  /** What is left out of the table, or weighs less in it. */
  private static final class Left {
    private int mixed;
    private int open;
    private int guessed;
    private int onlySet;
    private int unprotected;
    private int stored;
    private int harvested;
    private long unknown;
    private int notCounted;

    /** The one pollen parent; null where pollen of several may have come. */
    @Nullable Code pollenParent(Pollinated cross) {
      if (cross.pollen() instanceof Pollen.OnePlant one) {
        return one.plant();
      }
      if (cross.pollen() instanceof Pollen.Itself) {
        return cross.seedParent();
      }
      if (cross.pollen() instanceof Pollen.Mix) {
        mixed++;
      } else {
        open++;
      }
      return null;
    }

    void note(Written written, Pollinated cross, Tries tries) {
      guessed += tries.guessed();
      onlySet += tries.onlySet();
      unknown += tries.unknown();
      if (cross.flowers() == null || !cross.flowers().isExact()) {
        notCounted++;
      }
      if (cross.protection().contains(Protection.NONE)) {
        unprotected++;
      }
      if (cross.storedPollen()) {
        stored++;
      }
      if (tries.known() == 0
          && tries.guessed() == 0
          && tries.onlySet() == 0
          && written.isHarvested(cross.code())) {
        harvested++;
      }
    }

    List<String> notes() {
      List<String> notes = new ArrayList<>();
      add(notes, unknown, "flower", "of which nobody wrote whether it set, left out of the shares");
      add(notes, harvested, "cross", "that gave seed, though nobody wrote how many flowers set");
      add(notes, guessed, "cross", "whose set or failed flowers were guessed, left out");
      add(
          notes,
          onlySet,
          "cross",
          "of which only what set was written, left out of the shares: of the rest nobody knows");
      add(notes, notCounted, "cross", "whose flowers nobody counted when they were pollinated");
      add(
          notes,
          mixed,
          "cross",
          "with mixed pollen, left out: nobody knows whose it was that took");
      add(notes, open, "open pollination", "left out");
      add(
          notes,
          unprotected,
          "cross",
          "on unprotected flowers: fruit on them may be of other pollen");
      add(notes, stored, "cross", "with stored pollen: one that failed may have failed of its age");
      return List.copyOf(notes);
    }

    private static void add(List<String> notes, long number, String what, String said) {
      if (number > 0) {
        String plural = what.endsWith("s") ? what + "es" : what + "s";
        notes.add(number + " " + (number == 1 ? what : plural) + " " + said);
      }
    }
  }
}
