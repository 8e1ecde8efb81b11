package dev.filial.core.answer;

import static dev.filial.core.answer.InventedBench.AGAVOIDES;
import static dev.filial.core.answer.InventedBench.LAUI;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.answer.IntervalDays.Whence;
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

  private IntervalDays of(@Nullable String taxon) {
    return Intervals.in(bench.store)
        .days(Interval.FLOWERING, taxon == null ? null : TaxonName.parse(taxon));
  }

  private static IntervalDays stated(int days, @Nullable String taxon) {
    return new IntervalDays(days, Whence.STATED, taxon, 0);
  }

  private static IntervalDays usual(int days) {
    return new IntervalDays(days, Whence.COMMON_PRACTICE, null, 0);
  }

  @Test
  void aBenchThatSaidNothingHasCommonPractice() {
    assertThat(of(LAUI)).isEqualTo(usual(21));
    assertThat(of(null)).isEqualTo(usual(21));
  }

  @Test
  void theMoreParticularGoesBeforeTheLater() {
    state(40, LAUI);
    state(30, "Echeveria");
    state(25, null);
    assertThat(of(LAUI)).isEqualTo(stated(40, LAUI));
    assertThat(of(AGAVOIDES)).isEqualTo(stated(30, "Echeveria"));
    assertThat(of("Echeveria")).isEqualTo(stated(30, "Echeveria"));
    assertThat(of("Sedum album")).isEqualTo(stated(25, null));
    assertThat(of(null)).isEqualTo(stated(25, null));
  }

  @Test
  void whatIsStatedOfASpeciesHoldsForItsCultivarsAndForAPlantOnlyLikeIt() {
    state(40, AGAVOIDES);
    assertThat(of("Echeveria agavoides 'Ember'")).isEqualTo(stated(40, AGAVOIDES));
    assertThat(of("Echeveria cf. agavoides")).isEqualTo(stated(40, AGAVOIDES));
    state(50, "Echeveria agavoides 'Ember'");
    assertThat(of("Echeveria agavoides 'Ember'"))
        .isEqualTo(stated(50, "Echeveria agavoides 'Ember'"));
    assertThat(of(AGAVOIDES)).isEqualTo(stated(40, AGAVOIDES));
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
    assertThat(of(InventedBench.ELEGANS)).isEqualTo(stated(40, InventedBench.ELEGANS));
    assertThat(of("Echeveria albicans")).isEqualTo(stated(40, InventedBench.ELEGANS));
  }

  @Test
  void oneIntervalSaysNothingOfAnother() {
    state(40, null);
    assertThat(Intervals.in(bench.store).days(Interval.RIPENING, null)).isEqualTo(usual(60));
  }
}
