package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * A family of seedlings whose linkage groups are independent of each other: at each, what they may
 * have there and how likely that is.
 */
final class Seedlings {

  /** Past so many kinds that the tables tell apart, memory and patience end. */
  static final int MOST_KINDS = 200_000;

  private final Genome genome;
  private final int ploidy;
  private final Map<Integer, Masses<Long>> groups;
  private final Map<Integer, Map<Long, Set<Long>>> reachable = new HashMap<>();

  Seedlings(Genome genome, int ploidy, Map<Integer, Masses<Long>> groups) {
    this.genome = genome;
    this.ploidy = ploidy;
    this.groups = new TreeMap<>(groups);
  }

  /** Those of one plant that is repeated. */
  static Seedlings of(Genotype plant) {
    Map<Integer, Masses<Long>> groups = new TreeMap<>();
    for (int group = 0; group < plant.genome().groups().size(); group++) {
      groups.put(group, Masses.certain(plant.homologs(group)));
    }
    return new Seedlings(plant.genome(), plant.ploidy(), groups);
  }

  int ploidy() {
    return ploidy;
  }

  Masses<Long> at(int group) {
    return groups.computeIfAbsent(
        group,
        missing -> {
          throw new IllegalStateException("group " + missing + " was not worked out");
        });
  }

  /** What the tables leave open of the seedlings. */
  Masses<BigInteger> open(Tables tables) {
    Masses<BigInteger> open = Masses.certain(tables.open());
    for (int group : tables.groups()) {
      Masses<BigInteger> here = new Masses<>();
      at(group).masses().forEach((key, mass) -> here.add(tables.open(group, key), mass));
      Masses<BigInteger> next = new Masses<>();
      open.masses()
          .forEach(
              (before, mass) ->
                  here.masses()
                      .forEach((now, other) -> next.add(before.and(now), mass.multiply(other))));
      requireFew(next.size());
      open = next;
    }
    return open;
  }

  static void requireFew(long kinds) {
    if (kinds > MOST_KINDS) {
      throw new IllegalArgumentException(
          "more than "
              + MOST_KINDS
              + " kinds of seedlings would have to be told apart; ask for fewer genes or traits"
              + " at once");
    }
  }

  /** Whole plants: what they have at each of these groups. */
  Masses<List<Long>> plants(List<Integer> of) {
    Masses<List<Long>> plants = Masses.certain(List.of());
    for (int group : of) {
      requireFew((long) plants.size() * at(group).size());
      Masses<List<Long>> next = new Masses<>();
      plants
          .masses()
          .forEach(
              (soFar, mass) ->
                  at(group)
                      .masses()
                      .forEach(
                          (key, other) -> {
                            List<Long> more = new ArrayList<>(soFar);
                            more.add(key);
                            next.add(List.copyOf(more), mass.multiply(other));
                          }));
      plants = next;
    }
    return plants;
  }

  /**
   * The chance that a seedling is as wished, of those that live.
   *
   * @throws IllegalArgumentException if none lives
   */
  Fraction chance(Wish wish, Set<TraitModel> background) {
    Set<TraitModel> models = new LinkedHashSet<>(wish.models());
    models.addAll(background);
    Fraction chance = Fraction.ONE;
    for (Tables tables : Tables.parted(genome, models)) {
      boolean breedingTrue = tables.models().stream().anyMatch(wish.breedingTrue()::containsKey);
      Wanted wanted =
          breedingTrue
              ? wanted(tables, wish, plants(tables.groups()))
              : wantedOpen(tables, wish, open(tables));
      chance = chance.times(wanted.share());
    }
    return chance;
  }

  /** How many of those that live are as wished. */
  static final class Wanted {
    private Fraction wanted = Fraction.ZERO;
    private Fraction living = Fraction.ZERO;

    void add(BigInteger mass, Fraction lives, Fraction fits) {
      Fraction alive = new Fraction(mass, BigInteger.ONE).times(lives);
      living = living.plus(alive);
      wanted = wanted.plus(alive.times(fits));
    }

    Fraction share() {
      if (living.isZero()) {
        throw new IllegalArgumentException("no seedling of this cross lives");
      }
      return wanted.dividedBy(living);
    }
  }

