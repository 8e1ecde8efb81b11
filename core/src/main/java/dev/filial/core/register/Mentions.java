package dev.filial.core.register;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The plants and taxa that the parts of a statement lean on. */
final class Mentions {

  private Mentions() {}

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
