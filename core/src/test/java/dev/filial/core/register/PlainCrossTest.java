package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import dev.filial.core.number.Fraction;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The shorter way to write and read a cross is the longer one, wherever it is gone. */
class PlainCrossTest {

  private static final String WRITTEN =
      "{\"kind\":\"cross\",\"code\":\"26-003P\",\"seedParent\":\"24-001W\","
          + "\"pollen\":{\"from\":\"plant\",\"plant\":\"24-002X\"},"
          + "\"date\":\"2026-03-04\",\"flowers\":\"~3\",\"place\":\"shelf 2\"}";

  private static Pollinated cross(Pollen pollen) {
    return cross(
        Code.of(26, 3),
        Code.of(24, 1),
        pollen,
        PartialDate.parse("2026-03-04"),
        Count.parse("~3"),
        "shelf 2",
        null);
  }

  private static Pollinated cross(
      Code code,
      Code seedParent,
      Pollen pollen,
      @Nullable PartialDate date,
      @Nullable Count flowers,
      @Nullable String place,
      @Nullable String remark) {
    return new Pollinated(
        code,
        seedParent,
        pollen,
        date,
        flowers,
        List.of(),
        Fraction.ZERO,
        Fraction.ZERO,
        Fraction.ZERO,
        null,
        null,
        false,
        place,
        remark);
  }

  @Test
  void aCrossOfTwoPlantsIsWrittenAndReadWithoutMoreAdo() {
    Pollinated cross = cross(new Pollen.OnePlant(Code.of(24, 2)));
    assertThat(PlainCross.write(cross)).isEqualTo(WRITTEN);
    assertThat(PlainCross.read(WRITTEN)).isEqualTo(cross);
  }

  @Test
  void aSelfingGoesTheShorterWayToo() {
    Pollinated selfing = cross(new Pollen.Itself());
    String json = EntryJson.writeAny(selfing);
    assertThat(PlainCross.write(selfing)).isEqualTo(json);
    assertThat(PlainCross.read(json)).isEqualTo(selfing);
  }

  @Test
  void openPollinationAndStatedSharesAreLeftToTheLongerWay() {
    assertThat(PlainCross.write(cross(new Pollen.Open(List.of(), Fraction.ONE)))).isNull();
    assertThat(PlainCross.read(WRITTEN.replace("\"place\"", "\"selfs\":\"1/20\",\"place\"")))
        .isNull();
  }

  @Property
  void whatItWritesIsWhatTheLongerWayWrites(@ForAll("crosses") Pollinated cross) {
    String plain = PlainCross.write(cross);
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.writeAny(cross));
    }
  }

  @Property
  void whatItReadsIsWhatTheLongerWayReads(@ForAll("crosses") Pollinated cross) {
    String json = EntryJson.writeAny(cross);
    Pollinated plain = PlainCross.read(json);
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.readAny(json));
    }
  }

  /** Also where the text was changed by hand: an entry may come from anywhere. */
  @Property
  void whatItReadsOfAChangedTextTheLongerWayReadsAlike(
      @ForAll("crosses") Pollinated cross, @ForAll("cuts") List<Integer> cuts) {
    StringBuilder json = new StringBuilder(EntryJson.writeAny(cross));
    int from = cuts.get(0) % json.length();
    int to = Math.min(json.length(), from + cuts.get(1));
    String piece = json.substring(from, to);
    json.delete(from, to).insert(cuts.get(2) % (json.length() + 1), piece);
    Pollinated plain = PlainCross.read(json.toString());
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.readAny(json.toString()));
    }
  }

  @Property
  void whoseRegisterItIsIsReadAsTheLongerWayReadsIt(
      @ForAll("texts") String grower, @ForAll("cuts") List<Integer> cuts) {
    StringBuilder json =
        new StringBuilder(EntryJson.writeAny(new RegisterOpened("KB", grower, "old " + grower)));
    assertThat(PlainOpening.read(json.toString())).isIn(EntryJson.readAny(json.toString()), null);
    json.deleteCharAt(cuts.get(0) % json.length());
    RegisterOpened plain = PlainOpening.read(json.toString());
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.readAny(json.toString()));
    }
  }

  @Test
  void whoseRegisterItIsNeedsNoLongerWay() {
    RegisterOpened opened = new RegisterOpened("KB", "Klara Ößé", null);
    assertThat(PlainOpening.read(EntryJson.writeAny(opened))).isEqualTo(opened);
  }

  @Provide
  Arbitrary<String> texts() {
    return StatementArbitraries.text().filter(text -> !text.isBlank());
  }

  /** Any crosses, and plainer ones, which any crosses seldom are. */
  @Provide
  Arbitrary<Pollinated> crosses() {
    Arbitrary<Pollen> pollen =
        Arbitraries.oneOf(
            StatementArbitraries.plant().map(Pollen.OnePlant::new),
            Arbitraries.create(Pollen.Itself::new));
    Arbitrary<Pollinated> plainer =
        Combinators.combine(
                StatementArbitraries.whole(),
                StatementArbitraries.plant(),
                pollen,
                StatementArbitraries.date().injectNull(0.3),
                StatementArbitraries.count().injectNull(0.5),
                StatementArbitraries.maybeText(),
                StatementArbitraries.maybeText())
            .as(PlainCrossTest::cross);
    return Arbitraries.oneOf(
        plainer, StatementArbitraries.pollinated().map(Pollinated.class::cast));
  }

  @Provide
  Arbitrary<List<Integer>> cuts() {
    return Arbitraries.integers().between(0, 300).list().ofSize(3);
  }
}
