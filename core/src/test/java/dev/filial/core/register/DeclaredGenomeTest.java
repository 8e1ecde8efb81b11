package dev.filial.core.register;

import static dev.filial.core.register.Bench.at;
import static dev.filial.core.register.Bench.beside;
import static dev.filial.core.register.Bench.gene;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.filial.core.heredity.Distortion;
import dev.filial.core.heredity.Genome;
import dev.filial.core.heredity.LinkageGroup;
import dev.filial.core.heredity.Locus;
import dev.filial.core.heredity.MapFunction;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class DeclaredGenomeTest {

  private static final Fraction TENTH = Fraction.of(1, 10);

  private final Bench bench = new Bench();

  private Genome genome(String... loci) {
    return DeclaredGenome.of(bench.book, List.of(loci), MapFunction.HALDANE);
  }

  private static List<List<String>> names(Genome genome) {
    return genome.groups().stream()
        .map(group -> group.loci().stream().map(Locus::name).toList())
        .toList();
  }

  private static LocusDeclared refusing(
      String name, @Nullable Fraction leak, List<String> selfFertile, String... alleles) {
    return LocusDeclared.of(name, List.of(alleles)).refusing(leak, selfFertile);
  }

  @Test
  void genesOfWhichNoPlaceIsKnownSegregateAlone() {
    bench.say(gene("edge", "R", "r"));
    bench.say(gene("wax", "W", "w"));

    assertThat(names(genome("wax", " edge ", "wax")))
        .containsExactly(List.of("wax"), List.of("edge"));
    assertThat(genome("edge").locus("edge").alleles()).containsExactly("R", "r");
  }

  @Test
  void genesOfOneChromosomeStandInTheOrderOfItsMap() {
    bench.say(at("4", "40", gene("wax", "W", "w")));
    bench.say(at("4", "20", gene("edge", "R", "r")));
    bench.say(at("2", "20", gene("tips", "T", "t")));

    Genome genome = genome("wax", "tips", "edge");

    assertThat(names(genome)).containsExactly(List.of("edge", "wax"), List.of("tips"));
    assertThat(genome.groups().get(0).recombination().get(0).toDouble())
        .isEqualTo(MapFunction.HALDANE.recombination(0.2), within(1e-15));
    assertThat(
            DeclaredGenome.of(bench.book, List.of("wax", "edge"), MapFunction.KOSAMBI)
                .groups()
                .get(0)
                .recombination()
                .get(0)
                .toDouble())
        .isEqualTo(MapFunction.KOSAMBI.recombination(0.2), within(1e-15));
  }

  @Test
  void genesBesideEachOtherStandInARowWhicheverNamesTheOther() {
    bench.say(gene("wax", "W", "w"));
    bench.say(beside("wax", TENTH, gene("edge", "R", "r")));
    bench.say(beside("wax", Fraction.of(1, 5), gene("tips", "T", "t")));

    LinkageGroup group = genome("wax", "tips", "edge").groups().get(0);

    assertThat(group.loci().stream().map(Locus::name)).containsExactly("edge", "wax", "tips");
    assertThat(group.recombination()).containsExactly(TENTH, Fraction.of(1, 5));
    assertThat(group.exact()).isTrue();
  }

  @Test
  void overAGeneThatIsNotAskedAboutRecombinationAddsUp() {
    bench.say(gene("wax", "W", "w"));
    bench.say(beside("wax", TENTH, gene("edge", "R", "r")));
    bench.say(beside("wax", Fraction.of(1, 5), gene("tips", "T", "t")));

    // 1/10 + 1/5 - 2 · 1/10 · 1/5
    assertThat(genome("tips", "edge").groups())
        .singleElement()
        .satisfies(group -> assertThat(group.recombination()).containsExactly(Fraction.of(13, 50)));
    assertThat(names(genome("tips"))).containsExactly(List.of("tips"));
  }

  @Test
  void aGeneInTheCytoplasmStandsAlone() {
    bench.say(LocusDeclared.ofCytoplasm("stripes", List.of("green", "white")));
    bench.say(gene("edge", "R", "r"));

    assertThat(genome("edge", "stripes").genotype("Rr white").text()).isEqualTo("Rr white");
    assertThat(genome("stripes").locus("stripes").isCytoplasmic()).isTrue();
  }

  @Test
  void whatFavoursGametesAndRefusesPollenComesAlong() {
    bench.say(refusing("S", null, List.of(), "S1", "S2"));
    bench.say(
        LocusDeclared.of("edge", List.of("R", "r"))
            .weighing(Map.of("R", Fraction.ZERO), Map.of("r", Fraction.of(2))));

    Genome genome = genome("edge", "S");

    assertThat(genome.distortions().stream().map(Distortion::side))
        .containsExactly(Distortion.Side.EGGS, Distortion.Side.POLLEN);
    assertThat(genome.selfIncompatibility().orElseThrow().leak()).isEqualTo(Fraction.of(1, 100));
    assertThat(genome("edge").selfIncompatibility()).isEmpty();
  }

  @Test
  void noLeakAtAllIsNotTheUsualOne() {
    bench.say(refusing("S", Fraction.ZERO, List.of("Sf"), "S1", "Sf"));

    assertThat(genome("S").selfIncompatibility().orElseThrow().leak()).isEqualTo(Fraction.ZERO);
    assertThat(genome("S").selfIncompatibility().orElseThrow().selfFertile()).containsExactly("Sf");
  }

  @Test
  void aGeneNobodyDeclaredIsNamed() {
    bench.say(gene("edge", "R", "r"));

    assertThatThrownBy(() -> genome("Edge"))
        .isInstanceOf(RegisterRefusal.class)
        .hasMessage("no gene is called \"Edge\"; the genes are edge, or declare it first");
    assertThatThrownBy(() -> DeclaredGenome.of(bench.book, List.of(), MapFunction.HALDANE))
        .hasMessageContaining("there is no gene to reckon with");
  }

  @Test
  void placesMayHaveDecimals() {
    bench.say(at("4", "20.5", gene("wax", "W", "w")));

    assertThat(bench.book.locus("wax").orElseThrow().centimorgans())
        .isEqualTo(new BigDecimal("20.5"));
  }
}
