package dev.filial.core.answer;

import dev.filial.core.answer.OddsQuestion.Side;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Meiosis;
import dev.filial.core.heredity.Parent;
import dev.filial.core.heredity.PossibleGenotypes;
import dev.filial.core.heredity.SelfIncompatibility;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.ProfileStated.Pairing;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The two parents of a cross as heredity reckons with them: their genotypes, and how they form
 * their gametes, in every way that has to be assumed.
 *
 * @param seedName the seed parent as it was asked for
 * @param pollenName the pollen parent
 * @param pairs the parents, once for each assumption; usually one pair
 * @param lacksRefusal whether an S locus was to be reckoned with and the S alleles of both parents
 *     are not known
 * @param notes what was taken for granted, a sentence each
 */
record Parents(
    String seedName,
    String pollenName,
    List<Pair> pairs,
    boolean lacksRefusal,
    List<String> notes) {

  /**
   * Both parents under one assumption.
   *
   * @param assuming what is assumed; null if nothing has to be
   */
  record Pair(@Nullable String assuming, Parent seed, Parent pollen) {}

  /** A parent and what has to be assumed of it; null if nothing. */
  private record Choice(@Nullable String assuming, Parent parent) {}

  static Parents of(RegisterView view, GenesInPlay genes, Side seed, Side pollen) {
    List<Code> plants = new ArrayList<>();
    for (Side side : List.of(seed, pollen)) {
      if (side.plant() != null && side.genes() == null && !plants.contains(side.plant())) {
        plants.add(side.plant());
      }
    }
    PlantGenes known = PlantGenes.of(view, genes.genome(), genes.all(), plants);
    Reader reader = new Reader(view, genes, known);
    boolean lacks = reader.lacksRefusal(seed) || reader.lacksRefusal(pollen);
    if (lacks) {
      return new Parents(name(seed), name(pollen), List.of(), true, List.of());
    }
    List<Choice> seeds = reader.choices(seed, false);
    List<Choice> pollens = reader.choices(pollen, true);
    boolean selfing = isSelfing(known, seed, pollen);
    if (seeds.get(0).parent() instanceof Parent.OfTaxon
        && pollens.get(0).parent() instanceof Parent.OfTaxon
        && (selfing || known.areKin(Reader.required(seed), Reader.required(pollen)))) {
      // Egg and pollen of one plant, or of sibs, are no two draws from their taxon.
      throw reader.unknown(Reader.required(seed));
    }
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < seeds.size(); i++) {
      for (int j = 0; j < pollens.size(); j++) {
        if (!selfing || i == j) {
          Choice egg = seeds.get(i);
          Choice grain = pollens.get(j);
          pairs.add(new Pair(assuming(egg, grain, selfing), egg.parent(), grain.parent()));
        }
      }
    }
    List<String> notes = new ArrayList<>(known.notes());
    notes.addAll(reader.notes);
    return new Parents(name(seed), name(pollen), pairs, false, notes);
  }

  private static boolean isSelfing(PlantGenes known, Side seed, Side pollen) {
    if (seed.plant() == null
        || pollen.plant() == null
        || seed.genes() != null
        || pollen.genes() != null) {
      return seed.equals(pollen);
    }
    return known.areOne(seed.plant(), pollen.plant())
        && Objects.equals(seed.meiosis(), pollen.meiosis());
  }

  private static String name(Side side) {
    return side.plant() == null ? String.valueOf(side.genes()) : side.plant().text();
  }

  private static @Nullable String assuming(Choice seed, Choice pollen, boolean selfing) {
    if (seed.assuming() == null && pollen.assuming() == null) {
      return null;
    }
    if (selfing || pollen.assuming() == null) {
      return selfing ? seed.assuming() : "in the seed parent " + seed.assuming();
    }
    return seed.assuming() == null
        ? "in the pollen parent " + pollen.assuming()
        : "in the seed parent "
            + seed.assuming()
            + ", and in the pollen parent "
            + pollen.assuming();
  }

  private static final class Reader {
    private final RegisterView view;
    private final Genome genome;
    private final PlantGenes known;
    private final List<String> notes = new ArrayList<>();

    Reader(RegisterView view, GenesInPlay genes, PlantGenes known) {
      this.view = view;
      this.genome = genes.genome();
      this.known = known;
    }

    /** Whether the S alleles that the genome asks for are not known of a parent. */
    boolean lacksRefusal(Side side) {
      Optional<SelfIncompatibility> refusing = genome.selfIncompatibility();
      if (refusing.isEmpty()) {
        return false;
      }
      if (side.genes() != null) {
        return refusing.get().locus().alleles().stream().noneMatch(side.genes()::contains);
      }
      return known.of(required(side)).single().isEmpty();
    }

    private static Code required(Side side) {
      if (side.plant() == null) {
        throw new RegisterRefusal("a parent is either a plant or its genes; give one of them");
      }
      return side.plant();
    }

    List<Choice> choices(Side side, boolean asPollen) {
      if (side.genes() != null) {
        return of(typed(side.genes()), side, null);
      }
      Code plant = required(side);
      PossibleGenotypes possible = known.of(plant);
      Optional<Genotype> single = asPollen ? possible.singleAsPollen() : possible.single();
      if (single.isPresent()) {
        return of(single.get(), side, plant);
      }
      Optional<String> taxon = known.pureTaxon(plant);
      if (taxon.isPresent() && side.meiosis() == null && !known.isAnythingKnownOf(plant)) {
        Optional<Parent> some = ofTaxon(taxon.get());
        if (some.isPresent()) {
          notes.add(
              "Which alleles "
                  + plant.text()
                  + " has is not known; the odds are those over all plants of "
                  + taxon.get()
                  + " as its profile has them, and a family of one plant may be far from them.");
          return List.of(new Choice(null, some.get()));
        }
      }
      throw unknown(plant);
    }

    private Genotype typed(String genes) {
      try {
        return genome.genotype(genes);
      } catch (IllegalArgumentException e) {
        List<String> others = new ArrayList<>();
        for (String name : GeneReading.in(view).meant(List.of(genes))) {
          if (genome.loci().stream().noneMatch(locus -> locus.name().equals(name))) {
            others.add(name);
          }
        }
        if (others.isEmpty()) {
          throw e;
        }
        throw refusal(
            e,
            "\""
                + genes
                + "\" names "
                + String.join(", ", others)
                + " too, which none of the traits asked about goes by; leave that out");
      }
    }

    private static RegisterRefusal refusal(IllegalArgumentException cause, String message) {
      RegisterRefusal refusal = new RegisterRefusal(message);
      refusal.initCause(cause);
      return refusal;
    }

    private NotStated unknown(Code plant) {
      List<String> texts = known.of(plant).texts(4);
      return new NotStated(
          NotStated.Need.GENES,
          plant.text(),
          "what "
              + plant.text()
              + " carries ("
              + String.join(", ", genome.loci().stream().map(Locus::name).toList())
              + ") is not known"
              + (texts.isEmpty() ? "" : ": it may be " + String.join(", with ", texts)));
    }

    /** Some plant of the taxon; empty if its profile says nothing of a gene that is asked about. */
    private Optional<Parent> ofTaxon(String taxon) {
      Optional<ProfileStated> profile = TaxonProfile.of(view, taxon);
      Map<String, Map<String, Fraction>> frequencies = new HashMap<>();
      for (Locus locus : genome.loci()) {
        Map<String, Fraction> its =
            profile.map(said -> said.frequencies().get(locus.name())).orElse(null);
        if (its == null) {
          return Optional.empty();
        }
        frequencies.put(locus.name(), its);
      }
      return Optional.of(new Parent.OfTaxon(frequencies));
    }

    private List<Choice> of(Genotype genotype, Side side, @Nullable Code plant) {
      Meiosis stated = side.meiosis();
      if (stated != null) {
        return List.of(new Choice(null, Parent.of(genotype, stated)));
      }
      if (genotype.ploidy() == 3) {
        String name = plant == null ? genotype.text() : plant.text();
        throw new NotStated(
            NotStated.Need.GAMETES,
            name,
            name + " is triploid, and forms gametes of one set or of two");
      }
      if (genotype.ploidy() == 4 && !genotype.isDisomic()) {
        return ofTetraploid(genotype, plant);
      }
      return List.of(new Choice(null, Parent.of(genotype)));
    }

    /** Of a doubled diploid each subgenome has one set twice. */
    private List<Genotype> arrangements(Genotype genotype, @Nullable Code plant) {
      List<Genotype> all = genotype.disomicArrangements();
      return plant == null || !known.isDoubled(plant)
          ? all
          : all.stream().filter(Genotype::pairsAlike).toList();
    }

    private List<Choice> ofTetraploid(Genotype genotype, @Nullable Code plant) {
      Optional<ProfileStated> profile =
          plant == null
              ? Optional.empty()
              : known.taxonOf(plant).flatMap(taxon -> TaxonProfile.of(view, taxon));
      Pairing pairing = profile.map(ProfileStated::pairing).orElse(null);
      Fraction doubleReduction = profile.map(ProfileStated::doubleReduction).orElse(null);
      List<Choice> choices = new ArrayList<>();
      if (pairing != Pairing.DISOMIC) {
        Fraction alpha = doubleReduction == null ? Fraction.ZERO : doubleReduction;
        choices.add(
            new Choice(
                pairing == null
                    ? "any two of its four chromosomes pair (tetrasomic, no double reduction)"
                    : null,
                Parent.of(genotype, Meiosis.tetrasomic(alpha))));
      }
      if (pairing != Pairing.TETRASOMIC) {
        List<Genotype> arrangements = arrangements(genotype, plant);
        for (Genotype arranged : arrangements) {
          boolean assumed = pairing == null || arrangements.size() > 1;
          choices.add(
              new Choice(
                  assumed
                      ? "its chromosomes pair only within each of two subgenomes, "
                          + arranged.text()
                          + " (disomic)"
                      : null,
                  Parent.of(arranged)));
        }
      }
      return choices;
    }
  }
}
