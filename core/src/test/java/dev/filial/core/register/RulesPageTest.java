package dev.filial.core.register;

import static dev.filial.core.register.Bench.acquired;
import static dev.filial.core.register.Bench.alive;
import static dev.filial.core.register.Bench.amended;
import static dev.filial.core.register.Bench.at;
import static dev.filial.core.register.Bench.beside;
import static dev.filial.core.register.Bench.code;
import static dev.filial.core.register.Bench.cross;
import static dev.filial.core.register.Bench.cytoplasmic;
import static dev.filial.core.register.Bench.fate;
import static dev.filial.core.register.Bench.gene;
import static dev.filial.core.register.Bench.genotype;
import static dev.filial.core.register.Bench.germinated;
import static dev.filial.core.register.Bench.harvest;
import static dev.filial.core.register.Bench.joined;
import static dev.filial.core.register.Bench.model;
import static dev.filial.core.register.Bench.numbered;
import static dev.filial.core.register.Bench.observed;
import static dev.filial.core.register.Bench.potted;
import static dev.filial.core.register.Bench.profile;
import static dev.filial.core.register.Bench.ramet;
import static dev.filial.core.register.Bench.selfIncompatible;
import static dev.filial.core.register.Bench.sowing;
import static dev.filial.core.register.Bench.struck;
import static dev.filial.core.register.Bench.taxon;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import dev.filial.core.number.Fraction;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The page of the handbook about the rules quotes what the program says, word for word. */
class RulesPageTest {

  /**
   * One row of the page.
   *
   * @param rule what it is about
   * @param verdict refused or warned
   * @param said what the program says on a bench set out for it
   */
  record Row(String rule, String verdict, Function<Bench, String> said) {
    String text() {
      return "| " + rule + " | " + verdict + " | " + said.apply(setOut()) + " |";
    }

    @Override
    public String toString() {
      return rule;
    }
  }

  /** Entries 2 to 10: two plants, their cross, its harvest, sowing, pot and seedlings, a trait. */
  private static Bench setOut() {
    Bench bench = new Bench();
    bench.say(acquired("24-001", "Echeveria laui", "2024-05"));
    bench.say(acquired("24-002", "Echeveria agavoides", "2024-05"));
    bench.say(cross("25-001", "24-001", "24-002", "2025-03-04"));
    bench.say(harvest("25-001 H1", "2025-06-01", "40"));
    bench.say(sowing("25-001 S1", "25-001 H1", "2025-06-10", "30"));
    bench.say(potted("25-001 P1", "25-001 S1", "2025-09-01", "10"));
    bench.say(numbered("25-001 P1", 1, 6, "2026-04-01"));
    bench.say(cross("27-001", "25-001-1", "24-001", "2027-03"));
    bench.say(Bench.edge());
    return bench;
  }

  private static Row refused(String rule, Statement statement) {
    return refused(rule, bench -> {}, statement);
  }

  private static Row refused(String rule, Consumer<Bench> before, Statement statement) {
    return new Row(
        rule,
        "refused",
        bench -> {
          before.accept(bench);
          return bench.refusal(statement).getMessage();
        });
  }

  private static Row cannotBeSaid(String rule, Runnable statement) {
    return new Row(
        rule,
        "refused",
        bench -> Objects.requireNonNull(catchThrowable(statement::run)).getMessage());
  }

  private static Row warned(String rule, Consumer<Bench> before, Statement statement) {
    return new Row(
        rule,
        "warned",
        bench -> {
          before.accept(bench);
          List<String> warnings = bench.warnings(statement);
          assertThat(warnings).hasSize(1);
          return warnings.get(0);
        });
  }

  /** Entries 11 to 13: edge, wax beside it, tips beside wax. */
  private static void row(Bench bench) {
    bench.say(gene("edge", "R", "r"));
    bench.say(beside("edge", Fraction.of(1, 10), gene("wax", "W", "w")));
    bench.say(beside("wax", Fraction.of(1, 5), gene("tips", "T", "t")));
  }

