package dev.filial.core.ancestry;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Notation;
import dev.filial.core.number.Fraction;
import dev.filial.core.pedigree.Gamete;
import dev.filial.core.pedigree.Pedigree;
import dev.filial.core.pedigree.PedigreeFromNotation;
import dev.filial.core.pedigree.PlantRecord;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Crosses that were published, with the shares their ploidies and pedigrees give. */
class PublishedPedigreesTest {

  private static ExpectedAncestry ask(String code, PlantRecord... records) {
    return ExpectedAncestry.of(Pedigree.of(List.of(records)), code);
  }

  private static Shares ofNotation(String text) {
    List<PlantRecord> records = PedigreeFromNotation.records(Notation.parse(text));
    String last = records.get(records.size() - 1).code();
    return ExpectedAncestry.of(Pedigree.of(records), last).shares();
  }

  /**
   * The wheat Scout, Nebred//Hope/Turkey Red/3/Cheyenne/Ponca: the pedigree stands in the catalogue
   * published with the notation of Purdy, Loegering, Konzak, Peterson and Allan 1968 (Crop Science
   * 8:405-406). The shares follow by halving.
   */
  @Test
  void scoutIsAQuarterNebredAndAnEighthTurkeyRed() {
    Shares scout = ofNotation("Nebred//Hope/Turkey Red/3/Cheyenne/Ponca");
    assertThat(scout.of("Nebred")).isEqualTo(Fraction.of(1, 4));
    assertThat(scout.of("Hope")).isEqualTo(Fraction.of(1, 8));
    assertThat(scout.of("Turkey Red")).isEqualTo(Fraction.of(1, 8));
    assertThat(scout.of("Cheyenne")).isEqualTo(Fraction.of(1, 4));
    assertThat(scout.of("Ponca")).isEqualTo(Fraction.of(1, 4));
  }

  /**
   * The wheat Sonora 64, Yaktana 54//Norin 10/Brevor/3/2*Yaqui 54: CIMMYT's wheat pedigrees; from
   * memory. The number says how often the recurrent parent occurs; the shares follow by halving.
   */
  @Test
  void sonora64IsThreeQuartersYaqui54() {
    Shares sonora = ofNotation("Yaktana 54//Norin 10/Brevor/3/2*Yaqui 54");
    assertThat(sonora.of("Yaqui 54")).isEqualTo(Fraction.of(3, 4));
    assertThat(sonora.of("Yaktana 54")).isEqualTo(Fraction.of(1, 8));
    assertThat(sonora.of("Norin 10")).isEqualTo(Fraction.of(1, 16));
  }

  /**
   * The rice IR20, Peta*3/Taichung Native 1//TKM 6: IRRI's rice varieties; from memory. A BC2 to
   * Peta, seven eighths of it, by a third line.
   */
  @Test
  void ir20HasSevenSixteenthsPetaBehindIt() {
    Shares ir20 = ofNotation("Peta*3/Taichung Native 1//TKM 6");
    assertThat(ir20.of("Peta")).isEqualTo(Fraction.of(7, 16));
    assertThat(ir20.of("Taichung Native 1")).isEqualTo(Fraction.of(1, 16));
    assertThat(ir20.of("TKM 6")).isEqualTo(Fraction.HALF);
  }

  /**
   * {@code A/B*3} stands for A/B//B/3/B, the number counting every use of the recurrent parent: a
   * plant breeding course of an international programme. Of n uses it is BC(n − 1).
   */
  @Test
  void threeUsesOfTheRecurrentParentAreABc2() {
    List<PlantRecord> records = PedigreeFromNotation.records(Notation.parse("A/B*3"));
    String last = records.get(records.size() - 1).code();
    assertThat(GenerationClassifier.of(Pedigree.of(records)).classOf(last).label())
        .isEqualTo("BC2");
    assertThat(ofNotation("A/B*3")).isEqualTo(ofNotation("A/B//B/3/B"));
  }

