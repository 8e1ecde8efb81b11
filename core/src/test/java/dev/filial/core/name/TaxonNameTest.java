package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TaxonNameTest {

  @Test
  void anInfraspecificNameKeepsItsAuthorsApart() {
    // ICN Art. H.2, in an example formula.
    TaxonName name = TaxonName.parse("Polypodium vulgare subsp. prionodes (Asch.) Rothm.");
    assertThat(name.genus()).isEqualTo("Polypodium");
    assertThat(name.rank()).isEqualTo(Rank.SUBSPECIES);
    assertThat(name.epithets())
        .containsExactly(
            new TaxonName.Epithet(Rank.SPECIES, false, "vulgare", ""),
            new TaxonName.Epithet(Rank.SUBSPECIES, false, "prionodes", "(Asch.) Rothm."));
    assertThat(name.species().map(TaxonName::text)).contains("Polypodium vulgare");
    assertThat(name.withoutAuthors().text()).isEqualTo("Polypodium vulgare subsp. prionodes");
    assertThat(name.abbreviated()).isEqualTo("P. vulgare subsp. prionodes");
    assertThat(name.shortName()).isEqualTo("prionodes");
  }

  @Test
  void anAutonymHasTheAuthorBehindTheSpecies() {
    // ICN Art. H.2: the second name of the same example.
    TaxonName name = TaxonName.parse("Polypodium vulgare L. subsp. vulgare");
    assertThat(name.epithets()).extracting(TaxonName.Epithet::author).containsExactly("L.", "");
    assertThat(name.species().map(TaxonName::text)).contains("Polypodium vulgare L.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Salix ×capreola", "Salix × capreola", "Salix x capreola"})
  void theHybridSignMayStandApartFromTheEpithet(String text) {
    // ICN Art. H.3.
    TaxonName name = TaxonName.parse(text);
    assertThat(name.isHybridName()).isTrue();
    assertThat(name.rank()).isEqualTo(Rank.SPECIES);
    assertThat(name.text()).isEqualTo("Salix ×capreola");
    assertThat(name.asciiText()).isEqualTo("Salix x capreola");
    assertThat(name.shortName()).isEqualTo("×capreola");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "×Agropogon littoralis",
        "× Agropogon littoralis",
        "x Agropogon littoralis",
        "xAgropogon littoralis"
      })
  void theHybridSignMayStandApartFromTheGenus(String text) {
    // ICN Art. H.3.
    TaxonName name = TaxonName.parse(text);
    assertThat(name.hybridGenus()).isTrue();
    assertThat(name.isHybridName()).isTrue();
    assertThat(name.text()).isEqualTo("×Agropogon littoralis");
    assertThat(name.abbreviated()).isEqualTo("×A. littoralis");
    assertThat(name.asciiText()).isEqualTo("x Agropogon littoralis");
  }

  @Test
  void aNothosubspeciesIsAHybridBelowTheSpecies() {
    TaxonName name = TaxonName.parse("Mentha ×piperita L. nothosubsp. pyramidalis (Ten.) Harley");
    assertThat(name.rank()).isEqualTo(Rank.SUBSPECIES);
    assertThat(name.epithets().get(1).hybrid()).isTrue();
    assertThat(name.text()).isEqualTo("Mentha ×piperita L. nothosubsp. pyramidalis (Ten.) Harley");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          Echeveria agavoides ssp. alba          | Echeveria agavoides subsp. alba
          Echeveria agavoides subspecies alba    | Echeveria agavoides subsp. alba
          Echeveria agavoides var alba           | Echeveria agavoides var. alba
          Echeveria agavoides forma alba         | Echeveria agavoides f. alba
          Echeveria agavoides fo. alba           | Echeveria agavoides f. alba
          Echeveria  agavoides   Lem.            | Echeveria agavoides Lem.
          Echeveria agavoides ‘Red Edge’         | Echeveria agavoides 'Red Edge'
          Echeveria 'Red Edge'                   | Echeveria 'Red Edge'
          Echeveria 'Dick's Pink'                | Echeveria 'Dick's Pink'
          Rosa canina L. f. alba                 | Rosa canina L. f. alba
          Aloe vera (L.) Burm.f.                 | Aloe vera (L.) Burm.f.
          Rosa alba Hook. f. ex Lem. f. rubra    | Rosa alba Hook. f. ex Lem. f. rubra
          Echeveria DC.                          | Echeveria DC.
          Echeveria laui Moran & Meyrán          | Echeveria laui Moran & Meyrán
          Echeveria sp.                          | Echeveria sp.
          Echeveria sp Oaxaca                    | Echeveria sp. Oaxaca
          Echeveria cf agavoides                 | Echeveria cf. agavoides
          Echeveria sp. aff. agavoides           | Echeveria aff. agavoides
          Echeveria agavoides var. cf. alba      | Echeveria agavoides cf. var. alba
          Echeveria agavoides cf. 'Red Edge'     | Echeveria agavoides cf. 'Red Edge'
          Echeveria cf. 'Red Edge'               | Echeveria cf. 'Red Edge'
          """)
  void aNameIsReadHoweverItIsSpelled(String text, String written) {
    TaxonName name = TaxonName.parse(text);
    assertThat(name.text()).isEqualTo(written);
    assertThat(TaxonName.parse(written)).isEqualTo(name);
  }

  @Test
  void filiusIsNotAForm() {
    assertThat(TaxonName.parse("Rosa alba Hook. f.").rank()).isEqualTo(Rank.SPECIES);
    assertThat(TaxonName.parse("Rosa alba Hook. f. f. rubra").epithets())
        .extracting(TaxonName.Epithet::author)
        .containsExactly("Hook. f.", "");
  }

  @Test
  void authorsSpacesAndHybridSignsDoNotTellNamesApart() {
    String key = TaxonName.parse("Salix ×capreola").key();
    assertThat(TaxonName.parse("Salix x capreola J.Kern. ex Andersson").key()).isEqualTo(key);
    assertThat(TaxonName.parse("Salix capreola").key()).isEqualTo(key);
    assertThat(TaxonName.parse("Isoëtes lacustris").key())
        .isEqualTo(TaxonName.parse("Isoetes lacustris L.").key());
  }

  @Test
  void theClassificationBelowTheSpeciesIsNotPartOfTheName() {
    // ICN Art. 24.1, its example (from memory).
    TaxonName full =
        TaxonName.parse(
            "Saxifraga aizoon var. aizoon subvar. brevifolia f. multicaulis subf. surculosa Engl. &"
                + " Irmsch.");
    assertThat(full.isSameNameAs(TaxonName.parse("Saxifraga aizoon subf. surculosa"))).isTrue();
    assertThat(full.isSameNameAs(TaxonName.parse("Saxifraga aizoon f. surculosa"))).isFalse();
  }

  @Test
  void whatIsAkinToASpeciesIsNotThatSpecies() {
    TaxonName akin = TaxonName.parse("Echeveria aff. agavoides");
    TaxonName species = TaxonName.parse("Echeveria agavoides");
    assertThat(akin.qualifier()).contains(Qualifier.AFF);
    assertThat(akin.isSameNameAs(species)).isFalse();
    assertThat(akin.unqualified()).isEqualTo(species);
    assertThat(akin.shortName()).isEqualTo("aff. agavoides");
    assertThat(akin.species()).contains(akin);
  }

  @Test
  void undeterminedSpeciesAreToldApartByWhatFollows() {
    TaxonName one = TaxonName.parse("Echeveria sp. Oaxaca");
    assertThat(one.isUndetermined()).isTrue();
    assertThat(one.rank()).isEqualTo(Rank.SPECIES);
    assertThat(one.species()).isEmpty();
    assertThat(one.shortName()).isEqualTo("sp. Oaxaca");
    assertThat(one.isSameNameAs(TaxonName.parse("Echeveria sp."))).isFalse();
  }

  @Test
  void aCultivarKnowsItsSpeciesIfItWasGiven() {
    TaxonName cultivar = TaxonName.parse("Echeveria agavoides 'Red Edge'");
    assertThat(cultivar.rank()).isEqualTo(Rank.CULTIVAR);
    assertThat(cultivar.shortName()).isEqualTo("'Red Edge'");
    assertThat(cultivar.abbreviated()).isEqualTo("E. agavoides 'Red Edge'");
    assertThat(cultivar.species()).contains(TaxonName.ofSpecies("Echeveria", "agavoides"));
    assertThat(TaxonName.parse("Echeveria 'Red Edge'").species()).isEmpty();
    assertThat(TaxonName.parse("Echeveria").abbreviated()).isEqualTo("Echeveria");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          ""                            |  1 | a name is missing
          echeveria agavoides           |  1 | Write Echeveria
          E. agavoides                  |  1 | genus in full
          'Red Edge'                    |  1 | a genus belongs before the cultivar
          cf. Echeveria agavoides       |  1 | before the epithet
          Echeveria Agavoides           | 11 | agavoides for a species
          Echeveria Red Edge            | 11 | 'Red Edge'
          Echeveria agavoides alba      | 21 | var. alba
          Echeveria agavoides subsp.    | 27 | after subsp. an epithet is missing
          Echeveria agavoides var. Alba | 26 | Write alba
          Echeveria agav.               | 11 | in full
          Echeveria subsp. alba         | 11 | of the species belongs before
          Echeveria a f. b              | 11 | in full
          Echeveria agavoides 'Red      | 21 | not closed
          Echeveria ''                  | 11 | nothing stands between the quotes
          Echeveria "'Red'"             | 11 | single quotes
          Echeveria cv. Red             | 11 | leave cv. out
          Echeveria hybrid              | 11 | genus alone
          Echeveria spp.                | 11 | Write sp.
          Echeveria 'Red' Edge          | 17 | inside the quotes
          Echeveria agavoides × E. laui | 21 | hybrid formula
          Echeveria agavoides ♀         | 21 | sex sign
          Echeveria cf. aff. agavoides  | 15 | Leave one out
          Rosa canina f. alba var. nana | 21 | does not stand below f.
          Rosa canina cf.               | 16 | after cf. an epithet is missing
          """)
  void whatIsNoNameIsToldWhereAndWhatToWrite(String text, int column, String remedy) {
    NameException error = catchThrowableOfType(NameException.class, () -> TaxonName.parse(text));
    assertThat(error).hasMessageContaining(remedy).hasMessageStartingWith("column " + column);
    assertThat(error.column()).isEqualTo(column);
  }

  @Test
  void partsThatMakeNoNameAreRefused() {
    assertThatThrownBy(() -> TaxonName.ofGenus("echeveria")).hasMessageContaining("capital");
    assertThatThrownBy(() -> TaxonName.ofSpecies("Echeveria", "Laui"))
        .hasMessageContaining("small letters");
    assertThatThrownBy(
            () ->
                new TaxonName(
                    false,
                    "Echeveria",
                    "",
                    List.of(new TaxonName.Epithet(Rank.VARIETY, false, "alba", "")),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()))
        .hasMessageContaining("species comes first");
  }

  @Property
  void aNameWrittenOutIsReadBack(@ForAll("names") TaxonName name) {
    assertThat(TaxonName.parse(name.text())).isEqualTo(name);
    assertThat(TaxonName.parse(name.asciiText()).isSameNameAs(name)).isTrue();
    assertThat(name.isSameNameAs(name.withoutAuthors())).isTrue();
  }

  @Property
  void anythingTypedIsReadOrRefusedInWords(@ForAll("scribbles") String text) {
    try {
      TaxonName name = TaxonName.parse(text);
      assertThat(TaxonName.parse(name.text())).isEqualTo(name);
    } catch (NameException e) {
      assertThat(e.column()).isBetween(1, text.codePointCount(0, text.length()) + 1);
      assertThat(e).hasMessageContaining("^");
    }
  }

  @Provide
  static Arbitrary<String> scribbles() {
    Arbitrary<String> words =
        Arbitraries.of(
            "Echeveria",
            "agavoides",
            "×",
            "x",
            "cf.",
            "aff.",
            "sp.",
            "subsp.",
            "var.",
            "f.",
            "alba",
            "'Red'",
            "'",
            "L.",
            "(L.)",
            "&",
            "ex",
            "Hook.",
            "E.",
            "♀",
            "nothovar.",
            "🌵",
            "hybrid",
            "Red",
            "\u0000",
            "é",
            "");
    return words.list().ofMaxSize(7).map(list -> String.join(" ", list));
  }

  @Provide
  static Arbitrary<TaxonName> names() {
    Set<String> words =
        Set.of(
            "sp",
            "spp",
            "cf",
            "aff",
            "cv",
            "ssp",
            "var",
            "form",
            "forma",
            "hybrid",
            "hybride",
            "variety",
            "varietas",
            "subf",
            "subsp");
    Arbitrary<String> epithet =
        Arbitraries.strings()
            .withCharRange('a', 'z')
            .ofMinLength(3)
            .ofMaxLength(9)
            // After "f." a word such as "del" belongs to an author, Hook. f. del Valle.
            .filter(word -> !words.contains(word) && !NameTerms.isParticle(word));
    Arbitrary<String> genus =
        epithet.map(word -> Character.toUpperCase(word.charAt(0)) + word.substring(1));
    Arbitrary<String> author = Arbitraries.of("", "L.", "(Asch.) Rothm.", "Rose & Britton");
    Arbitrary<List<TaxonName.Epithet>> epithets =
        Combinators.combine(
                Arbitraries.of(Rank.SUBSPECIES, Rank.VARIETY, Rank.FORM),
                epithet.list().ofMaxSize(2),
                Arbitraries.of(true, false),
                author)
            .as(
                (rank, list, hybrid, by) ->
                    IntStream.range(0, list.size())
                        .mapToObj(
                            i ->
                                new TaxonName.Epithet(
                                    i == 0 ? Rank.SPECIES : rank, hybrid, list.get(i), by))
                        .toList());
    Arbitrary<Optional<String>> cultivar =
        Arbitraries.of("Red Edge", "Dick's Pink", "Nº 7").optional();
    return Combinators.combine(
            Arbitraries.of(true, false), genus, epithets, cultivar, Arbitraries.of(0, 1, 2))
        .as(
            (hybrid, name, list, quoted, doubt) ->
                new TaxonName(
                    hybrid,
                    name,
                    "",
                    list,
                    Optional.empty(),
                    quoted,
                    doubt == 0 || (list.isEmpty() && quoted.isEmpty())
                        ? Optional.empty()
                        : Optional.of(
                            new TaxonName.Doubt(
                                doubt == 1 ? Qualifier.CF : Qualifier.AFF,
                                list.isEmpty()
                                    ? Rank.CULTIVAR
                                    : list.get(list.size() - 1).rank()))));
  }
}
