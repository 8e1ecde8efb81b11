package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * How a trait is inherited: a table from genotypes to states, of any number of loci.
 *
 * <p>The table is read from the top: the first row whose patterns a plant fits says what it shows.
 * Dominance, allele series, incomplete dominance and the classic two-locus ratios are short ways of
 * writing such a table.
 *
 * @param trait the trait
 * @param states all its states
 * @param rows the table
 */
public record TraitModel(String trait, List<String> states, List<Row> rows) {

  /**
   * One row of the table.
   *
   * @param patterns what a plant must be like, at most one pattern a locus; a locus that is not
   *     named may be anything
   * @param outcome what it then shows
   */
  public record Row(List<Pattern> patterns, Outcome outcome) {
    /**
     * Copies the patterns.
     *
     * @throws IllegalArgumentException if two are of one locus
     */
    public Row {
      patterns = List.copyOf(patterns);
      Set<Locus> seen = new LinkedHashSet<>();
      for (Pattern pattern : patterns) {
        if (!seen.add(pattern.locus())) {
          throw new IllegalArgumentException(
              "the gene " + pattern.locus().name() + " stands twice in a row of the table");
        }
      }
    }

    /** As it can be read again; {@code *} for any plant. */
    public String text() {
      return patterns.isEmpty()
          ? "*"
          : String.join(" ", patterns.stream().map(Pattern::text).toList());
    }
  }

