package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Seed cleaned, counted anew, weighed, or put where it is kept.
 *
 * @param lots which seed lots
 * @param cleaned whether it was cleaned
 * @param left how many seeds there are now, or null
 * @param milligrams what they weigh now, or null
 * @param seedsPerGram how many seeds a gram holds, or null
 * @param keeping how it is kept (paper, silica gel, 5 °C), or null
 * @param place where it is kept, or null
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record SeedKept(
    List<Code> lots,
    boolean cleaned,
    @Nullable Count left,
    @Nullable BigDecimal milligrams,
    @Nullable BigDecimal seedsPerGram,
    @Nullable String keeping,
    @Nullable String place,
    @Nullable PartialDate date,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if no lot is named, nothing is said of it, a weight is not
   *     positive, or a count or weight is said of several lots at once
   */
  public SeedKept {
    lots = Require.named(lots, "say which seed lot");
    lots.forEach(Require::lot);
    Require.positive("weight", milligrams);
    Require.positive("seeds per gram", seedsPerGram);
    if (!cleaned
        && left == null
        && milligrams == null
        && seedsPerGram == null
        && keeping == null
        && place == null) {
      throw new IllegalArgumentException(
          "say what was done with "
              + lots.get(0).text()
              + ": cleaned, counted, weighed, or where and how it is kept");
    }
    if (lots.size() > 1 && (left != null || milligrams != null)) {
      throw new IllegalArgumentException(
          "a count or a weight is that of one seed lot; write an entry for each");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Subject.of(lots);
  }

  /**
   * How many seeds there are now: as counted, or where only the weight is known a guess worked out
   * from it; null when this says nothing of it.
   */
  public @Nullable Count seeds() {
    return left == null ? Count.byWeight(milligrams, seedsPerGram) : left;
  }
}
