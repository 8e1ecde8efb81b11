package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Seedlings counted on a day, in one sowing or group or in all those of a bag or tray.
 *
 * @param date the day, or null when not known
 * @param readings what was counted where
 * @param remark anything else, or null
 */
public record Counted(@Nullable PartialDate date, List<Reading> readings, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if nothing is named
   */
  public Counted {
    readings = List.copyOf(readings);
    Require.distinct(readings.stream().map(Reading::code).toList());
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("a count names at least one sowing or group");
    }
  }

  @Override
  public Set<Subject> subjects() {
    return readings.stream()
        .map(reading -> Subject.of(reading.code()))
        .collect(java.util.stream.Collectors.toUnmodifiableSet());
  }

  /**
   * What was counted in one sowing or group.
   *
   * @param code the sowing or group
   * @param germinated how many had come up by then, in all; null when not counted
   * @param alive how many stand there now; null when not counted
   */
  public record Reading(Code code, @Nullable Count germinated, @Nullable Count alive) {
    /**
     * Checks that something was counted, in a sowing or a group.
     *
     * @throws IllegalArgumentException if not
     */
    public Reading {
      Objects.requireNonNull(code, "code");
      if (!code.isGroup() && !code.isSowing()) {
        throw new IllegalArgumentException(
            code.text()
                + " is neither a sowing nor a pot; count "
                + code.whole().sowing(1).text()
                + " or "
                + code.whole().group(1).text());
      }
      if (germinated == null && alive == null) {
        throw new IllegalArgumentException(
            "say how many of " + code.text() + " germinated or are alive");
      }
    }
  }
}
