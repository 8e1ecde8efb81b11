package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * What comes of a cross by selfing again and again, each seedling down a line of its own
 * (single-seed descent), with or without keeping only seedlings that are as wished before each
 * selfing.
 *
 * <p>Without selection each linkage group is followed by itself. With selection, or where genotypes
 * die, all groups that the tables join are followed together; the cost is then the number of
 * genotypes of these loci, times what each throws.
 */
public final class SelfedLine {

  /** More generations than anybody will see. */
  private static final int MOST_GENERATIONS = 200;

  private static final int MOST_PLANTS = 20_000;

  private final Cross cross;
  private final Wish kept;
  private final Optional<Meiosis> stated;

  private SelfedLine(Cross cross, Wish kept, Optional<Meiosis> stated) {
    this.cross = cross;
    this.kept = kept;
    this.stated = stated;
  }

  /** Lines that begin with the seedlings of this cross; none is chosen. */
  public static SelfedLine of(Cross cross) {
    return new SelfedLine(cross, Wish.any(), Optional.empty());
  }

  /**
   * The same, keeping for the next selfing only seedlings that are as wished.
   *
   * @throws IllegalArgumentException if these are to breed true, which nobody can see before
   */
  public SelfedLine keeping(Wish wish) {
    if (!wish.breedingTrue().isEmpty()) {
      throw new IllegalArgumentException(
          "whether a seedling breeds true cannot be seen before it is selfed; keep by what shows");
    }
    return new SelfedLine(cross, wish, stated);
  }

  /**
   * The same with seedlings that form their gametes in that way.
   *
   * @throws IllegalArgumentException if selfing would then change the number of chromosome sets
   */
  public SelfedLine withMeiosis(Meiosis meiosis) {
    if (meiosis instanceof Meiosis.Unreduced || meiosis instanceof Meiosis.OfTriploid) {
      throw new IllegalArgumentException(
          "selfed through such gametes a line does not keep its number of chromosome sets; lines"
              + " are followed through gametes with half of them");
    }
    return new SelfedLine(cross, kept, Optional.of(meiosis));
  }

  /**
   * The chance that a seedling is as wished after so many selfings.
   *
   * @param selfings how many times the line is selfed after the cross, 0 to 200; 0 asks of the
   *     seedlings of the cross
   * @throws IllegalArgumentException if the number lies outside, the seedlings are triploid or
   *     cannot form gametes so, none is left to go on with, or more genotypes would have to be
   *     followed than can be
   */
  public Fraction chance(int selfings, Wish wish) {
    requireGenerations(selfings);
    wish.models().forEach(model -> model.requireComplete(cross.ploidy()));
    kept.models().forEach(model -> model.requireComplete(cross.ploidy()));
    if (selfings == 0) {
      return cross.chance(wish);
    }
    Set<TraitModel> selecting = new LinkedHashSet<>(kept.models());
    selecting.addAll(cross.background());
    wish.models().stream().filter(TraitModel::touchesLife).forEach(selecting::add);
    Set<TraitModel> all = new LinkedHashSet<>(wish.models());
    all.addAll(selecting);
    Fraction chance = Fraction.ONE;
    for (Tables tables : Tables.parted(cross.genome(), all)) {
      boolean selected = tables.models().stream().anyMatch(selecting::contains);
      chance =
          chance.times(
              selected
                  ? together(tables, selfings, wish)
                  : apart(tables, selfings).chance(wish.only(tables.models()), Set.of()));
    }
    return chance;
  }

  /**
   * The share of the seedlings of the last generation that die before they can be looked at. Those
   * that ended a line before are not among them.
   *
   * @param selfings as {@link #chance}
   * @param models the traits that are looked at
   * @throws IllegalArgumentException as {@link #chance}
   */
  public Fraction lost(int selfings, List<TraitModel> models) {
    requireGenerations(selfings);
    models.forEach(model -> model.requireComplete(cross.ploidy()));
    if (selfings == 0) {
      return cross.odds(models).lost();
    }
    Set<TraitModel> all = new LinkedHashSet<>(kept.models());
    all.addAll(cross.background());
    models.stream().filter(TraitModel::touchesLife).forEach(all::add);
    Fraction living = Fraction.ONE;
    for (Tables tables : Tables.parted(cross.genome(), all)) {
      if (tables.models().stream().anyMatch(TraitModel::touchesLife)) {
        living = living.times(living(tables, last(tables, selfings)));
      }
    }
    return Fraction.ONE.minus(living);
  }

