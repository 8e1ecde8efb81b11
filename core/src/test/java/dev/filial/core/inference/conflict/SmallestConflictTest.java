package dev.filial.core.inference.conflict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Sets of things that cannot all hold, against going through all sets. */
class SmallestConflictTest {

  private static final int THINGS = 9;

  private static BitSet set(int... things) {
    BitSet set = new BitSet();
    for (int thing : things) {
      set.set(thing);
    }
    return set;
  }

  private static SmallestConflict among(int things, List<BitSet> conflicts) {
    return SmallestConflict.of(things, some -> holds(some, conflicts));
  }

  private static boolean holds(BitSet some, List<BitSet> conflicts) {
    for (BitSet conflict : conflicts) {
      BitSet missing = (BitSet) conflict.clone();
      missing.andNot(some);
      if (missing.isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /**
   * Up to twelve sets, few things in most of them; now and then even nothing contradicts itself.
   */
  @Provide
  Arbitrary<List<BitSet>> conflicts() {
    return Arbitraries.integers()
        .between(0, THINGS - 1)
        .list()
        .ofMaxSize(6)
        .map(things -> set(things.stream().mapToInt(Integer::intValue).toArray()))
        .list()
        .ofMaxSize(12);
  }

  /** The fewest of these things that contradict themselves, of all their parts; -1 if none do. */
  private static int fewest(BitSet among, List<BitSet> conflicts) {
    int fewest = -1;
    for (long bits = 0; bits < 1 << THINGS; bits++) {
      BitSet some = BitSet.valueOf(new long[] {bits});
      BitSet outside = (BitSet) some.clone();
      outside.andNot(among);
      if (outside.isEmpty()
          && !holds(some, conflicts)
          && (fewest < 0 || some.cardinality() < fewest)) {
        fewest = some.cardinality();
      }
    }
    return fewest;
  }

  private static BitSet everything() {
    BitSet all = new BitSet();
    all.set(0, THINGS);
    return all;
  }

  @Property
  void noSmallerSetContradictsItself(@ForAll("conflicts") List<BitSet> conflicts) {
    Optional<SmallestConflict.Found> found = among(THINGS, conflicts).find();
    assertThat(found.map(one -> one.things().cardinality()).orElse(-1))
        .isEqualTo(fewest(everything(), conflicts));
    if (found.isPresent()) {
      assertThat(found.get().provenSmallest()).isTrue();
      assertThat(holds(found.get().things(), conflicts)).isFalse();
    }
  }

  @Property
  void eachIsASmallestOfWhatTheOnesBeforeLeftAndTheRestHolds(
      @ForAll("conflicts") List<BitSet> conflicts) {
    BitSet left = everything();
    for (SmallestConflict.Found found : among(THINGS, conflicts).findAll(100)) {
      assertThat(holds(found.things(), conflicts)).isFalse();
      assertThat(found.things().cardinality()).isEqualTo(fewest(left, conflicts));
      left.andNot(found.things());
    }
    assertThat(holds(left, conflicts)).isEqualTo(!conflicts.contains(set()));
  }

  @Property
  void withinAnyBoundNothingCanBeMissedAndNothingWrongIsProven(
      @ForAll("conflicts") List<BitSet> conflicts, @ForAll @IntRange(min = 1, max = 60) int most) {
    AtomicInteger asked = new AtomicInteger();
    Predicate<BitSet> counting =
        some -> {
          asked.incrementAndGet();
          boolean holds = holds(some, conflicts);
          some.clear(); // a set that is asked about may be used up
          return holds;
        };
    Optional<SmallestConflict.Found> found =
        SmallestConflict.of(THINGS, counting).withMostTests(most).find();
    if (found.isEmpty()) {
      assertThat(conflicts).isEmpty();
      return;
    }
    BitSet things = found.get().things();
    assertThat(found.get().tests()).isEqualTo(asked.get());
    // A first set of nine things takes a test of all, one of none and at most twice nine between.
    assertThat(asked.get()).isLessThanOrEqualTo(Math.max(most, 2 + 2 * THINGS));
    assertThat(holds(things, conflicts)).isFalse();
    if (found.get().provenSmallest()) {
      assertThat(things.cardinality()).isEqualTo(fewest(everything(), conflicts));
    }
    for (int thing = things.nextSetBit(0); thing >= 0; thing = things.nextSetBit(thing + 1)) {
      BitSet fewer = (BitSet) things.clone();
      fewer.clear(thing);
      assertThat(holds(fewer, conflicts)).isTrue();
    }
  }

  @Test
  void aThingThatContradictsItselfIsFoundAlone() {
    assertThat(among(50, List.of(set(17), set(1, 2))).find().orElseThrow().things())
        .isEqualTo(set(17));
  }

  @Test
  void aThingThatContradictsItselfIsProvenSmallestWhateverTheBound() {
    SmallestConflict.Found found =
        among(50, List.of(set(17))).withMostTests(1).find().orElseThrow();
    assertThat(found.things()).isEqualTo(set(17));
    assertThat(found.provenSmallest()).isTrue();
  }

  @Test
  void whereAllHoldsThereIsNothing() {
    assertThat(among(50, List.of()).find()).isEmpty();
    assertThat(SmallestConflict.of(0, some -> true).find()).isEmpty();
  }

  @Test
  void independentContradictionsAreEachFound() {
    List<SmallestConflict.Found> found =
        among(30, List.of(set(3, 4), set(10, 11, 12), set(20, 21))).findAll(10);
    assertThat(found.stream().map(SmallestConflict.Found::things).toList())
        .containsExactlyInAnyOrder(set(3, 4), set(20, 21), set(10, 11, 12));
  }

  @Test
  void amongThousandsAFewDozenTestsAreEnough() {
    SmallestConflict.Found found =
        among(2000, List.of(set(100, 900, 1500, 1900))).find().orElseThrow();
    assertThat(found.things()).isEqualTo(set(100, 900, 1500, 1900));
    assertThat(found.tests()).isLessThan(200);
  }

  @Test
  void whereNotEvenNothingHoldsThatIsSaidOnce() {
    List<SmallestConflict.Found> found = SmallestConflict.of(5, some -> false).findAll(10);
    assertThat(found).hasSize(1);
    assertThat(found.get(0).things()).isEqualTo(set());
    assertThat(found.get(0).provenSmallest()).isTrue();
  }

  @Test
  void ofThreeHundredThingsTheSmallestOfEightLargeConflictsIsProven() {
    List<BitSet> large = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      BitSet conflict = new BitSet();
      for (int j = 0; j < 8 + (i + 3) % 8; j++) {
        conflict.set((37 * i + 23 * j) % 300);
      }
      large.add(conflict);
    }
    SmallestConflict.Found found = among(300, large).find().orElseThrow();
    assertThat(found.provenSmallest()).isTrue();
    assertThat(found.things().cardinality()).isEqualTo(8);
  }

  @Test
  void whatIsFoundIsTheCallersOwn() {
    SmallestConflict.Found found = among(9, List.of(set(3, 4))).find().orElseThrow();
    found.things().clear();
    assertThat(found.things()).isEqualTo(set(3, 4));
  }

  @Test
  void numbersThatCannotBeAreRefused() {
    assertThatThrownBy(() -> SmallestConflict.of(-1, some -> true))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("-1 things to search; state 0 or more");
    SmallestConflict few = among(9, List.of());
    assertThatThrownBy(() -> few.withMostTests(0)).hasMessage("0 tests at most; state 1 or more");
    assertThatThrownBy(() -> few.findAll(-1)).hasMessage("-1 conflicts at most; state 0 or more");
  }

  @Test
  void pastTheBoundASetIsGivenThatIsNotSaidToBeSmallest() {
    List<BitSet> many = new ArrayList<>();
    for (int i = 0; i < 20; i++) {
      many.add(set(i, 40 - i, 20));
    }
    SmallestConflict.Found found = among(41, many).withMostTests(3).find().orElseThrow();
    assertThat(found.provenSmallest()).isFalse();
    assertThat(holds(found.things(), many)).isFalse();
  }
}
