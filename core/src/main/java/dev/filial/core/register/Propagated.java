package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A ramet: an offset, a cutting or a scion of another plant, with the same genotype.
 *
 * @param code the code of the ramet: a whole code
 * @param of the plant it was taken from
 * @param how offset, cutting, graft …, or null
 * @param date the day, or null when not known
 * @param doubled whether its chromosomes were doubled (colchicine)
 * @param sportFor the traits in which it differs from its source
 * @param names its own names
 * @param place where it stands, or null
 * @param remark anything else, or null
 */
public record Propagated(
    Code code,
    Code of,
    @Nullable String how,
    @Nullable PartialDate date,
    boolean doubled,
    List<String> sportFor,
    List<String> names,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the code carries a suffix or a name is empty
   */
  public Propagated {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(of, "of");
    sportFor = List.copyOf(sportFor);
    names = List.copyOf(names);
    Require.texts("sportFor", sportFor);
    Require.texts("names", names);
    Require.whole(code);
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }

  @Override
  public Set<Subject> mentions() {
    Set<Subject> subjects = new LinkedHashSet<>(Mentions.with(Caution.of(this)));
    subjects.add(Subject.of(of));
    sportFor.forEach(trait -> subjects.add(Subject.trait(trait)));
    return Set.copyOf(subjects);
  }
}
