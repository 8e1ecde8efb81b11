package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Sorts seedlings by what they show. */
final class Segregation {

  private Segregation() {}

  /**
   * What they show.
   *
   * @param background tables nobody asked about by which seedlings die
   * @throws IllegalArgumentException if a table does not cover them, none lives, a trait is named
   *     twice, or more kinds would have to be told apart than can be
   */
  static Odds of(
      Genome genome, Seedlings seedlings, List<TraitModel> models, Set<TraitModel> background) {
    Set<TraitModel> all = new LinkedHashSet<>(models);
    if (models.isEmpty() || all.size() < models.size()) {
      throw new IllegalArgumentException("name the traits whose odds are asked, each once");
    }
    models.forEach(model -> model.requireComplete(seedlings.ploidy()));
    all.addAll(background);
    Fraction living = Fraction.ONE;
    boolean exact = true;
    Map<List<String>, Fraction> classes = new LinkedHashMap<>();
    classes.put(List.of(), Fraction.ONE);
    List<TraitModel> order = new ArrayList<>();
    for (Tables tables : Tables.parted(genome, all)) {
      exact &= tables.groups().stream().allMatch(group -> genome.groups().get(group).exact());
      List<Integer> asked = new ArrayList<>();
      for (int m = 0; m < tables.models().size(); m++) {
        if (models.contains(tables.models().get(m))) {
          asked.add(m);
          order.add(tables.models().get(m));
        }
      }
      Classes here = classes(seedlings, tables, asked);
      living = living.times(here.living.dividedBy(here.all));
      if (living.isZero()) {
        throw new IllegalArgumentException("no seedling of this cross lives");
      }
      here.chances.replaceAll((states, mass) -> mass.dividedBy(here.living));
      Map<List<String>, Fraction> next = new LinkedHashMap<>();
      classes.forEach(
          (states, chance) ->
              here.chances.forEach(
                  (more, other) -> {
                    List<String> both = new ArrayList<>(states);
                    both.addAll(more);
                    next.put(List.copyOf(both), chance.times(other));
                  }));
      Seedlings.requireFew(next.size());
      classes = next;
    }
    return new Odds(
        models.stream().map(TraitModel::trait).toList(),
        inOrder(classes, order, models),
        Fraction.ONE.minus(living),
        exact);
  }

  private static final class Classes {
    private final Map<List<String>, Fraction> chances = new LinkedHashMap<>();
    private Fraction living = Fraction.ZERO;
    private Fraction all = Fraction.ZERO;
  }

  private static Classes classes(Seedlings seedlings, Tables tables, List<Integer> asked) {
    Classes classes = new Classes();
    seedlings
        .open(tables)
        .masses()
        .forEach(
            (rows, mass) -> {
              Fraction whole = new Fraction(mass, BigInteger.ONE);
              Fraction alive = whole.times(Seedlings.lives(tables, rows));
              classes.all = classes.all.plus(whole);
              classes.living = classes.living.plus(alive);
              if (!alive.isZero()) {
                spread(tables, rows, asked, 0, List.of(), alive, classes.chances);
              }
            });
    return classes;
  }

  /** A genotype that shows now one state and now another counts into several classes. */
  private static void spread(
      Tables tables,
      BigInteger rows,
      List<Integer> asked,
      int place,
      List<String> soFar,
      Fraction chance,
      Map<List<String>, Fraction> chances) {
    if (place == asked.size()) {
      chances.merge(soFar, chance, Fraction::plus);
      return;
    }
    tables
        .outcome(asked.get(place), rows)
        .shows()
        .forEach(
            (state, share) -> {
              if (!share.isZero()) {
                List<String> more = new ArrayList<>(soFar);
                more.add(state);
                spread(
                    tables,
                    rows,
                    asked,
                    place + 1,
                    List.copyOf(more),
                    chance.times(share),
                    chances);
              }
            });
  }

  private static List<Odds.Share> inOrder(
      Map<List<String>, Fraction> classes, List<TraitModel> order, List<TraitModel> models) {
    int[] places = models.stream().mapToInt(order::indexOf).toArray();
    List<Odds.Share> sorted = new ArrayList<>();
    classes.forEach(
        (states, chance) -> {
          List<String> asAsked = new ArrayList<>();
          for (int place : places) {
            asAsked.add(states.get(place));
          }
          sorted.add(new Odds.Share(asAsked, chance));
        });
    sorted.sort(order(models.stream().map(TraitModel::states).toList()));
    return sorted;
  }

  /** Classes in the order in which the states of each trait stand. */
  static Comparator<Odds.Share> order(List<List<String>> statesOfEach) {
    return (one, other) -> {
      for (int i = 0; i < statesOfEach.size(); i++) {
        int place = statesOfEach.get(i).indexOf(one.states().get(i));
        int otherPlace = statesOfEach.get(i).indexOf(other.states().get(i));
        if (place != otherPlace) {
          return Integer.compare(place, otherPlace);
        }
      }
      return 0;
    };
  }
}
