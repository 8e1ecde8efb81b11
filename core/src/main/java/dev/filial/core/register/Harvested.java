package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.math.BigDecimal;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The seed that one harvest of a cross gave: a seed lot.
 *
 * @param lot the code of the lot, under that of its cross
 * @param date the day, or null when not known
 * @param fruits from how many fruits, or null
 * @param apart whether each fruit was kept apart, this lot being one of them
 * @param count how many seeds
 * @param milligrams what they weigh, or null
 * @param seedsPerGram how many seeds a gram holds, or null
 * @param place where they are kept, or null
 * @param remark anything else, or null
 */
public record Harvested(
    Code lot,
    @Nullable PartialDate date,
    @Nullable Count fruits,
    boolean apart,
    Count count,
    @Nullable BigDecimal milligrams,
    @Nullable BigDecimal seedsPerGram,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the code is not that of a lot, or a weight is not positive
   */
  public Harvested {
    Objects.requireNonNull(lot, "lot");
    Objects.requireNonNull(count, "count");
    Require.lot(lot);
    Require.positive("weight", milligrams);
    Require.positive("seeds per gram", seedsPerGram);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(lot), Subject.of(lot.whole()));
  }

  /**
   * How many seeds: the count, or where nobody counted a guess worked out from the weight.
   *
   * @return {@link #count()}, or about milligrams × seeds per gram / 1000 when only those are known
   */
  public Count seeds() {
    Count weighed = Count.byWeight(milligrams, seedsPerGram);
    return count.size().isPresent() || weighed == null ? count : weighed;
  }
}
