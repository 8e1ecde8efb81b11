package dev.filial.core.trial;

import java.util.List;

/**
 * How well counts fit a ratio.
 *
 * @param method how it was tested
 * @param why why so
 * @param statistic chi-square or G; of the exact test the probability of just these counts
 * @param degreesOfFreedom classes less one
 * @param p the chance of counts that fit no better if the ratio is true, 0 to 1
 * @param expected what the ratio expects of each class
 */
public record Fit(
    Method method,
    String why,
    double statistic,
    int degreesOfFreedom,
    double p,
    List<Double> expected) {

  /** Copies the expected counts. */
  public Fit {
    expected = List.copyOf(expected);
  }

  /** How counts are tested. */
  public enum Method {
    /** Pearson's chi-square. */
    CHI_SQUARE,
    /** The likelihood ratio G. */
    G,
    /** The exact multinomial test: outcomes no likelier than the one seen are summed. */
    EXACT
  }
}
