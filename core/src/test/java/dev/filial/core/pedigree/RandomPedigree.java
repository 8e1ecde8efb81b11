package dev.filial.core.pedigree;

import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * Records of every kind a pedigree may have, up to thirty plants: made from a list of small
 * numbers, so that what jqwik shrinks a failure to is a short pedigree.
 */
public final class RandomPedigree {

  private static final String[] TAXA = {"E. agavoides", "E. laui", "E. elegans", "E. setosa"};

  private RandomPedigree() {}

  /** Three numbers that say what one plant is. */
  private record Dice(int kind, int one, int other) {}

  /** Lists of records, parents before offspring. */
  public static Arbitrary<List<PlantRecord>> records() {
    Arbitrary<Dice> dice =
        Combinators.combine(
                Arbitraries.integers().between(0, 11),
                Arbitraries.integers().between(0, 29),
                Arbitraries.integers().between(0, 29))
            .as(Dice::new);
    return dice.list().ofMinSize(1).ofMaxSize(30).map(RandomPedigree::grow);
  }

  private static List<PlantRecord> grow(List<Dice> dice) {
    List<PlantRecord> records = new ArrayList<>();
    for (Dice one : dice) {
      int n = records.size();
      String code = "P" + n;
      if (n < 2 || one.kind < 3) {
        records.add(founder(code, one));
        continue;
      }
      Pedigree soFar = Pedigree.of(records);
      String seed = "P" + one.one % n;
      String pollen = "P" + one.other % n;
      records.add(seedling(code, one, soFar, seed, pollen));
    }
    return records;
  }

  private static PlantRecord founder(String code, Dice dice) {
    return switch (dice.other % 6) {
      case 0 -> PlantRecord.unknown(code);
      case 1 ->
          PlantRecord.hybrid(
              code, Makeup.of(Map.of(TAXA[0], Fraction.of(1, 3), TAXA[1], Fraction.of(1, 2))));
      case 2 -> PlantRecord.pure(code, TAXA[dice.one % 4], 4);
      default -> PlantRecord.pure(code, TAXA[dice.one % 4]);
    };
  }

  private static PlantRecord seedling(
      String code, Dice dice, Pedigree soFar, String seed, String pollen) {
    Gamete seedGamete = gamete(soFar, seed);
    Gamete pollenGamete = gamete(soFar, pollen);
    return switch (dice.kind) {
      case 3 -> PlantRecord.ramet(code, seed);
      case 4 -> PlantRecord.apomict(code, seed);
      case 5 -> PlantRecord.cross(code, seedGamete, Gamete.unknown());
      case 6 -> PlantRecord.cross(code, seedGamete, seedGamete);
      case 7 ->
          PlantRecord.seedling(
              code,
              new Case.Sexual(Fraction.of(2, 3), Route.POLLEN_MIX, seedGamete, pollenGamete),
              new Case.Sexual(Fraction.of(1, 6), Route.STRAY, seedGamete, Gamete.unknown()),
              Case.apomict(Fraction.of(1, 6), seed));
      case 8 ->
          PlantRecord.seedling(
              code,
              new Case.Copy(Fraction.of(1, 4), Route.IDENTITY, seed),
              new Case.Copy(Fraction.of(3, 4), Route.IDENTITY, pollen));
      default -> PlantRecord.cross(code, seedGamete, pollenGamete);
    };
  }

  /** States the sets where half of the ploidy is none, or would grow without end. */
  private static Gamete gamete(Pedigree soFar, String code) {
    int ploidy = soFar.ploidy(soFar.indexOf(code));
    return ploidy == 0 || ploidy % 2 == 1 || ploidy > 6
        ? Gamete.unreduced(code, 1)
        : Gamete.of(code);
  }
}
