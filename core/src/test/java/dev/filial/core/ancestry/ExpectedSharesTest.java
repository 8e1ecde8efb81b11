package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.jspecify.annotations.Nullable;

/** Shares in bulk: where they are exact, and that they are. */
class ExpectedSharesTest {

  private static final PlantRecord AGAVOIDES = PlantRecord.pure("A", "E. agavoides");
  private static final PlantRecord LAUI = PlantRecord.pure("L", "E. laui");

  private static ExpectedShares shares(PlantRecord... records) {
    return ExpectedShares.of(Pedigree.of(List.of(records)));
  }

  /** E. laui crossed into E. agavoides, and back to the founder for so many generations in all. */
  private static ExpectedShares backcrosses(int generations, PlantRecord... others) {
    List<PlantRecord> records = new ArrayList<>(List.of(AGAVOIDES, LAUI));
    records.addAll(List.of(others));
    records.add(PlantRecord.cross("BC1", "L", "A"));
    for (int i = 2; i <= generations; i++) {
      records.add(PlantRecord.cross("BC" + i, "BC" + (i - 1), "A"));
    }
    return ExpectedShares.of(Pedigree.of(records));
  }

  private static void assertEqualsExact(ExpectedShares bulk, int plant) {
    Pedigree pedigree = bulk.pedigree();
    Shares exact = ExpectedAncestry.of(pedigree, pedigree.code(plant)).shares();
    double[] row = bulk.row(plant);
    double sum = bulk.unknown(plant);
    for (int k = 0; k < bulk.taxa().size(); k++) {
      String taxon = bulk.taxa().get(k);
      assertThat(bulk.fraction(plant, taxon)).contains(exact.of(taxon));
      assertThat(row[k]).isEqualTo(exact.of(taxon).toDouble());
      assertThat(bulk.share(plant, taxon)).isEqualTo(row[k]);
      sum += row[k];
    }
    assertThat(bulk.unknown(plant)).isEqualTo(exact.unknown().toDouble());
    assertThat(row[bulk.taxa().size()]).isEqualTo(bulk.unknown(plant));
    // Parts of one power of two of no more than 31 bits: doubles add them up without rounding.
    assertThat(sum).isEqualTo(1.0);
  }

  /**
   * Founders of so many taxa, then generations of six: crosses within the last generation, with a
   * plant of any earlier one or with nobody knows what, selfings, offsets and apomicts.
   */
  private static List<PlantRecord> line(int taxa, int generations, long number, boolean swapped) {
    Random random = new Random(number);
    List<PlantRecord> records = new ArrayList<>();
    for (int i = 0; i < taxa; i++) {
      records.add(PlantRecord.pure("P" + i, "Taxon " + (char) ('A' + i)));
    }
    if (generations < 29 && random.nextBoolean()) {
      Fraction share = random.nextBoolean() ? Fraction.of(3, 4) : Fraction.of(1, 4);
      records.add(PlantRecord.hybrid("P" + taxa, Makeup.of(Map.of("Taxon A", share))));
    }
    boolean known = random.nextBoolean();
    int last = 0;
    for (int generation = 1; generation <= generations; generation++) {
      int from = records.size();
      for (int i = 0; i < 6; i++) {
        String code = "P" + records.size();
        String one = "P" + (last + random.nextInt(from - last));
        String other = "P" + (random.nextBoolean() ? random.nextInt(from) : from - 1);
        records.add(
            switch (random.nextInt(8)) {
              case 0 -> PlantRecord.ramet(code, one);
              case 1 -> PlantRecord.apomict(code, one);
              case 2 -> known ? PlantRecord.selfing(code, one) : openPollinated(code, one, swapped);
              default ->
                  swapped
                      ? PlantRecord.cross(code, other, one)
                      : PlantRecord.cross(code, one, other);
            });
      }
      last = from;
    }
    return records;
  }

  private static PlantRecord openPollinated(String code, String seed, boolean swapped) {
    return swapped
        ? PlantRecord.cross(code, Gamete.unknown(), Gamete.of(seed))
        : PlantRecord.cross(code, Gamete.of(seed), Gamete.unknown());
  }

  @Property(tries = 200)
  void sharesOfLinesOfHalvesAreTheExactFractionsAndSumToOne(
      @ForAll @IntRange(min = 1, max = 25) int taxa,
      @ForAll @IntRange(min = 1, max = 31) int generations,
      @ForAll long number) {
    ExpectedShares bulk = ExpectedShares.of(Pedigree.of(line(taxa, generations, number, false)));
    assertThat(bulk.isExact()).isTrue();
    for (int plant = 0; plant < bulk.pedigree().size(); plant++) {
      assertEqualsExact(bulk, plant);
    }
  }

