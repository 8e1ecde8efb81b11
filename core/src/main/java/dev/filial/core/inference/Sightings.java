package dev.filial.core.inference;

import dev.filial.core.heredity.Appearance;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What was seen, as factors of a {@link Network}: how a plant shows is drawn once for its genotype,
 * misreading for each look; counted seedlings, seedlings that died and seedlings that were picked
 * speak of their parents through what the family shows ({@link FamilyShows}).
 */
final class Sightings {

  /** A table over the genotypes of one plant is not made larger. */
  private static final double MOST = 2e6;

  /** The logarithm of nothing. */
  private static final double NONE = Double.NEGATIVE_INFINITY;

  private final Genetics genetics;
  private final GenomeStates states;
  private final List<TraitModel> killing;
  private final double misread;
  private final Lineages lineages;
  private final Network network;
  private final Sources sources;
  private final List<Shows> appearances = new ArrayList<>();
  private final Map<Expression, Integer> expressions = new HashMap<>();
  private double logConstant;

  /** How a plant shows a trait. */
  private record Expression(int plant, String trait) {}

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

  /** To be entered into a network whose plants are in it already. */
  Sightings(Genetics genetics, double misread, Lineages lineages, Network network) {
    this.genetics = genetics;
    this.states = genetics.states();
    this.killing = genetics.killing();
    this.misread = misread;
    this.lineages = lineages;
    this.network = network;
    this.sources = network.sources();
  }

  /** What was left out of the factors, so that they stay within doubles, as a logarithm. */
  double logConstant() {
    return logConstant;
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
    TraitModel model = genetics.model(trait);
    seen.forEach(model::requireState);
    Appearance shows = shows(List.of(model));
    factorOf(plant, shows, kinds -> reading(shows, kinds, model, seen));
  }

  /** A variable for what a plant shows, with what was seen of it, all of it one drawing. */
  int appearance(int plant, String trait, List<String> seen) {
    TraitModel model = genetics.model(trait);
    seen.forEach(model::requireState);
    int shown = expression(plant, model);
    sources.factor(
        new int[] {shown},
        model.states().stream().mapToDouble(state -> read(model, state, seen)).toArray());
    return shown;
  }

  /**
   * The variable of how a plant shows. What may be another plant over again, as one that lost its
   * tag may be one of two, shows as that one does where it is that one; else it is drawn for its
   * genotype.
   */
  private int expression(int plant, TraitModel model) {
    Expression key = new Expression(plant, model.trait());
    Integer known = expressions.get(key);
    if (known != null) {
      return known;
    }
    int shown = sources.variable(model.states().size());
    expressions.put(key, shown);
    List<Way> ways = lineages.ways(plant);
    if (!isPerhapsAnother(ways)) {
      Appearance shows = shows(List.of(model));
      sources.factor(
          Network.with(variables(plant, shows), shown), drawnByGenotype(plant, model, shows));
      return shown;
    }
    int selector = network.selector(plant);
    for (int w = 0; w < ways.size(); w++) {
      if (ways.get(w) instanceof Way.Again again) {
        sameAs(expression(again.plant(), model), shown, selector, w);
      }
    }
    if (!ways.stream().allMatch(way -> way instanceof Way.Again)) {
      drawnUnlessAnother(plant, model, ways, shown, selector);
    }
    return shown;
  }

  /** The chance of each state by the genotypes of the plant, the states fastest. */
  private double[] drawnByGenotype(int plant, TraitModel model, Appearance shows) {
    List<String> order = model.states();
    int[] sizes = Arrays.stream(variables(plant, shows)).map(sources::size).toArray();
    double[] table = new double[cells(sizes) * order.size()];
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
    return table;
  }

  private void drawnUnlessAnother(
      int plant, TraitModel model, List<Way> ways, int shown, int selector) {
    Appearance shows = shows(List.of(model));
    double[] drawn = drawnByGenotype(plant, model, shows);
    double[] table = new double[ways.size() * drawn.length];
    for (int w = 0; w < ways.size(); w++) {
      if (ways.get(w) instanceof Way.Again) {
        Arrays.fill(table, w * drawn.length, (w + 1) * drawn.length, 1);
      } else {
        System.arraycopy(drawn, 0, table, w * drawn.length, drawn.length);
      }
    }
    sources.factor(Network.before(selector, Network.with(variables(plant, shows), shown)), table);
  }

  /** Whether a plant of several ways is another plant over again in one of them. */
  static boolean isPerhapsAnother(List<Way> ways) {
    return ways.size() > 1 && ways.stream().anyMatch(way -> way instanceof Way.Again);
  }

  /** Both show the same where a way is the true one. */
  private void sameAs(int of, int shown, int selector, int way) {
    int states = sources.size(shown);
    double[] table = new double[sources.size(selector) * states * states];
    Arrays.fill(table, 1);
    for (int i = 0; i < states; i++) {
      for (int j = 0; j < states; j++) {
        table[(way * states + i) * states + j] = i == j ? 1 : 0;
      }
    }
    sources.factor(new int[] {selector, of, shown}, table);
  }

  /** The chance that plants which showed a state were read so. */
  private double read(TraitModel model, String shown, List<String> reads) {
    double chance = 1;
    for (String read : reads) {
      chance *= shown.equals(read) ? 1 - misread : misread / (model.states().size() - 1);
    }
    return chance;
  }

