package dev.filial.core.store;

import java.util.List;

/**
 * What reading the whole register over again found.
 *
 * @param entries how many entries were read
 * @param faults what does not fit, one sentence each; empty when all is well
 */
public record Verification(long entries, List<String> faults) {
  /** Copies the list. */
  public Verification {
    faults = List.copyOf(faults);
  }

  /** Whether nothing was found amiss. */
  public boolean isSound() {
    return faults.isEmpty();
  }
}
