package dev.filial.core.spreadsheet;

import static dev.filial.core.spreadsheet.TableFile.PLANTS;
import static dev.filial.core.spreadsheet.TableFile.complaints;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Fate;
import dev.filial.core.register.FateRecorded;
import dev.filial.core.register.Item;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.spreadsheet.SheetImport.Outcome;
import dev.filial.core.store.RegisterStore;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A grower's table becomes the entries that would have been typed, or is refused row by row. */
@SuppressWarnings("StringConcatToTextBlock") // a text block would hide the line ends
class SheetImportTest {

  @TempDir Path folder;

  private TableFile table(String text) throws IOException {
    return TableFile.of(folder.resolve("table.csv"), text);
  }

  private static PlantAcquired plant(RegisterStore store, long entry) {
    return (PlantAcquired) store.effective(entry).orElseThrow();
  }

  private List<String> files() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void plantsAreTakenInWithAllThatIsSaidOfThem() throws IOException {
    TableFile table =
        table(
            "Nr;Art;Sorte;Von;Feld;Seit;Wo;Notiz;Wetter\r\n"
                + "E-17;Echeveria laui;;Jonas Muster;XM 014;4.3.2024;Regal 1;\"zwei\nAbleger\";heiß\r\n"
                + "E-18;Echeveria agavoides 'Ebony';;-;;2024;;;\r\n");
    String mapping =
        PLANTS
            + "cultivar = Sorte\ndonor = Von\nfield number = Feld\ndate = Seit\nplace = Wo\n"
            + "remark = Notiz\nkeep = Wetter\n";
    Outcome outcome = table.applied(mapping);

    assertThat(outcome.written()).isTrue();
    assertThat(List.of(outcome.rows(), outcome.taken(), outcome.first(), outcome.last()))
        .containsExactly(2L, 2L, 2L, 3L);
    PlantAcquired laui = plant(table.store(), 2);
    assertThat(laui.code()).isEqualTo(Code.of(24, 1));
    assertThat(laui.names()).containsExactly("E-17");
    assertThat(laui.date()).hasToString("2024-03-04");
    assertThat(laui.provenance().fieldNumber()).isEqualTo("XM 014");
    assertThat(laui.place()).isEqualTo("Regal 1");
    assertThat(laui.remark()).isEqualTo("zwei Ableger; Wetter: heiß");
    PlantAcquired ebony = plant(table.store(), 3);
    assertThat(ebony.determination().cultivar()).isEqualTo("Ebony");
    assertThat(ebony.provenance().donor()).isNull();
    assertThat(outcome.samples().get(0).line()).isEqualTo(2);
  }

  @Test
  void eachBadRowIsToldWithItsLineItsColumnAndWhatToDo() throws IOException {
    TableFile table =
        table(
            "Nr;Art;Seit;Notiz\n"
                + "A;Echeveria laui;3/4/2025;\n"
                + "B;laui;;\n"
                + "C;Echeveria laui;31.02.2025;\n"
                + "D;Echeveria laui;;=1+1\n"
                + "E;Echeveria laui\n"
                + "F;Echeveria laui;;a;b\n"
                + "G;Echeveria laui;;good\n"
                + "G;Echeveria agavoides;;\n"
                + "H;laui × agavoides;;\n"
                + "I;Echeveria laui;;a\u0001b\n"
                + ";;;\n");
    String mapping = PLANTS + "date = Seit\nremark = Notiz\n";
    Outcome outcome = table.tried(mapping);

    assertThat(List.of(outcome.rows(), outcome.taken(), outcome.refused(), outcome.blank()))
        .containsExactly(10L, 1L, 9L, 1L);
    List<String> said = complaints(outcome);
    assertThat(said.get(0)).startsWith("2 Seit: \"3/4/2025\" may be 2025-04-03 or 2025-03-04");
    assertThat(said.get(1)).startsWith("3 Art: a name begins with its genus").doesNotContain("\n");
    assertThat(said.get(2)).startsWith("4 Seit: no such date");
    assertThat(said.get(3)).startsWith("5 Notiz: \"=1+1\" is a formula");
    assertThat(said.get(4))
        .isEqualTo(
            "6 it has 2 cells where the header has 4; put a cell with a separator in it between quotes,"
                + " or add what is missing");
    assertThat(said.get(5)).startsWith("7 it has 5 cells where the header has 4");
    assertThat(said.get(6)).startsWith("9 Nr: \"G\" is the number of an earlier row too");
    assertThat(said.get(7)).startsWith("10 Art: ");
    assertThat(said.get(8))
        .startsWith("11 Notiz: \"a?b\" has a letter in it that could not be read");
    assertThat(table.store().size()).isEqualTo(1);
  }

