package dev.filial.core.register;

import java.util.List;

/**
 * An entry that the register took.
 *
 * @param entry the entry
 * @param warnings what looked unlikely and was taken all the same, one sentence each
 */
public record Accepted(Entry entry, List<String> warnings) {
  /** Copies the list. */
  public Accepted {
    warnings = List.copyOf(warnings);
  }
}
