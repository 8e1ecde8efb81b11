package dev.filial.core.register;

import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How long something usually takes here: of a taxon, or of all. Of several entries the later holds.
 *
 * @param interval which
 * @param days how long, 1 to 36,500 days
 * @param taxon of which taxon, a genus too; null for all
 * @param remark anything else, or null
 */
public record IntervalStated(
    Interval interval, int days, @Nullable String taxon, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the days are out of range
   */
  public IntervalStated {
    Objects.requireNonNull(interval, "interval");
    Require.days("days", days);
    if (taxon != null) {
      Require.text("taxon", taxon);
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(interval));
  }

  @Override
  public Set<Subject> mentions() {
    return taxon == null ? Set.of() : Set.of(Subject.taxon(taxon));
  }
}
