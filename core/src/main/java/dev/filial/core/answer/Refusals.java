package dev.filial.core.answer;

import dev.filial.core.ancestry.ExpectedAncestry;
import dev.filial.core.answer.NextCrosses.Plant;
import dev.filial.core.heredity.Compatibility;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.plan.CrossPath;
import dev.filial.core.plan.Mate;
import dev.filial.core.plan.Setting;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which of some plants refuse whose pollen, their own or another's: by their S alleles, and by what
 * is recorded of their taxa; and what a plan takes for granted of that.
 */
final class Refusals {

  private final RegisterView view;
  private final Pedigree pedigree;
  private final boolean isLocusDeclared;
  private final Optional<String> besideGenes;
  private final Map<Code, Genotype> alleles;
  private final Set<List<Code>> refused;
  private final List<String> notes;

  private Refusals(
      RegisterView view,
      Pedigree pedigree,
      boolean isLocusDeclared,
      Optional<String> besideGenes,
      Map<Code, Genotype> alleles,
      List<String> notes) {
    this.view = view;
    this.pedigree = pedigree;
    this.isLocusDeclared = isLocusDeclared;
    this.besideGenes = besideGenes;
    this.alleles = alleles;
    this.refused = refused(alleles);
    this.notes = notes;
  }

  /**
   * Among these plants.
   *
   * @param genes those that seedlings are chosen by
   * @param pedigree the plants and all behind them
   */
  static Refusals of(RegisterView view, List<Plant> plants, GenesInPlay genes, Pedigree pedigree) {
    List<String> declared =
        view.loci().stream()
            .filter(LocusDeclared::incompatibility)
            .map(LocusDeclared::locus)
            .toList();
    Optional<String> beside =
        genes
            .refusing()
            .or(() -> genes.genome().selfIncompatibility().map(its -> its.locus().name()));
    Map<Code, Genotype> alleles = Map.of();
    List<String> notes = new ArrayList<>();
    if (declared.size() == 1 && !plants.isEmpty()) {
      try {
        alleles = CompatibilityQuestion.of(view).alleles(plants.stream().map(Plant::code).toList());
      } catch (RegisterRefusal e) {
        notes.add(
            "Which plants set seed on which is not reckoned with, for what is recorded of the S"
                + " alleles cannot be true: "
                + FamilyOddsQuestion.reason(e)
                + ".");
      }
    }
    return new Refusals(view, pedigree, !declared.isEmpty(), beside, alleles, notes);
  }

  private static Set<List<Code>> refused(Map<Code, Genotype> alleles) {
    Map<List<Genotype>, Boolean> found = new HashMap<>();
    Set<List<Code>> refused = new HashSet<>();
    alleles.forEach(
        (seed, style) ->
            alleles.forEach(
                (pollen, grains) -> {
                  if (found.computeIfAbsent(List.of(style, grains), Refusals::isRefused)) {
                    refused.add(List.of(seed, pollen));
                  }
                }));
    return refused;
  }

  private static boolean isRefused(List<Genotype> styleAndGrains) {
    return Compatibility.of(styleAndGrains.get(0), styleAndGrains.get(1)).verdict()
        == Compatibility.Verdict.NONE;
  }

  /** Whether pollen of one sets no seed on the other, as far as is known. */
  boolean isRefused(Plant seed, Plant pollen) {
    return refused.contains(List.of(seed.code(), pollen.code()));
  }

  /**
   * The S alleles of a plant, to be followed in seedlings that are chosen by other genes; empty if
   * they are not known, or lie so near those genes that what is chosen is not as all are.
   */
  Optional<Genotype> handedOn(Plant plant) {
    return besideGenes.isPresent()
        ? Optional.empty()
        : Optional.ofNullable(alleles.get(plant.code()));
  }

  /** What was not reckoned with, a sentence each. */
  List<String> notes() {
    return notes;
  }

  /**
   * What a plan takes for granted, a sentence each.
   *
   * @param parents the plants, as the way numbers them
   * @param settings of each season after the first, how likely its matings set seed
   */
  List<String> leaning(CrossPath path, List<Plant> parents, List<Optional<Setting>> settings) {
    Set<String> leaning = new LinkedHashSet<>();
    selfed(parents.get(path.seed()), path.seed() == path.pollen()).ifPresent(leaning::add);
    path.beside()
        .flatMap(its -> selfed(parents.get(its.seed()), its.seed() == its.pollen()))
        .ifPresent(leaning::add);
    if (notes.isEmpty() // or that was said
        && settings.stream().anyMatch(Optional::isEmpty)
        && (isLocusDeclared || plants(path, parents).stream().anyMatch(this::isOfRefusingTaxa))) {
      leaning.add(
          besideGenes
                  .map(locus -> "The S locus " + locus + " lies beside the genes chosen by")
                  .orElse("The S alleles of a parent are not known")
              + ", so it is not reckoned with that what is kept may refuse the pollen of its mate,"
              + " of a sib, or its own: keep more than the plan says, and pollinate several.");
    }
    return List.copyOf(leaning);
  }

  private Optional<String> selfed(Plant plant, boolean is) {
    return is && !alleles.containsKey(plant.code()) && isOfRefusingTaxa(plant)
        ? Optional.of(
            plant.code().text()
                + " ("
                + plant.what()
                + ") is of nothing but taxa recorded as self-incompatible; selfed it may set little"
                + " or nothing.")
        : Optional.empty();
  }

  private static Set<Plant> plants(CrossPath path, List<Plant> parents) {
    Set<Plant> plants = new LinkedHashSet<>();
    plants.add(parents.get(path.seed()));
    plants.add(parents.get(path.pollen()));
    for (CrossPath.Later later : path.later()) {
      if (later.mate() instanceof Mate.Plant plant) {
        plants.add(parents.get(plant.candidate()));
      } else if (later.mate() instanceof Mate.OtherCross cross) {
        plants.add(parents.get(cross.seed()));
        plants.add(parents.get(cross.pollen()));
      }
    }
    return plants;
  }

  /** Whether it is of nothing but taxa recorded as self-incompatible. */
  private boolean isOfRefusingTaxa(Plant plant) {
    ExpectedAncestry made = ExpectedAncestry.of(pedigree, plant.code().text());
    Set<String> taxa = made.shares().taxa().keySet();
    return !taxa.isEmpty()
        && made.shares().unknown().isZero()
        && taxa.stream().allMatch(taxon -> view.accepted(taxon).isSelfIncompatible());
  }
}
