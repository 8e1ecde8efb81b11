package dev.filial.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun;
import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A grower sees whether the register is sound, and saves what can be saved. */
class KeepVerbsTest {

  @TempDir Path folder;

  private BenchStory bench;
  private Path register;

  /** Entries 2 and 3 are plants, 4 is their cross 26-003P, 5 a note. */
  @BeforeEach
  void aCross() {
    bench = new BenchStory(folder);
    register = folder.resolve("filial.register");
    bench.done("plant", "Echeveria laui");
    bench.done("plant", "Echeveria agavoides", "--name", "Amber");
    bench.done("cross", "26-001", "26-002", "--bagged");
    bench.done("note", "26-001", "first flowers");
  }

  /** Changes a word inside the file, where it stands last, for one of the same length. */
  private void overwrite(String word, String other) throws IOException {
    byte[] bytes = Files.readAllBytes(register);
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    int at = text.lastIndexOf(word);
    assertThat(at).isPositive();
    try (FileChannel channel = FileChannel.open(register, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(other.getBytes(StandardCharsets.ISO_8859_1)), at);
    }
  }

  private static void requireRefused(Outcome outcome, int status, String... words) {
    assertThat(outcome.status()).as(outcome.err()).isEqualTo(status);
    assertThat(outcome.out()).isEmpty();
    assertThat(outcome.err().replaceAll("\\s+", " ")).contains(words);
  }

  @Test
  void aSoundRegisterIsSaidToBe() {
    assertThat(bench.done("verify").replaceAll("\\s+", " "))
        .endsWith("is sound: 5 entries, each as it was written, and all that follows from them. ");
    JsonNode json = bench.json("verify").get("verification");
    assertThat(json.get("entries").intValue()).isEqualTo(5);
    assertThat(json.get("faults")).isEmpty();
  }

