package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One record that turned out to be two plants. The entries named spoke of the second, and are from
 * now on read so.
 *
 * @param code the record as it was
 * @param into the code of the second plant: a whole code, or a seedling number of the same cross
 * @param entries the numbers of the entries that spoke of the second plant
 * @param determination what the second plant is, where it has a whole code
 * @param date the day, or null when not known
 * @param why how that came out
 */
public record Parted(
    Code code,
    Code into,
    List<Long> entries,
    Determination determination,
    @Nullable PartialDate date,
    String why)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if the new code is neither a whole code nor a seedling of the
   *     same cross
   */
  public Parted {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(into, "into");
    entries = List.copyOf(entries);
    entries.forEach(Require::entry);
    determination = Determination.orUnknown(determination);
    Require.text("why", why);
    if (!into.isWhole() && !(into.isSeedling() && into.whole().equals(code.whole()))) {
      throw new IllegalArgumentException(
          into.text()
              + " cannot be the second plant of "
              + code.text()
              + ": give a whole code, or the next seedling number of the same cross");
    }
    if (into.equals(code)) {
      throw new IllegalArgumentException(code.text() + " is parted into itself; name a new code");
    }
  }

  @Override
  public Set<Subject> subjects() {
    Set<Subject> subjects = new LinkedHashSet<>();
    subjects.add(Subject.of(code));
    subjects.add(Subject.of(into));
    entries.forEach(entry -> subjects.add(Subject.entry(entry)));
    return Set.copyOf(subjects);
  }

  @Override
  public Set<Subject> mentions() {
    return Mentions.taxa(determination);
  }
}
