package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.trial.LikeCrosses;
import dev.filial.core.trial.MidParent;
import dev.filial.core.trial.Proportion;
import dev.filial.core.trial.SampleMean;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What a cross may bring where no gene is known: by what like crosses brought, and for what is
 * measured by how family means went with their parents' mean. Never to be mistaken for Mendelian
 * odds.
 */
public final class ForecastQuestion {

  private final RegisterView view;
  private final int next;
  private final double certainty;

  private ForecastQuestion(RegisterView view, int next, double certainty) {
    this.view = view;
    this.next = next;
    this.certainty = certainty;
  }

  /** Asks {@code view} for the next 20 seedlings, with a certainty of 0.95. */
  public static ForecastQuestion of(RegisterView view) {
    return new ForecastQuestion(view, 20, 0.95);
  }

  /**
   * The same for so many seedlings.
   *
   * @throws IllegalArgumentException if there is not at least one
   */
  public ForecastQuestion forNext(int seedlings) {
    if (seedlings < 1) {
      throw new IllegalArgumentException(
          "a forecast for " + seedlings + " seedlings; ask for 1 or more");
    }
    return new ForecastQuestion(view, seedlings, certainty);
  }

  /**
   * The same with that certainty, between 0 and 1.
   *
   * @throws IllegalArgumentException if it is not
   */
  public ForecastQuestion withCertainty(double sure) {
    if (!(sure > 0 && sure < 1)) {
      throw new IllegalArgumentException(
          "a certainty of " + sure + "; it lies between 0 and 1, as 0.95");
    }
    return new ForecastQuestion(view, next, sure);
  }

  /** How like a cross is to the one asked about. */
  public enum Likeness {
    /** The same two plants, or offsets of them, either way round. */
    SAME_PLANTS,
    /** Other plants of the same two taxa. */
    SAME_TAXA
  }

  /**
   * What is to be expected of one state.
   *
   * @param state the state
   * @param share its share in all like crosses together
   * @param seen how many showed it
   * @param fewest of the next seedlings, the fewest that are still likely
   * @param most the most that are still likely
   */
  public record State(String state, double share, long seen, int fewest, int most) {}

  /**
   * A forecast of states.
   *
   * @param likeness how like the crosses are
   * @param families the crosses it is from
   * @param seedlings how many seedlings they had
   * @param next for how many seedlings it is made
   * @param certainty how sure the ranges are
   * @param states each state
   * @param differing the chance that families alike would differ as much as these do; null for one
   * @param basis what the ranges lean on
   */
  public record OfStates(
      Likeness likeness,
      List<Code> families,
      long seedlings,
      int next,
      double certainty,
      List<State> states,
      @Nullable Double differing,
      LikeCrosses.Basis basis) {}

  /**
   * A family that was measured, and its parents.
   *
   * @param family its code
   * @param midParent the mean of its parents
   * @param mean its mean
   * @param size how many of it were measured
   */
  public record Measured(Code family, double midParent, double mean, long size) {}

  /**
   * A forecast of a measurement.
   *
   * @param families the families it is from
   * @param line the regression of family means on the mid-parent
   * @param midParent the mean of the two parents asked about
   * @param prediction the mean of their family
   * @param size for a family of how many
   * @param certainty how sure the range is
   * @param unit what is measured in, or null
   */
  public record OfMeasure(
      List<Measured> families,
      MidParent.Line line,
      double midParent,
      MidParent.Prediction prediction,
      int size,
      double certainty,
      @Nullable String unit) {}

  /**
   * A forecast.
   *
   * @param seed the seed parent
   * @param pollen the pollen parent
   * @param trait the trait
   * @param states of states; null for what is measured
   * @param measure of a measurement; null for what has states
   * @param notes what to bear in mind, a sentence each
   */
  public record Forecast(
      Code seed,
      Code pollen,
      String trait,
      @Nullable OfStates states,
      @Nullable OfMeasure measure,
      List<String> notes) {}

