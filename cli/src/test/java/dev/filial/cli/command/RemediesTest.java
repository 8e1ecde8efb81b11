package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun;
import dev.filial.cli.CommandLineRun.Outcome;
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
}
