package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * What became of one plant, by two records of it that are to be joined.
 *
 * <p>A plant that died, left or was thrown out under the one code is gone under the other too: that
 * nothing is written of it there contradicts nothing. The records contradict each other where each
 * says that it came to another end, or where the one shows signs of life later than the end that
 * the other tells. What holds then only somebody who knows the plant can say.
 */
public final class JoinedFates {

  private final Item keep;
  private final Item other;

  /** The record that shows signs of life after the end that the other tells, and the last one. */
  private final @Nullable Sign sign;

  private JoinedFates(Item keep, Item other, @Nullable Sign sign) {
    this.keep = keep;
    this.other = other;
    this.sign = sign;
  }

  /** Something that only a living plant does or has done to it here. */
  private record Sign(PartialDate day, long entry) {}

  /**
   * Reads both records as they stand.
   *
   * @param keep the record that is to hold, or one that is read as it
   * @throws RegisterRefusal if one of them was never given out
   */
  public static JoinedFates of(RegisterView view, Code keep, Code other) {
    Item kept = References.resolved(view, keep);
    Item joined = References.thing(view, other);
    Sign sign = null;
    if (kept.fate().isHere() != joined.fate().isHere()) {
      Item gone = kept.fate().isHere() ? joined : kept;
      Item here = kept.fate().isHere() ? kept : joined;
      Sign last = lastSign(view, records(view, here.code(), gone.code()));
      if (last != null && gone.until() != null && gone.until().isSurelyBefore(last.day())) {
        sign = last;
      }
    }
    return new JoinedFates(kept, joined, sign);
  }

  /** A record and those that are read as it, without the one it is to be joined with. */
  private static Set<Code> records(RegisterView view, Code code, Code without) {
    Set<Code> records = new LinkedHashSet<>();
    Deque<Code> open = new ArrayDeque<>();
    open.add(code);
    while (!open.isEmpty()) {
      Code here = open.remove();
      if (here.equals(without) || !records.add(here)) {
        continue;
      }
      for (long entry : view.entriesOn(Subject.of(here))) {
        if (view.effective(entry).orElse(null) instanceof Joined joined
            && joined.keep().equals(here)) {
          open.add(joined.other());
        }
      }
    }
    return records;
  }

  private static @Nullable Sign lastSign(RegisterView view, Set<Code> records) {
    Sign last = null;
    for (Code code : records) {
      Set<Long> entries = new TreeSet<>(view.entriesOn(Subject.of(code)));
      entries.addAll(view.entriesMentioning(Subject.of(code)));
      for (long entry : entries) {
        Statement statement = view.effective(entry).orElseThrow();
        PartialDate day = statement.date();
        if (day != null
            && isSignOfLife(statement, code)
            && (last == null || !day.earliest().isBefore(last.day().earliest()))) {
          last = new Sign(day, entry);
        }
      }
    }
    return last;
  }

  private static boolean isSignOfLife(Statement statement, Code code) {
    if (statement instanceof Pollinated cross) {
      // Pollen may have been kept, and pollen is what the others gave.
      return cross.seedParent().equals(code)
          || (!cross.storedPollen()
              && cross.pollen() instanceof Pollen.OnePlant one
              && one.plant().equals(code));
    }
    if (statement instanceof PollenKept kept) {
      return kept.step() == PollenKept.Step.GATHERED && kept.from() == null;
    }
    return (statement instanceof Propagated ramet && ramet.of().equals(code))
        || (statement instanceof FateRecorded fate && fate.fate().isHere())
        || statement instanceof Observed
        || statement instanceof Flowered
        || statement instanceof Moved
        || statement instanceof Tended
        || statement instanceof Treated;
  }

  /** Whether the records contradict each other, so that somebody has to say which of them holds. */
  public boolean isConflict() {
    return sign != null
        || (!keep.fate().isHere() && !other.fate().isHere() && keep.fate() != other.fate());
  }

  /**
   * What became of the plant by either record, and what follows, in a sentence; empty where there
   * is nothing to tell.
   */
  public Optional<String> words() {
    if (sign != null) {
      Item gone = keep.fate().isHere() ? other : keep;
      Item here = keep.fate().isHere() ? keep : other;
      return Optional.of(
          end(gone)
              + ", but "
              + here.code().text()
              + " was seen alive "
              + sign.day().inWords()
              + " (entry "
              + sign.entry()
              + ")");
    }
    if (keep.fate().isHere() && other.fate().isHere()) {
      return isMarkCarried()
          ? Optional.of(other.code().text() + " is kept, and so " + keep.code().text() + " is")
          : Optional.empty();
    }
    if (keep.fate().isHere()) {
      return Optional.of(end(other) + ", and so " + keep.code().text() + " is gone");
    }
    if (other.fate().isHere()) {
      return Optional.of(end(keep) + ", and so " + other.code().text() + " is gone");
    }
    if (isConflict()) {
      return Optional.of(end(keep) + ", but " + end(other));
    }
    boolean twoDays =
        keep.until() != null && other.until() != null && !keep.until().equals(other.until());
    return twoDays
        ? Optional.of(
            end(keep) + ", but " + end(other) + "; the day of " + keep.code().text() + " holds")
        : Optional.empty();
  }

  private boolean isMarkCarried() {
    return keep.fate() == Fate.ALIVE && other.fate() == Fate.KEPT;
  }

  private static String end(Item item) {
    return item.code().text()
        + " "
        + item.fate().became()
        + (item.until() == null ? "" : " " + item.until().inWords());
  }

  /**
   * The join that says what became of the plant by both records together. Where they contradict
   * each other, that of the first holds.
   *
   * @throws IllegalArgumentException if both are one record
   */
  public Joined joined(String why) {
    boolean carried =
        !isConflict()
            && (isMarkCarried()
                || (keep.fate().isHere() && !other.fate().isHere())
                || (keep.fate() == other.fate() && keep.until() == null && other.until() != null));
    return carried ? joined(why, other) : new Joined(keep.code(), other.code(), why);
  }

  /**
   * The join by which what the one of them says holds.
   *
   * @param ofOther whether that is the other record, and not the one that is kept
   * @throws IllegalArgumentException if both are one record
   */
  public Joined joined(String why, boolean ofOther) {
    return joined(why, ofOther ? other : keep);
  }

  private Joined joined(String why, Item holds) {
    return new Joined(
        keep.code(), other.code(), why, holds.fate(), holds.fate().isHere() ? null : holds.until());
  }
}
