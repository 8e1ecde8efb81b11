package dev.filial.core.answer;

import dev.filial.core.ancestry.ExpectedAncestry;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.PossibleGenotypes;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.StatedGeneration;
import dev.filial.core.register.DeclaredGenome;
import dev.filial.core.register.GenotypeStated;
import dev.filial.core.register.Item;
import dev.filial.core.register.Observed;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which genotypes plants of a register can have: by what was stated of them, by the profile of
 * their taxon, by their parents and by what they showed. What is ruled out is impossible; odds
 * between what is left are not given.
 */
final class PlantGenes {

  private final RegisterView view;
  private final Genome genome;
  private final List<TraitModel> models;
  private final RegisterPedigree behind;
  private final PossibleGenotypes[] possible;

  private PlantGenes(
      RegisterView view, Genome genome, List<TraitModel> models, RegisterPedigree behind) {
    this.view = view;
    this.genome = genome;
    this.models = models;
    this.behind = behind;
    this.possible = new PossibleGenotypes[behind.pedigree().size()];
  }

  /**
   * Of these plants and all behind them, each worked out once, founders first.
   *
   * @throws RegisterRefusal if what is recorded of a plant cannot be true of any genotype
   */
  static PlantGenes of(
      RegisterView view, Genome genome, List<TraitModel> models, List<Code> plants) {
    PlantGenes genes =
        new PlantGenes(view, genome, models, RegisterPedigree.of(view, plants, false));
    Pedigree pedigree = genes.behind.pedigree();
    for (int plant = 0; plant < pedigree.size(); plant++) {
      PossibleGenotypes born = genes.born(plant);
      genes.possible[plant] = genes.asSeen(pedigree.code(plant), born);
    }
    return genes;
  }

  /** Whether two unknown plants are seedlings of one packet or plants of one cultivar. */
  boolean areKin(Code one, Code other) {
    Pedigree pedigree = behind.pedigree();
    Founder first = pedigree.founder(pedigree.genet(pedigree.indexOf(one.text())));
    Founder second = pedigree.founder(pedigree.genet(pedigree.indexOf(other.text())));
    boolean packet = one.whole().equals(other.whole());
    return packet
        || (first != null
            && second != null
            && first.cultivar() != null
            && first.cultivar().equals(second.cultivar()));
  }

  /** Whether the plant is a diploid whose chromosomes were doubled, or an offset of one. */
  boolean isDoubled(Code plant) {
    Pedigree pedigree = behind.pedigree();
    int index = pedigree.indexOf(plant.text());
    while (pedigree.isRamet(index)) {
      if (pedigree.isDoubled(index)) {
        return true;
      }
      index = pedigree.rametOf(index);
    }
    return false;
  }

  /** Whether two plants that were asked for are one genotype: the same plant, or offsets of one. */
  boolean areOne(Code one, Code other) {
    Pedigree pedigree = behind.pedigree();
    return pedigree.genet(pedigree.indexOf(one.text()))
        == pedigree.genet(pedigree.indexOf(other.text()));
  }

  /** What is possible of a plant that was asked for. */
  PossibleGenotypes of(Code plant) {
    return possible[behind.pedigree().indexOf(plant.text())];
  }

  /** The taxon of a pure plant that is no seedling of recorded parents; empty for any other. */
  Optional<String> pureTaxon(Code plant) {
    Pedigree pedigree = behind.pedigree();
    int index = pedigree.indexOf(plant.text());
    while (pedigree.isRamet(index) && !pedigree.isDoubled(index)) {
      index = pedigree.rametOf(index);
    }
    Founder founder = pedigree.founder(index);
    return founder == null || isSport(plant) || founder.ploidy() != 2 || !isOneTaxon(founder)
        ? Optional.empty()
        : Optional.of(founder.makeup().shares().keySet().iterator().next());
  }

  /** The one taxon that the plant is wholly of, whatever its chromosome sets. */
  Optional<String> taxonOf(Code plant) {
    ExpectedAncestry shares = ExpectedAncestry.of(behind.pedigree(), plant.text());
    return shares.shares().taxa().size() == 1 && shares.shares().unknown().isZero()
        ? Optional.of(shares.shares().taxa().keySet().iterator().next())
        : Optional.empty();
  }

  private static boolean isOneTaxon(Founder founder) {
    return founder.makeup().shares().size() == 1 && founder.makeup().unknownShare().isZero();
  }

