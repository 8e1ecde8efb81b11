package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AgainVerbTest {

  @TempDir Path folder;

  private DemoStory bench;

  @BeforeEach
  void theDemoBench() throws IOException {
    bench = new DemoStory(folder);
  }

  @Test
  void aBrushGoesFromFlowerToFlower() {
    bench.told("cross", "Rosa", "Lilo", "--flowers", "3", "--bagged", "--date", "2026-06-12");

    assertThat(bench.told("again"))
        .startsWith("Entry 261: 26-016K: 22-001E × 22-006M, 3 flowers")
        .contains("Write on the tag:")
        .contains("Next: once more: filial again");
    assertThat(bench.told("history", "261")).contains("2026-06-15").contains("bagged");
    assertThat(bench.told("again", "pollen=22-003", "flowers=2"))
        .startsWith("Entry 262: 26-017L: 22-001E × 22-003J, 2 flowers");
    assertThat(bench.told("again", "260", "date=2025-05-01"))
        .startsWith("Entry 263: 25-")
        .contains("22-001E × 22-006M, 3 flowers");
  }

  @Test
  void whatWasStruckOrPutRightIsNotTheLastEntry() {
    bench.told("note", "Rosa", "first");
    bench.told("note", "Rosa", "second");
    bench.told("undo");
    bench.told("amend", "260", "text=mended", "--why", "slip");

    assertThat(bench.told("again", "code=Lilo")).startsWith("Entry 264: 22-006M: mended");
    assertThat(bench.refused(1, "again", "261")).contains("entry 261 was struck; repeat another");
    assertThat(bench.refused(1, "again", "999")).contains("there is no entry 999");
  }

  @Test
  void seedSowingsPotsAndNumbersGetCodesOfTheirOwn() {
    bench.told("cross", "Rosa", "Lilo", "--flowers", "3", "--date", "2026-03-04");
    bench.told("harvest", "26-015", "60", "--date", "2026-05-20");
    assertThat(bench.told("again", "count=12")).contains("26-015J H2 harvested: 12 seeds");
    bench.told("cross", "Lilo", "Rosa", "--flowers", "3", "--date", "2026-03-04");
    assertThat(bench.told("again", "261", "cross=26-016", "date=2026-05-20"))
        .contains("26-016K H1 harvested: 60 seeds");
    bench.told("sow", "26-015 H1", "20", "--pots", "2", "--date", "2026-05-21");
    assertThat(bench.told("again"))
        .contains("26-015J S2: 20 seeds of 26-015J H1 sown into 26-015J P3, 26-015J P4")
        .contains("Write on the tags");
    assertThat(bench.told("again", "lot=26-016 H1"))
        .contains("26-016K S1: 20 seeds of 26-016K H1 sown into 26-016K P1, 26-016K P2");
    bench.told("count", "26-015 P1", "--up", "8", "--alive", "8");
    bench.told("number", "26-015 P1", "2");
    assertThat(bench.told("again")).contains("26-015J-3 to -4 numbered from 26-015J P1");
  }

  @Test
  void aPlantsOwnNamesStayBehind() {
    bench.told("plant", "Echeveria setosa", "--name", "Setty");

    assertThat(bench.json("again").get("code").stringValue()).startsWith("26-016");
    assertThat(bench.told("history", "261")).doesNotContain("Setty");
  }

  @Test
  void theDayOfAnAgainIsTheBatchesDay() throws IOException {
    java.nio.file.Files.writeString(
        folder.resolve("a.txt"), "on 4 mar\nnote Rosa x\nagain code=Lilo\nagain 260 text=y\n");
    bench.told("batch", "a.txt");
    assertThat(bench.told("history", "262")).contains("2026-03-04").contains("22-001E: y");
  }

  @ParameterizedTest
  @CsvSource({
    "gene, gene fur F f",
    "taxon, taxon 'Echeveria minima' --ploidy 2",
    "trait, trait fur --states a'|'b"
  })
  void whatIsSaidOnceCannotBeRepeated(String what, String line) {
    var outcome =
        bench.type(CommandWords.of("filial " + line.replace("|", ",")).toArray(String[]::new));
    assertThat(outcome.status()).as(what + outcome.err()).isZero();
    assertThat(bench.refused(1, "again"))
        .contains("once and for all")
        .contains("cannot be repeated");
  }

  @Test
  void whatIsTypedWrongIsSaid() {
    assertThat(bench.refused(2, "again", "Rosa")).contains("is not the number of an entry");
    assertThat(bench.refused(2, "again", "70", "Rosa")).contains("write it as date=");
    bench.told("note", "Rosa", "x");
    assertThat(bench.refused(1, "again", "colour=red"))
        .contains("there is no \"colour\" in an entry of this kind; there is code, text, date");
  }
}
