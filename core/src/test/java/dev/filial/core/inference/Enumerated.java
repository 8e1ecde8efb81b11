package dev.filial.core.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Everything a {@link Garden} can be, one case after another: each genotype of each plant, in each
 * way in which it may have come about, with the chance of that and of all that was seen.
 */
final class Enumerated {

  private final Garden garden;
  private final Textbook textbook;
  private final int n;
  private final Map<String, double[]> dominant = new HashMap<>();
  private double scale;

  private final int[] genotype;
  private final int[] way;

  /** The chance of all that was seen. */
  double weight;

  /** By plant and genotype, each as a share of {@link #weight} once all is added up. */
  final double[][] genotypes;

  /** By plant and plant, genotype and genotype. */
  final double[][][][] joint;

  /** By plant and way. */
  final double[][] ways;

  /** By plant and trait: that it really shows the dominant state. */
  final double[][] shows;

  private Enumerated(Garden garden) {
    this.garden = garden;
    textbook = garden.textbook;
    n = garden.plants.size();
    genotype = new int[n];
    way = new int[n];
    int g = textbook.genotypes();
    genotypes = new double[n][g];
    joint = new double[n][n][g][g];
    ways = new double[n][];
    Arrays.setAll(ways, plant -> new double[garden.plants.get(plant).ways().size()]);
    shows = new double[n][garden.kind.traits().size()];
  }

  /** With the frequencies that are stated. */
  static Enumerated of(Garden garden) {
    Enumerated all = new Enumerated(garden);
    all.go(Map.of(), 1);
    return all.done();
  }

  /**
   * With the frequency of T of one taxon unknown, Beta(½, ½): p = sin² of an angle of which all
   * between 0 and 90° are alike, in so many steps.
   */
  static Enumerated ofUnknown(Garden garden, String taxon, int steps) {
    Enumerated all = new Enumerated(garden);
    for (int i = 0; i < steps; i++) {
      double sine = Math.sin((i + 0.5) / steps * Math.PI / 2);
      all.go(Map.of(taxon, new double[] {sine * sine}), 1.0 / steps);
    }
    return all.done();
  }

  private void go(Map<String, double[]> unknown, double share) {
    garden.dominant.forEach(
        (taxon, p) ->
            dominant.put(
                taxon, Arrays.stream(p).mapToDouble(fraction -> fraction.toDouble()).toArray()));
    dominant.putAll(unknown);
    scale = share;
    next(0, scale);
  }

  private void next(int plant, double chance) {
    if (plant == n) {
      add(chance);
      return;
    }
    Garden.Plant its = garden.plants.get(plant);
    if (its.again() >= 0) {
      genotype[plant] = genotype[its.again()];
      next(plant + 1, chance);
      return;
    }
    int fruit = garden.fruit(plant);
    if (its.taxon().isPresent()) {
      through(plant, chance, founder(its.taxon().get()));
    } else if (fruit >= 0 && fruit < plant) {
      way[plant] = way[fruit];
      through(plant, chance, seedling(its.ways().get(way[plant])));
    } else {
      for (int w = 0; w < its.ways().size(); w++) {
        way[plant] = w;
        Garden.Way one = its.ways().get(w);
        through(plant, chance * one.share().toDouble(), seedling(one));
      }
    }
  }

  private void through(int plant, double chance, double[] chances) {
    for (int g = 0; g < chances.length; g++) {
      if (chances[g] > 0) {
        genotype[plant] = g;
        next(plant + 1, chance * chances[g]);
      }
    }
  }

  private double[] founder(String taxon) {
    double[] eggs = textbook.drawn(dominant.get(taxon), false);
    double[] grains = textbook.drawn(dominant.get(taxon), true);
    double inbred =
        garden.inbreeding.containsKey(taxon) ? garden.inbreeding.get(taxon).toDouble() : 0;
    double[] chances = united(eggs, grains);
    for (int g = 0; g < chances.length; g++) {
      chances[g] *= 1 - inbred;
    }
    for (int e = 0; inbred > 0 && e < eggs.length; e++) {
      chances[textbook.joined(e, e)] += inbred * eggs[e];
    }
    return chances;
  }

  /** What a seedling of the family is in one way, its parents being as they are just now. */
  private double[] seedling(Garden.Way one) {
    if (one.copy()) {
      double[] chances = new double[textbook.genotypes()];
      chances[genotype[one.seed()]] = 1;
      return chances;
    }
    return united(
        textbook.gametes(genotype[one.seed()], false),
        one.pollen() == Garden.UNKNOWN
            ? textbook.drawn(dominant.get(Garden.NOBODYS), true)
            : textbook.gametes(genotype[one.pollen()], true));
  }

  private double[] united(double[] eggs, double[] grains) {
    double[] chances = new double[textbook.genotypes()];
    for (int e = 0; e < eggs.length; e++) {
      for (int g = 0; g < grains.length; g++) {
        chances[textbook.joined(e, g)] += eggs[e] * grains[g];
      }
    }
    return chances;
  }

  /** The family a plant is of: of one fruit the way all came, of others any. */
  private double[] family(int plant) {
    Garden.Plant its = garden.plants.get(plant);
    if (its.again() >= 0 && !its.ramet()) {
      double[] chances = new double[textbook.genotypes()];
      chances[genotype[plant]] = 1;
      return chances;
    }
    if (its.again() >= 0) {
      return family(its.again());
    }
    if (its.taxon().isPresent()) {
      return founder(its.taxon().get());
    }
    if (garden.fruit(plant) >= 0) {
      return seedling(its.ways().get(way[plant]));
    }
    double[] chances = new double[textbook.genotypes()];
    for (Garden.Way one : its.ways()) {
      double[] here = seedling(one);
      for (int g = 0; g < here.length; g++) {
        chances[g] += one.share().toDouble() * here[g];
      }
    }
    return chances;
  }

