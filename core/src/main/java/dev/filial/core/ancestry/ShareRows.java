package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import java.util.Optional;

/** A row of shares for each plant of a pedigree: one a taxon, then the unknown one, if any. */
sealed interface ShareRows permits ExactRows, RoundedRows {

  /** The share in one column of a plant's row. */
  double share(int plant, int column);

  /** The same exactly; empty if it is not known exactly. */
  Optional<Fraction> fraction(int plant, int column);

  /** Writes the rows of some plants to where they belong in an array of all rows end to end. */
  void copyTo(int from, int to, double[] target);
}
