package dev.filial.core.inference;

/**
 * What is held to be so besides what was seen.
 *
 * @param priors what is known of the taxa
 * @param assumptions what is taken of the pedigree that it does not say
 * @param misread how often a state is written down that was not the one shown, 0 to below 1
 */
record Beliefs(FounderPriors priors, Assumptions assumptions, double misread) {

  Beliefs withPriors(FounderPriors known) {
    return new Beliefs(known, assumptions, misread);
  }

  Beliefs withAssumptions(Assumptions other) {
    return new Beliefs(priors, other, misread);
  }

  Beliefs withMisread(double rate) {
    return new Beliefs(priors, assumptions, rate);
  }
}
