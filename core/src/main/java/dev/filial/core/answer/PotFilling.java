package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Sown;
import java.util.ArrayList;
import java.util.List;

/** How seed was spread over pots, where the grower says only how many pots there were. */
public final class PotFilling {

  /** The most pots that one sowing is spread over in this way. */
  public static final int MOST = 1000;

  private PotFilling() {}

  /**
   * Alike over so many new pots, numbered on. What does not come out even is a guess for every pot,
   * and seed that nobody counted remains uncounted.
   *
   * @param whole the cross or packet that the pots stand under
   * @param pots 1 to {@link #MOST}
   * @throws IllegalArgumentException if there are no pots or too many
   */
  public static List<Sown.Filled> evenly(RegisterView view, Code whole, Count seeds, int pots) {
    if (pots < 1 || pots > MOST) {
      throw new IllegalArgumentException(
          pots + " pots; a sowing is spread over 1 to " + MOST + " in one entry");
    }
    int first = NextCode.in(view).group(whole).part().number();
    List<Sown.Filled> filled = new ArrayList<>();
    for (int i = 0; i < pots; i++) {
      filled.add(new Sown.Filled(whole.whole().group(first + i), portion(seeds, pots), null));
    }
    return List.copyOf(filled);
  }

  private static Count portion(Count seeds, int pots) {
    if (seeds instanceof Count.Exact exact && exact.number() % pots == 0) {
      return Count.of(exact.number() / pots);
    }
    return seeds.size().isEmpty()
        ? pots == 1 ? seeds : Count.unknown()
        : Count.about(Math.round(seeds.size().getAsLong() / (double) pots));
  }
}
