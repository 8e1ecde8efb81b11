package dev.filial.core.answer;

import dev.filial.core.ancestry.Coancestry;
import dev.filial.core.ancestry.CoancestryMatrix;
import dev.filial.core.ancestry.FounderContributions;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeException;
import dev.filial.core.register.ProfileStated;
import dev.filial.core.register.RegisterView;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

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

  /** From here on a cross is called close: as of first cousins. Common practice, no source. */
  public static final double CLOSE = 1 / 16.0;

  private static final double ROUNDING = 1e-9;
  private static final int TETRAPLOID = 4;

  private final RegisterView view;

  private KinshipQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static KinshipQuestion of(RegisterView view) {
    return new KinshipQuestion(view);
  }

  /**
   * How two plants are related.
   *
   * @param one a plant, or a family one seedling of which is meant
   * @param other another; the same family again is another seedling of it
   * @param samePlant whether both are one genotype, as a plant and its offset
   * @param coancestry the chance that an allele drawn from either is one by descent, 0 to 1
   * @param kin what that is as close as, in words
   * @param through the youngest plants that both descend from, or that one is and the other
   *     descends from
   * @param inbreedingOfOne the inbreeding coefficient of the first, 0 to 1
   * @param inbreedingOfOther that of the other
   * @param inbreedingOfSeedlings that their seedlings would have; null if their gametes are not
   *     known to be half of each
   * @param ifAkin what it would be if plants of one field number were related; empty if none of it
   *     hangs on that
   * @param notes what the answer leans on, a sentence each
   */
  public record Related(
      String one,
      String other,
      boolean samePlant,
      double coancestry,
      String kin,
      List<String> through,
      double inbreedingOfOne,
      double inbreedingOfOther,
      @Nullable Double inbreedingOfSeedlings,
      List<IfAkin> ifAkin,
      List<String> notes) {

    /** Whether seedlings of the two would be inbred by {@link #CLOSE} or more. */
    public boolean isClose() {
      return inbreedingOfSeedlings != null && inbreedingOfSeedlings >= CLOSE - ROUNDING;
    }
  }

  /**
   * What would be if plants acquired apart under one field number were kin.
   *
   * @param kin what kin
   * @param coancestry of the two plants
   * @param inbreedingOfSeedlings that their seedlings would have; null if it cannot be said
   */
  public record IfAkin(
      FieldNumberKin kin, double coancestry, @Nullable Double inbreedingOfSeedlings) {}

  /**
   * How inbred a plant is, and which founders stand behind it.
   *
   * @param code the plant, or a family one seedling of which is meant
   * @param inbreeding the chance that its two alleles at a locus are one by descent, 0 to 1
   * @param founders the founders behind it, the largest share first
   * @param unknown the share of parents nobody knows
   * @param effectiveFounders how many founders of like shares would be as varied
   * @param notes what the answer leans on, a sentence each
   */
  public record Inbred(
      String code,
      double inbreeding,
      List<FounderShare> founders,
      double unknown,
      double effectiveFounders,
      List<String> notes) {}

  /**
   * A founder and its share.
   *
   * @param name its code, or what it is called that has none
   * @param share expected, above 0 and at most 1
   */
  public record FounderShare(String name, double share) {}

  /**
   * The coancestries of several plants.
   *
   * @param plants the plants, in the order asked
   * @param coancestry a row for each plant
   * @param mean over all pairs of different plants; 0 of a single one
   * @param notes what the answer leans on, a sentence each
   */
  public record Table(
      List<String> plants, List<List<Double>> coancestry, double mean, List<String> notes) {

    /** Copies the lists. */
    public Table {
      plants = List.copyOf(plants);
      coancestry = List.copyOf(coancestry);
      notes = List.copyOf(notes);
    }
  }

  /**
   * Two plants.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws PedigreeException if the pedigree cannot be computed with
   */
  public Related between(Code one, Code other) {
    RegisterPedigree plain = pedigree(List.of(one, other));
    KinPedigree kin = KinPedigree.of(plain, FieldNumberKin.UNRELATED);
    Pedigree pedigree = kin.pedigree();
    int first = pedigree.indexOf(plain.asked().get(0));
    int second = pedigree.indexOf(plain.asked().get(1));
    List<String> notes = new ArrayList<>();
    Coancestry coancestry = coancestry(pedigree, notes);
    double theta = coancestry.between(first, second);
    boolean same = isSame(pedigree, first, second);
    Double ofSeedlings = ofSeedlings(coancestry, first, second, notes);
    addPackets(kin, notes);
    notes.addAll(plain.notes());
    return new Related(
        plain.asked().get(0),
        plain.asked().get(1),
        same,
        theta,
        same ? "one and the same plant" : NearKin.of(theta, ploidy(pedigree, first, second)),
        same ? List.of() : through(pedigree, first, second),
        coancestry.inbreeding(first),
        coancestry.inbreeding(second),
        ofSeedlings,
        ifAkin(plain, kin, theta),
        List.copyOf(notes));
  }

  private RegisterPedigree pedigree(List<Code> codes) {
    List<Code> known = new ArrayList<>();
    for (Code code : codes) {
      known.add(Things.required(view, code).code());
    }
    return RegisterPedigree.of(view, known, false);
  }

  private static boolean isSame(Pedigree pedigree, int one, int other) {
    return pedigree.genet(one) == pedigree.genet(other)
        && pedigree.ploidy(one) == pedigree.ploidy(other);
  }

  /** The ploidy both have; 0 if they differ. */
  private static int ploidy(Pedigree pedigree, int one, int other) {
    return pedigree.ploidy(one) == pedigree.ploidy(other) ? pedigree.ploidy(one) : 0;
  }

  /** Where tetraploids are behind, by what is stated of how the chromosomes of their taxa pair. */
  private Coancestry coancestry(Pedigree pedigree, List<String> notes) {
    Coancestry coancestry = Coancestry.of(pedigree);
    Set<String> taxa = new TreeSet<>();
    boolean tetraploid = false;
    for (int i = 0; i < pedigree.size(); i++) {
      Founder founder = pedigree.founder(i);
      tetraploid |= pedigree.ploidy(i) == TETRAPLOID;
      if (founder != null) {
        taxa.addAll(founder.makeup().shares().keySet());
      }
    }
    if (!tetraploid) {
      return coancestry;
    }
    Map<Fraction, List<String>> stated = new LinkedHashMap<>();
    List<String> disomic = new ArrayList<>();
    for (String taxon : taxa) {
      Optional<ProfileStated> pairing = pairing(taxon);
      if (pairing.isPresent() && pairing.get().pairing() == ProfileStated.Pairing.DISOMIC) {
        disomic.add(taxon);
      }
      pairing
          .map(ProfileStated::doubleReduction)
          .ifPresent(alpha -> stated.computeIfAbsent(alpha, any -> new ArrayList<>()).add(taxon));
    }
    Fraction alpha = stated.isEmpty() ? Fraction.ZERO : stated.keySet().iterator().next();
    notes.add(
        "Of tetraploids any two of the four chromosomes are taken to pair, with double reduction "
            + alpha
            + (stated.isEmpty()
                ? ", as none is stated."
                : ", as stated of " + String.join(", ", stated.values().iterator().next()) + "."));
    if (stated.size() > 1) {
      notes.add(
          "Double reduction is stated differently of others, which is not reckoned with: "
              + stated.keySet().stream()
                  .skip(1)
                  .map(other -> other + " of " + String.join(", ", stated.get(other)))
                  .collect(Collectors.joining("; "))
              + ".");
    }
    if (!disomic.isEmpty()) {
      notes.add(
          "Chromosomes of "
              + String.join(", ", disomic)
              + " are stated to pair only within subgenomes; inbreeding of its tetraploids is not"
              + " reckoned by that, and the figures do not hold for it.");
    }
    return coancestry.withDoubleReduction(alpha.toDouble());
  }

  /** What is stated of how chromosomes pair: of the taxon, its species or its genus. */
  private Optional<ProfileStated> pairing(String taxon) {
    for (String name : MapInUse.upwards(view, taxon)) {
      Optional<ProfileStated> profile = view.profile(name);
      if (profile.isPresent() && profile.get().pairing() != null) {
        return profile;
      }
    }
    return Optional.empty();
  }

  private static @Nullable Double ofSeedlings(
      Coancestry coancestry, int one, int other, List<String> notes) {
    try {
      return coancestry.inbreedingOfSeedlings(one, other);
    } catch (PedigreeException e) {
      notes.add("How inbred seedlings would be is not said: " + e.getMessage() + ".");
      return null;
    }
  }

  private static void addPackets(KinPedigree kin, List<String> notes) {
    for (Code packet : kin.packets()) {
      notes.add(
          "Seedlings of the acquired packet "
              + packet.text()
              + " are taken as full sibs; nobody recorded their parents.");
    }
  }

  private List<IfAkin> ifAkin(RegisterPedigree plain, KinPedigree unrelated, double theta) {
    if (unrelated.fieldNumbers().isEmpty()) {
      return List.of();
    }
    List<IfAkin> all = new ArrayList<>();
    boolean matters = false;
    for (FieldNumberKin kin : List.of(FieldNumberKin.HALF_SIBS, FieldNumberKin.FULL_SIBS)) {
      Pedigree pedigree = KinPedigree.of(plain, kin).pedigree();
      Coancestry coancestry = coancestry(pedigree, new ArrayList<>());
      int first = pedigree.indexOf(plain.asked().get(0));
      int second = pedigree.indexOf(plain.asked().get(1));
      double its = coancestry.between(first, second);
      matters |= Math.abs(its - theta) > ROUNDING;
      all.add(new IfAkin(kin, its, ofSeedlings(coancestry, first, second, new ArrayList<>())));
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
   * @throws PedigreeException if the pedigree cannot be computed with
   */
  public Inbred of(Code code) {
    RegisterPedigree plain = pedigree(List.of(code));
    KinPedigree kin = KinPedigree.of(plain, FieldNumberKin.UNRELATED);
    Pedigree pedigree = kin.pedigree();
    int plant = pedigree.indexOf(plain.asked().get(0));
    List<String> notes = new ArrayList<>();
    double inbreeding = coancestry(pedigree, notes).inbreeding(plant);
    addPackets(kin, notes);
    notes.addAll(plain.notes());
    FounderContributions behind = FounderContributions.of(pedigree, plant);
    return new Inbred(
        plain.asked().get(0),
        inbreeding,
        shares(behind),
        behind.unknown(),
        behind.effectiveNumber(),
        List.copyOf(notes));
  }

  private static List<FounderShare> shares(FounderContributions behind) {
    return behind.founders().stream()
        .map(one -> new FounderShare(one.code(), one.share()))
        .toList();
  }

  /**
   * Several plants with each other.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws IllegalArgumentException if they are more than a matrix is made for
   * @throws PedigreeException if the pedigree cannot be computed with
   */
  public Table among(List<Code> codes) {
    RegisterPedigree plain = pedigree(codes);
    KinPedigree kin = KinPedigree.of(plain, FieldNumberKin.UNRELATED);
    Pedigree pedigree = kin.pedigree();
    List<String> notes = new ArrayList<>();
    CoancestryMatrix matrix =
        coancestry(pedigree, notes)
            .matrix(plain.asked().stream().mapToInt(pedigree::indexOf).toArray());
    addPackets(kin, notes);
    if (!kin.fieldNumbers().isEmpty()) {
      notes.add(
          "Plants acquired apart as "
              + String.join(", ", kin.fieldNumbers())
              + " are taken as unrelated; asked for two at a time, it is said what changes if they"
              + " are sibs.");
    }
    notes.addAll(plain.notes());
    List<List<Double>> rows = new ArrayList<>();
    double sum = 0;
    int n = matrix.size();
    for (int i = 0; i < n; i++) {
      Double[] row = new Double[n];
      for (int j = 0; j < n; j++) {
        row[j] = matrix.between(i, j);
        sum += i == j ? 0 : row[j];
      }
      rows.add(List.copyOf(Arrays.asList(row)));
    }
    return new Table(plain.asked(), rows, n < 2 ? 0 : sum / ((double) n * (n - 1)), notes);
  }

  /**
   * Founders behind a collection.
   *
   * @param genotypes how many genotypes it has, offsets not counted again
   * @param founders the largest share first
   * @param unknown the share of parents nobody knows
   * @param unknownParents how many these are
   * @param effectiveFounders how many founders of like shares would be as varied
   * @param meanCoancestry over all pairs of genotypes, each with itself too; null if they are more
   *     than a matrix is made for
   * @param notes what the answer leans on, a sentence each
   */
  public record Founded(
      int genotypes,
      List<FounderShare> founders,
      double unknown,
      int unknownParents,
      double effectiveFounders,
      @Nullable Double meanCoancestry,
      List<String> notes) {}

  /**
   * Who founded a collection of plants.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   * @throws PedigreeException if the pedigree cannot be computed with
   */
  public Founded founders(List<Code> codes) {
    RegisterPedigree plain = pedigree(codes);
    KinPedigree kin = KinPedigree.of(plain, FieldNumberKin.UNRELATED);
    Pedigree pedigree = kin.pedigree();
    int[] plants = plain.asked().stream().mapToInt(pedigree::indexOf).toArray();
    FounderContributions behind = FounderContributions.of(pedigree, plants);
    List<String> notes = new ArrayList<>();
    int[] different = Arrays.stream(plants).map(pedigree::genet).distinct().toArray();
    Double mean =
        different.length <= CoancestryMatrix.MOST
            ? (Double) coancestry(pedigree, notes).matrix(different).mean()
            : null;
    addPackets(kin, notes);
    return new Founded(
        behind.genotypes(),
        shares(behind),
        behind.unknown(),
        behind.unknownParents(),
        behind.effectiveNumber(),
        mean,
        List.copyOf(notes));
  }

  /**
   * A sentence if a cross of two plants is close; empty if it is not, if it is a selfing, which is
   * close on purpose, or if nothing can be said.
   */
  public Optional<String> closeCross(Code seed, Code pollen) {
    RegisterPedigree plain;
    try {
      plain = pedigree(List.of(seed, pollen));
    } catch (PedigreeException e) {
      return Optional.empty(); // what was asked for can be answered all the same
    }
    Pedigree pedigree = KinPedigree.of(plain, FieldNumberKin.UNRELATED).pedigree();
    int one = pedigree.indexOf(plain.asked().get(0));
    int other = pedigree.indexOf(plain.asked().get(1));
    Coancestry coancestry = coancestry(pedigree, new ArrayList<>());
    Double inbreeding = ofSeedlings(coancestry, one, other, new ArrayList<>());
    return inbreeding == null
        ? Optional.empty()
        : closeCross(pedigree, coancestry, one, other, inbreeding);
  }

  /**
   * The same of a recorded cross of two known plants.
   *
   * @param behind the pedigree behind it
   * @param cross its code
   */
  public Optional<String> closeCross(RegisterPedigree behind, Code cross) {
    Pedigree pedigree = KinPedigree.of(behind, FieldNumberKin.UNRELATED).pedigree();
    int seedling = pedigree.indexOf(cross.text());
    int seed = pedigree.seedParent(seedling);
    int pollen = pedigree.pollenParent(seedling);
    if (pedigree.caseCount(seedling) != 1 || seed < 0 || pollen < 0) {
      return Optional.empty();
    }
    Coancestry coancestry = coancestry(pedigree, new ArrayList<>());
    return closeCross(pedigree, coancestry, seed, pollen, coancestry.inbreeding(seedling));
  }

  private static Optional<String> closeCross(
      Pedigree pedigree, Coancestry coancestry, int seed, int pollen, double inbreeding) {
    if (inbreeding < CLOSE - ROUNDING || isSame(pedigree, seed, pollen)) {
      return Optional.empty();
    }
    return Optional.of(
        "a close cross: "
            + pedigree.code(seed)
            + " and "
            + pedigree.code(pollen)
            + " are "
            + NearKin.of(coancestry.between(seed, pollen), ploidy(pedigree, seed, pollen))
            + "; their seedlings would be inbred by "
            + percent(inbreeding));
  }

  private static String percent(double share) {
    return BigDecimal.valueOf(share)
            .movePointRight(2)
            .setScale(1, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString()
        + " %";
  }
}
