package dev.filial.core.inference;

import dev.filial.core.inference.factor.Bearing;
import dev.filial.core.inference.factor.Elimination;
import dev.filial.core.inference.factor.FactorGraph;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The network of a question: the plants asked about and all that can bear on them, with what was
 * seen of them entered.
 */
final class AskedNetwork {

  /** No rule is exact for what is divided by; it is worked out as finely as for so many draws. */
  private static final int DIVIDED = 64;

  private final Genetics genetics;
  private final List<Evidence> heard;
  private final Lineages lineages;
  private final Network network;
  private final Sightings sightings;
  private final Map<Seen, List<String>> seen = new LinkedHashMap<>();

  /** A plant and a trait of which something was seen. */
  private record Seen(int plant, String trait) {}

  private AskedNetwork(Genetics genetics, Beliefs beliefs, List<Evidence> heard, BitSet behind) {
    this.genetics = genetics;
    this.heard = heard;
    this.lineages =
        Lineages.of(genetics.pedigree(), beliefs.priors(), beliefs.assumptions(), behind);
    this.network = new Network(genetics.states(), beliefs.priors(), lineages, unnumbered());
    this.sightings = new Sightings(genetics, beliefs.misread(), lineages, network);
  }

  /**
   * Of some plants, with that of the evidence that bears on them; of all evidence if none is named.
   *
   * @param later a trait of the first plant that is entered later, by {@link #appearance}; empty
   *     for none
   */
  static AskedNetwork of(
      Genetics genetics,
      Beliefs beliefs,
      List<Evidence> evidence,
      List<String> asked,
      String later) {
    List<Evidence> heard =
        asked.isEmpty() ? evidence : bearingOn(genetics, beliefs, evidence, asked);
    AskedNetwork made =
        new AskedNetwork(genetics, beliefs, heard, behind(genetics.pedigree(), asked, heard));
    made.enter(asked, later);
    return made;
  }

  /** What of the evidence can bear on some plants. */
  static List<Evidence> bearingOn(
      Genetics genetics, Beliefs beliefs, List<Evidence> evidence, List<String> plants) {
    Pedigree pedigree = genetics.pedigree();
    BitSet asked = new BitSet();
    plants.forEach(plant -> asked.set(pedigree.indexOf(plant)));
    BitSet with =
        Connected.with(
            pedigree,
            beliefs.priors(),
            genetics.states().genome(),
            beliefs.assumptions(),
            behind(pedigree, plants, evidence),
            asked);
    return evidence.stream()
        .filter(finding -> with.get(pedigree.indexOf(finding.plant())))
        .toList();
  }

  private static BitSet behind(Pedigree pedigree, List<String> plants, List<Evidence> heard) {
    BitSet behind = new BitSet();
    plants.forEach(plant -> behind.set(pedigree.indexOf(plant)));
    heard.forEach(finding -> behind.set(pedigree.indexOf(finding.plant())));
    // Parents have lower indices: one pass downwards meets each plant once.
    for (int i = behind.length() - 1; i >= 0; i = behind.previousSetBit(i - 1)) {
      for (int parent : pedigree.parents(i)) {
        behind.set(parent);
      }
    }
    return behind;
  }

