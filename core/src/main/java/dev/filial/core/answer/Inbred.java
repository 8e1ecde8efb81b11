package dev.filial.core.answer;

import dev.filial.core.ancestry.FounderContributions.Contribution;
import java.util.List;

/**
 * How inbred a plant is, and which founders stand behind it.
 *
 * @param code the plant, or a family one seedling of which is meant
 * @param inbreeding the chance that its two alleles at a locus are one by descent, 0 to 1
 * @param founders the founders behind it, the largest share first
 * @param unknown the share of parents nobody knows
 * @param effectiveFounders how many founders of like shares would be as varied
 * @param notes what the answer leans on, a sentence each
 */
public record Inbred(
    String code,
    double inbreeding,
    List<Contribution> founders,
    double unknown,
    double effectiveFounders,
    List<String> notes) {

  /** Copies the lists. */
  public Inbred {
    founders = List.copyOf(founders);
    notes = List.copyOf(notes);
  }
}
