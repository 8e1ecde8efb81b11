package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CorrectionsTest {

  private static final Pollinated CROSS =
      new Pollinated(
          Code.of(26, 1),
          Code.of(24, 1),
          new Pollen.OnePlant(Code.of(24, 2)),
          PartialDate.parse("2026-03-04"),
          Count.of(3),
          List.of(),
          Fraction.ZERO,
          Fraction.ZERO,
          Fraction.ZERO,
          null,
          null,
          false,
          null,
          null);

  private static final PlantAcquired PLANT =
      new PlantAcquired(
          Code.of(24, 1),
          new Determination(null, null, Map.of("Echeveria laui", Fraction.HALF), null, null),
          Provenance.UNKNOWN,
          null,
          List.of("Rosa"),
          false,
          null,
          null);

  private static final Counted COUNT =
      new Counted(
          null,
          List.of(
              new Counted.Reading(Code.of(26, 1).group(1), Count.of(5), null),
              new Counted.Reading(Code.of(26, 1).group(2), Count.of(7), Count.of(6))),
          null);

  private static <S extends Statement> S with(S statement, String... properties) {
    Corrections corrections = Corrections.of(statement);
    for (String property : properties) {
      int equals = property.indexOf('=');
      corrections = corrections.set(property.substring(0, equals), property.substring(equals + 1));
    }
    @SuppressWarnings("unchecked") // a correction keeps the kind of statement
    S corrected = (S) corrections.statement();
    return corrected;
  }

  @Test
  void whatIsSaidOfGenesIsCorrectedPartByPart() {
    ProfileStated profile =
        Bench.profile("Echeveria laui", "leaf no. 2", Map.of("R", Fraction.ONE));
    assertThat(with(profile, "frequencies.leaf no. 2.R=3/4", "frequencies.leaf no. 2.r=25%"))
        .isEqualTo(
            Bench.profile(
                "Echeveria laui",
                "leaf no. 2",
                Map.of("R", Fraction.of(3, 4), "r", Fraction.of(1, 4))));
    assertThat(with(profile, "pairing=tetrasomic", "doubleReduction=0").doubleReduction())
        .isEqualTo(Fraction.ZERO);
    assertThat(with(Bench.gene("wax", "W", "w"), "linkedTo=edge", "recombination=0.1"))
        .isEqualTo(Bench.beside("edge", Fraction.of(1, 10), Bench.gene("wax", "W", "w")));
    assertThat(with(Bench.gene("wax", "W", "w"), "alleles=W,wx,w", "eggs.W=2").eggs())
        .containsOnly(Map.entry("W", Fraction.of(2)));
    assertThat(
            with(
                    Bench.model("edge", List.of("edge"), "RR=red", "*=green"),
                    "rows.1.genes=R_",
                    "rows.2.lost=1/5")
                .rows())
        .containsExactly(
            ModelDeclared.Row.of("R_", "red"),
            new ModelDeclared.Row("*", Map.of("green", Fraction.ONE), Fraction.of(1, 5)));
  }

  @Test
  void theParentsOfACrossAreCorrectedInAGrowersWords() {
    Pollinated corrected = with(CROSS, "pollen=24-003", "seed=24-2");
    assertThat(corrected.pollen()).isEqualTo(new Pollen.OnePlant(Code.of(24, 3)));
    assertThat(corrected.seedParent()).isEqualTo(Code.of(24, 2));
    assertThat(corrected.flowers()).isEqualTo(CROSS.flowers());
    assertThat(with(CROSS, "pollen=itself").pollen()).isEqualTo(new Pollen.Itself());
    assertThat(with(CROSS, "pollen=open").pollen())
        .isEqualTo(new Pollen.Open(List.of(), Fraction.ONE));
    assertThat(with(CROSS, "pollen.plant=24-003").pollen())
        .isEqualTo(new Pollen.OnePlant(Code.of(24, 3)));
    assertThat(
            with(
                    CROSS,
                    "pollen={\"from\":\"mix\",\"plants\":[{\"plant\":\"24-003\",\"weight\":\"1\"},"
                        + "{\"plant\":\"24-004\",\"weight\":\"2\"}]}",
                    "pollen.plants.2.weight=3")
                .pollen())
        .isEqualTo(
            new Pollen.Mix(
                List.of(
                    new Weighted(Code.of(24, 3), Fraction.ONE),
                    new Weighted(Code.of(24, 4), Fraction.of(3)))));
  }

  @Test
  void everySortOfValueCanBeSet() {
    Pollinated corrected =
        with(
            CROSS,
            "flowers=~5",
            "protection=bagged, emasculated",
            "selfs=1/20",
            "pollenSets=2",
            "storedPollen=yes",
            "place=the sill, left",
            "remark=  ");
    assertThat(corrected.flowers()).isEqualTo(Count.parse("~5"));
    assertThat(corrected.protection()).containsExactly(Protection.BAGGED, Protection.EMASCULATED);
    assertThat(corrected.selfs()).isEqualTo(Fraction.of(1, 20));
    assertThat(corrected.pollenSets()).isEqualTo(2);
    assertThat(corrected.storedPollen()).isTrue();
    assertThat(corrected.place()).isEqualTo("the sill, left");
    assertThat(corrected.remark()).isNull();
    TraitDeclared trait = new TraitDeclared("width", List.of(), BigDecimal.ONE, null, "mm", null);
    assertThat(with(trait, "most=12.5").most()).isEqualByComparingTo("12.5");
  }

  @Test
  void anEmptyValueTakesAPropertyAway() {
    assertThat(with(CROSS, "date=").date()).isNull();
    assertThat(with(PLANT, "names=").names()).isEmpty();
    assertThat(with(COUNT, "readings.1=").readings()).hasSize(1);
  }

  @Test
  void whatLiesWithinNeedsNoPathWhereOnlyOneIsCalledSo() {
    assertThat(with(PLANT, "taxon=Echeveria laui", "donor=a friend"))
        .satisfies(
            plant -> {
              assertThat(plant.determination().taxon()).isEqualTo("Echeveria laui");
              assertThat(plant.provenance().donor()).isEqualTo("a friend");
            });
    assertThat(with(PLANT, "determination.taxon=Echeveria laui").determination().taxon())
        .isEqualTo("Echeveria laui");
    assertThat(with(PLANT, "makeup.Echeveria laui=1/4").determination().makeup())
        .as("a key may hold spaces and dots")
        .isEqualTo(Map.of("Echeveria laui", Fraction.of(1, 4)));
    assertThat(with(COUNT, "readings.2.alive=4").readings().get(1).alive()).isEqualTo(Count.of(4));
  }

  @Test
  void datesAndCodesAreReadAsTheCallerReadsThem() {
    Statement corrected =
        Corrections.of(CROSS)
            .withDates(text -> PartialDate.parse("2026-03-05"))
            .withCodes(text -> Code.of(24, 9))
            .set("date", "the day after")
            .set("pollen", "the small one")
            .statement();
    assertThat(corrected.date()).isEqualTo(PartialDate.parse("2026-03-05"));
    assertThat(((Pollinated) corrected).pollen()).isEqualTo(new Pollen.OnePlant(Code.of(24, 9)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "polen=24-003 | there is no \"polen\" in an entry of this kind; there is code, seedParent,",
        "kind=plant | there is no \"kind\"",
        "pollen.weight=2 | there is no \"pollen.weight\"",
        "pollenSets=two | pollenSets is a whole number, not \"two\"",
        "storedPollen=perhaps | storedPollen is yes or no, not \"perhaps\"",
        "date.day=4 | \"date.day\": date is one value and has no parts",
        "date=4/3 | ",
        "protection=in a box | \"in a box\" is none of",
        "protection.1=bagged | \"protection.1\": protection is empty; write the whole list",
        "pollen={\"from\": | pollen cannot be read as JSON",
        "selfs=3/2 | the share of selfs is 3/2; it lies between 0 and 1",
      })
  void whatCannotBeIsNamed(String property, String message) {
    assertThatThrownBy(() -> with(CROSS, property))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message == null ? "4/3" : message);
  }

  @Test
  void aListOfThingsWithPartsIsCorrectedPartByPart() {
    assertThatThrownBy(() -> with(COUNT, "readings=5"))
        .hasMessage(
            "readings has parts; name one of them (readings.1), or write it whole as JSON, in [ ]");
    assertThatThrownBy(() -> with(COUNT, "readings.3.alive=5"))
        .hasMessageContaining("readings has numbers 1 to 2");
    assertThatThrownBy(() -> with(PLANT, "determination=Echeveria"))
        .hasMessageContaining("determination has parts");
  }

  @Test
  void theFirstIsLeftAsItWas() {
    Corrections first = Corrections.of(CROSS);
    Statement unused = first.set("place", "sill").statement();
    assertThat(first.statement()).isEqualTo(CROSS);
  }

  @Test
  void thePropertiesAreThoseOfTheKind() {
    assertThat(Corrections.of(PLANT).properties())
        .contains("code", "determination.taxon", "provenance.fieldNumber", "names", "neverHeld");
  }
}
