package dev.filial.cli.page;

import dev.filial.cli.paper.Markup;
import dev.filial.core.answer.AncestryQuestion;
import dev.filial.core.answer.AncestryQuestion.Ancestry;
import dev.filial.core.answer.Describing;
import dev.filial.core.answer.FamilyOddsQuestion;
import dev.filial.core.answer.FamilyOddsQuestion.FamilyOdds;
import dev.filial.core.answer.FamilyQuestion;
import dev.filial.core.answer.FamilyQuestion.Family;
import dev.filial.core.answer.FamilyTalliesQuestion;
import dev.filial.core.answer.FamilyTalliesQuestion.Tally;
import dev.filial.core.answer.GerminationQuestion;
import dev.filial.core.answer.GerminationQuestion.Germination;
import dev.filial.core.answer.PlantsBehindQuestion;
import dev.filial.core.answer.PlantsBehindQuestion.PlantsBehind;
import dev.filial.core.answer.SpreadQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All of one cross on one page of HTML, or of a packet of seed: how it was made, what it may throw,
 * what was counted, how it came up, and what was raised from it. A single file that asks for
 * nothing else.
 */
public final class CrossPage {

  /**
   * What the page tells.
   *
   * @param family what the register says of the family
   * @param ancestry who is in a seedling of it
   * @param behind the plants behind it
   * @param odds what it is expected to throw
   * @param tallies what was counted in it
   * @param germination how its sowings came up; null if none is recorded
   * @param came what came of it
   * @param frame whose register it is of, where other pages lie, and photographs
   */
  public record Content(
      Family family,
      Ancestry ancestry,
      PlantsBehind behind,
      FamilyOdds odds,
      List<Tally> tallies,
      @Nullable Germination germination,
      List<PlantPage.Came> came,
      PageFrame frame) {

    /**
     * Of one family.
     *
     * @param code a cross or packet, or a seed lot, a sowing or a pot of one
     * @throws dev.filial.core.register.RegisterRefusal if the register has no such code, or it is a
     *     single plant
     */
    public static Content in(RegisterView view, Code code, PageLinks links) {
      Family family = FamilyQuestion.of(view).ask(code);
      FamilyOdds odds = FamilyOddsQuestion.of(view).ask(family.code());
      List<PlantPage.Came> came = new ArrayList<>();
      for (Code one : family.raised()) {
        view.item(one)
            .ifPresent(item -> came.add(new PlantPage.Came(one.text(), Describing.of(view, item))));
      }
      return new Content(
          family,
          AncestryQuestion.of(view).withSpread(SpreadQuestion.usual()).ask(family.code()),
          PlantsBehindQuestion.of(view).ask(family.code()),
          odds,
          FamilyTalliesQuestion.of(view, odds).ask(family.code()),
          family.sowings().isEmpty()
              ? null
              : GerminationQuestion.of(view).about(family.code()).ask(),
          came,
          PageFrame.of(view, links));
    }

    /** The same with these photographs; null for none. */
    public Content withPhotos(@Nullable List<PagePhoto> shown) {
      return new Content(
          family, ancestry, behind, odds, tallies, germination, came, frame.withPhotos(shown));
    }
  }

  private CrossPage() {}

  /** The page as the text of a file. */
  public static String of(Content content) {
    Family family = content.family();
    PageWriter page =
        new PageWriter(
            title(family),
            content.frame().links(),
            PedigreeDrawing.names(content.behind(), family.what()));
    Markup html = page.html();
    html.open("header").open("h1").element("span", family.code().text(), "class", "code");
    for (String name : family.names()) {
      html.text(" ").element("bdi", name);
    }
    html.text(" ");
    page.words(family.what());
    html.close().open("p", "class", "lead");
    page.text(family.kind() + ", " + content.ancestry().generationInWords());
    html.close().close().line();
    html.open("main").line();
    FamilyFacts facts = new FamilyFacts(page, family, content.behind());
    facts.writeWhat(content.ancestry().cytoplasm(), content.ancestry().ploidy());
    new WhoSection(page, content.ancestry(), new Palette(content.behind().taxa())).write();
    PedigreeSection.write(page, content.behind());
    new OddsSection(page, content.odds()).write();
    facts.writeSeed();
    new GerminationSection(page, content.germination()).write();
    new TalliesSection(page, content.tallies(), up(content.germination())).write();
    SeedlingsSection.write(page, family.seedlings());
    CameSection.write(page, content.came());
    PhotosSection.write(page, content.frame().photos());
    RecordedSection.write(page, family.history());
    html.close().line();
    return page.end(content.frame().grower(), content.frame().entries());
  }

  private static int up(@Nullable Germination germination) {
    return germination == null || germination.all() == null ? 0 : germination.all().up();
  }

  private static String title(Family family) {
    return family.code().text() + " " + family.what();
  }
}
