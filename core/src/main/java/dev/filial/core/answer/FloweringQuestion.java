package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is in flower on a day, and since when. */
public final class FloweringQuestion {

  private final RegisterView view;
  private final LocalDate day;

  private FloweringQuestion(RegisterView view, LocalDate day) {
    this.view = view;
    this.day = day;
  }

  /** Asks {@code view} about that day. */
  public static FloweringQuestion of(RegisterView view, LocalDate day) {
    return new FloweringQuestion(view, day);
  }

  /**
   * A plant in flower, or a pot with one.
   *
   * @param plant its code
   * @param what its taxon or parents
   * @param names its own names
   * @param place where it stands, or null
   * @param since the day it was first seen in flower this time
   * @param lastSeen the last day it was seen so
   * @param last the last day it is taken to be in flower
   * @param seenOver whether that was seen, or is reckoned
   * @param usual how long that usually is, and where that is known from
   * @param firstTime whether no earlier flowering of it is recorded
   */
  public record Line(
      Code plant,
      String what,
      List<String> names,
      @Nullable String place,
      PartialDate since,
      LocalDate lastSeen,
      LocalDate last,
      boolean seenOver,
      IntervalDays usual,
      boolean firstTime) {}

  /**
   * The answer.
   *
   * @param day the day asked about
   * @param open what is taken to be in flower, what was first seen so first
   * @param perhaps what should be over by that day, though not for longer than it usually flowers,
   *     and nobody looked
   */
  public record Flowering(LocalDate day, List<Line> open, List<Line> perhaps) {}

  /** What is in flower. One pass over all plants and pots. */
  public Flowering ask() {
    List<Line> open = new ArrayList<>();
    List<Line> perhaps = new ArrayList<>();
    for (Blooms.Bloomer bloomer : Blooms.in(view).all()) {
      if (!Blooms.isHere(bloomer.item(), day)) {
        continue;
      }
      for (BloomSpan span : bloomer.spans()) {
        if (span.covers(day)) {
          open.add(line(bloomer, span));
        } else if (!span.seenOver()
            && day.isAfter(span.last())
            && !day.isAfter(span.last().plusDays(bloomer.usual().days()))
            && bloomer.spans().indexOf(span) == bloomer.spans().size() - 1) {
          perhaps.add(line(bloomer, span));
        }
      }
    }
    Comparator<Line> bySince =
        Comparator.comparing((Line line) -> line.since().earliest()).thenComparing(Line::plant);
    open.sort(bySince);
    perhaps.sort(bySince);
    return new Flowering(day, List.copyOf(open), List.copyOf(perhaps));
  }

  private Line line(Blooms.Bloomer bloomer, BloomSpan span) {
    Item item = bloomer.item();
    return new Line(
        item.code(),
        Describing.of(view, item),
        item.names(),
        item.place(),
        span.since(),
        span.lastSeen(),
        span.last(),
        span.seenOver(),
        bloomer.usual(),
        bloomer.spans().indexOf(span) == 0);
  }

  /**
   * Which of the plants were not in flower on that day, by what was seen of them: those that were
   * seen in flower in the same year, and not on that day. Of a plant that nobody watched nothing is
   * said.
   */
  public static List<Code> notInFlower(RegisterView view, Collection<Code> plants, LocalDate day) {
    Blooms blooms = Blooms.in(view);
    List<Code> not = new ArrayList<>();
    for (Code plant : plants) {
      Optional<Blooms.Bloomer> bloomer = view.resolved(plant).flatMap(blooms::of);
      boolean watched =
          bloomer.isPresent()
              && bloomer.get().spans().stream()
                  .anyMatch(span -> span.first().getYear() == day.getYear());
      if (watched && bloomer.get().on(day).isEmpty()) {
        not.add(plant);
      }
    }
    return List.copyOf(not);
  }
}
