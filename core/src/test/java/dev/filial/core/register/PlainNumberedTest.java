package dev.filial.core.register;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.name.Code;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The shorter way to read which seedlings got numbers is the longer one, wherever it is gone. */
class PlainNumberedTest {

  @Test
  void seedlingsOfACrossAreReadWithoutMoreAdo() {
    assertThat(
            PlainNumbered.read(
                "{\"kind\":\"number\",\"from\":\"24-001W\",\"first\":1,\"last\":12,"
                    + "\"date\":\"2024-05\"}"))
        .isEqualTo(
            new Numbered(Code.of(24, 1), 1, 12, PartialDate.parse("2024-05"), null, null, null));
  }

  @Test
  void whatIsNoNumberIsLeftToTheLongerWay() {
    for (String first : List.of("01", "1.0", "-1", "\"1\"", "1e1", "12345678901", "")) {
      assertThat(
              PlainNumbered.read(
                  "{\"kind\":\"number\",\"from\":\"24-001W\",\"first\":" + first + ",\"last\":12}"))
          .as(first)
          .isNull();
    }
  }

  @Property
  void whatItReadsIsWhatTheLongerWayReads(@ForAll("numbered") Numbered numbered) {
    Numbered plain = PlainNumbered.read(EntryJson.writeAny(numbered));
    if (plain != null) {
      assertThat(plain).isEqualTo(numbered);
    }
    if (numbered.remark() == null && numbered.place() == null) {
      assertThat(plain).isEqualTo(numbered);
    }
  }

  /** Also where the text was changed by hand: an entry may come from anywhere. */
  @Property
  void whatItReadsOfAChangedTextTheLongerWayReadsAlike(
      @ForAll("numbered") Numbered numbered, @ForAll("cuts") List<Integer> cuts) {
    StringBuilder json = new StringBuilder(EntryJson.writeAny(numbered));
    int from = cuts.get(0) % json.length();
    int to = Math.min(json.length(), from + cuts.get(1));
    String piece = json.substring(from, to);
    json.delete(from, to).insert(cuts.get(2) % (json.length() + 1), piece);
    Numbered plain = PlainNumbered.read(json.toString());
    if (plain != null) {
      assertThat(plain).isEqualTo(EntryJson.readAny(json.toString()));
    }
  }

  @Provide
  Arbitrary<List<Integer>> cuts() {
    return Arbitraries.integers().between(0, 200).list().ofSize(3);
  }

  @Provide
  Arbitrary<Numbered> numbered() {
    Arbitrary<String> text =
        Arbitraries.oneOf(StatementArbitraries.text(), Arbitraries.of("shelf 2")).injectNull(0.5);
    return Combinators.combine(
            Arbitraries.of("24-001", "24-001 P1", "24-001 S2").map(Code::parse),
            Arbitraries.integers().between(1, 300),
            Arbitraries.integers().between(0, 50),
            Arbitraries.of("2024", "2024-05", "2024-05-04").map(PartialDate::parse).injectNull(0.3),
            Arbitraries.of("edge").injectNull(0.7),
            text,
            text)
        .as(
            (of, first, more, date, picked, place, remark) ->
                new Numbered(of, first, first + more, date, picked, place, remark));
  }
}
