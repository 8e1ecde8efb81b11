package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class GeneVerbsTest {

  @TempDir Path folder;

  private BenchStory bench;

  @BeforeEach
  void aRegisterWithAPlantATraitAndAGene() {
    bench = new BenchStory(folder);
    bench.done("plant", "Echeveria laui");
    bench.done("trait", "edge", "--states", "red,green");
    bench.done("gene", "edge", "R", "r");
  }

  /** What was said, the lines as one. */
  private String said(String... words) {
    return bench.done(words).replace("\n", " ");
  }

  private String complaint(String... words) {
    Outcome outcome = bench.type(words);
    assertThat(outcome.status()).isIn(1, 2);
    assertThat(outcome.out()).isEmpty();
    return outcome.err().replace("\n", " ");
  }

  @Test
  void aGeneIsItsAllelesAndPerhapsItsPlace() {
    assertThat(bench.done("gene", "leaf wax", "W,w"))
        .isEqualTo(
            """
            Entry 5: gene leaf wax: W over w.
            Next: say which trait hangs on it: filial model TRAIT --dominant 'leaf wax'
            """);
    assertThat(
            bench.done("gene", "tips", "T", "t", "--next-to", "Leaf wax", "--recombination", "5%"))
        .startsWith("Entry 6: gene tips: T over t, beside leaf wax (5 % recombined).\n");
    assertThat(bench.done("gene", "hairs", "H", "h", "--chromosome", "4", "--at", "12.5"))
        .contains("on chromosome 4 at 12.5 cM");
    assertThat(bench.done("gene", "stripes", "green", "white", "--cytoplasm"))
        .contains("handed on by the seed parent alone");
    assertThat(
            said(
                "gene",
                "S",
                "S1",
                "S2",
                "Sf",
                "--self-incompatible",
                "--leak",
                "0",
                "--self-fertile",
                "Sf",
                "--eggs",
                "S1=2,Sf=1/2",
                "--pollen",
                "Sf=0"))
        .contains("self-incompatible, leaking 0 %, self-fertile with Sf,")
        .contains("filial genotype PLANT S1/S2");
  }

  @Test
  void theAnswerIsJsonToo() {
    JsonNode json = bench.json("gene", "wax", "W", "w");

    assertThat(json.get("entry").asInt()).isEqualTo(5);
    assertThat(json.get("text").stringValue()).isEqualTo("gene wax: W over w");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "edge A a | the gene edge was declared in entry 4; amend that entry",
        "wax W | the gene wax has 1 alleles",
        "wax W w --at 4 | --chromosome and --at go together. Give --chromosome too",
        "wax W w --next-to edge | --next-to and --recombination go together",
        "wax W w --next-to rim --recombination 5% | no gene is called \"rim\"; there are edge (R, r)",
        "wax W w --next-to edge --recombination 60% | it lies between 0 and 1/2",
        "wax W w --eggs W | --eggs: \"W\" is not an allele and what it counts; write R=2",
        "wax W w --eggs W=1,W=2 | names W twice",
        "wax W w --leak 5% | but refuses no pollen",
      })
  void aGeneThatCannotBeIsRefused(String words, String complaint) {
    assertThat(complaint(("gene " + words).split(" "))).contains(complaint);
  }

  @Test
  void aTraitHangsOnAGeneRowByRow() {
    assertThat(bench.done("model", "edge", "R_=red:80%,Green", "*=green"))
        .isEqualTo(
            """
            Entry 5: edge goes by the gene edge: R_ red in 80 %, green in 20 %; all others
            green.
            Next: say what a plant carries, if you know: filial genotype PLANT Rr
            """);
    assertThat(complaint("model", "edge", "R_=red", "*=green"))
        .contains("how edge is inherited was said in entry 5; amend that entry");
  }

  @Test
  void someDieAndSomeDoNotShowIt() {
    assertThat(said("model", "edge", "RR=dies", "Rr=red:60%,dies:25%,green", "rr=green"))
        .contains("RR dies; Rr red in 80 %, green in 20 %, 25 % lost; rr green");
    bench.done("undo");
    assertThat(said("model", "edge", "--dominant", "Edge", "--lethal", "RR", "--shows", "RED=4/5"))
        .contains("RR dies; R_ red in 80 %, green in 20 %; rr green");
    bench.done("undo");
    assertThat(
            said(
                "model",
                "edge",
                "--dominant",
                "edge",
                "--states",
                "green,red",
                "--shows",
                "green=50%,red"))
        .contains("R_ green in 50 %, red in 50 %; rr red");
  }

  @Test
  void threeStatesAndTwoGenes() {
    bench.done("gene", "wax", "W", "w");
    bench.done("trait", "flower", "--states", "red,pink,white");

    assertThat(bench.done("model", "flower", "--intermediate", "edge"))
        .contains("RR red; Rr pink; rr white");
    bench.done("undo");
    assertThat(said("model", "flower", "--ratio", "9:3:4", "--genes", "edge,wax"))
        .contains("flower goes by the genes edge and wax: R_ W_ red; R_ pink; all others white");
    assertThat(bench.done("model", "edge", "--ratio", "15:1", "--genes", "wax,edge"))
        .contains("W_ red; R_ red; all others green");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "edge | what do plants show? Give rows",
        "edge --dominant edge R_=red | say the same thing in different ways",
        "edge R_ | \"R_\" does not say what plants show; write \"R_=red\"",
        "edge R_=red | does not say what rr shows; add a row",
        "edge R_=blue *=green | shows \"blue\", which edge has not",
        "edge Q_=red *=green | \"Q\" in \"Q_\" is not made of alleles of declared genes; there are edge",
        "edge R_=red:80%,green:30% *=green | come to 11/10; together they are 1",
        "edge R_=red,green *=green | has no share of red or green; write red:1/2",
        "rim R_=red *=green | no trait is called \"rim\"; the traits are edge",
        "edge --dominant rim | no gene is called \"rim\"; there are edge (R, r). Declare it first: filial"
            + " gene rim ALLELES",
        "edge --dominant W>w | Declare it first: filial gene NAME W w",
        "edge --ratio 9:7 | which two genes throw 9:7? Name them: --genes A,B",
        "edge --ratio 9:8 | \"9:8\" is none of 9:7, 15:1, 12:3:1, 9:3:4, 13:3, 9:6:1",
        "edge --dominant edge --shows red | does not say how often which state shows; write red=80%,plain",
        "edge --dominant edge --shows red=2 | is no part of a whole",
      })
  void aTableThatSaysTooLittleIsRefused(String words, String complaint) {
    assertThat(complaint(("model " + words).split(" "))).contains(complaint);
  }

  @Test
  void whatShowsElseIsAskedForWhereThereAreMoreStates() {
    bench.done("trait", "flower", "--states", "red,pink,white");

    assertThat(complaint("model", "flower", "--intermediate", "edge", "--shows", "red=1/2"))
        .contains("what shows where red does not? Say it after a comma: --shows red=1/2,STATE");
  }

  @Test
  void aSpeciesCarriesWhatItsPlantsCarry() {
    assertThat(bench.done("profile", "E. laui", "EDGE=r"))
        .startsWith("Entry 5: Echeveria laui carries edge always r.\n");
    assertThat(
            said(
                "profile",
                "Echeveria laui",
                "edge=R:75%,r",
                "--pairing",
                "tetrasomic",
                "--double-reduction",
                "1/7"))
        .contains("edge R 75 %, r 25 %; its four chromosomes pair freely; double reduction 1/7");
    assertThat(bench.type("profile", "Echeveria lauii", "edge=r").err())
        .contains("one letter away from Echeveria laui");
  }

  @Test
  void howLongTheChromosomesAreIsSaidOfAGenus() {
    assertThat(bench.done("profile", "Echeveria", "--map", "27x100"))
        .isEqualTo(
            """
            Entry 5: Echeveria: 27 chromosomes of 100 cM.
            Next: how much of a donor hangs on after backcrosses: filial attached PLANT
            """);
    assertThat(bench.done("genes").replaceAll(" +", " "))
        .contains("Echeveria 27 chromosomes of 100 cM");
    assertThat(bench.json("genes").at("/profiles/0/map").stringValue())
        .isEqualTo("27 chromosomes of 100 cM");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Echeveria --map long | is no chromosome length; write centimorgans parted by commas",
        "Echeveria --map 5000x100 | state the 1 to 1000 of one set, not of the whole plant",
        "Echeveria --map 100,0 | a chromosome of 0 centimorgans",
        "Echeveria | what do plants of Echeveria carry?",
        "Echeveria laui edge=r | A taxon of several words stands in quotes",
        "Echeveria edge= | is not a gene and its allele; write tips=t",
        "Echeveria edge=r edge=R | the gene edge is named twice",
        "Echeveria edge=Q | the gene edge has no allele Q; it has R, r",
        "Echeveria edge=R:2,r:-1 | a share of -1 of r; it lies between 0 and 1",
        "Echeveria rim=r | no gene is called \"rim\"",
        "Echeveria edge=r --pairing random | is none of tetrasomic, disomic",
        "Echeveria edge=r --double-reduction 1/7 | is tetrasomic, or leave it out",
      })
  void aProfileThatCannotBeIsRefused(String words, String complaint) {
    assertThat(complaint(("profile " + words).split(" "))).contains(complaint);
  }

  @Test
  void aPlantCarriesAllelesOfGenesThatAreFoundByTheirLetters() {
    assertThat(bench.done("genotype", "26-001", "Rr"))
        .isEqualTo(
            """
            Entry 5: 26-001M is Rr (edge).
            Next: all that is known of it: filial show 26-001M
            """);
    assertThat(bench.done("show", "26-001")).contains("26-001M is Rr");
    bench.done("gene", "wax", "W", "w", "--next-to", "edge", "--recombination", "10%");
    assertThat(complaint("genotype", "26-001", "Rr", "Ww")).contains("write RW/rw or Rw/rW");
    assertThat(bench.type("genotype", "26-001", "RW/rw").err())
        .contains("was said in entry 5 already (Rr)");
    bench.done("undo");
    assertThat(
            bench
                .json("genotype", "26-001", "WW", "--date", "2026-06-01")
                .get("text")
                .stringValue())
        .isEqualTo("26-001M is WW (wax)");
  }

  @Test
  void genesWithTheSameLetterAreNamed() {
    assertThat(bench.type("gene", "rot", "R", "h").err())
        .contains("the gene edge has an allele R too");

    assertThat(complaint("genotype", "26-001", "RR")).contains("may be of the gene edge or rot");
    assertThat(bench.done("genotype", "26-001", "RR", "--genes", "rot")).contains("is RR");
    assertThat(complaint("genotype", "26-001", "RR", "--genes", "rust"))
        .contains("no gene is called \"rust\"; there are edge (R, r), rot (R, h).");
  }

  @Test
  void aTetraploidCarriesFour() {
    assertThat(complaint("genotype", "26-001", "RRrr")).contains("has 2 chromosome sets");
    bench.done("taxon", "Echeveria laui", "--ploidy", "4");
    assertThat(bench.done("genotype", "26-001", "RRrr")).contains("26-001M is RRrr");
  }

  @Test
  void aGeneOnWhichSomethingHangsIsNotStruck() {
    bench.done("model", "edge", "R_=red", "*=green");

    assertThat(complaint("strike", "4", "--why", "a mistake"))
        .contains("an entry hangs on it and would no longer hold: entry 5");
    assertThat(bench.done("amend", "4", "alleles=R,r0,r", "--why", "a third one"))
        .contains("entry 4 now says: gene edge: R over r0 over r");
  }
}
