package dev.filial.examples;

import dev.filial.core.ancestry.ExpectedAncestry;
import dev.filial.core.ancestry.ExpectedAncestry.CaseShares;
import dev.filial.core.ancestry.GenerationClassifier;
import dev.filial.core.name.Notation;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Case;
import dev.filial.core.pedigree.NotationOf;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PlantRecord;
import dev.filial.core.pedigree.Route;
import java.io.PrintStream;
import java.util.List;

/**
 * A program with records of its own asks what is in each plant. No register is needed: it describes
 * its plants, in any order, and asks. The plants are invented, and so is the ploidy of the one
 * stated to be tetraploid.
 */
public final class WhatIsInThisSeedling {

  private WhatIsInThisSeedling() {}

  /** Prints the answers for a small invented bench. */
  public static void main(String[] args) {
    print(System.out);
  }

  static Pedigree bench() {
    return Pedigree.of(
        List.of(
            PlantRecord.pure("ruby", "Echeveria agavoides"),
            PlantRecord.pure("snow", "Echeveria laui"),
            PlantRecord.pure("giant", "Echeveria gigantea", 4),
            PlantRecord.cross("first cross", "ruby", "snow"),
            PlantRecord.ramet("offset", "first cross"),
            PlantRecord.cross("backcross", "offset", "ruby"),
            PlantRecord.selfing("second generation", "first cross"),
            PlantRecord.cross("triploid", "giant", "snow"),
            // Not bagged: one seed in ten may be of the plant's own pollen.
            PlantRecord.seedling(
                "doubtful",
                Case.cross(Fraction.of(9, 10), Route.CROSS, "snow", "ruby"),
                Case.selfing(Fraction.of(1, 10), "snow"))));
  }

  static void print(PrintStream out) {
    Pedigree bench = bench();
    GenerationClassifier classifier = GenerationClassifier.of(bench);
    for (String code : List.of("backcross", "second generation", "triploid", "doubtful")) {
      ExpectedAncestry ancestry = ExpectedAncestry.of(bench, code);
      Notation notation = NotationOf.of(bench, code, NotationOf.Names.byTaxon());
      out.println(code + ": " + notation.text());
      out.println("  " + ancestry.shares().text());
      out.println("  " + classifier.classOf(code).text());
      out.println("  seed-parent line " + ancestry.seedLine().text());
      if (ancestry.cases().size() > 1) {
        for (CaseShares one : ancestry.cases()) {
          out.println(
              "  %s %s: %s"
                  .formatted(one.share().toPercent(1), one.route().text(), one.shares().text()));
        }
      }
    }
  }
}
