package dev.filial.core.trial;

import dev.filial.core.number.Fraction;
import dev.filial.core.trial.SegregationModel.Fixed;
import dev.filial.core.trial.SegregationModel.OneParameter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.special.Gamma;

/**
 * Which of several models fits the counts of a family best, by how likely each makes them and how
 * many numbers it had to fit to do so.
 *
 * <p>AIC after Akaike 1974 (IEEE Transactions on Automatic Control 19:716-723, from memory);
 * corrected for small samples after Hurvich and Tsai 1989 (Biometrika 76:297-307, from memory),
 * whose correction 2q(q + 1)/(n − q − 1), of q free parameters, was derived for regressions and is
 * customary for counts too; Akaike weights as in Burnham and Anderson, Model Selection and
 * Multimodel Inference (from memory). Models are ranked and weighted by the corrected one. The
 * sample size n is the seedlings of all families together.
 *
 * <p>A weight is a model's share of the support among those compared, not the chance that it is
 * true: the best of several poor models is still poor, and {@link FittedModel#fit} shows it.
 *
 * <p>A single parameter is fitted by maximum likelihood: 65 values across its interval, both ends
 * among them, then Brent's search (Brent 1973, Algorithms for Minimization without Derivatives)
 * about the likeliest. It is good to about eight digits. Where several are just as likely, the
 * least that was tried is taken.
 *
 * @param models the models, best first; impossible ones last
 * @param seedlings how many seedlings there are in all
 */
public record ModelComparison(List<FittedModel> models, long seedlings) {

  private static final int STEPS = 64;

  private static final Comparator<FittedModel> BEST_FIRST =
      Comparator.comparingDouble(FittedModel::aicc)
          .thenComparingDouble(FittedModel::aic)
          .thenComparingInt(FittedModel::freeParameters);

  /** Copies the models. */
  public ModelComparison {
    models = List.copyOf(models);
  }

  /** The model that fits best; none if all are impossible. */
  public Optional<FittedModel> best() {
    return models.stream().filter(model -> model.impossible().isEmpty()).findFirst();
  }

  /**
   * Compares models on the counts of one family.
   *
   * @param counts one for each class, in the order of the models' shares
   * @throws IllegalArgumentException if there is no candidate or one has other classes, a count is
   *     negative, all are 0, or a candidate gives what are no shares
   */
  public static ModelComparison of(List<SegregationModel> candidates, long... counts) {
    return ofFamilies(candidates, List.of(counts));
  }

  /**
   * Compares models on several families with the same classes, each model with one set of shares
   * for all of them. Whether families agree is another question: {@link Families}, {@link
   * LikeCrosses}.
   *
   * @param families of each, a count for every class, in the order of the models' shares
   * @throws IllegalArgumentException as {@link #of}, or if there is no family
   */
  public static ModelComparison ofFamilies(
      List<SegregationModel> candidates, List<long[]> families) {
    return ofFamilies(candidates, families, Optional.empty());
  }

  /**
   * The same with {@link FittedModel#fit} by a method of the caller's, as far as that can be
   * reckoned for the sums.
   *
   * @param method how known shares are tested; if empty, as it suits the counts
   * @throws IllegalArgumentException as {@link #of}, or if there is no family
   */
  public static ModelComparison ofFamilies(
      List<SegregationModel> candidates, List<long[]> families, Optional<Fit.Method> method) {
    if (candidates.isEmpty() || families.isEmpty()) {
      throw new IllegalArgumentException(
          candidates.size()
              + " models on "
              + families.size()
              + " families; give one or more of each");
    }
    long[] sums = new long[families.get(0).length];
    double coefficient = 0;
    for (long[] family : families) {
      if (family.length != sums.length) {
        throw new IllegalArgumentException(
            "families with "
                + sums.length
                + " and "
                + family.length
                + " classes; give each a count for every class, 0 if none was seen");
      }
      coefficient += Gamma.logGamma(Counts.total(family) + 1.0);
      for (int i = 0; i < sums.length; i++) {
        coefficient -= Gamma.logGamma(family[i] + 1.0);
        sums[i] = Math.addExact(sums[i], family[i]);
      }
    }
    Observed observed = new Observed(sums, coefficient, method);
    List<FittedModel> fitted = new ArrayList<>();
    double best = Double.POSITIVE_INFINITY;
    for (SegregationModel candidate : candidates) {
      FittedModel model = observed.fit(candidate);
      fitted.add(model);
      best = Math.min(best, model.aicc());
    }
    fitted.sort(BEST_FIRST);
    return new ModelComparison(weighted(fitted, best), observed.seedlings);
  }

  private static List<FittedModel> weighted(List<FittedModel> models, double best) {
    if (best == Double.POSITIVE_INFINITY) {
      return models;
    }
    double sum = 0;
    for (FittedModel model : models) {
      sum += Math.exp((best - model.aicc()) / 2);
    }
    List<FittedModel> weighted = new ArrayList<>();
    for (FittedModel model : models) {
      weighted.add(model.withWeight(Math.exp((best - model.aicc()) / 2) / sum));
    }
    return weighted;
  }

  /** The sums of all families, and what the models are fitted to them with. */
  private static final class Observed {
    private final long[] counts;
    private final double coefficient;
    private final long seedlings;
    private final Optional<Fit.Method> method;

