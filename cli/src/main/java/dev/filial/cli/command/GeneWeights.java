package dev.filial.cli.command;

import dev.filial.cli.frame.Reading;
import dev.filial.core.number.Fraction;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How much gametes with some alleles count: {@code R=2,r=1}.
 *
 * @param byAllele the weights by the symbol of the allele
 */
record GeneWeights(Map<String, Fraction> byAllele) {

  /** Nothing said, which is that all count alike. */
  static final GeneWeights NONE = new GeneWeights(Map.of());

  /** Reads {@code ALLELE=WEIGHT,...}. */
  static final Reading<GeneWeights> READING = (text, bench) -> read(text);

  GeneWeights {
    byAllele = Collections.unmodifiableMap(new LinkedHashMap<>(byAllele));
  }

  private static GeneWeights read(String text) {
    Map<String, Fraction> weights = new LinkedHashMap<>();
    for (String part : text.split(",", -1)) {
      int equals = part.lastIndexOf('=');
      if (equals < 1) {
        throw new IllegalArgumentException(
            "\"" + part + "\" is not an allele and what it counts; write R=2");
      }
      String allele = part.substring(0, equals).strip();
      if (weights.put(allele, Fraction.parse(part.substring(equals + 1))) != null) {
        throw new IllegalArgumentException("\"" + text + "\" names " + allele + " twice");
      }
    }
    return new GeneWeights(weights);
  }
}
