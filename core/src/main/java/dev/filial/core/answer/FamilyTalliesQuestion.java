package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.TraitDeclared;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was counted in a family, trait by trait, tested against what the genes of its parents lead
 * to expect wherever that is known.
 */
public final class FamilyTalliesQuestion {

  private final RegisterView view;

  private FamilyTalliesQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static FamilyTalliesQuestion of(RegisterView view) {
    return new FamilyTalliesQuestion(view);
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
   * @param code a cross or packet
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
    try {
      FitAnswer answer = FitQuestion.byGenes().ask(view, trait.trait(), List.of(counts.code()));
      return new Tally(
          trait.trait(),
          List.copyOf(rows),
          counts.from(),
          answer.families().get(0),
          "",
          answer.notes());
    } catch (RegisterRefusal | IllegalArgumentException e) {
      return new Tally(
          trait.trait(),
          List.copyOf(rows),
          counts.from(),
          null,
          FamilyOddsQuestion.reason(e),
          counts.notes());
    }
  }
}
