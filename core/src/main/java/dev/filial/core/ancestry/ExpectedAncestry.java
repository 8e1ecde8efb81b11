package dev.filial.core.ancestry;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The expected share of each taxon in one plant, exactly.
 *
 * <p>The share of a taxon is the mean of the parents' shares weighted by the chromosome sets each
 * gamete brought: a half each at equal ploidy, two thirds and a third from a 4x × 2x cross. An
 * unknown parent is an unknown share. Where a plant may have come about in several ways, the answer
 * is the mean over them, weighted by how likely each is, and the ways are listed.
 *
 * <p>Rational arithmetic over the plant's ancestors, each visited once, without recursion; the
 * numbers grow by at most one doubling of the denominator a generation.
 *
 * @param code the plant
 * @param shares its expected shares
 * @param cases the ways it may have come about, in the order recorded; one for a plain cross, none
 *     for a founder or a ramet
 * @param seedLine whose cytoplasm it has
 */
public record ExpectedAncestry(
    String code, Shares shares, List<CaseShares> cases, SeedLine seedLine) {

  /** Copies the cases. */
  public ExpectedAncestry {
    cases = List.copyOf(cases);
  }

  /**
   * One way a plant may have come about.
   *
   * @param share how likely it is
   * @param route how it went
   * @param seed the seed parent's code, or the plant that is repeated; null if unknown
   * @param pollen the pollen parent's code; null if unknown, or for a repeated plant
   * @param copy whether the plant repeats {@code seed}
   * @param ploidy the chromosome sets of a plant of this case, 0 if they differ
   * @param shares the expected shares in this case
   */
  public record CaseShares(
      Fraction share,
      Route route,
      @Nullable String seed,
      @Nullable String pollen,
      boolean copy,
      int ploidy,
      Shares shares) {}

  /**
   * The expected ancestry of the plant of this code.
   *
   * @throws dev.filial.core.pedigree.PedigreeException if there is no such plant
   */
  public static ExpectedAncestry of(Pedigree pedigree, String code) {
    int plant = pedigree.indexOf(code);
    Pass pass = new Pass(pedigree);
    BitSet behind = pedigree.ancestors(plant);
    for (int i = behind.nextSetBit(0); i >= 0; i = behind.nextSetBit(i + 1)) {
      pass.visit(i);
    }
    List<CaseShares> cases = new ArrayList<>();
    for (Descent descent : pedigree.descents(plant)) {
      cases.add(caseShares(pedigree, descent, pass.of(descent).shares(pass.taxa)));
    }
    return new ExpectedAncestry(
        code, pass.behind(plant).shares(pass.taxa), cases, SeedLine.of(pedigree, code));
  }

  private static CaseShares caseShares(Pedigree pedigree, Descent descent, Shares shares) {
    if (descent instanceof Descent.Sexual cross) {
      return new CaseShares(
          cross.share(),
          cross.route(),
          code(pedigree, cross.seed()),
          code(pedigree, cross.pollen()),
          false,
          cross.ploidy(),
          shares);
    }
    int of = ((Descent.Copy) descent).of();
    return new CaseShares(
        descent.share(),
        descent.route(),
        pedigree.code(of),
        null,
        true,
        pedigree.ploidy(of),
        shares);
  }

  private static @Nullable String code(Pedigree pedigree, int plant) {
    return plant == Pedigree.UNKNOWN ? null : pedigree.code(plant);
  }

  /** One walk from the founders down. */
  private static final class Pass {
    private final Pedigree pedigree;
    private final List<String> taxa;
    private final Portions unknown;
    private final Map<Integer, Portions> known = new HashMap<>();

    Pass(Pedigree pedigree) {
      this.pedigree = pedigree;
      this.taxa = List.copyOf(pedigree.taxa());
      this.unknown = Portions.unknown(taxa.size());
    }

    /** Works out a plant; what stands behind it was visited before. */
    void visit(int plant) {
      known.put(plant, portions(plant));
    }

    private Portions portions(int plant) {
      Founder founder = pedigree.founder(plant);
      if (founder != null) {
        return Portions.of(founder.makeup(), taxa);
      }
      if (pedigree.isRamet(plant)) {
        return behind(pedigree.rametOf(plant));
      }
      List<Descent> descents = pedigree.descents(plant);
      if (descents.size() == 1) {
        return of(descents.get(0));
      }
      List<Fraction> weights = new ArrayList<>();
      List<Portions> ways = new ArrayList<>();
      for (Descent descent : descents) {
        weights.add(descent.share());
        ways.add(of(descent));
      }
      return Portions.mean(weights, ways);
    }

    Portions of(Descent descent) {
      if (descent instanceof Descent.Sexual cross) {
        Portions seed = behind(cross.seed());
        Portions pollen = behind(cross.pollen());
        if (seed == pollen) {
          return seed;
        }
        return cross.seedSets() == cross.pollenSets()
            ? Portions.mean(seed, pollen)
            : Portions.mean(
                List.of(cross.seedWeight(), cross.pollenWeight()), List.of(seed, pollen));
      }
      return behind(((Descent.Copy) descent).of());
    }

    Portions behind(int plant) {
      return plant == Pedigree.UNKNOWN ? unknown : known.getOrDefault(plant, unknown);
    }
  }
}
