package dev.filial.core.answer;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.ModelDeclared;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All that was declared of genes: the genes, how traits hang on them, what taxa carry. */
public final class GenesQuestion {

  private final RegisterView view;

  private GenesQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static GenesQuestion of(RegisterView view) {
    return new GenesQuestion(view);
  }

  /**
   * A trait and how it is inherited.
   *
   * @param model its table
   * @param text the same in words
   */
  public record Inherited(ModelDeclared model, String text) {}

  /**
   * What a taxon carries.
   *
   * @param taxon its accepted name
   * @param frequencies the frequency of each allele, by gene
   * @param pairing how its chromosomes pair, in a word; empty if nothing is stated
   * @param map how many chromosomes a set has and how long they are; empty if nothing is stated
   */
  public record Carried(
      String taxon, Map<String, Map<String, Fraction>> frequencies, String pairing, String map) {}

  /**
   * What is known of genes.
   *
   * @param genes the genes by name
   * @param models the traits that have a model, by name
   * @param profiles the taxa of which something is stated
   */
  public record Genes(List<LocusDeclared> genes, List<Inherited> models, List<Carried> profiles) {}

  /** Answers. */
  public Genes ask() {
    List<Inherited> models = new ArrayList<>();
    for (TraitDeclared trait : view.traits()) {
      Optional<ModelDeclared> model = view.model(Subject.trait(trait.trait()).key());
      model.ifPresent(found -> models.add(new Inherited(found, Telling.of(found))));
    }
    return new Genes(view.loci(), List.copyOf(models), profiles());
  }

  /** The traits of which it is said how they are inherited, by name. */
  public static List<String> modelled(RegisterView view) {
    return view.traits().stream()
        .map(TraitDeclared::trait)
        .filter(trait -> view.model(Subject.trait(trait).key()).isPresent())
        .toList();
  }

  private List<Carried> profiles() {
    Map<String, Carried> byTaxon = new LinkedHashMap<>();
    for (String key : view.keys(Subject.Kind.TAXON)) {
      for (long entry : view.entriesOn(new Subject(Subject.Kind.TAXON, key))) {
        if (view.effective(entry).orElseThrow() instanceof ProfileStated said) {
          String name = view.accepted(said.taxon()).name();
          view.profile(said.taxon())
              .ifPresent(profile -> byTaxon.putIfAbsent(name, carried(name, profile)));
        }
      }
    }
    return List.copyOf(byTaxon.values());
  }

  private static Carried carried(String name, ProfileStated profile) {
    ProfileStated.Pairing pairing = profile.pairing();
    Fraction doubled = profile.doubleReduction();
    String word =
        pairing == null
            ? ""
            : pairing == ProfileStated.Pairing.DISOMIC
                ? "disomic"
                : "tetrasomic" + (doubled == null ? "" : ", double reduction " + doubled);
    return new Carried(
        name, profile.frequencies(), word, profile.geneticMap().map(GeneticMap::text).orElse(""));
  }
}
