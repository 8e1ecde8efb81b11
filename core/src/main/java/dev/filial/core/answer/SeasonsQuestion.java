package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Bloom;
import dev.filial.core.register.Count;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Flowered;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Harvested;
import dev.filial.core.register.Item;
import dev.filial.core.register.Joined;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Pollen;
import dev.filial.core.register.PollenKept;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.SeedAcquired;
import dev.filial.core.register.Sown;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Treated;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What happened in each calendar year, as the register has it.
 *
 * <p>A year is that of the day an entry speaks of, not of the day it was written; what speaks of no
 * day is kept apart. Entries are read as they stand now, amended where they were amended; those
 * that were struck count for nothing. Counted, guessed and unnumbered are kept apart in every sum.
 *
 * <p>Whether a cross set or failed, and how much of a sowing came up, is told in the year of the
 * cross and of the sowing, whenever it showed; all else in the year it happened. A single plant
 * dies, is thrown out or leaves once at most, on the first day written of it, and not at all if it
 * is here again; of a pot or seed lot every entry counts. All of a seed lot is as many as were left
 * in it, counted or guessed; all of a pot is one without a number, since seedlings die between two
 * counts. Two records of one plant are one.
 */
public final class SeasonsQuestion {

  private final RegisterView view;
  private final Map<Integer, Sums> years = new TreeMap<>();
  private final Map<Code, Tried> crosses = new HashMap<>();
  private final Map<Code, Integer> flowers = new HashMap<>();
  private final List<Lost> lost = new ArrayList<>();
  private final Set<Code> gone = new HashSet<>();
  private final List<Code> others = new ArrayList<>();
  private final Set<Long> doubted = new HashSet<>();

  private SeasonsQuestion(RegisterView view) {
    this.view = view;
  }

  /** All that is of no year. Smaller than every year, and so read as later than none. */
  private static final int UNDATED = Integer.MIN_VALUE;

  /** What is summed up, and what bears on it. */
  private static final Set<Class<? extends Statement>> READ =
      Set.of(
          PlantAcquired.class,
          Propagated.class,
          SeedAcquired.class,
          Pollinated.class,
          FruitRecorded.class,
          Harvested.class,
          Sown.class,
          Numbered.class,
          FateRecorded.class,
          Flowered.class,
          PollenKept.class,
          Treated.class,
          Joined.class,
          Doubted.class);

  /** Something that died or left, by that entry. */
  private record Lost(long entry, FateRecorded fate) {}

  /** The sums of one year. */
  private static final class Sums {
    private final Map<SeasonFigure, SeasonSum> figures = new EnumMap<>(SeasonFigure.class);
    private final Map<String, SeasonSum> losses = new TreeMap<>();
    private long guesses;

    void add(SeasonFigure figure, SeasonSum sum) {
      figures.merge(figure, sum, SeasonSum::plus);
    }

    void add(SeasonFigure figure, long number) {
      add(figure, SeasonSum.of(number));
    }

    Season season(@Nullable Integer year) {
      return new Season(year, figures, Season.losses(losses), guesses);
    }
  }

  /** How the flowers of one cross fared, over all years. */
  private static final class Tried {
    private boolean took;
    private boolean failed;
    private Count ended = Count.of(0);

    void add(FruitRecorded fruit) {
      took |= isSome(fruit.set());
      failed |= isSome(fruit.failed());
      ended = fruit.failed() == null ? ended : ended.plus(fruit.failed());
      ended = fruit.eaten() == null ? ended : ended.plus(fruit.eaten());
    }

    /** Whether none set and none of the flowers that were tried is left unsaid. */
    boolean isFailed(@Nullable Count flowers) {
      boolean left =
          flowers != null
              && flowers.isExact()
              && ended.size().orElse(0) < flowers.size().orElseThrow();
      return !took && failed && !left;
    }

    private static boolean isSome(@Nullable Count count) {
      return count != null
          && (count.size().isPresent()
              ? count.size().getAsLong() > 0
              : !count.equals(Count.unknown()));
    }
  }

  /**
   * The seasons.
   *
   * @param years every year of which something is in the sums, the earliest first
   * @param undated what speaks of no day; null if there is nothing
   */
  public record Seasons(List<Season> years, @Nullable Season undated) {

    /** That year; empty if nothing in the sums is of it. */
    public Optional<Season> year(int year) {
      return years.stream().filter(one -> one.year() != null && one.year() == year).findFirst();
    }

    /** All years and the undated together. */
    public Season all() {
      Season all = new Season(null, Map.of(), List.of(), 0);
      for (Season one : years) {
        all = all.plus(one);
      }
      return undated == null ? all : all.plus(undated);
    }
  }

  /**
   * The seasons of a register. One pass over all entries that bear on them, each read once; beside
   * it one look at each plant that flowered, died or left, and at what was written of each sowing.
   * Memory in proportion to the crosses and their parents, and to what died or left.
   */
  public static Seasons of(RegisterView view) {
    return new SeasonsQuestion(view).ask();
  }

