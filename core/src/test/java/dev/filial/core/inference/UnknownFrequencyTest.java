package dev.filial.core.inference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Offset;

/**
 * Where frequencies are unknown the odds are those of an urn: of alleles drawn so far, a of one
 * kind and b of the other, the next is of the first with (a + ½) / (a + b + 1), by the formula of
 * the beta-binomial distribution.
 */
class UnknownFrequencyTest {

  private static final Offset<Double> ROUNDING = within(1e-9);
  private static final Locus A = Locus.of("tips", "T", "t");
  private static final Genome GENOME = Genome.unlinked(A);
  private static final TraitModel TIPS = TraitModel.dominant("tips", A, List.of("red", "plain"));

  private static PedigreeOdds odds(List<PlantRecord> plants, List<Evidence> seen) {
    return PedigreeOdds.of(Pedigree.of(plants), GENOME, List.of(TIPS)).withEvidence(seen);
  }

  private static Evidence carries(String plant, String genes) {
    return Evidence.Carried.of(plant, GENOME.genotype(genes), plant);
  }

  /** Nobody's pollen on a plain plant: each seedling is one draw of the urn, red or plain. */
  @Property(tries = 60)
  void seedlingsOfNobodysPollenAreDrawsOfAnUrn(
      @ForAll @IntRange(max = 1200) int red, @ForAll @IntRange(max = 1200) int plain) {
    PedigreeOdds odds =
        odds(
            List.of(
                PlantRecord.pure("seed", "Echeveria laui"),
                PlantRecord.openPollinated("s", "seed"),
                PlantRecord.openPollinated("next", "seed")),
            List.of(
                carries("seed", "tt"),
                new Evidence.Counted(
                    "s", "tips", Map.of("red", (long) red, "plain", (long) plain), "tally")));
    assertThat(odds.genotype("next").of("Tt")).isEqualTo((red + 0.5) / (red + plain + 1), ROUNDING);
  }

  /** Which of two kinds the seed parent is, weighed by all the draws it would take. */
  @Property(tries = 60)
  void whatTheSeedParentIsIsWeighedByTheUrn(
      @ForAll @IntRange(max = 60) int red, @ForAll @IntRange(max = 60) int plain) {
    PedigreeOdds odds =
        odds(
            List.of(
                PlantRecord.pure("one", "Echeveria laui"),
                PlantRecord.pure("other", "Echeveria laui"),
                PlantRecord.cross("seed", "one", "other"),
                PlantRecord.openPollinated("s", "seed")),
            List.of(
                carries("one", "Tt"),
                carries("other", "tt"),
                new Evidence.Counted(
                    "s", "tips", Map.of("red", (long) red, "plain", (long) plain), "tally")));
    // Of tt each red seedling drew T and each plain one t. Of Tt plain ones drew t and got t from
    // her, and of the red ones any number k drew t and got T from her.
    double homozygous = Math.exp(urn(red, plain));
    double heterozygous = 0;
    for (int k = 0; k <= red; k++) {
      double ways = logFactorial(red) - logFactorial(k) - logFactorial(red - k);
      heterozygous += Math.exp(ways + urn(red - k, plain + k) - (plain + k) * Math.log(2));
    }
    assertThat(odds.genotype("seed").of("tt"))
        .isEqualTo(homozygous / (homozygous + heterozygous), ROUNDING);
  }

  @Property(tries = 60)
  void foundersOfOneTaxonAreDrawsOfOneUrn(@ForAll long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<PlantRecord> plants = new ArrayList<>();
    List<Evidence> seen = new ArrayList<>();
    int dominant = 0;
    int recessive = 0;
    int n = random.nextInt(30);
    for (int i = 0; i < n; i++) {
      int copies = random.nextInt(3);
      plants.add(PlantRecord.pure("p" + i, "Echeveria laui"));
      seen.add(carries("p" + i, List.of("TT", "Tt", "tt").get(copies)));
      dominant += 2 - copies;
      recessive += copies;
    }
    plants.add(PlantRecord.pure("next", "Echeveria laui"));
    PedigreeOdds odds = odds(plants, seen);
    double all = dominant + recessive + 1;
    double both = (dominant + 0.5) / all * ((dominant + 1.5) / (all + 1));
    double none = (recessive + 0.5) / all * ((recessive + 1.5) / (all + 1));
    assertThat(odds.genotype("next").of("TT")).isEqualTo(both, ROUNDING);
    assertThat(odds.genotype("next").of("Tt")).isEqualTo(1 - both - none, ROUNDING);
    assertThat(odds.genotype("next").of("tt")).isEqualTo(none, ROUNDING);
  }

  /** The logarithm of the chance of drawing these in one order. */
  private static double urn(int first, int second) {
    double log = 0;
    for (int i = 0; i < first; i++) {
      log += Math.log((i + 0.5) / (i + 1));
    }
    for (int i = 0; i < second; i++) {
      log += Math.log((i + 0.5) / (first + i + 1));
    }
    return log;
  }

  private static double logFactorial(int n) {
    double log = 0;
    for (int i = 2; i <= n; i++) {
      log += Math.log(i);
    }
    return log;
  }
}
