package dev.filial.core.register;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A plant found without its tag: it gets a code of its own and is one of the candidates, or
 * something else.
 *
 * @param code its new code: a whole code
 * @param candidates what it may be, with weights: plants, or groups meaning one of them
 * @param unknown the chance that it is none of them, 0 to 1
 * @param date the day, or null when not known
 * @param place where it stands, or null
 * @param remark anything else, or null
 */
public record TagLost(
    Code code,
    List<Weighted> candidates,
    Fraction unknown,
    @Nullable PartialDate date,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the chance lies outside 0 to 1, or a candidate is named
   *     twice
   */
  public TagLost {
    Objects.requireNonNull(code, "code");
    candidates = List.copyOf(candidates);
    Objects.requireNonNull(unknown, "unknown");
    Require.whole(code);
    unknown = new Pollen.Open(candidates, unknown).unknown();
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(code));
  }

  @Override
  public Set<Subject> mentions() {
    return candidates.stream()
        .map(candidate -> Subject.of(candidate.plant()))
        .collect(java.util.stream.Collectors.toUnmodifiableSet());
  }
}