  @Test
  void aRowWithANumberAloneWasNeverFilledIn() throws IOException {
    TableFile table = table("Nr;Art;Von\nE-17;;\nE-18;?;\nE-19;;Jonas Muster\n");
    Outcome outcome = table.applied(PLANTS + "donor = Von\n");
    assertThat(outcome.written()).isFalse();
    assertThat(complaints(outcome))
        .containsExactly(
            "2 nothing is said of it; write ? for its taxon if nothing is known, or take the"
                + " row out");
  }

  @Test
  void oneBadRowLeavesTheRegisterAsItWas() throws IOException {
    TableFile table = table("Nr;Art\nA;Echeveria laui\nB;laui\n");
    Outcome outcome = table.applied(PLANTS);
    assertThat(outcome.written()).isFalse();
    assertThat(outcome.taken()).isEqualTo(1);
    assertThat(table.store().size()).isEqualTo(1);
  }

  @Test
  void aTrialLeavesTheFileOfTheRegisterByteForByte() throws IOException {
    Path file = folder.resolve("r.register");
    SqliteStore.create(file, new RegisterOpened("KB", "Klara", null), TableFile.NOON).close();
    byte[] before = Files.readAllBytes(file);
    Path rows = Files.writeString(folder.resolve("t.csv"), "Nr;Art\nA;Echeveria laui\n");
    try (SqliteStore store = SqliteStore.open(file)) {
      Outcome outcome = new TableFile(rows, store).tried(PLANTS);
      assertThat(outcome.refused()).isZero();
      assertThat(outcome.last()).isEqualTo(2);
      assertThat(store.size()).isEqualTo(1);
    }
    assertThat(file).hasBinaryContent(before);
    assertThat(files()).containsExactly("r.register", "t.csv");
  }

  @Test
  void rejectedRowsAreMendedAndTakenInAfterwards() throws IOException {
    TableFile table =
        table("Nr;Art;Notiz\nA;Echeveria laui;\nB;laui;@home\nC;Echeveria laui;=1\nD;?;-3\n");
    String mapping = PLANTS + "remark = Notiz\n";
    Path rest = folder.resolve("rest.csv");
    Outcome outcome = table.good(mapping, rest);
    assertThat(outcome.written()).isTrue();
    assertThat(outcome.taken()).isEqualTo(2);
    assertThat(table.store().size()).isEqualTo(3);
    String text = Files.readString(rest);
    assertThat(text).startsWith("\uFEFF\"Filial: why not\";Nr;Art;Notiz\r\n");
    assertThat(text).contains("'@home").contains("'=1").contains("line 3, Art: a name begins");

    Path mended = folder.resolve("mended.csv");
    Files.writeString(
        mended, text.replace("laui;\"'", "\"Echeveria laui\";\"'").replace("'=1", "one"));
    assertThat(Files.readString(mended)).isNotEqualTo(text);
    TableFile again = new TableFile(mended, table.store());
    Outcome second = again.applied(mapping);
    assertThat(complaints(second)).isEmpty();
    assertThat(second.unmapped()).isEmpty();
    assertThat(plant(table.store(), 4).remark()).isEqualTo("@home");
    assertThat(plant(table.store(), 5).remark()).isEqualTo("one");
  }

