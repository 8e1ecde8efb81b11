package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Sheets of labels, on the demo bench. */
class LabelVerbsTest {

  @TempDir Path folder;

  @BeforeEach
  void aBench() throws IOException {
    DemoRegister.in(folder);
  }

  private Outcome filial(String... words) {
    return new CommandLineRun().in(folder).run(words);
  }

  private JsonNode json(String... words) {
    Outcome outcome = filial(words);
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return JsonMapper.shared().readTree(outcome.out());
  }

  private static String oneLine(String text) {
    return text.replaceAll("\\s+", " ");
  }

  @Test
  void aCrossStandsForWhatGrowsOfIt() {
    JsonNode tags = json("labels", "26-013", "--json");

    assertThat(tags.get("style").stringValue()).isEqualTo("tags");
    assertThat(tags.get("labels").valueStream().map(label -> label.get("code").stringValue()))
        .contains("26-013E-1", "26-013E P1")
        .doesNotContain("26-013E", "26-013E H1");
    // H3 was given away.
    assertThat(tags.get("passedOver").valueStream().map(JsonNode::stringValue))
        .containsExactly("26-013E H1", "26-013E H2");
    assertThat(folder.resolve("labels.html")).exists();
  }

  @Test
  void ofACrossWithNothingButSeedPacketsAreLabelled() {
    JsonNode packets = json("labels", "26-012", "--json");

    assertThat(packets.get("style").stringValue()).isEqualTo("packets");
    assertThat(packets.get("labels").get(0).get("code").stringValue()).isEqualTo("26-012D H1");
  }

  @Test
  void aCrossThatHasGivenNothingYetGetsATagOfItsOwn() {
    assertThat(json("labels", "26-014", "--json").get("labels").get(0).get("code").stringValue())
        .isEqualTo("26-014H");
  }

  @Test
  void whatWasMixedIsLabelledUnderTheMixture() {
    // Seed of 24-007E H1 went into the mixed packet 25-001R, which was sown.
    assertThat(json("labels", "24-007", "--json").get("labels").toString())
        .contains("24-007E P1")
        .doesNotContain("25-001R");
    assertThat(json("labels", "25-001", "--json").get("labels").toString()).contains("25-001R P1");
  }

  @Test
  void theQrCodeSaysTheTravellingForm() {
    JsonNode label = json("labels", "26-013 H2", "--qr", "--json").get("labels").get(0);

    assertThat(label.get("qr").stringValue())
        .isEqualTo(filial("tag", "26-013 H2", "--machine").out().strip());
  }

  @Test
  void whatLeavesTheHouseBearsTheMark() {
    assertThat(
            json("labels", "26-013 H2", "--leaving", "--json")
                .get("labels")
                .get(0)
                .get("code")
                .stringValue())
        .isEqualTo("KB 26-013E H2");
  }

  @Test
  void aPlaceStandsForAllThatIsInIt() {
    JsonNode tags = json("labels", "--in", "kitchen", "--json");

    assertThat(tags.get("labels").size()).isGreaterThan(20);
  }

  @Test
  void withoutAFileNamedTheNextFreeNumberIsTaken() throws IOException {
    Path first = folder.resolve("labels.html");
    Files.writeString(first, "mine");

    assertThat(filial("labels", "22-001").status()).isZero();
    assertThat(filial("labels", "22-001").out()).contains("labels-3.html");

    assertThat(first).hasContent("mine");
    assertThat(folder.resolve("labels-2.html")).content().contains(">22-001E</text>");
  }

  @Test
  void aFileThatIsThereIsNotWrittenOver() throws IOException {
    Path mine = Files.writeString(folder.resolve("mine.html"), "mine");

    Outcome outcome = filial("labels", "22-001", "--to", "mine.html");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(oneLine(outcome.err())).contains("is there already, and nothing was written");
    assertThat(mine).hasContent("mine");
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    Outcome outcome = filial("labels", "22-001", "--to", "no/such.html");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(oneLine(outcome.err())).contains("there is no file or folder").contains("such.html");
  }

  @Test
  void whatDoesNotFitThePaperIsRefusedAndNoFileLeft() {
    Outcome outcome = filial("labels", "22-001", "--size", "70x13", "--columns", "4");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(oneLine(outcome.err()))
        .contains("4 columns of 70 mm take 280 mm, and the paper is 210 mm wide; 3 fit");
    assertThat(folder.resolve("labels.html")).doesNotExist();
  }

