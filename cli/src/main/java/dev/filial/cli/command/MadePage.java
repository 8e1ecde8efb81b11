package dev.filial.cli.command;

import dev.filial.cli.page.CrossPage;
import dev.filial.cli.page.PageLinks;
import dev.filial.cli.page.PagePhoto;
import dev.filial.cli.page.PlantPage;
import dev.filial.core.answer.FamilyQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.RegisterView;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The page of a plant, or of a cross or packet, and what is said of it.
 *
 * @param code whose page it is
 * @param text the page
 * @param plants how many plants stand in the drawing on it
 * @param entries how many entries it tells
 * @param notes doubts it leans on
 */
record MadePage(Code code, String text, int plants, int entries, List<String> notes) {

  /** Finds the photographs of some things. */
  @FunctionalInterface
  interface Photos {
    /** Those of them; null if the page is to have none. */
    @Nullable List<PagePhoto> of(RegisterView view, List<Code> codes);
  }

  /** Whose page tells of a thing: a seed lot's, a sowing's or a pot's is that of its cross. */
  static Code codeOf(RegisterView view, Code thing) {
    return FamilyQuestion.of(view).family(thing).orElse(thing);
  }

  /**
   * Makes it.
   *
   * @param code a code that {@link #codeOf} gave
   * @throws dev.filial.core.pedigree.PedigreeException if the pedigree cannot be computed with
   */
  static MadePage of(RegisterView view, Code code, PageLinks links, Photos photos) {
    if (FamilyQuestion.of(view).family(code).isPresent()) {
      CrossPage.Content content = CrossPage.Content.in(view, code, links);
      content = content.withPhotos(photos.of(view, content.family().recorded()));
      return new MadePage(
          content.family().code(),
          CrossPage.of(content),
          content.behind().plants().size(),
          content.family().history().size(),
          content.ancestry().notes());
    }
    PlantPage.Content content = PlantPage.Content.in(view, code, links);
    content = content.withPhotos(photos.of(view, List.of(content.card().code())));
    return new MadePage(
        content.card().code(),
        PlantPage.of(content),
        content.behind().plants().size(),
        content.card().history().size(),
        content.ancestry().notes());
  }
}
