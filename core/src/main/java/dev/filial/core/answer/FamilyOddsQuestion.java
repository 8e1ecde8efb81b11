package dev.filial.core.answer;

import dev.filial.core.answer.CrossOdds.Scenario;
import dev.filial.core.heredity.Odds;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * All that is to be expected of a recorded cross: every trait of which it is known how it is
 * inherited, each by itself, and how many seeds to sow for one of each kind. What cannot be
 * reckoned is named with the reason, and stops nothing.
 */
public final class FamilyOddsQuestion {

  /** How sure one is to be of at least one of a kind. */
  public static final double CERTAINTY = 0.95;

  /** Of more genes the gametes are too many to write down, or even to go through. */
  private static final int MOST_GENES_ON_A_BOARD = 2;

  private final RegisterView view;

  private FamilyOddsQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static FamilyOddsQuestion of(RegisterView view) {
    return new FamilyOddsQuestion(new ReadOnce(view));
  }

  /**
   * What is expected of one trait, or of two together.
   *
   * @param odds the odds, with the checkerboard for one gene or two
   * @param hopes for each scenario of these, for each of its classes, what it takes to have one at
   *     the certainty of 0.95; empty where that cannot be said
   */
  public record Expected(CrossOdds odds, List<List<Optional<Hope>>> hopes) {}

  /**
   * What is not reckoned.
   *
   * @param traits of which traits
   * @param why why not, without a full stop
   */
  public record NotKnown(List<String> traits, String why) {}

  /**
   * All that is to be expected.
   *
   * @param single each trait of which odds are known, by name
   * @param together two traits at once, where exactly two are known and can be reckoned so; else
   *     null
   * @param notKnown the traits with a model of which there are no odds
   * @param notModelled the traits with states of which nobody said how they are inherited
   * @param rate how many seeds of this cross came up by its own sowings, through which seeds to sow
   *     are reckoned; null where none tells, and then it is seedlings that are told
   * @param leftOut why none of its sowings tells; empty where one does, or none is recorded
   */
  public record FamilyOdds(
      List<Expected> single,
      @Nullable Expected together,
      List<NotKnown> notKnown,
      List<String> notModelled,
      @Nullable SeedRate rate,
      List<GerminationQuestion.LeftOut> leftOut) {}

  /**
   * What is to be expected of a family.
   *
   * @param code a cross or packet
   * @throws RegisterRefusal if the register has no such code
   */
  public FamilyOdds ask(Code code) {
    Item family = Things.required(view, code);
    RecordedRates recorded = RecordedRates.of(view);
    SeedRate rate = recorded.ofFamily(family.code()).germination().orElse(null);
    List<Expected> single = new ArrayList<>();
    List<String> known = new ArrayList<>();
    List<String> notModelled = new ArrayList<>();
    Map<String, List<String>> why = new LinkedHashMap<>();
    for (TraitDeclared trait : view.traits()) {
      if (view.model(Subject.trait(trait.trait()).key()).isEmpty()) {
        if (!trait.states().isEmpty()) {
          notModelled.add(trait.trait());
        }
        continue;
      }
      try {
        single.add(expected(List.of(trait.trait()), family, rate));
        known.add(trait.trait());
      } catch (RegisterRefusal | IllegalArgumentException e) {
        why.computeIfAbsent(reason(e), any -> new ArrayList<>()).add(trait.trait());
      }
    }
    List<NotKnown> notKnown = new ArrayList<>();
    why.forEach((reason, traits) -> notKnown.add(new NotKnown(List.copyOf(traits), reason)));
    return new FamilyOdds(
        List.copyOf(single),
        known.size() == 2 ? together(known, family, rate) : null,
        List.copyOf(notKnown),
        List.copyOf(notModelled),
        rate,
        rate == null ? recorded.leftOut(family.code()) : List.of());
  }

  static String reason(RuntimeException refusal) {
    String message = String.valueOf(refusal.getMessage());
    return message.endsWith(".") ? message.substring(0, message.length() - 1) : message;
  }

  /**
   * Two traits at once; null where that cannot be reckoned, since each stands by itself already.
   */
  private @Nullable Expected together(List<String> both, Item family, @Nullable SeedRate rate) {
    try {
      return expected(both, family, rate);
    } catch (RegisterRefusal | IllegalArgumentException e) {
      return null;
    }
  }

  private Expected expected(List<String> traits, Item family, @Nullable SeedRate rate) {
    CrossOdds odds = odds(traits, family.code());
    Wanted one =
        new Wanted(
            List.of(), null, List.of(), 1, CERTAINTY, rate == null ? List.of() : List.of(rate));
    Fraction reckoned = RecordedCross.reckoned(family);
    List<List<Optional<Hope>>> hopes = new ArrayList<>();
    for (Scenario scenario : odds.scenarios()) {
      List<Optional<Hope>> each = new ArrayList<>();
      // Seedlings of one plant share its alleles, so that of a taxon's plants the number is no
      // binomial one.
      boolean binomial = scenario.seedGenes() != null && scenario.pollenGenes() != null;
      Fraction seen = reckoned.times(Fraction.ONE.minus(scenario.lost()));
      for (Odds.Share share : scenario.classes()) {
        each.add(binomial ? hope(share, seen, one) : Optional.empty());
      }
      hopes.add(List.copyOf(each));
    }
    return new Expected(odds, List.copyOf(hopes));
  }

  private CrossOdds odds(List<String> traits, Code family) {
    OddsQuestion question = OddsQuestion.of(view, traits);
    long genes =
        traits.stream()
            .flatMap(trait -> GenesInPlay.required(view, trait).loci().stream())
            .distinct()
            .count();
    if (genes > MOST_GENES_ON_A_BOARD) {
      return question.ask(family);
    }
    try {
      return question.withCheckerboard().ask(family);
    } catch (RegisterRefusal e) {
      throw e;
    } catch (IllegalArgumentException e) {
      // Of genes with many alleles there is no checkerboard, but odds there may be all the same.
      return question.ask(family);
    }
  }

  /** Empty where more seed would be needed than can be reckoned with. */
  private static Optional<Hope> hope(Odds.Share share, Fraction seen, Wanted one) {
    try {
      return Optional.of(Hope.of(String.join(", ", share.states()), share.chance(), seen, one));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
