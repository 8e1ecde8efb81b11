package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Fate;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Plants ranked by a score or a measurement, and how each grew. */
public final class RankingQuestion {

  private final RegisterView view;
  private final @Nullable LocalDate until;
  private final boolean smallestFirst;

  private RankingQuestion(RegisterView view, @Nullable LocalDate until, boolean smallestFirst) {
    this.view = view;
    this.until = until;
    this.smallestFirst = smallestFirst;
  }

  /** Asks {@code view} for the latest values, the greatest first. */
  public static RankingQuestion of(RegisterView view) {
    return new RankingQuestion(view, null, false);
  }

  /** The same as it stood at the end of a day; null for now. */
  public RankingQuestion until(@Nullable LocalDate day) {
    return new RankingQuestion(view, day, smallestFirst);
  }

  /** The same with the smallest first. */
  public RankingQuestion smallestFirst(boolean smallest) {
    return new RankingQuestion(view, until, smallest);
  }

  /**
   * A plant in the ranking.
   *
   * @param rank its rank: one more than there are better ones, so that equals share one
   * @param tied whether others have the same
   * @param code the plant
   * @param names its own names
   * @param what its taxon or parents
   * @param value its score or measurement
   * @param date the day of it, or null
   * @param fate what became of the plant: kept, discarded …
   */
  public record Place(
      int rank,
      boolean tied,
      Code code,
      List<String> names,
      String what,
      BigDecimal value,
      @Nullable PartialDate date,
      Fate fate) {}

  /**
   * A ranking.
   *
   * @param trait the trait
   * @param unit what it is measured in, or null
   * @param until as it stood at the end of that day; null for now
   * @param smallestFirst whether the smallest come first
   * @param places the plants, the best first
   * @param notMeasured those that are here and have no value; empty if all plants were asked about
   * @param notes what to bear in mind, a sentence each
   */
  public record Ranking(
      String trait,
      @Nullable String unit,
      @Nullable LocalDate until,
      boolean smallestFirst,
      List<Place> places,
      List<Code> notMeasured,
      List<String> notes) {}

  /**
   * Ranks the seedlings of crosses and packets, or plants; all that were measured for an empty
   * list.
   *
   * @throws RegisterRefusal if the trait is not declared or has states, a code is none of this
   *     register, or a lot, a sowing or a pot
   */
  public Ranking rank(String trait, List<Code> what) {
    TraitDeclared declared = Ranked.measurable(view, trait);
    LastSeen seen = LastSeen.of(view, declared.trait());
    List<Place> found = new ArrayList<>();
    List<Code> none = new ArrayList<>();
    int undated = 0;
    for (Item item : Ranked.plants(view, what)) {
      LastSeen.Look last = null;
      boolean passedOver = false;
      for (LastSeen.Look look : seen.all(item.code())) {
        if (isInTime(look)) {
          last = look;
        } else {
          passedOver |= look.date() == null;
        }
      }
      undated += passedOver ? 1 : 0;
      if (last != null) {
        found.add(
            new Place(
                0,
                false,
                item.code(),
                item.names(),
                Describing.of(view, item),
                new BigDecimal(last.value().strip()),
                last.date(),
                item.fate()));
      } else if (!what.isEmpty() && item.fate().isHere()) {
        none.add(item.code());
      }
    }
    List<String> notes = new ArrayList<>();
    if (undated > 0) {
      notes.add(
          "What was measured on no known day is left out: of "
              + undated
              + (undated == 1 ? " plant." : " plants."));
    }
    List<Place> places = ranked(found);
    spread(places, notes);
    return new Ranking(
        declared.trait(),
        declared.unit(),
        until,
        smallestFirst,
        places,
        List.copyOf(none),
        List.copyOf(notes));
  }

  private boolean isInTime(LastSeen.Look look) {
    PartialDate date = look.date();
    return until == null || (date != null && !date.latest().isAfter(until));
  }

