package dev.filial.examples;

import dev.filial.core.heredity.Cross;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.Interaction;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.Odds;
import dev.filial.core.heredity.SelfedLine;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.heredity.Wish;
import dev.filial.core.number.Fraction;
import dev.filial.core.trial.Fit;
import dev.filial.core.trial.GoodnessOfFit;
import dev.filial.core.trial.Proportion;
import dev.filial.core.trial.Ratio;
import dev.filial.core.trial.SeedsToSow;
import java.io.PrintStream;
import java.util.List;

/**
 * A program without a register asks what a cross will throw, how many seeds to sow for a wanted
 * seedling, and whether the counts fit. The genes are invented.
 */
public final class WhatWillThisCrossThrow {

  private WhatWillThisCrossThrow() {}

  /** Prints the answers for a few invented crosses. */
  public static void main(String[] args) {
    print(System.out);
  }

  static void print(PrintStream out) {
    Locus edge = Locus.of("edge", "R", "r");
    Locus wax = Locus.of("wax", "W", "w");
    TraitModel edges = TraitModel.dominant("leaf edge", edge, List.of("red", "green"));
    TraitModel waxes = TraitModel.dominant("wax", wax, List.of("blue", "bare"));

    Genome apart = Genome.unlinked(edge, wax);
    show(out, "not linked", Cross.selfing(apart.genotype("Rr Ww")).odds(edges, waxes));

    Genome linked = Genome.of(LinkageGroup.of(edge, Fraction.of(1, 10), wax));
    show(out, "linked, in coupling", Cross.selfing(linked.genotype("RW/rw")).odds(edges, waxes));

    TraitModel both =
        TraitModel.interaction(
            "flower", Interaction.COMPLEMENTARY, edge, wax, List.of("pink", "white"));
    show(out, "both needed", Cross.selfing(apart.genotype("Rr Ww")).odds(both));

    Cross selfed = Cross.selfing(apart.genotype("Rr Ww"));
    Wish wish = Wish.showing(edges, "green").andShowing(waxes, "blue").andBreedingTrue(waxes);
    Fraction chance = selfed.chance(wish);
    out.println(wish.text() + ": " + chance);
    out.println(
        "  seeds for two of them, 18 of 25 having germinated: "
            + SeedsToSow.of(chance.toDouble()).withRate(new Proportion(18, 25)).seeds(2, 0.95));
    out.println(
        "  after four more selfings of green ones: "
            + SelfedLine.of(selfed).keeping(Wish.showing(edges, "green")).chance(4, wish));

    Fit fit = GoodnessOfFit.of(Ratio.of(9, 3, 3, 1)).test(315, 108, 101, 32);
    out.printf("Mendel's peas against 9:3:3:1: %s, p %.4f%n", fit.method(), fit.p());
  }

  private static void show(PrintStream out, String what, Odds odds) {
    out.println(what + ": " + odds.ratio().orElse("no ratio"));
    for (Odds.Share one : odds.classes()) {
      out.println("  " + String.join(", ", one.states()) + " " + one.chance());
    }
  }
}
