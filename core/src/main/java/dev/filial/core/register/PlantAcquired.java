package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A plant that was bought, given or found, or a friend's plant that was never held but whose pollen
 * came by post.
 *
 * @param code its code: a whole code, no seedling number
 * @param determination what it was said to be
 * @param provenance where it came from
 * @param date the day, or null when not known
 * @param names its own names: a cultivar-to-be, a code from an old notebook
 * @param neverHeld whether the plant itself never stood here
 * @param place where it stands, or null
 * @param remark anything else, or null
 */
public record PlantAcquired(
    Code code,
    Determination determination,
    Provenance provenance,
    @Nullable PartialDate date,
    List<String> names,
    boolean neverHeld,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the code carries a suffix or a name is empty
   */
  public PlantAcquired {
    Objects.requireNonNull(code, "code");
    determination = Determination.orUnknown(determination);
    provenance = Provenance.orUnknown(provenance);
    names = List.copyOf(names);
    Require.texts("names", names);
    Require.whole(code);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }

  @Override
  public Set<Subject> mentions() {
    return Mentions.with(Caution.of(this), Mentions.taxa(determination).toArray(Subject[]::new));
  }
}