  private List<Place> ranked(List<Place> found) {
    Comparator<Place> byValue = Comparator.comparing(Place::value);
    found.sort((smallestFirst ? byValue : byValue.reversed()).thenComparing(Place::code));
    List<Place> ranked = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      Place one = found.get(i);
      boolean asBefore = i > 0 && one.value().compareTo(found.get(i - 1).value()) == 0;
      boolean asAfter =
          i + 1 < found.size() && one.value().compareTo(found.get(i + 1).value()) == 0;
      ranked.add(
          new Place(
              asBefore ? ranked.get(i - 1).rank() : i + 1,
              asBefore || asAfter,
              one.code(),
              one.names(),
              one.what(),
              one.value(),
              one.date(),
              one.fate()));
    }
    return List.copyOf(ranked);
  }

  /** How far apart the days may lie before a ranking says so: what grows, grows on meanwhile. */
  private static final long FAR_APART = 30;

  private static void spread(List<Place> places, List<String> notes) {
    LocalDate first = null;
    LocalDate last = null;
    for (Place place : places) {
      PartialDate date = place.date();
      if (date != null) {
        first = first == null || date.earliest().isBefore(first) ? date.earliest() : first;
        last = last == null || date.latest().isAfter(last) ? date.latest() : last;
      }
    }
    if (first != null && last != null && ChronoUnit.DAYS.between(first, last) > FAR_APART) {
      notes.add(
          "They were measured between "
              + first
              + " and "
              + last
              + "; what grows cannot be ranked over so long a time.");
    }
  }

  /**
   * A measurement in a plant's growth.
   *
   * @param date the day, or null
   * @param value the score or measurement
   * @param change what it is more than the one before; null for the first
   * @param changePerMonth that, in 30 days; null where one of the two days is not known to the day
   *     or they lie less than two weeks apart
   */
  public record Step(
      @Nullable PartialDate date,
      BigDecimal value,
      @Nullable BigDecimal change,
      @Nullable Double changePerMonth) {}

  /**
   * A plant as it grew.
   *
   * @param code the plant
   * @param names its own names
   * @param fate what became of it
   * @param steps its measurements, in order of their days
   */
  public record Grown(Code code, List<String> names, Fate fate, List<Step> steps) {}

  /**
   * How plants grew.
   *
   * @param trait the trait
   * @param unit what it is measured in, or null
   * @param plants each plant that was measured
   * @param notMeasured those that are here and were not; empty if all plants were asked about
   */
  public record Growth(
      String trait, @Nullable String unit, List<Grown> plants, List<Code> notMeasured) {}

  /**
   * How the seedlings of crosses and packets, or plants, grew; all that were measured for an empty
   * list.
   *
   * @throws RegisterRefusal as {@link #rank}
   */
  public Growth growth(String trait, List<Code> what) {
    TraitDeclared declared = Ranked.measurable(view, trait);
    LastSeen seen = LastSeen.of(view, declared.trait());
    List<Grown> plants = new ArrayList<>();
    List<Code> none = new ArrayList<>();
    for (Item item : Ranked.plants(view, what)) {
      List<Step> steps = new ArrayList<>();
      LastSeen.Look before = null;
      for (LastSeen.Look look : seen.all(item.code())) {
        if (isInTime(look)) {
          steps.add(step(before, look));
          before = look;
        }
      }
      if (!steps.isEmpty()) {
        plants.add(new Grown(item.code(), item.names(), item.fate(), List.copyOf(steps)));
      } else if (!what.isEmpty() && item.fate().isHere()) {
        none.add(item.code());
      }
    }
    return new Growth(declared.trait(), declared.unit(), List.copyOf(plants), List.copyOf(none));
  }

  /**
   * Over fewer days what is measured is mostly how it was held against the rule. The bound is ours.
   */
  private static final long LEAST_APART = 14;

  private static Step step(LastSeen.@Nullable Look before, LastSeen.Look look) {
    BigDecimal value = new BigDecimal(look.value().strip());
    if (before == null) {
      return new Step(look.date(), value, null, null);
    }
    BigDecimal change = value.subtract(new BigDecimal(before.value().strip()));
    PartialDate from = before.date();
    PartialDate to = look.date();
    Double perMonth = null;
    if (from != null && to != null && from.day() != 0 && to.day() != 0) {
      long days = ChronoUnit.DAYS.between(from.earliest(), to.earliest());
      perMonth = days >= LEAST_APART ? change.doubleValue() * 30 / days : null;
    }
    return new Step(look.date(), value, change, perMonth);
  }
}
