package dev.filial.core.answer;

import dev.filial.core.inference.ImpossibleFindingsException;
import dev.filial.core.inference.Reckoning;
import dev.filial.core.inference.TangledPedigreeException;
import dev.filial.core.inference.UnsteadyDrawsException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;

/** What a grower should know of how odds over a pedigree were reckoned, or why they were not. */
final class ReckoningTelling {

  private ReckoningTelling() {}

  /** What is noted of genes that are not reckoned with. */
  static List<String> noted(GenesInPlay genes) {
    List<String> notes = new ArrayList<>();
    genes
        .refusing()
        .ifPresent(
            locus ->
                notes.add(
                    "The S locus "
                        + locus
                        + " lies on the same chromosome; what refused pollen does to genes beside"
                        + " it is not reckoned with here."));
    notes.addAll(genes.unevenNotes());
    return notes;
  }

  /** What an answer leaned on, and how it was reckoned where not exactly. */
  static List<String> leaning(Reckoning reckoning) {
    List<String> notes = new ArrayList<>();
    for (String gene : reckoning.leanedOn()) {
      notes.add(
          "How frequent the alleles are is not stated for "
              + gene
              + ": it is taken as unknown, the same for all such plants, and what was seen of some"
              + " tells of the others.");
    }
    if (!reckoning.isExact()) {
      notes.add(
          "Exact odds would take tables of "
              + String.format(Locale.ROOT, "%.2g", reckoning.entries())
              + " numbers; these are from "
              + reckoning.sweeps()
              + " draws, each with its standard error.");
    }
    return notes;
  }

  /** What the library will not answer, as a grower can mend it. */
  static <T> T told(Supplier<T> answer) {
    try {
      return answer.get();
    } catch (ImpossibleFindingsException e) {
      throw new NotReckoned(
          NotReckoned.Reason.CONTRADICTION,
          "what is recorded cannot all be true, so there are no odds: somewhere a plant shows what"
              + " its parents cannot have given it",
          e);
    } catch (UnsteadyDrawsException e) {
      throw new NotReckoned(NotReckoned.Reason.UNSTEADY, String.valueOf(e.getMessage()), e);
    } catch (TangledPedigreeException e) {
      throw new NotReckoned(NotReckoned.Reason.TANGLED, String.valueOf(e.getMessage()), e);
    }
  }
}
