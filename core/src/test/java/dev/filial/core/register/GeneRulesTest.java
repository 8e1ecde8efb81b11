package dev.filial.core.register;

import static dev.filial.core.register.Bench.acquired;
import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.at;
import static dev.filial.core.register.Bench.beside;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.cytoplasmic;
import static dev.filial.core.register.Bench.edge;
import static dev.filial.core.register.Bench.gene;
import static dev.filial.core.register.Bench.genotype;
import static dev.filial.core.register.Bench.model;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.profile;
import static dev.filial.core.register.Bench.struck;
import static dev.filial.core.register.Bench.taxon;
import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.heredity.MapFunction;
import dev.filial.core.number.Fraction;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class GeneRulesTest {

  private static final Fraction TENTH = Fraction.of(1, 10);

  private final Bench bench = new Bench();
  private long red;
  private long waxy;

  @BeforeEach
  void twoGenesBesideEachOtherAndTwoPlants() {
    bench.plant("24-001", "Echeveria laui");
    bench.plant("24-002", "Echeveria agavoides");
    red = bench.say(gene("edge", "R", "r"));
    waxy = bench.say(beside("edge", TENTH, gene("wax", "W", "w")));
    bench.say(edge());
  }

  private String refusal(Statement statement) {
    return bench.refusal(statement).getMessage();
  }

  @Test
  void aGeneThatATableNamesKeepsTheAllelesItNeeds() {
    long table = bench.say(model("edge", List.of("edge"), "R_=red", "rr=green"));

    assertThat(bench.refusal(amended(red, gene("edge", "A", "r"))).entries())
        .containsExactly(table);
    assertThat(refusal(amended(red, gene("edge", "R", "q", "r"))))
        .contains("entry " + table + ": the table of edge does not say what qq, qr show");
    assertThat(refusal(amended(red, gene("rim", "R", "r"))))
        .contains("entry " + table + ": no gene is called \"edge\"");

    bench.say(amended(red, gene("edge", "r", "R")));
    assertThat(bench.refusal(struck(red)).entries()).contains(table);
  }

  @Test
  void aTraitKeepsTheStatesThatItsTableShows() {
    bench.say(model("edge", List.of("edge"), "R_=red", "rr=green"));
    long trait = bench.book.entriesOn(Subject.trait("edge")).get(0);

    assertThat(
            refusal(
                amended(
                    trait,
                    new TraitDeclared("edge", List.of("red", "white"), null, null, null, null))))
        .contains("shows \"green\", which edge has not");
    assertThat(refusal(struck(trait))).contains("no trait is called \"edge\"");
  }

  @Test
  void aTableMayBeOfTetraploidsAlone() {
    assertThat(bench.warnings(model("edge", List.of("edge"), "RRRR=red", "R_=red", "rrrr=green")))
        .isEmpty();
    long table = bench.book.size();
    assertThat(refusal(amended(table, model("edge", List.of("edge"), "RRRR=red", "rrrr=green"))))
        .contains("the table of edge does not say what RR, Rr, rr and perhaps more show");
  }

  @Test
  void whatPlantsCarryIsReadAnewWhenGenesPart() {
    bench.say(genotype("24-001", "RW/rw", "edge", "wax"));
    long stated = bench.book.size();

    assertThat(bench.refusal(amended(waxy, gene("wax", "W", "w"))).entries())
        .containsExactly(stated);
    bench.say(amended(waxy, beside("edge", Fraction.of(1, 5), gene("wax", "W", "w"))));
  }

  @Test
  void theGeneBetweenTwoHoldsThemTogether() {
    long tips = bench.say(beside("wax", TENTH, gene("tips", "T", "t")));
    bench.say(genotype("24-001", "RT/rt", "edge", "tips"));
    long stated = bench.book.size();

    assertThat(bench.refusal(amended(waxy, gene("wax", "W", "w"))).entries())
        .containsExactly(stated);
    assertThat(bench.refusal(struck(waxy)).entries()).containsExactly(tips, stated);
  }

  @Test
  void aGeneOthersLieBesideCannotMoveToAMapOrIntoTheCytoplasm() {
    assertThat(refusal(amended(red, at("4", "10", gene("edge", "R", "r")))))
        .contains("entry " + waxy + ": the gene wax cannot lie just beside edge");
    assertThat(refusal(amended(red, cytoplasmic("edge", "R", "r"))))
        .contains("entry " + waxy + ": the gene wax cannot lie beside edge, which sits in the");
  }

  @Test
  void genesMayChangePlacesInARow() {
    long tips = bench.say(beside("wax", TENTH, gene("tips", "T", "t")));
    bench.say(amended(tips, beside("edge", TENTH, gene("tips", "T", "t"))));

    assertThat(
            DeclaredGenome.of(bench.book, List.of("edge", "wax", "tips"), MapFunction.HALDANE)
                .groups()
                .get(0)
                .loci())
        .extracting(locus -> locus.name())
        .containsExactly("tips", "edge", "wax");
  }

  @Test
  void aProfileIsOfGenesAndAllelesThatThereAre() {
    assertThat(refusal(profile("Echeveria laui", "rim", Map.of("R", Fraction.ONE))))
        .isEqualTo("no gene is called \"rim\"; the genes are edge, wax, or declare it first");
    long stated = bench.say(profile("Echeveria laui", "edge", Map.of("r", Fraction.ONE)));
    assertThat(bench.refusal(amended(red, gene("edge", "R", "q"))).entries())
        .containsExactly(stated);
  }

  @Test
  void aTetraploidCarriesFourOfEachOnceItsTaxonIsSaidToHaveFourSets() {
    assertThat(refusal(genotype("24-001", "RRrr", "edge")))
        .contains("24-001W (Echeveria laui) has 2 chromosome sets");
    long sets = bench.say(taxon("Echeveria laui", 4));
    long stated = bench.say(genotype("24-001", "RRrr", "edge"));

    assertThat(bench.refusal(struck(sets)).entries()).containsExactly(stated);
  }

  @Test
  void aDiploidThatIsFoundToBeTetraploidCannotCarryTwo() {
    long stated = bench.say(genotype("24-001", "Rr", "edge"));

    assertThat(bench.refusal(taxon("Echeveria laui", 4)).entries()).containsExactly(stated);
    bench.say(taxon("Echeveria agavoides", 4));
    assertThat(
            bench
                .refusal(new TaxonRenamed("Echeveria laui", "Echeveria agavoides", null))
                .entries())
        .containsExactly(stated);
  }

  @Test
  void aSeedlingCarriesAsManyAsItsParentsGiveIt() {
    bench.say(taxon("Echeveria agavoides", 4));
    bench.say(cross("25-001", "24-001", "24-002", "2025"));
    bench.say(numbered("25-001", 1, 1, "2026"));

    assertThat(refusal(genotype("25-001-1", "Rr", "edge"))).contains("25-001R-1 has 3 chromosome");
    long stated = bench.say(genotype("25-001-1", "RRr", "edge"));
    assertThat(refusal(amended(3, acquired("24-002", "Echeveria laui", "2024"))))
        .contains("entry " + stated + ": \"RRr\" has 3 alleles of each gene");
  }

  @Test
  void theCytoplasmHasOneAlleleInPlantsOfAnySets() {
    bench.say(cytoplasmic("stripes", "green", "white"));
    bench.say(taxon("Echeveria laui", 4));

    assertThat(bench.warnings(genotype("24-001", "white", "stripes"))).isEmpty();
  }

  @Test
  void genotypesAtOtherGenesAreNoSecondWord() {
    bench.say(genotype("24-001", "Rr", "edge"));
    assertThat(bench.warnings(genotype("24-001", "Ww", "wax"))).isEmpty();
    assertThat(bench.warnings(genotype("24-001", "RW/rw", " wax", "edge"))).hasSize(2);
  }
}
