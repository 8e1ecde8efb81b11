package dev.filial.core.answer;

import org.jspecify.annotations.Nullable;

/**
 * How what was seen is weighed.
 *
 * @param misread how often a state is written down that was not the one shown, 0 to below 1
 * @param strangers the taxon that pollen of unknown plants, and plants of unknown taxon, are taken
 *     to be of; null if nothing is known of them
 * @param sweeps how often everything is drawn anew where the exact odds would cost too much; 0 to
 *     refuse instead
 * @param dice what the draws begin with
 */
public record Weighing(double misread, @Nullable String strangers, int sweeps, long dice) {

  /** Nothing is misread, nothing is known of strangers, nothing is sampled. */
  public static final Weighing PLAIN = new Weighing(0, null, 0, 1);

  /** The same with states misread so often. */
  public Weighing withMisreading(double rate) {
    return new Weighing(rate, strangers, sweeps, dice);
  }

  /** The same with strangers of that taxon. */
  public Weighing withStrangers(String taxon) {
    return new Weighing(misread, taxon, sweeps, dice);
  }

  /** The same with what is too tangled drawn so often. */
  public Weighing withSampling(int times, long start) {
    return new Weighing(misread, strangers, times, start);
  }
}
