package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.number.Fraction;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Tables from genotypes to states, and what is wrong with some. */
class TraitModelTest {

  private static final Locus A = Locus.of("edge", "A", "a");
  private static final Locus B = Locus.of("hair", "B", "b");
  private static final List<Locus> LOCI = List.of(A, B);

  private static Row row(String patterns, String state) {
    return new Row(Pattern.read(LOCI, patterns), Outcome.of(state));
  }

  private static TraitModel table(Row... rows) {
    return new TraitModel("flower", List.of("red", "white"), List.of(rows));
  }

  private static void incomplete(TraitModel model, int ploidy, String message) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> model.requireComplete(ploidy))
        .withMessage(message);
  }

  @Test
  void genotypesThatATableMissesAreNamed() {
    incomplete(
        table(row("A_", "red")),
        2,
        "the table of flower does not say what aa shows; add a row, or * for all that are left");
    incomplete(
        table(row("AA", "red"), row("aa bb", "white"), row("Aa B_", "red")),
        2,
        "the table of flower does not say what Aa bb, aa BB, aa Bb and perhaps more show; add a"
            + " row, or * for all that are left");
    incomplete(
        table(row("AA", "red"), row("Aa", "red"), row("aa B_", "white")),
        2,
        "the table of flower does not say what aa bb shows; add a row, or * for all that are"
            + " left");
    incomplete(
        table(row("A_ B_", "red"), row("aa bb", "white"), row("AA bb", "red"), row("aa", "red")),
        2,
        "the table of flower does not say what Aa bb shows; add a row, or * for all that are"
            + " left");
  }

  /** Aa covers AAa and AAaa; AAa and AAaa themselves cover nothing but their kind. */
  @Test
  void coverageDependsOnTheNumberOfSets() {
    TraitModel diploid = table(row("AA", "red"), row("Aa", "red"), row("aa", "white"));
    TraitModel dosage = table(row("AAAA", "red"), row("AAAa", "red"), row("aaaa", "white"));

    for (int ploidy = 2; ploidy <= 4; ploidy++) {
      diploid.requireComplete(ploidy);
    }
    incomplete(
        dosage,
        4,
        "the table of flower does not say what AAaa, Aaaa show; add a row, or * for all that are"
            + " left");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Cross.selfing(Genome.unlinked(A).genotype("Aa")).odds(dosage))
        .withMessageStartingWith("the table of flower does not say what");
  }

  @Test
  void aStarIsAllThatAreLeft() {
    TraitModel model = table(row("A_ B_", "red"), row("*", "white"));

    model.requireComplete(2);
    model.requireComplete(4);
    assertThat(model.rows().get(1).text()).isEqualTo("*");
    assertThat(model.rows().get(0).text()).isEqualTo("A_ B_");
    assertThat(model.loci()).containsExactly(A, B);
  }

  @Test
  void theFirstRowThatFitsDecides() {
    TraitModel model = table(row("A_", "red"), row("AA", "white"), row("*", "white"));

    assertThat(Cross.selfing(Genome.unlinked(A).genotype("Aa")).odds(model).ratio())
        .contains("3:1");
  }

  /** A table of a star alone depends on nothing. */
  @Test
  void aTableOfAStarIsAlwaysTheSame() {
    TraitModel model = table(row("*", "white"));

    assertThat(Cross.selfing(Genome.unlinked(A).genotype("Aa")).odds(model).chanceOf("white"))
        .isEqualTo(Fraction.ONE);
  }

  @Test
  void aStateNobodyDeclaredIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table(row("A_", "blue")))
        .withMessage("the row A_ shows \"blue\", which flower has not; it is one of red, white");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table(row("A_", "red")).requireState("blue"))
        .withMessage("flower has no state \"blue\"; it is one of red, white");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table(row("A_", "red")).withPenetrance("blue", Fraction.HALF, "white"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Wish.showing(table(row("*", "red")), "blue"));
  }

  @Test
  void aTableHasRowsAndSomethingLives() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table())
        .withMessage("the table of flower has no rows; say what each genotype shows");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table(new Row(List.of(), Outcome.lethal())))
        .withMessage("no row of the table of flower shows a state; none would live");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new Row(
                    List.of(new Pattern(A, List.of("A"), true), new Pattern(A, List.of("a"), true)),
                    Outcome.of("red")))
        .withMessage("the gene edge stands twice in a row of the table");
  }

  @Test
  void chancesOfStatesAreSharesOfOne() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Outcome.penetrant("red", Fraction.of(6, 5), "white"))
        .withMessage("a chance of 6/5 of showing red; it lies between 0 and 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Outcome(Map.of("red", Fraction.of(1, 3)), Fraction.ONE))
        .withMessage("the chances of the states red come to 1/3; together they are 1");
    assertThatIllegalArgumentException().isThrownBy(() -> new Outcome(Map.of(), Fraction.ONE));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Outcome.of("red").withLives(Fraction.of(-1, 5)))
        .withMessage("a chance of -1/5 of living; it lies between 0 and 1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> table(row("*", "red")).withPenetrance("red", Fraction.of(7, 5), "white"));
  }

  @Test
  void asManyStatesAsAlleles() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TraitModel.dominant("edge", A, List.of("red")))
        .withMessage("1 states (red) for the gene edge with the alleles A, a; here it needs 2");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TraitModel.intermediate("edge", A, List.of("red", "green")))
        .withMessageEndingWith("here it needs 3");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                TraitModel.intermediate(
                    "coat", Locus.of("coat", "P", "Q", "R"), List.of("p", "q", "r")))
        .withMessage("the gene coat has not just two alleles of a chromosome; write a table");
  }

  /** Sixteen loci of two alleles and eight of them asked for at once: no list of 3¹⁶ genotypes. */
  @Test
  void coverageOfManyGenesIsFound() {
    List<Pattern> all = new ArrayList<>();
    for (int i = 0; i < 16; i++) {
      Locus locus = Locus.of("gene " + i, "D" + i, "r" + i);
      all.add(new Pattern(locus, List.of("D" + i), true));
    }
    TraitModel needsAll =
        new TraitModel("flower", List.of("red", "white"), List.of(new Row(all, Outcome.of("red"))));

    assertThatIllegalArgumentException()
        .isThrownBy(() -> needsAll.requireComplete(2))
        .withMessageContaining("r15/r15 and perhaps more show");
  }
}
