package dev.filial.core.answer;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.register.EntryJson;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeneTellingTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "kind":"locus","locus":"edge","alleles":["R","r"] | gene edge: R over r
          "kind":"locus","locus":"stripes","alleles":["green","white"],"cytoplasmic":true | gene stripes: green, white, handed on by the seed parent alone
          "kind":"locus","locus":"edge","alleles":["R","r"],"chromosome":"4","centimorgans":12.50 | gene edge: R over r, on chromosome 4 at 12.50 cM
          "kind":"locus","locus":"wax","alleles":["W","w"],"linkedTo":"edge","recombination":"1/10" | gene wax: W over w, beside edge (10 % recombined)
          "kind":"locus","locus":"S","alleles":["S1","Sf"],"incompatibility":true,"leak":"1/20","selfFertile":["Sf"] | gene S: S1, Sf, self-incompatible, leaking 5 %, self-fertile with Sf
          "kind":"locus","locus":"edge","alleles":["R","r"],"eggs":{"R":"2"},"pollen":{"r":"1/3"} | gene edge: R over r, eggs with R counting 2, pollen with r counting 1/3
          "kind":"model","trait":"rim","loci":["edge"],"rows":[{"genes":"RR","lost":"1"},{"genes":"R_","shows":{"red":"4/5","green":"1/5"},"lost":"1/10"},{"genes":"*","shows":{"green":"1"}}] | rim goes by the gene edge: RR dies; R_ red in 80 %, green in 20 %, 10 % lost; all others green
          "kind":"model","trait":"rim","loci":["edge"],"rows":[{"genes":"R_","shows":{"red":"1"}},{"genes":"*","lost":"1"}] | rim goes by the gene edge: R_ red; all others die
          "kind":"profile","taxon":"Echeveria laui","frequencies":{"edge":{"r":"1"},"wax":{"W":"3/4","w":"1/4"}} | Echeveria laui carries edge always r; wax W 75 %, w 25 %
          "kind":"profile","taxon":"Echeveria laui","pairing":"tetrasomic","doubleReduction":"1/7" | Echeveria laui: its four chromosomes pair freely; double reduction 1/7
          "kind":"profile","taxon":"Echeveria laui","pairing":"disomic" | Echeveria laui: its two subgenomes keep apart
          "kind":"profile","taxon":"Echeveria","chromosomes":[100,100,80.5] | Echeveria: 3 chromosomes of 2 x 100, 80.5 cM
          "kind":"profile","taxon":"Echeveria laui","frequencies":{"edge":{"r":"1"}},"chromosomes":[100,100] | Echeveria laui carries edge always r; 2 chromosomes of 100 cM
          "kind":"genotype","code":"24-001W","loci":["edge"],"genotype":"Rr" | 24-001W is Rr (edge)
          """)
  void aGrowerSaysItSo(String properties, String told) {
    assertThat(Telling.of(EntryJson.read("{" + properties + "}"))).isEqualTo(told);
  }
}