  private Seasons ask() {
    List<Pollinated> pollinated = new ArrayList<>();
    view.readAll(
        READ,
        (statement, entry) -> {
          if (statement instanceof Pollinated cross) {
            pollinated.add(cross);
            flowered(cross);
          }
          read(entry, statement);
        });
    losses();
    pollinated.forEach(this::cross);
    firstFlowers();
    others.forEach(this::takeOff);
    doubted.forEach(this::markGuess);
    Sums undated = years.remove(UNDATED);
    List<Season> told = new ArrayList<>();
    years.forEach((year, sums) -> told.add(sums.season(year)));
    return new Seasons(List.copyOf(told), undated == null ? null : undated.season(null));
  }

  private Sums sums(int year) {
    return years.computeIfAbsent(year, any -> new Sums());
  }

  private static int year(@Nullable PartialDate date) {
    return date == null ? UNDATED : date.year();
  }

  private void read(long entry, Statement statement) {
    int year = year(statement.date());
    if (statement instanceof PlantAcquired plant) {
      if (!plant.neverHeld()) {
        sums(year).add(SeasonFigure.PLANTS, 1);
      }
    } else if (statement instanceof Propagated) {
      sums(year).add(SeasonFigure.OFFSETS, 1);
    } else if (statement instanceof SeedAcquired packet) {
      sums(year).add(SeasonFigure.PACKETS, 1);
      sums(year).add(SeasonFigure.PACKET_SEED, SeasonSum.of(packet.count()));
    } else if (statement instanceof FruitRecorded fruit) {
      fruit(sums(year), fruit);
    } else if (statement instanceof Harvested harvest) {
      harvest(sums(year), harvest);
    } else if (statement instanceof Sown sown) {
      sowing(sums(year), sown);
    } else if (statement instanceof Numbered numbered) {
      sums(year).add(SeasonFigure.NUMBERED, numbered.last() - numbered.first() + 1L);
    } else if (statement instanceof FateRecorded fate && !fate.fate().isHere()) {
      lost.add(new Lost(entry, fate));
    } else if (statement instanceof Flowered flowered && flowered.bloom() == Bloom.OPEN) {
      flowered.codes().forEach(code -> flower(code, year));
    } else if (statement instanceof PollenKept kept
        && kept.step() == PollenKept.Step.GATHERED
        && kept.from() == null) {
      flower(kept.plant(), year);
    } else if (statement instanceof Treated) {
      sums(year).add(SeasonFigure.TREATMENTS, 1);
    } else if (statement instanceof Joined joined) {
      others.add(joined.other());
    } else if (statement instanceof Doubted mark) {
      doubted.add(mark.entry());
    }
  }

  private Tried tried(Code cross) {
    return crosses.computeIfAbsent(cross, any -> new Tried());
  }

  private void fruit(Sums sums, FruitRecorded fruit) {
    add(sums, SeasonFigure.SET, fruit.set());
    add(sums, SeasonFigure.FAILED, fruit.failed());
    add(sums, SeasonFigure.DROPPED, fruit.aborted());
    add(sums, SeasonFigure.EATEN, fruit.eaten());
    tried(fruit.cross()).add(fruit);
  }

  /** What was not spoken of is no number that is missing. */
  private static void add(Sums sums, SeasonFigure figure, @Nullable Count count) {
    if (count != null) {
      sums.add(figure, SeasonSum.of(count));
    }
  }

  private void harvest(Sums sums, Harvested harvest) {
    sums.add(SeasonFigure.HARVESTS, 1);
    sums.add(SeasonFigure.FRUIT, SeasonSum.of(harvest.fruits()));
    sums.add(SeasonFigure.SEED, SeasonSum.of(harvest.seeds()));
    if (!Count.of(0).equals(harvest.fruits())) {
      tried(harvest.lot().whole()).took = true;
    }
  }

  private void sowing(Sums sums, Sown sown) {
    sums.add(SeasonFigure.SOWINGS, 1);
    sums.add(SeasonFigure.SOWN, SeasonSum.of(sown.seeds()));
    Emergence came = Emergence.of(view, sown);
    if (came.doubt() == null) {
      sums.add(SeasonFigure.SOWINGS_COUNTED, 1);
      sums.add(SeasonFigure.SOWN_COUNTED, came.seeds());
      sums.add(SeasonFigure.CAME_UP, came.up());
    }
  }

  private void cross(Pollinated cross) {
    Sums sums = sums(year(cross.date()));
    if (cross.pollen() instanceof Pollen.Open) {
      sums.add(SeasonFigure.OPEN, 1);
      return;
    }
    sums.add(SeasonFigure.CROSSES, 1);
    sums.add(SeasonFigure.FLOWERS, SeasonSum.of(cross.flowers()));
    Tried tried = tried(cross.code());
    if (tried.took) {
      sums.add(SeasonFigure.CROSSES_SET, 1);
    } else if (tried.isFailed(cross.flowers())) {
      sums.add(SeasonFigure.CROSSES_FAILED, 1);
    }
  }

