package dev.filial.core.inference;

import dev.filial.core.heredity.Meiosis;
import dev.filial.core.number.Fraction;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * What is taken of a pedigree that the pedigree itself does not say. Immutable.
 *
 * @param tetraploids how plants of four sets make gametes: {@link Meiosis.Tetrasomic} or, of two
 *     subgenomes, {@link Meiosis.Reduced}
 * @param sports plants that differ from what they were taken from
 * @param onePollinator plants whose pollen parent was drawn once for all of them, and what that
 *     drawing is called
 * @param otherPollen plants whose pollen parent is to be some unknown plant, the same for all that
 *     bear one name here
 * @param unknownOrigin plants of whose origin nothing is to be taken from the pedigree
 */
record Assumptions(
    Meiosis tetraploids,
    Set<String> sports,
    Map<String, String> onePollinator,
    Map<String, String> otherPollen,
    Set<String> unknownOrigin) {

  Assumptions {
    sports = Set.copyOf(sports);
    onePollinator = Map.copyOf(onePollinator);
    otherPollen = Map.copyOf(otherPollen);
    unknownOrigin = Set.copyOf(unknownOrigin);
  }

  static Assumptions plain() {
    return new Assumptions(
        Meiosis.tetrasomic(Fraction.ZERO), Set.of(), Map.of(), Map.of(), Set.of());
  }

  boolean isDisomic() {
    return !(tetraploids instanceof Meiosis.Tetrasomic);
  }

  Assumptions withTetraploids(Meiosis meiosis) {
    return new Assumptions(meiosis, sports, onePollinator, otherPollen, unknownOrigin);
  }

  Assumptions withSports(Set<String> plants) {
    return new Assumptions(tetraploids, plants, onePollinator, otherPollen, unknownOrigin);
  }

  Assumptions withOnePollinator(Set<String> plants, String name) {
    return new Assumptions(
        tetraploids, sports, grown(onePollinator, plants, name), otherPollen, unknownOrigin);
  }

  Assumptions withOtherPollen(Set<String> plants, String name) {
    return new Assumptions(
        tetraploids, sports, onePollinator, grown(otherPollen, plants, name), unknownOrigin);
  }

  Assumptions withUnknownOrigin(Set<String> plants) {
    Set<String> all = new HashSet<>(unknownOrigin);
    all.addAll(plants);
    return new Assumptions(tetraploids, sports, onePollinator, otherPollen, all);
  }

  private static Map<String, String> grown(
      Map<String, String> named, Set<String> plants, String name) {
    Map<String, String> all = new HashMap<>(named);
    plants.forEach(plant -> all.put(plant, name));
    return all;
  }
}
