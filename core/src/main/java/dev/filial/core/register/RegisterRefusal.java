package dev.filial.core.register;

import java.util.List;

/**
 * The register does not accept an entry. The message names the plants and says what to do; nothing
 * was changed.
 */
public class RegisterRefusal extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Long> entries;

  /** A refusal with its message. */
  public RegisterRefusal(String message) {
    this(message, List.of());
  }

  /**
   * A refusal because of other entries.
   *
   * @param entries their numbers
   */
  public RegisterRefusal(String message, List<Long> entries) {
    super(message);
    this.entries = List.copyOf(entries);
  }

  /** The numbers of the entries that stand against it; empty when none do. */
  public List<Long> entries() {
    return entries;
  }
}
