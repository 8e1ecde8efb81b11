package dev.filial.core.inference;

import dev.filial.core.heredity.Appearance;
import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.GenomeStates.Form;
import dev.filial.core.inference.Sources.Source;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * What seedlings of one family show, for every genotype its parents may have.
 *
 * <p>Over the states of everything the family's ways depend on, in one table: the chance of each of
 * some classes of seedlings. Cost: the states of all these together, times the ways.
 */
final class FamilyShows {

  /** More combinations of parents are not gone through. */
  private static final double MOST = 4e6;

  /** The chance that a seedling of some kinds falls into a class. */
  interface Classes {
    int count();

    double chance(int which, int[] kinds);
  }

  /** What is made of the chances of the classes. */
  interface Weight {
    double of(double[] chances);
  }

  private final int[] variables;
  private final int[] sizes;
  private final List<WayTable> ways;

  /** One way: how its share and the kinds of its seedlings depend on the variables. */
  private static final class WayTable {
    final double share;
    final List<GroupTable> groups = new ArrayList<>();

    WayTable(double share) {
      this.share = share;
    }
  }

  /**
   * The kinds of one way at one linkage group: how far the row moves with each variable of the
   * family, and by row the chance of each kind.
   */
  private static final class GroupTable {
    private final int[] strides;
    private final double[][] rows;

    GroupTable(int[] strides, double[][] rows) {
      this.strides = strides;
      this.rows = rows;
    }

    int[] strides() {
      return strides;
    }

    double[][] rows() {
      return rows;
    }
  }

  private FamilyShows(int[] variables, int[] sizes, List<WayTable> ways) {
    this.variables = variables;
    this.sizes = sizes;
    this.ways = ways;
  }

  /**
   * Of a family.
   *
   * @param its its ways, whose shares are rescaled to 1
   * @throws IllegalArgumentException if too many parents are possible together
   */
  static FamilyShows of(
      GenomeStates states, Sources sources, Lineages lineages, Appearance shows, List<Way> its) {
    Map<Integer, Integer> places = new LinkedHashMap<>();
    List<List<Source>> raw = new ArrayList<>();
    double sum = 0;
    for (Way way : its) {
      List<Source> groups = new ArrayList<>();
      for (int at = 0; at < shows.groups().size(); at++) {
        Source one = raw(states, sources, lineages, shows, way, at);
        for (int variable : one.variables()) {
          places.putIfAbsent(variable, places.size());
        }
        groups.add(one);
      }
      raw.add(groups);
      sum += way.share();
    }
    int[] variables = places.keySet().stream().mapToInt(Integer::intValue).toArray();
    int[] sizes = new int[variables.length];
    double cells = 1;
    for (int i = 0; i < variables.length; i++) {
      sizes[i] = sources.size(variables[i]);
      cells *= sizes[i];
    }
    if (cells > MOST) {
      throw new IllegalArgumentException(
          "the parents of one family can be of "
              + String.format(Locale.ROOT, "%.0f", cells)
              + " combinations of genotypes, and at most "
              + String.format(Locale.ROOT, "%.0f", MOST)
              + " are gone through for seedlings that were counted or picked; name fewer plants"
              + " whose pollen it may have been");
    }
    List<WayTable> ways = new ArrayList<>();
    for (int w = 0; w < raw.size(); w++) {
      WayTable way = new WayTable(its.get(w).share() / sum);
      for (int at = 0; at < raw.get(w).size(); at++) {
        Source one = raw.get(w).get(at);
        int[] strides = new int[variables.length];
        int stride = 1;
        for (int i = one.variables().length - 1; i >= 0; i--) {
          Integer place = places.get(one.variables()[i]);
          if (place != null) {
            strides[place] += stride;
          }
          stride *= sources.size(one.variables()[i]);
        }
        int kinds = shows.count(at);
        double[][] rows = new double[one.rows().length][];
        for (int row = 0; row < rows.length; row++) {
          rows[row] = Arrays.copyOf(one.rows()[row], kinds);
        }
        way.groups.add(new GroupTable(strides, rows));
      }
      ways.add(way);
    }
    return new FamilyShows(variables, sizes, ways);
  }

