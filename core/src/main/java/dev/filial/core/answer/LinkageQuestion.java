package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import java.util.Optional;

/** How many numbered seedlings of a family showed which states of two traits together. */
public final class LinkageQuestion {

  private final RegisterView view;

  private LinkageQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static LinkageQuestion of(RegisterView view) {
    return new LinkageQuestion(view);
  }

  /**
   * Seedlings by two traits of two states each.
   *
   * @param family the cross
   * @param first the first trait, and its states in order
   * @param second the second trait, and its states in order
   * @param both how many showed the first state of both
   * @param firstAlone how many the first of the first and the second of the second
   * @param secondAlone how many the second of the first and the first of the second
   * @param neither how many showed the second state of both
   * @param picked how many were left out because they were picked for one of the traits
   */
  public record PairCounts(
      Code family,
      TraitDeclared first,
      TraitDeclared second,
      long both,
      long firstAlone,
      long secondAlone,
      long neither,
      long picked) {}

  /**
   * Counts a family.
   *
   * @throws RegisterRefusal if a trait is not declared or has not just two states, or no seedling
   *     was seen for both
   */
  public PairCounts ask(Code family, String first, String second) {
    TraitDeclared one = twoStates(first);
    TraitDeclared other = twoStates(second);
    LastSeen seenOne = LastSeen.of(view, first);
    LastSeen seenOther = LastSeen.of(view, second);
    if (seenOne.isOf(second)) {
      throw new RegisterRefusal("linkage is between two traits; name another beside " + first);
    }
    Item item = Things.required(view, family);
    long[] counts = new long[4];
    long picked = 0;
    for (Code code : view.codesUnder(item.code().whole())) {
      Optional<Item> seedling = code.isSeedling() ? view.item(code) : Optional.empty();
      Optional<String> here = seedling.flatMap(found -> seenOne.value(code));
      Optional<String> there = seedling.flatMap(found -> seenOther.value(code));
      if (here.isEmpty() || there.isEmpty()) {
        continue;
      }
      if (seenOne.isPicked(seedling.orElseThrow()) || seenOther.isPicked(seedling.orElseThrow())) {
        picked++;
      } else {
        int place = one.states().get(0).equals(here.get()) ? 0 : 2;
        counts[place + (other.states().get(0).equals(there.get()) ? 0 : 1)]++;
      }
    }
    if (counts[0] + counts[1] + counts[2] + counts[3] == 0) {
      throw new RegisterRefusal(
          "no numbered seedling of "
              + item.code().whole().text()
              + " was seen for both "
              + one.trait()
              + " and "
              + other.trait()
              + (picked > 0 ? " save those picked for one of them" : "")
              + "; a tally counts one trait alone and cannot tell");
    }
    return new PairCounts(
        item.code().whole(), one, other, counts[0], counts[1], counts[2], counts[3], picked);
  }

  private TraitDeclared twoStates(String trait) {
    TraitDeclared declared = view.requiredTrait(trait);
    if (declared.states().size() != 2) {
      throw new RegisterRefusal(
          declared.trait()
              + " has not two states, the dominant one first; linkage is estimated between two such"
              + " traits");
    }
    return declared;
  }
}
