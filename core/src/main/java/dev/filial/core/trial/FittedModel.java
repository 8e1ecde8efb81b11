package dev.filial.core.trial;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One model as it fits the counts best.
 *
 * @param name what the model is called
 * @param logLikelihood the natural logarithm of the multinomial probability of just these counts,
 *     with its coefficient, summed over the families; −∞ if the model is impossible
 * @param freeParameters how many numbers were fitted
 * @param parameter the fitted one, of a model that has just one; none if it is impossible
 * @param shares the share of each class, 0 to 1; none if a model with a parameter is impossible
 * @param aic twice the free parameters less twice the log-likelihood; smaller is better, +∞ if the
 *     model is impossible
 * @param aicc the same corrected for small samples; +∞ too where there are no more seedlings than
 *     free parameters and one
 * @param weight the Akaike weight among the models compared, 0 to 1
 * @param fit of known shares, how the sums of all families fit the classes they expect; none of
 *     other models, of an impossible one, or if just one class is expected
 * @param impossible why the model is impossible, if it is
 */
public record FittedModel(
    String name,
    double logLikelihood,
    int freeParameters,
    OptionalDouble parameter,
    List<Double> shares,
    double aic,
    double aicc,
    double weight,
    Optional<Fit> fit,
    Optional<String> impossible) {

  /** Copies the shares. */
  public FittedModel {
    shares = List.copyOf(shares);
  }

  FittedModel withWeight(double newWeight) {
    return new FittedModel(
        name,
        logLikelihood,
        freeParameters,
        parameter,
        shares,
        aic,
        aicc,
        newWeight,
        fit,
        impossible);
  }
}
