package dev.filial.core.inference;

import dev.filial.core.heredity.Appearance;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.Sources.Source;
import dev.filial.core.inference.factor.FactorGraph;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The factor graph of a pedigree: a variable for each genotype at each linkage group, factors for
 * how founders begin, how gametes are handed on and what was seen.
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
  private final List<TraitModel> models;
  private final List<TraitModel> killing;
  private final double misread;
  private final Lineages lineages;
  private final FactorGraph.Builder builder = FactorGraph.builder();
  private final Sources sources;
  private final Map<String, Integer> drawings = new HashMap<>();
  private final Map<Integer, Integer> selectors = new HashMap<>();
  private final List<Shows> appearances = new ArrayList<>();
  private final Map<Plant3, double[]> direct = new HashMap<>();
  private double logConstant;

  /** Tables by identity: there are few of them, and comparing them would read every row. */
  private static final class Shows {
    final List<TraitModel> tables;
    final Appearance appearance;

    Shows(List<TraitModel> tables, Appearance appearance) {
      this.tables = tables;
      this.appearance = appearance;
    }

    @SuppressWarnings("ReferenceEquality")
    boolean isOf(List<TraitModel> others) {
      boolean same = others.size() == tables.size();
      for (int i = 0; same && i < tables.size(); i++) {
        same = tables.get(i) == others.get(i);
      }
      return same;
    }
  }

  private record Plant3(Gift.Of egg, Gift.Of grain, int group, boolean one) {}

  /**
   * Starts a network.
   *
   * @param models the traits' tables
   * @param killing those of them, and others, by which seedlings die
   * @param misread how often a state is written down that was not the one shown
   * @param unnumbered how many alleles are drawn from taxa by seedlings that are no plants here
   */
  Network(
      GenomeStates states,
      List<TraitModel> models,
      List<TraitModel> killing,
      FounderPriors priors,
      double misread,
      Lineages lineages,
      int unnumbered) {
    this.states = states;
    this.models = models;
    this.killing = killing;
    this.misread = misread;
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

  double logConstant() {
    return logConstant;
  }

  List<String> leanedOn(BitSet bearing) {
    return sources.leanedOn(bearing);
  }

  int variable(int plant, int group) {
    return sources.plant(plant, group);
  }

  int size(int variable) {
    return sources.size(variable);
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

  private static int[] with(int[] variables, int last) {
    int[] more = Arrays.copyOf(variables, variables.length + 1);
    more[variables.length] = last;
    return more;
  }

  private static int[] before(int first, int[] variables) {
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

  // What was seen.

  TraitModel model(String trait) {
    return models.stream()
        .filter(model -> model.trait().equals(trait))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    trait
                        + " has no table of genotypes here, so what was seen of it says nothing of"
                        + " genes; declare how it is inherited, or leave it out"));
  }

  private Appearance shows(List<TraitModel> tables) {
    for (Shows known : appearances) {
      if (known.isOf(tables)) {
        return known.appearance;
      }
    }
    Shows made = new Shows(List.copyOf(tables), Appearance.of(states, tables));
    appearances.add(made);
    return made.appearance;
  }

  /** What plants of one genotype showed of one trait, all of it one drawing. */
  void shown(int plant, String trait, List<String> seen) {
    TraitModel model = model(trait);
    seen.forEach(model::requireState);
    Appearance shows = shows(List.of(model));
    factorOf(
        plant,
        shows,
        kinds -> {
          double chance = 0;
          for (Map.Entry<String, Fraction> state : shows.outcome(0, kinds).shows().entrySet()) {
            double one = state.getValue().toDouble();
            for (String read : seen) {
              one *= read(model, state.getKey(), read);
            }
            chance += one;
          }
          return chance;
        });
  }

  /** A variable for what a plant shows; later sightings of it are of this one drawing. */
  int appearance(int plant, String trait, List<String> seen) {
    TraitModel model = model(trait);
    Appearance shows = shows(List.of(model));
    List<String> order = model.states();
    int shown = sources.variable(order.size());
    int[] variables = variables(plant, shows);
    int[] sizes = Arrays.stream(variables).map(sources::size).toArray();
    int cells = Arrays.stream(sizes).reduce(1, Math::multiplyExact);
    double[] table = new double[cells * order.size()];
    eachKinds(
        plant,
        shows,
        sizes,
        (cell, kinds) ->
            shows
                .outcome(0, kinds)
                .shows()
                .forEach(
                    (state, chance) ->
                        table[cell * order.size() + order.indexOf(state)] = chance.toDouble()));
    sources.factor(with(variables, shown), table);
    double[] reading = new double[order.size()];
    for (int i = 0; i < reading.length; i++) {
      reading[i] = 1;
      for (String read : seen) {
        reading[i] *= read(model, order.get(i), read);
      }
    }
    sources.factor(new int[] {shown}, reading);
    return shown;
  }

  private double read(TraitModel model, String shown, String read) {
    return shown.equals(read) ? 1 - misread : misread / (model.states().size() - 1);
  }

  private interface OfKinds {
    double chance(int[] kinds);
  }

  private interface Cell {
    void at(int cell, int[] kinds);
  }

  private int[] variables(int plant, Appearance shows) {
    return shows.groups().stream().mapToInt(group -> sources.plant(plant, group)).toArray();
  }

  private void factorOf(int plant, Appearance shows, OfKinds chance) {
    int[] variables = variables(plant, shows);
    int[] sizes = Arrays.stream(variables).map(sources::size).toArray();
    double cells = 1;
    for (int size : sizes) {
      cells *= size;
    }
    if (cells > 2e6) {
      throw new IllegalArgumentException(
          "a plant can be of too many genotypes at the genes of one table to go through; ask for"
              + " fewer traits or genes at once");
    }
    double[] table = new double[(int) cells];
    eachKinds(plant, shows, sizes, (cell, kinds) -> table[cell] = chance.chance(kinds));
    sources.factor(variables, table);
  }

  private void eachKinds(int plant, Appearance shows, int[] sizes, Cell cell) {
    int[][] kindOf = new int[sizes.length][];
    int cells = 1;
    for (int at = 0; at < sizes.length; at++) {
      kindOf[at] = shows.kinds(at, lineages.form(plant));
      cells *= sizes[at];
    }
    int[] kinds = new int[sizes.length];
    for (int c = 0; c < cells; c++) {
      int rest = c;
      for (int at = sizes.length - 1; at >= 0; at--) {
        kinds[at] = kindOf[at][rest % sizes[at]];
        rest /= sizes[at];
      }
      cell.at(c, kinds);
    }
  }

  /** What a plant carries is known. */
  void carried(int plant, Evidence.Carried carried) {
    Form form = lineages.form(plant);
    for (int group = 0; group < states.genome().groups().size(); group++) {
      double[] table = new double[states.count(group, form)];
      for (int i = 0; i < table.length; i++) {
        boolean whole =
            carried.whole().isEmpty() || states.isLike(group, form, i, carried.whole().get());
        table[i] = whole && states.fits(group, form, i, carried.patterns()) ? 1 : 0;
      }
      sources.factor(new int[] {sources.plant(plant, group)}, table);
    }
  }

  /**
   * Plants are only ever seen if they lived, and one that was picked for what it shows says nothing
   * of its parents by that: the chance of its having come to notice is divided out.
   *
   * @param picked by plant, what it was picked for
   */
  void noticed(BitSet plants, Map<Integer, Evidence.Shown> picked) {
    for (int plant = plants.nextSetBit(0); plant >= 0; plant = plants.nextSetBit(plant + 1)) {
      Evidence.Shown because = picked.get(plant);
      List<Way> ways = lineages.ways(plant);
      if (ways.stream().allMatch(way -> way instanceof Way.Again || way instanceof Way.Doubled)) {
        continue;
      }
      if (!killing.isEmpty()) {
        Appearance lives = shows(killing);
        factorOf(plant, lives, lives::lives);
      }
      if (because != null || !killing.isEmpty()) {
        divideOut(plant, ways, because);
      }
    }
  }

  private void divideOut(int plant, List<Way> ways, Evidence.@Nullable Shown because) {
    List<TraitModel> tables = new ArrayList<>();
    if (because != null) {
      tables.add(model(because.trait()));
    }
    killing.stream().filter(table -> !tables.contains(table)).forEach(tables::add);
    Appearance shows = shows(tables);
    FamilyShows.Classes noticed =
        new FamilyShows.Classes() {
          @Override
          public int count() {
            return 1;
          }

          @Override
          public double chance(int which, int[] kinds) {
            double lives = killing.isEmpty() ? 1 : shows.lives(kinds);
            return because == null || lives == 0
                ? lives
                : lives * reading(shows, kinds, because.trait(), because.state());
          }
        };
    family(plant, ways, shows, noticed, chances -> chances[0] > 0 ? 1 / chances[0] : 0, false);
  }

  private double reading(Appearance shows, int[] kinds, String trait, String read) {
    TraitModel model = model(trait);
    double chance = 0;
    for (Map.Entry<String, Fraction> state : shows.outcome(0, kinds).shows().entrySet()) {
      chance += state.getValue().toDouble() * read(model, state.getKey(), read);
    }
    return chance;
  }

  /** So many seedlings of the family of a plant showed each state. */
  void counted(int plant, List<Way> ways, Evidence.Counted counted) {
    TraitModel model = model(counted.trait());
    counted.counts().keySet().forEach(model::requireState);
    List<String> named =
        counted.counts().entrySet().stream()
            .filter(count -> count.getValue() > 0)
            .map(Map.Entry::getKey)
            .toList();
    if (named.isEmpty()) {
      return;
    }
    List<TraitModel> tables = new ArrayList<>(List.of(model));
    killing.stream().filter(table -> !tables.contains(table)).forEach(tables::add);
    Appearance shows = shows(tables);
    FamilyShows.Classes classes =
        new FamilyShows.Classes() {
          @Override
          public int count() {
            return named.size() + 1;
          }

          @Override
          public double chance(int which, int[] kinds) {
            double lives = killing.isEmpty() ? 1 : shows.lives(kinds);
            return which == named.size() || lives == 0
                ? lives
                : lives * reading(shows, kinds, model.trait(), named.get(which));
          }
        };
    long[] numbers =
        named.stream().mapToLong(state -> counted.counts().getOrDefault(state, 0L)).toArray();
    family(
        plant,
        ways,
        shows,
        classes,
        chances -> {
          double log = 0;
          for (int i = 0; i < numbers.length; i++) {
            if (chances[i] <= 0) {
              return Double.NEGATIVE_INFINITY;
            }
            log += numbers[i] * Math.log(chances[i] / chances[numbers.length]);
          }
          return log;
        },
        true);
  }

  /**
   * A factor over everything a family depends on.
   *
   * @param logs whether the weights are logarithms
   */
  private void family(
      int plant,
      List<Way> ways,
      Appearance shows,
      FamilyShows.Classes classes,
      FamilyShows.Weight weight,
      boolean logs) {
    boolean shared = lineages.drawing(plant).isPresent() && ways.size() > 1;
    List<FamilyShows> each = new ArrayList<>();
    if (shared) {
      // One pollinator for all of them: each way speaks where it is the true one.
      for (Way way : ways) {
        each.add(FamilyShows.of(states, sources, lineages, shows, List.of(way)));
      }
    } else {
      each.add(FamilyShows.of(states, sources, lineages, shows, ways));
    }
    int[] kinds = new int[shows.groups().size()];
    for (int at = 0; at < kinds.length; at++) {
      kinds[at] = shows.count(at);
    }
    List<double[]> tables = new ArrayList<>();
    double most = Double.NEGATIVE_INFINITY;
    for (FamilyShows family : each) {
      double[][] chances = family.chances(kinds, classes);
      double[] table = new double[chances.length];
      for (int i = 0; i < table.length; i++) {
        table[i] = weight.of(chances[i]);
        most = Math.max(most, table[i]);
      }
      tables.add(table);
    }
    if (logs && most > Double.NEGATIVE_INFINITY) {
      // One scale for all ways of a family, or they could not be compared.
      logConstant += most;
    }
    for (int w = 0; w < tables.size(); w++) {
      double[] table = tables.get(w);
      for (int i = 0; logs && i < table.length; i++) {
        table[i] = most > Double.NEGATIVE_INFINITY ? Math.exp(table[i] - most) : 0;
      }
      int[] variables = each.get(w).variables();
      if (!shared) {
        sources.factor(variables, table);
      } else {
        int selector = selector(plant);
        double[] switched = new double[sources.size(selector) * table.length];
        Arrays.fill(switched, 1);
        System.arraycopy(table, 0, switched, w * table.length, table.length);
        sources.factor(before(selector, variables), switched);
      }
    }
  }
}
