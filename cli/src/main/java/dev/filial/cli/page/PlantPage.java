package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.CardQuestion.Card;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.register.Provenance;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All of one plant on one page of HTML: a single file that asks for nothing else, on light and on
 * dark, on a telephone and on paper.
 */
public final class PlantPage {

  /**
   * What came of the plant.
   *
   * @param code its code
   * @param what its taxon or its parents
   */
  public record Came(String code, String what) {}

  /**
   * What the page tells.
   *
   * @param card what the register says of the plant
   * @param ancestry who is in it
   * @param behind the plants behind it
   * @param came what came of it
   * @param grower whose register it is
   * @param entries how many entries the register had
   * @param links where other pages lie
   * @param photos the photographs of it; null if the page is to have none
   */
  public record Content(
      Card card,
      Ancestry ancestry,
      PlantsBehind behind,
      List<Came> came,
      String grower,
      long entries,
      PageLinks links,
      @Nullable List<PagePhoto> photos) {}

  private final Content content;
  private final PageWriter page;
  private final Markup html;

  private PlantPage(Content content) {
    this.content = content;
    this.page = new PageWriter(title(content.card()), content.links());
    this.html = page.html();
  }

  /** The page as the text of a file. */
  public static String of(Content content) {
    return new PlantPage(content).write();
  }

  private String write() {
    header();
    html.open("main").line();
    facts();
    new WhoSection(page, content.ancestry(), new Palette(content.behind().taxa())).write();
    PedigreeSection.write(page, content.behind());
    PhotosSection.write(page, content.photos());
    RecordedSection.write(page, content.card().history());
    CameSection.write(page, content.came());
    html.close().line();
    return page.end(content.grower(), content.entries());
  }

  private static String title(Card card) {
    return (card.code().text() + " " + String.join(", ", card.names())).strip();
  }

  private void header() {
    Card card = content.card();
    html.open("header").open("h1").element("span", card.code().text(), "class", "code");
    for (String name : card.names()) {
      html.text(" ").element("bdi", name);
    }
    html.close()
        .element("p", card.kind() + ", " + content.ancestry().generationInWords(), "class", "lead")
        .close()
        .line();
  }

  // --- what it is ---

  private void facts() {
    Card card = content.card();
    page.section("what", "What it is");
    html.open("dl");
    page.fact("taxon or parents", card.what());
    page.fact("seed-parent line", content.ancestry().cytoplasm());
    int sets = content.ancestry().ploidy();
    page.fact(
        "chromosome sets",
        sets == 0 ? "differ between the ways it may have come about" : "" + sets);
    Provenance from = card.provenance();
    if (from != null) {
      page.fact("from", from.donor());
      page.fact("its code there", from.donorCode());
      page.fact("field number", from.fieldNumber());
      page.fact("locality", from.locality());
    }
    page.fact("since", card.since());
    page.fact("until", card.until());
    page.fact("how many", card.count());
    page.fact("place", card.place());
    page.fact("what became of it", card.fate());
    html.close().line().close().line();
  }
}
