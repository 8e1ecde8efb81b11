package dev.filial.core.name;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * Which names are synonyms of which: an immutable map from a name's {@link TaxonName#key} to the
 * name that is accepted for it, followed to its end.
 */
public final class Synonymy {
  private static final Synonymy NONE = new Synonymy(Map.of());

  private final Map<String, TaxonName> acceptedByKey;

  private Synonymy(Map<String, TaxonName> acceptedByKey) {
    this.acceptedByKey = Map.copyOf(acceptedByKey);
  }

  /** No synonyms: every name is accepted as it is. */
  public static Synonymy none() {
    return NONE;
  }

  /**
   * The synonymy that {@code accepted} states, each name with the one to take instead. What is
   * taken instead may be a synonym itself. Every name is walked over once.
   *
   * @throws IllegalArgumentException if names lead in a circle, or one name (up to authors and the
   *     like) leads to two; the message names them
   */
  public static Synonymy of(Map<TaxonName, TaxonName> accepted) {
    Map<String, TaxonName> step = new LinkedHashMap<>();
    accepted.forEach(
        (synonym, name) -> {
          TaxonName other = step.put(synonym.key(), name);
          if (other != null && !other.isSameNameAs(name)) {
            throw new IllegalArgumentException(
                synonym + " is called a synonym of " + other + " and of " + name + "; keep one.");
          }
        });
    Map<String, TaxonName> ends = new HashMap<>();
    for (Map.Entry<String, TaxonName> start : step.entrySet()) {
      Set<String> passed = new LinkedHashSet<>();
      TaxonName end = end(start, step, ends, passed);
      passed.forEach(key -> ends.put(key, end));
    }
    return new Synonymy(ends);
  }

  private static TaxonName end(
      Map.Entry<String, TaxonName> start,
      Map<String, TaxonName> step,
      Map<String, TaxonName> known,
      Set<String> passed) {
    passed.add(start.getKey());
    TaxonName name = start.getValue();
    while (true) {
      TaxonName end = known.get(name.key());
      if (end != null) {
        return end;
      }
      TaxonName next = step.get(name.key());
      if (next == null) {
        return name;
      }
      if (!passed.add(name.key())) {
        throw new IllegalArgumentException(
            name
                + " would be a synonym of itself, by way of "
                + String.join(", ", passed)
                + "; one of these must be the accepted name.");
      }
      name = next;
    }
  }

  /** The accepted name for {@code name}, which is {@code name} itself if it is no synonym. */
  public TaxonName accepted(TaxonName name) {
    return acceptedByKey.getOrDefault(name.key(), name);
  }

  /** Whether another name is accepted for this one. */
  public boolean isSynonym(TaxonName name) {
    return acceptedByKey.containsKey(name.key());
  }

  /** Whether two names are one taxon: the same name is accepted for both. */
  public boolean isSameTaxon(TaxonName one, TaxonName other) {
    return accepted(one).isSameNameAs(accepted(other));
  }
}
