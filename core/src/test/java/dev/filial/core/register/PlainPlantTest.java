package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import org.junit.jupiter.api.Test;

/** The shorter way to write and read a plant is the longer one, wherever it is gone. */
class PlainPlantTest {

  private static final PlantAcquired ROSA =
      new PlantAcquired(
          Code.of(24, 1),
          Determination.of("Echeveria laui"),
          new Provenance("Jonas Muster", null, "XM 014", null),
          PartialDate.parse("2024-05"),
          List.of(),
          false,
          "shelf 2",
          "offset, 3 cm");

  private static final String WRITTEN =
      "{\"kind\":\"plant\",\"code\":\"24-001W\",\"determination\":{\"taxon\":\"Echeveria laui\"},"
          + "\"provenance\":{\"donor\":\"Jonas Muster\",\"fieldNumber\":\"XM 014\"},"
          + "\"date\":\"2024-05\",\"place\":\"shelf 2\",\"remark\":\"offset, 3 cm\"}";

  @Test
  void aPlantOfTextsIsWrittenAndReadWithoutMoreAdo() {
    assertThat(PlainPlant.write(ROSA)).isEqualTo(WRITTEN);
    assertThat(PlainPlant.read(WRITTEN)).isEqualTo(ROSA);
  }

  @Property
  void whatItWritesIsWhatTheLongerWayWrites(@ForAll("plants") PlantAcquired plant) {
    String plain = PlainPlant.write(plant);
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.writeAny(plant));
    }
  }

  @Property
  void whatItReadsIsWhatTheLongerWayReads(@ForAll("plants") PlantAcquired plant) {
    String json = EntryJson.writeAny(plant);
    PlantAcquired plain = PlainPlant.read(json);
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.readAny(json));
    }
  }

  /** Also where the text was changed by hand: an entry may come from anywhere. */
  @Property
  void whatItReadsOfAChangedTextTheLongerWayReadsAlike(
      @ForAll("plants") PlantAcquired plant, @ForAll("cuts") List<Integer> cuts) {
    StringBuilder json = new StringBuilder(EntryJson.writeAny(plant));
    int from = cuts.get(0) % json.length();
    int to = Math.min(json.length(), from + cuts.get(1));
    String piece = json.substring(from, to);
    json.delete(from, to).insert(cuts.get(2) % (json.length() + 1), piece);
    PlantAcquired plain = PlainPlant.read(json.toString());
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.readAny(json.toString()));
    }
  }

  @Property
  void manyGoTheShorterWay(@ForAll("texts") String place) {
    PlantAcquired plant =
        new PlantAcquired(
            Code.of(25, 17),
            Determination.UNKNOWN,
            Provenance.UNKNOWN,
            null,
            List.of(),
            false,
            place,
            null);
    assertThat(PlainPlant.write(plant)).isNotNull();
    assertThat(PlainPlant.read(EntryJson.writeAny(plant))).isEqualTo(plant);
  }

  @Provide
  Arbitrary<String> texts() {
    return Arbitraries.strings().withChars("aZ9 ,.'’ßéжサ♀×/{}[]:<>&").ofMinLength(1).ofMaxLength(9);
  }

  @Provide
  Arbitrary<PlantAcquired> plants() {
    Arbitrary<String> text =
        Arbitraries.oneOf(StatementArbitraries.text(), texts(), Arbitraries.of("")).injectNull(0.4);
    Arbitrary<Determination> determination =
        Arbitraries.oneOf(
            StatementArbitraries.taxon().map(Determination::of),
            Arbitraries.of(Determination.UNKNOWN),
            StatementArbitraries.taxon()
                .map(taxon -> new Determination(taxon, "Rosa", Map.of(), "F1", 4)));
    return Combinators.combine(
            Arbitraries.longs().between(1, 2_000),
            determination,
            Combinators.combine(text, text, text, text).as(Provenance::new),
            Arbitraries.of("2024", "2024-05", "2024-05-04").map(PartialDate::parse).injectNull(0.3),
            Arbitraries.frequencyOf(
                Tuple.of(4, Arbitraries.of(List.of(List.<String>of()))),
                Tuple.of(1, Arbitraries.of(List.of(List.of("Rosa"))))),
            Arbitraries.of(false, false, false, true),
            text,
            text)
        .as(
            (number, is, from, date, names, neverHeld, place, remark) ->
                new PlantAcquired(
                    Code.of(25, number), is, from, date, names, neverHeld, place, remark));
  }

  @Provide
  Arbitrary<List<Integer>> cuts() {
    return Arbitraries.integers().between(0, 300).list().ofSize(3);
  }
}
