package dev.filial.core.inference;

import dev.filial.core.heredity.GenomeStates;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.pedigree.Pedigree;
import java.util.ArrayList;
import java.util.List;

/**
 * Whose odds are worked out, and of which genes.
 *
 * @param models the tables of the traits that were seen or are asked about
 * @param losses tables nobody asked about by which seedlings die
 */
record Genetics(
    Pedigree pedigree, GenomeStates states, List<TraitModel> models, List<TraitModel> losses) {

  Genetics {
    models = List.copyOf(models);
    losses = List.copyOf(losses);
  }

  /** All tables by which seedlings die. */
  List<TraitModel> killing() {
    List<TraitModel> killing = new ArrayList<>(losses);
    models.stream().filter(TraitModel::touchesLife).forEach(killing::add);
    return killing;
  }

  /** How many linkage groups there are. */
  int groups() {
    return states.genome().groups().size();
  }

  /**
   * The table of a trait.
   *
   * @throws IllegalArgumentException if it has none
   */
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
}
