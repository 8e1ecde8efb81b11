package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Since when a plant exists, as far as the records tell.
 *
 * @param day the day before which it did not exist, or was not here; null when nobody knows
 * @param stoodElsewhere whether the plant stood somewhere else before that day, as an acquired one
 *     did, so that its pollen may have come by post
 */
record Birth(@Nullable PartialDate day, boolean stoodElsewhere) {

  /** When the plant {@code code}, or the group it is one of, came about. */
  static Birth of(RegisterView book, Code code) {
    Optional<Item> resolved = book.resolved(code);
    return resolved.isEmpty() ? new Birth(null, false) : of(book, resolved.get(), true);
  }

  private static Birth of(RegisterView book, Item item, boolean follow) {
    if (!item.code().isWhole()) {
      // A seedling is as old as its cross; when it was pricked out says nothing of that.
      return new Birth(book.item(item.code().whole()).map(Item::since).orElse(null), false);
    }
    Statement introduction = book.effective(item.entry()).orElse(null);
    if (introduction instanceof TagLost) {
      return new Birth(null, false); // it stood here before, under the tag it lost
    }
    if (introduction instanceof Parted parted) {
      // Both plants stood here all the time under the one tag.
      Optional<Item> other = follow ? book.item(parted.code()) : Optional.empty();
      return other.isEmpty() ? new Birth(null, false) : of(book, other.get(), false);
    }
    return new Birth(item.since(), introduction instanceof PlantAcquired);
  }

  /**
   * When the seed was sown that the seedling or the group {@code code} came of; empty where the
   * records do not lead back to one sowing.
   */
  static Optional<PartialDate> sown(RegisterView book, Code code) {
    Code here = book.resolved(code).map(Item::code).orElse(code);
    Set<Code> seen = new HashSet<>();
    while (seen.add(here) && !here.isWhole()) {
      Statement first = book.item(here).flatMap(item -> book.effective(item.entry())).orElse(null);
      if (first instanceof Sown sowing) {
        return Optional.ofNullable(sowing.date());
      } else if (first instanceof Potted potted) {
        here = potted.from();
      } else if (first instanceof Numbered numbered) {
        here = numbered.from();
      } else if (first instanceof Parted parted) {
        here = parted.code();
      }
    }
    return Optional.empty();
  }

  /** Whether it came about later than {@code date}, whatever the unknown parts of both are. */
  boolean isSurelyAfter(PartialDate date) {
    return day != null && date.isSurelyBefore(day);
  }

  /**
   * The refusal of a plant that was not there on the day.
   *
   * @param plant the plant, described
   * @param role what it was to be
   * @param date when
   */
  RegisterRefusal refusal(String plant, String role, PartialDate date) {
    return new RegisterRefusal(
        plant
            + ", "
            + role
            + ", did not exist on "
            + date
            + ": it came about on "
            + day
            + "; mend the date or name another plant");
  }
}
