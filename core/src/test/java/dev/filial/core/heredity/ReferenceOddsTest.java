package dev.filial.core.heredity;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.heredity.TraitModel.Row;
import dev.filial.core.number.Fraction;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Two crosses that nobody works out by hand, against {@code src/test/reference/heredity_odds.py},
 * which goes through every pair of gametes in exact fractions and shares nothing with Filial. What
 * it printed stands beside it.
 */
class ReferenceOddsTest {

  private static final Path PRINTED = Path.of("src", "test", "reference", "heredity_odds.txt");

  private static Map<List<String>, Fraction> printed(String cross) throws IOException {
    Map<List<String>, Fraction> printed = new LinkedHashMap<>();
    for (String line : Files.readAllLines(PRINTED)) {
      List<String> fields = List.of(line.split("\t", -1));
      if (fields.get(0).equals(cross)) {
        printed.put(
            fields.subList(1, fields.size() - 1), Fraction.parse(fields.get(fields.size() - 1)));
      }
    }
    assertThat(printed).isNotEmpty();
    return printed;
  }

  private static Map<List<String>, Fraction> worked(Odds odds) {
    Map<List<String>, Fraction> worked = new LinkedHashMap<>();
    odds.classes().forEach(one -> worked.put(one.states(), one.chance()));
    worked.put(List.of("lost"), odds.lost());
    return worked;
  }

  private static List<Locus> loci(String letters) {
    List<Locus> loci = new ArrayList<>();
    for (String symbol : letters.split(" ", -1)) {
      loci.add(Locus.of("gene " + symbol, symbol, symbol.toLowerCase(Locale.ROOT)));
    }
    return loci;
  }

  private static TraitModel table(List<Locus> loci, String trait, String... rows) {
    List<Row> read = new ArrayList<>();
    List<String> states = new ArrayList<>();
    for (String row : rows) {
      List<String> parts = List.of(row.split(" -> ", -1));
      states.add(parts.get(1));
      read.add(new Row(Pattern.read(loci, parts.get(0)), Outcome.of(parts.get(1))));
    }
    return new TraitModel(trait, states.stream().distinct().toList(), read);
  }

  @Test
  void eightUnlinkedGenesSelfedWithLossesAndPenetrance() throws IOException {
    List<Locus> loci = loci("A B C D E F G H");
    TraitModel flower = table(loci, "flower", "A_ B_ C_ -> purple", "C_ -> pink", "* -> white");
    TraitModel leaf =
        table(loci, "leaf", "cc -> plain", "D_ -> spotted", "E_ -> striped", "* -> plain");
    TraitModel spine =
        table(loci, "spine", "F_ -> long", "G_ -> long", "* -> short")
            .withPenetrance("long", Fraction.of(9, 10), "short");
    TraitModel life =
        new TraitModel(
            "life",
            List.of("lives"),
            List.of(
                new Row(Pattern.read(loci, "hh"), Outcome.lethal()),
                new Row(Pattern.read(loci, "aa"), Outcome.of("lives").withLives(Fraction.of(2, 3))),
                new Row(List.of(), Outcome.of("lives"))));
    Genome genome = Genome.unlinked(loci.toArray(Locus[]::new));

    Cross cross = Cross.selfing(genome.genotype("AaBbCcDdEeFfGgHh")).withLosses(life);

    assertThat(worked(cross.odds(flower, leaf, spine))).isEqualTo(printed("unlinked"));
  }

  @Test
  void fourLinkedGenesOfTwoPhases() throws IOException {
    List<Locus> loci = loci("A B C D");
    TraitModel flower = table(loci, "flower", "A_ C_ -> purple", "* -> white");
    TraitModel leaf = table(loci, "leaf", "B_ D_ -> spotted", "bb dd -> plain", "* -> striped");
    Genome genome =
        Genome.of(
            new LinkageGroup(
                loci, List.of(Fraction.of(1, 10), Fraction.of(1, 4), Fraction.of(1, 3)), true));

    Cross cross = Cross.of(genome.genotype("ABCD/abcd"), genome.genotype("AbCd/aBcD"));

    assertThat(worked(cross.odds(flower, leaf))).isEqualTo(printed("linked"));
  }
}
