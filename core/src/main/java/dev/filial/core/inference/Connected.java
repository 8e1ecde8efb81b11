package dev.filial.core.inference;

import dev.filial.core.heredity.Genome;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.StatedGeneration;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.jgrapht.alg.util.UnionFind;
import org.jspecify.annotations.Nullable;

/**
 * Which plants can tell of each other: those of one family tree, plants of one cultivar, and plants
 * of a taxon whose frequencies are unknown. What is recorded of others is of no account, whether it
 * could be reckoned with or not. Cost: in proportion to plants and parents.
 */
final class Connected {

  private final Pedigree pedigree;
  private final FounderPriors priors;
  private final Genome genome;
  private final Assumptions assumptions;
  private final UnionFind<Integer> families = new UnionFind<>(Set.of());
  private final Map<String, Integer> shared = new HashMap<>();
  private final Map<String, Boolean> unknown = new HashMap<>();

  private Connected(
      Pedigree pedigree, FounderPriors priors, Genome genome, Assumptions assumptions) {
    this.pedigree = pedigree;
    this.priors = priors;
    this.genome = genome;
    this.assumptions = assumptions;
  }

  /**
   * The plants among {@code plants} that can tell of any of the asked ones.
   *
   * @param plants plants of the pedigree with all behind them
   */
  static BitSet with(
      Pedigree pedigree,
      FounderPriors priors,
      Genome genome,
      Assumptions assumptions,
      BitSet plants,
      BitSet asked) {
    Connected connected = new Connected(pedigree, priors, genome, assumptions);
    for (int plant = plants.nextSetBit(0); plant >= 0; plant = plants.nextSetBit(plant + 1)) {
      connected.families.addElement(plant);
      connected.tie(plant);
    }
    Set<Integer> roots = new HashSet<>();
    asked.stream().forEach(plant -> roots.add(connected.families.find(plant)));
    BitSet with = new BitSet();
    for (int plant = plants.nextSetBit(0); plant >= 0; plant = plants.nextSetBit(plant + 1)) {
      if (roots.contains(connected.families.find(plant))) {
        with.set(plant);
      }
    }
    return with;
  }

  private void tie(int plant) {
    String code = pedigree.code(plant);
    if (assumptions.unknownOrigin().contains(code)) {
      taxon(plant, FounderPriors.DOUBTED);
      return;
    }
    if (assumptions.sports().contains(code)) {
      taxon(plant, FounderPriors.UNKNOWN);
      return;
    }
    for (int source : pedigree.parents(plant)) {
      families.union(plant, source);
    }
    named(plant, "drawn ", assumptions.onePollinator().get(code));
    if (assumptions.otherPollen().containsKey(code)) {
      named(plant, "other ", assumptions.otherPollen().get(code));
      taxon(plant, FounderPriors.UNKNOWN);
    }
    Founder founder = pedigree.founder(plant);
    if (founder == null) {
      for (Descent descent : pedigree.descents(plant)) {
        if (descent instanceof Descent.Sexual sexual
            && (sexual.seed() == Pedigree.UNKNOWN || sexual.pollen() == Pedigree.UNKNOWN)) {
          taxon(plant, FounderPriors.UNKNOWN);
        }
      }
      return;
    }
    founder.makeup().shares().keySet().forEach(taxon -> taxon(plant, taxon));
    if (!founder.makeup().unknownShare().isZero()) {
      taxon(plant, FounderPriors.UNKNOWN);
    }
    if (founder.stated().isPresent()) {
      StatedGeneration stated = founder.stated().get();
      taxon(plant, stated.first());
      taxon(plant, stated.second());
    }
    if (founder.cultivar() != null) {
      named(plant, founder.makeup().shares().keySet().toString(), founder.cultivar());
    }
  }

  /** Plants of a taxon tell of each other as far as its frequencies are not known. */
  private void taxon(int plant, String taxon) {
    boolean ties =
        unknown.computeIfAbsent(
            taxon,
            name ->
                genome.loci().stream()
                    .anyMatch(locus -> priors.frequencies(name, locus.name()).isEmpty()));
    if (ties) {
      named(plant, "taxon ", taxon);
    }
  }

  private void named(int plant, String kind, @Nullable String name) {
    if (name != null) {
      Integer other = shared.putIfAbsent(kind + name, plant);
      if (other != null) {
        families.union(plant, other);
      }
    }
  }
}
