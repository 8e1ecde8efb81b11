package dev.filial.core.exchange;

import dev.filial.core.register.PartialDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A cross as it is handed on to others. All codes carry the grower's mark.
 *
 * @param code its code
 * @param formula the hybrid formula of its seedlings; empty where no taxon is known
 * @param pollination how it was pollinated, in a grower's words
 * @param date the day, or null when not known
 * @param flowers how many flowers were tried; empty when not recorded
 * @param protection how they were protected, one word each; empty when not recorded
 * @param seeds how many seeds were harvested, the lots summed; empty before any was
 * @param seedlings how many numbers were given to seedlings
 * @param behind who is behind its seedlings
 * @param doubts what is doubtful about it, in plain words
 */
public record CrossMade(
    String code,
    String formula,
    String pollination,
    @Nullable PartialDate date,
    String flowers,
    List<String> protection,
    String seeds,
    long seedlings,
    Accession.Behind behind,
    List<String> doubts) {
  /** Copies the lists. */
  public CrossMade {
    protection = List.copyOf(protection);
    doubts = List.copyOf(doubts);
  }
}
