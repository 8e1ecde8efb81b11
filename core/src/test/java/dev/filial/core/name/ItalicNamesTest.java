package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.ItalicNames.Run;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** Which words of a text are set in italics; here they stand between stars. */
class ItalicNamesTest {

  private static final ItalicNames ECHEVERIA =
      ItalicNames.of(
          List.of(
              "Echeveria laui",
              "Echeveria agavoides",
              "Echeveria pulidonis E.Walther subsp. longa (Asch.) Rothm.",
              "Echeveria ×gilva",
              "×Graptoveria",
              "Dudleya"));

  private static String set(ItalicNames names, String text) {
    return names.runs(text).stream()
        .map(run -> run.italic() ? "*" + run.text() + "*" : run.text())
        .collect(Collectors.joining());
  }

  private static String set(String text) {
    return set(ECHEVERIA, text);
  }

  @Test
  void genusAndEpithetAreItalicInWhateverSentence() {
    assertThat(set("Echeveria laui")).isEqualTo("*Echeveria laui*");
    assertThat(set("BC1 to Echeveria laui, the other being Echeveria agavoides; again"))
        .isEqualTo("BC1 to *Echeveria laui*, the other being *Echeveria agavoides*; again");
    assertThat(set("pure Dudleya")).isEqualTo("pure *Dudleya*");
  }

  @Test
  void signsRanksDoubtsAndAuthorsAreNot() {
    assertThat(set("Echeveria laui × Echeveria agavoides"))
        .isEqualTo("*Echeveria laui* × *Echeveria agavoides*");
    assertThat(set("Echeveria ×gilva and ×Graptoveria"))
        .isEqualTo("*Echeveria* ×*gilva* and ×*Graptoveria*");
    assertThat(set("Echeveria cf. pulidonis E.Walther subsp. longa (Asch.) Rothm."))
        .isEqualTo("*Echeveria* cf. *pulidonis* E.Walther subsp. *longa* (Asch.) Rothm.");
    assertThat(set("Echeveria sp. Oaxaca")).isEqualTo("*Echeveria* sp. Oaxaca");
  }

  @Test
  void aCultivarInItsQuotesIsNot() {
    assertThat(set("Echeveria agavoides 'Echeveria laui'"))
        .isEqualTo("*Echeveria agavoides* 'Echeveria laui'");
    assertThat(set("Echeveria ‘laui’")).isEqualTo("*Echeveria* ‘laui’");
    assertThat(set("Klara's Echeveria laui")).isEqualTo("Klara's *Echeveria laui*");
  }

  @Test
  void aShortenedGenusIsOneOnlyBeforeAnEpithet() {
    assertThat(set("E. laui (cf.)")).isEqualTo("*E. laui* (cf.)");
    assertThat(set("E. Beispiel wrote it")).isEqualTo("E. Beispiel wrote it");
    assertThat(set("E. aff. laui")).isEqualTo("*E.* aff. *laui*");
    assertThat(set("X. laui")).isEqualTo("X. laui");
  }

  @Test
  void anEpithetAloneIsItalicOnlyWhereTagsAreWritten() {
    assertThat(set("agavoides × laui")).isEqualTo("agavoides × laui");
    assertThat(set(ECHEVERIA.alsoEpithetsAlone(), "agavoides × laui  4 MAR 26"))
        .isEqualTo("*agavoides* × *laui*  4 MAR 26");
    assertThat(set(ECHEVERIA.alsoEpithetsAlone(), "22-009R-1 × Rosa"))
        .isEqualTo("22-009R-1 × Rosa");
  }

  @Test
  void aNameThatHadToBeCutIsItalicToItsDots() {
    assertThat(set("Echeveria pulidonis subsp. lo…"))
        .isEqualTo("*Echeveria pulidonis* subsp. *lo*…");
    assertThat(set("Echeveria aga…")).isEqualTo("*Echeveria aga*…");
  }

  @Test
  void whatStandsBehindANameIsPassedOver() {
    ItalicNames names = ItalicNames.of(List.of("Echeveria laui XM 014", "22-001E × 22-003J", ""));

    assertThat(set(names, "Echeveria laui XM 014")).isEqualTo("*Echeveria laui* XM 014");
    assertThat(set(ItalicNames.of(List.of("offset of 22-001E")), "offset of 22-001E"))
        .isEqualTo("offset of 22-001E");
  }

  @Property
  void thePiecesAreTheText(@ForAll String text) {
    String mixed = "E. laui " + text + " Echeveria cf. " + text + "laui 'Name" + text;

    assertThat(ECHEVERIA.alsoEpithetsAlone().runs(mixed).stream().map(Run::text))
        .satisfies(runs -> assertThat(String.join("", runs)).isEqualTo(mixed));
    assertThat(ItalicNames.NONE.runs(text).stream().map(Run::text))
        .satisfies(runs -> assertThat(String.join("", runs)).isEqualTo(text));
  }
}
