package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class ClassicPlaceTest {

  /** Each place is where the exact spread puts the generation it is named for. */
  @Test
  void everyGenerationIsAtItsPlace() {
    List<PlantRecord> records =
        List.of(
            PlantRecord.pure("A", "E. agavoides"),
            PlantRecord.pure("B", "E. laui"),
            PlantRecord.cross("F1", "A", "B"),
            PlantRecord.selfing("F2", "F1"),
            PlantRecord.selfing("F3", "F2"),
            PlantRecord.selfing("F4", "F3"),
            PlantRecord.cross("BC1", "F1", "B"),
            PlantRecord.selfing("BC1F2", "BC1"),
            PlantRecord.cross("BC2", "B", "BC1"),
            PlantRecord.cross("BC3", "BC2", "B"));
    Map<String, ClassicPlace> places =
        Map.of(
            "F1", ClassicPlace.F1,
            "F2", ClassicPlace.F2,
            "F3", ClassicPlace.F3_SELFED,
            "F4", ClassicPlace.F4_SELFED,
            "BC1", ClassicPlace.BC1,
            "BC1F2", ClassicPlace.BC1F2,
            "BC2", ClassicPlace.BC2,
            "BC3", ClassicPlace.BC3);
    GenomeSpread spread = GenomeSpread.of(Pedigree.of(records));
    places.forEach(
        (code, place) -> {
          GenomeSpread.Spread its = spread.of(code);
          double share = Objects.requireNonNull(its.of("E. agavoides")).mean();
          assertThat(place.isAt(share, its.different())).as(code).isTrue();
          assertThat(ClassicPlace.nearest(share, its.different())).containsExactly(place);
        });
  }

  @Test
  void whatLiesBetweenIsNearestToOneOrToSeveral() {
    assertThat(ClassicPlace.nearest(0, 0)).containsExactly(ClassicPlace.PURE);
    assertThat(ClassicPlace.nearest(0.5, 0.75)).containsExactly(ClassicPlace.F1, ClassicPlace.F2);
    assertThat(ClassicPlace.nearest(0.2, 0.45)).containsExactly(ClassicPlace.BC1);
    assertThat(ClassicPlace.F2.text()).isEqualTo("an F2");
    assertThat(ClassicPlace.BC2.share()).isEqualTo(0.875);
    assertThat(ClassicPlace.BC2.different()).isEqualTo(0.25);
  }
}