  private static void requireGenerations(int selfings) {
    if (selfings < 0 || selfings > MOST_GENERATIONS) {
      throw new IllegalArgumentException(
          selfings + " generations of selfing; ask for 0 to " + MOST_GENERATIONS);
    }
  }

  private static Fraction living(Tables tables, Masses<List<Long>> plants) {
    Fraction living = Fraction.ZERO;
    for (Map.Entry<List<Long>, BigInteger> plant : plants.masses().entrySet()) {
      Fraction lives = Seedlings.lives(tables, Seedlings.open(tables, plant.getKey()));
      living = living.plus(lives.times(new Fraction(plant.getValue(), plants.total())));
    }
    return living;
  }

  /**
   * What the seedlings show after so many selfings, those that live.
   *
   * @param selfings as {@link #chance}
   * @throws IllegalArgumentException as {@link #chance}
   */
  public Odds odds(int selfings, List<TraitModel> models) {
    Fraction lost = lost(selfings, models);
    List<List<String>> combinations = new ArrayList<>(List.of(List.of()));
    for (TraitModel model : models) {
      List<List<String>> next = new ArrayList<>();
      for (List<String> begun : combinations) {
        for (String state : model.states()) {
          List<String> more = new ArrayList<>(begun);
          more.add(state);
          next.add(more);
        }
      }
      combinations = next;
    }
    List<Odds.Share> classes = new ArrayList<>();
    for (List<String> states : combinations) {
      Wish wish = Wish.any();
      for (int i = 0; i < states.size(); i++) {
        wish = wish.andShowing(models.get(i), states.get(i));
      }
      Fraction chance = chance(selfings, wish);
      if (!chance.isZero()) {
        classes.add(new Odds.Share(states, chance));
      }
    }
    return new Odds(
        models.stream().map(TraitModel::trait).toList(), classes, lost, cross.genome().isExact());
  }

  private Seedlings apart(Tables tables, int selfings) {
    Map<Integer, Masses<Long>> groups = new TreeMap<>();
    Work work = new Work();
    for (int group : tables.groups()) {
      Masses<Long> now = cross.seedlings().at(group);
      Map<Long, Masses<Long>> throwing = new HashMap<>();
      for (int generation = 0; generation < selfings; generation++) {
        Masses<Long> next = new Masses<>();
        Scale scale = new Scale();
        for (Long homologs : now.masses().keySet()) {
          Masses<Long> its = selfed(throwing, group, homologs);
          work.add(its);
          scale.of(its);
        }
        now.masses()
            .forEach(
                (homologs, mass) -> {
                  Masses<Long> its = selfed(throwing, group, homologs);
                  BigInteger factor = mass.multiply(scale.factor(its));
                  its.masses()
                      .forEach((seedling, share) -> next.add(seedling, factor.multiply(share)));
                });
        now = next.reduced();
      }
      groups.put(group, now);
    }
    return new Seedlings(cross.genome(), cross.ploidy(), groups);
  }

  /** Refuses what would take longer than anybody waits, before it does. */
  private static final class Work {
    private static final long MOST = 3_000_000;
    private long done;

    void add(Masses<?> family) {
      done += family.size();
      if (done > MOST) {
        throw new IllegalArgumentException(
            "more than "
                + MOST
                + " kinds of seedlings would have to be gone through, generation by generation; ask"
                + " for fewer linked genes or fewer selfings");
      }
    }
  }

  /** Brings families of different totals to one denominator. */
  private static final class Scale {
    private BigInteger common = BigInteger.ONE;

