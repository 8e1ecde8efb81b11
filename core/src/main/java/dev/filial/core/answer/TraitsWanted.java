package dev.filial.core.answer;

import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The traits by which it is seen whether a plant carries what is wanted. */
final class TraitsWanted {

  private TraitsWanted() {}

  /**
   * Those that are mentioned, and of each gene that is mentioned one that it shows by.
   *
   * @throws RegisterRefusal if nothing is mentioned, a trait is not declared or has no model, or no
   *     trait goes by a gene
   */
  static List<String> of(RegisterView view, Wanted wanted) {
    Set<String> named = new LinkedHashSet<>();
    wanted.states().forEach(state -> named.add(view.requiredTrait(state.trait()).trait()));
    wanted.breedingTrue().forEach(trait -> named.add(view.requiredTrait(trait).trait()));
    Set<String> loci = new HashSet<>();
    named.forEach(trait -> loci.addAll(GenesInPlay.required(view, trait).loci()));
    String text = wanted.genes();
    if (text != null) {
      for (String gene : GeneReading.in(view).meant(List.of(text))) {
        if (!loci.contains(gene)) {
          TraitDeclared trait = goingBy(view, gene);
          named.add(trait.trait());
          loci.addAll(GenesInPlay.required(view, trait.trait()).loci());
        }
      }
    }
    if (named.isEmpty()) {
      throw new RegisterRefusal("say what the seedling you hope for is to show or to carry");
    }
    return List.copyOf(named);
  }

  private static TraitDeclared goingBy(RegisterView view, String gene) {
    Map<TraitDeclared, ModelDeclared> models = new LinkedHashMap<>();
    for (TraitDeclared trait : view.traits()) {
      view.model(Subject.trait(trait.trait()).key())
          .filter(model -> model.loci().contains(gene))
          .ifPresent(model -> models.put(trait, model));
    }
    return models.entrySet().stream()
        .min(Comparator.comparingInt(one -> one.getValue().loci().size()))
        .map(Map.Entry::getKey)
        .orElseThrow(
            () ->
                new RegisterRefusal(
                    "no trait goes by the gene "
                        + gene
                        + ", so nothing that is seen tells who carries it; declare a model of a"
                        + " trait that does"));
  }
}
