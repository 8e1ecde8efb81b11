package dev.filial.cli.command;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What to mind is said with the first entry that calls for it, and not again. */
class CautionsSaidTest {

  @TempDir Path folder;

  private BenchStory bench;

  @BeforeEach
  void aPacketOfSeed() {
    bench = new BenchStory(folder);
    bench.done("seed", "Echeveria setosa", "90", "--date", "2025-10");
  }

  @Test
  void lampsAndMatsAreWarnedOfByTheFirstSowingUnderThem() {
    String[] words = {"sow", "25-001", "10", "--light", "14", "--heat", "24"};

    bench.cautioned("bottom heat and lamps", words);
    bench.done(words);
  }

  @Test
  void oxidisersAreWarnedOfOnceHoweverManyTreatments() {
    String[] words = {
      "sow", "25-001", "10", "--treatment", "soaked in 3 % peroxide", "--treatment", "captan"
    };

    bench.cautioned("oxidisers and fungicides want gloves", words);
    bench.done(words);
  }
}