  @Test
  void aChangedByteIsFoundAndSaidWhatToDo() throws Exception {
    overwrite("first flowers", "worst flowers");
    Outcome outcome = bench.type("verify");
    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out().replaceAll("\\s+", " "))
        .contains("is not sound. Do not write to it any more.")
        .contains("entry 5 is not as it was written: its digest does not fit")
        .contains("4 of its entries are as they were written")
        .contains("filial salvage FILE", "filial import FILE --register NEW");
    requireRefused(bench.type("history", "5"), 3, "entry 5 is not as it was written", "salvage");
    assertThat(bench.type("verify", "--json").status()).isEqualTo(1);
  }

  @Test
  void aFileThatCannotBeReadIsStatusThree() throws Exception {
    byte[] whole = Files.readAllBytes(register);
    Files.write(register, Arrays.copyOf(whole, whole.length / 2));
    requireRefused(bench.type("verify"), 3, "is damaged", "filial salvage FILE");
    Files.writeString(register, "Dear Klara");
    requireRefused(bench.type("verify"), 3, "is not a register");
    Files.delete(register);
    requireRefused(bench.type("verify"), 3, "there is no filial.register");
  }

  @Test
  void aRegisterIsMadeAgainOfWhatWasSaved() throws Exception {
    try (FileChannel channel = FileChannel.open(register, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.allocate(512), 0);
    }
    requireRefused(bench.type("verify"), 3, "or its beginning is lost");

    assertThat(bench.done("salvage", "saved.jsonl").replaceAll("\\s+", " "))
        .contains("Wrote 5 entries to")
        .contains("each is as it was written and none is missing before the last");
    assertThat(Files.readAllLines(folder.resolve("saved.jsonl"))).hasSize(5);
    assertThat(bench.done("import", "saved.jsonl", "--register", "new").replaceAll("\\s+", " "))
        .contains("of 5 entries, each exactly as it was");
    assertThat(bench.done("verify", "--register", "new")).contains("sound");
    assertThat(bench.done("ancestry", "26-003", "--register", "new")).contains("F1");
    requireRefused(bench.type("salvage", "saved.jsonl"), 3, "is there already");
    requireRefused(bench.type("import", "saved.jsonl", "--register", "new"), 3, "is there already");
  }

  @Test
  void whatIsLeftIsTakenUnderNewNumbersAndTheRestIsSaid() throws Exception {
    bench.done("salvage", "saved.jsonl");
    Path saved = folder.resolve("saved.jsonl");
    List<String> lines = Files.readAllLines(saved);
    Files.write(saved, List.of(lines.get(0), lines.get(1), lines.get(3), lines.get(4)));
    Outcome outcome = bench.type("import", "saved.jsonl", "--register", "new");
    assertThat(outcome.status()).isZero();
    assertThat(outcome.out().replaceAll("\\s+", " "))
        .contains("of the 3 entries that still hold")
        .contains("26-002N is not in this register");
    assertThat(bench.done("verify", "--register", "new")).contains("3 entries");
  }

  @Test
  void aLostFirstEntryIsAskedFor() throws Exception {
    bench.done("salvage", "saved.jsonl");
    Path saved = folder.resolve("saved.jsonl");
    List<String> lines = Files.readAllLines(saved);
    Files.write(saved, lines.subList(1, lines.size()));
    requireRefused(
        bench.type("import", "saved.jsonl", "--register", "new"),
        1,
        "entry 1, which says whose register it was, is lost",
        "--mark KB");
    assertThat(folder.resolve("new")).doesNotExist();
    bench.done(
        "import", "saved.jsonl", "--register", "new", "--mark", "KB", "--grower", "Klara Beispiel");
    assertThat(bench.done("verify", "--register", "new")).contains("5 entries");
  }

  @Test
  void whatIsNoFileOfEntriesIsRefused() throws Exception {
    Files.writeString(folder.resolve("letter"), "Dear Klara\n");
    requireRefused(
        bench.type("import", "letter", "--register", "new"), 1, "letter is no file of entries");
    Files.write(folder.resolve("bytes"), new byte[] {(byte) 0xC3, 0, 7});
    requireRefused(bench.type("import", "bytes", "--register", "new"), 1, "not text in UTF-8");
    Files.createFile(folder.resolve("empty"));
    requireRefused(bench.type("import", "empty", "--register", "new"), 1, "not one entry");
    requireRefused(bench.type("import", "nowhere", "--register", "new"), 3, "nowhere");
    requireRefused(bench.type("import"), 2, "there is nothing to import");
    requireRefused(bench.type("import", "a", "--notation", "A/B"), 2, "one at a time");
    assertThat(folder.resolve("new")).doesNotExist();
  }

  @Test
  void aPedigreeInNotationIsWrittenDown() {
    String told =
        bench.cautioned(
            "nothing is known of the taxon of Coral",
            "import",
            "--notation",
            "Amber/Coral//Dusk",
            "--let",
            "Dusk=26-001");
    assertThat(told.replaceAll(" +", " "))
        .contains("Entries 6 to 10: Amber/Coral//Dusk is 26-006V-1.")
        .contains("Amber 26-002N was here already")
        .contains("Coral 26-004R new, held elsewhere")
        .contains("Dusk 26-001M was here already")
        .contains("Next: see who is in it: filial ancestry 26-006V-1");
    assertThat(bench.done("ancestry", "26-006-1")).contains("1/2", "Echeveria laui");
    assertThat(bench.done("verify")).contains("10 entries");
    JsonNode json = bench.json("import", "--notation", "Coral*2/Amber");
    assertThat(json.get("plant").stringValue()).isEqualTo("26-008X-1");
    assertThat(json.get("sources")).hasSize(2);
  }

  @Test
  void malformedNotationIsShownWithACaret() {
    Outcome outcome = bench.type("import", "--notation", "Amber/Coral/Dusk");
    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err())
        .contains("column 12")
        .contains("\n  Amber/Coral/Dusk\n             ^\n");
    assertThat(
            JsonMapper.shared()
                .readTree(bench.type("import", "--notation", "A/", "--json").err())
                .get("error")
                .get("message")
                .stringValue())
        .contains("column 3");
  }

  @Test
  void notationIsAskedForSoThatNoShellTouchesIt() {
    Outcome outcome = bench.asked(new String[] {"Amber*2/\"it's $HOME\""}, "import");
    assertThat(outcome.status()).as(outcome.err()).isZero();
    assertThat(outcome.out()).contains("it's $HOME");
    Outcome wrong = bench.asked(new String[] {"Amber//"}, "import");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(wrong.err()).contains("^");
  }

  @Test
  void aRefusedPedigreeLeavesNothingBehind() {
    requireRefused(
        bench.type("import", "--notation", "Coral/Dusk", "--let", "Dusk=26-009"), 1, "26-009");
    requireRefused(bench.type("import", "--notation", "Coral"), 1, "one plant and no cross");
    requireRefused(
        bench.type("import", "--notation", "Coral/Dusk", "--let", "Dask=26-001"),
        1,
        "the pedigree has no \"Dask\"");
    requireRefused(bench.type("import", "--notation", "A/B", "--let", "A"), 2, "NAME=24-003");
    assertThat(bench.done("verify")).contains("5 entries");
  }

  @Test
  void twoThreadsOfCommandsAreBothWritten() throws Exception {
    Thread[] growers = new Thread[2];
    for (int i = 0; i < growers.length; i++) {
      growers[i] =
          new Thread(
              () -> {
                for (int n = 0; n < 5; n++) {
                  new CommandLineRun().in(folder).run("plant", "Echeveria elegans");
                }
              });
      growers[i].start();
    }
    for (Thread grower : growers) {
      grower.join();
    }
    assertThat(bench.done("verify")).contains("15 entries");
  }
}
