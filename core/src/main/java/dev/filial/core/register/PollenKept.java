package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Pollen put by, and what became of it. What one plant gave on one day is one batch: the plant and
 * that day stand on its paper, and name it here.
 *
 * @param plant whose pollen it is
 * @param step what was done
 * @param gathered the day the batch was gathered, where a plant has several; null for the only one,
 *     and of a gathering, whose day is {@code date}
 * @param date the day, or null when not known
 * @param from who sent it, where it was not gathered here, or null
 * @param place where it is kept, or null
 * @param remark anything else, or null
 */
public record PollenKept(
    Code plant,
    Step step,
    @Nullable PartialDate gathered,
    @Nullable PartialDate date,
    @Nullable String from,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /** What is done with pollen. */
  public enum Step {
    /** Taken from the flower, or come by post. */
    GATHERED,
    /** Dried, in silica gel or the like. */
    DRIED,
    /** Put into the freezer. */
    FROZEN,
    /** Taken out of the freezer. */
    THAWED,
    /** The last grain was used. */
    USED_UP,
    /** Thrown out. */
    DISCARDED;

    /** Whether there is pollen left after it. */
    public boolean isLeft() {
      return this != USED_UP && this != DISCARDED;
    }
  }

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if a gathering names another batch, or is sent on at a later
   *     step
   */
  public PollenKept {
    Objects.requireNonNull(plant, "plant");
    Objects.requireNonNull(step, "step");
    if (step == Step.GATHERED && gathered != null) {
      throw new IllegalArgumentException(
          "\"gathered\" names an earlier batch; the day of a new one is its \"date\"");
    }
    if (step != Step.GATHERED && from != null) {
      throw new IllegalArgumentException(
          "\"from\" goes with the entry by which the pollen came; leave it out here");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.of(plant));
  }
}
