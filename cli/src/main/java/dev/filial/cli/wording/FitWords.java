package dev.filial.cli.wording;

import dev.filial.core.answer.FitAnswer.Family;
import dev.filial.core.answer.FitAnswer.Row;
import dev.filial.core.trial.Fit;

/** Whether counts fit what was expected, in sentences. */
public final class FitWords {

  /** Below this, custom has it, chance alone is hardly to be believed. */
  public static final double DOUBTFUL = 0.05;

  private static final double REFUTED = 0.001;

  /** Fewer seedlings fit nearly every ratio. */
  private static final long FEW = 10;

  private FitWords() {}

  /** How it was tested, and why so. */
  public static String method(Fit fit) {
    String degrees =
        fit.degreesOfFreedom()
            + (fit.degreesOfFreedom() == 1 ? " degree of freedom" : " degrees of freedom");
    String test =
        switch (fit.method()) {
          case CHI_SQUARE -> "chi-square " + ChanceWords.number(fit.statistic()) + ", " + degrees;
          case G -> "G " + ChanceWords.number(fit.statistic()) + ", " + degrees;
          case EXACT -> "exact (all outcomes no likelier than this one added up)";
        };
    String why = fit.why().startsWith("as asked") ? "" : "; chosen because " + fit.why();
    return test
        + (fit.method() == Fit.Method.EXACT ? ": p " : "; p ")
        + ChanceWords.p(fit.p())
        + why
        + ".";
  }

  /** The same as a sentence. */
  public static String tested(Fit fit) {
    String method = method(fit);
    return fit.method() == Fit.Method.EXACT
        ? "Exact test" + method.substring("exact".length())
        : "Tested by " + method;
  }

  /** The verdict. */
  public static String sentence(Family family) {
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

  private static String expected(Family family) {
    return family.ratio() == null ? "what was expected" : family.ratio();
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
}