  /**
   * Forecasts what a cross of two plants may bring.
   *
   * @throws RegisterRefusal if the trait is not declared, or there is nothing to forecast from
   * @throws IllegalArgumentException if the regression has too few families
   */
  public Forecast ask(String trait, Code seed, Code pollen) {
    TraitDeclared declared = view.requiredTrait(trait);
    Code one = Things.required(view, seed).code();
    Code other = Things.required(view, pollen).code();
    LinkedHashSet<String> notes = new LinkedHashSet<>();
    CloseCross.of(view, one, other).map(CloseCross::sentence).ifPresent(notes::add);
    if (declared.states().isEmpty()) {
      OfMeasure measure = ofMeasure(declared, one, other, notes);
      return new Forecast(one, other, declared.trait(), null, measure, List.copyOf(notes));
    }
    if (view.model(Subject.trait(declared.trait()).key()).isPresent()) {
      notes.add(
          "A gene model of "
              + declared.trait()
              + " is declared, by which there are odds to be had.");
    }
    OfStates states = ofStates(declared, one, other, notes);
    return new Forecast(one, other, declared.trait(), states, null, List.copyOf(notes));
  }

  /**
   * Forecasts what a recorded cross may bring, by its two parents.
   *
   * @throws RegisterRefusal if they are not known for certain, or as {@link #ask(String, Code,
   *     Code)}
   */
  public Forecast ask(String trait, Code cross) {
    Item family = Describing.origin(view, Things.required(view, cross));
    Descent first = family.descent().isEmpty() ? null : family.descent().get(0);
    if (parents(family).isEmpty() || first == null || first.pollen() == null) {
      throw new RegisterRefusal(
          "the two parents of "
              + family.code().text()
              + " are not known for certain; name two plants instead");
    }
    return ask(trait, first.seed(), first.pollen());
  }

  /** The two parents of a cross made on purpose or by selfing, if both are known for certain. */
  static Optional<Set<Code>> parents(Item cross) {
    if (cross.descent().size() != 1 || cross.descent().get(0).form() != Descent.Form.SEXUAL) {
      return Optional.empty();
    }
    Descent descent = cross.descent().get(0);
    Code pollen = descent.pollen();
    return pollen == null
        ? Optional.empty()
        : Optional.of(new LinkedHashSet<>(List.of(descent.seed(), pollen)));
  }

  private OfStates ofStates(TraitDeclared trait, Code seed, Code pollen, Set<String> notes) {
    Kinds kinds = new Kinds(view);
    Set<String> plants = Set.copyOf(List.of(kinds.genotype(seed), kinds.genotype(pollen)));
    List<Item> same = new ArrayList<>();
    List<Item> alike = new ArrayList<>();
    Set<String> taxa = kinds.taxa(List.of(seed, pollen));
    for (Item cross : view.items(Set.of(Item.Kind.CROSS))) {
      Optional<Set<Code>> parents = parents(cross);
      if (parents.isPresent() && FamilyCounts.find(view, cross.code(), trait).isPresent()) {
        Set<String> its = new LinkedHashSet<>();
        parents.get().forEach(parent -> its.add(kinds.genotype(parent)));
        if (its.equals(plants)) {
          same.add(cross);
        } else if (!taxa.isEmpty()
            && its.size() == plants.size() // a selfing is no outcross within the taxon
            && kinds.taxa(List.copyOf(parents.get())).equals(taxa)) {
          alike.add(cross);
        }
      }
    }
    Likeness likeness = same.isEmpty() ? Likeness.SAME_TAXA : Likeness.SAME_PLANTS;
    List<Item> used = same.isEmpty() ? alike : same;
    if (used.isEmpty()) {
      throw new RegisterRefusal(
          "no cross like "
              + seed.text()
              + " × "
              + pollen.text()
              + " was counted for "
              + trait.trait()
              + " yet, neither of these plants nor of their taxa; there is nothing to forecast"
              + " from");
    }
    List<long[]> counts = new ArrayList<>();
    for (Item cross : used) {
      FamilyCounts family = FamilyCounts.of(view, cross.code(), trait);
      notes.addAll(family.notes());
      counts.add(family.inOrder(trait.states()));
    }
    LikeCrosses like = LikeCrosses.of(counts);
    List<State> states = new ArrayList<>();
    LikeCrosses.Basis basis = LikeCrosses.Basis.ONE_FAMILY;
    for (int i = 0; i < trait.states().size(); i++) {
      Proportion pooled = like.pooled(i);
      LikeCrosses.Forecast forecast = like.forecast(i, next, certainty);
      states.add(
          new State(
              trait.states().get(i),
              pooled.share(),
              pooled.some(),
              forecast.fewest(),
              forecast.most()));
      basis = forecast.basis().compareTo(basis) > 0 ? forecast.basis() : basis;
    }
    return new OfStates(
        likeness,
        used.stream().map(Item::code).toList(),
        like.seedlings(),
        next,
        certainty,
        List.copyOf(states),
        like.differences().map(LikeCrosses.Differences::p).orElse(null),
        basis);
  }

