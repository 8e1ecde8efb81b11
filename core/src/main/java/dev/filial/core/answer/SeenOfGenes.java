package dev.filial.core.answer;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.Evidence;
import dev.filial.core.name.Code;
import dev.filial.core.register.DeclaredGenome;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Item;
import dev.filial.core.register.Numbered;
import dev.filial.core.register.Observed;
import dev.filial.core.register.Propagated;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Tallied;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What plants and families of a register showed of some traits, and what is stated of their genes.
 *
 * <p>Each seedling counts once for a trait: numbered before its pot, a pot before its sowing, the
 * latest day first. A seedling that was seen by itself is taken out of the tally that counted it.
 */
final class SeenOfGenes {
  private final RegisterView view;
  private final GenesInPlay genes;
  private final List<Evidence> findings = new ArrayList<>();
  private final Set<Code> plants = new LinkedHashSet<>();
  private final Set<String> sports = new HashSet<>();
  private final List<String> notes = new ArrayList<>();

  private SeenOfGenes(RegisterView view, GenesInPlay genes) {
    this.view = view;
    this.genes = genes;
  }

  /** Gathered from a register. */
  static SeenOfGenes in(RegisterView view, GenesInPlay genes) {
    SeenOfGenes seen = new SeenOfGenes(view, genes);
    seen.read();
    return seen;
  }

  /** What was seen and stated, entry by entry. */
  List<Evidence> evidence() {
    return findings;
  }

  /** The plants and families it is of. */
  Set<Code> plants() {
    return plants;
  }

  /** Ramets that differ from their source in a trait. */
  Set<String> sports() {
    return sports;
  }

  /** What was left out or may count twice, a sentence each. */
  List<String> notes() {
    return notes;
  }

  private void read() {
    for (TraitModel model : genes.models()) {
      ofTrait(model);
    }
    for (Locus locus : genes.genome().loci()) {
      for (long entry : view.entriesMentioning(Subject.locus(locus.name()))) {
        if (view.effective(entry).orElse(null) instanceof GenotypeStated stated
            && isFirst(stated, locus)) {
          stated(entry, stated);
        }
      }
    }
  }

  /** An entry that states several genes is read once. */
  private boolean isFirst(GenotypeStated stated, Locus locus) {
    return genes.genome().loci().stream()
        .filter(one -> stated.loci().contains(one.name()))
        .findFirst()
        .filter(locus::equals)
        .isPresent();
  }

  private void stated(long entry, GenotypeStated stated) {
    plants.add(stated.code());
    Genome genome = genes.genome();
    List<Locus> named =
        genome.loci().stream().filter(locus -> stated.loci().contains(locus.name())).toList();
    boolean whole = named.size() == genome.loci().size() && stated.loci().size() == named.size();
    // Of some of the genes, or of more than are asked about, it is read as it was written: how
    // linked ones lie together holds for any of them.
    Genome ofThese = whole ? genome : DeclaredGenome.of(view, stated.loci(), MapFunction.HALDANE);
    findings.add(
        Evidence.Carried.of(
            stated.code().text(), ofThese.genotype(stated.genotype()), Long.toString(entry)));
  }

  private void ofTrait(TraitModel model) {
    LastSeen seen = LastSeen.of(view, model.trait());
    Set<Code> looked = new LinkedHashSet<>();
    Set<Code> families = new LinkedHashSet<>();
    for (long entry : view.entriesMentioning(Subject.trait(model.trait()))) {
      Statement statement = view.effective(entry).orElse(null);
      if (statement instanceof Observed observed) {
        looked.add(observed.code());
      } else if (statement instanceof Tallied tallied) {
        families.add(tallied.code().whole());
      } else if (statement instanceof Propagated ramet
          && Clone.isSport(view, ramet.code(), model.trait())) {
        sports.add(ramet.code().text()); // whether it was looked at or not
      }
    }
    Map<Code, Counted> counted = new LinkedHashMap<>();
    for (Code family : families) {
      List<Code> pots = new ArrayList<>();
      for (Code code : view.codesUnder(family)) {
        if ((code.isGroup() || code.isSowing()) && view.item(code).isPresent()) {
          pots.add(code);
        }
      }
      pots.sort(null);
      Tallies its = Tallies.of(view, seen, pots);
      Map<Code, Map<String, Long>> left = new LinkedHashMap<>();
      its.chosen().forEach((pot, tally) -> left.put(pot, new LinkedHashMap<>(tally.counts())));
      counted.put(family, new Counted(its, left));
      notes.addAll(its.notes());
    }
    for (Code code : looked) {
      seen.last(code)
          .ifPresent(
              sighting ->
                  looked(
                      model, seen, code, sighting, Optional.ofNullable(counted.get(code.whole()))));
    }
    counted.values().forEach(family -> counted(model, family));
  }

  /** What is left of a family's tallies, none of it looked at by itself. */
  private void counted(TraitModel model, Counted family) {
    family
        .left()
        .forEach(
            (pot, counts) -> {
              if (counts.values().stream().anyMatch(number -> number > 0)) {
                plants.add(pot.whole());
                findings.add(
                    new Evidence.Counted(
                        pot.whole().text(),
                        model.trait(),
                        counts,
                        Long.toString(family.tallies().entry(pot))));
              }
            });
  }

  private void looked(
      TraitModel model,
      LastSeen seen,
      Code code,
      LastSeen.Sighting sighting,
      Optional<Counted> counted) {
    Optional<Item> item = view.item(code);
    if (item.isEmpty()) {
      return;
    }
    String source = Long.toString(sighting.entry());
    if (!item.get().kind().isPlant()) {
      // One of a pot, without a number: a seedling of its family, unless a tally counted it.
      boolean tallied =
          counted.isPresent()
              && !counted.get().tallies().holdersOfOneIn(code, counted.get().pots()).isEmpty();
      if (!tallied && !item.get().kind().equals(Item.Kind.LOT)) {
        plants.add(code.whole());
        findings.add(
            new Evidence.Counted(
                code.whole().text(), model.trait(), Map.of(sighting.value(), 1L), source));
      }
      return;
    }
    plants.add(code);
    boolean picked = seen.isPicked(item.get());
    if (code.isSeedling()
        && view.effective(item.get().entry()).orElse(null) instanceof Numbered numbered) {
      List<Code> holders =
          counted
              .map(family -> family.tallies().holders(numbered, family.pots()))
              .orElse(List.of());
      if (!holders.isEmpty()) {
        picked = false; // as one of all that were counted
        takeOut(code, sighting.value(), holders, counted.orElseThrow());
      }
    }
    findings.add(new Evidence.Shown(code.text(), model.trait(), sighting.value(), picked, source));
  }

  /** A seedling that was seen by itself leaves the tally that counted it, or may have. */
  private void takeOut(Code code, String state, List<Code> holders, Counted family) {
    for (Code pot : holders) {
      Map<String, Long> counts = family.left().getOrDefault(pot, Map.of());
      long still = counts.getOrDefault(state, 0L);
      if (still > 0) {
        counts.put(state, still - 1);
        return;
      }
    }
    notes.add(
        code.text()
            + " showed "
            + state
            + ", and the tally of "
            + holders.get(0).text()
            + " has none such left to take it out of: it may count twice.");
  }

  /**
   * The tallies of a family that count.
   *
   * @param tallies which they are
   * @param left by pot, how many of each state were not looked at by themselves
   */
  private record Counted(Tallies tallies, Map<Code, Map<String, Long>> left) {
    Set<Code> pots() {
      return left.keySet();
    }
  }
}
