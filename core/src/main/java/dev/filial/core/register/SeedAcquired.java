package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A packet of seed that was bought, swapped or collected. Each seedling of it is a founder of its
 * own.
 *
 * @param code the code of the accession: a whole code; its seed is lot H1
 * @param determination what it was said to be
 * @param provenance where it came from
 * @param date the day, or null when not known
 * @param count how many seeds
 * @param place where it is kept, or null
 * @param remark anything else, or null
 */
public record SeedAcquired(
    Code code,
    Determination determination,
    Provenance provenance,
    @Nullable PartialDate date,
    Count count,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the code carries a suffix
   */
  public SeedAcquired {
    Objects.requireNonNull(code, "code");
    determination = Determination.orUnknown(determination);
    provenance = Provenance.orUnknown(provenance);
    Objects.requireNonNull(count, "count");
    Require.whole(code);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code), Subject.of(code.lot(1)));
  }

  @Override
  public Set<Subject> mentions() {
    return Mentions.with(Caution.of(this), Mentions.taxa(determination).toArray(Subject[]::new));
  }
}