    Observed(long[] counts, double coefficient, Optional<Fit.Method> method) {
      this.counts = counts;
      this.coefficient = coefficient;
      this.method = method;
      this.seedlings = Counts.total(counts);
    }

    FittedModel fit(SegregationModel model) {
      if (model instanceof Fixed fixed) {
        double[] shares = new double[fixed.shares().size()];
        for (int i = 0; i < shares.length; i++) {
          shares[i] = fixed.shares().get(i).toDouble();
        }
        requireClasses(fixed.name(), shares);
        return fitted(fixed.name(), 0, OptionalDouble.empty(), shares, test(fixed.shares()));
      }
      if (model instanceof OneParameter free) {
        double parameter = likeliest(free);
        return fitted(
            free.name(),
            1,
            OptionalDouble.of(parameter),
            free.sharesAt(parameter),
            Optional.empty());
      }
      double[] shares = new double[counts.length];
      for (int i = 0; i < shares.length; i++) {
        shares[i] = counts[i] / (double) seedlings;
      }
      return fitted(
          model.name(), counts.length - 1, OptionalDouble.empty(), shares, Optional.empty());
    }

    private FittedModel fitted(
        String name, int free, OptionalDouble parameter, double[] shares, Optional<Fit> fit) {
      Optional<String> impossible = impossible(shares, parameter.isPresent());
      double logLikelihood = coefficient;
      for (int i = 0; i < counts.length; i++) {
        if (counts[i] > 0) {
          logLikelihood += counts[i] * Math.log(shares[i]);
        }
      }
      double aic = 2 * free - 2 * logLikelihood;
      double room = seedlings - free - 1.0;
      double aicc = aic;
      if (free > 0) {
        aicc = room > 0 ? aic + 2 * free * (free + 1) / room : Double.POSITIVE_INFINITY;
      }
      boolean shown = impossible.isEmpty() || parameter.isEmpty();
      List<Double> list = new ArrayList<>();
      for (double share : shares) {
        list.add(share);
      }
      return new FittedModel(
          name,
          logLikelihood,
          free,
          shown ? parameter : OptionalDouble.empty(),
          shown ? list : List.of(),
          aic,
          aicc,
          0,
          impossible.isEmpty() ? fit : Optional.empty(),
          impossible);
    }

    private Optional<String> impossible(double[] shares, boolean fitted) {
      for (int i = 0; i < counts.length; i++) {
        if (counts[i] > 0 && shares[i] == 0) {
          return Optional.of(
              fitted
                  ? "whatever the parameter, a class that was seen has the chance 0"
                  : "class " + (i + 1) + " has the chance 0, and " + counts[i] + " were seen");
        }
      }
      return Optional.empty();
    }

    /** Classes of chance 0 have no place in a ratio; where none was seen they tell nothing. */
    private Optional<Fit> test(List<Fraction> shares) {
      List<Fraction> expected = new ArrayList<>();
      long[] seen = new long[counts.length];
      for (int i = 0; i < counts.length; i++) {
        if (!shares.get(i).isZero()) {
          seen[expected.size()] = counts[i];
          expected.add(shares.get(i));
        } else if (counts[i] > 0) {
          return Optional.empty();
        }
      }
      if (expected.size() < 2) {
        return Optional.empty();
      }
      long[] counted = Arrays.copyOf(seen, expected.size());
      return Optional.of(GoodnessOfFit.of(new Ratio(expected)).preferring(method).test(counted));
    }

    private double likeliest(OneParameter model) {
      double width = model.most() - model.least();
      double best = model.least();
      double highest = support(model, best);
      int place = 0;
      for (int step = 1; step <= STEPS; step++) {
        double parameter = step == STEPS ? model.most() : model.least() + width * step / STEPS;
        double value = support(model, parameter);
        if (value > highest) {
          highest = value;
          best = parameter;
          place = step;
        }
      }
      double from = model.least() + width * Math.max(0, place - 1) / STEPS;
      double to =
          Math.min(model.most(), model.least() + width * Math.min(STEPS, place + 1) / STEPS);
      double found =
          new BrentOptimizer(1e-10, 1e-14)
              .optimize(
                  new MaxEval(1_000),
                  GoalType.MAXIMIZE,
                  new SearchInterval(from, to, (from + to) / 2),
                  // An infinity would leave its parabola without numbers.
                  new UnivariateObjectiveFunction(
                      parameter -> Math.max(-Double.MAX_VALUE, support(model, parameter))))
              .getPoint();
      return support(model, found) > highest ? found : best;
    }

    /**
     * How far the log-likelihood lies from that of the shares counted. Both are large numbers, and
     * where they lie is not to be lost in their rounding.
     */
    private double support(OneParameter model, double parameter) {
      double[] shares = model.sharesAt(parameter);
      requireClasses(model.name(), shares);
      double sum = 0;
      for (int i = 0; i < counts.length; i++) {
        if (counts[i] > 0) {
          sum += counts[i] * Math.log(shares[i] * seedlings / counts[i]);
        }
      }
      return sum;
    }

    private void requireClasses(String name, double[] shares) {
      if (shares.length != counts.length) {
        throw new IllegalArgumentException(
            "\""
                + name
                + "\" has "
                + shares.length
                + " classes, but "
                + counts.length
                + " were counted; give a count for each class, 0 if none was seen");
      }
    }
  }
}
