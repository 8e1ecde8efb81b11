package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Part of a seed lot put in a packet of its own.
 *
 * @param lot the code of the new lot, under the same whole code
 * @param from the lot it was taken from
 * @param date the day, or null when not known
 * @param count how many seeds
 * @param place where it is kept, or null
 * @param remark anything else, or null
 */
public record LotSplit(
    Code lot,
    Code from,
    @Nullable PartialDate date,
    Count count,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if these are not two lots of one code
   */
  public LotSplit {
    Objects.requireNonNull(lot, "lot");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(count, "count");
    Require.lot(lot);
    Require.lot(from);
    if (!lot.whole().equals(from.whole()) || lot.equals(from)) {
      throw new IllegalArgumentException(
          lot.text()
              + " cannot be split from "
              + from.text()
              + ": it takes another lot number of the same code");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(lot), Subject.of(from));
  }

  @Override
  public Set<Subject> mentions() {
    return Set.of(Subject.of(lot.whole()));
  }
}