  private PossibleGenotypes anything(int ploidy) {
    return PossibleGenotypes.madeOf(genome, ploidy == 0 ? 2 : ploidy, Map.of());
  }

  private PossibleGenotypes born(int plant) {
    Pedigree pedigree = behind.pedigree();
    Founder founder = pedigree.founder(plant);
    if (founder != null) {
      return ofFounder(founder);
    }
    if (pedigree.isRamet(plant)) {
      PossibleGenotypes source = possible[pedigree.rametOf(plant)];
      return pedigree.isDoubled(plant) ? source.doubled() : source;
    }
    List<Descent> descents = pedigree.descents(plant);
    PossibleGenotypes all = ofDescent(descents.get(0));
    for (Descent other : descents.subList(1, descents.size())) {
      all = all.or(ofDescent(other));
    }
    return all;
  }

  private PossibleGenotypes ofDescent(Descent descent) {
    if (descent instanceof Descent.Copy copy) {
      return possible[copy.of()];
    }
    Descent.Sexual sexual = (Descent.Sexual) descent;
    return PossibleGenotypes.ofSeedlings(
        parent(sexual.seed(), sexual.seedSets()),
        sexual.seedSets(),
        parent(sexual.pollen(), sexual.pollenSets()),
        sexual.pollenSets());
  }

  private PossibleGenotypes parent(int plant, int sets) {
    return plant == Pedigree.UNKNOWN ? anything(2 * sets) : possible[plant];
  }

  private PossibleGenotypes ofFounder(Founder founder) {
    if (founder.ploidy() == 2
        && founder.stated().orElse(null) instanceof StatedGeneration.Filial filial
        && filial.generation() == 1) {
      // One set of each taxon; which of the two bore it is not stated.
      PossibleGenotypes one = ofTaxa(2, Set.of(filial.first()));
      PossibleGenotypes other = ofTaxa(2, Set.of(filial.second()));
      return PossibleGenotypes.ofSeedlings(one, 1, other, 1)
          .or(PossibleGenotypes.ofSeedlings(other, 1, one, 1));
    }
    return founder.makeup().unknownShare().isZero()
        ? ofTaxa(founder.ploidy(), founder.makeup().shares().keySet())
        : anything(founder.ploidy());
  }

  /** Made of the alleles that are found in these taxa; of all where a profile says nothing. */
  private PossibleGenotypes ofTaxa(int ploidy, Set<String> taxa) {
    Map<String, Set<String>> found = new HashMap<>();
    for (Locus locus : genome.loci()) {
      Set<String> alleles = new HashSet<>();
      boolean known = true;
      for (String taxon : taxa) {
        Set<String> its =
            TaxonProfile.of(view, taxon)
                .map(profile -> profile.frequencies().get(locus.name()))
                .map(PlantGenes::present)
                .orElse(Set.of());
        known &= !its.isEmpty();
        alleles.addAll(its);
      }
      if (known) {
        found.put(locus.name(), alleles);
      }
    }
    return PossibleGenotypes.madeOf(genome, ploidy, found);
  }

  private static Set<String> present(Map<String, Fraction> frequencies) {
    Set<String> present = new HashSet<>();
    frequencies.forEach(
        (allele, frequency) -> {
          if (!frequency.isZero()) {
            present.add(allele);
          }
        });
    return present;
  }

  /** What is left of it after what was stated of the plant and its offsets and what they showed. */
  private PossibleGenotypes asSeen(String name, PossibleGenotypes born) {
    Optional<Item> item = behind.item(name);
    if (item.isEmpty() || !item.get().kind().isPlant()) {
      return born;
    }
    PossibleGenotypes left = sportOrBorn(item.get(), born);
    List<String> said = new ArrayList<>();
    for (Code code : alike(item.get().code())) {
      left = asStated(code, born, asShown(code, left, said), said);
    }
    return left;
  }

  /** The plants that say something of this one: those of its clone, unless one is a sport. */
  private List<Code> alike(Code plant) {
    List<Code> alike = new ArrayList<>();
    for (Code other : isSport(plant) ? Set.of(plant) : Clone.of(view, plant)) {
      if (other.equals(plant) || !isSport(other)) {
        alike.add(other);
      }
    }
    return alike;
  }

