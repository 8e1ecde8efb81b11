package dev.filial.core.register;

import dev.filial.core.heredity.Distortion;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.SelfIncompatibility;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The loci that a register declares, as they are reckoned with: those of one chromosome in one
 * linkage group by their places on its map, those that lie beside each other in one group in the
 * order of that row, all others alone.
 */
public final class DeclaredGenome {

  private final RegisterView view;
  private final MapFunction function;
  private final Map<String, LocusDeclared> wanted = new LinkedHashMap<>();

  private DeclaredGenome(RegisterView view, MapFunction function) {
    this.view = view;
    this.function = function;
  }

  /**
   * The genome of the loci named, groups in the order in which their first locus is named. Loci
   * that are not named are reckoned over: those at either end of a row of three recombine by r = r₁
   * + r₂ − 2r₁r₂. Cost in proportion to the loci named and those linked to them.
   *
   * @param loci names of loci; each is taken once
   * @param function how places on a map turn into recombination
   * @throws RegisterRefusal if a locus was not declared, or lies beside others in no single row
   * @throws IllegalArgumentException if none is named, two have an allele of the same symbol, or
   *     the linked ones form more gametes than are reckoned with
   */
  public static Genome of(RegisterView view, Collection<String> loci, MapFunction function) {
    DeclaredGenome declared = new DeclaredGenome(view, function);
    for (String name : loci) {
      declared.wanted.put(name.strip(), References.locus(view, name));
    }
    return declared.genome();
  }

  private Genome genome() {
    Set<String> placed = new LinkedHashSet<>();
    List<LinkageGroup> groups = new ArrayList<>();
    for (Map.Entry<String, LocusDeclared> locus : wanted.entrySet()) {
      if (placed.contains(locus.getKey())) {
        continue;
      }
      LinkageGroup group = group(locus.getKey(), locus.getValue());
      group.loci().forEach(there -> placed.add(there.name()));
      groups.add(group);
    }
    Genome genome = Genome.of(groups);
    for (LocusDeclared locus : wanted.values()) {
      for (Distortion distortion : locus.distortions()) {
        genome = genome.withDistortion(distortion);
      }
      Optional<SelfIncompatibility> incompatibility = locus.selfIncompatibility();
      if (incompatibility.isPresent()) {
        genome = genome.withSelfIncompatibility(incompatibility.get());
      }
    }
    return genome;
  }

  private LinkageGroup group(String name, LocusDeclared locus) {
    String chromosome = locus.chromosome();
    if (chromosome != null) {
      return onChromosome(chromosome);
    }
    List<String> row = LinkedRow.of(view, name);
    return row.size() == 1 ? LinkageGroup.of(locus.toLocus()) : inRow(row);
  }

  /** Places on a map are enough: what lies between two of them does not part them further. */
  private LinkageGroup onChromosome(String chromosome) {
    List<LinkageGroup.Placed> there = new ArrayList<>();
    for (LocusDeclared other : wanted.values()) {
      if (other.chromosome() != null
          && other.centimorgans() != null
          && other.chromosome().strip().equals(chromosome.strip())) {
        there.add(new LinkageGroup.Placed(other.toLocus(), other.centimorgans()));
      }
    }
    return LinkageGroup.mapped(function, there);
  }

  private LinkageGroup inRow(List<String> row) {
    int first = row.size();
    int last = 0;
    List<Locus> kept = new ArrayList<>();
    for (int i = 0; i < row.size(); i++) {
      LocusDeclared locus = wanted.get(row.get(i));
      if (locus != null) {
        first = Math.min(first, i);
        last = i;
        kept.add(locus.toLocus());
      }
    }
    List<Locus> loci = new ArrayList<>();
    List<Fraction> between = new ArrayList<>();
    for (int i = first; i <= last; i++) {
      loci.add(References.locus(view, row.get(i)).toLocus());
      if (i > first) {
        between.add(LinkedRow.recombination(view, row.get(i - 1), row.get(i)));
      }
    }
    return new LinkageGroup(loci, between, true).only(kept);
  }
}
