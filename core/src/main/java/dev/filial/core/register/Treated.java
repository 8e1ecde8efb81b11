package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A treatment of seed, sowings, pots or plants; of a whole bag or tray in one entry.
 *
 * @param codes what was treated
 * @param treatment what sort it was
 * @param product what was used, as its label names it, or null
 * @param dilution how strong, as text ({@code 1 in 10}, {@code 0.3 %}), or null
 * @param everyDays after how many days it is to be repeated, or null when it is not
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record Treated(
    List<Code> codes,
    Treatment treatment,
    @Nullable String product,
    @Nullable String dilution,
    @Nullable Integer everyDays,
    @Nullable PartialDate date,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing is named, or the days are out of range
   */
  public Treated {
    codes = Require.named(codes, "say what was treated");
    Objects.requireNonNull(treatment, "treatment");
    if (everyDays != null) {
      Require.days("everyDays", everyDays);
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Subject.of(codes);
  }

  @Override
  public Set<Subject> mentions() {
    return everyDays == null
        ? Mentions.with(Caution.of(this))
        : Mentions.with(Caution.of(this), Subject.REPEATED_TREATMENT);
  }
}
