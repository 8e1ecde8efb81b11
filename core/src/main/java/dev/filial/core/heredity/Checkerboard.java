package dev.filial.core.heredity;

import dev.filial.core.heredity.Cross.GameteChance;
import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The checkerboard that everybody learns (Punnett 1905, Mendelism): the seed parent's gametes down
 * the side, the pollen parent's along the top, and what comes of each pair.
 *
 * @param eggs the rows
 * @param pollen the columns
 * @param cells row by row, what comes of each egg and each grain
 */
public record Checkerboard(
    List<GameteChance> eggs, List<GameteChance> pollen, List<List<Cell>> cells) {

  /** A wider one is read by nobody. */
  private static final int MOST_GAMETES = 16;

  /**
   * What comes of one egg and one grain.
   *
   * @param genotype what it carries
   * @param chance how likely the pair is
   * @param shows what it shows of each trait, in their order: a state; several joined by "or" where
   *     the genotype does not always show one; "dies" where it never lives
   */
  public record Cell(String genotype, Fraction chance, List<String> shows) {
    /** Copies the list. */
    public Cell {
      shows = List.copyOf(shows);
    }
  }

  /** Copies the lists. */
  public Checkerboard {
    eggs = List.copyOf(eggs);
    pollen = List.copyOf(pollen);
    cells = cells.stream().map(List::copyOf).toList();
  }

  /**
   * Of one cross, over all its loci.
   *
   * @param models the traits to be shown, possibly none
   * @throws IllegalArgumentException if either parent has more than 16 kinds of gametes, or a table
   *     does not cover the seedlings
   */
  public static Checkerboard of(Cross cross, List<TraitModel> models) {
    models.forEach(model -> model.requireComplete(cross.ploidy()));
    Masses<List<Long>> eggs = cross.combined(false);
    Masses<List<Long>> grains = cross.combined(true);
    requireFew(eggs.size());
    requireFew(grains.size());
    List<Tables> tables = new ArrayList<>();
    models.forEach(model -> tables.addAll(Tables.parted(cross.genome(), Set.of(model))));
    List<List<Cell>> cells = new ArrayList<>();
    for (List<Long> egg : eggs.masses().keySet()) {
      List<Cell> row = new ArrayList<>();
      for (List<Long> grain : grains.masses().keySet()) {
        long[] plant = new long[egg.size()];
        for (int group = 0; group < plant.length; group++) {
          plant[group] = Homologs.join(egg.get(group), grain.get(group));
        }
        row.add(
            new Cell(
                new Genotype(cross.genome(), cross.ploidy(), plant).text(),
                eggs.share(egg).times(grains.share(grain)),
                tables.stream().map(table -> shown(table, plant)).toList()));
      }
      cells.add(row);
    }
    return new Checkerboard(side(cross, eggs), side(cross, grains), cells);
  }

  private static List<GameteChance> side(Cross cross, Masses<List<Long>> gametes) {
    List<GameteChance> side = new ArrayList<>();
    gametes
        .masses()
        .keySet()
        .forEach(gamete -> side.add(new GameteChance(cross.text(gamete), gametes.share(gamete))));
    return side;
  }

  private static void requireFew(int gametes) {
    if (gametes > MOST_GAMETES) {
      throw new IllegalArgumentException(
          "a parent has "
              + gametes
              + " kinds of gametes; a checkerboard has at most "
              + MOST_GAMETES
              + " rows and columns. Ask for one or two genes");
    }
  }

  private static String shown(Tables table, long[] plant) {
    BigInteger open = table.open();
    for (int group : table.groups()) {
      open = open.and(table.open(group, plant[group]));
    }
    Outcome outcome = table.outcome(0, open);
    if (outcome.lives().isZero()) {
      return "dies";
    }
    List<String> states = new ArrayList<>();
    outcome
        .shows()
        .forEach(
            (state, chance) -> {
              if (!chance.isZero()) {
                states.add(state);
              }
            });
    return String.join(" or ", states);
  }

  /**
   * The kinds of seedlings in it by genotype, as everybody counts them up: the same genotypes
   * together, in the order in which they are met.
   */
  public Map<String, Fraction> genotypes() {
    Map<String, Fraction> sums = new LinkedHashMap<>();
    cells.forEach(
        row -> row.forEach(cell -> sums.merge(cell.genotype(), cell.chance(), Fraction::plus)));
    return sums;
  }

  /** The cell of that egg and that grain, if both are there. */
  public Optional<Cell> at(String egg, String grain) {
    for (int row = 0; row < eggs.size(); row++) {
      for (int column = 0; column < pollen.size(); column++) {
        if (eggs.get(row).text().equals(egg) && pollen.get(column).text().equals(grain)) {
          return Optional.of(cells.get(row).get(column));
        }
      }
    }
    return Optional.empty();
  }
}
