package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.screen.Screen;
import dev.filial.cli.screen.Table;
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

  /** Below this, custom has it, chance alone is hardly to be believed. */
  private static final double DOUBTFUL = 0.05;

  private static final double REFUTED = 0.001;

  /** Fewer seedlings fit nearly every ratio. */
  private static final long FEW = 10;

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
    screen.say(family.family() + ": " + sentence(family));
    Table table = new Table().column("state").numbers("counted").numbers("expected");
    for (Row row : family.rows()) {
      table.row(row.state(), row.count(), ChanceWords.number(row.expected()));
    }
    screen.table(table);
    if (telling && family.fit() != null) {
      Fit fit = family.fit();
      screen.field("method", method(fit));
    }
    if (telling) {
      screen.field("counts", family.from());
    }
  }

  private static String method(Fit fit) {
    String degrees =
        fit.degreesOfFreedom()
            + (fit.degreesOfFreedom() == 1 ? " degree of freedom" : " degrees of freedom");
    String test =
        switch (fit.method()) {
          case CHI_SQUARE -> "chi-square " + ChanceWords.number(fit.statistic()) + ", " + degrees;
          case G -> "G " + ChanceWords.number(fit.statistic()) + ", " + degrees;
          case EXACT -> "exact, the outcomes no likelier than this one added up";
        };
    String why = fit.why().startsWith("as asked") ? "" : "; chosen because " + fit.why();
    return test + "; p " + ChanceWords.p(fit.p()) + why + ".";
  }

  private static String expected(Family family) {
    return family.ratio() == null ? "what was expected" : family.ratio();
  }

  private static String sentence(Family family) {
    if (family.impossible() > 0) {
      return family.impossible()
          + (family.impossible() == 1 ? " seedling shows" : " seedlings show")
          + " what these parents cannot throw: pollen of another plant, a swapped tag, a wrong look"
          + " or a wrong model."
          + (family.fit() == null ? "" : " Of the others, " + fits(family, family.fit()));
    }
    if (family.fit() == null) {
      return "all as expected; where only one state can come up there is nothing to test.";
    }
    return fits(family, family.fit());
  }

  private static String fits(Family family, Fit fit) {
    String often = often(fit.p());
    if (fit.p() >= DOUBTFUL) {
      return "the counts fit "
          + expected(family)
          + ". Families that fit no better come up "
          + often
          + " by chance alone."
          + (seedlings(family) < FEW ? " So few can tell little." : "");
    }
    return (fit.p() >= REFUTED ? "the counts fit " : "the counts do not fit ")
        + expected(family)
        + (fit.p() >= REFUTED ? " badly" : "")
        + ". If it were true, so uneven a family would come up "
        + often
        + ".";
  }

  private static long seedlings(Family family) {
    return family.rows().stream().mapToLong(Row::count).sum();
  }

  private static String often(double p) {
    if (p > 0.95) {
      return "nearly always";
    }
    if (p >= 0.1) {
      return "in " + Math.round(p * 100) + " of 100";
    }
    return p < 1e-6 ? "less than once in a million" : "once in " + rounded(1 / p);
  }

  private static String rounded(double n) {
    double scale = Math.pow(10, Math.max(0, Math.floor(Math.log10(n)) - 1));
    return Long.toString(Math.round(n / scale) * (long) scale);
  }

  private void show(Screen screen, Families together) {
    Fit pooled = together.pooled();
    screen.say(
        "All together: "
            + (pooled.p() >= DOUBTFUL ? "the sums fit" : "the sums do not fit")
            + " (p "
            + ChanceWords.p(pooled.p())
            + "), and the families "
            + (together.heterogeneityP() >= DOUBTFUL
                ? "differ no more than by chance"
                : "seem to differ more than by chance")
            + " (p "
            + ChanceWords.p(together.heterogeneityP())
            + (together.rough() ? ", a rough one, since some families are small" : "")
            + ").");
    if (telling) {
      screen.field("method", "pooled " + method(pooled));
      screen.field(
          "method",
          "heterogeneity chi-square "
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
      if (named && !model.equals(best) && model.weight() >= DOUBTFUL) {
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
