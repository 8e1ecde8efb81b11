package dev.filial.core.answer;

import dev.filial.core.ancestry.DonorSegment;
import dev.filial.core.ancestry.ExpectedAncestry;
import dev.filial.core.ancestry.GenerationClass;
import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.name.Code;
import dev.filial.core.number.Decimal;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How much of the donor still hangs on around a gene of it that was held through backcrosses
 * ({@link DonorSegment}): of a number of them, or of a plant whose pedigree says how many there
 * were.
 *
 * <p>Where it is not said where the gene lies, it is taken to lie in the middle of a chromosome of
 * mean length, by the map of the plant's taxa.
 */
public final class AttachedQuestion {

  static final double CENTIMORGANS = 100;

  private static final String KEPT_FOR_THE_GENE =
      "It holds where seedlings were kept for the gene alone; kept for looking like the recurrent"
          + " parent as well, they have less of the donor.";

  private final @Nullable DonorSegment place;
  private final double chance;
  private final @Nullable Double goal;

  private AttachedQuestion(@Nullable DonorSegment place, double chance, @Nullable Double goal) {
    this.place = place;
    this.chance = chance;
    this.goal = goal;
  }

  /** Asks for the piece around a gene of which no place is known, its range holding it in 90 %. */
  public static AttachedQuestion aboutAnyGene() {
    return new AttachedQuestion(null, 0.9, null);
  }

  /**
   * The same about a gene so many centimorgans from the ends of its chromosome.
   *
   * @param left 0 or more
   * @param right 0 or more, not both 0
   * @throws IllegalArgumentException if it cannot lie there
   */
  public AttachedQuestion withGeneAt(double left, double right) {
    for (double arm : new double[] {left, right}) {
      if (!(arm >= 0 && arm <= GeneticMap.LONGEST * CENTIMORGANS)) {
        throw new IllegalArgumentException(
            "a gene "
                + text(arm)
                + " cM from an end of its chromosome; state 0 to "
                + text(GeneticMap.LONGEST * CENTIMORGANS));
      }
    }
    if (left + right > GeneticMap.LONGEST * CENTIMORGANS) {
      throw new IllegalArgumentException(
          "a chromosome of "
              + text(left + right)
              + " cM; at most "
              + text(GeneticMap.LONGEST * CENTIMORGANS)
              + " are reckoned with");
    }
    return new AttachedQuestion(
        DonorSegment.of(left / CENTIMORGANS, right / CENTIMORGANS), chance, goal);
  }

  /**
   * The same with ranges that hold the piece with that chance.
   *
   * @throws IllegalArgumentException if it does not lie between 0 and 1
   */
  public AttachedQuestion withChance(double likely) {
    if (!(likely > 0 && likely < 1)) {
      throw new IllegalArgumentException(
          "a chance of " + text(likely) + "; it lies above 0 and below 1, as 0.9");
    }
    return new AttachedQuestion(place, likely, goal);
  }

  /**
   * The same, asking also how many backcrosses it takes to a piece of at most so many centimorgans.
   *
   * @throws IllegalArgumentException if that is not above 0
   */
  public AttachedQuestion withGoal(double atMost) {
    if (!(atMost > 0)) {
      throw new IllegalArgumentException(
          "a piece of at most " + text(atMost) + " cM; some always hangs on, state more than 0");
    }
    return new AttachedQuestion(place, chance, atMost);
  }

  /**
   * Answers for a number of backcrosses.
   *
   * @param backcrosses 0 (the F1) to {@link DonorSegment#MOST_BACKCROSSES}
   * @throws IllegalArgumentException if it is not
   */
  public Attached ask(int backcrosses) {
    List<String> notes = new ArrayList<>();
    DonorSegment around = place;
    if (around == null) {
      around = middle(GeneticMap.assumed(), notes);
    }
    return answer(null, null, backcrosses, around, notes);
  }

  /**
   * Answers for a plant, or for one seedling of a cross, a packet or a pot.
   *
   * @throws RegisterRefusal if the register has no such code, or it is neither an F1 nor a
   *     backcross (a BC2F2 is none), or not diploid
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Attached ask(RegisterView view, Code code) {
    Item item = Things.required(view, code);
    String name = item.code().text();
    RegisterPedigree behind = RegisterPedigree.of(view, List.of(item.code()), false);
    Pedigree pedigree = behind.pedigree();
    int sets = pedigree.ploidy(pedigree.indexOf(name));
    if (sets != 2) {
      throw new RegisterRefusal(
          name
              + " has "
              + (sets == 0 ? "no certain number of" : sets)
              + " chromosome sets, and the piece is reckoned for plants of two; ask about one"
              + " of two");
    }
    GenerationClass generation = GenerationClassifier.of(pedigree).classOf(name);
    OptionalInt backcrosses = backcrosses(generation);
    if (backcrosses.isEmpty()) {
      throw new RegisterRefusal(
          name
              + is(generation)
              + ", and the piece is reckoned for a plain backcross; say through how many the gene"
              + " was held instead");
    }
    List<String> notes = new ArrayList<>();
    DonorSegment around = place;
    if (around == null) {
      List<String> taxa =
          AncestryQuestion.largestFirst(ExpectedAncestry.of(pedigree, name).shares()).stream()
              .map(AncestryQuestion.TaxonShare::taxon)
              .toList();
      MapInUse map = MapInUse.of(view, taxa);
      around = middle(map.map(), notes);
      notes.addAll(map.notes());
    }
    notes.addAll(behind.notes());
    return answer(item.code(), generation.text(), backcrosses.getAsInt(), around, notes);
  }

  private static String is(GenerationClass generation) {
    if (generation instanceof GenerationClass.Unclassified) {
      return " has " + generation.text();
    }
    boolean several = generation instanceof GenerationClass.Mixture;
    return (several ? " may be " : " is ") + generation.label();
  }

  /** Through how many backcrosses the plant came, however it may have come about. */
  private static OptionalInt backcrosses(GenerationClass generation) {
    if (generation instanceof GenerationClass.Filial filial && filial.generation() == 1) {
      return OptionalInt.of(0);
    }
    if (generation instanceof GenerationClass.Backcross backcross && backcross.filial() == 1) {
      return OptionalInt.of(backcross.generation());
    }
    if (generation instanceof GenerationClass.Mixture mixture) {
      Set<OptionalInt> numbers = new LinkedHashSet<>();
      mixture.alternatives().forEach(one -> numbers.add(backcrosses(one.generation())));
      return numbers.size() == 1 ? numbers.iterator().next() : OptionalInt.empty();
    }
    return OptionalInt.empty();
  }

  private static DonorSegment middle(GeneticMap map, List<String> notes) {
    double length = map.total() / map.chromosomes();
    notes.add(
        "Where the gene lies is not said; it is taken to lie in the middle of a chromosome of "
            + text(length * CENTIMORGANS)
            + " cM.");
    return DonorSegment.of(length / 2, length / 2);
  }

  private Attached answer(
      @Nullable Code plant,
      @Nullable String generation,
      int backcrosses,
      DonorSegment around,
      List<String> notes) {
    notes.add(KEPT_FOR_THE_GENE);
    return new Attached(
        plant,
        generation,
        backcrosses,
        around.left() * CENTIMORGANS,
        around.right() * CENTIMORGANS,
        chance,
        Attached.pieces(around, backcrosses, chance),
        goal == null ? null : Attached.Goal.of(around, goal, chance),
        notes);
  }

  private static String text(double value) {
    return Decimal.text(value, 2);
  }
}
