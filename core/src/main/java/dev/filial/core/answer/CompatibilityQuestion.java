package dev.filial.core.answer;

import dev.filial.core.heredity.Compatibility;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Genotype;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.heredity.SelfIncompatibility;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.DeclaredGenome;
import dev.filial.core.register.Item;
import dev.filial.core.register.LocusDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which plants can set seed on which, by their S alleles. */
public final class CompatibilityQuestion {

  /** More possibilities than these tell a reader nothing. */
  private static final int FEW = 3;

  private final RegisterView view;

  private CompatibilityQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static CompatibilityQuestion of(RegisterView view) {
    return new CompatibilityQuestion(view);
  }

  /**
   * One pair, one way round.
   *
   * @param seed the seed parent
   * @param pollen the pollen parent
   * @param verdict how much of the pollen works; null if the S alleles of one are not known
   * @param working the share that is not refused, 0 to 1; null if not known
   * @param leaking the share that comes through, what leaks counted in; null if not known
   */
  public record Pair(
      Code seed,
      Code pollen,
      Compatibility.@Nullable Verdict verdict,
      @Nullable Fraction working,
      @Nullable Fraction leaking) {}

  /**
   * A plant and its S alleles.
   *
   * @param plant its code
   * @param alleles its alleles, as S1/S2; up to three that they may be; null if less is known
   */
  public record Plant(Code plant, @Nullable String alleles) {}

  /**
   * All pairs of some plants, both ways round, and each selfed.
   *
   * @param locus the S locus
   * @param leak how often refused pollen comes through
   * @param plants the plants
   * @param pairs the pairs
   */
  public record Compatible(String locus, Fraction leak, List<Plant> plants, List<Pair> pairs) {}

  /**
   * Among these plants.
   *
   * @param plants two or more; of one only its selfing is answered
   * @throws RegisterRefusal if no S locus, or more than one, was declared
   */
  public Compatible ask(List<Code> plants) {
    Genome genome = genome();
    SelfIncompatibility locus = genome.selfIncompatibility().orElseThrow();
    List<Code> asked = asked(plants);
    PlantGenes genes = PlantGenes.of(view, genome, List.of(), asked);
    List<Plant> known = new ArrayList<>();
    for (Code plant : asked) {
      List<String> texts = genes.of(plant).texts(FEW);
      boolean narrowed = !texts.isEmpty() && !texts.get(0).endsWith("…");
      known.add(new Plant(plant, narrowed ? texts.get(0) : null));
    }
    List<Optional<Genotype>> single =
        asked.stream().map(plant -> genes.of(plant).single()).toList();
    List<Pair> pairs = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      for (int j = 0; j < asked.size(); j++) {
        pairs.add(pair(asked.get(i), single.get(i), asked.get(j), single.get(j)));
      }
    }
    return new Compatible(
        locus.locus().name(), locus.leak(), List.copyOf(known), List.copyOf(pairs));
  }

  /**
   * The S alleles of those of these plants of which they are known, at the S locus alone.
   *
   * @throws RegisterRefusal if no S locus, or more than one, was declared, or what is recorded of
   *     them cannot be true
   */
  Map<Code, Genotype> alleles(List<Code> plants) {
    List<Code> asked = asked(plants);
    PlantGenes genes = PlantGenes.of(view, genome(), List.of(), asked);
    Map<Code, Genotype> alleles = new LinkedHashMap<>();
    for (Code plant : asked) {
      genes.of(plant).single().ifPresent(genotype -> alleles.put(plant, genotype));
    }
    return alleles;
  }

  private Genome genome() {
    List<LocusDeclared> refusing =
        view.loci().stream().filter(LocusDeclared::incompatibility).toList();
    if (refusing.size() != 1) {
      throw new RegisterRefusal(
          refusing.isEmpty()
              ? "no S locus was declared; declare a gene that refuses pollen, with its alleles"
              : "more than one S locus was declared, and which of them refuses is not known; strike"
                  + " one of them");
    }
    return DeclaredGenome.of(view, List.of(refusing.get(0).locus()), MapFunction.HALDANE);
  }

  private List<Code> asked(List<Code> plants) {
    List<Code> asked = new ArrayList<>();
    for (Code plant : plants) {
      Item item = Things.required(view, plant);
      if (!item.kind().isPlant()) {
        throw new RegisterRefusal(
            item.code().text() + " is a " + item.kind().word() + "; name single plants");
      }
      if (!asked.contains(item.code())) {
        asked.add(item.code());
      }
    }
    return asked;
  }

  /**
   * One pair of plants, if there is one S locus and the S alleles of both are known; empty if not,
   * or if a pot is meant.
   */
  static Optional<Pair> known(RegisterView view, Code seed, Code pollen) {
    if (view.loci().stream().filter(LocusDeclared::incompatibility).count() != 1
        || seed.isGroup()
        || pollen.isGroup()) {
      return Optional.empty();
    }
    return of(view).ask(List.of(seed, pollen)).pairs().stream()
        .filter(pair -> pair.seed().equals(seed) && pair.pollen().equals(pollen))
        .filter(pair -> pair.leaking() != null)
        .findFirst();
  }

  private static Pair pair(
      Code seed, Optional<Genotype> style, Code pollen, Optional<Genotype> grain) {
    if (style.isEmpty() || grain.isEmpty()) {
      return new Pair(seed, pollen, null, null, null);
    }
    Compatibility found = Compatibility.of(style.get(), grain.get());
    return new Pair(seed, pollen, found.verdict(), found.working(), found.effective());
  }
}