  private static Wanted wantedOpen(Tables tables, Wish wish, Masses<BigInteger> open) {
    Wanted sum = new Wanted();
    open.masses()
        .forEach((rows, mass) -> sum.add(mass, lives(tables, rows), fits(tables, rows, wish)));
    return sum;
  }

  Wanted wanted(Tables tables, Wish wish, Masses<List<Long>> plants) {
    Wanted sum = new Wanted();
    plants
        .masses()
        .forEach(
            (plant, mass) -> {
              BigInteger rows = open(tables, plant);
              Fraction fits = fits(tables, rows, wish);
              if (!fits.isZero() && !breedsTrue(tables, plant, wish)) {
                fits = Fraction.ZERO;
              }
              sum.add(mass, lives(tables, rows), fits);
            });
    return sum;
  }

  static BigInteger open(Tables tables, List<Long> plant) {
    BigInteger rows = tables.open();
    for (int i = 0; i < plant.size(); i++) {
      rows = rows.and(tables.open(tables.groups().get(i), plant.get(i)));
    }
    return rows;
  }

  static Fraction lives(Tables tables, BigInteger rows) {
    Fraction lives = Fraction.ONE;
    for (int m = 0; m < tables.models().size(); m++) {
      lives = lives.times(tables.outcome(m, rows).lives());
    }
    return lives;
  }

  static Fraction fits(Tables tables, BigInteger rows, Wish wish) {
    Fraction fits = Fraction.ONE;
    for (int m = 0; m < tables.models().size(); m++) {
      Set<String> states = wish.shown().get(tables.models().get(m));
      if (states != null) {
        Outcome outcome = tables.outcome(m, rows);
        Fraction shown = Fraction.ZERO;
        for (String state : states) {
          shown = shown.plus(outcome.shows().getOrDefault(state, Fraction.ZERO));
        }
        fits = fits.times(shown);
      }
    }
    return fits;
  }

  /** All that comes of the plant by selfing and lives, group by group, shows one state. */
  private boolean breedsTrue(Tables tables, List<Long> plant, Wish wish) {
    Set<BigInteger> open = new HashSet<>(Set.of(tables.open()));
    for (int i = 0; i < plant.size(); i++) {
      int group = tables.groups().get(i);
      Set<BigInteger> next = new HashSet<>();
      for (long homologs : reachable(group, plant.get(i))) {
        BigInteger here = tables.open(group, homologs);
        open.forEach(before -> next.add(before.and(here)));
      }
      open = next;
    }
    open.removeIf(rows -> lives(tables, rows).isZero());
    for (int m = 0; m < tables.models().size(); m++) {
      Optional<String> wanted = wish.breedingTrue().get(tables.models().get(m));
      if (wanted != null && !isOneState(tables, m, open, wanted)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isOneState(
      Tables tables, int model, Set<BigInteger> open, Optional<String> wanted) {
    Optional<String> state = wanted;
    for (BigInteger rows : open) {
      Outcome outcome = tables.outcome(model, rows);
      if (state.isEmpty()) {
        state = outcome.shows().keySet().stream().findFirst();
      }
      if (state.isEmpty() || !outcome.isCertain(state.get())) {
        return false;
      }
    }
    return true;
  }

  /** What can come of these homologs by selfing again and again. */
  private Set<Long> reachable(int group, long homologs) {
    Map<Long, Set<Long>> known = reachable.computeIfAbsent(group, any -> new HashMap<>());
    Set<Long> found = known.get(homologs);
    if (found == null) {
      found = new LinkedHashSet<>(Set.of(homologs));
      List<Long> toDo = new ArrayList<>(found);
      if (ploidy == 3) {
        throw new IllegalArgumentException(
            "the seedlings are triploid, and whether a triploid breeds true is not computed: what"
                + " it throws when it is selfed is not known");
      }
      // Where a tetraploid's chromosomes pair at random, double reduction adds nothing in the end.
      Meiosis meiosis =
          ploidy == 4 && !Homologs.areApart(homologs)
              ? Meiosis.tetrasomic(Fraction.ZERO)
              : Meiosis.REDUCED;
      while (!toDo.isEmpty()) {
        long next = toDo.remove(toDo.size() - 1);
        for (long seedling :
            Gametes.selfed(genome, group, next, ploidy, meiosis).masses().keySet()) {
          if (found.add(seedling)) {
            toDo.add(seedling);
          }
        }
      }
      known.put(homologs, found);
    }
    return found;
  }
}
