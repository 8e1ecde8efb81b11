package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which plants flower together and so can be crossed, by what was seen of their flowers. Left out
 * are plants of one clone, unless they are asked for, and what died, left or never stood here.
 */
public final class PairsQuestion {

  private final RegisterView view;
  private final boolean oneClone;
  private final @Nullable Code with;

  private PairsQuestion(RegisterView view, boolean oneClone, @Nullable Code with) {
    this.view = view;
    this.oneClone = oneClone;
    this.with = with;
  }

  /** Asks {@code view} about all pairs. */
  public static PairsQuestion of(RegisterView view) {
    return new PairsQuestion(view, false, null);
  }

  /** The same, with pairs of one clone. */
  public PairsQuestion withOneClone(boolean also) {
    return new PairsQuestion(view, also, with);
  }

  /** The same, only pairs of that plant. */
  public PairsQuestion withPlant(@Nullable Code plant) {
    return new PairsQuestion(view, oneClone, plant);
  }

  /**
   * Two plants that flower together.
   *
   * @param one the one that was entered first
   * @param oneWhat its taxon or parents
   * @param other the other
   * @param otherWhat its taxon or parents
   * @param from the first day on which both are taken to be in flower
   * @param to the last such day
   * @param oneBears the crosses made already with {@code one}, or another plant of its clone, as
   *     the seed parent
   * @param otherBears those with {@code other} as the seed parent
   * @param oneClone whether they are plants of one clone
   */
  public record Pair(
      Code one,
      String oneWhat,
      Code other,
      String otherWhat,
      LocalDate from,
      LocalDate to,
      Tries oneBears,
      Tries otherBears,
      boolean oneClone) {}

  /**
   * The answer.
   *
   * @param pairs the pairs, those that are longest together first
   * @param inFlower how many plants were in flower
   * @param leftOut how many pairs of one clone were left out
   */
  public record Pairs(List<Pair> pairs, int inFlower, int leftOut) {}

  /** Which are in flower together on that day. */
  public Pairs on(LocalDate day) {
    List<Flower> flowers = new ArrayList<>();
    for (Blooms.Bloomer bloomer : Blooms.in(view).all()) {
      if (Blooms.isHere(bloomer.item(), day)) {
        bloomer.on(day).ifPresent(span -> flowers.add(new Flower(bloomer.item(), List.of(span))));
      }
    }
    return pairs(flowers);
  }

  /** Which were in flower together in that calendar year, of those that are still here. */
  public Pairs inYear(int year) {
    List<Flower> flowers = new ArrayList<>();
    for (Blooms.Bloomer bloomer : Blooms.in(view).all()) {
      List<BloomSpan> spans =
          bloomer.spans().stream().filter(span -> span.first().getYear() == year).toList();
      Item item = bloomer.item();
      if (item.fate().isHere() && !item.neverHeld() && !spans.isEmpty()) {
        flowers.add(new Flower(item, spans));
      }
    }
    return pairs(flowers);
  }

  private record Flower(Item item, List<BloomSpan> spans) {}

  private Pairs pairs(List<Flower> flowers) {
    Crossed crossed = new Crossed(view);
    Code wanted = with == null ? null : Things.required(view, with).code();
    List<Pair> pairs = new ArrayList<>();
    int leftOut = 0;
    for (int i = 0; i < flowers.size(); i++) {
      for (int j = i + 1; j < flowers.size(); j++) {
        Flower one = flowers.get(i);
        Flower other = flowers.get(j);
        boolean asked =
            wanted == null
                || one.item().code().equals(wanted)
                || other.item().code().equals(wanted);
        Optional<LocalDate[]> together = asked ? together(one, other) : Optional.empty();
        if (together.isEmpty()) {
          continue;
        }
        boolean clone = crossed.isOneClone(one.item().code(), other.item().code());
        if (clone && !oneClone) {
          leftOut++;
        } else {
          pairs.add(pair(crossed, one.item(), other.item(), together.get(), clone));
        }
      }
    }
    pairs.sort(
        Comparator.comparing((Pair pair) -> ChronoUnit.DAYS.between(pair.to(), pair.from()))
            .thenComparing(Pair::from)
            .thenComparing(Pair::one)
            .thenComparing(Pair::other));
    return new Pairs(List.copyOf(pairs), flowers.size(), leftOut);
  }

  /** The first and the last day of the longest time that both were in flower. */
  private static Optional<LocalDate[]> together(Flower one, Flower other) {
    Optional<LocalDate[]> longest = Optional.empty();
    long most = -1;
    for (BloomSpan span : one.spans()) {
      for (BloomSpan beside : other.spans()) {
        if (span.meets(beside)) {
          LocalDate from = span.first().isAfter(beside.first()) ? span.first() : beside.first();
          LocalDate to = span.last().isBefore(beside.last()) ? span.last() : beside.last();
          long days = ChronoUnit.DAYS.between(from, to);
          if (days > most) {
            most = days;
            longest = Optional.of(new LocalDate[] {from, to});
          }
        }
      }
    }
    return longest;
  }

  private Pair pair(Crossed crossed, Item one, Item other, LocalDate[] together, boolean clone) {
    return new Pair(
        one.code(),
        Describing.of(view, one),
        other.code(),
        Describing.of(view, other),
        together[0],
        together[1],
        crossed.tries(one.code(), other.code()),
        crossed.tries(other.code(), one.code()),
        clone);
  }
}
