package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * How far it goes. Eight genes of a selfed multiple heterozygote, linked or not, are always within
 * bounds; where it ends, it says so in words and does not run on.
 */
class BoundsTest {

  private static List<Locus> loci(int number) {
    List<Locus> loci = new ArrayList<>();
    for (int i = 0; i < number; i++) {
      loci.add(
          Locus.of(
              "gene " + i, String.valueOf((char) ('A' + i)), String.valueOf((char) ('a' + i))));
    }
    return loci;
  }

  private static Cross unlinked(int number) {
    StringBuilder text = new StringBuilder();
    loci(number).forEach(locus -> text.append(String.join("", locus.alleles())));
    return Cross.selfing(
        Genome.unlinked(loci(number).toArray(Locus[]::new)).genotype(text.toString()));
  }

  private static Cross linked(int number) {
    StringBuilder one = new StringBuilder();
    StringBuilder other = new StringBuilder();
    for (Locus locus : loci(number)) {
      one.append(locus.alleles().get(0));
      other.append(locus.alleles().get(1));
    }
    Genome genome =
        Genome.of(
            new LinkageGroup(
                loci(number), Collections.nCopies(number - 1, Fraction.of(1, 10)), true));
    return Cross.selfing(genome.genotype(one + "/" + other));
  }

  private static List<TraitModel> eachByItself(int number) {
    return loci(number).stream()
        .map(locus -> TraitModel.intermediate(locus.name(), locus, List.of("x", "y", "z")))
        .toList();
  }

  /** A table that asks for the heterozygote at each gene, and tells each gene's kinds apart. */
  private static TraitModel allTogether(int number) {
    List<Row> rows = new ArrayList<>();
    List<Pattern> heterozygous = new ArrayList<>();
    for (Locus locus : loci(number)) {
      rows.add(
          new Row(
              List.of(
                  new Pattern(
                      locus, List.of(locus.alleles().get(0), locus.alleles().get(0)), false)),
              Outcome.of("some")));
      heterozygous.add(new Pattern(locus, locus.alleles(), false));
    }
    rows.add(0, new Row(heterozygous, Outcome.of("all")));
    rows.add(new Row(List.of(), Outcome.of("some")));
    return new TraitModel("heterozygosity", List.of("all", "some"), rows);
  }

  @Test
  void eightUnlinkedGenesAreWithinBounds() {
    Cross cross = unlinked(8);

    assertThat(cross.genotypes()).hasSize(6561);
    assertThat(cross.odds(eachByItself(8)).classes()).hasSize(6561);
    assertThat(cross.odds(allTogether(8)).chanceOf("all")).isEqualTo(Fraction.of(1, 256));
  }

  /** 2⁸ gametes, 256 · 257/2 pairs of them. */
  @Test
  void eightLinkedGenesAreWithinBounds() {
    Cross cross = linked(8);

    assertThat(cross.eggs()).hasSize(256);
    assertThat(cross.genotypes()).hasSize(32896);
    assertThat(cross.odds(eachByItself(8)).classes()).hasSize(6561);
  }

  @Test
  void sixGenesMayBeChosenForThroughGenerations() {
    SelfedLine chosen = SelfedLine.of(unlinked(6)).keeping(Wish.showing(allTogether(6), "all"));

    assertThat(chosen.chance(2, Wish.showing(allTogether(6), "all"))).isEqualTo(Fraction.of(1, 64));
  }

  private static void tooMany(String start, Runnable asked) {
    assertThatIllegalArgumentException().isThrownBy(asked::run).withMessageStartingWith(start);
  }

  @Test
  void whatIsPastTheBoundsIsRefusedInWords() {
    String kinds =
        "more than 200000 kinds of seedlings would have to be told apart; ask for fewer genes or"
            + " traits at once";
    Cross twelve = unlinked(12);

    tooMany(kinds, twelve::genotypes);
    tooMany(kinds, () -> twelve.odds(eachByItself(12)));
    tooMany(
        "the parents have 4096 and 4096 kinds of gametes at one linkage group; at most 262144"
            + " pairs of them are gone through. Ask for fewer linked genes at once",
        () -> linked(12));
    tooMany("the linked genes gene 0, gene 1,", () -> linked(13));
    tooMany(
        "more than 3000000 kinds of seedlings would have to be gone through, generation by"
            + " generation; ask for fewer linked genes or fewer selfings",
        () -> SelfedLine.of(linked(8)).chance(2, Wish.showing(allTogether(8), "all")));
    tooMany(
        "more than 20000 genotypes would have to be followed under selection; ask for fewer genes,"
            + " or without keeping",
        () ->
            SelfedLine.of(unlinked(10))
                .keeping(Wish.showing(allTogether(10), "some"))
                .chance(1, Wish.showing(allTogether(10), "all")));
  }

  /** Twelve genes that the tables do not tell apart are not multiplied out. */
  @Test
  void whatIsNotAskedAboutCostsNothing() {
    Cross twelve = unlinked(12);

    assertThat(twelve.odds(eachByItself(12).subList(0, 2)).classes()).hasSize(9);
    assertThat(twelve.odds(allTogether(12)).chanceOf("all")).isEqualTo(Fraction.of(1, 4096));
  }
}
