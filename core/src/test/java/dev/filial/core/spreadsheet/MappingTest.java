package dev.filial.core.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.register.RegisterView;
import dev.filial.core.spreadsheet.MappingGuess.Proposal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which column is what: as a grower writes it, and as it is guessed. */
class MappingTest {

  @TempDir Path folder;

  private Proposal guess(String table) throws IOException {
    TableFile file = TableFile.of(folder.resolve("table.csv"), table);
    TableFile.append(file.store(), TableFile.trait("width", List.of()));
    RegisterView view = file.store();
    return MappingGuess.of(Sheet.of(file.file()), Optional.empty(), view);
  }

  private List<String> guessed(String table) throws IOException {
    return MappingText.write(guess(table).mapping()).lines().toList();
  }

  @Test
  void aMappingReadsBackAsItWasWritten() {
    String text =
        TableFile.lines(
            "rows = measurements",
            "dates = month day year",
            "decimal = comma",
            "plant = Nr",
            "date = \"2026-03-04\"",
            "trait width = Breite",
            "keep = Notiz",
            "ignore = Bild");
    assertThat(MappingText.write(MappingText.read(text))).isEqualTo(text);
    assertThat(
            MappingText.read("\uFEFF# mine\n\n ROWS=plants \n Seed  = x".replace("Seed  = x", "")))
        .isEqualTo(MappingText.read("rows = plants"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "taxon = Art|does not say what a row is",
        "rows = things|\"things\" is no kind of row; rows are plants, seed, crosses",
        "rows = plants; hight = a|line 2 of the mapping: \"hight\" is nothing that a column can say",
        "rows = plants; taxon|line 2 of the mapping: \"taxon\" is not of the form",
        "rows = plants; taxon = a; taxon = b|line 3 of the mapping: \"taxon\" is said twice",
        "rows = plants; seed parent = a|\"seed parent\" is nothing that is said of plants",
        "rows = plants; trait width = a|traits go with rows = measurements",
        "rows = crosses; seed parent = a|need a line \"pollen parent",
        "rows = measurements; plant = a|need a line \"trait NAME",
        "rows = plants; dates = sideways|is no order of a date",
        "rows = plants; decimal = dash|is no decimal sign",
      })
  void aLineThatCannotBeIsToldWithItsNumber(String lines, String why) {
    assertThatThrownBy(() -> MappingText.read(lines.replace("; ", "\n")))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining(why);
  }

  @Test
  void plantsAreGuessedInGerman() throws IOException {
    assertThat(
            guessed(
                TableFile.lines(
                    "Nr.;Art;Herkunft;gekauft am;Standort;Wetter;Bemerkung",
                    "E-17;Echeveria laui;Jonas Muster;31/12/2024;Regal 1;heiß;")))
        .containsExactly(
            "rows = plants",
            "dates = day month year",
            "old code = Nr.",
            "taxon = Art",
            "donor = Herkunft",
            "date = gekauft am",
            "place = Standort",
            "remark = Bemerkung",
            "keep = Wetter");
  }

  @Test
  void aColumnOfDaysOrNumbersThatGoesIntoTheRemarkIsPointedAt() throws IOException {
    Proposal proposal =
        guess(
            TableFile.lines(
                "Art;Datum;umgetopft;Preis;Wetter",
                "Echeveria laui;4.3.2024;5.3.2025;3,50;heiß",
                "Echeveria agavoides;2024;März 2025;4;"));
    assertThat(proposal.mapping().kept()).containsExactly("umgetopft", "Preis", "Wetter");
    assertThat(proposal.notes())
        .anyMatch(note -> note.startsWith("the column umgetopft holds dates"))
        .anyMatch(note -> note.startsWith("the column Preis holds numbers"))
        .noneMatch(note -> note.contains("Wetter"));
  }

  @Test
  void theDayItCameAndTheFruitAreKnownInGerman() throws IOException {
    assertThat(guessed("Art;erhalten am\nEcheveria laui;?\n")).contains("date = erhalten am");
    assertThat(guessed("Mutter;Vater;Blüten;Frucht\nE-17;E-18;4;3\n")).contains("fruits = Frucht");
  }

  @Test
  void columnsThatTellNothingOfPlantsAreNotTakenForThem() {
    assertThatThrownBy(() -> guess("a,b\n1,2\n"))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining("no column has a species, a name or a number")
        .hasMessageContaining("The columns are a, b; write the mapping yourself");
  }

  @Test
  void crossesAreGuessedInEnglishWithTheirHarvest() throws IOException {
    assertThat(
            guessed(
                TableFile.lines(
                    "Cross No,Mother,Father,Date,Flowers,Fruit set,Harvested on,Seeds",
                    "A1,E-17,E-18,2025-03-04,4,3,2025-05-01,80")))
        .containsExactly(
            "rows = crosses",
            "old code = Cross No",
            "seed parent = Mother",
            "pollen parent = Father",
            "date = Date",
            "flowers = Flowers",
            "set = Fruit set",
            "seeds = Seeds",
            "harvest date = Harvested on");
  }

  @Test
  void ourOwnCodesAreToldFromOthers() throws IOException {
    assertThat(guessed("Nr;Art\n25-001R;Echeveria laui\n25-002;Echeveria agavoides\n"))
        .contains("code = Nr");
    assertThat(guessed("Code;Art\nE-17;Echeveria laui\n")).contains("old code = Code");
  }

  @Test
  void aColumnOfAKnownTraitMakesTheRowsMeasurements() throws IOException {
    assertThat(guessed("Pflanze;Datum;Width (mm);Wer\nE-17;2025-03-04;3,5;Klara\n"))
        .containsExactly(
            "rows = measurements",
            "decimal = comma",
            "plant = Pflanze",
            "date = Datum",
            "trait width = Width (mm)",
            "keep = Wer");
  }

  @Test
  void columnsWithoutATellingHeaderAreGuessedByTheirValues() throws IOException {
    Proposal proposal = guess("x;y\nEcheveria laui;04.03.2024\nE. agavoides;5.3.2024\n");
    assertThat(MappingText.write(proposal.mapping()))
        .isEqualTo("rows = plants\ntaxon = x\ndate = y\n");
    assertThat(proposal.notes()).anyMatch(note -> note.contains("the column y holds dates"));
  }

  @Test
  void anOrderThatNoDateTellsIsAskedFor() throws IOException {
    Proposal proposal = guess("Art;Datum\nEcheveria laui;3/4/2024\n");
    assertThat(proposal.mapping().dayOrder()).isEmpty();
    assertThat(proposal.notes()).anyMatch(note -> note.contains("add a line dates ="));
  }

  @Test
  void theProposalAsAFileIsTheSameMapping() throws IOException {
    Proposal proposal = guess("Nr;Art;Nr\n1;Echeveria laui;2\n");
    String text = proposal.text(Sheet.of(folder.resolve("table.csv")));
    assertThat(MappingText.read(text)).isEqualTo(proposal.mapping());
    assertThat(text).contains("# cultivar =");
  }
}
