package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CrossVerbsTest {

  @TempDir Path folder;

  private BenchStory bench;

  @BeforeEach
  void threePlantsOfLongAgo() {
    bench = new BenchStory(folder);
    bench.done("plant", "Echeveria laui", "--date", "2023", "--name", "Grey Lady");
    bench.done("plant", "Echeveria agavoides", "--date", "2023");
    bench.done("plant", "Echeveria setosa", "--date", "2023");
  }

  private void refused(int status, String because, String... words) {
    Outcome outcome = bench.type(words);
    assertThat(outcome.status()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().replace("\n", " ")).contains(because);
  }

  @Test
  void aCrossIsEnteredInOneLineAndItsTagIsToldWithWhatComesNext() {
    assertThat(bench.done("cross", "grey", "23-002", "--flowers", "3", "--date", "4 mar"))
        .isEqualTo(
            """
            Entry 5: 26-001M: 23-001A × 23-002C, 3 flowers.
            Write on the tag:
                26-001M  F1
                Grey Lady × agavoides
            Next: when it has set or failed: filial fruit 26-001M --set COUNT
            """);
  }

  @Test
  void theYearOfTheCodeIsThatOfTheDate() {
    assertThat(bench.json("cross", "23-1", "23-2", "--date", "2024-05").get("code").stringValue())
        .startsWith("24-001");
    assertThat(bench.json("cross", "23-1", "23-2", "--date", "?").get("code").stringValue())
        .startsWith("26-001");
  }

  @Test
  void atATerminalTheParentsOfTheCrossBeforeAreOneKeyAway() {
    Outcome first = bench.asked(new String[] {"grey", "23-003"}, "cross");
    assertThat(first.err()).isEqualTo("Seed parent: Pollen parent: ");
    assertThat(first.out()).contains("23-001A × 23-003");

    Outcome again = bench.asked(new String[] {"", "23-002"}, "cross", "--flowers", "2");
    assertThat(again.err()).startsWith("Seed parent [23-001A]: Pollen parent [23-003");
    assertThat(again.out()).contains("26-002N: 23-001A × 23-002C, 2 flowers");

    assertThat(bench.asked(new String[] {""}, "cross", "23-003").out())
        .containsPattern("23-003. × 23-002C");
  }

  @Test
  void whereNobodySitsAtTheKeyboardNothingIsAsked() {
    refused(2, "SEED_PARENT and POLLEN_PARENT are missing", "cross");
    refused(2, "POLLEN_PARENT is missing. Name it, or say --selfed", "cross", "23-001");
    refused(2, "SEED_PARENT is missing", "cross", "--selfed");
  }

  @Test
  void aSelfingNeedsNoPollenParent() {
    assertThat(bench.done("cross", "23-001", "--selfed")).contains("23-001A selfed");
    assertThat(bench.done("cross", "23-001", "grey lady")).contains("23-001A selfed");
  }

  @Test
  void openPollinationKeepsTheUnknownShareApart() {
    bench.done(
        "cross",
        "23-001",
        "--open",
        "--perhaps",
        "23-002=2",
        "--perhaps",
        "23-003",
        "--unknown",
        "1/4");

    assertThat(bench.done("ancestry", "26-001"))
        .containsPattern("Echeveria laui +1/2")
        .containsPattern("Echeveria agavoides +1/4")
        .containsPattern("Echeveria setosa +1/8")
        .containsPattern("unknown +1/8");
    bench.done("cross", "23-001", "--open");
    assertThat(bench.done("ancestry", "26-002")).containsPattern("unknown +1/2");
  }

  @Test
  void aMixCountsByItsWeights() {
    bench.done("cross", "23-001", "--mix", "23-002=3", "--mix", "23-003=1");

    assertThat(bench.done("ancestry", "26-001"))
        .containsPattern("Echeveria agavoides +3/8")
        .containsPattern("Echeveria setosa +1/8");
  }

  @Test
  void selfsStraysAndApomictsShowInTheAnswer() {
    bench.done(
        "cross",
        "23-001",
        "23-002",
        "--unprotected",
        "--selfs",
        "5%",
        "--strays",
        "5%",
        "--apomixis",
        "10%");

    // 0.8 of a half, 0.05 selfed, 0.05 of a half unknown, 0.1 of the seed parent alone.
    assertThat(bench.done("ancestry", "26-001"))
        .containsPattern("Echeveria laui +23/40")
        .containsPattern("Echeveria agavoides +2/5")
        .containsPattern("unknown +1/40");
  }

  @Test
  void anUnprotectedCrossWithoutSharesIsTakenWithANote() {
    Outcome outcome = bench.type("cross", "23-001", "23-002", "--unprotected");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.err()).startsWith("Note: 26-001M was not protected and no share of selfs");
  }

  @Test
  void protectionIsToldBack() {
    assertThat(bench.done("cross", "23-001", "23-002", "--emasculated", "--bagged"))
        .contains("emasculated and bagged");
    refused(
        1, "were either protected or not", "cross", "23-1", "23-2", "--bagged", "--unprotected");
  }

  @Test
  void anUnreducedGameteMakesATriploid() {
    bench.done("cross", "23-001", "23-002", "--pollen-sets", "2");

    assertThat(bench.done("ancestry", "26-001"))
        .containsPattern("Echeveria laui +1/3")
        .containsPattern("Echeveria agavoides +2/3")
        .containsPattern("chromosome sets +3");
    refused(2, "a whole number, 1 to 32", "cross", "23-1", "23-2", "--egg-sets", "0");
  }

  @Test
  void storedPollenOfADeadPlantIsNoSurprise() {
    bench.done("died", "23-002", "--date", "2025-11-02");
    assertThat(bench.type("cross", "23-001", "23-002").err()).contains("died on 2025-11-02");
    bench.done("cross", "23-001", "23-002", "--stored-pollen");
  }

  @Test
  void optionsThatContradictEachOtherAreWrongCommandLines() {
    refused(2, "POLLEN_PARENT and --selfed each say", "cross", "23-1", "23-2", "--selfed");
    refused(2, "--open and --mix each say", "cross", "23-1", "--open", "--mix", "23-2=1");
    refused(2, "--perhaps goes with --open", "cross", "23-1", "23-2", "--perhaps", "23-3");
    refused(2, "--unknown goes with --perhaps", "cross", "23-1", "--open", "--unknown", "1");
    refused(2, "how much of the pollen may", "cross", "23-1", "--open", "--perhaps", "23-2");
    refused(2, "bees bring no stored pollen", "cross", "23-1", "--open", "--stored-pollen");
    refused(2, "\"23-2\" has no weight", "cross", "23-1", "--mix", "23-2");
    refused(2, "no part of a whole", "cross", "23-1", "23-2", "--selfs", "5");
    refused(2, "is not a fraction", "cross", "23-1", "23-2", "--strays", "few");
  }

  @Test
  void theRegisterRefusesWhatCannotBe() {
    refused(1, "names at least two plants", "cross", "23-1", "--mix", "23-2=1");
    refused(1, "is not in this register", "cross", "23-1", "23-9");
    bench.done("cross", "23-1", "23-2");
    refused(1, "is a cross, not a plant; name one of its seedlings", "cross", "26-1", "23-2");
    refused(1, "exceeds 1", "cross", "23-1", "23-2", "--selfs", "60%", "--strays", "60%");
    refused(1, "is taken already", "cross", "23-1", "23-2", "--code", "26-1");
  }

  @Test
  void flowersSetOrFail() {
    bench.done("cross", "23-1", "23-2", "--flowers", "4", "--date", "4 mar");

    assertThat(bench.done("fruit", "26-1", "--set", "2", "--failed", "1", "--why", "rotted"))
        .isEqualTo(
            """
            Entry 6: flowers of 26-001M: 2 set, 1 failed (rotted).
            Next: when the fruit is ripe: filial harvest 26-001M
            """);
    assertThat(bench.type("fruit", "26-1", "--failed", "2").err()).contains("4 were pollinated");
    bench.done("cross", "23-1", "23-3", "--date", "4 mar");
    assertThat(bench.done("fruit", "26-2", "--set", "0", "--failed", "~9"))
        .doesNotContain("harvest")
        .contains("Next: how the cross stands: filial show 26-002N");
    refused(2, "how many flowers set, and how many failed?", "fruit", "26-1");
    refused(2, "--why says why", "fruit", "26-1", "--set", "1", "--why", "rotted");
    refused(1, "is a plant, not a cross", "fruit", "23-1", "--set", "1");
    refused(1, "is before the cross was made", "fruit", "26-1", "--set", "1", "--date", "1 mar");
  }
}
