package dev.filial.core.answer;

import dev.filial.core.answer.CrossOdds.Scenario;
import dev.filial.core.heredity.Odds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import dev.filial.core.trial.Fit;
import dev.filial.core.trial.Ratio;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whether what came up fits: the counts of one family or of several against a ratio, or against
 * what the genes of the parents lead to expect.
 */
public final class FitQuestion {

  private final Optional<Ratio> ratio;
  private final List<Ratio> others;
  private final Optional<Fit.Method> method;

  private FitQuestion(Optional<Ratio> ratio, List<Ratio> others, Optional<Fit.Method> method) {
    this.ratio = ratio;
    this.others = List.copyOf(others);
    this.method = method;
  }

  /** Against what the genes of the parents lead to expect. */
  public static FitQuestion byGenes() {
    return new FitQuestion(Optional.empty(), List.of(), Optional.empty());
  }

  /** Against this ratio of the states, in their order. */
  public static FitQuestion against(Ratio ratio) {
    return new FitQuestion(Optional.of(ratio), List.of(), Optional.empty());
  }

  /** The same compared with further ratios of the states: which of all fits best. */
  public FitQuestion comparedWith(List<Ratio> further) {
    return new FitQuestion(ratio, further, method);
  }

  /** The same by a method of the asker's. */
  public FitQuestion withMethod(Fit.Method other) {
    return new FitQuestion(ratio, others, Optional.of(other));
  }

  /**
   * Tests recorded families.
   *
   * @param codes crosses, packets, sowings or pots, at least one
   * @throws RegisterRefusal if the trait is not declared or has no states, nothing was counted, or
   *     only the taxon of a parent is known and no ratio was given
   * @throws NotStated if the genes of the parents do not tell what is expected and no ratio was
   *     given
   * @throws IllegalArgumentException if a ratio has not as many terms as the trait has states
   */
  public FitAnswer ask(RegisterView view, String trait, List<Code> codes) {
    TraitDeclared declared = view.requiredTrait(trait);
    if (codes.isEmpty()) {
      throw new RegisterRefusal("say which family is to be tested: a cross, a sowing or a pot");
    }
    List<FitAnswer.Counts> counted = new ArrayList<>();
    List<FitAnswer.Expected> expectations = new ArrayList<>();
    LinkedHashSet<String> notes = new LinkedHashSet<>();
    Map<Code, Code> used = new HashMap<>();
    for (Code code : codes) {
      FamilyCounts counts = FamilyCounts.of(view, code, declared);
      notes.addAll(counts.notes());
      requireCountedOnce(used, counts);
      requireWhole(counts, declared);
      counted.add(
          new FitAnswer.Counts(
              counts.code().text(), counts.inOrder(declared.states()), counts.from()));
      expectations.add(
          ratio.isPresent()
              ? FitAnswer.Expected.of(ratio.get(), declared.states())
              : expected(view, declared, counts.code(), notes));
    }
    return FitAnswer.of(
        declared.trait(), declared.states(), counted, expectations, others, method, notes);
  }

  private static void requireWhole(FamilyCounts counts, TraitDeclared trait) {
    if (!counts.partly().isEmpty()) {
      throw new RegisterRefusal(
          "the tally of "
              + counts.partly().get(0).text()
              + " does not name every state of "
              + trait.trait()
              + " ("
              + String.join(", ", trait.states())
              + "), so it may not have counted all; enter it again with a number for each, 0 for"
              + " none");
    }
  }

  private static void requireCountedOnce(Map<Code, Code> used, FamilyCounts counts) {
    for (Code place : counts.counted()) {
      Code other = used.put(place, counts.code());
      if (other != null) {
        throw new RegisterRefusal(
            other.text()
                + " and "
                + counts.code().text()
                + " have the seedlings counted in "
                + place.text()
                + " in common; name one of the two");
      }
    }
  }

  /**
   * Tests counts that were typed in.
   *
   * @param states the states they are of, in the order of the ratio
   * @param families the counts of each family, in the order of the states
   * @throws IllegalArgumentException if no ratio was given, it has not as many terms, a count is
   *     negative, or a family is of none
   */
  public FitAnswer ask(List<String> states, List<long[]> families) {
    Ratio expected =
        ratio.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "say which ratio the counts are to be tested against"));
    List<FitAnswer.Counts> counted = new ArrayList<>();
    List<FitAnswer.Expected> expectations = new ArrayList<>();
    for (long[] family : families) {
      String name = families.size() == 1 ? "as typed" : "family " + (counted.size() + 1);
      counted.add(new FitAnswer.Counts(name, family, "as typed"));
      expectations.add(FitAnswer.Expected.of(expected, states));
    }
    return FitAnswer.of(
        "what was counted", states, counted, expectations, others, method, new LinkedHashSet<>());
  }

  /**
   * Tests the counts of one family against odds that were reckoned already.
   *
   * @param odds the odds of that family, of that trait alone
   * @throws RegisterRefusal if a tally does not name every state, or the odds are none of one
   *     family
   */
  FitAnswer ask(TraitDeclared trait, FamilyCounts counts, CrossOdds odds) {
    LinkedHashSet<String> notes = new LinkedHashSet<>(counts.notes());
    requireWhole(counts, trait);
    FitAnswer.Expected expected = expected(trait, counts.code(), odds, notes);
    return FitAnswer.of(
        trait.trait(),
        trait.states(),
        List.of(
            new FitAnswer.Counts(
                counts.code().text(), counts.inOrder(trait.states()), counts.from())),
        List.of(expected),
        others,
        method,
        notes);
  }

  private static FitAnswer.Expected expected(
      RegisterView view, TraitDeclared trait, Code family, Set<String> notes) {
    CrossOdds odds;
    try {
      odds = OddsQuestion.of(view, List.of(trait.trait())).ask(family);
    } catch (NotStated missing) {
      NotStated ratio =
          new NotStated(
              NotStated.Need.RATIO,
              missing.plant(),
              "what "
                  + family.text()
                  + " should segregate into does not follow from the genes of its parents: "
                  + missing.getMessage());
      ratio.initCause(missing);
      throw ratio;
    }
    return expected(trait, family, odds, notes);
  }

  private static FitAnswer.Expected expected(
      TraitDeclared trait, Code family, CrossOdds odds, Set<String> notes) {
    notes.addAll(odds.notes());
    if (odds.scenarios().size() > 1) {
      throw new RegisterRefusal(
          "what "
              + family.text()
              + " should segregate into depends on how the chromosomes of its tetraploid parents"
              + " pair, which is not stated; state that in the profile of their taxon, or"
              + " give a ratio");
    }
    Scenario scenario = odds.scenarios().get(0);
    if (scenario.seedGenes() == null || scenario.pollenGenes() == null) {
      throw new RegisterRefusal(
          "of a parent of "
              + family.text()
              + " only the taxon is known, and one plant's family may be far from what its taxon"
              + " throws on the whole; give a ratio, or record what the parents carry if that is"
              + " known from elsewhere");
    }
    List<Fraction> shares = new ArrayList<>();
    for (String state : trait.states()) {
      Fraction share = Fraction.ZERO;
      for (Odds.Share one : scenario.classes()) {
        share = one.states().equals(List.of(state)) ? one.chance() : share;
      }
      shares.add(share);
    }
    return new FitAnswer.Expected(shares, Optional.ofNullable(scenario.ratio()));
  }
}
