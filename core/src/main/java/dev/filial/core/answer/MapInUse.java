package dev.filial.core.answer;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The genetic map with which a plant of some taxa is reckoned. A taxon has the map stated of it,
 * else of the taxon it counts into, its species, or its genus.
 *
 * @param map the map
 * @param statedFor the name it was stated for; null where none is stated and it is assumed
 * @param notes what the grower should know of it, one sentence each
 */
record MapInUse(GeneticMap map, @Nullable String statedFor, List<String> notes) {

  /** Copies the notes. */
  MapInUse {
    notes = List.copyOf(notes);
  }

  /** A map, and the name it was stated for. */
  private record Stated(String name, GeneticMap map) {}

  /**
   * The map for a plant of these taxa: where they have different ones, that of the first that has
   * one.
   *
   * @param taxa their names, that with the largest share first; may be empty
   * @throws IllegalArgumentException if a name cannot be read
   */
  static MapInUse of(RegisterView view, Collection<String> taxa) {
    Map<String, Stated> found = new LinkedHashMap<>();
    List<String> without = new ArrayList<>();
    for (String taxon : taxa) {
      stated(view, taxon).ifPresentOrElse(map -> found.put(taxon, map), () -> without.add(taxon));
    }
    if (found.isEmpty()) {
      GeneticMap assumed = GeneticMap.assumed();
      return new MapInUse(
          assumed,
          null,
          List.of(
              "No genetic map is stated"
                  + (taxa.isEmpty() ? "" : " for " + String.join(", ", taxa))
                  + "; reckoned with "
                  + assumed.text()
                  + ", which is an assumption."));
    }
    Stated first = found.values().iterator().next();
    List<String> notes = new ArrayList<>();
    for (Stated other : new LinkedHashSet<>(found.values())) {
      if (!other.map().equals(first.map())) {
        notes.add(
            "The maps of "
                + first.name()
                + " and "
                + other.name()
                + " differ; reckoned with that of "
                + first.name()
                + ", "
                + first.map().text()
                + ".");
      }
    }
    if (!without.isEmpty()) {
      notes.add(
          "No genetic map is stated for "
              + String.join(", ", without)
              + "; reckoned with that of "
              + first.name()
              + ", "
              + first.map().text()
              + ".");
    }
    return new MapInUse(first.map(), first.name(), notes);
  }

  /** Whether nobody stated it. */
  boolean isAssumed() {
    return statedFor == null;
  }

  private static Optional<Stated> stated(RegisterView view, String taxon) {
    for (String name : TaxonProfile.upwards(view, taxon)) {
      Optional<GeneticMap> map = view.profile(name).flatMap(ProfileStated::geneticMap);
      if (map.isPresent()) {
        return Optional.of(new Stated(view.accepted(name).name(), map.get()));
      }
    }
    return Optional.empty();
  }
}
