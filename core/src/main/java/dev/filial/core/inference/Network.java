package dev.filial.core.inference;

import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.inference.Sources.Source;
import dev.filial.core.inference.factor.FactorGraph;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The factor graph of a pedigree: a variable for each genotype at each linkage group, factors for
 * how founders begin and how gametes are handed on. What was seen is entered by {@link Sightings}.
 *
 * <p>A seedling of two known plants with few genotypes is one factor over the three. Any other has
 * variables of its own for its egg and its pollen grain, and one for the way it came about: a
 * factor of one candidate parent then speaks only where that way is the true one, so that many
 * candidates are never multiplied out against each other.
 */
final class Network {

  /** Up to so many entries parents and child are one factor; past it the gametes come between. */
  private static final int DIRECT = 128;

  /** A table of egg, grain and child of more numbers is looked at before it is made. */
  private static final int LARGE = 100_000;

  private final GenomeStates states;
  private final Lineages lineages;
  private final FactorGraph.Builder builder = FactorGraph.builder();
  private final Sources sources;
  private final Map<String, Integer> drawings = new HashMap<>();
  private final Map<Integer, Integer> selectors = new HashMap<>();
  private final Map<Plant3, double[]> direct = new HashMap<>();

  private record Plant3(Gift.Of egg, Gift.Of grain, int group, boolean one) {}

  /**
   * Starts a network.
   *
   * @param unnumbered how many alleles are drawn from taxa by seedlings that are no plants here
   */
  Network(GenomeStates states, FounderPriors priors, Lineages lineages, int unnumbered) {
    this.states = states;
    this.lineages = lineages;
    this.sources = new Sources(states, priors, builder, lineages.draws(), unnumbered);
  }

  /**
   * Enters these plants, whose parents are among them.
   *
   * @throws IllegalArgumentException if what they can hand on is too much to write down
   */
  void enter(BitSet plants) {
    sources.requireRoom(least(plants));
    for (int plant = plants.nextSetBit(0); plant >= 0; plant = plants.nextSetBit(plant + 1)) {
      List<Way> ways = lineages.ways(plant);
      for (int group = 0; group < states.genome().groups().size(); group++) {
        beget(plant, ways, group);
      }
    }
  }

  /** How many numbers the large tables of these plants have at least, before any is made. */
  private double least(BitSet plants) {
    double least = 0;
    for (int plant = plants.nextSetBit(0); plant >= 0; plant = plants.nextSetBit(plant + 1)) {
      if (lineages.ways(plant).get(0) instanceof Way.Union union) {
        for (int group = 0; group < states.genome().groups().size(); group++) {
          double cells =
              (double) states.gametes(group, union.egg().form(), false)
                  * states.gametes(group, union.grain().form(), true)
                  * states.count(group, lineages.form(plant));
          least += cells > LARGE ? cells : 0;
        }
      }
    }
    return least;
  }

  /** All plants behind these, themselves included. */
  BitSet behind(BitSet plants) {
    BitSet all = (BitSet) plants.clone();
    for (int plant = all.length() - 1; plant >= 0; plant = all.previousSetBit(plant - 1)) {
      for (Way way : lineages.ways(plant)) {
        parents(way, all);
      }
    }
    return all;
  }

  static void parents(Way way, BitSet into) {
    if (way instanceof Way.Union union) {
      for (Gift gift : List.of(union.egg(), union.grain())) {
        if (gift instanceof Gift.Of parent) {
          into.set(parent.plant());
        }
      }
    } else if (way instanceof Way.Again again) {
      into.set(again.plant());
    } else if (way instanceof Way.Doubled doubled) {
      into.set(doubled.plant());
    }
  }

  FactorGraph graph() {
    return builder.build();
  }

  /** Its variables and tables. */
  Sources sources() {
    return sources;
  }

  /** The variable of the way in which a plant came about, in the order of its ways. */
  int selector(int plant) {
    Integer known = selectors.get(plant);
    if (known == null) {
      List<Way> ways = lineages.ways(plant);
      String drawing = lineages.drawing(plant).orElse(null);
      Integer shared = drawing == null ? null : drawings.get(drawing);
      if (shared == null) {
        shared = sources.variable(ways.size());
        sources.factor(new int[] {shared}, ways.stream().mapToDouble(Way::share).toArray());
        if (drawing != null) {
          drawings.put(drawing, shared);
        }
      } else if (sources.size(shared) != ways.size()) {
        throw new IllegalArgumentException(
            "plants said to be of one pollinator have not the same candidates");
      }
      known = shared;
      selectors.put(plant, known);
    }
    return known;
  }

