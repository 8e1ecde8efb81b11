package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.core.answer.AncestryQuestion;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.Item;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class DemoTest {

  @TempDir Path folder;

  private <R> R ask(Function<SqliteStore, R> question) throws IOException {
    try (SqliteStore store = SqliteStore.open(DemoRegister.in(folder))) {
      return question.apply(store);
    }
  }

  private Ancestry ancestry(String code) throws IOException {
    return ask(store -> AncestryQuestion.of(store).ask(Code.parse(code)));
  }

  @Test
  void theDemoWalksThroughTheJob() {
    Outcome outcome = new CommandLineRun().in(folder).run("demo", "bench.register");

    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.status()).isZero();
    assertThat(outcome.out())
        .startsWith("Wrote 259 entries to bench.register: five seasons of Echeveria")
        .contains("All of it is invented")
        .contains("    KB 26-013E H2  3 APR 26\n    Morgenrot × Rosa  BC2\n")
        .contains("24-007E-1: BC1 to Echeveria laui")
        .containsPattern("Echeveria laui +3/4  75 %")
        .contains("About 1 in 2 will be plain; sow 14 seeds to be 95 % sure of at least 3.")
        .contains("26-013E: the counts fit 1:1.")
        .containsPattern("22-009R-1 +22-001E × 22-003J")
        .containsPattern("24-009J-1 +22-009R-2 × 22-006M")
        .contains("filial ancestry 24-011-1 --register bench.register\n");
  }

  @Test
  void theDemoIsJsonToo() {
    Outcome outcome = new CommandLineRun().in(folder).run("demo", "--json", "bench.register");

    JsonNode json = JsonMapper.shared().readTree(outcome.out());
    assertThat(json.get("register").stringValue()).isEqualTo("bench.register");
    assertThat(json.get("ancestry").get("generation").stringValue()).isEqualTo("BC1");
    assertThat(json.at("/odds/scenarios/0/hope/seeds").intValue()).isEqualTo(14);
    assertThat(json.at("/fit/families/0/ratio").stringValue()).isEqualTo("1:1");
    assertThat(json.get("mayBe")).hasSize(2);
  }

  @Test
  void withoutANameItGoesToTheTemporaryFolder() throws IOException {
    Outcome outcome = new CommandLineRun().in(folder).run("demo", "--json");

    Path written =
        Path.of(JsonMapper.shared().readTree(outcome.out()).get("register").stringValue());
    assertThat(written).isRegularFile();
    Files.delete(written);
    Files.delete(written.getParent());
  }

  @Test
  void whatIsThereAlreadyIsLeftAlone() throws IOException {
    Files.writeString(folder.resolve("notes.txt"), "mine");

    Outcome outcome = new CommandLineRun().in(folder).run("demo", "notes.txt");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err()).contains("notes.txt is there already");
    assertThat(folder.resolve("notes.txt")).hasContent("mine");
  }

  /** What it proposes to try next is tried, as far as the verbs are there. */
  @Test
  void whatItProposesWorks() {
    Outcome demo = new CommandLineRun().in(folder).run("demo", "my bench.register");
    List<String> proposed =
        demo.out().lines().map(String::strip).filter(line -> line.startsWith("filial ")).toList();

    assertThat(proposed).hasSize(16);
    assertThat(proposed.get(15)).startsWith("filial pages ");
    for (String line : proposed) {
      List<String> words = CommandWords.of(line);
      if (Verbs.all().list().stream().anyMatch(verb -> verb.name().equals(words.get(0)))) {
        Outcome outcome = new CommandLineRun().in(folder).run(words.toArray(String[]::new));
        assertThat(outcome.status()).as(line + "\n" + outcome.err()).isZero();
      }
    }
  }

  @Test
  void itIsTheSameEntryByEntryAndSound() throws IOException {
    Path other = folder.resolve("other.register");
    assertThat(new CommandLineRun().in(folder).run("demo", other.toString()).status()).isZero();
    String first = ask(store -> store.entry(store.size()).orElseThrow().digest());
    try (SqliteStore store = SqliteStore.open(other)) {
      // The last digest hangs on every entry before it.
      assertThat(store.entry(store.size()).orElseThrow().digest()).isEqualTo(first);
      assertThat(store.verify().faults()).isEmpty();
    }
  }

  @Test
  void itHasAboutSixtyPlants() throws IOException {
    List<Item> plants = ask(store -> store.items(EnumSet.of(Item.Kind.PLANT, Item.Kind.SEEDLING)));

    assertThat(plants).hasSizeBetween(55, 70);
  }

  @ParameterizedTest
  @CsvSource({
    "22-009-1, F1, 1/2",
    "23-005-1, pure, 0",
    "24-001-1, F2, 1/2",
    "24-002-1, F2, 1/2",
    "24-007-1, BC1, 3/4",
    "24-008-1, BC1, 3/4",
    "24-009-1, three-way, 1/4",
    "24-010-1, double cross, 1/4",
    "24-011-1, F1, 1/3",
    "25-001-1, BC1, 3/4",
    "26-004 P1, F3, 1/2",
    "26-005 P1, F3, 1/2",
    "26-006 P1, BC2, 7/8",
    "26-013-1, BC2, 7/8"
  })
  void everyKindOfCrossIsWhatItIsSaidToBe(String code, String generation, String laui)
      throws IOException {
    Ancestry found = ancestry(code);

    assertThat(found.generation()).isEqualTo(generation);
    assertThat(
            found.taxa().stream()
                .filter(taxon -> taxon.taxon().equals("Echeveria laui"))
                .map(AncestryQuestion.TaxonShare::share)
                .reduce(Fraction.ZERO, Fraction::plus))
        .isEqualTo(Fraction.parse(laui));
  }

  @Test
  void theTwoBackcrossesAreToldApart() throws IOException {
    assertThat(ancestry("24-007-1").generationInWords())
        .endsWith("; the plant of the first cross again");
    assertThat(ancestry("24-008-1").generationInWords())
        .endsWith("; not the plant of the first cross");
  }

  @Test
  void theRenamedSpeciesIsOneTaxonInEveryAnswer() throws IOException {
    assertThat(ancestry("22-010-1").taxa())
        .extracting(AncestryQuestion.TaxonShare::taxon)
        .containsExactlyInAnyOrder("Echeveria colorata", "Echeveria elegans");
  }

  @Test
  void openPollinationWithoutCandidatesIsHalfUnknown() throws IOException {
    assertThat(ancestry("23-004-1").unknown()).isEqualTo(Fraction.HALF);
    assertThat(ancestry("24-006-1").unknown()).isEqualTo(Fraction.of(1, 8));
  }

  @Test
  void theRametIsWhatItWasTakenFrom() throws IOException {
    assertThat(ancestry("26-003").taxa()).isEqualTo(ancestry("24-007-1").taxa());
  }

  @Test
  void theMistakeWasAmended() throws IOException {
    Code pollen =
        ask(store -> store.item(Code.parse("24-009")).orElseThrow().descent().get(0).pollen());

    assertThat(pollen).isEqualTo(Code.parse("22-006"));
  }

  /** The numbers that docs/demo.md gives. */
  @ParameterizedTest
  @CsvSource({
    "17, PlantAcquired",
    "63, Pollinated",
    "64, Pollinated",
    "65, Doubted",
    "70, Pollinated",
    "71, Amended",
    "72, TaxonRenamed",
    "95, Counted",
    "98, LotsMerged",
    "99, TagLost",
    "181, Noted",
    "182, LocusDeclared",
    "183, ModelDeclared",
    "184, ProfileStated",
    "186, GenotypeStated",
    "187, TraitDeclared",
    "188, LocusDeclared",
    "189, LocusDeclared",
    "192, GenotypeStated",
    "197, Observed",
    "198, ProfileStated",
    "199, Tallied",
    "202, Tallied",
    "205, ModelDeclared",
    "208, Observed",
    "210, Tallied",
    "211, Tallied"
  })
  void theEntriesThatThePageNamesAreThose(long number, String kind) throws IOException {
    String written =
        ask(store -> store.entry(number).orElseThrow().statement().getClass().getSimpleName());

    assertThat(written).isEqualTo(kind);
  }

  /** Every code that docs/demo.md lists is there, under its check letter, and the other way. */
  @Test
  void thePageListsWhatIsThere() throws IOException {
    Set<String> listed = new TreeSet<>();
    Matcher row =
        Pattern.compile("^\\| (\\d\\d-\\d{3}[A-Z]) \\|", Pattern.MULTILINE)
            .matcher(Files.readString(Path.of("..", "docs", "demo.md")));
    while (row.find()) {
      listed.add(row.group(1));
    }
    Set<String> there =
        ask(
            store -> {
              Set<String> codes = new TreeSet<>(Comparator.naturalOrder());
              store.items(EnumSet.allOf(Item.Kind.class)).stream()
                  .filter(item -> item.code().isWhole())
                  .forEach(item -> codes.add(item.code().text()));
              return codes;
            });
    assertThat(listed).isEqualTo(there);
  }
}