  private boolean isSport(Code plant) {
    return models.stream().anyMatch(model -> Clone.isSport(view, plant, model.trait()));
  }

  /** By what was seen last of each trait: an early look may have been too early. */
  private PossibleGenotypes asShown(Code code, PossibleGenotypes before, List<String> said) {
    PossibleGenotypes left = before;
    for (TraitModel model : models) {
      Optional<String> state = LastSeen.of(view, model.trait()).value(code);
      if (state.isPresent()) {
        left = left.showing(model, state.get());
        said.add(code.text() + " showed " + model.trait() + " " + state.get());
        requireSome(code, before, left, said, before);
      }
    }
    return left;
  }

  private PossibleGenotypes asStated(
      Code code, PossibleGenotypes born, PossibleGenotypes before, List<String> said) {
    PossibleGenotypes left = before;
    for (long entry : view.entriesOn(Subject.of(code))) {
      if (view.effective(entry).orElseThrow() instanceof GenotypeStated stated
          && genome.loci().stream().anyMatch(locus -> stated.loci().contains(locus.name()))) {
        left = stated(left, stated);
        said.add("entry " + entry + " gives it " + stated.genotype());
        requireSome(code, before, left, said, born);
      }
    }
    return left;
  }

  private static void requireSome(
      Code code,
      PossibleGenotypes before,
      PossibleGenotypes left,
      List<String> said,
      PossibleGenotypes born) {
    if (left.isEmpty() && !before.isEmpty()) {
      throw new RegisterRefusal(
          "what is recorded of "
              + code.text()
              + " cannot all be true: "
              + String.join(", ", said)
              + (said.size() > 1 ? "" : ", but by its parents and taxa it can only be " + can(born))
              + ". Amend or strike what is wrong of these; if nothing is, a tag was swapped, the"
              + " pollen was another's, or the model is wrong");
    }
  }

  /**
   * Whether anything was seen or stated of a plant, its offsets or the families they bore or sired,
   * that bears on these genes: then the frequencies of its taxon no longer hold for it.
   */
  boolean isAnythingKnownOf(Code plant) {
    Set<Code> clone = Clone.of(view, plant);
    for (Code code : clone) {
      for (long entry : view.entriesOn(Subject.of(code))) {
        Statement statement = view.effective(entry).orElseThrow();
        if (statement instanceof GenotypeStated stated
            && genome.loci().stream().anyMatch(locus -> stated.loci().contains(locus.name()))) {
          return true;
        }
        if (statement instanceof Observed seen
            && models.stream()
                .anyMatch(model -> LastSeen.of(view, model.trait()).isOf(seen.trait()))) {
          return true;
        }
      }
    }
    for (Code family : Offspring.of(view, clone)) {
      Optional<Item> item = view.item(family).filter(found -> found.kind().isFamily());
      for (TraitModel model : models) {
        if (item.isPresent()
            && FamilyCounts.find(view, family, view.requiredTrait(model.trait())).isPresent()) {
          return true;
        }
      }
    }
    return false;
  }

  private static String can(PossibleGenotypes born) {
    List<String> texts = born.texts(6);
    return texts.isEmpty() ? "what is not known" : String.join("; ", texts);
  }

  /** A sport is not the genotype of its source in the trait it is a sport for. */
  private PossibleGenotypes sportOrBorn(Item item, PossibleGenotypes born) {
    return isSport(item.code()) ? anything(born.ploidy()) : born;
  }

  private PossibleGenotypes stated(PossibleGenotypes left, GenotypeStated stated) {
    List<Locus> named = new ArrayList<>();
    for (Locus locus : genome.loci()) {
      if (stated.loci().contains(locus.name())) {
        named.add(locus);
      }
    }
    if (named.isEmpty()) {
      return left;
    }
    if (named.size() == genome.loci().size() && stated.loci().size() == named.size()) {
      Genotype whole = genome.genotype(stated.genotype());
      return left.like(whole);
    }
    // Some of the genes were stated, or more than are asked about: it is read as it was written,
    // and how linked ones lie together holds for any of them.
    Genome ofThese = DeclaredGenome.of(view, stated.loci(), MapFunction.HALDANE);
    return left.agreeing(ofThese.genotype(stated.genotype()));
  }

  /** Doubts behind the plants. */
  List<String> notes() {
    return behind.notes();
  }
}
