package dev.filial.core.register;

import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the register says of one taxon name.
 *
 * @param key the folded name
 * @param name the name as declared or as the renaming gave it
 * @param acceptedAs the name it is to be read as, or null when it is itself accepted
 * @param readAlso names that are read as this one
 * @param declared what was declared of it, or null when nothing was
 */
public record Taxon(
    String key,
    String name,
    @Nullable String acceptedAs,
    List<String> readAlso,
    @Nullable TaxonDeclared declared) {

  /** Copies the list. */
  public Taxon {
    readAlso = List.copyOf(readAlso);
  }

  /** Chromosome sets, or null when not stated. */
  public @Nullable Integer ploidy() {
    return declared == null ? null : declared.ploidy();
  }

  /** Whether its own pollen fails on it. */
  public boolean isSelfIncompatible() {
    return declared != null && declared.selfIncompatible();
  }

  /** Stated shares of a hybrid taxon. */
  public Map<String, Fraction> makeup() {
    return declared == null ? Map.of() : declared.makeup();
  }
}
