package dev.filial.core.answer;

import dev.filial.core.name.Code;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Which things of a register are handed on.
 *
 * @param only these, and what stands under them; all where none is named
 * @param year only codes of this calendar year, or null
 * @param gone also what died, left or was used up
 */
public record Chosen(Set<Code> only, @Nullable Integer year, boolean gone) {

  /** Copies the codes. */
  public Chosen {
    only = Set.copyOf(only);
  }

  /** All that is here. */
  public static Chosen here() {
    return new Chosen(Set.of(), null, false);
  }

  /** The same of these codes only; one that is named is chosen though it is gone. */
  public Chosen withOnly(Collection<Code> codes) {
    return new Chosen(new LinkedHashSet<>(codes), year, gone);
  }

  /** The same, only codes of calendar year {@code only}. */
  public Chosen withYear(@Nullable Integer other) {
    return new Chosen(only, other, gone);
  }

  /** The same, with what died, left or was used up. */
  public Chosen withGone(boolean also) {
    return new Chosen(only, year, also);
  }

  boolean isOfYear(Code code) {
    return year == null || code.year() == Math.floorMod(year, 100);
  }
}
