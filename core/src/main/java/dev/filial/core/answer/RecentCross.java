package dev.filial.core.answer;

import dev.filial.core.register.Pollinated;
import dev.filial.core.register.RegisterView;
import java.util.Optional;

/**
 * The cross written last: one who goes along a bench with a brush makes the next with the same
 * parents more often than not.
 */
public final class RecentCross {

  /** Entries looked back through. Older crosses say little of today's work. */
  private static final long LOOKED_BACK = 500;

  private RecentCross() {}

  /** The last cross in force among the last five hundred entries of {@code view}. */
  public static Optional<Pollinated> in(RegisterView view) {
    long first = Math.max(1, view.size() - LOOKED_BACK + 1);
    for (long entry = view.size(); entry >= first; entry--) {
      if (view.effective(entry).orElse(null) instanceof Pollinated cross) {
        return Optional.of(cross);
      }
    }
    return Optional.empty();
  }
}