  /** The kinds of a way at a group, as gametes come of a source; kinds may still grow. */
  private static Source raw(
      GenomeStates states, Sources sources, Lineages lineages, Appearance shows, Way way, int at) {
    int group = shows.groups().get(at);
    if (way instanceof Way.Union union) {
      Source egg = sources.of(union.egg(), group, false);
      Source grain = sources.of(union.grain(), group, true);
      Form eggForm = union.egg().form();
      Form grainForm = union.grain().form();
      int[] kinds = shows.kinds(at, GenomeStates.joined(eggForm, grainForm));
      int[][] kind = new int[egg.rows()[0].length][grain.rows()[0].length];
      for (int e = 0; e < kind.length; e++) {
        for (int g = 0; g < kind[e].length; g++) {
          kind[e][g] = kinds[states.joined(group, eggForm, e, grainForm, g)];
        }
      }
      double[][] rows = new double[egg.rows().length * grain.rows().length][shows.count(at)];
      for (int e = 0; e < egg.rows().length; e++) {
        for (int g = 0; g < grain.rows().length; g++) {
          double[] row = rows[e * grain.rows().length + g];
          for (int i = 0; i < kind.length; i++) {
            double one = egg.rows()[e][i];
            for (int j = 0; one > 0 && j < kind[i].length; j++) {
              row[kind[i][j]] += one * grain.rows()[g][j];
            }
          }
        }
      }
      int[] both = new int[egg.variables().length + grain.variables().length];
      System.arraycopy(egg.variables(), 0, both, 0, egg.variables().length);
      System.arraycopy(
          grain.variables(), 0, both, egg.variables().length, grain.variables().length);
      return new Source(both, rows);
    }
    if (way instanceof Way.Twice twice) {
      Source gamete = sources.of(twice.gamete(), group, false);
      Form form = twice.gamete().form();
      int[] kinds = shows.kinds(at, GenomeStates.joined(form, form));
      double[][] rows = new double[gamete.rows().length][shows.count(at)];
      for (int row = 0; row < rows.length; row++) {
        for (int i = 0; i < gamete.rows()[row].length; i++) {
          rows[row][kinds[states.joined(group, form, i, form, i)]] += gamete.rows()[row][i];
        }
      }
      return new Source(gamete.variables(), rows);
    }
    int source = way instanceof Way.Again again ? again.plant() : ((Way.Doubled) way).plant();
    Form form = lineages.form(source);
    int[] kinds = shows.kinds(at, form);
    double[][] rows = new double[kinds.length][shows.count(at)];
    for (int i = 0; i < kinds.length; i++) {
      rows[i][kinds[i]] = 1;
    }
    return new Source(new int[] {sources.plant(source, group)}, rows);
  }

  /** What the family depends on. */
  int[] variables() {
    return variables;
  }

  /** The states of all of these together. */
  int cells() {
    int cells = 1;
    for (int size : sizes) {
      cells *= size;
    }
    return cells;
  }

  /**
   * The chance of each class at every combination of states, the last variable fastest.
   *
   * @param shows by which the kinds are told apart
   */
  double[][] chances(Appearance shows, Classes classes) {
    int[] kinds = IntStream.range(0, shows.groups().size()).map(shows::count).toArray();
    double[][] table = new double[cells()][classes.count()];
    int all = 1;
    for (int kind : kinds) {
      all *= kind;
    }
    double[][] of = new double[all][classes.count()];
    int[][] combination = new int[all][kinds.length];
    for (int c = 0; c < all; c++) {
      int rest = c;
      for (int at = kinds.length - 1; at >= 0; at--) {
        combination[c][at] = rest % kinds[at];
        rest /= kinds[at];
      }
    }
    boolean[] done = new boolean[all];
    int[] state = new int[variables.length];
    for (int cell = 0; cell < table.length; cell++) {
      for (WayTable way : ways) {
        double[] @Nullable [] rows = new double[kinds.length][];
        for (int at = 0; at < kinds.length; at++) {
          GroupTable group = way.groups.get(at);
          int row = 0;
          for (int i = 0; i < state.length; i++) {
            row += state[i] * group.strides()[i];
          }
          rows[at] = group.rows()[row];
        }
        for (int c = 0; c < all; c++) {
          double chance = way.share;
          for (int at = 0; chance > 0 && at < kinds.length; at++) {
            double[] row = rows[at];
            chance *= row == null ? 0 : row[combination[c][at]];
          }
          if (chance > 0) {
            if (!done[c]) {
              for (int k = 0; k < classes.count(); k++) {
                of[c][k] = classes.chance(k, combination[c]);
              }
              done[c] = true;
            }
            for (int k = 0; k < classes.count(); k++) {
              table[cell][k] += chance * of[c][k];
            }
          }
        }
      }
      for (int i = state.length - 1; i >= 0; i--) {
        if (++state[i] < sizes[i]) {
          break;
        }
        state[i] = 0;
      }
    }
    return table;
  }
}
