package dev.filial.core.name;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What may stand on a label, in the order in which it is kept when there is not room for all.
 *
 * @param code the code, with the grower's mark if the plant leaves the house
 * @param parentsOrTaxon the parents or the taxon, said several ways from the longest to the
 *     shortest; may be empty
 * @param fieldNumber the collector's field number
 * @param date the date of sowing, or of a packet of seed that of harvest
 * @param generation the generation, as F2 or BC1
 * @param remarks whatever else, the most important first
 */
public record LabelFacts(
    String code,
    List<String> parentsOrTaxon,
    Optional<String> fieldNumber,
    Optional<TagDate> date,
    Optional<String> generation,
    List<String> remarks) {

  /**
   * Takes the facts over.
   *
   * @throws IllegalArgumentException if the code is blank
   */
  public LabelFacts {
    if (code.isBlank()) {
      throw new IllegalArgumentException("a label needs a code");
    }
    parentsOrTaxon = List.copyOf(parentsOrTaxon);
    Objects.requireNonNull(fieldNumber, "fieldNumber");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(generation, "generation");
    remarks = List.copyOf(remarks);
  }

  /** A label with nothing but its code. */
  public static LabelFacts of(String code) {
    return new LabelFacts(
        code, List.of(), Optional.empty(), Optional.empty(), Optional.empty(), List.of());
  }

  /** These facts with the parents or the taxon, said several ways from the longest on. */
  public LabelFacts withParentsOrTaxon(List<String> longestFirst) {
    return new LabelFacts(code, longestFirst, fieldNumber, date, generation, remarks);
  }

  /** These facts with the collector's field number. */
  public LabelFacts withFieldNumber(String number) {
    return new LabelFacts(code, parentsOrTaxon, Optional.of(number), date, generation, remarks);
  }

  /** These facts with the date of sowing, or of a packet of seed with that of harvest. */
  public LabelFacts withDate(TagDate day) {
    return new LabelFacts(code, parentsOrTaxon, fieldNumber, Optional.of(day), generation, remarks);
  }

  /** These facts with the generation. */
  public LabelFacts withGeneration(String words) {
    return new LabelFacts(code, parentsOrTaxon, fieldNumber, date, Optional.of(words), remarks);
  }

  /** These facts with remarks, the most important first. */
  public LabelFacts withRemarks(List<String> words) {
    return new LabelFacts(code, parentsOrTaxon, fieldNumber, date, generation, words);
  }
}
