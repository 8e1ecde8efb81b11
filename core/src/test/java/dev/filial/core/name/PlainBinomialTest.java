package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainBinomialTest {

  @Test
  void genusAndEpithetAreReadWithoutMoreAdo() {
    assertThat(PlainBinomial.read("Echeveria agavoides"))
        .isEqualTo(TaxonName.ofSpecies("Echeveria", "agavoides"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Echeveria",
        "Echeveria sp",
        "Echeveria hybrid",
        "Echeveria subspecies",
        "Echeveria variety",
        "Echeveria forma",
        "Echeveria nothosubsp",
        "echeveria laui",
        "Echeveria  agavoides",
        "Echeveria agavoides ",
        "Echeveria ×gilva",
        "Echeveria décora",
        "E agavoides",
        ""
      })
  void anythingElseIsLeftToTheReader(String text) {
    assertThat(PlainBinomial.read(text)).isNull();
  }

  /** Whatever it reads, the full reader reads alike: it is a shorter way, and not another one. */
  @Property
  void whatItReadsTheReaderReadsAlike(@ForAll("names") String text) {
    TaxonName plain = PlainBinomial.read(text);
    if (plain != null) {
      assertThat(plain).isEqualTo(new TaxonNameReader(text, List.of()).readAlone());
    }
  }

  @Provide
  Arbitrary<String> names() {
    Arbitrary<String> words =
        Arbitraries.oneOf(
            Arbitraries.of(
                "subsp",
                "ssp",
                "subspecies",
                "var",
                "varietas",
                "variety",
                "subvar",
                "forma",
                "form",
                "subforma",
                "nothovar",
                "nsubsp",
                "hybrid",
                "hybride",
                "hybr",
                "spp",
                "cfr",
                "emend",
                "sensu",
                "della",
                "laui",
                "agavoides",
                "vera",
                "formosa",
                "x"),
            Arbitraries.strings().withCharRange('a', 'z').ofMinLength(1).ofMaxLength(12));
    Arbitrary<String> genera =
        Arbitraries.oneOf(
            Arbitraries.of("Echeveria", "Xerosicyos", "E", "Aloe"),
            words.map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1)));
    return genera.flatMap(genus -> words.map(word -> genus + " " + word));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Echeveria laui",
        "Echeveria cf. laui",
        "Echeveria subrigida",
        "Echeveria laui Moran & Meyrán",
        "×Graptoveria amethorum",
        "Echeveria agavoides 'Ebony'",
        "Echeveria"
      })
  void theKeyOfAWrittenNameIsThatOfTheNameRead(String written) {
    assertThat(TaxonName.keyOf(written)).isEqualTo(TaxonName.parse(written).unqualified().key());
  }
}
