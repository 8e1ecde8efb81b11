package dev.filial.core.heredity;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A locus: a place on a chromosome, or in the cytoplasm, at which a plant carries alleles.
 *
 * @param name its name
 * @param alleles the symbols of its alleles, the most dominant first; at least two, at most 30
 * @param seat where it sits, and so how it is handed on
 */
public record Locus(String name, List<String> alleles, Seat seat) {

  /** Where a locus sits. */
  public enum Seat {
    /** On a chromosome. */
    NUCLEUS,
    /** In the cytoplasm, which the seed parent alone hands on. */
    CYTOPLASM
  }

  /** Gametes of linked loci are packed into one number, a few bits an allele. */
  private static final int MOST_ALLELES = 30;

  private static final Pattern SYMBOL = Pattern.compile("[^\\s/|;,._*=:<>~\"'_]{1,12}");

  /**
   * Checks the symbols.
   *
   * @throws IllegalArgumentException if it has no name, fewer than two alleles or more than 30, one
   *     twice, or a symbol that could not be read in a genotype
   */
  public Locus {
    Objects.requireNonNull(seat, "seat");
    alleles = List.copyOf(alleles);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a gene has a name; give it one");
    }
    if (alleles.size() < 2 || alleles.size() > MOST_ALLELES) {
      throw new IllegalArgumentException(
          "the gene "
              + name
              + " has "
              + alleles.size()
              + " alleles; it has 2 or more, at most "
              + MOST_ALLELES);
    }
    Set<String> seen = new HashSet<>();
    for (String allele : alleles) {
      if (!SYMBOL.matcher(allele).matches()) {
        throw new IllegalArgumentException(
            "\""
                + allele
                + "\" cannot be the symbol of an allele; it has 1 to 12 characters, none of them a"
                + " space or one of / | ; , . _ * = : < > ~ or a quote");
      }
      if (!seen.add(allele)) {
        throw new IllegalArgumentException(
            "the allele " + allele + " of the gene " + name + " is named twice; name it once");
      }
    }
  }

  /** A locus on a chromosome, its alleles in order of dominance. */
  public static Locus of(String name, String... alleles) {
    return new Locus(name, List.of(alleles), Seat.NUCLEUS);
  }

  /** A locus in the cytoplasm. */
  public static Locus cytoplasmic(String name, String... alleles) {
    return new Locus(name, List.of(alleles), Seat.CYTOPLASM);
  }

  /** Whether the seed parent alone hands it on. */
  public boolean isCytoplasmic() {
    return seat == Seat.CYTOPLASM;
  }

  /**
   * The place of an allele in the order of dominance, from 0.
   *
   * @throws IllegalArgumentException if the locus has none of that symbol
   */
  int index(String allele) {
    int index = alleles.indexOf(allele);
    if (index < 0) {
      throw new IllegalArgumentException(
          "the gene "
              + name
              + " has no allele "
              + allele
              + "; it has "
              + String.join(", ", alleles));
    }
    return index;
  }
}
