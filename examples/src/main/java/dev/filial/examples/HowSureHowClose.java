package dev.filial.examples;

import dev.filial.core.ancestry.Coancestry;
import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.ancestry.GenomeDrop;
import dev.filial.core.ancestry.GenomeSpread;
import dev.filial.core.ancestry.ShareSample;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;

/**
 * A collection program asks how far a seedling's share of a species may lie from the expected one,
 * and how inbred the seedlings of each pair of its plants would be. The plants are invented.
 */
public final class HowSureHowClose {

  private static final String SPECIES = "Echeveria laui";

  private HowSureHowClose() {}

  /** Prints the answers for a small invented bench. */
  public static void main(String[] args) {
    print(System.out);
  }

  static void print(PrintStream out) {
    Pedigree bench =
        Pedigree.of(
            List.of(
                PlantRecord.pure("ruby", "Echeveria agavoides"),
                PlantRecord.pure("snow", SPECIES),
                PlantRecord.cross("first cross", "ruby", "snow"),
                PlantRecord.cross("its sister", "ruby", "snow"),
                PlantRecord.cross("backcross", "first cross", "ruby")));
    // Seven long chromosomes and twenty short ones; assumed, as long as nobody mapped them.
    GeneticMap map = GeneticMap.parse("7x120, 20x60");
    GenomeSpread.OfTaxon exact = GenomeSpread.of(bench).withMap(map).of("backcross").of(SPECIES);
    ShareSample dropped = GenomeDrop.of(bench).withMap(map).of("backcross").of(SPECIES);
    if (exact != null && dropped != null) {
      ShareSample.Range range = dropped.central(0.9);
      out.printf(
          Locale.ROOT,
          "backcross: %.1f %% %s, s.d. %.1f; nine of ten between %.0f and %.0f %%%n",
          100 * exact.mean(),
          SPECIES,
          100 * exact.standardDeviation(),
          100 * range.low(),
          100 * range.high());
    }
    Coancestry kin = Coancestry.of(bench);
    for (String other : List.of("its sister", "backcross", "snow")) {
      double inbreeding =
          kin.inbreedingOfSeedlings(bench.indexOf("first cross"), bench.indexOf(other));
      out.printf(
          Locale.ROOT, "first cross × %s: seedlings inbred by %.1f %%%n", other, 100 * inbreeding);
    }
  }
}
