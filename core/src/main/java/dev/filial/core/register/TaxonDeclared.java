package dev.filial.core.register;

import dev.filial.core.number.Fraction;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a taxon, beside its name.
 *
 * @param name the accepted name
 * @param synonyms other names of the same taxon
 * @param within the taxon it counts into when asked (a subspecies into its species), or null
 * @param ploidy chromosome sets, 1 to 32, or null when not known (taken as 2)
 * @param shortName what to write on a tag, or null
 * @param hybrid whether it is a hybrid taxon, and so never pure
 * @param makeup stated shares per taxon of a hybrid taxon; empty when not stated
 * @param selfIncompatible whether its own pollen fails on it
 * @param remark anything else, or null
 */
public record TaxonDeclared(
    String name,
    List<String> synonyms,
    @Nullable String within,
    @Nullable Integer ploidy,
    @Nullable String shortName,
    boolean hybrid,
    Map<String, Fraction> makeup,
    boolean selfIncompatible,
    @Nullable String remark)
    implements Statement {

  /**
   * Checks what can be seen from the statement alone.
   *
   * @throws IllegalArgumentException if a name cannot be read, the shares exceed 1, or the taxon is
   *     named as its own synonym
   */
  public TaxonDeclared {
    Require.text("name", name);
    synonyms = List.copyOf(synonyms);
    makeup = Collections.unmodifiableMap(new LinkedHashMap<>(makeup));
    Determination.requireShares(makeup);
    Determination.requirePloidy(ploidy);
    Subject own = Subject.taxon(name);
    for (String synonym : synonyms) {
      if (Subject.taxon(synonym).equals(own)) {
        throw new IllegalArgumentException(
            "\"" + synonym + "\" is given as a synonym of itself; leave it out");
      }
    }
    if (within != null && Subject.taxon(within).equals(own)) {
      throw new IllegalArgumentException("\"" + name + "\" cannot count into itself");
    }
  }

  @Override
  public Set<Subject> subjects() {
    Set<Subject> subjects = new LinkedHashSet<>();
    subjects.add(Subject.taxon(name));
    synonyms.forEach(synonym -> subjects.add(Subject.taxon(synonym)));
    return Set.copyOf(subjects);
  }

  @Override
  public Set<Subject> mentions() {
    Set<Subject> taxa = new LinkedHashSet<>();
    if (within != null) {
      taxa.add(Subject.taxon(within));
    }
    makeup.keySet().forEach(taxon -> taxa.add(Subject.taxon(taxon)));
    return Set.copyOf(taxa);
  }
}
