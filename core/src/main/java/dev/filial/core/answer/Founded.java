package dev.filial.core.answer;

import dev.filial.core.ancestry.FounderContributions;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Founders behind a collection.
 *
 * @param contributions who they are, by how much each stands behind it, and the effective number
 * @param meanCoancestry over all pairs of genotypes, each with itself too; null if they are more
 *     than a matrix is made for
 * @param notes what the answer leans on, a sentence each
 */
public record Founded(
    FounderContributions contributions, @Nullable Double meanCoancestry, List<String> notes) {

  /** Copies the notes. */
  public Founded {
    notes = List.copyOf(notes);
  }
}
