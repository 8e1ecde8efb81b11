package dev.filial.core.answer;

import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.ImpossibleFindingsException;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Leaves out one entry after the other, and looks how the answer moves. */
final class Influences {

  /** Of more entries only the first are tried. */
  static final int MOST_ENTRIES = 400;

  /** What moves an answer by less is not listed. */
  private static final double LEAST = 1e-9;

  private Influences() {}

  /** That not all entries were tried; empty if all were. */
  static Optional<String> note(PedigreeOdds odds) {
    long entries = odds.evidence().stream().map(Evidence::source).distinct().count();
    return entries > MOST_ENTRIES
        ? Optional.of(
            "Only the first "
                + MOST_ENTRIES
                + " of "
                + entries
                + " entries were left out one by one.")
        : Optional.empty();
  }

  /**
   * The entries that moved an answer, those that moved it most first.
   *
   * @param answer the chance that is answered
   * @param notes where it is said if not all entries were tried
   */
  static List<Influence> of(
      RegisterView view,
      PedigreeOdds odds,
      ToDoubleFunction<PedigreeOdds> answer,
      Collection<String> notes) {
    note(odds).ifPresent(notes::add);
    double with = answer.applyAsDouble(odds);
    Set<String> sources = new LinkedHashSet<>();
    odds.evidence().forEach(finding -> sources.add(finding.source()));
    List<Influence> found = new ArrayList<>();
    int tried = 0;
    for (String source : sources) {
      if (tried++ >= MOST_ENTRIES) {
        break;
      }
      List<Evidence> others =
          odds.evidence().stream().filter(finding -> !finding.source().equals(source)).toList();
      double without;
      try {
        without = answer.applyAsDouble(odds.withEvidence(others));
      } catch (ImpossibleFindingsException e) {
        continue; // it alone keeps the others possible, which only a misprint could do
      }
      if (Math.abs(without - with) > LEAST) {
        Said said = Said.of(view, Long.parseLong(source));
        found.add(new Influence(said.entry(), said.date(), said.text(), without, with));
      }
    }
    found.sort(Comparator.comparingDouble((Influence one) -> -move(one)));
    return List.copyOf(found);
  }

  private static double move(Influence one) {
    double ratio = Math.abs(Math.log(one.oddsRatio()));
    return Double.isNaN(ratio) ? Math.abs(one.with() - one.without()) : ratio;
  }
}