  @Test
  void rowsRejectedTwiceHaveTheLaterReasonAlone() throws IOException {
    TableFile table = table("Nr;Art\nA;laui\nB\n");
    Path once = folder.resolve("once.csv");
    Path twice = folder.resolve("twice.csv");
    Outcome first = table.good(PLANTS, once);
    Outcome second = new TableFile(once, table.store()).good(PLANTS, twice);
    assertThat(first.refused()).isEqualTo(2);
    assertThat(second.refused()).isEqualTo(2);
    List<String> lines = new ArrayList<>(Files.readAllLines(twice));
    assertThat(lines.get(0)).isEqualTo("\uFEFF\"Filial: why not\";Nr;Art");
    assertThat(lines.get(1)).containsOnlyOnce("line 2").endsWith(";A;laui");
    // A row with a cell too few stands under its headers as it did before.
    assertThat(lines.get(2)).containsOnlyOnce("line 3, it has 2 cells").endsWith("\";B");
  }

  /** The mapping of the table is that of its refused rows, also where it goes by places. */
  @Test
  void aMappingByPlacesFitsTheRefusedRowsToo() throws IOException {
    String mapping = "rows = plants\nold code = column 1\ntaxon = column 2\nremark = column 3\n";
    TableFile table = table("Nr;Art;Notiz\nA;Echeveria laui;one\nB;laui;two\n");
    Path rest = folder.resolve("rest.csv");
    Outcome first = table.good(mapping, rest);
    assertThat(first.taken()).isEqualTo(1);

    Files.writeString(rest, Files.readString(rest).replace(";laui;", ";\"Echeveria laui\";"));
    Outcome second = new TableFile(rest, table.store()).applied(mapping);

    assertThat(complaints(second)).isEmpty();
    assertThat(plant(table.store(), 3).remark()).isEqualTo("two");
    assertThat(plant(table.store(), 3).determination().taxon()).isEqualTo("Echeveria laui");
  }

  @Test
  void goodRowsAloneMakeNoFileOfRejects() throws IOException {
    Outcome outcome = table("Nr;Art\nA;Echeveria laui\n").good(PLANTS, folder.resolve("rest.csv"));
    assertThat(outcome.written()).isTrue();
    assertThat(files()).containsExactly("table.csv");
  }

  @Test
  void anExistingFileIsNeverReplacedAndNothingIsWritten() throws IOException {
    TableFile table = table("Nr;Art\nA;Echeveria laui\nB;laui\n");
    Path rest = Files.writeString(folder.resolve("rest.csv"), "precious");
    assertThatThrownBy(() -> table.good(PLANTS, rest))
        .isInstanceOf(FileAlreadyExistsException.class);
    assertThat(rest).hasContent("precious");
    assertThat(table.store().size()).isEqualTo(1);
    assertThat(files()).containsExactly("rest.csv", "table.csv");
  }

  @Test
  void whereTheRejectsCannotBeWrittenNothingIs() throws IOException {
    TableFile table = table("Nr;Art\nA;Echeveria laui\nB;laui\n");
    assertThatThrownBy(() -> table.good(PLANTS, folder.resolve("no/such/folder.csv")))
        .isInstanceOf(IOException.class);
    assertThat(table.store().size()).isEqualTo(1);
  }

  private static boolean mounts(String... command) throws Exception {
    return new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor()
        == 0;
  }

  @Test
  void aDiskTooFullForTheRejectsLeavesTheRegisterAsItWas() throws Exception {
    Path disk = Files.createDirectory(folder.resolve("disk"));
    boolean mounted =
        "root".equals(System.getProperty("user.name"))
            && mounts("mount", "-t", "tmpfs", "-o", "size=64k", "tmpfs", disk.toString());
    assumeThat(mounted).as("only root can make a tiny disk for this test").isTrue();
    try {
      TableFile table = table("Nr;Art\nA;Echeveria laui\n" + "B;laui\n".repeat(5_000));
      assertThatThrownBy(() -> table.good(PLANTS, disk.resolve("rest.csv")))
          .isInstanceOf(IOException.class)
          .hasMessageContaining("rest.csv");
      assertThat(table.store().size()).isEqualTo(1);
      assertThat(disk.toFile().list()).isEmpty();
    } finally {
      assertThat(mounts("umount", disk.toString())).isTrue();
    }
  }

  @Test
  void aBrokenQuoteFarDownUndoesEverythingEvenWhenGoodRowsAreAskedFor() throws IOException {
    TableFile table = table("Nr;Art\nA;Echeveria laui\nB;laui\nC;\"never closed\n");
    assertThatThrownBy(() -> table.good(PLANTS, folder.resolve("rest.csv")))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining("line 4");
    assertThat(table.store().size()).isEqualTo(1);
    assertThat(files()).containsExactly("table.csv");
  }

