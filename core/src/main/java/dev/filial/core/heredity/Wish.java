package dev.filial.core.heredity;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The plant that is wanted: states that it shows, alleles that it carries, traits for which it is
 * to breed true, all of these together.
 */
public final class Wish {

  /** The states of each model that will do. */
  private final Map<TraitModel, Set<String>> shown;

  /** For which traits it is to breed true; the state it is to breed true for, if that was said. */
  private final Map<TraitModel, Optional<String>> breedingTrue;

  private final List<String> words;

  private Wish(
      Map<TraitModel, Set<String>> shown,
      Map<TraitModel, Optional<String>> breedingTrue,
      List<String> words) {
    this.shown = shown;
    this.breedingTrue = breedingTrue;
    this.words = List.copyOf(words);
  }

  /** Any plant. */
  public static Wish any() {
    return new Wish(Map.of(), Map.of(), List.of());
  }

  /**
   * A plant that shows one of these states.
   *
   * @throws IllegalArgumentException if none is named, or the trait has not one of them
   */
  public static Wish showing(TraitModel model, String... states) {
    return any().andShowing(model, states);
  }

  /**
   * The same that also shows one of these states.
   *
   * @throws IllegalArgumentException if none is named, the trait has not one of them, or what was
   *     wished before leaves none of them
   */
  public Wish andShowing(TraitModel model, String... states) {
    Set<String> wanted = new LinkedHashSet<>(List.of(states));
    if (wanted.isEmpty()) {
      throw new IllegalArgumentException("say which state of " + model.trait() + " is wanted");
    }
    wanted.forEach(model::requireState);
    Map<TraitModel, Set<String>> all = new LinkedHashMap<>(shown);
    Set<String> before = all.get(model);
    if (before != null) {
      wanted.retainAll(before);
      if (wanted.isEmpty()) {
        throw new IllegalArgumentException(
            "a plant cannot show "
                + String.join(", ", before)
                + " and "
                + String.join(", ", states)
                + " of "
                + model.trait()
                + " at once");
      }
    }
    all.put(model, wanted);
    return new Wish(all, breedingTrue, with(model.trait() + " " + String.join(" or ", states)));
  }

  /** The same that also fits these patterns: {@code rr}, {@code R_ gg}. */
  public Wish andCarrying(List<Pattern> patterns) {
    TraitModel fits = TraitModel.fitting(patterns);
    Map<TraitModel, Set<String>> all = new LinkedHashMap<>(shown);
    all.put(fits, Set.of(TraitModel.FITS));
    return new Wish(all, breedingTrue, with(fits.trait()));
  }

  /**
   * The same that also breeds true: all that comes of it by selfing, for good, shows one state and
   * no other.
   */
  public Wish andBreedingTrue(TraitModel model) {
    return breedingTrue(model, Optional.empty(), "true-breeding for " + model.trait());
  }

  /**
   * The same that also breeds true for that state.
   *
   * @throws IllegalArgumentException if the trait has it not, or another was wished before
   */
  public Wish andBreedingTrue(TraitModel model, String state) {
    model.requireState(state);
    return breedingTrue(
        model, Optional.of(state), "true-breeding for " + model.trait() + " " + state);
  }

  private Wish breedingTrue(TraitModel model, Optional<String> state, String said) {
    Map<TraitModel, Optional<String>> all = new LinkedHashMap<>(breedingTrue);
    Optional<String> before = all.getOrDefault(model, Optional.empty());
    if (before.isPresent() && state.isPresent() && !before.equals(state)) {
      throw new IllegalArgumentException(
          "a plant cannot breed true for "
              + before.get()
              + " and "
              + state.get()
              + " of "
              + model.trait()
              + " at once");
    }
    all.put(model, before.or(() -> state));
    return new Wish(shown, all, with(said));
  }

  private List<String> with(String said) {
    List<String> all = new ArrayList<>(words);
    all.add(said);
    return all;
  }

  /**
   * How likely a plant of known genotype is such a one: 0 or 1, unless a state fails to show now
   * and then.
   *
   * @throws IllegalArgumentException if a table does not cover the plant
   */
  public Fraction chanceOf(Genotype plant) {
    models().forEach(model -> model.requireComplete(plant.ploidy()));
    return Seedlings.of(plant).chance(this, Set.of());
  }

  /** In words, as {@code edge green, true-breeding for edge}. */
  public String text() {
    return words.isEmpty() ? "any" : String.join(", ", words);
  }

  /** The part of it that these tables speak of. */
  Wish only(List<TraitModel> models) {
    Map<TraitModel, Set<String>> someShown = new LinkedHashMap<>(shown);
    someShown.keySet().retainAll(models);
    Map<TraitModel, Optional<String>> someTrue = new LinkedHashMap<>(breedingTrue);
    someTrue.keySet().retainAll(models);
    return new Wish(someShown, someTrue, words);
  }

  /** All tables that it leans on. */
  Set<TraitModel> models() {
    Set<TraitModel> models = new LinkedHashSet<>(shown.keySet());
    models.addAll(breedingTrue.keySet());
    return models;
  }

  Map<TraitModel, Set<String>> shown() {
    return shown;
  }

  Map<TraitModel, Optional<String>> breedingTrue() {
    return breedingTrue;
  }
}
