package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.number.Decimal;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import java.util.List;
import java.util.Optional;

/**
 * A cross of plants that are close kin: kinship alone would inbreed their seedlings by 1/16 or
 * more. What inbreeds seedlings of tetraploids whoever the other parent is, double reduction and an
 * inbred parent, makes no cross a close one.
 *
 * @param seed the seed parent
 * @param pollen the pollen parent, another genotype: a selfing is close on purpose, and is none
 * @param kin what kin they are, in words
 * @param inbreeding the inbreeding coefficient of their seedlings, 1/16 or more
 * @param byKinship how much of that comes of their kinship, 1/16 or more; all of it for diploids
 */
public record CloseCross(
    String seed, String pollen, String kin, double inbreeding, double byKinship) {

  /** From here on a cross is called close: as of first cousins. Common practice, no source. */
  public static final double FROM = 1 / 16.0;

  private static final double ROUNDING = 1e-9;

  static boolean isClose(double byKinship) {
    return byKinship >= FROM - ROUNDING;
  }

  /**
   * The cross of two plants if it is close; empty if it is not, or nothing can be said of it.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   */
  public static Optional<CloseCross> of(RegisterView view, Code seed, Code pollen) {
    KinBehind behind;
    try {
      behind = KinBehind.of(view, List.of(seed, pollen));
    } catch (PedigreeException e) {
      return Optional.empty(); // what else was asked can be answered all the same
    }
    int one = behind.plant(0);
    int other = behind.plant(1);
    Double inbreeding = behind.seedlings(one, other).inbreeding();
    return inbreeding == null ? Optional.empty() : of(behind, one, other, inbreeding);
  }

  /**
   * A recorded cross of two known plants if it is close.
   *
   * @param behind the pedigree behind it
   * @param cross its code
   */
  public static Optional<CloseCross> of(RegisterView view, RegisterPedigree behind, Code cross) {
    KinBehind kin = KinBehind.of(view, behind);
    Pedigree pedigree = kin.pedigree();
    int seedling = pedigree.indexOf(cross.text());
    int seed = pedigree.seedParent(seedling);
    int pollen = pedigree.pollenParent(seedling);
    return pedigree.caseCount(seedling) != 1 || seed < 0 || pollen < 0
        ? Optional.empty()
        : of(kin, seed, pollen, kin.coancestry().inbreeding(seedling));
  }

  /**
   * Whether two plants cannot be kin by what their own records say: two different plants that both
   * came in from elsewhere, and not both under a field number. Costs no look at any pedigree.
   */
  public static boolean isOfStrangers(RegisterView view, Code seed, Code pollen) {
    Item one = view.resolved(seed).orElse(null);
    Item other = view.resolved(pollen).orElse(null);
    return one != null
        && other != null
        && !one.code().equals(other.code())
        && cameIn(one)
        && cameIn(other)
        && (one.fieldNumber() == null || other.fieldNumber() == null);
  }

  /** A seedling out of a packet is not meant: it has sibs in it. */
  private static boolean cameIn(Item plant) {
    return plant.kind() == Item.Kind.PLANT && plant.descent().isEmpty();
  }

  private static Optional<CloseCross> of(
      KinBehind behind, int seed, int pollen, double inbreeding) {
    // Kinship is no more than all of it, and that is known already.
    if (!isClose(inbreeding) || behind.isSame(seed, pollen)) {
      return Optional.empty();
    }
    double coancestry = behind.coancestry().between(seed, pollen);
    double byKinship = behind.byKinship(seed, pollen, coancestry);
    if (!isClose(byKinship)) {
      return Optional.empty();
    }
    return Optional.of(
        new CloseCross(
            behind.pedigree().code(seed),
            behind.pedigree().code(pollen),
            behind.kin(seed, pollen, coancestry),
            inbreeding,
            byKinship));
  }

  /** That it is close, as a warning says it: without a full stop. */
  public String text() {
    return "a close cross: "
        + seed
        + " and "
        + pollen
        + " are "
        + kin
        + "; their seedlings would be inbred by "
        + Decimal.percent(inbreeding, 1)
        + (inbreeding - byKinship < ROUNDING
            ? ""
            : ", " + Decimal.percent(byKinship, 1) + " by that kinship");
  }

  /** The same as a sentence. */
  public String sentence() {
    return "It is " + text() + ".";
  }
}
