package dev.filial.core.answer;

import dev.filial.core.heredity.Interaction;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Turns what a grower says of the inheritance of a trait into its table: row by row, or in short by
 * dominance or by the ratio of a second generation.
 */
public final class TableReading {

  private final GeneReading genes;
  private final TraitDeclared trait;
  private final List<String> named;
  private final List<String> states;
  private final List<String> dying;

  private TableReading(
      GeneReading genes,
      TraitDeclared trait,
      List<String> named,
      List<String> states,
      List<String> dying) {
    this.genes = genes;
    this.trait = trait;
    this.named = List.copyOf(named);
    this.states = List.copyOf(states);
    this.dying = List.copyOf(dying);
  }

  /**
   * Of a trait of that name.
   *
   * @throws RegisterRefusal if there is none, or it has no states
   */
  public static TableReading of(RegisterView view, String trait) {
    TraitDeclared found = view.requiredTrait(trait);
    if (found.states().isEmpty()) {
      throw new RegisterRefusal(
          found.trait()
              + " is scored or measured; a table of genes can be had of a trait with states only");
    }
    return new TableReading(GeneReading.in(view), found, List.of(), found.states(), List.of());
  }

  /** The same with these genes meant, instead of being found by the symbols of their alleles. */
  public TableReading withGenes(List<String> names) {
    return new TableReading(genes, trait, names, states, dying);
  }

  /** The same with the states in another order, or one of them several times. */
  public TableReading withStates(List<String> inOrder) {
    return new TableReading(genes, trait, named, inOrder.stream().map(this::state).toList(), dying);
  }

  /** The same with genotypes that die before they can be looked at, each written as in a row. */
  public TableReading withDying(List<String> genotypes) {
    return new TableReading(genes, trait, named, states, genotypes);
  }

  /** The trait as it was declared. */
  public TraitDeclared trait() {
    return trait;
  }

  /** The state that was typed, in the case in which it was declared. */
  public String state(String typed) {
    return trait.states().stream()
        .filter(typed.strip()::equalsIgnoreCase)
        .findFirst()
        .orElse(typed.strip());
  }

  /**
   * A table row by row, genotypes that die before all others.
   *
   * @throws RegisterRefusal if its genes cannot be found
   * @throws IllegalArgumentException if a row cannot be read or shows what is no state
   */
  public TraitModel rows(List<ModelDeclared.Row> rows) {
    List<ModelDeclared.Row> all = new ArrayList<>();
    dying.forEach(genotype -> all.add(ModelDeclared.Row.lethal(genotype)));
    for (ModelDeclared.Row row : rows) {
      Map<String, Fraction> shows = new LinkedHashMap<>();
      row.shows().forEach((typed, chance) -> shows.merge(state(typed), chance, Fraction::plus));
      all.add(new ModelDeclared.Row(row.genes(), shows, row.lost()));
    }
    List<Locus> loci = loci(all.stream().map(ModelDeclared.Row::genes).toList());
    return new ModelDeclared(trait.trait(), loci.stream().map(Locus::name).toList(), all, null)
        .toModel(loci, trait.states());
  }

  /**
   * What shows is the state of the most dominant allele a plant carries.
   *
   * @throws IllegalArgumentException if the states are not as many as the alleles
   */
  public TraitModel dominant(LocusDeclared gene) {
    return withDying(TraitModel.dominant(trait.trait(), gene.toLocus(), states));
  }

  /**
   * Three states: of the first allele alone, of both, of the second alone.
   *
   * @throws IllegalArgumentException if there are not three states or not two alleles
   */
  public TraitModel intermediate(LocusDeclared gene) {
    return withDying(TraitModel.intermediate(trait.trait(), gene.toLocus(), states));
  }

  /**
   * Two genes that together throw a ratio in the second generation.
   *
   * @throws IllegalArgumentException if the states are not as many as the ratio has terms
   */
  public TraitModel interaction(Interaction interaction, LocusDeclared one, LocusDeclared other) {
    return withDying(
        TraitModel.interaction(trait.trait(), interaction, one.toLocus(), other.toLocus(), states));
  }

  private TraitModel withDying(TraitModel model) {
    TraitModel grown = model;
    for (String genotype : dying) {
      Set<Locus> known = new LinkedHashSet<>(grown.loci());
      known.addAll(loci(List.of(genotype)));
      grown = grown.withLethal(Pattern.read(List.copyOf(known), genotype));
    }
    return grown;
  }

  /** The genes that were said to be meant, or else those that the texts are made of. */
  private List<Locus> loci(List<String> texts) {
    List<String> names = named.isEmpty() ? genes.meant(texts) : named;
    return names.stream()
        .map(
            name ->
                genes
                    .called(name)
                    .map(LocusDeclared::toLocus)
                    .orElseThrow(
                        () ->
                            new RegisterRefusal(
                                "no gene is called \"" + name + "\"; declare it first")))
        .toList();
  }
}