  private static Pollinated unprotected() {
    Pollinated made = cross("26-001", "24-001", "24-002", "2026-03");
    return new Pollinated(
        made.code(),
        made.seedParent(),
        made.pollen(),
        made.date(),
        null,
        List.of(Protection.NONE),
        Fraction.ZERO,
        Fraction.ZERO,
        Fraction.ZERO,
        null,
        null,
        false,
        null,
        null);
  }

  static Stream<Row> rows() {
    return Stream.of(
        refused(
            "a plant among its own ancestors",
            bench -> bench.say(numbered("27-001", 1, 1, "2028")),
            amended(4, cross("25-001", "24-001", "27-001-1", null))),
        refused(
            "a parent that did not yet exist on the day",
            cross("25-002", "24-001", "25-001-1", "2025-02")),
        refused("a ramet from before its source", ramet("25-002", "25-001-1", "2025-02")),
        refused("a code that is taken", acquired("25-001", "Echeveria laui", "2025")),
        refused(
            "a code that was taken, its entry struck",
            bench -> bench.say(struck(9)),
            acquired("27-001", "Echeveria laui", "2027")),
        refused("a seedling number never given out", observed("25-001-9", "edge", "red")),
        cannotBeSaid(
            "a wrong check letter",
            () -> EntryJson.read("{\"kind\":\"note\",\"code\":\"25-001A\",\"text\":\"dry\"}")),
        cannotBeSaid(
            "shares of taxa above 1",
            () ->
                new Determination(
                    null, null, Map.of("Echeveria laui", Fraction.of(5, 4)), null, null)),
        cannotBeSaid(
            "shares of a cross above 1",
            () -> Require.shares(Fraction.HALF, Fraction.HALF, Fraction.of(1, 3))),
        refused("a state the trait does not have", observed("25-001-1", "edge", "blue")),
        refused("a trait nobody declared", observed("25-001-1", "bloom", "white")),
        refused("more taken than was there", fate("25-001 P1", Fate.GIVEN, "2026-05", "5")),
        refused(
            "a count amended below what later left",
            bench -> bench.say(alive("25-001 P1", "2025-12", "8")),
            amended(11, alive("25-001 P1", "2025-12", "5"))),
        refused("fewer come up than have left", germinated("25-001 S1", "2025-10", "4")),
        refused("a harvest from before its cross", harvest("25-001 H2", "2025-02", "9")),
        refused(
            "a parent of odd ploidy, its gametes not stated",
            bench -> {
              bench.say(taxon("Echeveria tertia", 3));
              bench.plant("24-003", "Echeveria tertia");
            },
            cross("26-001", "24-001", "24-003", "2026")),
        refused("striking what other entries hang on", struck(8)),
        refused(
            "joining a plant with its ancestor",
            bench -> bench.say(numbered("27-001", 1, 1, "2028")),
            joined("25-001-1", "27-001-1")),
        refused(
            "joining in a circle",
            bench -> bench.say(joined("25-001-2", "25-001-3")),
            joined("25-001-3", "25-001-2")),
        refused(
            "names read in a circle",
            bench -> {
              bench.say(new TaxonRenamed("Echeveria prima", "Echeveria altera", null));
              bench.say(new TaxonRenamed("Echeveria altera", "Echeveria tertia", null));
            },
            new TaxonDeclared(
                "Echeveria prima",
                List.of("Echeveria tertia"),
                null,
                null,
                null,
                false,
                Map.of(),
                false,
                null)),
        refused(
            "a gene declared twice",
            bench -> bench.say(gene("edge", "R", "r")),
            gene("edge", "A", "a")),
        refused(
            "a gene beside one that nobody declared",
            bench -> bench.say(gene("edge", "R", "r")),
            beside("egde", Fraction.of(1, 10), gene("wax", "W", "w"))),
        refused(
            "a gene beside more than two",
            RulesPageTest::row,
            beside("wax", Fraction.of(1, 10), gene("scent", "C", "c"))),
        refused(
            "genes beside each other in a circle",
            RulesPageTest::row,
            amended(11, beside("tips", Fraction.of(1, 10), gene("edge", "R", "r")))),
        refused(
            "a gene beside one on the map of a chromosome",
            bench -> bench.say(at("4", "12", gene("edge", "R", "r"))),
            beside("edge", Fraction.of(1, 10), gene("wax", "W", "w"))),
        refused(
            "a gene beside one in the cytoplasm",
            bench -> bench.say(cytoplasmic("stripes", "green", "white")),
            beside("stripes", Fraction.of(1, 10), gene("wax", "W", "w"))),
        refused(
            "a second gene that refuses pollen",
            bench -> bench.say(gene("S", "S1", "S2").refusing(null, List.of())),
            gene("Z", "Z1", "Z2").refusing(null, List.of())),
        warned(
            "a gene with a letter of another",
            bench -> bench.say(gene("edge", "R", "r")),
            gene("rot", "R", "r0")),
        refused(
            "a table of a trait without states",
            bench -> {
              bench.say(new TraitDeclared("width", List.of(), null, null, "mm", null));
              bench.say(gene("edge", "R", "r"));
            },
            model("width", List.of("edge"), "*=wide")),
        refused(
            "two tables of one trait",
            bench -> {
              bench.say(gene("edge", "R", "r"));
              bench.say(model("edge", List.of("edge"), "R_=red", "rr=green"));
            },
            model("edge", List.of("edge"), "RR=red", "*=green")),
        refused(
            "a table of a gene that nobody declared",
            model("edge", List.of("edge"), "R_=red", "rr=green")),
        refused(
            "a table of two genes with one symbol",
            bench -> {
              bench.say(gene("edge", "R", "r"));
              bench.say(gene("rot", "R", "r0"));
            },
            model("edge", List.of("edge", "rot"), "R_=red", "*=green")),
        refused(
            "a table that cannot be read",
            bench -> bench.say(gene("edge", "R", "r")),
            model("edge", List.of("edge"), "Q_=red", "*=green")),
        refused(
            "a table that shows what is no state",
            bench -> bench.say(gene("edge", "R", "r")),
            model("edge", List.of("edge"), "R_=red", "*=blue")),
        refused(
            "a table that leaves genotypes out",
            bench -> bench.say(gene("edge", "R", "r")),
            model("edge", List.of("edge"), "RR=red", "rr=green")),
        refused(
            "a table that never names one of its genes",
            bench -> {
              bench.say(gene("edge", "R", "r"));
              bench.say(gene("wax", "W", "w"));
            },
            model("edge", List.of("edge", "wax"), "R_=red", "*=green")),
        refused(
            "a table with a row that never holds",
            bench -> bench.say(gene("edge", "R", "r")),
            model("edge", List.of("edge"), "R_=red", "RR=green", "*=green")),
        refused(
            "striking a gene that a table names",
            bench -> {
              bench.say(gene("edge", "R", "r"));
              bench.say(model("edge", List.of("edge"), "R_=red", "rr=green"));
            },
            struck(11)),
        refused(
            "a profile with an allele the gene has not",
            bench -> bench.say(gene("edge", "R", "r")),
            profile("Echeveria laui", "edge", Map.of("Q", Fraction.ONE))),
        refused(
            "a genotype that cannot be read",
            RulesPageTest::row,
            genotype("24-001", "Rr Ww", "edge", "wax")),
        refused(
            "a genotype of what is no plant",
            bench -> bench.say(gene("edge", "R", "r")),
            genotype("25-001", "Rr", "edge")),
        refused(
            "a genotype of other sets than the plant's",
            bench -> bench.say(gene("edge", "R", "r")),
            genotype("24-001", "RRrr", "edge")),
        warned(
            "a second genotype at one gene",
            bench -> {
              bench.say(gene("edge", "R", "r"));
              bench.say(genotype("24-001", "RR", "edge"));
            },
            genotype("24-001", "Rr", "edge")),
        warned(
            "a population that is known already",
            bench -> {
              bench.say(new PopulationDeclared(List.of("OM 112", "JB 7"), null));
              bench.say(new PopulationDeclared(List.of("JB 7", "JB 8"), null));
            },
            new PopulationDeclared(List.of("OM 112", "JB 8"), null)),
        warned(
            "a pollen parent gone before the day",
            bench -> bench.say(fate("24-002", Fate.DEAD, "2025-11")),
            cross("26-001", "24-001", "24-002", "2026-03")),
        warned(
            "a plant used before it came",
            bench -> bench.plant("26-001", "Echeveria colorata", "2026-05"),
            cross("26-002", "24-001", "26-001", "2026-03")),
        refused(
            "a seedling used before it was sown",
            cross("25-002", "24-001", "25-001-1", "2025-06-01")),
        refused(
            "something that became of a plant before it came", fate("24-001", Fate.DEAD, "2020")),
        refused("an offset of a plant before that came", ramet("10-001", "24-001", "2010-01-01")),
        refused("a name that is another thing's code", new Named(code("24-002"), "24-001", null)),
        refused(
            "a plant of a species, made up otherwise",
            new PlantAcquired(
                code("26-001"),
                new Determination(
                    "Echeveria laui", null, Map.of("Echeveria laui", Fraction.HALF), null, null),
                Provenance.UNKNOWN,
                null,
                List.of(),
                false,
                null,
                null)),
        refused("seed that is none", sowing("25-001 S2", "25-001 H1", "2025-06-10", "0")),
        refused(
            "a size below 0",
            bench -> bench.say(new TraitDeclared("width", List.of(), null, null, "mm", null)),
            observed("24-001", "width", "-5")),
        refused(
            "a measure of ten digits or more",
            bench -> bench.say(new TraitDeclared("width", List.of(), null, null, "mm", null)),
            observed("24-001", "width", "1e30")),
        refused(
            "a gamete that counts a thousandfold",
            new LocusDeclared(
                "k",
                List.of("C", "c"),
                false,
                null,
                null,
                null,
                null,
                false,
                null,
                List.of(),
                Map.of("C", Fraction.of(1001)),
                Map.of(),
                null)),
        warned(
            "a name that may be given out as a code yet",
            bench -> {},
            new Named(code("24-002"), "24-090", null)),
        warned(
            "a plant seen after it died",
            bench -> bench.say(fate("24-002", Fate.DEAD, "2026-04")),
            new Observed(code("24-002"), "edge", "red", Bench.on("2026-11"), null, null)),
        warned(
            "a plant moved after it died",
            bench -> bench.say(fate("24-002", Fate.DEAD, "2026-04")),
            new Moved(List.of(code("24-002")), "shelf", Bench.on("2026-11"), null)),
        warned(
            "a plant in flower after it left",
            bench -> bench.say(fate("24-002", Fate.GIVEN, "2026-04")),
            new Flowered(List.of(code("24-002")), Bloom.OPEN, Bench.on("2026-11"), null)),
        warned(
            "more taken than twice what was guessed",
            bench -> bench.say(harvest("25-001 H2", "2025-06-01", "~30")),
            sowing("25-001 S2", "25-001 H2", "2025-06-10", "100")),
        warned(
            "fewer come up than before",
            bench -> bench.say(germinated("25-001 S1", "2025-10", "18")),
            germinated("25-001 S1", "2025-11", "15")),
        warned(
            "more tallied than were sown",
            bench -> {},
            new Tallied(code("25-001 S1"), "edge", Map.of("red", 31L), Bench.on("2025-11"), null)),
        warned(
            "more tallied than stood there",
            bench -> {},
            new Tallied(code("25-001 P1"), "edge", Map.of("red", 11L), Bench.on("2026-05"), null)),
        warned(
            "a joined record that was gone",
            bench -> bench.say(fate("25-001-3", Fate.DEAD, "2026-10")),
            joined("25-001-2", "25-001-3")),
        warned(
            "two ends of one plant",
            bench -> {
              bench.say(fate("25-001-2", Fate.GIVEN, "2026-08"));
              bench.say(fate("25-001-3", Fate.DEAD, "2026-10"));
            },
            joined("25-001-2", "25-001-3")),
        warned("more come up than was sown", bench -> {}, germinated("25-001 S1", "2025-10", "31")),
        warned(
            "more alive than came up",
            bench -> bench.say(germinated("25-001 S1", "2025-10", "18")),
            new Counted(
                null, List.of(new Counted.Reading(code("25-001 S1"), null, Count.of(20))), null)),
        warned(
            "more flowers set or failed than were tried",
            bench ->
                bench.say(
                    new Pollinated(
                        code("26-001"),
                        code("24-001"),
                        Bench.pollen("24-002"),
                        null,
                        Count.of(6),
                        List.of(),
                        Fraction.ZERO,
                        Fraction.ZERO,
                        Fraction.ZERO,
                        null,
                        null,
                        false,
                        null,
                        null)),
            new FruitRecorded(
                code("26-001"), null, Count.of(5), Count.of(2), null, null, null, null)),
        warned(
            "selfing of a self-incompatible plant",
            bench -> bench.say(selfIncompatible("Echeveria laui")),
            cross("26-001", "24-001", new Pollen.Itself(), "2026-03")),
        warned(
            "the same with a ramet of it",
            bench -> {
              bench.say(selfIncompatible("Echeveria laui"));
              bench.say(ramet("25-002", "24-001", "2025"));
            },
            cross("26-001", "24-001", "25-002", "2026-03")),
        warned("no protection and no share of strays", bench -> {}, unprotected()),
        warned(
            "something that became of a joined record",
            bench -> bench.say(joined("25-001-2", "25-001-3")),
            fate("25-001-3", Fate.DEAD, "2027")),
        warned(
            "a plant that was gone already",
            bench -> bench.say(fate("24-002", Fate.DEAD, "2026-04")),
            fate("24-002", Fate.DEAD, "2026-11")),
        warned(
            "a plant marked as kept that was gone",
            bench -> bench.say(fate("24-002", Fate.DEAD, "2026-04")),
            fate("24-002", Fate.KEPT, "2026-11")),
        warned(
            "what is promised and goes elsewhere",
            bench -> bench.say(new Promised(List.of(code("24-002")), null, "Jonas", null, null)),
            fate("24-002", Fate.DEAD, "2026-04")),
        warned(
            "two records of one plant under two species", bench -> {}, joined("24-001", "24-002")),
        warned(
            "two records of one plant under two field numbers",
            bench -> {
              bench.say(collected("24-003", "OM 112"));
              bench.say(collected("24-004", "JB 8"));
            },
            joined("24-003", "24-004")),
        warned(
            "a cross of a plant with a ramet of it",
            bench -> bench.say(ramet("25-002", "24-001", "2025")),
            cross("26-001", "24-001", "25-002", "2026-03")),
        warned(
            "a declared taxon that is read as another",
            bench -> {
              bench.say(taxon("Echeveria laui", 2));
              bench.say(new TaxonRenamed("Echeveria altera", "Echeveria laui", null));
            },
            taxon("Echeveria altera", 4)));
  }

  private static PlantAcquired collected(String code, String fieldNumber) {
    return new PlantAcquired(
        code(code),
        Determination.of("Echeveria laui"),
        new Provenance(null, null, fieldNumber, null),
        null,
        List.of(),
        false,
        null,
        null);
  }

  private static String page() throws IOException {
    return Files.readString(Path.of("..", "docs", "entries.md"));
  }

  @ParameterizedTest
  @MethodSource("rows")
  void quotesTheProgram(Row row) throws IOException {
    assertThat(page()).contains("\n" + row.text() + "\n");
  }

  @Test
  void hasNoRuleThatIsNotTested() throws IOException {
    assertThat(page().lines().filter(line -> line.matches(".*\\| (refused|warned) \\|.*")).count())
        .isEqualTo(rows().count());
  }

  @Test
  void theBenchIsAsThePageSays() {
    assertThat(setOut().item("25-001 P1").count()).isEqualTo(Count.of(4));
    assertThat(setOut().item("25-001-1").code()).isEqualTo(code("25-001-1"));
  }
}
