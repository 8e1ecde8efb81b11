package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.cli.page.Camera;
import dev.filial.cli.paper.Parsed;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;

/** The photographs of a plant on its page, where they are asked for. */
class PhotoPageTest {

  @TempDir Path outer;

  private Path folder;
  private DemoStory bench;

  @BeforeEach
  void theDemoBench() throws IOException {
    folder = Files.createDirectory(outer.resolve("bench"));
    bench = new DemoStory(folder);
  }

  private Parsed page(String... words) throws IOException {
    Path to = folder.resolve("pages").resolve("rosa.html");
    Files.createDirectories(to.getParent());
    Files.deleteIfExists(to);
    String[] all = new String[words.length + 4];
    all[0] = "page";
    all[1] = "Rosa";
    all[2] = "--to";
    all[3] = to.toString();
    System.arraycopy(words, 0, all, 4, words.length);
    bench.told(all);
    return Parsed.of(Files.readString(to).replaceFirst("<!DOCTYPE html>\n", ""));
  }

  private static List<String> texts(Parsed page) {
    return page.all("ul", "photos").stream()
        .flatMap(list -> Parsed.under(list, "li").stream())
        .map(Element::getTextContent)
        .toList();
  }

  @Test
  void nobodyWhoDoesNotAskHasThem() throws IOException {
    Camera.jpeg(folder.resolve("rosa.jpg"), 800, 600, 1);
    bench.told("photo", "Rosa", "rosa.jpg");

    Parsed page = page();

    assertThat(page.all("img")).isEmpty();
    assertThat(page.all("h2").stream().map(Element::getTextContent)).doesNotContain("Photographs");
  }

  @Test
  void smallTheyStandInThePageItself() throws IOException {
    Camera.jpeg(folder.resolve("rosa.jpg"), 800, 600, 1);
    bench.told("photo", "Rosa", "rosa.jpg", "--remark", "first <stalk>", "--date", "2025-05-03");

    Element picture = page("--photos", "small").all("img").get(0);

    assertThat(picture.getAttribute("src")).startsWith("data:image/jpeg;base64,");
    assertThat(picture.getAttribute("alt")).isEqualTo("Photograph of 22-001E");
    assertThat(picture.getAttribute("width")).isEqualTo("400");
    assertThat(picture.getAttribute("height")).isEqualTo("300");
    assertThat(((Element) picture.getParentNode()).getTextContent().strip())
        .isEqualTo("2025-05-03, first <stalk>");
  }

  @Test
  void linkedThePageLeadsToWhereTheyLie() throws IOException {
    String name = "O'Hara: 100% <1> 🌵 ä.jpg";
    Camera.jpeg(folder.resolve(name), 80, 60, 1);
    bench.told("photo", "Rosa", name);

    Parsed page = page("--photos", "linked");

    assertThat(page.all("img")).isEmpty();
    Element link = page.all("a").get(0);
    assertThat(link.getTextContent()).isEqualTo(name);
    // The link of the page, followed from where the page lies, is the file.
    assertThat(
            Path.of(folder.resolve("pages/rosa.html").toUri().resolve(link.getAttribute("href"))))
        .isEqualTo(folder.resolve(name));
  }

  @Test
  void whatIsNotShownIsSaid() throws IOException {
    for (String name : List.of("gone.jpg", "other.jpg", "text.jpg")) {
      Files.writeString(folder.resolve(name), "no picture");
    }
    bench.told("photo", "Rosa", "gone.jpg", "other.jpg", "text.jpg");
    Files.delete(folder.resolve("gone.jpg"));
    Files.writeString(folder.resolve("other.jpg"), "another");

    assertThat(texts(page("--photos", "small")))
        .containsExactly(
            "gone.jpg 2026-06-15 (it is not there)",
            "other.jpg 2026-06-15 (the file there is another than the one that was attached)",
            "text.jpg 2026-06-15 (it is of a kind or a size that cannot be made small here)");
    assertThat(texts(page("--photos", "linked")))
        .containsExactly(
            "gone.jpg 2026-06-15 (it is not there)",
            "other.jpg 2026-06-15 (the file there is another than the one that was attached)",
            "text.jpg 2026-06-15");
  }

  @Test
  void whereThereAreNoneThePageSaysSo() throws IOException {
    assertThat(page("--photos", "small").all("p").stream().map(Element::getTextContent).toList())
        .contains("None is attached.");
  }

  @Test
  void anotherWordIsRefused() {
    assertThat(bench.refused(2, "page", "Rosa", "--photos", "large"))
        .contains("\"large\" is none of small, linked");
  }
}
