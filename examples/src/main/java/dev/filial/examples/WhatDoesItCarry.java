package dev.filial.examples;

import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.inference.Evidence;
import dev.filial.core.inference.GenotypeOdds;
import dev.filial.core.inference.PedigreeOdds;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A collection program asks what a plant carries, by what it and its seedlings look like. Plants
 * and inheritance are invented.
 */
public final class WhatDoesItCarry {

  private WhatDoesItCarry() {}

  /** Prints the answers for a small invented bench. */
  public static void main(String[] args) {
    print(System.out);
  }

  static void print(PrintStream out) {
    Locus tips = Locus.of("tips", "T", "t");
    TraitModel red = TraitModel.dominant("tips", tips, List.of("red", "plain"));
    Pedigree bench =
        Pedigree.of(
            List.of(
                PlantRecord.pure("ruby", "Echeveria agavoides"),
                PlantRecord.pure("snow", "Echeveria laui"),
                PlantRecord.cross("first cross", "ruby", "snow"),
                PlantRecord.selfing("dusk", "first cross"),
                PlantRecord.cross("seedlings of dusk", "dusk", "snow")));
    PedigreeOdds looked =
        PedigreeOdds.of(bench, Genome.unlinked(tips), List.of(red))
            .withEvidence(
                List.of(
                    Evidence.Shown.of("snow", "tips", "plain", "page 3"),
                    Evidence.Shown.of("first cross", "tips", "red", "page 7"),
                    Evidence.Shown.of("dusk", "tips", "red", "page 9")));
    tell(out, "Looked at alone", looked.genotype("dusk"), tips);
    List<Evidence> more = new ArrayList<>(looked.evidence());
    more.add(
        new Evidence.Counted(
            "seedlings of dusk", "tips", Map.of("red", 6L, "plain", 0L), "page 12"));
    tell(
        out,
        "With six red seedlings by a plain plant",
        looked.withEvidence(more).genotype("dusk"),
        tips);
  }

  private static void tell(PrintStream out, String when, GenotypeOdds dusk, Locus tips) {
    out.printf(
        Locale.ROOT,
        "%s, dusk carries plain with a chance of %.3f%n",
        when,
        dusk.carries(tips, "t"));
  }
}