  /**
   * Loganberry: octoploid Rubus ursinus 'Aughinbaugh' by diploid R. idaeus 'Red Antwerp', whose
   * pollen was unreduced: a hexaploid. Crane 1940, The origin and behaviour of the loganberry,
   * Journal of Genetics 40:129-140; from memory.
   */
  @Test
  void loganberryIsAHexaploidOfTwoThirdsBlackberry() {
    ExpectedAncestry loganberry =
        ask(
            "Loganberry",
            PlantRecord.pure("Aughinbaugh", "Rubus ursinus", 8),
            PlantRecord.pure("Red Antwerp", "Rubus idaeus", 2),
            PlantRecord.cross(
                "Loganberry", Gamete.of("Aughinbaugh"), Gamete.unreduced("Red Antwerp", 2)));
    assertThat(loganberry.cases().get(0).ploidy()).isEqualTo(6);
    assertThat(loganberry.shares().of("Rubus ursinus")).isEqualTo(Fraction.of(2, 3));
    assertThat(loganberry.shares().of("Rubus idaeus")).isEqualTo(Fraction.of(1, 3));
  }

  /**
   * Radish by cabbage: fertile tetraploids arose from unreduced gametes of the F1. Karpechenko
   * 1928, Polyploid hybrids of Raphanus sativus L. × Brassica oleracea L., Zeitschrift für
   * induktive Abstammungs- und Vererbungslehre 48:1-85; from memory.
   */
  @Test
  void raphanobrassicaIsATetraploidOfTwoHalves() {
    ExpectedAncestry raphanobrassica =
        ask(
            "Raphanobrassica",
            PlantRecord.pure("radish", "Raphanus sativus"),
            PlantRecord.pure("cabbage", "Brassica oleracea"),
            PlantRecord.cross("F1", "radish", "cabbage"),
            PlantRecord.cross(
                "Raphanobrassica", Gamete.unreduced("F1", 2), Gamete.unreduced("F1", 2)));
    assertThat(raphanobrassica.cases().get(0).ploidy()).isEqualTo(4);
    assertThat(raphanobrassica.shares().of("Raphanus sativus")).isEqualTo(Fraction.HALF);
    assertThat(raphanobrassica.seedLine().sources().get(0).taxon()).isEqualTo("Raphanus sativus");
  }

  /**
   * Triticale: tetraploid durum or hexaploid bread wheat by diploid rye, the sterile F1 doubled: a
   * hexaploid of two thirds wheat, an octoploid of three quarters. Müntzing 1979, Triticale:
   * results and problems; from memory.
   */
  @Test
  void triticaleIsTwoThirdsOrThreeQuartersWheat() {
    PlantRecord[] records = {
      PlantRecord.pure("durum", "Triticum turgidum", 4),
      PlantRecord.pure("bread wheat", "Triticum aestivum", 6),
      PlantRecord.pure("rye", "Secale cereale", 2),
      PlantRecord.cross("F1 of durum", "durum", "rye"),
      PlantRecord.cross("F1 of bread wheat", "bread wheat", "rye"),
      PlantRecord.doubled("hexaploid", "F1 of durum"),
      PlantRecord.doubled("octoploid", "F1 of bread wheat"),
    };
    Pedigree pedigree = Pedigree.of(List.of(records));
    assertThat(pedigree.ploidy(pedigree.indexOf("hexaploid"))).isEqualTo(6);
    assertThat(pedigree.ploidy(pedigree.indexOf("octoploid"))).isEqualTo(8);
    assertThat(ask("hexaploid", records).shares().of("Secale cereale"))
        .isEqualTo(Fraction.of(1, 3));
    assertThat(ask("octoploid", records).shares().of("Secale cereale"))
        .isEqualTo(Fraction.of(1, 4));
  }

