package dev.filial.core.register;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Collectors' field numbers under which plants of one population were gathered: by two collectors,
 * or in two years.
 *
 * @param fieldNumbers the numbers, as they stand on the tags; outer spaces do not count
 * @param remark anything else, or null
 */
public record PopulationDeclared(List<String> fieldNumbers, @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if fewer than two numbers are named, or one twice
   */
  public PopulationDeclared {
    fieldNumbers = List.copyOf(fieldNumbers);
    Require.texts("fieldNumbers", fieldNumbers);
    Set<Subject> seen = new LinkedHashSet<>();
    for (String number : fieldNumbers) {
      if (!seen.add(Subject.fieldNumber(number))) {
        throw new IllegalArgumentException(
            "the field number " + number.strip() + " is named twice; name it once");
      }
    }
    if (fieldNumbers.size() < 2) {
      throw new IllegalArgumentException(
          "one population is said of two field numbers or more; name all that belong to it");
    }
  }

  @Override
  public Set<Subject> subjects() {
    Set<Subject> subjects = new LinkedHashSet<>();
    fieldNumbers.forEach(number -> subjects.add(Subject.fieldNumber(number)));
    return Set.copyOf(subjects);
  }
}
