package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.FruitRecorded;
import dev.filial.core.register.Pollinated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.trial.Proportion;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Hand pollinations of one seed parent with one pollen parent, all taken together.
 *
 * <p>Known is of a flower whether it set or failed. Fruit that dropped unripe had set. What was
 * eaten says nothing of whether two plants suit each other, so it is counted beside and in neither
 * number.
 *
 * @param crosses the crosses
 * @param flowers how many flowers were pollinated, where that was counted
 * @param set how many set fruit
 * @param failed how many failed
 * @param aborted of those that set, how many dropped their fruit unripe
 * @param eaten how many flowers or fruits were eaten
 * @param unknown how many flowers are left of which nobody wrote whether they set, those that were
 *     eaten not among them
 * @param guessed of how many crosses a number was only guessed, so that it is left out
 */
public record Tries(
    List<Code> crosses,
    long flowers,
    long set,
    long failed,
    long aborted,
    long eaten,
    long unknown,
    int guessed) {

  /** How often such intervals hold the true share. */
  public static final double CERTAINTY = 0.95;

  static final Tries NONE = new Tries(List.of(), 0, 0, 0, 0, 0, 0, 0);

  /** Copies the list. */
  public Tries {
    crosses = List.copyOf(crosses);
  }

  /** Of how many flowers it is known whether they set. */
  public long known() {
    return set + failed;
  }

  /** The share that set; empty when of none it is known, or of more than are reckoned with. */
  public Optional<Proportion> proportion() {
    return known() == 0 || known() > Integer.MAX_VALUE
        ? Optional.empty()
        : Optional.of(new Proportion((int) set, (int) known()));
  }

  /**
   * The interval that holds the true share of flowers that set 95 times of 100, if each flower set
   * or failed by itself (the score interval, Wilson 1927).
   */
  public Optional<Proportion.Interval> interval() {
    return proportion().map(proportion -> proportion.score(CERTAINTY));
  }

  /** All of them together. */
  static Tries sum(List<Tries> parts) {
    List<Code> crosses = new ArrayList<>();
    parts.forEach(part -> crosses.addAll(part.crosses));
    return new Tries(
        crosses,
        parts.stream().mapToLong(Tries::flowers).sum(),
        parts.stream().mapToLong(Tries::set).sum(),
        parts.stream().mapToLong(Tries::failed).sum(),
        parts.stream().mapToLong(Tries::aborted).sum(),
        parts.stream().mapToLong(Tries::eaten).sum(),
        parts.stream().mapToLong(Tries::unknown).sum(),
        parts.stream().mapToInt(Tries::guessed).sum());
  }

  /** What was written of one cross. */
  static Tries of(RegisterView view, Pollinated cross) {
    Count set = Count.of(0);
    Count failed = Count.of(0);
    Count aborted = Count.of(0);
    Count eaten = Count.of(0);
    for (long entry : view.entriesOn(Subject.of(cross.code()))) {
      if (view.effective(entry).orElse(null) instanceof FruitRecorded fruit) {
        set = sum(set, fruit.set());
        failed = sum(failed, fruit.failed());
        aborted = sum(aborted, fruit.aborted());
        eaten = sum(eaten, fruit.eaten());
      }
    }
    boolean exact = set.isExact() && failed.isExact();
    Count tried = cross.flowers() == null ? Count.unknown() : cross.flowers();
    long flowers = tried.isExact() ? number(tried) : 0;
    long known = exact ? number(set) + number(failed) : 0;
    return new Tries(
        List.of(cross.code()),
        flowers,
        exact ? number(set) : 0,
        exact ? number(failed) : 0,
        number(aborted),
        number(eaten),
        Math.max(0, flowers - known - number(eaten)),
        exact ? 0 : 1);
  }

  private static Count sum(Count sum, @Nullable Count more) {
    return more == null ? sum : sum.plus(more);
  }

  private static long number(Count count) {
    return count.isExact() ? count.size().orElseThrow() : 0;
  }
}