  @Property(tries = 100)
  void swappingSeedAndPollenParentChangesNoShare(
      @ForAll @IntRange(min = 1, max = 25) int taxa,
      @ForAll @IntRange(min = 1, max = 31) int generations,
      @ForAll long number) {
    ExpectedShares one = ExpectedShares.of(Pedigree.of(line(taxa, generations, number, false)));
    ExpectedShares other = ExpectedShares.of(Pedigree.of(line(taxa, generations, number, true)));
    for (int plant = 0; plant < one.pedigree().size(); plant++) {
      int same = other.pedigree().indexOf(one.pedigree().code(plant));
      assertThat(other.row(same)).isEqualTo(one.row(plant));
    }
  }

  @Property(tries = 100)
  void memoryUsedAgainGivesTheSame(
      @ForAll @IntRange(min = 1, max = 25) int taxa,
      @ForAll @IntRange(min = 1, max = 34) int generations,
      @ForAll @IntRange(min = 1, max = 34) int before,
      @ForAll long number) {
    Pedigree pedigree = Pedigree.of(line(taxa, generations, number, false));
    ExpectedShares earlier = ExpectedShares.of(Pedigree.of(line(4, before, number, false)));
    ExpectedShares again = ExpectedShares.of(pedigree, earlier);
    ExpectedShares fresh = ExpectedShares.of(pedigree);
    double[] all = new double[pedigree.size() * fresh.width() + 1];
    all[all.length - 1] = -1;
    again.copyTo(all);
    for (int plant = 0; plant < pedigree.size(); plant++) {
      assertThat(again.row(plant)).isEqualTo(fresh.row(plant));
      for (int k = 0; k < fresh.width(); k++) {
        assertThat(all[plant * fresh.width() + k]).isEqualTo(fresh.row(plant)[k]);
      }
    }
    assertThat(all[all.length - 1]).isEqualTo(-1);
  }

  @Example
  void whatWasGivenAwayRefusesToAnswer() {
    ExpectedShares earlier = backcrosses(3);
    ExpectedShares later = ExpectedShares.of(earlier.pedigree(), earlier);
    assertThat(later.share(4, "E. laui")).isEqualTo(0.125);
    assertThatThrownBy(() -> earlier.share(4, "E. laui"))
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("ask the result that took them");
    assertThatThrownBy(() -> ExpectedShares.of(later.pedigree(), earlier))
        .isInstanceOf(IllegalStateException.class);
  }

  /**
   * Levels of thousands are shared out among threads; a tenth of the parents is older or unknown.
   */
  @Property(tries = 6)
  void aNurseryOfManyThousandsIsExact(
      @ForAll @IntRange(min = 5, max = 14) int taxa, @ForAll long number) {
    Random random = new Random(number);
    int level = 9000;
    int plants = 5 * level;
    String[] codes = new String[plants];
    @Nullable String[] seed = new String[plants];
    @Nullable String[] pollen = new String[plants];
    @Nullable String[] of = new String[plants];
    for (int i = 0; i < plants; i++) {
      codes[i] = "P" + i;
      int from = i / level * level - level;
      if (i < level) {
        of[i] = "Taxon " + (char) ('A' + i % taxa);
      } else {
        seed[i] = codes[from + random.nextInt(level)];
        int pick = random.nextInt(20);
        pollen[i] =
            pick == 0 ? null : codes[pick == 1 ? random.nextInt(i) : from + random.nextInt(level)];
      }
    }
    ExpectedShares bulk = ExpectedShares.of(Pedigree.ofParents(codes, seed, pollen, of));
    assertThat(bulk.isExact()).isTrue();
    for (int k = 0; k < 100; k++) {
      assertEqualsExact(bulk, random.nextInt(plants));
    }
    double[] all = new double[plants * bulk.width()];
    bulk.copyTo(all);
    for (int plant = 0; plant < plants; plant++) {
      double sum = 0;
      for (int k = 0; k < bulk.width(); k++) {
        sum += all[plant * bulk.width() + k];
      }
      assertThat(sum).isEqualTo(1.0);
    }
    int last = plants - 1;
    assertThat(all[last * bulk.width()]).isEqualTo(bulk.share(last, "Taxon A"));
  }

  @Example
  void aFounderIsStillThereAfterTwentyBackcrosses() {
    ExpectedShares bulk = backcrosses(20);
    int last = bulk.pedigree().indexOf("BC20");
    assertThat(bulk.fraction(last, "E. laui")).contains(Fraction.of(1, 1 << 20));
    assertThat(bulk.fraction(last, "E. agavoides")).contains(Fraction.of((1 << 20) - 1, 1 << 20));
    assertThat(bulk.fraction(last, "E. elegans")).contains(Fraction.ZERO);
  }

