package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.page.Camera;
import dev.filial.cli.paper.Parsed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The folder of pages that lead to each other. */
class PagesVerbTest {

  @TempDir Path folder;

  private DemoStory bench;

  @BeforeEach
  void theDemoBench() throws IOException {
    bench = new DemoStory(folder);
  }

  private Parsed page(String name) throws IOException {
    return Parsed.of(
        Files.readString(folder.resolve("site").resolve(name))
            .replaceFirst("<!DOCTYPE html>\n", ""));
  }

  private List<String> names(Path of) throws IOException {
    try (Stream<Path> files = Files.list(of)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static List<String> links(Parsed page) {
    return page.all("a").stream().map(one -> one.getAttribute("href")).toList();
  }

  @Test
  void everyLinkLeadsToAPageAndEveryPageIsLedTo() throws IOException {
    bench.told("pages", "site", "--all");

    List<String> names = names(folder.resolve("site"));
    TreeSet<String> led = new TreeSet<>(List.of("index.html"));
    for (String name : names) {
      List<String> links = links(page(name));
      assertThat(names).as(name).containsAll(links);
      assertThat(links).as(name).doesNotContain(name);
      assertThat(name.equals("index.html") || links.contains("index.html")).as(name).isTrue();
      if (name.equals("index.html")) {
        led.addAll(links);
      }
    }
    assertThat(led).containsExactlyElementsOf(names);
  }

  @Test
  void theIndexLeadsFromEachThingToItsPage() throws IOException {
    bench.told("pages", "site");

    Parsed index = page("index.html");

    List<Element> rows =
        index.all("table", "list").stream()
            .flatMap(table -> Parsed.under(table, "tr").stream())
            .skip(1)
            .toList();
    assertThat(rows).hasSize(bench.json("list").get("things").size());
    assertThat(rows).allMatch(row -> Parsed.under(row, "a").size() == 1);
    // A pot's page is that of the cross it is of.
    assertThat(
            index.all("a").stream()
                .filter(link -> link.getTextContent().equals("22-009R P1"))
                .map(link -> link.getAttribute("href")))
        .containsExactly("22-009R.html");
  }

  @Test
  void aPlantLeadsToItsCrossAndItsParents() throws IOException {
    bench.told("pages", "site");

    assertThat(links(page("24-010K-1.html")))
        .contains("24-010K.html", "22-009R-4.html", "22-010T-1.html", "26-008X.html");
    assertThat(links(page("24-010K.html"))).contains("22-009R-4.html", "24-010K-1.html");
  }

  @Test
  void thePlantsOfADrawingLeadToTheirPagesAndItsOwnDoesNot() throws IOException {
    bench.told("pages", "site");
    bench.told("draw", "24-010-1", "--to", "alone.svg");

    Element drawing = page("24-010K-1.html").all("svg", "fp").get(0);

    assertThat(Parsed.under(drawing, "a").stream().map(one -> one.getAttribute("href")))
        .contains("22-009R-4.html", "22-010T-1.html", "22-001E.html")
        .doesNotContain("24-010K-1.html");
    // What can be reached in it is no part of a picture.
    assertThat(drawing.getAttribute("role")).isEqualTo("group");
    assertThat(Files.readString(folder.resolve("alone.svg")))
        .contains("role=\"img\"")
        .doesNotContain("href");
  }

  /** One rosette under two tags has one page, whichever tag a cross was made by. */
  @Test
  void theOtherRecordOfAPlantLeadsToTheKeptOne() throws IOException {
    bench.type("plant", "Echeveria laui");
    bench.type("cross", "26-015J", "Lilo");
    bench.type("join", "22-001", "26-015", "--why", "one rosette under two tags");

    bench.told("pages", "site");

    assertThat(names(folder.resolve("site"))).doesNotContain("26-015J.html");
    assertThat(
            page("26-016K.html").all("a").stream()
                .filter(link -> link.getTextContent().equals("26-015J"))
                .map(link -> link.getAttribute("href")))
        .containsOnly("22-001E.html");
  }

  /** What a page says is the same as when it is written alone, less the links. */
  @Test
  void eachPageIsTheOneThatIsWrittenAlone() throws IOException {
    bench.told("pages", "site");
    bench.told("page", "22-009R", "--to", "alone.html");

    assertThat(headings(page("22-009R.html")))
        .isEqualTo(
            headings(
                Parsed.of(
                    Files.readString(folder.resolve("alone.html"))
                        .replaceFirst("<!DOCTYPE html>\n", ""))));
  }

  private static String headings(Parsed page) {
    return page.all("h2").stream().map(Element::getTextContent).collect(Collectors.joining(";"));
  }

  @Test
  void photographsGoAlongSmall() throws IOException {
    Camera.jpeg(folder.resolve("rosa.jpg"), 800, 600, 1);
    bench.told("photo", "Rosa", "rosa.jpg");

    bench.told("pages", "site", "--photos", "small");
    assertThat(page("22-001E.html").all("img")).hasSize(1);
    bench.told("pages", "linked", "--photos", "linked");
    assertThat(Files.readString(folder.resolve("linked/22-001E.html")))
        .contains("href=\"./../rosa.jpg\"");
  }

  @Test
  void anEmptyRegisterHasAPageToo() throws IOException {
    Files.delete(folder.resolve("filial.register"));
    bench.told("start", "KB", "--grower", "Klara");

    bench.told("pages", "site");

    assertThat(names(folder.resolve("site"))).containsExactly("index.html");
  }

  @Test
  void aFolderThatIsThereIsLeftAsItIs() throws IOException {
    Files.createDirectory(folder.resolve("site"));

    assertThat(bench.refused(3, "pages", "site")).contains("is there already");
    assertThat(names(folder.resolve("site"))).isEmpty();
    assertThat(bench.refused(3, "pages", "no/such/place")).contains("no/such");
    assertThat(names(folder)).containsExactly("filial.register", "site");
  }

  @Test
  void whereItCannotBeFinishedNothingIsLeft() throws IOException {
    // No page of 300 letters fits a file's name, so its page cannot be written.
    List<String> before = new ArrayList<>(names(folder));
    Files.writeString(folder.resolve("filial.register"), "damaged");

    assertThat(bench.type("pages", "site").status()).isEqualTo(3);

    assertThat(names(folder)).isEqualTo(before);
  }
}
