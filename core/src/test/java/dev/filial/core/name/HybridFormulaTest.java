package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HybridFormulaTest {

  private static HybridFormula formula(String... names) {
    return HybridFormula.of(Arrays.stream(names).map(TaxonName::parse).toList());
  }

  /** The examples of the International Code of Nomenclature (Shenzhen), Art. H.2. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Agrostis stolonifera L. × Polypogon monspeliensis (L.) Desf.",
        "Salix aurita L. × S. caprea L.",
        "Mentha aquatica L. × M. arvensis L. × M. spicata L.",
        "Polypodium vulgare subsp. prionodes (Asch.) Rothm. × P. vulgare L. subsp. vulgare"
      })
  void theCodesOwnExamplesAreReadAndWritten(String text) {
    assertThat(HybridFormula.parse(text).text()).isEqualTo(text);
  }

  @Test
  void theFirstExampleComesFromItsFullNames() {
    // ICN Art. H.2.
    assertThat(formula("Salix aurita L.", "Salix caprea L.").text())
        .isEqualTo("Salix aurita L. × S. caprea L.");
  }

  @Test
  void aSecondEpithetWithoutGenusIsRefused() {
    // ICN Art. H.2 rejects Kunzea linearis ... × robusta ...
    NameException error =
        catchThrowableOfType(
            NameException.class, () -> HybridFormula.parse("Kunzea linearis × robusta"));
    assertThat(error.column()).isEqualTo(19);
    assertThat(error).hasMessageContaining("Write K. robusta").hasMessageContaining("Art. H.2");
  }

  @Test
  void theGenusIsSpelledOutWhenAnotherSharesItsInitial() {
    assertThat(
            formula("Graptopetalum amethystinum", "Greenovia aurea", "Graptopetalum superbum")
                .text())
        .isEqualTo("Graptopetalum amethystinum × Greenovia aurea × Graptopetalum superbum");
    assertThat(formula("Echeveria laui", "Pachyphytum oviferum", "Echeveria alba").text())
        .isEqualTo("Echeveria laui × Pachyphytum oviferum × E. alba");
    assertThat(formula("Echeveria", "Echeveria laui").text()).isEqualTo("Echeveria × E. laui");
    assertThat(formula("Echeveria laui", "Echeveria").text())
        .isEqualTo("Echeveria laui × Echeveria");
  }

  @Test
  void orderAndSexSignsAreWrittenOnRequest() {
    // ICN Rec. H.2A: alphabetical order, or sexual symbols, or the seed parent first and said so.
    HybridFormula formula = formula("Echeveria laui Moran & Meyrán", "Echeveria agavoides Lem.");
    FormulaStyle bare = FormulaStyle.PLAIN.withoutAuthors();
    assertThat(formula.text(bare)).isEqualTo("Echeveria laui × E. agavoides");
    assertThat(formula.text(bare.inAlphabeticalOrder())).isEqualTo("Echeveria agavoides × E. laui");
    assertThat(formula.text(bare.withSexSigns())).isEqualTo("Echeveria laui ♀ × E. agavoides ♂");
    assertThat(formula.text(bare.withSexSigns().inAlphabeticalOrder()))
        .isEqualTo("Echeveria agavoides ♂ × E. laui ♀");
    assertThat(formula.text(bare.withSexSigns().inAscii()))
        .isEqualTo("Echeveria laui (seed) x E. agavoides (pollen)");
    assertThat(formula.text(FormulaStyle.PLAIN.inAscii()))
        .isEqualTo("Echeveria laui Moran & Meyran x E. agavoides Lem.");
  }

  /** A doubt and quotes are no letters. */
  @Test
  void theAlphabetPassesOverDoubtsAndQuotes() {
    FormulaStyle ordered = FormulaStyle.PLAIN.inAlphabeticalOrder();
    assertThat(formula("Echeveria cf. elegans", "Echeveria derenbergii").text(ordered))
        .isEqualTo("Echeveria derenbergii × E. cf. elegans");
    assertThat(formula("Echeveria 'Lola'", "Echeveria laui").text(ordered))
        .isEqualTo("Echeveria laui × E. 'Lola'");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Echeveria laui ♀ × E. agavoides ♂",
        "♀ Echeveria laui × E. agavoides",
        "Echeveria agavoides ♂ × E. laui ♀",
        "Echeveria agavoides × E. laui ♀",
        "Echeveria agavoides ♂ x Echeveria laui",
        "Echeveria laui (seed) x E. agavoides (pollen)",
        "Echeveria laui × E. agavoides"
      })
  void theSeedParentIsPutFirst(String text) {
    assertThat(HybridFormula.parse(text))
        .isEqualTo(formula("Echeveria laui", "Echeveria agavoides"));
  }

  @Test
  void hybridNamesAndCultivarsMayBeParents() {
    HybridFormula formula =
        HybridFormula.parse("× Graptoveria 'Blue' x Salix x capreola x ×G. alba");
    assertThat(formula)
        .isEqualTo(formula("×Graptoveria 'Blue'", "Salix ×capreola", "×Graptoveria alba"));
    assertThat(formula.text(FormulaStyle.PLAIN.inAscii()))
        .isEqualTo("x Graptoveria 'Blue' x Salix x capreola x x G. alba");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          Echeveria laui                        | 15 | one name only
          Echeveria laui ×                      | 17 | a name is missing
          × laui                                |  3 | a name begins with its genus
          Echeveria laui × A. alba              | 18 | no genus before this begins with A
          Echeveria laui × (E. alba × E. minor) | 18 | pedigree notation
          Echeveria laui ♀ × E. alba ♀          | 28 | same sign
          Echeveria laui ♀ ♂ × E. alba          | 18 | the second of it
          Echeveria laui ♀ × E. alba × E. minor | 16 | Leave them out
          Graptopetalum a-b × Greenovia a-b × G. a-b | 37 | Graptopetalum or Greenovia
          """)
  void whatIsNoFormulaIsToldWhereAndWhatToWrite(String text, int column, String remedy) {
    assertThatThrownBy(() -> HybridFormula.parse(text))
        .isInstanceOf(NameException.class)
        .hasMessageStartingWith("column " + column)
        .hasMessageContaining(remedy);
  }

  @Test
  void whatCannotBeWrittenIsRefused() {
    assertThatThrownBy(() -> formula("Echeveria laui")).hasMessageContaining("two names or more");
    assertThatThrownBy(
            () ->
                formula("Echeveria laui", "Echeveria alba", "Echeveria minor")
                    .text(FormulaStyle.PLAIN.withSexSigns()))
        .hasMessageContaining("leave ♀ and ♂ out");
  }

  @Property
  void aFormulaWrittenOutIsReadBack(@ForAll("formulas") HybridFormula formula) {
    assertThat(HybridFormula.parse(formula.text())).isEqualTo(formula);
  }

  @Property
  void signsSurviveTheAlphabet(@ForAll("pairs") List<TaxonName> pair) {
    HybridFormula formula = HybridFormula.of(pair);
    String text = formula.text(FormulaStyle.PLAIN.withSexSigns().inAlphabeticalOrder());
    assertThat(HybridFormula.parse(text)).isEqualTo(formula);
  }

  @Provide
  static Arbitrary<HybridFormula> formulas() {
    return TaxonNameTest.names().list().ofMinSize(2).ofMaxSize(4).map(HybridFormula::of);
  }

  @Provide
  static Arbitrary<List<TaxonName>> pairs() {
    return TaxonNameTest.names().list().ofSize(2);
  }
}