  @Test
  void aHeaderAloneHasNoRows() throws IOException {
    Outcome outcome = table("Nr;Art\n").applied(PLANTS);
    assertThat(List.of(outcome.rows(), outcome.first())).containsExactly(0L, 0L);
  }

  @Test
  void strangeNamesAreKeptAsTheyAre() throws IOException {
    String longName = "ü".repeat(300);
    TableFile table =
        table("Nr,Art,Name\nA,?,\"<b>\"\"Rosa\"\"</b> \uD83C\uDF35\"\nB,?," + longName + "\n");
    Outcome outcome = table.applied(PLANTS + "name = Name\n");
    assertThat(complaints(outcome)).isEmpty();
    assertThat(plant(table.store(), 2).names())
        .containsExactly("A", "<b>\"Rosa\"</b> \uD83C\uDF35");
    assertThat(plant(table.store(), 3).names()).containsExactly("B", longName);
  }

  @Test
  void aCodeIsGivenOutOnceInTheTableAndInTheRegister() throws IOException {
    TableFile table = table("c;t\n24-001;Echeveria laui\n24-1W;Echeveria laui\n24-002A;?\n");
    Outcome outcome = table.tried("rows = plants\ncode = c\ntaxon = t\n");
    assertThat(complaints(outcome).get(0))
        .isEqualTo(
            "3 c: 24-001W is the code of an earlier row too; give each row a code of its own");
    assertThat(complaints(outcome).get(1)).startsWith("4 c: 24-002A: the letter A does not go");
    Outcome once = table.good("rows = plants\ncode = c\ntaxon = t\n", folder.resolve("r.csv"));
    assertThat(once.taken()).isEqualTo(1);
    Outcome again = table.tried("rows = plants\ncode = c\ntaxon = t\n");
    assertThat(complaints(again).get(0)).startsWith("2 24-001W is taken already (entry 2)");
  }

  @Test
  void takingTheSameTableInTwiceIsNoticedByTheOldNumbers() throws IOException {
    TableFile table = table("Nr;Art\nA;Echeveria laui\n");
    Outcome first = table.applied(PLANTS);
    Outcome second = table.applied(PLANTS);
    assertThat(first.written()).isTrue();
    assertThat(complaints(second))
        .containsExactly(
            "2 Nr: \"A\" is what 26-001M is called already; is this row in the register?");
  }

  private TableFile withPlants(String text) throws IOException {
    TableFile plants = table("Nr;Art\nE-17;Echeveria laui\nE-18;Echeveria agavoides\n");
    Outcome outcome = plants.applied(PLANTS + "date = \"2024-05\"\n");
    assertThat(outcome.written()).isTrue();
    return plants.with(folder.resolve("next.csv"), text);
  }

  private static final String CROSSES =
      "rows = crosses\nold code = Nr\nseed parent = Mutter\npollen parent = Vater\ndate = am\n"
          + "set = Ansatz\nharvest date = Ernte\nseeds = Samen\n";

  @Test
  void crossesFindTheirParentsByOldNumbersAndBringTheirHarvest() throws IOException {
    TableFile table =
        withPlants(
            "Nr;Mutter;Vater;am;Ansatz;Ernte;Samen\n"
                + "K1;E-17;e-18;4.3.2025;3;1.5.2025;80\n"
                + "K2;24-001;self;5.3.2025;;;\n"
                + "K3;E-18;open;;;;ca. 20\n");
    Outcome outcome = table.applied(CROSSES);
    assertThat(complaints(outcome)).isEmpty();
    RegisterStore store = table.store();
    Code cross = store.called("K1").get(0);
    assertThat(store.item(cross).orElseThrow().kind()).isEqualTo(Item.Kind.CROSS);
    assertThat(store.item(cross.lot(1)).orElseThrow().count()).isEqualTo(Count.of(80));
    assertThat(outcome.last() - outcome.first() + 1).isEqualTo(4 + 2 + 3);
  }

