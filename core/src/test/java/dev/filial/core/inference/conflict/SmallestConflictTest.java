package dev.filial.core.inference.conflict;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
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

  @Provide
  Arbitrary<List<BitSet>> conflicts() {
    return Arbitraries.integers()
        .between(1, (1 << THINGS) - 1)
        .map(bits -> BitSet.valueOf(new long[] {bits}))
        .list()
        .ofMaxSize(6);
  }

  @Property
  void noSmallerSetContradictsItself(@ForAll("conflicts") List<BitSet> conflicts) {
    Optional<SmallestConflict.Found> found = among(THINGS, conflicts).find();
    int smallest = conflicts.stream().mapToInt(BitSet::cardinality).min().orElse(Integer.MAX_VALUE);
    assertThat(found.isPresent()).isEqualTo(!conflicts.isEmpty());
    if (found.isPresent()) {
      assertThat(found.get().things().cardinality()).isEqualTo(smallest);
      assertThat(found.get().provenSmallest()).isTrue();
      assertThat(holds(found.get().things(), conflicts)).isFalse();
    }
  }

  @Property
  void whatIsLeftAfterAllWereFoundHolds(@ForAll("conflicts") List<BitSet> conflicts) {
    BitSet left = new BitSet();
    left.set(0, THINGS);
    for (SmallestConflict.Found found : among(THINGS, conflicts).findAll(100)) {
      assertThat(holds(found.things(), conflicts)).isFalse();
      left.andNot(found.things());
    }
    assertThat(holds(left, conflicts)).isTrue();
  }

  @Test
  void aThingThatContradictsItselfIsFoundAlone() {
    assertThat(among(50, List.of(set(17), set(1, 2))).find().orElseThrow().things())
        .isEqualTo(set(17));
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