  @Example
  void thirtyOneGenerationsAreExactAndThirtyTwoAreRounded() {
    ExpectedShares exact = backcrosses(31);
    int last = exact.pedigree().indexOf("BC31");
    assertThat(exact.isExact()).isTrue();
    assertThat(exact.fraction(last, "E. laui")).contains(Fraction.of(1, 1L << 31));
    ExpectedShares longer = backcrosses(32);
    last = longer.pedigree().indexOf("BC32");
    assertThat(longer.isExact()).isFalse();
    assertThat(longer.fraction(last, "E. laui")).isEmpty();
    assertThat(longer.fraction(last, "E. elegans")).isEmpty();
    assertThat(longer.share(last, "E. laui")).isCloseTo(0x1p-32, within(1e-12));
    assertThat(longer.share(last, "E. agavoides")).isCloseTo(1 - 0x1p-32, within(1e-12));
  }

  /** 2^31 parts of one taxon, and all the lanes beside it empty. */
  @Example
  void aPureLineOfThirtyOneGenerationsIsWhole() {
    List<PlantRecord> records = new ArrayList<>(List.of(AGAVOIDES, LAUI));
    records.add(PlantRecord.selfing("S1", "A"));
    for (int i = 2; i <= 31; i++) {
      records.add(i % 3 == 0 ? PlantRecord.ramet("S" + i, "S" + (i - 1)) : selfing(i));
    }
    ExpectedShares bulk = ExpectedShares.of(Pedigree.of(records));
    int last = bulk.pedigree().indexOf("S31");
    assertThat(bulk.isExact()).isTrue();
    assertThat(bulk.row(last)).containsExactly(1.0, 0.0, 0.0);
  }

  private static PlantRecord selfing(int i) {
    return PlantRecord.selfing("S" + i, "S" + (i - 1));
  }

  /** What a founder's make-up is stated in counts as generations. */
  @Example
  void quartersOfAFounderCountAsTwoGenerations() {
    PlantRecord hybrid =
        PlantRecord.hybrid("H", Makeup.of(Map.of("E. elegans", Fraction.of(3, 4))));
    ExpectedShares exact = backcrosses(29, hybrid);
    assertThat(exact.isExact()).isTrue();
    assertThat(exact.share(exact.pedigree().indexOf("H"), "E. elegans")).isEqualTo(0.75);
    assertThat(exact.unknown(exact.pedigree().indexOf("H"))).isEqualTo(0.25);
    assertThat(backcrosses(30, hybrid).isExact()).isFalse();
  }

  @Example
  void anUnknownParentIsAnUnknownHalf() {
    ExpectedShares bulk =
        shares(
            AGAVOIDES,
            PlantRecord.openPollinated("O", "A"),
            PlantRecord.cross("N", Gamete.unknown(), Gamete.unknown()),
            PlantRecord.cross("X", "O", "N"));
    assertThat(bulk.isExact()).isTrue();
    assertThat(bulk.row(bulk.pedigree().indexOf("O"))).containsExactly(0.5, 0.5);
    assertThat(bulk.row(bulk.pedigree().indexOf("N"))).containsExactly(0.0, 1.0);
    assertThat(bulk.row(bulk.pedigree().indexOf("X"))).containsExactly(0.25, 0.75);
  }

  @Example
  void anOffsetAndAnApomictAreTheirPlantAgain() {
    ExpectedShares bulk =
        shares(
            AGAVOIDES,
            LAUI,
            PlantRecord.cross("F1", "A", "L"),
            PlantRecord.ramet("R", "F1"),
            PlantRecord.apomict("S", "R"));
    assertThat(bulk.isExact()).isTrue();
    assertThat(bulk.share(bulk.pedigree().indexOf("R"), "E. laui")).isEqualTo(0.5);
    assertThat(bulk.share(bulk.pedigree().indexOf("S"), "E. laui")).isEqualTo(0.5);
  }

  @Example
  void thirdsAreRounded() {
    assertThat(
            shares(AGAVOIDES, PlantRecord.pure("T", "E. laui", 4), PlantRecord.cross("X", "T", "A"))
                .isExact())
        .isFalse();
    assertThat(
            shares(PlantRecord.hybrid("H", Makeup.of(Map.of("E. laui", Fraction.of(1, 3)))))
                .isExact())
        .isFalse();
  }

  @Example
  void severalWaysAreRounded() {
    ExpectedShares bulk =
        shares(
            AGAVOIDES,
            LAUI,
            PlantRecord.seedling(
                "M",
                Case.cross(Fraction.of(4, 5), Route.CROSS, "A", "L"),
                Case.selfing(Fraction.of(1, 5), "A")));
    assertThat(bulk.isExact()).isFalse();
    assertThat(bulk.share(2, "E. laui")).isCloseTo(0.4, within(1e-12));
  }

  @Example
  void anArrayTooShortIsRefusedWithTheLengthItNeeds() {
    ExpectedShares bulk = backcrosses(1);
    assertThatThrownBy(() -> bulk.copyTo(new double[5]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("3 plants times 2 columns do not fit into an array of 5; give one of 6");
  }

  @Example
  void noPlantsHaveNoShares() {
    ExpectedShares none = shares();
    none.copyTo(new double[0]);
    assertThat(none.width()).isZero();
  }
}