  @Test
  void aRowIsTakenWholeOrNotAtAll() throws IOException {
    TableFile table =
        withPlants(
            "Nr;Mutter;Vater;am;Ansatz;Ernte;Samen\n"
                + "K1;E-17;E-18;4.3.2025;3;1.2.2025;80\n"
                + "K2;E-17;E-99;4.3.2025;;;\n"
                + "K3;E-17;E-18;4.3.2025;;1.5.2025;-4\n"
                + "K4;E-17;E-18;4.3.2025;;;\n");
    Outcome outcome = table.good(CROSSES, folder.resolve("rest.csv"));
    assertThat(complaints(outcome).get(0))
        .startsWith("2 ")
        .contains("is before the cross was made");
    assertThat(complaints(outcome).get(1))
        .startsWith("3 Vater: nothing in this register or in a row above is called \"E-99\"");
    assertThat(complaints(outcome).get(2)).startsWith("4 Samen: -4 is not a count");
    assertThat(table.store().called("K1")).isEmpty();
    // The code of the row that was taken back is free for the next.
    assertThat(table.store().called("K4")).containsExactly(Code.of(25, 1));
  }

  @Test
  void theSameHoldsOfARegisterOnDisk() throws IOException {
    Path file = folder.resolve("r.register");
    SqliteStore.create(file, new RegisterOpened("KB", "Klara", null), TableFile.NOON).close();
    try (SqliteStore store = SqliteStore.open(file)) {
      Path plants =
          Files.writeString(
              folder.resolve("p.csv"), "Nr;Art\nE-17;Echeveria laui\nE-18;Echeveria agavoides\n");
      Outcome first = new TableFile(plants, store).applied(PLANTS + "date = \"2024-05\"\n");
      Path crosses =
          Files.writeString(
              folder.resolve("c.csv"),
              "Nr;Mutter;Vater;am;Ansatz;Ernte;Samen\n"
                  + "K1;E-17;E-18;4.3.2025;3;1.2.2025;80\n"
                  + "K4;E-17;E-18;4.3.2025;2;1.5.2025;7\n");
      Outcome second = new TableFile(crosses, store).good(CROSSES, folder.resolve("rest.csv"));
      assertThat(first.written()).isTrue();
      assertThat(second.taken()).isEqualTo(1);
      assertThat(store.called("k4")).containsExactly(Code.of(25, 1));
      assertThat(store.called("K1")).isEmpty();
      assertThat(store.verify().isSound()).isTrue();
    }
  }

  @Test
  void seedIsSownAndCountedNeverBelowWhatHasLeft() throws IOException {
    TableFile seed = table("Nr;Art;Korn\nS1;Echeveria laui;50\n");
    Outcome bought = seed.applied("rows = seed\nold code = Nr\ntaxon = Art\nseeds = Korn\n");
    TableFile sown =
        seed.with(folder.resolve("s.csv"), "lot;am;n;up\nS1;1.6.2025;40;12\nS1;1.6.2025;40;\n");
    Outcome sowing =
        sown.good(
            "rows = sowings\nlot = lot\ndate = am\nseeds = n\ncame up = up\n",
            folder.resolve("rest.csv"));
    assertThat(bought.written()).isTrue();
    assertThat(complaints(sowing)).hasSize(1);
    assertThat(complaints(sowing).get(0)).startsWith("3 ").contains("held 10 when 40 left it");
    Code pot = seed.store().called("S1").get(0).sowing(1);
    TableFile.append(
        seed.store(),
        new dev.filial.core.register.Potted(
            pot.whole().group(1),
            pot,
            dev.filial.core.register.PartialDate.parse("2025-07-01"),
            Count.of(10),
            null,
            null));
    Outcome counts =
        seed.with(folder.resolve("n.csv"), "p;up;am\n" + pot.text() + ";4;1.8.2025\n")
            .tried("rows = counts\npot = p\ncame up = up\ndate = am\n");
    assertThat(complaints(counts).get(0))
        .contains("of the 4 counted to have come up in " + pot.text() + ", 10 have already left");
  }

