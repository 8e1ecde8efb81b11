package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
import dev.filial.cli.wording.ChanceWords;
import dev.filial.cli.wording.FitWords;
import dev.filial.core.answer.FitAnswer;
import dev.filial.core.answer.FitAnswer.Family;
import dev.filial.core.answer.FitAnswer.Row;
import dev.filial.core.trial.Families;
import dev.filial.core.trial.Fit;
import dev.filial.core.trial.FittedModel;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether what came up fits, for a reader.
 *
 * @param answer what was found
 * @param telling whether the method is told
 */
record FitTold(FitAnswer answer, boolean telling) implements Answer {

  @Override
  public Object json() {
    return answer;
  }

  @Override
  public void show(Screen screen) {
    for (Family family : answer.families()) {
      show(screen, family);
    }
    if (answer.together() != null) {
      show(screen, answer.together());
    }
    if (!answer.comparison().isEmpty()) {
      compare(screen);
    }
    answer.notes().forEach(note -> screen.field("note", note));
  }

  private void show(Screen screen, Family family) {
    screen.say(family.family() + ": " + FitWords.sentence(family));
    Table table = new Table().column("state").numbers("counted").numbers("expected");
    for (Row row : family.rows()) {
      table.row(row.state(), row.count(), ChanceWords.number(row.expected()));
    }
    screen.table(table);
    if (telling && family.fit() != null) {
      Fit fit = family.fit();
      screen.field("method", FitWords.method(fit));
    }
    if (telling) {
      screen.field("counts", family.from());
    }
  }

  private void show(Screen screen, Families together) {
    Fit pooled = together.pooled();
    screen.say(
        "All together: "
            + (pooled.p() >= FitWords.DOUBTFUL ? "the sums fit" : "the sums do not fit")
            + " (p "
            + ChanceWords.p(pooled.p())
            + "), and the families "
            + (together.heterogeneityP() >= FitWords.DOUBTFUL
                ? "differ no more than by chance"
                : "seem to differ more than by chance")
            + " (p "
            + ChanceWords.p(together.heterogeneityP())
            + (together.rough() ? ", a rough one, since some families are small" : "")
            + ").");
    if (telling) {
      screen.field("method", "pooled " + FitWords.method(pooled));
      screen.field(
          "method",
          "heterogeneity "
              + (together.method() == Fit.Method.G ? "G " : "chi-square ")
              + ChanceWords.number(together.heterogeneity())
              + ", "
              + together.heterogeneityDegreesOfFreedom()
              + (together.heterogeneityDegreesOfFreedom() == 1
                  ? " degree of freedom."
                  : " degrees of freedom."));
    }
  }

  private void compare(Screen screen) {
    FittedModel best = answer.comparison().get(0);
    List<String> others = new ArrayList<>();
    boolean doubts = false;
    for (FittedModel model : answer.comparison()) {
      boolean named = model.freeParameters() == 0;
      if (named && !model.equals(best) && model.weight() >= FitWords.DOUBTFUL) {
        others.add(model.name());
      }
      doubts |= model.impossible().isPresent();
    }
    screen.say(
        best.freeParameters() > 0
            ? "None of the ratios compared fits as well as the counts ask for."
            : "Of the ratios compared, "
                + best.name()
                + " fits best"
                + (others.isEmpty()
                    ? "."
                    : "; " + String.join(", ", others) + " cannot be ruled out."));
    Table table = new Table().column("ratio").numbers("weight").numbers("p");
    if (doubts) {
      table.column("");
    }
    for (FittedModel model : answer.comparison()) {
      List<Object> cells = new ArrayList<>();
      cells.add(model.name());
      cells.add(model.weight() < 0.005 ? "<0.01" : ChanceWords.number(model.weight()));
      cells.add(model.fit().map(fit -> ChanceWords.p(fit.p())).orElse(""));
      if (doubts) {
        cells.add(model.impossible().orElse(""));
      }
      table.row(cells.toArray());
    }
    screen.table(table);
    if (telling) {
      screen.field(
          "method",
          "weights from AICc: likelihood, with a penalty for each free parameter; \"any shares\" fits"
              + " the counts as they are and pays for it.");
    }
  }
}
