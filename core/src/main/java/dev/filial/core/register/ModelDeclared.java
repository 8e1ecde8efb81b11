package dev.filial.core.register;

import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Outcome;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How a trait is inherited: a table from genotypes to its states, read from the top.
 *
 * @param trait the trait
 * @param loci the loci it depends on
 * @param rows the table; the first row that a plant fits says what it shows
 * @param remark anything else, or null
 */
public record ModelDeclared(
    String trait, List<String> loci, List<Row> rows, @Nullable String remark) implements Statement {

  /** The genotypes of more loci are past counting. */
  private static final int MOST_LOCI = 10;

  private static final int MOST_ROWS = 500;

  /**
   * One row of the table.
   *
   * @param genes what a plant must carry: {@code A_ bb}; {@code *} for any plant
   * @param shows how often it then shows each state; sums to 1, empty where none lives
   * @param lost the share that dies before it can be looked at, 0 to 1
   */
  public record Row(String genes, Map<String, Fraction> shows, Fraction lost) {
    /**
     * Checks the chances.
     *
     * @throws IllegalArgumentException if there are no genes, a chance lies outside 0 to 1, or
     *     those of the states do not sum to 1
     */
    public Row {
      Require.text("genes", genes);
      Objects.requireNonNull(lost, "lost");
      shows = Collections.unmodifiableMap(new LinkedHashMap<>(shows));
      if (lost.signum() < 0 || lost.compareTo(Fraction.ONE) > 0) {
        throw new IllegalArgumentException(
            "of " + genes + " the share " + lost + " dies; it lies between 0 and 1");
      }
      if (lost.isOne() && !shows.isEmpty()) {
        throw new IllegalArgumentException(
            genes + " dies and so shows nothing; leave the states out, or let some live");
      }
      if (shows.isEmpty() && !lost.isOne()) {
        throw new IllegalArgumentException("say what " + genes + " shows, or that it dies");
      }
      outcome(genes, shows, lost);
    }

    /** A row of genotypes that always show the one state. */
    public static Row of(String genes, String state) {
      return new Row(genes, Map.of(state, Fraction.ONE), Fraction.ZERO);
    }

    /** A row of genotypes that die before they can be looked at. */
    public static Row lethal(String genes) {
      return new Row(genes, Map.of(), Fraction.ONE);
    }

    private static Outcome outcome(String genes, Map<String, Fraction> shows, Fraction lost) {
      try {
        return new Outcome(shows, Fraction.ONE.minus(lost));
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException("the row " + genes + ": " + e.getMessage(), e);
      }
    }

    Outcome toOutcome() {
      return outcome(genes, shows, lost);
    }
  }

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if it has no trait, no locus or one twice, or no row
   */
  public ModelDeclared {
    Require.text("trait", trait);
    loci = List.copyOf(loci);
    rows = List.copyOf(rows);
    Require.loci(loci);
    if (rows.isEmpty()) {
      throw new IllegalArgumentException(
          "the table of " + trait + " has no rows; say what each genotype shows");
    }
    if (loci.size() > MOST_LOCI || rows.size() > MOST_ROWS) {
      throw new IllegalArgumentException(
          "the table of "
              + trait
              + " has "
              + loci.size()
              + " genes and "
              + rows.size()
              + " rows; at most "
              + MOST_LOCI
              + " and "
              + MOST_ROWS
              + " are reckoned with");
    }
  }

  /** The statement of a table that is reckoned with already. */
  public static ModelDeclared of(TraitModel model, @Nullable String remark) {
    return new ModelDeclared(
        model.trait(),
        model.loci().stream().map(Locus::name).toList(),
        model.rows().stream()
            .map(
                row ->
                    row.outcome().lives().isZero()
                        ? Row.lethal(row.text())
                        : new Row(
                            row.text(),
                            row.outcome().shows(),
                            Fraction.ONE.minus(row.outcome().lives())))
            .toList(),
        remark);
  }

  /**
   * The table as it is reckoned with.
   *
   * @param among the loci named, in any order; others are left out of account
   * @param states all states of the trait
   * @throws IllegalArgumentException if a locus is not among those given or no row names it, a row
   *     is not made of their alleles, or shows what is no state
   */
  public TraitModel toModel(List<Locus> among, List<String> states) {
    List<Locus> own = new ArrayList<>();
    for (String name : loci) {
      own.add(
          among.stream()
              .filter(locus -> locus.name().equals(name.strip()))
              .findFirst()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "no gene is called \"" + name + "\"; declare it first")));
    }
    List<TraitModel.Row> table = new ArrayList<>();
    for (Row row : rows) {
      table.add(new TraitModel.Row(Pattern.read(own, row.genes()), row.toOutcome()));
    }
    TraitModel model = new TraitModel(trait.strip(), states, table);
    for (Locus locus : own) {
      if (!model.loci().contains(locus)) {
        throw new IllegalArgumentException(
            "no row of the table of "
                + trait
                + " names an allele of the gene "
                + locus.name()
                + "; leave the gene out, or add a row");
      }
    }
    return model;
  }

  @Override
  public Set<Subject> subjects() {
    return Set.of(Subject.trait(trait));
  }

  @Override
  public Set<Subject> mentions() {
    Set<Subject> mentioned = new LinkedHashSet<>();
    loci.forEach(locus -> mentioned.add(Subject.locus(locus)));
    return Set.copyOf(mentioned);
  }
}
