package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;
import java.util.ListIterator;
import java.util.Locale;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;

/** What is promised and not given yet. */
public final class Promises {

  private Promises() {}

  /**
   * A promise that is open, or what is left of it.
   *
   * @param entry the entry that made it
   * @param code what was promised
   * @param count how many are still to be given; the unknown count for all of it, or the plant
   * @param to to whom
   * @param since the promise itself
   */
  public record Open(long entry, Code code, Count count, String to, Promised since) {
    private Open less(Count given) {
      return new Open(entry, code, count.less(given), to, since);
    }
  }

  /** The open promises of one thing, the oldest first. */
  public static List<Open> of(RegisterView view, Code code) {
    List<Open> open = new ArrayList<>();
    List<FateRecorded> given = new ArrayList<>();
    for (long entry : view.entriesOn(Subject.of(code))) {
      Statement statement = view.effective(entry).orElse(null);
      if (statement instanceof Promised promised) {
        open.add(
            new Open(
                entry,
                code,
                promised.count() == null ? Count.unknown() : promised.count(),
                promised.to(),
                promised));
      } else if (statement instanceof FateRecorded fate && fate.fate() == Fate.GIVEN) {
        given.add(fate);
      }
    }
    given.forEach(gift -> take(open, gift));
    return List.copyOf(open);
  }

  /** What was given to somebody keeps what was promised to the same, the oldest first. */
  private static void take(List<Open> open, FateRecorded gift) {
    Count left = gift.count() == null ? Count.unknown() : gift.count();
    for (ListIterator<Open> promises = open.listIterator(); promises.hasNext(); ) {
      Open promise = promises.next();
      if (!same(promise.to(), gift.to()) || isBefore(gift, promise.since())) {
        continue;
      }
      OptionalLong given = left.size();
      OptionalLong wanted = promise.count().size();
      if (given.isPresent() && wanted.isPresent() && given.getAsLong() < wanted.getAsLong()) {
        promises.set(promise.less(left));
        return;
      }
      promises.remove();
      if (given.isEmpty() || wanted.isEmpty() || given.getAsLong() == wanted.getAsLong()) {
        return;
      }
      left = left.less(promise.count());
    }
  }

  private static boolean isBefore(FateRecorded gift, Promised promise) {
    return gift.date() != null
        && promise.date() != null
        && gift.date().isSurelyBefore(promise.date());
  }

  private static boolean same(String one, @Nullable String other) {
    return other != null
        && one.strip().toLowerCase(Locale.ROOT).equals(other.strip().toLowerCase(Locale.ROOT));
  }

  /** How many of a thing are promised in all; none when nothing is. */
  public static Count open(RegisterView view, Code code) {
    return of(view, code).stream().map(Open::count).reduce(Count.of(0), Count::plus);
  }
}
