package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun;
import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused says what to write instead. */
class RemediesTest {

  @TempDir Path folder;

  @BeforeEach
  void twoPlants() {
    BenchStory unused = new BenchStory(folder);
    assertThat(filial("plant", "Echeveria laui").status()).isZero();
    assertThat(filial("plant", "Echeveria agavoides", "--ploidy", "3").status()).isZero();
  }

  private Outcome filial(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  private String refused(String... words) {
    Outcome outcome = filial(words);
    assertThat(outcome.status()).isNotZero();
    assertThat(outcome.out()).isEmpty();
    return outcome.err().replaceAll("\\s+", " ");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " "})
  void anEmptyTaxonIsAskedFor(String taxon) {
    assertThat(refused("plant", taxon))
        .contains("the taxon is empty. Write its name in quotes, or ? if nobody knows it.");
    assertThat(refused("seed", taxon, "4")).contains("the taxon is empty.");
  }

  @Test
  void theSetsOfAGameteAreSaidWithAnOption() {
    assertThat(refused("cross", "26-002", "26-001"))
        .contains(
            "state how many sets its egg carried in this cross. Say it with --egg-sets SETS.");
    assertThat(refused("cross", "26-001", "26-002")).contains("Say it with --pollen-sets SETS.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-2", "0", "33", "two"})
  void aNumberOfSetsHasOneBound(String sets) {
    assertThat(refused("plant", "Echeveria laui", "--ploidy", sets))
        .contains(
            "\"" + sets + "\" is no number of chromosome sets; it is a whole number, 1 to 32.");
  }

  @Test
  void aFileThatIsNotThereIsMissedBeforeARegisterIsInTheWay() {
    assertThat(refused("import", "nosuch")).contains("there is no file ").contains("nosuch");
  }

  @Test
  void whatStandsUnderAPlantIsNotThePlantItself() {
    assertThat(refused("show", "26-001 P1"))
        .contains("26-001M P1 is not in this register; nothing stands under 26-001M");
  }

  @Test
  void anEntryThatGivesOutAnotherCodeIsNotSaidToBeStruck() {
    assertThat(filial("cross", "26-001", "26-001").status()).isZero();
    assertThat(filial("harvest", "26-003", "40").status()).isZero();
    assertThat(refused("amend", "4", "code=26-009", "--why", "misread"))
        .contains("is not given out any more by entry 4; name another in its place");
  }

  @Test
  void thereIsNothingToKeepOfADeadSeedling() {
    assertThat(filial("cross", "26-001", "26-001").status()).isZero();
    assertThat(filial("number", "26-003", "2").status()).isZero();
    assertThat(filial("trait", "tips", "--states", "red,plain").status()).isZero();
    assertThat(filial("observe", "26-003-1", "tips", "red").out()).contains("worth keeping?");
    assertThat(filial("died", "26-003-2").status()).isZero();
    assertThat(filial("observe", "26-003-2", "tips", "red").out())
        .contains("Next: all that was seen:");
  }

  @Test
  void whatANameInAPedigreeWasTakenForIsSaidWithTheWayToPutItRight() {
    Outcome told = filial("import", "--notation", "Aloe vera/Aloe ferox//Schnabel");
    assertThat(told.status()).isZero();
    assertThat(told.err().replaceAll("\\s+", " "))
        .contains("read as the name of a species: Aloe vera, Aloe ferox;")
        .contains("nothing is known of the taxon of Schnabel")
        .contains("filial amend 8 taxon=\"GENUS SPECIES\"");
    assertThat(filial("amend", "8", "taxon=Aloe arborescens", "--why", "now known").status())
        .isZero();
    assertThat(filial("ancestry", "26-007-1").out())
        .contains("Aloe arborescens", "Aloe vera", "Aloe ferox")
        .doesNotContain("unknown");
  }

  @Test
  void aFormulaIsToldByOptionsThatWorkWhenTyped() {
    assertThat(refused("seed", "Haworthia cooperi × H. maughanii", "10"))
        .contains(
            "Leave it out and say what it is made of: --makeup \"Haworthia cooperi=1/2\""
                + " --makeup \"Haworthia maughanii=1/2\"");
    Outcome typed =
        filial(
            "seed",
            "10",
            "--makeup",
            "Haworthia cooperi=1/2",
            "--makeup",
            "Haworthia maughanii=1/2");
    assertThat(typed.err()).isEmpty();
    assertThat(typed.out().replaceAll("\\s+", " "))
        .contains("seed acquired, 1/2 Haworthia cooperi + 1/2 Haworthia maughanii, 10 seeds");
    assertThat(refused("plant", "Haworthia hybrid"))
        .contains("written as its genus alone")
        .contains("leave the name out and write --makeup \"GENUS SPECIES=1/2\" for each");
    assertThat(refused("plant", "Haworthia cooperi x maughanii"))
        .contains("leave the name out and write --makeup");
  }

  @Test
  void aFoundPlantIsJoinedToAPlantAndNotToAPot() {
    assertThat(filial("cross", "26-001", "26-001").status()).isZero();
    assertThat(filial("harvest", "26-003", "20").status()).isZero();
    assertThat(filial("sow", "26-003", "20", "--pots", "1").status()).isZero();
    assertThat(filial("found", "26-003 P1").out().replaceAll("\\s+", " "))
        .contains("filial join PLANT 26-004");
    assertThat(filial("found", "26-003 P1", "26-001").out().replaceAll("\\s+", " "))
        .contains("filial join 26-001M 26-005");
  }

  @Test
  void noMessageSpeaksOfItsInsides() throws IOException {
    assertThat(refused("cross", "26-001", "26-001", "--unprotected", "--bagged"))
        .contains("were either protected or not; they cannot be both")
        .doesNotContain("none");
    assertThat(filial("cross", "26-001", "26-001").status()).isZero();
    assertThat(filial("harvest", "26-003", "20").status()).isZero();
    assertThat(filial("sow", "26-003", "20", "--pots", "1").status()).isZero();
    assertThat(refused("number", "26-003 P1", "1000000"))
        .contains("seedlings 1 to 1000000 of 26-003", "at most 10000")
        .doesNotContain("first");
    Files.writeString(
        folder.resolve("lines.txt"),
        "cross 26-001 26-001\nharvest ^.2 5\n",
        StandardCharsets.UTF_8);
    assertThat(refused("batch", "lines.txt")).contains("line 1 gave out 1 code, not 2");
  }
}
