package dev.filial.core.answer;

import dev.filial.core.number.Fraction;
import dev.filial.core.trial.Families;
import dev.filial.core.trial.Fit;
import dev.filial.core.trial.FittedModel;
import dev.filial.core.trial.GoodnessOfFit;
import dev.filial.core.trial.ModelComparison;
import dev.filial.core.trial.Ratio;
import dev.filial.core.trial.SegregationModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Whether what came up fits what was expected.
 *
 * @param trait the trait
 * @param families each family
 * @param together all families tested together and for differing among themselves; null unless
 *     there are several of one expectation
 * @param comparison which of several ratios fits best, the best first; empty unless asked for
 * @param notes doubts, a sentence each
 */
public record FitAnswer(
    String trait,
    List<Family> families,
    @Nullable Families together,
    List<FittedModel> comparison,
    List<String> notes) {

  /** Copies the lists. */
  public FitAnswer {
    families = List.copyOf(families);
    comparison = List.copyOf(comparison);
    notes = List.copyOf(notes);
  }

  /**
   * One state and how many showed it.
   *
   * @param state the state
   * @param count how many showed it
   * @param expected how many were expected; 0 if it cannot come up
   */
  public record Row(String state, long count, double expected) {}

  /**
   * One family and how it fits.
   *
   * @param family its code, or what it is called
   * @param rows its states
   * @param ratio what was expected, as 3:1; null where it has no whole numbers
   * @param fit the test; null if only one state is expected or none that is was seen, and there is
   *     nothing to test
   * @param impossible how many showed a state that cannot come up
   * @param from where the counts are from
   */
  public record Family(
      String family,
      List<Row> rows,
      @Nullable String ratio,
      @Nullable Fit fit,
      long impossible,
      String from) {
    /** Copies the rows. */
    public Family {
      rows = List.copyOf(rows);
    }
  }

  /**
   * The counts of one family.
   *
   * @param family its code, or what it is called
   * @param counts how many showed each state
   * @param from where the counts are from
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared, and never leaves this package
  record Counts(String family, long[] counts, String from) {}

  /**
   * What is expected.
   *
   * @param shares the share of each state, 0 for what cannot come up; they sum to 1
   * @param ratio the same in whole numbers, if it has any
   */
  record Expected(List<Fraction> shares, Optional<String> ratio) {

    /**
     * A ratio of these states.
     *
     * @throws IllegalArgumentException if it has not as many terms
     */
    static Expected of(Ratio ratio, List<String> states) {
      if (ratio.classes() != states.size()) {
        throw new IllegalArgumentException(
            "the ratio "
                + ratio.text()
                + " has "
                + ratio.classes()
                + " terms, but there are "
                + states.size()
                + " states ("
                + String.join(", ", states)
                + "); give one term for each, in this order");
      }
      return new Expected(ratio.shares(), Optional.of(ratio.text()));
    }
  }

  /** Tests families whose states are these, each against its own expectation. */
  static FitAnswer of(
      String trait,
      List<String> states,
      List<Counts> families,
      List<Expected> expectations,
      List<Ratio> others,
      Optional<Fit.Method> method,
      Set<String> notes) {
    List<Family> tested = new ArrayList<>();
    for (int i = 0; i < families.size(); i++) {
      tested.add(family(states, families.get(i), expectations.get(i), method));
    }
    Expected first = expectations.get(0);
    boolean alike = expectations.stream().allMatch(one -> one.shares().equals(first.shares()));
    if (!alike) {
      notes.add(
          "The families are not expected to segregate alike, and were tested one by one only.");
    }
    boolean testable = tested.stream().allMatch(one -> one.fit() != null && one.impossible() == 0);
    Families together = null;
    if (families.size() > 1 && alike && testable) {
      together = Families.test(possible(first), kept(families, first), method);
      if (method.equals(Optional.of(Fit.Method.EXACT))) {
        notes.add(
            "Exact probabilities of families do not add up; how much the families differ was tested"
                + " by chi-square.");
      }
    }
    List<FittedModel> comparison =
        others.isEmpty() ? List.of() : compared(states, families, first, alike, others, method);
    boolean otherwise =
        comparison.stream()
            .flatMap(model -> model.fit().stream())
            .anyMatch(fit -> method.isPresent() && fit.method() != method.get());
    if (otherwise) {
      notes.add(
          "The families together have too many outcomes to sum for the exact test; the ratios"
              + " compared were tested by chi-square.");
    }
    return new FitAnswer(trait, tested, together, comparison, List.copyOf(notes));
  }

  private static List<FittedModel> compared(
      List<String> states,
      List<Counts> families,
      Expected first,
      boolean alike,
      List<Ratio> others,
      Optional<Fit.Method> method) {
    List<SegregationModel> models = new ArrayList<>();
    if (alike) {
      models.add(
          SegregationModel.fixed(
              first.ratio().orElse("as expected"),
              first.shares().stream().mapToDouble(Fraction::toDouble).toArray()));
    }
    for (Ratio other : others) {
      Expected.of(other, states);
      if (!first.ratio().equals(Optional.of(other.text())) || !alike) {
        models.add(SegregationModel.fixed(other));
      }
    }
    models.add(SegregationModel.saturated());
    return ModelComparison.ofFamilies(
            models, families.stream().map(Counts::counts).toList(), method)
        .models();
  }

  private static Family family(
      List<String> states, Counts family, Expected expected, Optional<Fit.Method> method) {
    long all = 0;
    long impossible = 0;
    for (int i = 0; i < states.size(); i++) {
      all += family.counts()[i];
      impossible += expected.shares().get(i).isZero() ? family.counts()[i] : 0;
    }
    if (all == 0) {
      throw new IllegalArgumentException(
          "a family of none (" + family.family() + "); there is nothing to test");
    }
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < states.size(); i++) {
      rows.add(
          new Row(states.get(i), family.counts()[i], expected.shares().get(i).toDouble() * all));
    }
    long classes = expected.shares().stream().filter(share -> !share.isZero()).count();
    Fit fit = null;
    if (classes > 1 && all > impossible) {
      GoodnessOfFit test = GoodnessOfFit.of(possible(expected));
      fit = method.map(test::withMethod).orElse(test).test(kept(List.of(family), expected).get(0));
    }
    return new Family(
        family.family(), rows, expected.ratio().orElse(null), fit, impossible, family.from());
  }

  /** The states that can come up. */
  private static Ratio possible(Expected expected) {
    return new Ratio(expected.shares().stream().filter(share -> !share.isZero()).toList());
  }

  private static List<long[]> kept(List<Counts> families, Expected expected) {
    List<long[]> kept = new ArrayList<>();
    for (Counts family : families) {
      List<Long> some = new ArrayList<>();
      for (int i = 0; i < family.counts().length; i++) {
        if (!expected.shares().get(i).isZero()) {
          some.add(family.counts()[i]);
        }
      }
      kept.add(some.stream().mapToLong(Long::longValue).toArray());
    }
    return kept;
  }
}
