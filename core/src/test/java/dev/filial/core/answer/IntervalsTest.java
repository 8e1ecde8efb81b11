package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.answer.Intervals.Length;
import dev.filial.core.answer.Intervals.Whence;
import dev.filial.core.name.TaxonName;
import dev.filial.core.register.Amended;
import dev.filial.core.register.Interval;
import dev.filial.core.register.IntervalStated;
import dev.filial.core.register.TaxonRenamed;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** How long things take on a bench, by what it stated of them. */
class IntervalsTest {

  private final InventedBench bench = new InventedBench();

  private long state(int days, @Nullable String taxon) {
    return bench.say(new IntervalStated(Interval.FLOWERING, days, taxon, null));
  }

  private Length of(@Nullable String taxon) {
    return Intervals.in(bench.store)
        .days(Interval.FLOWERING, taxon == null ? null : TaxonName.parse(taxon));
  }

  @Test
  void aBenchThatSaidNothingHasCommonPractice() {
    assertThat(of(LAUI)).isEqualTo(new Length(21, Whence.COMMON_PRACTICE));
    assertThat(of(null)).isEqualTo(new Length(21, Whence.COMMON_PRACTICE));
  }

  @Test
  void theMoreParticularGoesBeforeTheLater() {
    state(40, LAUI);
    state(30, "Echeveria");
    state(25, null);
    assertThat(of(LAUI)).isEqualTo(new Length(40, Whence.TAXON));
    assertThat(of(AGAVOIDES)).isEqualTo(new Length(30, Whence.GENUS));
    assertThat(of("Echeveria")).isEqualTo(new Length(30, Whence.TAXON));
    assertThat(of("Sedum album")).isEqualTo(new Length(25, Whence.ALL));
    assertThat(of(null)).isEqualTo(new Length(25, Whence.ALL));
  }

  @Test
  void whatIsStatedOfASpeciesHoldsForItsCultivarsAndForAPlantOnlyLikeIt() {
    state(40, AGAVOIDES);
    assertThat(of("Echeveria agavoides 'Ember'")).isEqualTo(new Length(40, Whence.TAXON));
    assertThat(of("Echeveria cf. agavoides")).isEqualTo(new Length(40, Whence.TAXON));
    state(50, "Echeveria agavoides 'Ember'");
    assertThat(of("Echeveria agavoides 'Ember'")).isEqualTo(new Length(50, Whence.TAXON));
    assertThat(of(AGAVOIDES)).isEqualTo(new Length(40, Whence.TAXON));
  }

  @Test
  void theLaterOfTwoHoldsAndAStruckOneDoesNot() {
    state(40, LAUI);
    long slip = state(400, LAUI);
    assertThat(of(LAUI).days()).isEqualTo(400);
    bench.say(new Amended(slip, null, "a nought too many"));
    assertThat(of(LAUI).days()).isEqualTo(40);
  }

  @Test
  void aRenamedTaxonTakesItsIntervalAlong() {
    state(40, "Echeveria albicans");
    bench.say(new TaxonRenamed("Echeveria albicans", InventedBench.ELEGANS, null));
    assertThat(of(InventedBench.ELEGANS)).isEqualTo(new Length(40, Whence.TAXON));
    assertThat(of("Echeveria albicans")).isEqualTo(new Length(40, Whence.TAXON));
  }

  @Test
  void oneIntervalSaysNothingOfAnother() {
    state(40, null);
    assertThat(Intervals.in(bench.store).days(Interval.RIPENING, null))
        .isEqualTo(new Length(60, Whence.COMMON_PRACTICE));
  }
}