  @Test
  void sizesAreReadAsPeopleWriteThem() {
    for (String size : new String[] {"50x25", "50×25", "50,0 x 25mm", "50 X 25.0 MM"}) {
      assertThat(json("labels", "22-001", "--size", size, "--json").get("size").stringValue())
          .isEqualTo("50 × 25 mm");
    }
    assertThat(json("labels", "22-001", "--paper", "Letter", "--json").get("paper").stringValue())
        .isEqualTo("215.9 × 279.4 mm");
    Outcome wrong = filial("labels", "22-001", "--size", "50");
    assertThat(wrong.status()).isEqualTo(2);
    assertThat(oneLine(wrong.err())).contains("write them as 50x25");
    assertThat(filial("labels", "22-001", "--margin-left", "-3").status()).isEqualTo(2);
    assertThat(oneLine(filial("labels", "22-001", "--paper", "a9").err()))
        .contains("a4, a5 or letter");
    assertThat(oneLine(filial("labels", "22-001", "--size", "3x3").err())).contains("5 to 2000 mm");
  }

  /** On plain paper nobody sees where one label ends; a sheet of sticky ones is cut already. */
  @Test
  void marksToCutAlongArePrintedWhereThePaperIsNotCutAlready() throws IOException {
    assertThat(sheet("22-001")).contains(CROSSES);
    assertThat(sheet("22-001", "--size", "50x25", "--columns", "2", "--qr")).contains(CROSSES);
    for (String cut :
        new String[] {"--margin-left", "--margin-top", "--gap-across", "--gap-down"}) {
      assertThat(sheet("22-001", cut, "2")).as(cut).doesNotContain(CROSSES);
    }
    assertThat(sheet("22-001", "--skip", "1")).doesNotContain(CROSSES);
    assertThat(sheet("26-013 H1", "--paper", "62x29", "--size", "62x29")).doesNotContain(CROSSES);
    assertThat(sheet("22-001", "--skip", "1", "--cut-marks")).contains(CROSSES);
    assertThat(sheet("22-001", "--no-cut-marks")).doesNotContain(CROSSES);
    Outcome both = filial("labels", "22-001", "--cut-marks", "--no-cut-marks");
    assertThat(both.status()).isEqualTo(2);
    assertThat(oneLine(both.err())).contains("cannot both be meant", "Leave one of them out.");
  }

  private static final String CROSSES = "<path class=\"cut\"";

  private String sheet(String... words) throws IOException {
    Path file = folder.resolve("sheet.html");
    Files.deleteIfExists(file);
    List<String> all = new ArrayList<>(List.of("labels"));
    all.addAll(List.of(words));
    all.addAll(List.of("--to", "sheet.html"));
    Outcome outcome = filial(all.toArray(String[]::new));
    assertThat(outcome.status()).as(outcome.err()).isZero();
    return Files.readString(file);
  }

  @Test
  void packetsOfWhatOnlyGrowsAreRefused() {
    Outcome outcome = filial("labels", "26-008", "--for", "packets");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.err()).contains("--for tags");
  }

  @Test
  void withoutAnythingNamedNothingIsPrinted() {
    Outcome outcome = filial("labels");

    assertThat(outcome.status()).isEqualTo(2);
    assertThat(outcome.err()).contains("WHAT is missing").contains("--in PLACE");
  }

  @Test
  void aCodeThatComesOutSmallIsWarnedOf() {
    Outcome outcome = filial("labels", "26-013 H2", "--for", "packets", "--size", "14x12");

    assertThat(outcome.status()).isZero();
    assertThat(oneLine(outcome.err()))
        .contains("less than 2 mm high and hard to read: the code on 26-013E H2");
  }

  @Test
  void whereOnlyTheBuriedEndIsHardToReadThatIsSaid() {
    Outcome outcome = filial("labels", "22-001", "--size", "40x10");

    assertThat(outcome.out()).contains("code  3.8 mm high");
    assertThat(oneLine(outcome.err()))
        .contains("hard to read: the code once more on the buried end of 22-001E;");
  }

  @Test
  void whereOneSideOfATagFitsAndTwoDoNotThatIsSaid() {
    assertThat(oneLine(filial("labels", "22-001", "--paper", "62x29", "--size", "62x29").err()))
        .contains("a tag has two sides, one below the other, and takes 62 × 58 mm; the paper is")
        .contains("--for packets, or name larger paper: --paper 62x58");
    assertThat(oneLine(filial("labels", "22-001", "--columns", "0").err()))
        .contains("0 columns hold no label; 2 fit");
  }
}
