package dev.filial.core.register;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A place, and the larger one it stands in: a tray on a bench, a bench in a house. Said again with
 * a later day, it was moved, and all that stands in it with it.
 *
 * @param place its name, as plants are said to stand there
 * @param within the place it stands in, or null for none
 * @param date the day, or null when not known
 * @param remark anything else, or null
 */
public record PlaceDeclared(
    String place, @Nullable String within, @Nullable PartialDate date, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if a name is empty, or a place stands in itself
   */
  public PlaceDeclared {
    Require.text("place", place);
    if (within != null) {
      Require.text("within", within);
      if (Subject.place(place).equals(Subject.place(within))) {
        throw new IllegalArgumentException(
            "\"" + place + "\" cannot stand in itself; name the larger place");
      }
    }
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.place(place));
  }

  @Override
  public Set<Subject> mentions() {
    Set<Subject> larger = new LinkedHashSet<>();
    if (within != null) {
      larger.add(Subject.place(within));
    }
    return Set.copyOf(larger);
  }
}