    void of(Masses<?> family) {
      common = common.divide(common.gcd(family.total())).multiply(family.total());
    }

    BigInteger factor(Masses<?> family) {
      return common.divide(family.total());
    }
  }

  private Masses<Long> selfed(Map<Long, Masses<Long>> throwing, int group, long homologs) {
    return throwing.computeIfAbsent(
        homologs,
        plant -> Gametes.selfed(cross.genome(), group, plant, cross.ploidy(), meiosis(plant)));
  }

  private Meiosis meiosis(long homologs) {
    if (stated.isPresent()) {
      return stated.get();
    }
    if (cross.ploidy() == 2 || Homologs.areApart(homologs)) {
      return Meiosis.REDUCED;
    }
    if (cross.ploidy() == 3) {
      throw new IllegalArgumentException(
          "the seedlings are triploid, and what a triploid throws when it is selfed is not"
              + " computed");
    }
    for (Parent parent : List.of(cross.seed(), cross.pollen())) {
      if (parent instanceof Parent.Plant plant
          && plant.meiosis() instanceof Meiosis.Tetrasomic tetrasomic) {
        return tetrasomic;
      }
    }
    return Meiosis.REDUCED; // which is refused in words
  }

  private Fraction together(Tables tables, int selfings, Wish wish) {
    return cross
        .seedlings()
        .wanted(tables, wish.only(tables.models()), last(tables, selfings))
        .share();
  }

  /** The seedlings of the last generation, with those among them that will die. */
  private Masses<List<Long>> last(Tables tables, int selfings) {
    Wish keeping = kept.only(tables.models());
    Masses<List<Long>> now = cross.seedlings().plants(tables.groups());
    requireFew(now.size());
    List<Map<Long, Masses<Long>>> throwing = new ArrayList<>();
    tables.groups().forEach(group -> throwing.add(new HashMap<>()));
    Work work = new Work();
    for (int generation = 0; generation < selfings; generation++) {
      Map<List<Long>, Fraction> next = new HashMap<>();
      for (Map.Entry<List<Long>, BigInteger> plant : now.masses().entrySet()) {
        BigInteger rows = Seedlings.open(tables, plant.getKey());
        Fraction goingOn =
            Seedlings.lives(tables, rows).times(Seedlings.fits(tables, rows, keeping));
        if (!goingOn.isZero()) {
          Masses<List<Long>> its = family(tables, throwing, plant.getKey());
          work.add(its);
          Fraction factor = goingOn.times(new Fraction(plant.getValue(), its.total()));
          its.masses()
              .forEach(
                  (seedling, share) ->
                      next.merge(
                          seedling,
                          factor.times(new Fraction(share, BigInteger.ONE)),
                          Fraction::plus));
          requireFew(next.size());
        }
      }
      if (next.isEmpty()) {
        throw new IllegalArgumentException(
            generation == 0
                ? "no seedling of the cross can be kept to be selfed"
                : "no seedling is left to go on with after " + generation + " selfings");
      }
      now = Masses.ofShares(next);
    }
    return now;
  }

  private static void requireFew(int plants) {
    if (plants > MOST_PLANTS) {
      throw new IllegalArgumentException(
          "more than "
              + MOST_PLANTS
              + " genotypes would have to be followed under selection; ask for fewer genes, or"
              + " without keeping");
    }
  }

  private Masses<List<Long>> family(
      Tables tables, List<Map<Long, Masses<Long>>> throwing, List<Long> plant) {
    Masses<List<Long>> family = Masses.certain(List.of());
    for (int i = 0; i < plant.size(); i++) {
      Masses<Long> here = selfed(throwing.get(i), tables.groups().get(i), plant.get(i));
      Masses<List<Long>> next = new Masses<>();
      family
          .masses()
          .forEach(
              (soFar, mass) ->
                  here.masses()
                      .forEach(
                          (key, share) -> {
                            List<Long> more = new ArrayList<>(soFar);
                            more.add(key);
                            next.add(List.copyOf(more), mass.multiply(share));
                          }));
      family = next;
    }
    return family;
  }
}
