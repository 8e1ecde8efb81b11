package dev.filial.core.heredity;

import dev.filial.core.heredity.GenomeStates.Form;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What plants show by the tables of some traits, genotypes that no table tells apart being one
 * kind.
 *
 * <p>Kinds are numbered from 0 at each linkage group that a table depends on, and hold for plants
 * of any number of chromosome sets. Not to be shared between threads.
 */
public final class Appearance {

  private final GenomeStates states;
  private final Tables tables;
  private final List<List<BigInteger>> kinds = new ArrayList<>();
  private final List<Map<BigInteger, Integer>> numbers = new ArrayList<>();
  private final Map<Place, int[]> known = new HashMap<>();

  private record Place(int at, Form form) {}

  private Appearance(GenomeStates states, Tables tables) {
    this.states = states;
    this.tables = tables;
    for (int at = 0; at < tables.groups().size(); at++) {
      kinds.add(new ArrayList<>());
      numbers.add(new HashMap<>());
    }
  }

  /**
   * By these tables together.
   *
   * @throws IllegalArgumentException if there is none, or a locus of one is not of the genome
   */
  public static Appearance of(GenomeStates states, List<TraitModel> models) {
    if (models.isEmpty()) {
      throw new IllegalArgumentException("what plants show goes by a table; name one");
    }
    return new Appearance(states, Tables.together(states.genome(), models));
  }

  /** The linkage groups that the tables depend on, rising. */
  public List<Integer> groups() {
    return tables.groups();
  }

  /**
   * Of which kind each genotype is.
   *
   * @param at the place of the group in {@link #groups}
   */
  public int[] kinds(int at, Form form) {
    return known.computeIfAbsent(new Place(at, form), this::kindsOf);
  }

  private int[] kindsOf(Place place) {
    int group = tables.groups().get(place.at());
    int[] kind = new int[states.count(group, place.form())];
    for (int i = 0; i < kind.length; i++) {
      BigInteger open = tables.open(group, states.homologs(group, place.form(), i));
      Integer number = numbers.get(place.at()).get(open);
      if (number == null) {
        number = kinds.get(place.at()).size();
        kinds.get(place.at()).add(open);
        numbers.get(place.at()).put(open, number);
      }
      kind[i] = number;
    }
    return kind;
  }

  /** How many kinds there are at a group among plants of the forms asked about so far. */
  public int count(int at) {
    return kinds.get(at).size();
  }

  /**
   * What a plant of these kinds shows by the table of that number.
   *
   * @param kinds its kind at each of the {@link #groups}
   * @throws IllegalArgumentException if the table does not say
   */
  public Outcome outcome(int model, int[] kinds) {
    return tables.outcome(model, rows(kinds));
  }

  /** Which share of plants of these kinds lives by all the tables. */
  public double lives(int[] kinds) {
    return Seedlings.lives(tables, rows(kinds)).toDouble();
  }

  private BigInteger rows(int[] of) {
    BigInteger open = tables.open();
    for (int at = 0; at < of.length; at++) {
      open = open.and(kinds.get(at).get(of[at]));
    }
    return open;
  }
}
