package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Descent;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.trial.SampleMean;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The means of families for a trait that is scored or measured, and how they stand to the mean of
 * their parents. What a family is off its parents' mean is a plain difference: it is tested for
 * nothing, and called nothing.
 */
public final class FamilyMeansQuestion {

  private final RegisterView view;
  private final double certainty;

  private FamilyMeansQuestion(RegisterView view, double certainty) {
    this.view = view;
    this.certainty = certainty;
  }

  /** Asks {@code view}, with a certainty of 0.95. */
  public static FamilyMeansQuestion of(RegisterView view) {
    return new FamilyMeansQuestion(view, 0.95);
  }

  /**
   * The same with that certainty of the intervals, between 0 and 1.
   *
   * @throws IllegalArgumentException if it is not
   */
  public FamilyMeansQuestion withCertainty(double sure) {
    if (!(sure > 0 && sure < 1)) {
      throw new IllegalArgumentException(
          "a certainty of " + sure + "; it lies between 0 and 1, as 0.95");
    }
    return new FamilyMeansQuestion(view, sure);
  }

  /**
   * A parent.
   *
   * @param code its code
   * @param value what it was last measured; null if it never was
   * @param times how many times it was measured
   * @param date the day of the last; null if there is none or it has no day
   */
  public record Parent(Code code, @Nullable Double value, int times, @Nullable PartialDate date) {}

  /**
   * A family.
   *
   * @param family its code
   * @param what its taxon or parents
   * @param number how many of it were measured; those picked for the trait left out
   * @param mean their mean
   * @param deviation the standard deviation; null for one alone
   * @param least the smallest
   * @param most the greatest
   * @param lower the lower end of an interval for the mean, by Student's t, cut to what the trait
   *     can be; null for one alone
   * @param upper its upper end
   * @param first the earliest day of the measurements; null if one has none
   * @param last the latest day
   * @param parents its parents, once for a selfing; empty where they are not known for certain
   * @param midParent the mean of its parents, of a selfing the parent itself; null where it is not
   *     known
   * @param difference the mean less that of the parents
   * @param differenceLower the lower end of an interval for it, the parents' values being taken as
   *     known
   * @param differenceUpper its upper end
   * @param noMidParent why there is no mean of the parents; null if there is one
   * @param picked how many seedlings were left out because they were picked for the trait
   * @param unmeasured how many are here and were never measured
   */
  public record Family(
      Code family,
      String what,
      int number,
      double mean,
      @Nullable Double deviation,
      double least,
      double most,
      @Nullable Double lower,
      @Nullable Double upper,
      @Nullable PartialDate first,
      @Nullable PartialDate last,
      List<Parent> parents,
      @Nullable Double midParent,
      @Nullable Double difference,
      @Nullable Double differenceLower,
      @Nullable Double differenceUpper,
      @Nullable String noMidParent,
      long picked,
      long unmeasured) {}

  /**
   * The means of families.
   *
   * @param trait the trait
   * @param unit what it is measured in, or null
   * @param certainty how sure the intervals are
   * @param families each family that was measured, in order of entry
   * @param unmeasured the families asked about of which no seedling was measured
   * @param notes what to bear in mind, a sentence each
   */
  public record Means(
      String trait,
      @Nullable String unit,
      double certainty,
      List<Family> families,
      List<Code> unmeasured,
      List<String> notes) {}