  /** How a plant's genotype at a group depends on its parents'. */
  private void beget(int plant, List<Way> ways, int group) {
    int child = sources.addPlant(plant, group, lineages.form(plant));
    if (ways.size() == 1) {
      Way only = ways.get(0);
      if (only instanceof Way.Union union && asOneFactor(union, group, child)) {
        return;
      }
      if (only instanceof Way.Again || only instanceof Way.Doubled) {
        int source = only instanceof Way.Again again ? again.plant() : ((Way.Doubled) only).plant();
        copy(plant, only, source, group, child, -1, 0);
        return;
      }
    }
    int selector = ways.size() == 1 ? -1 : selector(plant);
    Map<Gift, Integer> eggs = new LinkedHashMap<>();
    Map<Form, Integer> grains = new LinkedHashMap<>();
    Map<List<Object>, List<Integer>> unions = new LinkedHashMap<>();
    for (int w = 0; w < ways.size(); w++) {
      Way way = ways.get(w);
      if (way instanceof Way.Union union) {
        eggs.computeIfAbsent(union.egg(), gift -> gamete(gift, group, false));
        grains.computeIfAbsent(
            union.grain().form(), form -> sources.variable(states.gametes(group, form, true)));
        unions
            .computeIfAbsent(List.of(union.egg(), union.grain().form()), any -> new ArrayList<>())
            .add(w);
      } else if (way instanceof Way.Twice twice) {
        int gamete = gamete(twice.gamete(), group, false);
        twice(twice, group, gamete, child, selector, w);
      } else if (way instanceof Way.Again again) {
        copy(plant, way, again.plant(), group, child, selector, w);
      } else if (way instanceof Way.Doubled doubled) {
        copy(plant, way, doubled.plant(), group, child, selector, w);
      }
    }
    grains.forEach((form, grain) -> pollen(ways, form, grain, group, selector));
    unions.forEach(
        (key, which) -> {
          Way.Union one = (Way.Union) ways.get(which.get(0));
          Integer egg = eggs.get(one.egg());
          Integer grain = grains.get(one.grain().form());
          if (egg != null && grain != null) {
            joined(one, group, egg, grain, child, selector, which);
          }
        });
  }

  private boolean asOneFactor(Way.Union union, int group, int child) {
    if (!(union.egg() instanceof Gift.Of egg) || !(union.grain() instanceof Gift.Of grain)) {
      return false;
    }
    int seed = sources.plant(egg.plant(), group);
    int pollen = sources.plant(grain.plant(), group);
    boolean one = seed == pollen;
    double entries =
        (double) sources.size(seed) * (one ? 1 : sources.size(pollen)) * sources.size(child);
    if (entries > DIRECT && !(one && entries <= 16 * DIRECT)) {
      return false;
    }
    Plant3 key =
        new Plant3(
            new Gift.Of(0, egg.from(), egg.meiosis(), egg.form()),
            new Gift.Of(0, grain.from(), grain.meiosis(), grain.form()),
            group,
            one);
    double[] table = direct.get(key);
    if (table == null) {
      table = table(egg, grain, group, one, sources.size(child));
      direct.put(key, table);
    }
    sources.factor(one ? new int[] {seed, child} : new int[] {seed, pollen, child}, table);
    return true;
  }

  private double[] table(Gift.Of egg, Gift.Of grain, int group, boolean one, int children) {
    double[][] eggs = states.gametes(group, egg.from(), egg.meiosis(), false);
    double[][] grains = states.gametes(group, grain.from(), grain.meiosis(), true);
    int[][] joined = joined(group, egg.form(), grain.form());
    double[] table = new double[eggs.length * (one ? 1 : grains.length) * children];
    for (int s = 0; s < eggs.length; s++) {
      for (int p = one ? s : 0; p < (one ? s + 1 : grains.length); p++) {
        int from = (one ? s : s * grains.length + p) * children;
        for (int e = 0; e < joined.length; e++) {
          for (int g = 0; eggs[s][e] > 0 && g < joined[e].length; g++) {
            table[from + joined[e][g]] += eggs[s][e] * grains[p][g];
          }
        }
      }
    }
    return table;
  }

  private int[][] joined(int group, Form eggForm, Form grainForm) {
    int[][] joined =
        new int[states.gametes(group, eggForm, false)][states.gametes(group, grainForm, true)];
    for (int e = 0; e < joined.length; e++) {
      for (int g = 0; g < joined[e].length; g++) {
        joined[e][g] = states.joined(group, eggForm, e, grainForm, g);
      }
    }
    return joined;
  }

