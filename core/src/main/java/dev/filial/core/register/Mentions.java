package dev.filial.core.register;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The plants and taxa that the parts of a statement lean on. */
final class Mentions {

  private Mentions() {}

  /** What a statement calls for care in, under which it is found again, and further subjects. */
  static Set<Subject> with(Set<Caution> cautions, Subject... more) {
    if (cautions.isEmpty()) {
      return Set.of(more);
    }
    Set<Subject> subjects = new LinkedHashSet<>();
    cautions.forEach(caution -> subjects.add(Subject.of(caution)));
    Collections.addAll(subjects, more);
    return Set.copyOf(subjects);
  }

  static Set<Subject> taxa(Determination determination) {
    Set<Subject> taxa = new LinkedHashSet<>();
    if (determination.taxon() != null) {
      taxa.add(Subject.taxon(determination.taxon()));
    }
    determination.makeup().keySet().forEach(name -> taxa.add(Subject.taxon(name)));
    return Set.copyOf(taxa);
  }

  static Set<Subject> pollen(Pollen pollen) {
    if (pollen instanceof Pollen.OnePlant one) {
      return Set.of(Subject.of(one.plant()));
    }
    if (pollen instanceof Pollen.Mix mix) {
      return plants(mix.plants());
    }
    return pollen instanceof Pollen.Open open ? plants(open.candidates()) : Set.of();
  }

  private static Set<Subject> plants(List<Weighted> plants) {
    Set<Subject> subjects = new LinkedHashSet<>();
    plants.forEach(weighted -> subjects.add(Subject.of(weighted.plant())));
    return Set.copyOf(subjects);
  }
}
