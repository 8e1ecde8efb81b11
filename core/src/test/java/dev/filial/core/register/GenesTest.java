package dev.filial.core.register;

import static dev.filial.core.register.Bench.gene;
import static dev.filial.core.register.Bench.model;
import static dev.filial.core.register.Bench.profile;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.ancestry.GeneticMap;
import dev.filial.core.heredity.TraitModel;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.ProfileStated.Pairing;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a register says of genes, and how it is kept. */
class GenesTest {

  private static final Map<String, Fraction> ALL_RED = Map.of("R", Fraction.ONE);
  private static final Map<String, Fraction> MIXED = Map.of("R", Fraction.HALF, "r", Fraction.HALF);

  private final Bench bench = new Bench();

  private static ProfileStated pairing(
      String taxon, @Nullable Pairing pairing, @Nullable Fraction doubleReduction) {
    return new ProfileStated(taxon, Map.of(), pairing, doubleReduction, null);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          {"kind":"locus","locus":"wax","alleles":["W","w"],"linkedTo":"edge","recombination":"0"}
          {"kind":"locus","locus":"wax","alleles":["W","w"],"linkedTo":"edge","recombination":"1/10"}
          {"kind":"locus","locus":"S","alleles":["S1","S2"],"incompatibility":true}
          {"kind":"locus","locus":"S","alleles":["S1","S2"],"incompatibility":true,"leak":"0"}
          {"kind":"locus","locus":"S","alleles":["S1","S2"],"incompatibility":true,"leak":"1/50"}
          {"kind":"locus","locus":"edge","alleles":["R","r"],"eggs":{"R":"0"},"pollen":{"r":"2"}}
          {"kind":"locus","locus":"edge","alleles":["R","r"],"chromosome":"4","centimorgans":0}
          {"kind":"model","trait":"edge","loci":["edge"],"rows":[{"genes":"RR","lost":"1"},{"genes":"*","shows":{"red":"1","green":"0"}}]}
          {"kind":"profile","taxon":"Echeveria laui","pairing":"tetrasomic"}
          {"kind":"profile","taxon":"Echeveria laui","pairing":"tetrasomic","doubleReduction":"0"}
          {"kind":"profile","taxon":"Echeveria laui","frequencies":{"edge":{"R":"0","r":"1"}},"pairing":"disomic"}
          {"kind":"profile","taxon":"Echeveria","chromosomes":[100,87.50,100]}
          {"kind":"genotype","code":"24-001W","loci":["edge"],"genotype":"Rr"}
          """)
  void nothingKnownAndNoneAreToldApart(String json) {
    assertThat(EntryJson.write(EntryJson.read(json))).isEqualTo(json);
  }

  @Test
  void anExplicitNullIsNothingKnown() {
    assertThat(
            EntryJson.read(
                "{\"kind\":\"locus\",\"locus\":\"edge\",\"alleles\":[\"R\",\"r\"],\"leak\":null,"
                    + "\"recombination\":null,\"eggs\":null}"))
        .isEqualTo(gene("edge", "R", "r"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "locus":"edge","alleles":["R"] | the gene edge has 1 alleles; it has 2 or more
          "locus":"edge","alleles":["R","R"] | the allele R of the gene edge is named twice
          "locus":"edge","alleles":["R","r x"] | "r x" cannot be the symbol of an allele
          "locus":" ","alleles":["R","r"] | "locus" is empty
          "locus":"edge, wax","alleles":["R","r"] | cannot be the name of a gene; leave out , ; = and :
          "locus":"edge","alleles":["R","r"],"chromosome":"4" | say where, in centimorgans from its end
          "locus":"edge","alleles":["R","r"],"centimorgans":4 | lies at 4 cM, but on no chromosome; name it
          "locus":"edge","alleles":["R","r"],"chromosome":"4","centimorgans":-1 | from 0 upwards
          "locus":"edge","alleles":["R","r"],"linkedTo":"wax" | in which share of the gametes the two recombine
          "locus":"edge","alleles":["R","r"],"recombination":"1/4" | but with no other gene; name it
          "locus":"edge","alleles":["R","r"],"linkedTo":"wax","recombination":"3/4" | between 0 and 1/2
          "locus":"edge","alleles":["R","r"],"linkedTo":" edge","recombination":"1/4" | beside itself
          "locus":"edge","alleles":["R","r"],"linkedTo":"wax","recombination":"1/4","chromosome":"4","centimorgans":1 | in one of the two ways
          "locus":"edge","alleles":["R","r"],"cytoplasmic":true,"linkedTo":"wax","recombination":"1/4" | sits in the cytoplasm
          "locus":"edge","alleles":["R","r"],"cytoplasmic":true,"incompatibility":true | not in the cytoplasm
          "locus":"edge","alleles":["R","r"],"cytoplasmic":true,"eggs":{"R":"2"} | does not segregate
          "locus":"edge","alleles":["R","r"],"eggs":{"x":"2"} | the gene edge has no allele x; it has R, r
          "locus":"edge","alleles":["R","r"],"pollen":{"R":"0","r":"0"} | no allele of the gene edge is handed on
          "locus":"edge","alleles":["R","r"],"leak":"1/10" | but refuses no pollen
          "locus":"edge","alleles":["R","r"],"incompatibility":true,"leak":"2" | it lies between 0 and 1
          """)
  void aGeneThatCannotBeIsRefused(String properties, String complaint) {
    assertThatThrownBy(() -> EntryJson.read("{\"kind\":\"locus\"," + properties + "}"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(complaint);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "kind":"model","trait":"edge","loci":["edge"],"rows":[] | has no rows
          "kind":"model","trait":"edge","loci":[],"rows":[{"genes":"*","lost":"1"}] | name the genes it is about
          "kind":"model","trait":"edge","loci":["edge","edge "],"rows":[{"genes":"*","lost":"1"}] | the gene edge is named twice
          "kind":"model","trait":"edge","loci":["edge"],"rows":[{"genes":"R_"}] | say what R_ shows, or that it dies
          "kind":"model","trait":"edge","loci":["edge"],"rows":[{"genes":"R_","lost":"2"}] | it lies between 0 and 1
          "kind":"model","trait":"edge","loci":["edge"],"rows":[{"genes":"R_","lost":"1","shows":{"red":"1"}}] | dies and so shows nothing
          "kind":"model","trait":"edge","loci":["edge"],"rows":[{"genes":"R_","shows":{"red":"1/2"}}] | the row R_: the chances of the states red come to 1/2
          "kind":"profile","taxon":"Echeveria laui" | say how frequent an allele is in Echeveria laui
          "kind":"profile","taxon":"Echeveria laui","frequencies":{"edge":{}} | of the gene edge come to 0
          "kind":"profile","taxon":"Echeveria laui","frequencies":{"edge":{"R":"1/2"}} | of the gene edge (R) come to 1/2
          "kind":"profile","taxon":"Echeveria laui","frequencies":{"edge":{"R":"2","r":"-1"}} | a frequency of -1 of r
          "kind":"profile","taxon":"Echeveria laui","doubleReduction":"1/7" | say that Echeveria laui is tetrasomic
          "kind":"profile","taxon":"Echeveria laui","pairing":"disomic","doubleReduction":"1/7" | is tetrasomic
          "kind":"profile","taxon":"Echeveria laui","pairing":"tetrasomic","doubleReduction":"1/5" | between 0 and 1/6
          "kind":"profile","taxon":"Echeveria","chromosomes":[] | how its chromosomes pair, or how long they are
          "kind":"profile","taxon":"Echeveria","chromosomes":[100,0] | a chromosome of 0 centimorgans; state more than 0
          "kind":"profile","taxon":"Echeveria","chromosomes":[-5] | a chromosome of -5 centimorgans
          "kind":"profile","taxon":"Echeveria","chromosomes":[10001] | at most 10000
          "kind":"profile","taxon":"Echeveria","chromosomes":[1e99] | more than 30 digits or decimals
          "kind":"profile","taxon":"Echeveria laui","pairing":"random" | "random" is none of tetrasomic, disomic
          "kind":"genotype","code":"24-001W","loci":["edge"],"genotype":" " | "genotype" is empty
          "kind":"genotype","code":"24-001W","genotype":"Rr" | name the genes it is about
          """)
  void whatIsSaidOfGenesHasToAddUp(String properties, String complaint) {
    assertThatThrownBy(() -> EntryJson.read("{" + properties + "}"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(complaint);
  }

  @Test
  void theGenesOfARegisterAreListedByNameUntilTheyAreStruck() {
    bench.say(gene("wax", "W", "w"));
    long edge = bench.say(gene(" edge", "R", "r"));
    bench.say(gene("Edge", "E", "e"));
    assertThat(bench.book.keys(Subject.Kind.LOCUS)).containsExactly("Edge", "edge", "wax");
    assertThat(bench.book.loci()).hasSize(3);
    assertThat(bench.book.locus("edge ")).contains(gene(" edge", "R", "r"));

    bench.say(new Amended(edge, null, "a trait, not a gene"));

    assertThat(bench.book.keys(Subject.Kind.LOCUS)).containsExactly("Edge", "wax");
    assertThat(bench.book.locus("edge")).isEmpty();
    assertThat(new RegisterTables(bench.book).loci()).hasSize(2);
  }

  @Test
  void aTableIsFoundByItsTraitAndReckonedWith() {
    bench.say(Bench.edge());
    bench.say(gene("edge", "R", "r"));
    ModelDeclared said = model("edge", List.of("edge"), "R_=red", "rr=green");
    bench.say(said);

    assertThat(bench.book.model("edge")).contains(said);
    assertThat(bench.book.trait("edge")).contains(Bench.edge());
    TraitModel model =
        said.toModel(
            bench.book.loci().stream().map(LocusDeclared::toLocus).toList(),
            List.of("red", "green"));
    assertThat(model.rows().stream().map(TraitModel.Row::text)).containsExactly("R_", "rr");
    model.requireComplete(2);
  }

  @Test
  void whatIsSaidOfATaxonIsReadUnderItsAcceptedNameTheLaterGeneByGene() {
    bench.say(gene("edge", "R", "r"));
    bench.say(gene("wax", "W", "w"));
    bench.say(profile("Echeveria hortensis", "edge", ALL_RED));
    bench.say(profile("Echeveria laui", "wax", Map.of("W", Fraction.ONE)));
    bench.say(pairing("Echeveria laui", Pairing.TETRASOMIC, Fraction.of(1, 7)));
    assertThat(bench.book.profile("Echeveria laui").orElseThrow().frequencies())
        .containsOnlyKeys("wax");

    bench.say(new TaxonRenamed("Echeveria hortensis", "Echeveria laui", null));
    bench.say(profile("Echeveria laui", "edge", MIXED));
    bench.say(profile("Echeveria hortensis", "wax", Map.of("w", Fraction.ONE)));

    assertThat(bench.book.profile("Echeveria cf. hortensis"))
        .contains(
            new ProfileStated(
                "Echeveria laui",
                Map.of("edge", MIXED, "wax", Map.of("w", Fraction.ONE)),
                Pairing.TETRASOMIC,
                Fraction.of(1, 7),
                null));
    assertThat(bench.book.profile("Echeveria agavoides")).isEmpty();
  }

  @Test
  void aLaterWordOnPairingTakesDoubleReductionWithIt() {
    bench.say(pairing("Echeveria laui", Pairing.TETRASOMIC, Fraction.of(1, 7)));
    bench.say(pairing("Echeveria laui", Pairing.DISOMIC, null));

    assertThat(bench.book.profile("Echeveria laui"))
        .contains(pairing("Echeveria laui", Pairing.DISOMIC, null));
  }

  @Test
  void theLengthsOfChromosomesAreStatedOfAGenusTheLaterWordHolding() {
    bench.say(ProfileStated.ofMap("Echeveria", GeneticMap.parse("27x100")));
    bench.say(ProfileStated.ofMap("Echeveria", GeneticMap.parse("12.5, 110, 2x90")));
    bench.say(pairing("Echeveria", Pairing.TETRASOMIC, null));

    ProfileStated held = bench.book.profile("Echeveria").orElseThrow();
    assertThat(held.chromosomes()).map(Object::toString).containsExactly("110", "90", "90", "12.5");
    assertThat(held.geneticMap()).contains(GeneticMap.of(1.1, 0.9, 0.9, 0.125));
    assertThat(held.pairing()).isEqualTo(Pairing.TETRASOMIC);
    assertThat(bench.book.profile("Echeveria laui")).isEmpty();
  }

  @Test
  void aProfileAloneDoesNotDeclareATaxon() {
    bench.say(pairing("Echeveria laui", Pairing.DISOMIC, null));

    assertThat(bench.book.taxa()).isEmpty();
    assertThat(bench.book.taxon("echeveria laui")).isEqualTo(Optional.empty());
  }
}
