package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.CommandLineRun.Outcome;
import dev.filial.core.name.Code;
import dev.filial.core.register.Photograph;
import dev.filial.core.register.Photographed;
import dev.filial.core.store.SqliteStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PhotoVerbsTest {

  /** SHA-256 of "abc": FIPS 180-2, appendix B.1. */
  private static final String OF_ABC =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @TempDir Path outer;

  private Path folder;
  private DemoStory bench;

  @BeforeEach
  void theDemoBench() throws IOException {
    folder = Files.createDirectory(outer.resolve("bench"));
    bench = new DemoStory(folder);
    Files.createDirectories(folder.resolve("pictures"));
  }

  private void picture(String name) throws IOException {
    Files.writeString(folder.resolve(name), "abc");
  }

  @Test
  void aPictureIsKeptByItsPlaceAndDigest() throws IOException {
    picture("pictures/rosa.jpg");
    picture("pictures/both.jpg");

    assertThat(bench.told("photo", "Rosa", "pictures/rosa.jpg", "pictures/both.jpg"))
        .isEqualTo(
            """
            2 pictures of 22-001E:
            entry  picture            SHA-256 begins
            ─────  ─────────────────  ──────────────
              260  pictures/rosa.jpg  ba7816bf8f01
              261  pictures/both.jpg  ba7816bf8f01
            Next: whether they still lie there: filial photos 22-001E
            """);
    assertThat(bench.json("photos", "Rosa").get("pictures").get(0).get("sha256").stringValue())
        .isEqualTo(OF_ABC);
    assertThat(bench.told("photos")).contains("pictures/rosa.jpg  there");
    assertThat(bench.told("photos", "Lilo")).startsWith("There is no picture yet.");
  }

  @Test
  void onePictureAttachedTwiceIsSaid() throws IOException {
    picture("rosa.jpg");
    bench.told("photo", "Rosa", "rosa.jpg");

    Outcome again = bench.type("photo", "Rosa", "rosa.jpg");

    assertThat(again.status()).isZero();
    assertThat(again.err().replaceAll("\\s+", " "))
        .contains("22-001E has that picture already, as rosa.jpg of entry 260");
    // Of another plant it is no repetition.
    bench.told("photo", "Lilo", "rosa.jpg");
  }

  @Test
  void severalThingsAreOnOnePicture() throws IOException {
    picture("both.jpg");
    bench.told("photo", "Rosa", "both.jpg", "--also", "Lilo", "--remark", "side by side");

    assertThat(bench.told("photos", "Lilo")).contains("22-001E, 22-006M").contains("side by side");
  }

  @Test
  void registerAndPicturesMoveTogetherAndOthersAreNamedInFull() throws IOException {
    picture("pictures/rosa.jpg");
    Path elsewhere = Files.writeString(outer.resolve("lilo.jpg"), "abc");
    bench.told("photo", "Rosa", "pictures/rosa.jpg");
    bench.told("photo", "Lilo", elsewhere.toString());

    Path moved = Files.move(folder, outer.resolve("moved"));

    Outcome there = new CommandLineRun().in(moved).run("photos");
    assertThat(there.status()).isZero();
    assertThat(there.out()).contains("pictures/rosa.jpg");
    assertThat(new CommandLineRun().in(moved).run("photos", "--json").out())
        .contains(elsewhere.toString());
  }

  @Test
  void whatIsMissingOrChangedIsReported() throws IOException {
    picture("rosa.jpg");
    picture("lilo.jpg");
    picture("dir.jpg");
    bench.told("photo", "Rosa", "rosa.jpg", "lilo.jpg", "dir.jpg");
    Files.delete(folder.resolve("rosa.jpg"));
    Files.writeString(folder.resolve("lilo.jpg"), "abd");
    Files.delete(folder.resolve("dir.jpg"));
    Files.createDirectory(folder.resolve("dir.jpg"));

    Outcome outcome = bench.type("photos");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out())
        .containsPattern("rosa.jpg +MISSING")
        .containsPattern("lilo.jpg +CHANGED")
        .containsPattern("dir.jpg +NOT TO BE READ")
        .contains("ENTRY photograph.path=PATH");

    picture("found.jpg");
    bench.told("amend", "260", "photograph.path=found.jpg", "--why", "moved");
    assertThat(bench.type("photos").out()).containsPattern("found.jpg +there");
  }

  @Test
  void namesWithSpacesQuotesAndSigns() throws IOException {
    String name = "O'Hara \"red\" <1> 🌵 ä.jpg";
    picture(name);
    bench.told("photo", "Rosa", name);

    assertThat(bench.json("photos").get("pictures").get(0).get("path").stringValue())
        .isEqualTo(name);
    assertThat(bench.json("photos").get("pictures").get(0).get("state").stringValue())
        .isEqualTo("there");
  }

  @Test
  void whatIsNoPictureIsRefusedAndNothingWritten() throws IOException {
    picture("rosa.jpg");
    assertThat(bench.refused(3, "photo", "Rosa", "rosa.jpg", "nothing.jpg"))
        .contains("there is no file or folder");
    assertThat(bench.refused(3, "photo", "Rosa", "pictures"))
        .contains("is a folder, not a picture");
    assertThat(bench.refused(1, "photo", "Nobody", "rosa.jpg")).contains("nothing here is called");
    assertThat(bench.refused(2, "photo", "Rosa")).contains("FILE is missing");
    assertThat(bench.told("photos")).startsWith("There is no picture yet.");
  }

  /** A register of somebody else's may name any file; one that climbs out is not even opened. */
  @Test
  void aPathThatClimbsOutOfTheFolderIsNotFollowed() throws IOException {
    Files.writeString(outer.resolve("secret"), "abc");
    try (var store = SqliteStore.open(folder.resolve("filial.register"))) {
      var unused =
          store.write(
              "Klara",
              CommandLineRun.NOW,
              book ->
                  book.append(
                      new Photographed(
                          List.of(Code.parse("22-001")),
                          new Photograph("pictures/../../secret", OF_ABC),
                          null,
                          null)));
    }

    Outcome outcome = bench.type("photos");

    assertThat(outcome.status()).isEqualTo(1);
    assertThat(outcome.out().replaceAll("\\s+", " ")).contains("OUTSIDE");
  }

  @Test
  void aLargePictureIsReadInPieces() throws IOException {
    Path film = folder.resolve("film.mp4");
    try (var file = new java.io.RandomAccessFile(film.toFile(), "rw")) {
      file.setLength(200_000_000);
    }
    long before = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    bench.told("photo", "Rosa", "film.mp4");
    long after = Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();

    assertThat(after - before).isLessThan(150_000_000);
    assertThat(bench.told("photos")).contains("there");
  }

  @Test
  void aBatchAttachesPicturesAndNamesTheLineThatCannot() throws IOException {
    picture("rosa.jpg");
    Files.writeString(folder.resolve("a.txt"), "photo Rosa rosa.jpg\nphoto Rosa none.jpg\n");

    assertThat(bench.refused(1, "batch", "a.txt")).contains("Line 2: there is no file or folder");
  }
}
