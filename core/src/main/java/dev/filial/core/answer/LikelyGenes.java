package dev.filial.core.answer;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a plant most likely carries, by everything that was seen.
 *
 * @param plant its code, or what it stands for
 * @param traits the traits whose genes are answered
 * @param ways the answer under each assumption; usually one
 * @param why the entries that moved the odds, those that moved them most first; empty if not asked
 * @param notes what was taken for granted, a sentence each
 */
public record LikelyGenes(
    String plant, List<String> traits, List<Way> ways, List<Influence> why, List<String> notes) {

  /**
   * Under one assumption.
   *
   * @param assuming what is assumed; null if nothing has to be
   * @param genotypes what it may carry, the likeliest first
   * @param carried how likely it carries each allele
   * @param traits what is said of each trait
   * @param findings how many observations, tallies and statements were weighed
   * @param exact whether the odds are exact and not sampled
   * @param width how many unknowns had to be looked at together, less one
   */
  public record Way(
      @Nullable String assuming,
      List<Genes> genotypes,
      List<Carried> carried,
      List<OfTrait> traits,
      int findings,
      boolean exact,
      int width) {}

  /**
   * What it may carry.
   *
   * @param genes as {@code Tt Ww}
   * @param chance how likely, 0 to 1
   * @param error the standard error of that where it was sampled, else 0
   */
  public record Genes(String genes, double chance, double error) {}

  /**
   * One allele.
   *
   * @param gene the gene's name
   * @param allele its symbol
   * @param chance how likely the plant has it at least once, 0 to 1
   */
  public record Carried(String gene, String allele, double chance) {}

  /**
   * One trait.
   *
   * @param trait its name
   * @param shows how likely the plant shows each state, in the order of the states
   * @param breedsTrue how likely it breeds true for it; null where that is not reckoned
   * @param test what a test cross would tell; null if nothing is left to tell
   */
  public record OfTrait(
      String trait, List<State> shows, @Nullable Double breedsTrue, @Nullable Test test) {}

  /**
   * A state.
   *
   * @param chance how likely, 0 to 1
   */
  public record State(String state, double chance) {}

  /**
   * What a test cross would tell.
   *
   * @param tester what the plant would be crossed with
   * @param sureness how sure one wants to be, 0 to 1
   * @param seedlings how many seedlings that takes on the average; null if more than are gone
   *     through, or if {@code atMost} is less than one wants
   * @param bits what is not known now of what such a cross can tell, in bits
   * @param alike genotypes that no number of its seedlings tells apart, the likeliest first
   * @param atMost how sure any number of seedlings makes one, 0 to 1; 1 if none are alike
   * @param parting how many seedlings name it so surely up to what is alike; null if more than are
   *     gone through
   */
  public record Test(
      String tester,
      double sureness,
      @Nullable Integer seedlings,
      double bits,
      List<List<String>> alike,
      double atMost,
      @Nullable Integer parting) {
    /** Copies the genotypes. */
    public Test {
      alike = alike.stream().map(List::copyOf).toList();
    }
  }
}