  @Test
  void measurementsStandInAColumnForEachTraitOrInOne() throws IOException {
    TableFile table = withPlants("Pflanze;Tag;Breite;Rand\nE-17;4.3.2026;3,5;RED\nE-18;;;green\n");
    TableFile.append(table.store(), TableFile.trait("width", List.of()));
    TableFile.append(table.store(), TableFile.trait("edge", List.of("red", "green")));
    String mapping = "rows = measurements\nplant = Pflanze\ndate = Tag\n";
    Outcome outcome = table.applied(mapping + "trait width = Breite\ntrait edge = Rand\n");
    assertThat(complaints(outcome)).isEmpty();
    assertThat(outcome.samples().stream().map(SheetImport.Sample::text).toList().toString())
        .contains("width")
        .contains("3.5")
        .contains("red");
    Outcome bad =
        table
            .with(folder.resolve("m.csv"), "p;t;v\nE-17;width;wide\nE-17;edge;blue\nE-17;hue;1\n")
            .tried("rows = measurements\nplant = p\ntrait = t\nvalue = v\n");
    assertThat(complaints(bad).get(0)).startsWith("2 v: \"wide\" is no number");
    assertThat(complaints(bad).get(1)).contains("edge has no state \"blue\"");
    assertThat(complaints(bad).get(2)).contains("no trait is called \"hue\"");
  }

  @Test
  void aNameThatTwoHaveIsNoParent() throws IOException {
    TableFile table = withPlants("Mutter;Vater\nRosa;E-17\n");
    for (String number : List.of("E-17", "E-18")) {
      TableFile.append(
          table.store(),
          new dev.filial.core.register.Named(table.store().called(number).get(0), "Rosa", null));
    }
    Outcome outcome = table.tried("rows = crosses\nseed parent = Mutter\npollen parent = Vater\n");
    assertThat(complaints(outcome).get(0))
        .startsWith("2 Mutter: \"Rosa\" is what 24-001W, 24-002X are called");
  }

  @Test
  void whatIsUnlikelyIsWarnedOfAndTaken() throws IOException {
    TableFile table = withPlants("Mutter;Vater;am\nE-17;E-18;1.1.2027\nE-17;E-18;2.1.2027\n");
    TableFile.append(
        table.store(),
        new FateRecorded(
            List.of(Code.of(24, 2)),
            Fate.DEAD,
            dev.filial.core.register.PartialDate.parse("2025"),
            null,
            null,
            null,
            null));
    Outcome outcome =
        table
            .by("rows = crosses\nseed parent = Mutter\npollen parent = Vater\ndate = am\n")
            .withListed(3)
            .applyAll(table.store(), "Klara", TableFile.NOON);
    assertThat(outcome.written()).isTrue();
    assertThat(outcome.warned()).isGreaterThan(3);
    assertThat(outcome.warnings()).hasSize(3);
    assertThat(outcome.warnings().toString()).contains("died").contains("has not come yet");
  }

  @Test
  void columnsOfWhichNothingIsReadAreNamed() throws IOException {
    Outcome outcome = table("Nr;Art;Wetter;Bild\nA;?;heiß;x\n").tried(PLANTS + "ignore = Bild\n");
    assertThat(outcome.unmapped()).containsExactly("Wetter");
  }

  @Test
  void aMappingForAnotherTableIsRefused() throws IOException {
    TableFile table = table("a;b\n1;2\n");
    assertThatThrownBy(() -> table.tried(PLANTS))
        .isInstanceOf(SheetException.class)
        .hasMessageContaining("no column is headed \"Nr\"; the columns are a, b");
  }

  @Test
  void progressIsToldNowAndThenAndAtTheEnd() throws IOException {
    TableFile table = table("Nr;Art\n" + "x;?\n".repeat(1));
    StringBuilder rows = new StringBuilder("Nr;Art\n");
    for (int i = 0; i < 5_000; i++) {
      rows.append(i).append(";?\n");
    }
    List<Long> told = new ArrayList<>();
    Outcome outcome =
        table
            .with(folder.resolve("many.csv"), rows.toString())
            .by(PLANTS)
            .withProgress((count, share) -> told.add(count))
            .applyAll(table.store(), "Klara", TableFile.NOON);
    assertThat(outcome.taken()).isEqualTo(5_000);
    assertThat(told).containsExactly(2_000L, 4_000L, 5_000L);
  }
}