  /** The chance that a plant of these kinds was read so, how it shows being drawn once. */
  private double reading(Appearance shows, int[] kinds, TraitModel model, List<String> reads) {
    double chance = 0;
    for (Map.Entry<String, Fraction> state : shows.outcome(0, kinds).shows().entrySet()) {
      chance += state.getValue().toDouble() * read(model, state.getKey(), reads);
    }
    return chance;
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
    double[] table = new double[cells(sizes)];
    eachKinds(plant, shows, sizes, (cell, kinds) -> table[cell] = chance.chance(kinds));
    sources.factor(variables, table);
  }

  private static int cells(int[] sizes) {
    double cells = 1;
    for (int size : sizes) {
      cells *= size;
    }
    if (cells > MOST) {
      throw new IllegalArgumentException(
          "a plant can be of too many genotypes at the genes of one table to go through; ask for"
              + " fewer traits or genes at once");
    }
    return (int) cells;
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
      boolean[] like =
          carried.whole().isEmpty() ? null : states.like(group, form, carried.whole().get());
      for (int i = 0; i < table.length; i++) {
        table[i] =
            (like == null || like[i]) && states.fits(group, form, i, carried.patterns()) ? 1 : 0;
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
    Looks looks =
        because == null
            ? new Looks(killing.get(0), List.of())
            : new Looks(genetics.model(because.trait()), List.of(because.state()));
    family(plant, ways, looks, chances -> -Math.log(chances[0]));
  }

  /** So many seedlings of the family of a plant showed each state. */
  void counted(int plant, List<Way> ways, Evidence.Counted counted) {
    TraitModel model = genetics.model(counted.trait());
    List<String> named = new ArrayList<>();
    List<Long> numbers = new ArrayList<>();
    counted
        .counts()
        .forEach(
            (state, number) -> {
              model.requireState(state);
              if (number > 0) {
                named.add(state);
                numbers.add(number);
              }
            });
    if (named.isEmpty()) {
      return;
    }
    family(
        plant,
        ways,
        new Looks(model, named),
        chances -> {
          double log = 0;
          for (int i = 0; i < numbers.size(); i++) {
            log += numbers.get(i) * Math.log(chances[i] / chances[numbers.size()]);
          }
          return log;
        });
  }

  /** Seedlings that live and are read as one state or another; the last class is all that live. */
  private final class Looks implements FamilyShows.Classes {
    private final TraitModel model;
    private final List<String> reads;
    private final Appearance shows;

    Looks(TraitModel model, List<String> reads) {
      this.model = model;
      this.reads = reads;
      List<TraitModel> tables = new ArrayList<>(List.of(model));
      killing.stream().filter(table -> !tables.contains(table)).forEach(tables::add);
      this.shows = shows(tables);
    }

    @Override
    public int count() {
      return reads.size() + 1;
    }

    @Override
    public double chance(int which, int[] kinds) {
      double lives = killing.isEmpty() ? 1 : shows.lives(kinds);
      return which == reads.size() || lives == 0
          ? lives
          : lives * reading(shows, kinds, model, List.of(reads.get(which)));
    }
  }

  /**
   * A factor over everything a family depends on.
   *
   * @param logWeight its logarithm, of the chances of the classes
   */
  private void family(int plant, List<Way> ways, Looks looks, FamilyShows.Weight logWeight) {
    boolean shared = lineages.drawing(plant).isPresent() && ways.size() > 1;
    // One pollinator for all of them: each way speaks where it is the true one.
    List<List<Way>> together =
        shared ? ways.stream().map(way -> List.of(way)).toList() : List.of(ways);
    List<FamilyShows> each = new ArrayList<>();
    for (List<Way> some : together) {
      each.add(FamilyShows.of(states, sources, lineages, looks.shows, some));
    }
    List<double[]> tables = new ArrayList<>();
    double most = Double.NEGATIVE_INFINITY;
    for (FamilyShows family : each) {
      double[][] chances = family.chances(looks.shows, looks);
      double[] table = new double[chances.length];
      for (int i = 0; i < table.length; i++) {
        // Of parents none of whose seedlings live the weight is no number; such there are none of.
        double log = logWeight.of(chances[i]);
        table[i] = Double.isNaN(log) || log == Double.POSITIVE_INFINITY ? NONE : log;
        most = Math.max(most, table[i]);
      }
      tables.add(table);
    }
    // One scale for all ways of a family, or they could not be compared.
    double scale = most == NONE ? 0 : most;
    logConstant += scale;
    for (int w = 0; w < tables.size(); w++) {
      double[] table =
          Arrays.stream(tables.get(w))
              .map(log -> log == NONE ? 0 : Math.exp(log - scale))
              .toArray();
      int[] variables = each.get(w).variables();
      if (!shared) {
        sources.factor(variables, table);
      } else {
        int selector = network.selector(plant);
        double[] switched = new double[sources.size(selector) * table.length];
        Arrays.fill(switched, 1);
        System.arraycopy(table, 0, switched, w * table.length, table.length);
        sources.factor(Network.before(selector, variables), switched);
      }
    }
  }
}