  /** How often a plant of that genotype shows the dominant state. */
  private double dominantShown(String trait, int g) {
    return textbook.hasDominant(trait, g) ? garden.penetrance.get(trait).toDouble() : 0;
  }

  private double read(boolean dominantShown, boolean dominantRead) {
    return dominantShown == dominantRead ? 1 - garden.misread : garden.misread;
  }

  private static boolean isDominant(String trait, String state) {
    return Garden.states(trait).get(0).equals(state);
  }

  private double lives(int g) {
    return garden.lethal && textbook.text(g).equals(Garden.DIES) ? 0 : 1;
  }

  private double lives(double[] family) {
    double sum = 0;
    for (int g = 0; g < family.length; g++) {
      sum += family[g] * lives(g);
    }
    return sum;
  }

  /** How often one of a family lives and is read to show a state. */
  private double readOf(double[] family, String trait, String state) {
    double sum = 0;
    for (int g = 0; g < family.length; g++) {
      double shown = dominantShown(trait, g);
      sum +=
          family[g]
              * lives(g)
              * (shown * read(true, isDominant(trait, state))
                  + (1 - shown) * read(false, isDominant(trait, state)));
    }
    return sum;
  }

  /** The plant of which this one is a ramet, or which it is over again, as things are just now. */
  private int one(int plant) {
    int genet = garden.genet(plant);
    List<Garden.Way> its = garden.plants.get(genet).ways();
    return its.isEmpty() || !its.get(way[genet]).copy() ? genet : one(its.get(way[genet]).seed());
  }

  /** The chance of what was read on one plant, and that it showed the dominant state. */
  private double[] sightings(int plant, String trait) {
    double shown = dominantShown(trait, genotype[plant]);
    double dominantToo = shown;
    double recessiveToo = 1 - shown;
    for (Evidence finding : garden.seen) {
      if (finding instanceof Evidence.Shown one
          && one.trait().equals(trait)
          && one(garden.number(one.plant())) == plant) {
        dominantToo *= read(true, isDominant(trait, one.state()));
        recessiveToo *= read(false, isDominant(trait, one.state()));
      }
    }
    return new double[] {dominantToo + recessiveToo, dominantToo};
  }

  private void add(double before) {
    double chance = before;
    for (int plant = 0; plant < n; plant++) {
      if (lives(genotype[plant]) == 0) {
        return;
      }
    }
    for (int plant = 0; plant < n; plant++) {
      // That it lived says nothing of its parents.
      chance /= garden.plants.get(plant).again() < 0 ? lives(family(plant)) : 1;
    }
    for (Evidence finding : garden.seen) {
      int plant = garden.number(finding.plant());
      if (finding instanceof Evidence.Carried carried) {
        String known = carried.whole().orElseThrow().text();
        chance *= textbook.text(genotype[plant]).equals(known) ? 1 : 0;
      } else if (finding instanceof Evidence.Counted counted) {
        double[] family = family(plant);
        for (Map.Entry<String, Long> count : counted.counts().entrySet()) {
          double share = readOf(family, counted.trait(), count.getKey()) / lives(family);
          chance *= Math.pow(share, count.getValue());
        }
      } else if (finding instanceof Evidence.Shown shown && shown.picked()) {
        double[] family = family(garden.genet(plant));
        // That it lived is divided out already.
        double noticed = readOf(family, shown.trait(), shown.state()) / lives(family);
        chance = noticed > 0 ? chance / noticed : 0;
      }
    }
    List<double[]> shown = new ArrayList<>();
    List<String> traits = garden.kind.traits();
    for (int plant = 0; plant < n && chance > 0; plant++) {
      for (String trait : traits) {
        double[] of = sightings(one(plant), trait);
        shown.add(of);
        if (one(plant) == plant) {
          chance *= of[0];
        }
      }
    }
    if (chance <= 0) {
      return;
    }
    weight += chance;
    for (int plant = 0; plant < n; plant++) {
      genotypes[plant][genotype[plant]] += chance;
      if (ways[plant].length > 0) {
        ways[plant][way[plant]] += chance;
      }
      for (int t = 0; t < traits.size(); t++) {
        double[] of = shown.get(plant * traits.size() + t);
        shows[plant][t] += chance * of[1] / of[0];
      }
      for (int other = 0; other < n; other++) {
        joint[plant][other][genotype[plant]][genotype[other]] += chance;
      }
    }
  }

  private Enumerated done() {
    for (int plant = 0; weight > 0 && plant < n; plant++) {
      divide(genotypes[plant]);
      divide(ways[plant]);
      divide(shows[plant]);
      for (double[][] two : joint[plant]) {
        for (double[] row : two) {
          divide(row);
        }
      }
    }
    return this;
  }

  private void divide(double[] sums) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] /= weight;
    }
  }

  /** How often seedlings nobody raised yet of two plants, if they live, will show a trait. */
  double crossShows(int seed, int pollen, String trait) {
    double sum = 0;
    for (int s = 0; s < textbook.genotypes(); s++) {
      for (int p = 0; p < textbook.genotypes(); p++) {
        double both = joint[seed][pollen][s][p];
        if (both > 0) {
          double[] family = united(textbook.gametes(s, false), textbook.gametes(p, true));
          for (int g = 0; g < family.length; g++) {
            sum += both * family[g] * lives(g) / lives(family) * dominantShown(trait, g);
          }
        }
      }
    }
    return sum;
  }
}
