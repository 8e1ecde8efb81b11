package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.Descent;
import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.RandomPedigree;
import dev.filial.core.pedigree.Seedling;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of truth to a locality in every pedigree. */
class LocalityLawsTest {

  /** Of the founders in turn; an empty one is none. */
  private static final List<String> NUMBERS = List.of("FO 12", "FO 12", "FO 14", "FO 20", "");

  private static final Set<String> ASKED = Set.of("FO 12");

  /** Pedigrees of every kind, most founders of which bear a number. */
  @Provide
  Arbitrary<List<PlantRecord>> records() {
    return RandomPedigree.records().map(LocalityLawsTest::numbered);
  }

  private static List<PlantRecord> numbered(List<PlantRecord> records) {
    List<PlantRecord> numbered = new ArrayList<>();
    for (PlantRecord plant : records) {
      String number = NUMBERS.get(numbered.size() % NUMBERS.size());
      numbered.add(
          plant.origin() instanceof Founder founder && !number.isEmpty()
              ? new PlantRecord(plant.code(), founder.withFieldNumber(number))
              : plant);
    }
    return numbered;
  }

  private static LocalityTruth truth(List<PlantRecord> records, Set<String> numbers) {
    return LocalityTruth.of(Pedigree.of(records), numbers);
  }

  /** Verdict, descent and the plants at which the line was lost. */
  private static List<Object> told(LocalityTruth truth, String code) {
    return List.of(
        truth.verdict(code),
        truth.isDescended(truth.pedigree().indexOf(code)),
        truth.losses(code).stream().map(LocalityLoss::plant).sorted().toList());
  }

  @Property(tries = 300)
  void aRametIsAsTrueAsItsSource(@ForAll("records") List<PlantRecord> records) {
    List<PlantRecord> more = new ArrayList<>(records);
    records.forEach(
        plant -> more.add(PlantRecord.ramet("offset of " + plant.code(), plant.code())));

    LocalityTruth truth = truth(more, ASKED);

    for (PlantRecord plant : records) {
      assertThat(told(truth, "offset of " + plant.code())).isEqualTo(told(truth, plant.code()));
    }
  }

  @Property(tries = 300)
  void anUnrelatedPlantChangesNothing(@ForAll("records") List<PlantRecord> records) {
    List<PlantRecord> more = new ArrayList<>(records);
    more.add(0, new PlantRecord("X", Founder.pure("E. setosa").withFieldNumber("FO 20")));
    more.add(1, PlantRecord.openPollinated("Y", "X"));

    for (PlantRecord plant : records) {
      assertThat(told(truth(more, ASKED), plant.code()))
          .isEqualTo(told(truth(records, ASKED), plant.code()));
    }
  }

  @Property(tries = 300)
  void swappingSeedAndPollenParentChangesNothing(@ForAll("records") List<PlantRecord> records) {
    List<PlantRecord> swapped = new ArrayList<>();
    for (PlantRecord plant : records) {
      swapped.add(
          plant.origin() instanceof Seedling seedling
              ? new PlantRecord(
                  plant.code(),
                  new Seedling(seedling.cases().stream().map(LocalityLawsTest::swap).toList()))
              : plant);
    }

    for (PlantRecord plant : records) {
      assertThat(told(truth(swapped, ASKED), plant.code()))
          .isEqualTo(told(truth(records, ASKED), plant.code()));
    }
  }

  private static Case swap(Case one) {
    return one instanceof Case.Sexual cross
        ? new Case.Sexual(cross.share(), cross.route(), cross.pollen(), cross.seed())
        : one;
  }

  @Property(tries = 300)
  void moreNumbersOfOnePopulationMakeNoPlantLessTrue(@ForAll("records") List<PlantRecord> records) {
    LocalityTruth one = truth(records, ASKED);
    LocalityTruth both = truth(records, Set.of("FO 12", "FO 14"));

    for (PlantRecord plant : records) {
      assertThat(both.verdict(plant.code())).isLessThanOrEqualTo(one.verdict(plant.code()));
    }
  }

  @Property(tries = 300)
  void noPlantIsTrueToTwoPopulations(@ForAll("records") List<PlantRecord> records) {
    LocalityTruth one = truth(records, Set.of("FO 12", "FO 20"));
    LocalityTruth other = truth(records, Set.of("FO 14"));

    for (PlantRecord plant : records) {
      assertThat(
              one.verdict(plant.code()) == LocalityVerdict.TRUE
                  && other.verdict(plant.code()) == LocalityVerdict.TRUE)
          .isFalse();
    }
  }

  @Property(tries = 300)
  void aLineThatWasLostWasLostAtAPlantBehindIt(@ForAll("records") List<PlantRecord> records) {
    LocalityTruth truth = truth(records, ASKED);
    Pedigree pedigree = truth.pedigree();
    for (int plant = 0; plant < pedigree.size(); plant++) {
      boolean lost = truth.isDescended(plant) && truth.verdict(plant) != LocalityVerdict.TRUE;
      List<LocalityLoss> losses = truth.losses(pedigree.code(plant));
      assertThat(losses.isEmpty()).isEqualTo(!lost);
      assertThat(truth.isLostSeveralTimes(plant)).isEqualTo(losses.size() > 1);
      if (lost) {
        assertThat(pedigree.ancestors(plant).get(truth.firstLoss(plant))).isTrue();
        assertThat(losses.get(0)).isEqualTo(truth.lossAt(truth.firstLoss(plant)));
        assertThat(losses).extracting(LocalityLoss::verdict).containsOnly(truth.verdict(plant));
        assertThat(losses).noneMatch(loss -> loss.causes().isEmpty());
        assertThat(losses)
            .flatExtracting(LocalityLoss::causes)
            .allMatch(cause -> cause.share().compareTo(Fraction.ONE) <= 0);
      }
    }
  }

  /** Each way in which all may have come about, thrown at random, agrees with what is certain. */
  @Property(tries = 500)
  void whatIsCertainHoldsHoweverItCameAbout(
      @ForAll("records") List<PlantRecord> records, @ForAll long seed) {
    LocalityTruth truth = truth(records, ASKED);
    Pedigree pedigree = truth.pedigree();
    Random random = new Random(seed);
    Set<Integer> pure = new HashSet<>();
    for (int plant = 0; plant < pedigree.size(); plant++) {
      if (isOfTheNumber(pedigree, plant, pure, random)) {
        pure.add(plant);
      }
      switch (truth.verdict(plant)) {
        case TRUE -> assertThat(pure).contains(plant);
        case NOT_TRUE -> assertThat(pure).doesNotContain(plant);
        case NOT_CERTAIN -> {} // either may be
      }
    }
  }

  private static boolean isOfTheNumber(
      Pedigree pedigree, int plant, Set<Integer> pure, Random random) {
    Founder founder = pedigree.founder(plant);
    if (founder != null) {
      String number = founder.fieldNumber();
      return number == null ? random.nextBoolean() : ASKED.contains(number);
    }
    if (pedigree.isRamet(plant)) {
      return pure.contains(pedigree.rametOf(plant));
    }
    List<Descent> ways = pedigree.descents(plant);
    Descent way = ways.get(random.nextInt(ways.size()));
    if (way instanceof Descent.Copy copy) {
      return pure.contains(copy.of());
    }
    Descent.Sexual cross = (Descent.Sexual) way;
    return isPure(cross.seed(), pure, random) && isPure(cross.pollen(), pure, random);
  }

  private static boolean isPure(int parent, Set<Integer> pure, Random random) {
    return parent == Pedigree.UNKNOWN ? random.nextBoolean() : pure.contains(parent);
  }
}