  /** In order of entry, since a plant is lost once; all of them are looked up together. */
  private void losses() {
    Set<Code> codes = new LinkedHashSet<>();
    lost.forEach(one -> codes.addAll(one.fate().codes()));
    Map<Code, Item> items = view.resolvedOf(codes);
    for (Lost one : lost) {
      for (Code code : one.fate().codes()) {
        Item item = items.get(code);
        if (item != null && one.fate().fate() != Fate.USED_UP) {
          lose(one.entry(), code, item, one.fate());
        }
      }
    }
  }

  private void lose(long entry, Code code, Item item, FateRecorded fate) {
    if (item.kind().isPlant()) {
      if (item.fate() == fate.fate() && gone.add(item.code())) {
        lose(sums(year(item.until())), fate, SeasonSum.of(1));
      }
    } else if (item.kind() == Item.Kind.LOT) {
      sums(year(fate.date()))
          .add(
              fate.fate() == Fate.GIVEN ? SeasonFigure.SEED_GIVEN : SeasonFigure.SEED_LOST,
              SeasonSum.of(fate.count() == null ? left(code, entry) : fate.count()));
    } else {
      lose(sums(year(fate.date())), fate, SeasonSum.of(fate.count()));
    }
  }

  /** What was in a seed lot before that entry. */
  private @Nullable Count left(Code lot, long entry) {
    return view.itemBefore(lot, entry).map(Item::count).orElse(null);
  }

  private static void lose(Sums sums, FateRecorded fate, SeasonSum plants) {
    if (fate.fate() == Fate.DEAD) {
      sums.add(SeasonFigure.DIED, plants);
      sums.losses.merge(fate.cause() == null ? "" : fate.cause().strip(), plants, SeasonSum::plus);
    } else {
      sums.add(fate.fate() == Fate.GIVEN ? SeasonFigure.GIVEN : SeasonFigure.DISCARDED, plants);
    }
  }

  /** Who bore flowers or gave fresh pollen was in flower, though nobody wrote that down. */
  private void flowered(Pollinated cross) {
    int year = year(cross.date());
    flower(cross.seedParent(), year);
    if (!cross.storedPollen()) {
      if (cross.pollen() instanceof Pollen.OnePlant one) {
        flower(one.plant(), year);
      } else if (cross.pollen() instanceof Pollen.Mix mix) {
        mix.plants().forEach(weighted -> flower(weighted.plant(), year));
      }
    }
  }

  private void flower(Code code, int year) {
    flowers.merge(code, year, SeasonsQuestion::earlier);
  }

  /** Of what flowered in a dated year too, an undated day says nothing. */
  private static int earlier(int one, int other) {
    return one == UNDATED || other == UNDATED ? Math.max(one, other) : Math.min(one, other);
  }

  /** A pot is no plant, and of one that never stood here somebody else saw the first flower. */
  private void firstFlowers() {
    Map<Code, Integer> plants = new HashMap<>();
    view.resolvedOf(flowers.keySet())
        .forEach(
            (code, item) -> {
              if (item.kind().isPlant() && !item.neverHeld()) {
                plants.merge(
                    item.code(),
                    Objects.requireNonNull(flowers.get(code)),
                    SeasonsQuestion::earlier);
              }
            });
    plants.values().forEach(year -> sums(year).add(SeasonFigure.FIRST_FLOWERS, 1));
  }

  /** The other record of a plant: it came once. */
  private void takeOff(Code other) {
    Statement came = view.item(other).flatMap(item -> view.effective(item.entry())).orElse(null);
    if (came instanceof PlantAcquired plant && !plant.neverHeld()) {
      sums(year(plant.date())).figures.computeIfPresent(SeasonFigure.PLANTS, SeasonsQuestion::one);
    } else if (came instanceof Propagated offset) {
      sums(year(offset.date()))
          .figures
          .computeIfPresent(SeasonFigure.OFFSETS, SeasonsQuestion::one);
    }
  }

  private static SeasonSum one(SeasonFigure figure, SeasonSum sum) {
    return sum.less(SeasonSum.of(1));
  }

  private void markGuess(long entry) {
    Statement guess = view.effective(entry).orElse(null);
    if (guess != null && isInSums(guess)) {
      sums(year(guess.date())).guesses++;
    }
  }

  private static boolean isInSums(Statement statement) {
    return (statement instanceof PlantAcquired plant && !plant.neverHeld())
        || statement instanceof Propagated
        || statement instanceof SeedAcquired
        || statement instanceof Pollinated
        || statement instanceof FruitRecorded
        || statement instanceof Harvested
        || statement instanceof Sown
        || statement instanceof Numbered
        || (statement instanceof FateRecorded fate
            && !fate.fate().isHere()
            && fate.fate() != Fate.USED_UP)
        || (statement instanceof Flowered flowered && flowered.bloom() == Bloom.OPEN)
        || statement instanceof Treated;
  }
}
