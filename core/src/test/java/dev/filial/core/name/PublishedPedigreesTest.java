package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Notation.Style;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pedigrees of well-known cereals, as breeders published them. */
class PublishedPedigreesTest {

  @Test
  void scoutHasAPollenParentThatWasACross() {
    // The wheat Scout: Hope × Turkey Red was the pollen parent on Nebred, and a plant of that the
    // seed parent to one of Cheyenne × Ponca. Wheat pedigree catalogue published with the notation
    // of
    // Purdy et al. 1968.
    Notation.Builder builder = new Notation.Builder();
    int nebred = builder.source("Nebred");
    int hope = builder.cross(builder.source("Hope"), builder.source("Turkey Red"));
    int seed = builder.cross(nebred, hope);
    builder.cross(seed, builder.cross(builder.source("Cheyenne"), builder.source("Ponca")));
    assertThat(builder.build())
        .isEqualTo(Notation.parse("Nebred//Hope/Turkey Red/3/Cheyenne/Ponca"));
  }

  @Test
  void sonora64HasADoubleDoseOfYaqui54() {
    // (Yaktana 54 × (Norin 10 × Brevor)) × Yaqui 54, twice. CIMMYT's wheat pedigrees; from memory.
    Notation sonora = Notation.parse("Yaktana 54//Norin 10/Brevor/3/2*Yaqui 54");
    assertThat(sonora.text()).isEqualTo("Yaktana 54//Norin 10/Brevor/3/Yaqui 54/4/Yaqui 54");
    assertThat(sonora.text(Style.BACKCROSS_NUMBER_FIRST))
        .isEqualTo("Yaktana 54//Norin 10/Brevor/3/2*Yaqui 54");
  }

  @Test
  void ir20HasTwoBackcrossesToPeta() {
    // IR262 was Peta*3/Taichung Native 1; IR20 is IR262/TKM 6. IRRI's rice varieties; from memory.
    Notation ir20 = Notation.parse("Peta*3/Taichung Native 1//TKM 6");
    assertThat(ir20.text()).isEqualTo("Peta/3/Peta//Peta/Taichung Native 1/4/TKM 6");
    assertThat(ir20.text(Style.BACKCROSS_STAR_FIRST)).isEqualTo("Peta*3/Taichung Native 1//TKM 6");
  }

  @ParameterizedTest
  @CsvSource({
    // Where two are given, the second is the number of generations. All from memory of the sources.
    // Reitz and Salmon 1968, Origin, history, and use of Norin 10 wheat, Crop Science 8:686-689.
    "Fultz/Daruma//Turkey Red, 2",
    // Hayes et al. 1936, Thatcher wheat, Minnesota Agricultural Experiment Station Bulletin 325.
    "Marquis/Iumillo//Marquis/Kanred, 2",
    // Marquis: Hard Red Calcutta pollinated by Red Fife, Saunders, Ottawa.
    "Hard Red Calcutta/Red Fife, 1",
    // CIMMYT's wheat pedigrees: Pitic 62, Penjamo 62, Siete Cerros (the cross II-8156).
    "Yaktana 54//Norin 10/Brevor, 2",
    "Frontana/Kenya 58//Newthatch/3/Norin 10/Brevor, 3",
    "Penjamo 62/Gabo 55, 1",
    // IRRI's rice varieties: IR8.
    "Peta/Dee-geo-woo-gen, 1",
    // Barleys of Great Britain: Proctor is Kenia/Plumage Archer, Maris Otter is Proctor/Pioneer.
    "Kenia/Plumage Archer//Pioneer, 2"
  })
  void aPublishedPedigreeIsReadAndWrittenUnchanged(String text, int generations) {
    Notation pedigree = Notation.parse(text);
    assertThat(pedigree.text()).isEqualTo(text);
    assertThat(pedigree.generations()).isEqualTo(generations);
  }

  @ParameterizedTest
  @CsvSource({
    // Lerma Rojo 64. CIMMYT's wheat pedigrees; from memory.
    "Yaqui 50//Norin 10/Brevor/3/Lerma 52/4/2*Lerma Rojo",
    // Newthatch. From memory.
    "Hope/3*Thatcher",
    // IR36, with IR1737 (IR24*4/Oryza nivara) as a parent. IRRI's rice varieties; from memory.
    "IR1561-228//IR24*4/Oryza nivara/3/CR94-13"
  })
  void aPublishedBackcrossIsReadAndWrittenUnchanged(String text) {
    assertThat(Notation.parse(text).text(Style.BACKCROSS_NUMBER_FIRST)).isEqualTo(text);
  }

  @Test
  void aNumberBehindTheAsteriskCountsEveryUse() {
    // A plant breeding course of an international programme: A/B*3 stands for A/B//B/3/B.
    assertThat(Notation.parse("A/B*3")).isEqualTo(Notation.parse("A/B//B/3/B"));
  }
}