  /**
   * The means of some families; of all that were measured for an empty list.
   *
   * @throws RegisterRefusal if the trait is not declared or has states, a code is none of this
   *     register, or stands for a plant that came from elsewhere
   */
  public Means ask(String trait, List<Code> families) {
    TraitDeclared declared = Ranked.measurable(view, trait);
    LastSeen seen = LastSeen.of(view, declared.trait());
    List<Item> asked = new ArrayList<>();
    for (Code code : families) {
      Item item = Describing.origin(view, Things.required(view, code));
      if (!item.kind().isFamily()) {
        throw new RegisterRefusal(
            item.code().text()
                + " is a "
                + item.kind().word()
                + " and no family; name a cross or a packet of seed");
      }
      if (!asked.contains(item)) {
        asked.add(item);
      }
    }
    if (families.isEmpty()) {
      asked.addAll(view.items(EnumSet.of(Item.Kind.CROSS, Item.Kind.SEED, Item.Kind.MIXTURE)));
    }
    List<Family> told = new ArrayList<>();
    List<Code> unmeasured = new ArrayList<>();
    long picked = 0;
    for (Item item : asked) {
      FamilyValues values = FamilyValues.of(view, seen, item.code());
      picked += values.picked();
      if (!values.values().isEmpty()) {
        told.add(family(item, values, seen, declared));
      } else if (!families.isEmpty()) {
        unmeasured.add(item.code());
      }
    }
    List<String> notes = new ArrayList<>();
    if (picked > 0) {
      notes.add(LastSeen.leftOut(picked, declared.trait()));
    }
    if (told.stream().anyMatch(family -> family.midParent() != null)) {
      notes.add(
          "Parents count with what they were last measured, as if that were known for certain; a"
              + " parent measured grown and seedlings measured young are not alike.");
    }
    return new Means(
        declared.trait(),
        declared.unit(),
        certainty,
        List.copyOf(told),
        List.copyOf(unmeasured),
        List.copyOf(notes));
  }

  private Family family(Item item, FamilyValues values, LastSeen seen, TraitDeclared trait) {
    SampleMean mean = SampleMean.of(values.values());
    BigDecimal least = trait.least();
    BigDecimal most = trait.most();
    // No mean lies beyond the scale, however little a few scores tell of it.
    SampleMean.Ends ends =
        mean.interval(certainty)
            .map(
                wide ->
                    wide.within(
                        least == null ? Double.NEGATIVE_INFINITY : least.doubleValue(),
                        most == null ? Double.POSITIVE_INFINITY : most.doubleValue()))
            .orElse(null);
    List<Parent> parents = parents(item, seen);
    OptionalDouble mid = midParent(parents);
    Double off = mid.isPresent() ? mean.mean() - mid.getAsDouble() : null;
    SampleMean.Ends offEnds = mid.isPresent() && ends != null ? ends.less(mid.getAsDouble()) : null;
    return new Family(
        item.code(),
        Describing.of(view, item),
        mean.number(),
        mean.mean(),
        mean.deviation().isPresent() ? mean.deviation().getAsDouble() : null,
        mean.least(),
        mean.most(),
        ends == null ? null : ends.lower(),
        ends == null ? null : ends.upper(),
        values.first(),
        values.last(),
        parents,
        mid.isPresent() ? mid.getAsDouble() : null,
        off,
        offEnds == null ? null : offEnds.lower(),
        offEnds == null ? null : offEnds.upper(),
        mid.isPresent() ? null : why(parents),
        values.picked(),
        values.unmeasured());
  }

  private List<Parent> parents(Item item, LastSeen seen) {
    List<Parent> parents = new ArrayList<>();
    if (item.kind() != Item.Kind.CROSS || ForecastQuestion.parents(item).isEmpty()) {
      return parents;
    }
    Descent descent = item.descent().get(0);
    Code pollen = descent.pollen();
    parents.add(parent(descent.seed(), seen));
    if (pollen != null && !pollen.equals(descent.seed())) {
      parents.add(parent(pollen, seen));
    }
    return List.copyOf(parents);
  }

  private static Parent parent(Code plant, LastSeen seen) {
    List<LastSeen.Look> looks = seen.all(plant);
    OptionalDouble value = FamilyValues.measured(seen, plant);
    return new Parent(
        plant,
        value.isPresent() ? value.getAsDouble() : null,
        looks.size(),
        looks.isEmpty() ? null : looks.get(looks.size() - 1).date());
  }

  private static OptionalDouble midParent(List<Parent> parents) {
    double sum = 0;
    for (Parent parent : parents) {
      Double value = parent.value();
      if (value == null) {
        return OptionalDouble.empty();
      }
      sum += value;
    }
    return parents.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(sum / parents.size());
  }

  private static String why(List<Parent> parents) {
    if (parents.isEmpty()) {
      return "its two parents are not known for certain";
    }
    return String.join(
            " and ",
            parents.stream()
                .filter(parent -> parent.value() == null)
                .map(parent -> parent.code().text())
                .toList())
        + " never measured";
  }
}
