package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Seedlings that were pricked out and given numbers, once per cross whatever the pot.
 *
 * @param from the group or sowing they came from, or the whole code when none was recorded
 * @param first the first number given
 * @param last the last number given
 * @param date the day, or null when not known
 * @param pickedFor the trait they were picked for, or null when they were not
 * @param place where they stand, or null
 * @param remark anything else, or null
 */
public record Numbered(
    Code from,
    int first,
    int last,
    @Nullable PartialDate date,
    @Nullable String pickedFor,
    @Nullable String place,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the numbers do not run upwards from 1 or are too many
   */
  public Numbered {
    Objects.requireNonNull(from, "from");
    if (pickedFor != null) {
      Require.text("pickedFor", pickedFor);
    }
    if (first < 1 || last < first || last - first >= MOST) {
      throw new IllegalArgumentException(
          (last < 1 ? "\"first\" and \"last\": " : "")
              + "seedlings "
              + first
              + " to "
              + last
              + " of "
              + from.whole().text()
              + ": numbers start at 1, run upwards, and at most "
              + MOST
              + " are given in one entry");
    }
  }

  @Override
  public Set<Subject> subjects() {
    Set<Subject> subjects = new LinkedHashSet<>();
    subjects.add(Subject.of(from));
    codes().forEach(code -> subjects.add(Subject.of(code)));
    return Set.copyOf(subjects);
  }

  @Override
  public Set<Subject> mentions() {
    return pickedFor == null
        ? Set.of(Subject.of(from.whole()))
        : Set.of(Subject.of(from.whole()), Subject.trait(pickedFor));
  }

  /** The most seedlings one entry may number. */
  public static final int MOST = 10_000;

  /** The codes that were given. */
  public List<Code> codes() {
    Code whole = from.whole();
    return IntStream.rangeClosed(first, last).mapToObj(whole::seedling).toList();
  }
}
