package dev.filial.core.spreadsheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.exchange.CrossTable;
import dev.filial.core.exchange.PlantTable;
import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.spreadsheet.SheetImport.Outcome;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A friend takes in what another register wrote for friends. */
class ExportedTableTest {

  @TempDir Path folder;

  private TableFile table;

  @BeforeEach
  void aFriendsList() throws IOException {
    table =
        TableFile.of(
            folder.resolve("theirs.csv"),
            TableFile.lines(
                String.join(",", new PlantTable().columns()),
                "AN 22-001E,,plant,Rosa; Old Rosa,Echeveria laui,,,XM 014,B 7,,,2022-01-15,alive,,,,,,"
                    + "pure,Echeveria laui 1,,",
                "AN 24-003Y,,plant,,Echeveria agavoides,,cf. agavoides,,,,,2024-02-17,alive,,,,,,pure,"
                    + "Echeveria agavoides 1,,determined only as cf. agavoides",
                "AN 24-007E-1,,seedling,,Echeveria laui × E. agavoides,,,,,,,2025-02-22,kept,,"
                    + "AN 22-009R-1,AN 22-001E,,Echeveria laui/Echeveria agavoides//Echeveria laui,BC1,"
                    + "Echeveria laui 0.75; Echeveria agavoides 0.25,AN 22-001E (Echeveria laui),",
                "AN 24-011L-1,,seedling,,Echeveria lilacina × E. laui × ?,,,,,,,2025-02-22,kept,,,,,,"
                    + "three-way,Echeveria lilacina 0.333333; Echeveria laui 0.166667; unknown 0.5,,"));
  }

  private PlantAcquired plant(int number) {
    return (PlantAcquired) table.store().effective(number + 1L).orElseThrow();
  }

  private MappingGuess.Proposal guess() throws IOException {
    return MappingGuess.of(
        Sheet.of(table.file()), Optional.empty(), dev.filial.core.register.Register.empty());
  }

  @Test
  void eachOfTheirPlantsIsOneThatWasGivenUnderTheirCode() throws IOException {
    String mapping = MappingText.write(guess().mapping());
    Outcome outcome = table.applied(mapping);

    assertThat(outcome.complaints()).isEmpty();
    assertThat(outcome.taken()).isEqualTo(4);
    PlantAcquired rosa = plant(1);
    assertThat(rosa.code()).isEqualTo(Code.of(26, 1));
    assertThat(rosa.determination().taxon()).isEqualTo("Echeveria laui");
    assertThat(rosa.determination().makeup()).isEmpty();
    assertThat(rosa.determination().generation()).isNull();
    assertThat(rosa.names()).containsExactly("Rosa", "Old Rosa");
    assertThat(rosa.provenance().donorCode()).isEqualTo("AN 22-001E");
    assertThat(rosa.provenance().fieldNumber()).isEqualTo("XM 014");
    assertThat(rosa.remark()).isEqualTo("donor's code: B 7");
    assertThat(rosa.date()).isNull();
  }

  @Test
  void doubtStaysInTheNameAndAHybridIsMadeOfItsShares() throws IOException {
    var unused = table.applied(MappingText.write(guess().mapping()));

    assertThat(plant(2).determination().taxon()).isEqualTo("Echeveria cf. agavoides");
    PlantAcquired backcross = plant(3);
    assertThat(backcross.determination().taxon()).isNull();
    assertThat(backcross.determination().makeup())
        .isEqualTo(
            Map.of("Echeveria laui", Fraction.of(3, 4), "Echeveria agavoides", Fraction.of(1, 4)));
    assertThat(backcross.determination().generation()).isEqualTo("BC1");
    assertThat(backcross.remark())
        .contains("pedigree: Echeveria laui/Echeveria agavoides//Echeveria laui");
    PlantAcquired threeWay = plant(4);
    assertThat(threeWay.determination().generation()).isNull();
    assertThat(threeWay.determination().makeup())
        .isEqualTo(
            Map.of("Echeveria lilacina", Fraction.of(1, 3), "Echeveria laui", Fraction.of(1, 6)));
    assertThat(threeWay.remark()).isEqualTo("generation: three-way");
  }

  @Test
  void whatIsLeftOutIsSaidOnce() throws IOException {
    assertThat(guess().notes())
        .hasSize(3)
        .anyMatch(note -> note.contains("since when"))
        .anyMatch(note -> note.contains("donor = \"NAME\""));
    assertThat(table.tried(MappingText.write(guess().mapping())).unmapped()).isEmpty();
  }

  @Test
  void theirCrossesAreRefusedAsAWhole() throws IOException {
    TableFile crosses =
        table.with(
            folder.resolve("crosses.csv"),
            TableFile.lines(
                String.join(",", new CrossTable().columns()),
                "AN 22-009R,,AN 22-001E,AN 22-003J,by hand,2022-03-12,6,,180,6,,F1,,,"));
    assertThatThrownBy(
            () ->
                MappingGuess.of(
                    Sheet.of(crosses.file()),
                    Optional.empty(),
                    dev.filial.core.register.Register.empty()))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining("Take in its list of plants");
    assertThatThrownBy(
            () ->
                crosses.by(
                    "rows = crosses\nseed parent = seed parent\npollen parent = pollen parent\n"))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining("its whole book");
  }

  @Test
  void sharesAreTheSimplestFractionsThatAreRoundedSo() {
    assertThat(StatedShares.of("Echeveria laui 0.333333; Echeveria agavoides 0.666667"))
        .isEqualTo(
            Map.of("Echeveria laui", Fraction.of(1, 3), "Echeveria agavoides", Fraction.of(2, 3)));
    assertThat(StatedShares.of("Echeveria laui 0.992188; Echeveria elegans 0.007812"))
        .isEqualTo(
            Map.of(
                "Echeveria laui", Fraction.of(127, 128), "Echeveria elegans", Fraction.of(1, 128)));
    assertThat(StatedShares.of("Echeveria laui 3/4; unknown 1/4"))
        .isEqualTo(Map.of("Echeveria laui", Fraction.of(3, 4)));
    assertThat(StatedShares.of("Echeveria laui 1.000000; Echeveria elegans 0.000000"))
        .as("a share too small to be written is none")
        .containsExactly(Map.entry("Echeveria laui", Fraction.ONE));
    assertThat(StatedShares.of("Echeveria laui 0,3"))
        .isEqualTo(Map.of("Echeveria laui", Fraction.of(3, 10)));
    assertThatThrownBy(() -> StatedShares.of("Echeveria laui"))
        .hasMessageContaining("is no share of a taxon");
  }

  @Test
  void aDoubtStandsBeforeItsEpithet() {
    assertThat(StatedShares.doubted("Echeveria agavoides var. rubra", "aff. agavoides"))
        .isEqualTo("Echeveria aff. agavoides var. rubra");
    assertThatThrownBy(() -> StatedShares.doubted("Echeveria laui", "cf. agavoides"))
        .hasMessageContaining("is not cf. or aff. with an epithet of Echeveria laui");
  }

  @Test
  void aGenerationThatIsNoneIsBlamedOnItsOwnColumn() throws IOException {
    TableFile own =
        table.with(
            folder.resolve("own.csv"),
            TableFile.lines("Art;Gen", "Echeveria laui;pure", "Echeveria laui;second"));
    Outcome outcome = own.tried("rows = plants\ntaxon = Art\ngeneration = Gen\n");
    assertThat(TableFile.complaints(outcome))
        .singleElement()
        .asString()
        .startsWith("3 Gen: \"SECOND\" is no generation");
  }
}
