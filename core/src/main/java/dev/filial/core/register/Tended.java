package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What was done at the bench with sowings, pots or plants on a day, beside counting and treating.
 *
 * @param codes with which
 * @param care what was done
 * @param medium what they were potted into, or null
 * @param container the new pot or tray, or null
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record Tended(
    List<Code> codes,
    Care care,
    @Nullable String medium,
    @Nullable String container,
    @Nullable PartialDate date,
    @Nullable String remark)
    implements Statement {

  /** What is done. */
  public enum Care {
    /** Looked at without being opened for good. */
    LOOKED_INTO,
    /** The bag or lid was taken off. */
    OPENED,
    /** Got used to drier air and more light, from this day on. */
    HARDENED_OFF,
    /** Put into a bigger pot or fresh medium, as it was. */
    POTTED_ON,
    /** Its tag was written anew. */
    TAG_REWRITTEN
  }

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing is named, or a medium or pot where nothing was
   *     potted
   */
  public Tended {
    codes = Require.named(codes, "say which sowing, pot or plant");
    Objects.requireNonNull(care, "care");
    if (care != Care.POTTED_ON && (medium != null || container != null)) {
      throw new IllegalArgumentException("a medium and a pot go with potting on; leave them out");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Subject.of(codes);
  }
}
