package dev.filial.core.answer;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.register.DeclaredGenome;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The genes that a question about some traits turns on: those of the traits' models, and those on
 * the same chromosomes at which seedlings die or pollen is refused.
 *
 * @param genome the genes
 * @param models the models of the traits asked about, in their order
 * @param losses models nobody asked about by which seedlings die
 * @param uneven genes on the same chromosomes that are handed on unevenly and were left out
 * @param refusing the name of the S locus that belongs in it but was left out, if one was
 */
record GenesInPlay(
    Genome genome,
    List<TraitModel> models,
    List<TraitModel> losses,
    List<String> uneven,
    Optional<String> refusing) {

  /**
   * For these traits.
   *
   * @param withRefusal whether an S locus linked to them is reckoned with
   * @throws RegisterRefusal if a trait is not declared or has no model
   */
  static GenesInPlay of(
      RegisterView view, List<String> traits, MapFunction function, boolean withRefusal) {
    List<TraitModel> models = new ArrayList<>();
    Set<String> loci = new LinkedHashSet<>();
    for (String trait : new LinkedHashSet<>(traits)) {
      ModelDeclared model = required(view, trait);
      models.add(built(view, model));
      loci.addAll(model.loci());
    }
    List<LocusDeclared> declared = view.loci();
    Set<String> near = near(declared, loci);
    List<TraitModel> losses = new ArrayList<>();
    for (TraitDeclared trait : view.traits()) {
      Optional<ModelDeclared> model = view.model(Subject.trait(trait.trait()).key());
      if (model.isPresent() && model.get().loci().stream().anyMatch(near::contains)) {
        TraitModel other = built(view, model.get());
        if (other.touchesLife() && models.stream().noneMatch(other::equals)) {
          losses.add(other);
          loci.addAll(model.get().loci());
        }
      }
    }
    Optional<String> refusing = Optional.empty();
    for (LocusDeclared locus : declared) {
      if (locus.incompatibility() && near(declared, loci).contains(locus.locus())) {
        if (withRefusal || loci.contains(locus.locus())) {
          loci.add(locus.locus());
        } else {
          refusing = Optional.of(locus.locus());
        }
      }
    }
    Set<String> all = near(declared, loci);
    List<String> uneven =
        declared.stream()
            .filter(locus -> !locus.eggs().isEmpty() || !locus.pollen().isEmpty())
            .map(LocusDeclared::locus)
            .filter(locus -> all.contains(locus) && !loci.contains(locus))
            .toList();
    return new GenesInPlay(
        DeclaredGenome.of(view, List.copyOf(loci), function),
        List.copyOf(models),
        List.copyOf(losses),
        uneven,
        refusing);
  }

  /** The model of one of these traits. */
  TraitModel model(String trait) {
    return models.stream()
        .filter(model -> model.trait().equals(trait))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(trait + " is not asked about"));
  }

  /** The models of these traits and all by which seedlings die. */
  List<TraitModel> all() {
    List<TraitModel> all = new ArrayList<>(models);
    all.addAll(losses);
    return all;
  }

  /** That genes which are handed on unevenly were left out, a sentence each. */
  List<String> unevenNotes() {
    return uneven.stream()
        .map(
            gene ->
                "The gene "
                    + gene
                    + " lies on the same chromosome and is handed on unevenly, which shifts these"
                    + " odds; it is not reckoned with. Ask for a trait that goes by it too.")
        .toList();
  }

  static ModelDeclared required(RegisterView view, String trait) {
    TraitDeclared declared = view.requiredTrait(trait);
    return view.model(Subject.trait(declared.trait()).key())
        .orElseThrow(
            () ->
                new RegisterRefusal(
                    "nobody said how "
                        + declared.trait()
                        + " is inherited, so there are no odds to reckon; declare a model of it, or"
                        + " ask for a forecast from like crosses"));
  }

  static TraitModel built(RegisterView view, ModelDeclared model) {
    List<Locus> loci = new ArrayList<>();
    for (String name : model.loci()) {
      view.locus(name).ifPresent(locus -> loci.add(locus.toLocus()));
    }
    return model.toModel(loci, view.requiredTrait(model.trait()).states());
  }

  /** These loci and all that lie on a chromosome with one of them. */
  private static Set<String> near(List<LocusDeclared> declared, Set<String> loci) {
    Set<String> near = new HashSet<>(loci);
    boolean grown = true;
    while (grown) {
      grown = false;
      for (LocusDeclared one : declared) {
        for (LocusDeclared other : declared) {
          if (near.contains(one.locus())
              && !near.contains(other.locus())
              && areTogether(one, other)) {
            grown |= near.add(other.locus());
          }
        }
      }
    }
    return near;
  }

  private static boolean areTogether(LocusDeclared one, LocusDeclared other) {
    return (one.chromosome() != null && one.chromosome().equals(other.chromosome()))
        || one.locus().equals(other.linkedTo())
        || other.locus().equals(one.linkedTo());
  }
}