  /**
   * Rape made again from turnip and cabbage. U 1935, Genome analysis in Brassica, Japanese Journal
   * of Botany 7:389-452; from memory.
   */
  @Test
  void brassicaNapusIsHalfTurnipAndHalfCabbage() {
    PlantRecord[] records = {
      PlantRecord.pure("turnip", "Brassica rapa"),
      PlantRecord.pure("cabbage", "Brassica oleracea"),
      PlantRecord.cross("F1", "turnip", "cabbage"),
      PlantRecord.doubled("napus", "F1"),
    };
    Pedigree pedigree = Pedigree.of(List.of(records));
    assertThat(pedigree.ploidy(pedigree.indexOf("napus"))).isEqualTo(4);
    assertThat(ask("napus", records).shares().of("Brassica rapa")).isEqualTo(Fraction.HALF);
  }

  /**
   * The common hemp-nettle made again: F1 of Galeopsis pubescens and G. speciosa; a triploid among
   * its offspring; that, giving all its sets, by G. pubescens: a tetraploid. Müntzing 1932,
   * Cytogenetic investigations on synthetic Galeopsis tetrahit, Hereditas 16:105-154; from memory.
   * The expectation by hand: three sets of half and half and one of G. pubescens, (3/2 + 1)/4.
   */
  @Test
  void syntheticHempNettleIsExpectedToBeFiveEighthsPubescens() {
    ExpectedAncestry tetrahit =
        ask(
            "tetrahit",
            PlantRecord.pure("p", "Galeopsis pubescens"),
            PlantRecord.pure("s", "Galeopsis speciosa"),
            PlantRecord.cross("F1", "p", "s"),
            PlantRecord.cross("triploid", Gamete.unreduced("F1", 2), Gamete.of("F1")),
            PlantRecord.cross("tetrahit", Gamete.unreduced("triploid", 3), Gamete.of("p")));
    assertThat(tetrahit.cases().get(0).ploidy()).isEqualTo(4);
    assertThat(tetrahit.shares().of("Galeopsis pubescens")).isEqualTo(Fraction.of(5, 8));
  }

  /**
   * Six animals: 3 from (1, 2), 4 from (1, unknown), 5 from (4, 3), 6 from (5, 2). Henderson 1976,
   * Biometrics 32:69-83, as worked in animal breeding handbooks; from memory. The relationship of a
   * non-inbred founder to an animal, founders unrelated, is that founder's expected share of it:
   * the first two rows of the published matrix.
   */
  @Test
  void foundersOfHendersonsSixAnimals() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                PlantRecord.pure("1", "one"),
                PlantRecord.pure("2", "two"),
                PlantRecord.cross("3", "1", "2"),
                PlantRecord.openPollinated("4", "1"),
                PlantRecord.cross("5", "4", "3"),
                PlantRecord.cross("6", "5", "2")));
    double[] one = {1, 0, .5, .5, .5, .25};
    double[] two = {0, 1, .5, 0, .25, .625};
    for (int animal = 1; animal <= 6; animal++) {
      Shares shares = ExpectedAncestry.of(pedigree, Integer.toString(animal)).shares();
      assertThat(shares.of("one").toDouble()).isEqualTo(one[animal - 1]);
      assertThat(shares.of("two").toDouble()).isEqualTo(two[animal - 1]);
    }
  }

  /**
   * The recurrent parent recovered by backcrossing: 75 % after BC1, 87.5 % after BC2, 93.75 % after
   * BC3, as every textbook of plant breeding tabulates; from memory.
   */
  @Test
  void theRecurrentParentComesBackByHalves() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                PlantRecord.pure("d", "donor"),
                PlantRecord.pure("r", "recurrent"),
                PlantRecord.cross("F1", "d", "r"),
                PlantRecord.cross("BC1", "F1", "r"),
                PlantRecord.cross("BC2", "BC1", "r"),
                PlantRecord.cross("BC3", "BC2", "r")));
    String[] percent = {"75 %", "87.5 %", "93.75 %"};
    for (int n = 1; n <= 3; n++) {
      assertThat(ExpectedAncestry.of(pedigree, "BC" + n).shares().of("recurrent").toPercent(2))
          .isEqualTo(percent[n - 1]);
      assertThat(GenerationClassifier.of(pedigree).classOf("BC" + n).label()).isEqualTo("BC" + n);
    }
  }
}
