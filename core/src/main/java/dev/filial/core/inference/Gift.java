package dev.filial.core.inference;

import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.heredity.Meiosis;

/** Where a gamete comes from. */
sealed interface Gift {

  /** What it holds. */
  Form form();

  /**
   * A plant.
   *
   * @param plant its number in the {@link Lineages}
   * @param from what the plant has
   * @param meiosis how it makes gametes
   */
  record Of(int plant, Form from, Meiosis meiosis, Form form) implements Gift {}

  /**
   * Some plant of a taxon, a new one each time.
   *
   * @param taxon its name; {@link FounderPriors#UNKNOWN} if none is known
   */
  record Drawn(String taxon, Form form) implements Gift {}
}
