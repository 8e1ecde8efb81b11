package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.AncestryQuestion;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.CardQuestion;
import dev.filial.core.answer.CardQuestion.Card;
import dev.filial.core.answer.Describing;
import dev.filial.core.answer.PlantsBehindQuestion;
import dev.filial.core.answer.PlantsBehindQuestion.Parent;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.answer.SpreadQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
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
   * @param frame whose register it is of, where other pages lie, and photographs
   */
  public record Content(
      Card card, Ancestry ancestry, PlantsBehind behind, List<Came> came, PageFrame frame) {

    /**
     * Of one plant, without photographs.
     *
     * @param code its code
     * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
     * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
     */
    public static Content in(RegisterView view, Code code, PageLinks links) {
      Card card = CardQuestion.of(view).ask(code);
      List<Code> codes = new ArrayList<>(card.under());
      codes.addAll(card.parentOf());
      List<Came> came = new ArrayList<>();
      for (Code one : codes) {
        view.item(one).ifPresent(item -> came.add(new Came(one.text(), Describing.of(view, item))));
      }
      return new Content(
          card,
          AncestryQuestion.of(view).withSpread(SpreadQuestion.usual()).ask(card.code()),
          PlantsBehindQuestion.of(view).ask(card.code()),
          came,
          PageFrame.of(view, links));
    }

    /** The same with these photographs; null for none. */
    public Content withPhotos(@Nullable List<PagePhoto> shown) {
      return new Content(card, ancestry, behind, came, frame.withPhotos(shown));
    }
  }

  private final Content content;
  private final PageWriter page;
  private final Markup html;

  private PlantPage(Content content) {
    this.content = content;
    this.page =
        new PageWriter(
            title(content.card()),
            content.frame().links(),
            PedigreeDrawing.names(content.behind(), content.card().what()));
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
    PhotosSection.write(page, content.frame().photos());
    RecordedSection.write(page, content.card().history());
    CameSection.write(page, content.came());
    html.close().line();
    return page.end(content.frame().grower(), content.frame().entries());
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
    html.close().open("p", "class", "lead");
    page.text(card.kind() + ", " + content.ancestry().generationInWords() + isNoMore(card));
    html.close().close().line();
  }

  /** First of all whoever looks wants to know that it is gone. */
  private static String isNoMore(Card card) {
    return card.until() == null ? "" : "; " + card.fate() + " on " + card.until();
  }

  // --- what it is ---

  private void facts() {
    Card card = content.card();
    page.section("what", "What it is");
    html.open("dl");
    page.fact("taxon or parents", card.what());
    comesOf();
    page.fact("seed-parent line", content.ancestry().cytoplasm().replace("<-", "←"));
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
    page.fact(card.until() == null ? "place" : "last place", card.place());
    page.fact("what became of it", card.fate());
    html.close().line().close().line();
  }

  /** The pages of the cross or packet it came of, and of its parents, where they lie beside. */
  private void comesOf() {
    Set<String> codes = new LinkedHashSet<>();
    codes.add(content.card().code().whole().text());
    for (Parent parent : content.behind().parents()) {
      if (parent.offspring().equals(content.behind().name()) && parent.parent() != null) {
        codes.add(parent.parent());
      }
    }
    codes.removeIf(code -> !page.leadsTo(code));
    if (codes.isEmpty()) {
      return;
    }
    html.element("dt", "comes of").open("dd");
    for (String code : codes) {
      page.code(code);
      html.text(" ");
    }
    html.close().line();
  }
}
