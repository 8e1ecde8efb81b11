package dev.filial.core.answer;

import dev.filial.core.heredity.Pattern;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.register.RegisterRefusal;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A seedling that is wanted.
 *
 * @param states the states it is to show, by trait
 * @param genes what it is to carry, as {@code R_ gg}; null for anything
 * @param breedingTrue the traits for which it is to breed true
 * @param atLeast how many are wanted, 1 or more
 * @param certainty how sure that is to be, between 0 and 1
 * @param rates germination and survival, in order; possibly none
 */
public record Wanted(
    List<State> states,
    @Nullable String genes,
    List<String> breedingTrue,
    int atLeast,
    double certainty,
    List<SeedRate> rates) {
  /** Copies the lists. */
  public Wanted {
    states = List.copyOf(states);
    breedingTrue = List.copyOf(breedingTrue);
    rates = List.copyOf(rates);
  }

  /**
   * A state of a trait.
   *
   * @param trait the trait
   * @param state the state
   */
  public record State(String trait, String state) {}

  /** It in words; of one trait the state says enough. */
  String words(GenesInPlay inPlay, Wish wish) {
    if (states.size() != 1 || genes != null || breedingTrue.size() > 1) {
      return wish.text();
    }
    State only = states.get(0);
    TraitModel model = model(inPlay, only.trait());
    String state = spelt(model, only.state());
    if (breedingTrue.isEmpty()) {
      return state;
    }
    return model(inPlay, breedingTrue.get(0)).equals(model)
        ? state + " and breed true for it"
        : wish.text();
  }

  /** All of it as heredity reckons with it. */
  Wish wish(GenesInPlay inPlay) {
    Wish wish = shown(inPlay);
    if (genes != null) {
      wish = wish.andCarrying(Pattern.read(inPlay.genome().loci(), genes));
    }
    for (String trait : breedingTrue) {
      TraitModel model = model(inPlay, trait);
      Optional<State> state =
          states.stream().filter(one -> model(inPlay, one.trait()).equals(model)).findFirst();
      wish =
          state.isPresent()
              ? wish.andBreedingTrue(model, spelt(model, state.get().state()))
              : wish.andBreedingTrue(model);
    }
    return wish;
  }

  /** What of it can be seen on the plant itself. */
  Wish shown(GenesInPlay inPlay) {
    Wish wish = Wish.any();
    for (State one : states) {
      TraitModel model = model(inPlay, one.trait());
      wish = wish.andShowing(model, spelt(model, one.state()));
    }
    return wish;
  }

  private static String spelt(TraitModel model, String state) {
    return model.states().stream().filter(state::equalsIgnoreCase).findFirst().orElse(state);
  }

  private static TraitModel model(GenesInPlay inPlay, String trait) {
    return inPlay.models().stream()
        .filter(model -> model.trait().equalsIgnoreCase(trait.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                new RegisterRefusal(
                    "\"" + trait + "\" is wanted but is not among the traits asked about"));
  }
}
