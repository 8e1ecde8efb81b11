package dev.filial.core.answer;

import dev.filial.core.ancestry.Coancestry;
import dev.filial.core.ancestry.CoancestryMatrix;
import dev.filial.core.ancestry.FounderContributions;
import dev.filial.core.answer.Related.IfAkin;
import dev.filial.core.name.Code;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * How plants of a register are related, how inbred they are, and how inbred their seedlings would
 * be.
 *
 * <p>Seedlings of one acquired packet are taken as full sibs. How plants are related that were
 * acquired apart under one collector's field number nobody recorded: the answer takes them as
 * unrelated and says what it would be if they were half or full sibs. All other plants without
 * recorded parents are taken as unrelated and not inbred.
 */
public final class KinshipQuestion {

  private static final double ROUNDING = 1e-9;

  private final RegisterView view;

  private KinshipQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static KinshipQuestion of(RegisterView view) {
    return new KinshipQuestion(view);
  }

  /**
   * Two plants.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Related between(Code one, Code other) {
    KinBehind behind = KinBehind.of(view, List.of(one, other));
    int first = behind.plant(0);
    int second = behind.plant(1);
    Coancestry.Pair pair = behind.coancestry().pair(first, second);
    boolean same = behind.isSame(first, second);
    KinBehind.OfSeedlings seedlings = behind.seedlings(first, second);
    List<String> notes = new ArrayList<>();
    if (seedlings.inbreeding() == null) {
      notes.add("How inbred seedlings would be is not said: " + seedlings.why() + ".");
    }
    notes.addAll(behind.notes());
    return new Related(
        behind.name(0),
        behind.name(1),
        same,
        pair.coancestry(),
        behind.kin(first, second, pair.coancestry()),
        same ? List.of() : through(behind.pedigree(), first, second),
        pair.inbreedingOfOne(),
        pair.inbreedingOfOther(),
        seedlings.inbreeding(),
        seedlings.inbreeding() == null
            ? null
            : (Double) behind.byKinship(first, second, pair.coancestry()),
        ifAkin(behind, pair.coancestry()),
        notes);
  }

  private static List<IfAkin> ifAkin(KinBehind unrelated, double theta) {
    List<IfAkin> all = new ArrayList<>();
    boolean matters = false;
    if (!unrelated.fieldNumbers().isEmpty()) {
      for (FieldNumberKin kin : List.of(FieldNumberKin.HALF_SIBS, FieldNumberKin.FULL_SIBS)) {
        KinBehind akin = unrelated.with(kin);
        int first = akin.plant(0);
        int second = akin.plant(1);
        double its = akin.coancestry().between(first, second);
        matters |= Math.abs(its - theta) > ROUNDING;
        all.add(new IfAkin(kin, its, akin.seedlings(first, second).inbreeding()));
      }
    }
    return matters ? all : List.of();
  }

  /** The common ancestors that are behind no other common ancestor. */
  private static List<String> through(Pedigree pedigree, int one, int other) {
    BitSet common = genotypes(pedigree, one);
    common.and(genotypes(pedigree, other));
    List<String> youngest = new ArrayList<>();
    BitSet covered = new BitSet();
    for (int i = common.length() - 1; i >= 0; i = i == 0 ? -1 : common.previousSetBit(i - 1)) {
      if (!covered.get(i)) {
        youngest.add(pedigree.code(i));
        covered.or(genotypes(pedigree, i));
      }
    }
    return List.copyOf(youngest);
  }

  private static BitSet genotypes(Pedigree pedigree, int plant) {
    BitSet genotypes = new BitSet();
    pedigree.ancestors(plant).stream().forEach(i -> genotypes.set(pedigree.genet(i)));
    return genotypes;
  }

  /**
   * One plant.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public Inbred of(Code code) {
    KinBehind behind = KinBehind.of(view, List.of(code));
    int plant = behind.plant(0);
    FounderContributions founders = FounderContributions.of(behind.pedigree(), plant);
    return new Inbred(
        behind.name(0),
        behind.coancestry().inbreeding(plant),
        founders.founders(),
        founders.unknown(),
        founders.effectiveNumber(),
        behind.notes());
  }

  /**
   * Several plants with each other.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws IllegalArgumentException if they are more than a matrix is made for
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  public KinTable among(List<Code> codes) {
    KinBehind behind = KinBehind.of(view, codes);
    CoancestryMatrix matrix = behind.coancestry().matrix(behind.plants());
    List<String> notes = new ArrayList<>();
    if (!behind.fieldNumbers().isEmpty()) {
      notes.add(
          "Plants acquired apart as "
              + String.join(", ", behind.fieldNumbers())
              + " are taken as unrelated; asked for two at a time, it is said what changes if they"
              + " are sibs.");
    }
    notes.addAll(behind.notes());
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < matrix.size(); i++) {
      List<Double> row = new ArrayList<>();
      for (int j = 0; j < matrix.size(); j++) {
        row.add(matrix.between(i, j));
      }
      rows.add(row);
    }
    return new KinTable(behind.names(), rows, matrix.meanOfPairs(), notes);
  }
}
