package dev.filial.core.answer;

import dev.filial.core.answer.FamilyOddsQuestion.FamilyOdds;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was counted in a family, trait by trait, tested against what the genes of its parents lead
 * to expect wherever that is known.
 */
public final class FamilyTalliesQuestion {

  private final RegisterView view;
  private final FamilyOdds odds;

  private FamilyTalliesQuestion(RegisterView view, FamilyOdds odds) {
    this.view = view;
    this.odds = odds;
  }

  /**
   * Asks {@code view}.
   *
   * @param odds what the family that is asked about is expected to throw
   */
  public static FamilyTalliesQuestion of(RegisterView view, FamilyOdds odds) {
    return new FamilyTalliesQuestion(view, odds);
  }

  /**
   * A state and how many showed it.
   *
   * @param state the state
   * @param count how many
   */
  public record Row(String state, long count) {}

  /**
   * What was counted of one trait.
   *
   * @param trait the trait
   * @param rows its states
   * @param from where the counts are from, in a grower's words
   * @param fit the test; null where nothing is expected
   * @param why why nothing is expected, without a full stop; empty where it was tested
   * @param notes doubts, a sentence each
   */
  public record Tally(
      String trait,
      List<Row> rows,
      String from,
      FitAnswer.@Nullable Family fit,
      String why,
      List<String> notes) {

    /** How many seedlings were counted. */
    public long seedlings() {
      return rows.stream().mapToLong(Row::count).sum();
    }
  }

  /**
   * All that was counted, by trait.
   *
   * @param code the cross or packet that the odds are of
   * @throws RegisterRefusal if the register has no such code, or it is no cross or packet
   */
  public List<Tally> ask(Code code) {
    Item family = Things.required(view, code);
    List<Tally> tallies = new ArrayList<>();
    for (TraitDeclared trait : view.traits()) {
      if (!trait.states().isEmpty()) {
        FamilyCounts.find(view, family.code(), trait)
            .filter(counts -> counts.seedlings() > 0)
            .ifPresent(counts -> tallies.add(tally(trait, counts)));
      }
    }
    return List.copyOf(tallies);
  }

  private Tally tally(TraitDeclared trait, FamilyCounts counts) {
    List<Row> rows = new ArrayList<>();
    counts.counts().forEach((state, count) -> rows.add(new Row(state, count)));
    Optional<CrossOdds> known =
        odds.single().stream()
            .map(FamilyOddsQuestion.Expected::odds)
            .filter(one -> one.traits().equals(List.of(trait.trait())))
            .findFirst();
    if (known.isEmpty()) {
      return untested(trait, rows, counts, whyNot(trait.trait()));
    }
    try {
      FitAnswer answer = FitQuestion.byGenes().ask(trait, counts, known.get());
      return new Tally(
          trait.trait(),
          List.copyOf(rows),
          counts.from(),
          answer.families().get(0),
          "",
          answer.notes());
    } catch (RegisterRefusal | IllegalArgumentException e) {
      return untested(trait, rows, counts, FamilyOddsQuestion.reason(e));
    }
  }

  private static Tally untested(
      TraitDeclared trait, List<Row> rows, FamilyCounts counts, String why) {
    return new Tally(trait.trait(), List.copyOf(rows), counts.from(), null, why, counts.notes());
  }

  private String whyNot(String trait) {
    return odds.notKnown().stream()
        .filter(one -> one.traits().contains(trait))
        .findFirst()
        .map(FamilyOddsQuestion.NotKnown::why)
        .orElse("nobody said how it is inherited");
  }
}