  private OfMeasure ofMeasure(TraitDeclared trait, Code seed, Code pollen, Set<String> notes) {
    LastSeen seen = LastSeen.of(view, trait.trait());
    double midParent = (required(trait, seen, seed) + required(trait, seen, pollen)) / 2;
    List<Measured> families = new ArrayList<>();
    long picked = 0;
    for (Item cross : view.items(Set.of(Item.Kind.CROSS))) {
      Descent first = cross.descent().get(0);
      if (parents(cross).isEmpty() || first.pollen() == null) {
        continue;
      }
      OptionalDouble one = FamilyValues.measured(seen, first.seed());
      OptionalDouble other = FamilyValues.measured(seen, first.pollen());
      if (one.isEmpty() || other.isEmpty()) {
        continue;
      }
      FamilyValues family = FamilyValues.of(view, seen, cross.code());
      picked += family.picked();
      if (!family.values().isEmpty()) {
        SampleMean mean = SampleMean.of(family.values());
        families.add(
            new Measured(
                cross.code(),
                (one.getAsDouble() + other.getAsDouble()) / 2,
                mean.mean(),
                mean.number()));
      }
    }
    if (picked > 0) {
      notes.add(LastSeen.leftOut(picked, trait.trait()));
    }
    List<MidParent.Family> points = new ArrayList<>();
    families.forEach(
        family ->
            points.add(new MidParent.Family(family.midParent(), family.mean(), family.size())));
    MidParent regression = MidParent.of(points);
    return new OfMeasure(
        List.copyOf(families),
        regression.line(),
        midParent,
        regression.predict(midParent, next, certainty),
        next,
        certainty,
        trait.unit());
  }

  private double required(TraitDeclared trait, LastSeen seen, Code plant) {
    return FamilyValues.measured(seen, plant)
        .orElseThrow(
            () ->
                new RegisterRefusal(
                    plant.text()
                        + " was never measured for "
                        + trait.trait()
                        + "; measure both parents first"));
  }

  /** Plants as far as likeness goes: the genotype that offsets have in common, and the taxon. */
  private static final class Kinds {
    private final RegisterView view;

    Kinds(RegisterView view) {
      this.view = view;
    }

    String genotype(Code plant) {
      Pedigree behind = RegisterPedigree.of(view, List.of(plant), false).pedigree();
      return behind.code(behind.genet(behind.indexOf(plant.text())));
    }

    /** The taxa that acquired plants are wholly of; empty if one is of none or of several. */
    Set<String> taxa(List<Code> plants) {
      Pedigree behind = RegisterPedigree.of(view, plants, false).pedigree();
      Set<String> taxa = new LinkedHashSet<>();
      for (Code plant : plants) {
        Founder founder = behind.founder(behind.genet(behind.indexOf(plant.text())));
        if (founder == null
            || founder.makeup().shares().size() != 1
            || !founder.makeup().unknownShare().isZero()) {
          return Set.of();
        }
        taxa.addAll(founder.makeup().shares().keySet());
      }
      return taxa;
    }
  }
}
