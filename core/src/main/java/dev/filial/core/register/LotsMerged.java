package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Seed of several lots put together in one packet, which then holds a mixture of pedigrees.
 *
 * @param code the code of the mixture: a whole code; its seed is lot H1
 * @param parts what went in
 * @param date the day, or null when not known
 * @param place where it is kept, or null
 * @param remark anything else, or null
 */
public record LotsMerged(
    Code code,
    List<Part> parts,
    @Nullable PartialDate date,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if there are fewer than two lots, one is named twice, or the
   *     shares do not come to 1
   */
  public LotsMerged {
    Objects.requireNonNull(code, "code");
    parts = List.copyOf(parts);
    Require.whole(code);
    Set<Code> lots = new LinkedHashSet<>();
    Fraction sum = Fraction.ZERO;
    for (Part part : parts) {
      Require.lot(part.lot());
      if (!lots.add(part.lot())) {
        throw new IllegalArgumentException(
            part.lot().text() + " is named twice among what was merged");
      }
      sum = sum.plus(part.share());
    }
    if (lots.size() < 2) {
      throw new IllegalArgumentException("a merged lot is made of at least two lots");
    }
    if (!sum.isOne()) {
      throw new IllegalArgumentException(
          "the shares of the merged lots come to " + sum + "; they must come to 1");
    }
  }

  @Override
  public Set<Subject> subjects() {
    Set<Subject> subjects = new LinkedHashSet<>();
    subjects.add(Subject.of(code));
    subjects.add(Subject.of(code.lot(1)));
    parts.forEach(part -> subjects.add(Subject.of(part.lot())));
    return Set.copyOf(subjects);
  }

  /**
   * One lot that went in.
   *
   * @param lot its code
   * @param taken how many of its seeds
   * @param share the share of the mixture it makes up, above 0
   */
  public record Part(Code lot, Count taken, Fraction share) {
    /**
     * Checks the share.
     *
     * @throws IllegalArgumentException if it is not above 0
     */
    public Part {
      Objects.requireNonNull(lot, "lot");
      Objects.requireNonNull(taken, "taken");
      Objects.requireNonNull(share, "share");
      if (share.signum() <= 0) {
        throw new IllegalArgumentException(
            "the share of " + lot.text() + " is " + share + "; a share is above 0");
      }
    }
  }
}