  /**
   * Checks that the rows say something of the states.
   *
   * @throws IllegalArgumentException if there are no rows, a row shows a state that is not among
   *     the states, or no row shows any
   */
  public TraitModel {
    states = List.copyOf(states);
    rows = List.copyOf(rows);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException(
          "the table of " + trait + " has no rows; say what each genotype shows");
    }
    boolean shows = false;
    for (Row row : rows) {
      for (String state : row.outcome().shows().keySet()) {
        shows = true;
        if (!states.contains(state)) {
          throw new IllegalArgumentException(
              "the row "
                  + row.text()
                  + " shows \""
                  + state
                  + "\", which "
                  + trait
                  + " has not; it is one of "
                  + String.join(", ", states));
        }
      }
    }
    if (!shows) {
      throw new IllegalArgumentException(
          "no row of the table of " + trait + " shows a state; none would live");
    }
  }

  /**
   * Complete dominance in the order of the alleles: what shows is the state of the first of them
   * that the plant carries. Of two alleles the simple case, of more an allele series.
   *
   * @param states one a allele, in their order
   * @throws IllegalArgumentException if there are not as many
   */
  public static TraitModel dominant(String trait, Locus locus, List<String> states) {
    requireStates(locus, states, locus.alleles().size());
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < states.size(); i++) {
      String allele = locus.alleles().get(i);
      Pattern pattern =
          i < states.size() - 1 || locus.isCytoplasmic()
              ? new Pattern(locus, List.of(allele), !locus.isCytoplasmic())
              : new Pattern(locus, List.of(allele, allele), false);
      rows.add(new Row(List.of(pattern), Outcome.of(states.get(i))));
    }
    return new TraitModel(trait, distinct(states), rows);
  }

  /**
   * Two alleles, neither of which hides the other: three states, of the first allele alone, of
   * both, and of the second alone. Incomplete dominance if the middle one lies between the others,
   * codominance if it shows both. In plants of more sets any mixture shows the middle one.
   *
   * @throws IllegalArgumentException if there are not two alleles and three states
   */
  public static TraitModel intermediate(String trait, Locus locus, List<String> states) {
    if (locus.alleles().size() != 2 || locus.isCytoplasmic()) {
      throw new IllegalArgumentException(
          "the gene " + locus.name() + " has not just two alleles of a chromosome; write a table");
    }
    requireStates(locus, states, 3);
    String one = locus.alleles().get(0);
    String other = locus.alleles().get(1);
    return new TraitModel(
        trait,
        distinct(states),
        List.of(
            row(new Pattern(locus, List.of(one, one), false), states.get(0)),
            row(new Pattern(locus, List.of(one, other), false), states.get(1)),
            row(new Pattern(locus, List.of(other, other), false), states.get(2))));
  }

  private static Row row(Pattern pattern, String state) {
    return new Row(List.of(pattern), Outcome.of(state));
  }

  /**
   * One of the classic interactions of two loci.
   *
   * @param states as many as the ratio has terms, in its order
   * @throws IllegalArgumentException if there are not as many
   */
  public static TraitModel interaction(
      String trait, Interaction interaction, Locus one, Locus other, List<String> states) {
    return new TraitModel(trait, distinct(states), interaction.rows(one, other, states));
  }

  /** The state of a plant that fits the patterns of {@link #fitting}. */
  static final String FITS = "fits";

  /** No trait, but whether a plant fits these patterns. */
  static TraitModel fitting(List<Pattern> patterns) {
    Row row = new Row(patterns, Outcome.of(FITS));
    return new TraitModel(
        row.text(), List.of(FITS, "other"), List.of(row, new Row(List.of(), Outcome.of("other"))));
  }

  private static List<String> distinct(List<String> states) {
    return List.copyOf(new LinkedHashSet<>(states));
  }

  private static void requireStates(Locus locus, List<String> states, int number) {
    if (states.size() != number) {
      throw new IllegalArgumentException(
          states.size()
              + " states ("
              + String.join(", ", states)
              + ") for the gene "
              + locus.name()
              + " with the alleles "
              + String.join(", ", locus.alleles())
              + "; here it needs "
              + number);
    }
  }

  /**
   * The same, with genotypes that are told to show a state doing so only as often as stated, and
   * else another.
   *
   * @param state the state that may fail to show
   * @param penetrance how often it shows, 0 to 1
   * @param otherwise what shows instead
   * @throws IllegalArgumentException if one of the states is not among those of the trait, or the
   *     chance lies outside 0 to 1
   */
  public TraitModel withPenetrance(String state, Fraction penetrance, String otherwise) {
    requireState(state);
    requireState(otherwise);
    List<Row> changed = new ArrayList<>();
    for (Row row : rows) {
      Map<String, Fraction> shows = new LinkedHashMap<>();
      row.outcome()
          .shows()
          .forEach(
              (shown, chance) -> {
                if (shown.equals(state)) {
                  shows.merge(state, chance.times(penetrance), Fraction::plus);
                  shows.merge(
                      otherwise, chance.times(Fraction.ONE.minus(penetrance)), Fraction::plus);
                } else {
                  shows.merge(shown, chance, Fraction::plus);
                }
              });
      changed.add(new Row(row.patterns(), new Outcome(shows, row.outcome().lives())));
    }
    return new TraitModel(trait, states, changed);
  }

  /** The same, plants that fit these patterns dying before they can be looked at. */
  public TraitModel withLethal(List<Pattern> patterns) {
    List<Row> changed = new ArrayList<>();
    changed.add(new Row(patterns, Outcome.lethal()));
    changed.addAll(rows);
    return new TraitModel(trait, states, changed);
  }

  /**
   * What becomes of a plant of that genotype.
   *
   * @throws IllegalArgumentException if the table does not cover it
   */
  public Outcome outcomeOf(Genotype plant) {
    Tables tables = Tables.together(plant.genome(), List.of(this));
    BigInteger open = tables.open();
    for (int group : tables.groups()) {
      open = open.and(tables.open(group, plant.homologs(group)));
    }
    return tables.outcome(0, open);
  }

  /** The loci it depends on, in the order in which the table names them. */
  public List<Locus> loci() {
    Set<Locus> loci = new LinkedHashSet<>();
    rows.forEach(row -> row.patterns().forEach(pattern -> loci.add(pattern.locus())));
    return List.copyOf(loci);
  }

  /** Whether plants of one genotype all show the same: it is penetrant throughout. */
  public boolean isPenetrant() {
    return rows.stream().allMatch(row -> row.outcome().shows().size() <= 1);
  }

  /** Whether some genotype dies or lives less often. */
  public boolean touchesLife() {
    return rows.stream().anyMatch(row -> !row.outcome().lives().isOne());
  }

  /**
   * Checks that a state is one of the trait's.
   *
   * @throws IllegalArgumentException if it is not
   */
  public void requireState(String state) {
    if (!states.contains(state)) {
      throw new IllegalArgumentException(
          trait + " has no state \"" + state + "\"; it is one of " + String.join(", ", states));
    }
  }

  /**
   * Checks that every row holds for some plant of two, three or four chromosome sets.
   *
   * @throws IllegalArgumentException if rows above one hold for all that fit it
   */
  public void requireRowsThatHold() {
    List<Row> dead = Coverage.dead(this, 2, 3, 4);
    if (!dead.isEmpty()) {
      throw new IllegalArgumentException(
          "the row "
              + dead.get(0).text()
              + " of "
              + trait
              + " holds for no plant, because those above it hold first; leave it out, or put it"
              + " higher");
    }
  }

  /**
   * Checks that the table says of every genotype what it shows.
   *
   * @param ploidy of plants with so many chromosome sets
   * @throws IllegalArgumentException if it misses one; the message names up to three that it misses
   */
  public void requireComplete(int ploidy) {
    List<String> missed = Coverage.missed(this, ploidy, 3);
    if (!missed.isEmpty()) {
      throw new IllegalArgumentException(
          "the table of "
              + trait
              + " does not say what "
              + String.join(", ", missed)
              + (missed.size() == 3
                  ? " and perhaps more show"
                  : missed.size() == 1 ? " shows" : " show")
              + "; add a row, or * for all that are left");
    }
  }
}