  private int gamete(Gift gift, int group, boolean pollen) {
    Source source = sources.of(gift, group, pollen);
    int gamete = sources.variable(states.gametes(group, gift.form(), pollen));
    sources.factor(with(source.variables(), gamete), flat(source.rows()));
    return gamete;
  }

  /** The grain of a seedling, whichever way it came: each way speaks where it is the true one. */
  private void pollen(List<Way> ways, Form form, int grain, int group, int selector) {
    int kinds = sources.size(grain);
    double[] elsewhere = new double[ways.size() * kinds];
    Arrays.fill(elsewhere, 1);
    for (int w = 0; w < ways.size(); w++) {
      if (ways.get(w) instanceof Way.Union union && union.grain().form().equals(form)) {
        Source source = sources.of(union.grain(), group, true);
        if (selector < 0) {
          sources.factor(with(source.variables(), grain), flat(source.rows()));
          return;
        }
        int rows = source.rows().length;
        double[] table = new double[ways.size() * rows * kinds];
        Arrays.fill(table, 1);
        for (int row = 0; row < rows; row++) {
          System.arraycopy(source.rows()[row], 0, table, (w * rows + row) * kinds, kinds);
        }
        sources.factor(with(before(selector, source.variables()), grain), table);
      } else {
        // A seedling of no such grain: the variable is to count once and mean nothing.
        Arrays.fill(elsewhere, w * kinds + 1, (w + 1) * kinds, 0);
      }
    }
    sources.factor(new int[] {selector, grain}, elsewhere);
  }

  private void joined(
      Way.Union union,
      int group,
      int egg,
      int grain,
      int child,
      int selector,
      List<Integer> which) {
    int[][] joined = joined(group, union.egg().form(), union.grain().form());
    int children = sources.size(child);
    int block = joined.length * joined[0].length * children;
    int blocks = selector < 0 ? 1 : sources.size(selector);
    sources.requireRoom((double) blocks * block);
    double[] table = new double[blocks * block];
    for (int b = 0; b < blocks; b++) {
      if (selector >= 0 && !which.contains(b)) {
        Arrays.fill(table, b * block, (b + 1) * block, 1);
        continue;
      }
      for (int e = 0; e < joined.length; e++) {
        for (int g = 0; g < joined[e].length; g++) {
          table[b * block + (e * joined[e].length + g) * children + joined[e][g]] = 1;
        }
      }
    }
    int[] scope = {egg, grain, child};
    sources.factor(selector < 0 ? scope : before(selector, scope), table);
  }

  private void twice(Way.Twice way, int group, int gamete, int child, int selector, int w) {
    Form form = way.gamete().form();
    int gametes = sources.size(gamete);
    int[] of = new int[gametes];
    for (int g = 0; g < gametes; g++) {
      of[g] = states.joined(group, form, g, form, g);
    }
    mapped(gamete, of, child, selector, w);
  }

  private void copy(int plant, Way way, int source, int group, int child, int selector, int w) {
    int from = sources.plant(source, group);
    int[] of = new int[sources.size(from)];
    for (int i = 0; i < of.length; i++) {
      of[i] =
          way instanceof Way.Doubled
              ? states.doubled(group, lineages.form(source), i, lineages.form(plant))
              : i;
    }
    mapped(from, of, child, selector, w);
  }

  /** The child is what {@code of} makes of another variable, where the way is the true one. */
  private void mapped(int from, int[] of, int child, int selector, int w) {
    int children = sources.size(child);
    int blocks = selector < 0 ? 1 : sources.size(selector);
    double[] table = new double[blocks * of.length * children];
    for (int b = 0; b < blocks; b++) {
      int start = b * of.length * children;
      if (selector >= 0 && b != w) {
        Arrays.fill(table, start, start + of.length * children, 1);
        continue;
      }
      for (int i = 0; i < of.length; i++) {
        table[start + i * children + of[i]] = 1;
      }
    }
    int[] scope = {from, child};
    sources.factor(selector < 0 ? scope : before(selector, scope), table);
  }

  static int[] with(int[] variables, int last) {
    int[] more = Arrays.copyOf(variables, variables.length + 1);
    more[variables.length] = last;
    return more;
  }

  static int[] before(int first, int[] variables) {
    int[] more = new int[variables.length + 1];
    more[0] = first;
    System.arraycopy(variables, 0, more, 1, variables.length);
    return more;
  }

  private static double[] flat(double[][] rows) {
    int width = rows[0].length;
    double[] flat = new double[rows.length * width];
    for (int row = 0; row < rows.length; row++) {
      System.arraycopy(rows[row], 0, flat, row * width, width);
    }
    return flat;
  }
}
