package dev.filial.core.answer;

import dev.filial.core.number.Fraction;
import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import java.util.List;

/**
 * What share of a mixed packet each lot makes up, where the grower does not say: by the number of
 * seeds where every lot was counted, else all alike.
 *
 * @param shares one for each lot, in their order; together exactly 1
 * @param counted whether they come from counts; if not they are only assumed
 */
public record MixtureShares(List<Fraction> shares, boolean counted) {

  /** Copies the list. */
  public MixtureShares {
    shares = List.copyOf(shares);
  }

  /**
   * The shares of lots that go in whole.
   *
   * @throws IllegalArgumentException if there are none, or a lot is known to be empty
   */
  public static MixtureShares of(List<Item> lots) {
    if (lots.isEmpty()) {
      throw new IllegalArgumentException("a mixed packet is made of at least two lots");
    }
    for (Item lot : lots) {
      if (Count.of(0).equals(lot.count())) {
        throw new IllegalArgumentException(
            "there is no seed left in " + lot.code().text() + "; leave it out of the mixture");
      }
    }
    if (lots.stream().allMatch(lot -> lot.count() instanceof Count.Exact)) {
      long all = lots.stream().mapToLong(MixtureShares::seeds).sum();
      return new MixtureShares(
          lots.stream().map(lot -> Fraction.of(seeds(lot), all)).toList(), true);
    }
    return new MixtureShares(lots.stream().map(lot -> Fraction.of(1, lots.size())).toList(), false);
  }

  private static long seeds(Item lot) {
    return lot.count() instanceof Count.Exact exact ? exact.number() : 0;
  }
}