  private void enter(List<String> asked, String later) {
    BitSet needed = new BitSet();
    asked.forEach(plant -> needed.set(lineages.number(plant)));
    Map<Integer, Evidence.Shown> picked = new HashMap<>();
    for (Evidence finding : heard) {
      int number = lineages.number(finding.plant());
      if (finding instanceof Evidence.Counted) {
        // Of counted seedlings only the parents are plants of the network.
        lineages.family(finding.plant()).forEach(way -> Network.parents(way, needed));
        continue;
      }
      needed.set(number);
      if (finding instanceof Evidence.Shown shown) {
        seen.computeIfAbsent(new Seen(number, shown.trait()), any -> new ArrayList<>())
            .add(shown.state());
        if (shown.picked()) {
          picked.putIfAbsent(number, shown);
        }
      }
    }
    BitSet entered = network.behind(needed);
    network.enter(entered);
    sightings.noticed(entered, picked);
    Set<Seen> kept = new HashSet<>(seen.keySet());
    Seen last = later.isEmpty() ? null : new Seen(lineages.number(asked.get(0)), later);
    if (last != null) {
      kept.add(last);
    }
    Set<Seen> drawnApart = drawnApart(kept);
    seen.forEach(
        (what, states) -> {
          if (what.equals(last)) {
            return;
          }
          if (drawnApart.contains(what)) {
            sightings.appearance(what.plant(), what.trait(), states);
          } else {
            sightings.shown(what.plant(), what.trait(), states);
          }
        });
    for (Evidence finding : heard) {
      if (finding instanceof Evidence.Carried carried) {
        sightings.carried(lineages.number(finding.plant()), carried);
      } else if (finding instanceof Evidence.Counted counted) {
        sightings.counted(
            lineages.number(finding.plant()), lineages.family(finding.plant()), counted);
      }
    }
  }

  /**
   * What needs a variable of its own: how plants show a trait that does not always show, where one
   * of them may be another over again and both would be one drawing.
   */
  private Set<Seen> drawnApart(Set<Seen> kept) {
    Set<Seen> apart = new HashSet<>();
    Deque<Seen> open = new ArrayDeque<>();
    for (Seen one : kept) {
      if (!genetics.model(one.trait()).isPenetrant()
          && Sightings.isPerhapsAnother(lineages.ways(one.plant()))) {
        open.add(one);
      }
    }
    while (!open.isEmpty()) {
      Seen one = open.remove();
      if (apart.add(one)) {
        for (Way way : lineages.ways(one.plant())) {
          if (way instanceof Way.Again again) {
            open.add(new Seen(again.plant(), one.trait()));
          }
        }
      }
    }
    return apart;
  }

  /** How many alleles are drawn from taxa by seedlings that are no plants of the network. */
  private int unnumbered() {
    double draws = genetics.killing().isEmpty() ? 0 : DIVIDED;
    for (Evidence finding : heard) {
      if (finding instanceof Evidence.Counted counted) {
        int each = Lineages.draws(lineages.family(finding.plant()));
        for (long count : counted.counts().values()) {
          draws += (double) count * each;
        }
      } else if (finding instanceof Evidence.Shown shown && shown.picked()) {
        int each = Lineages.draws(lineages.ways(lineages.number(finding.plant())));
        draws += each > 0 ? DIVIDED : 0;
      }
    }
    return (int) Math.min(draws, 1e9);
  }

  Lineages lineages() {
    return lineages;
  }

  FactorGraph graph() {
    return network.graph();
  }

  double logConstant() {
    return sightings.logConstant();
  }

  /** The number of a plant's genotype. */
  int number(String plant) {
    return lineages.number(plant);
  }

  /** The variables of a plant's genotype, one a linkage group. */
  int[] genotype(int number) {
    return IntStream.range(0, genetics.groups()).map(group -> variable(number, group)).toArray();
  }

  int variable(int number, int group) {
    return network.sources().plant(number, group);
  }

  /** The variable of the way in which a plant came about. */
  int way(int number) {
    return network.selector(number);
  }

  /** The variable of what a plant shows, with what was seen of that. */
  int appearance(int number, String trait) {
    return sightings.appearance(
        number, trait, seen.getOrDefault(new Seen(number, trait), List.of()));
  }

  /** A seedling of two plants of the network that nobody raised yet. */
  int cross(String seed, String pollen) {
    int crossed = lineages.cross(number(seed), number(pollen));
    BitSet only = new BitSet();
    only.set(crossed);
    network.enter(only);
    sightings.noticed(only, Map.of());
    return crossed;
  }

  /** How an answer about some variables came about. */
  Reckoning reckoning(FactorGraph graph, Elimination plan, int sweeps, int... asked) {
    return new Reckoning(
        heard.size(),
        plan.width(),
        plan.entries(),
        sweeps,
        network.sources().leanedOn(Bearing.on(graph, asked)));
  }
}
