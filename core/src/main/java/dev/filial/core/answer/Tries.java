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
 * number. Where only what set was written of a cross, and flowers are left, the rest is not missing
 * by chance: a grower writes what he sees set. Such a cross is in no share.
 *
 * @param crosses the crosses
 * @param flowers how many flowers were pollinated, where that was counted
 * @param set how many set fruit
 * @param failed how many failed
 * @param aborted of those that set, how many dropped their fruit unripe
 * @param eaten how many flowers or fruits were eaten
 * @param unknown how many flowers are left of which nobody wrote whether they set, those that were
 *     eaten not among them, nor those whose fate was guessed
 * @param guessed of how many crosses what set or failed was only guessed, so that it is left out
 * @param about what was guessed
 * @param setOnly how many flowers set in crosses of which only that was written; not in {@code set}
 * @param onlySet how many such crosses there are
 */
public record Tries(
    List<Code> crosses,
    long flowers,
    long set,
    long failed,
    long aborted,
    long eaten,
    long unknown,
    int guessed,
    About about,
    long setOnly,
    int onlySet) {

  /**
   * Numbers that were guessed. Of a cross of which what set or failed was guessed both stand here,
   * for a share of the one that was counted would be none of the cross.
   *
   * @param set about how many set
   * @param failed about how many failed
   * @param aborted about how many dropped their fruit
   * @param eaten about how many were eaten
   */
  public record About(long set, long failed, long aborted, long eaten) {
    static final About NOTHING = new About(0, 0, 0, 0);

    About plus(About more) {
      return new About(
          set + more.set, failed + more.failed, aborted + more.aborted, eaten + more.eaten);
    }
  }

  /** How often such intervals hold the true share. */
  public static final double CERTAINTY = 0.95;

  static final Tries NONE = new Tries(List.of(), 0, 0, 0, 0, 0, 0, 0, About.NOTHING, 0, 0);

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
    long flowers = 0;
    long set = 0;
    long failed = 0;
    long aborted = 0;
    long eaten = 0;
    long unknown = 0;
    int guessed = 0;
    About about = About.NOTHING;
    long setOnly = 0;
    int onlySet = 0;
    for (Tries part : parts) {
      crosses.addAll(part.crosses);
      flowers += part.flowers;
      set += part.set;
      failed += part.failed;
      aborted += part.aborted;
      eaten += part.eaten;
      unknown += part.unknown;
      guessed += part.guessed;
      about = about.plus(part.about);
      setOnly += part.setOnly;
      onlySet += part.onlySet;
    }
    return new Tries(
        crosses, flowers, set, failed, aborted, eaten, unknown, guessed, about, setOnly, onlySet);
  }

  /** What was written of one cross. */
  static Tries of(RegisterView view, Pollinated cross) {
    List<FruitRecorded> written = new ArrayList<>();
    for (long entry : view.entriesOn(Subject.of(cross.code()))) {
      if (view.effective(entry).orElse(null) instanceof FruitRecorded fruit) {
        written.add(fruit);
      }
    }
    return of(cross, written);
  }

  /** What came of one cross, all that was written of its fruit being known. */
  static Tries of(Pollinated cross, List<FruitRecorded> written) {
    Count set = Count.of(0);
    Count failed = Count.of(0);
    Count aborted = Count.of(0);
    Count eaten = Count.of(0);
    boolean failuresWritten = false;
    for (FruitRecorded fruit : written) {
      set = sum(set, fruit.set());
      failed = sum(failed, fruit.failed());
      failuresWritten |= fruit.failed() != null;
      aborted = sum(aborted, fruit.aborted());
      eaten = sum(eaten, fruit.eaten());
    }
    boolean exact = set.isExact() && failed.isExact();
    Count tried = cross.flowers() == null ? Count.unknown() : cross.flowers();
    long flowers = counted(tried);
    long left = left(flowers, set, failed, eaten);
    boolean open = tried.isExact() ? left > 0 : !failuresWritten;
    boolean onlySet = exact && counted(set) > 0 && counted(failed) == 0 && open;
    return new Tries(
        List.of(cross.code()),
        flowers,
        exact && !onlySet ? counted(set) : 0,
        exact ? counted(failed) : 0,
        counted(aborted),
        counted(eaten),
        left,
        exact ? 0 : 1,
        new About(
            exact ? 0 : said(set), exact ? 0 : said(failed), guessed(aborted), guessed(eaten)),
        onlySet ? counted(set) : 0,
        onlySet ? 1 : 0);
  }

  /** Flowers nobody wrote of. Of "few" nobody can say how many they leave, so none is claimed. */
  private static long left(long flowers, Count set, Count failed, Count eaten) {
    if (set.size().isEmpty() || failed.size().isEmpty()) {
      return 0;
    }
    return Math.max(0, flowers - said(set) - said(failed) - said(eaten));
  }

  private static Count sum(Count sum, @Nullable Count more) {
    return more == null ? sum : sum.plus(more);
  }

  private static long counted(Count count) {
    return count.isExact() ? said(count) : 0;
  }

  private static long guessed(Count count) {
    return count.isExact() ? 0 : said(count);
  }

  private static long said(Count count) {
    return count.size().orElse(0);
  }
}
