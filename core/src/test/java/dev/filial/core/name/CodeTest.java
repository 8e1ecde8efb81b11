package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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

class CodeTest {

  @Test
  void everyPartOfACrossHasItsSuffix() {
    Code cross = Code.of(26, 13);
    assertThat(cross.text()).isEqualTo("26-013E");
    assertThat(cross.seedling(7).text()).isEqualTo("26-013E-7");
    assertThat(cross.group(3).text()).isEqualTo("26-013E P3");
    assertThat(cross.lot(1).text()).isEqualTo("26-013E H1");
    assertThat(cross.sowing(1).text()).isEqualTo("26-013E S1");
    assertThat(cross.seedling(7).whole()).isEqualTo(cross);
    assertThat(cross.isWhole()).isTrue();
    assertThat(cross.group(3).isWhole()).isFalse();
  }

  @Test
  void theThousandthOfAYearHasFourDigits() {
    assertThat(Code.of(26, 1013).digits()).isEqualTo("26-1013");
    assertThat(Code.of(26, 1013).letter()).isEqualTo(CheckLetter.FILIAL.letter(261_013));
    assertThat(Code.of(5, 13).text()).startsWith("05-013");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "26-013E",
        "26-013e",
        " 26-013E ",
        "26013E",
        "26013",
        "26-013",
        "26-13",
        "26-13E",
        "26 013E",
        "26 13",
        "26‑013E",
        "26–013E"
      })
  void aCodeIsReadHoweverItIsTyped(String typed) {
    assertThat(Code.parse(typed)).isEqualTo(Code.of(26, 13));
  }

  @ParameterizedTest
  @CsvSource({
    "26-013E-7, 26-013E-7",
    "26-013E 7, 26-013E-7",
    "26-13-7, 26-013E-7",
    "26013-7, 26-013E-7",
    "26-013E - 07, 26-013E-7",
    "26-013e p3, 26-013E P3",
    "26-013E-P3, 26-013E P3",
    "26-013 h2, 26-013E H2",
    "26-013E S1, 26-013E S1"
  })
  void aSuffixIsReadHoweverItIsSetOff(String typed, String code) {
    assertThat(Code.parse(typed).text()).isEqualTo(code);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''           | a code is missing
          26/013E      | no slash
          26-013E/7    | no slash
          26-013E7     | Write 26-013E-7
          26-013EP3    | Write 26-013E P3
          26-013P3     | Write 26-013E P3
          26-013E P    | needs a number
          26-013 E     | 26-013E
          26-013E P 3  | Write 26-013E P3
          26-013E X3   | suffix X is not known
          26-013EX3    | suffix X is not known
          26-013E seedling 7 | not a code
          26-013E-0    | begins at 1
          26-000       | running numbers begin at 1
          26-0         | running numbers begin at 1
          26-0013      | Write 26-013
          2613         | Write 26-13 or 26013
          2026-013     | Write 26-013
          2026-013E-7  | Write 26-013E-7
          26-O13E      | Write 0 for O
          26-0_3E      | smudged tag
          KB 26-013E   | write 26-013E alone
          26-1234567890| at most nine digits
          agavoides    | not a code
          26-013E-7-2  | not a code
          """)
  void whatIsNoCodeIsToldWhatToType(String typed, String remedy) {
    assertThatThrownBy(() -> Code.parse(typed))
        .isInstanceOf(CodeException.class)
        .hasMessageContaining(remedy);
  }

  @Test
  void aWrongLetterOffersTheCodeThatTheDigitsGive() {
    WrongLetterException wrong =
        catchThrowableOfType(WrongLetterException.class, () -> Code.parse("26-031E-7"));
    assertThat(wrong.code()).isEqualTo(Code.of(26, 31).seedling(7));
    assertThat(wrong.written()).isEqualTo('E');
    assertThat(wrong)
        .hasMessageContaining("26-031E-7")
        .hasMessageContaining("the letter E does not go with the digits 26-031")
        .hasMessageContaining("write 26-031" + Code.of(26, 31).letter() + "-7");
    assertThatThrownBy(() -> Code.parse("26-013F"))
        .isInstanceOf(WrongLetterException.class)
        .hasMessageContaining("no check letter");
  }

  @Test
  void rangesAreHeld() {
    assertThatThrownBy(() -> Code.of(2026, 13)).hasMessageContaining("give 26");
    assertThatThrownBy(() -> Code.of(-1, 13)).isInstanceOf(CodeException.class);
    assertThatThrownBy(() -> Code.of(26, 0)).hasMessageContaining("running number");
    assertThatThrownBy(() -> Code.of(26, 13).seedling(0)).hasMessageContaining("seedling");
    assertThatThrownBy(() -> Code.of(26, 13).group(-3)).hasMessageContaining("group");
    assertThatThrownBy(() -> Code.of(26, 13).lot(0)).hasMessageContaining("seed lot");
    assertThatThrownBy(() -> Code.of(26, 13).sowing(0)).hasMessageContaining("sowing");
  }

  @Test
  void codesStandInTheOrderOfTheBook() {
    Code first = Code.of(26, 13);
    assertThat(
            List.of(
                first,
                first.seedling(2),
                first.seedling(10),
                first.group(1),
                first.lot(1),
                first.sowing(1),
                Code.of(26, 14),
                Code.of(26, 1013),
                Code.of(27, 1)))
        .isSorted();
  }

  @Property
  void whatIsWrittenIsReadBack(@ForAll("codes") Code code) {
    assertThat(Code.parse(code.text())).isEqualTo(code);
    assertThat(Code.parse(code.text().toLowerCase(Locale.ROOT))).isEqualTo(code);
    assertThat(Code.parse(code.digits() + code.part().suffix())).isEqualTo(code);
  }

  @Property
  void anythingTypedIsReadOrRefusedInWords(@ForAll String typed) {
    try {
      assertThat(Code.parse(Code.parse(typed).text())).isEqualTo(Code.parse(typed));
    } catch (CodeException e) {
      assertThat(e.getMessage()).isNotBlank().hasSizeLessThan(400);
    }
  }

  @Test
  void theCodesOfFortySeasonsHardlyShareAHash() {
    Set<Integer> hashes = new HashSet<>();
    int codes = 0;
    for (int year = 1; year <= 40; year++) {
      for (int number = 1; number <= 2500; number++) {
        Code cross = Code.of(year, number);
        hashes.add(cross.hashCode());
        hashes.add(cross.seedling(1).hashCode());
        hashes.add(cross.seedling(2).hashCode());
        codes += 3;
      }
    }
    // Of 300,000 drawn at random out of 2^32 some ten pairs would be alike (n^2 / 2^33).
    assertThat(codes - hashes.size()).isLessThan(100);
  }

  @Property
  void noTwoCodesAreWrittenAlike(@ForAll("codes") Code one, @ForAll("codes") Code other) {
    assertThat(one.text().equals(other.text())).isEqualTo(one.equals(other));
    assertThat(one.compareTo(other) == 0).isEqualTo(one.equals(other));
  }

  @Provide
  static Arbitrary<Code> codes() {
    Arbitrary<Integer> years = Arbitraries.integers().between(0, 99);
    Arbitrary<Long> numbers =
        Arbitraries.oneOf(
            Arbitraries.longs().between(1, 9999), Arbitraries.longs().between(1, Code.HIGHEST));
    Arbitrary<Integer> suffixes =
        Arbitraries.oneOf(
            Arbitraries.integers().between(1, 60), Arbitraries.integers().between(1, Code.HIGHEST));
    return Combinators.combine(years, numbers, suffixes, Arbitraries.integers().between(0, 4))
        .as(
            (year, number, suffix, kind) -> {
              Code whole = Code.of(year, number);
              return switch (kind) {
                case 0 -> whole;
                case 1 -> whole.seedling(suffix);
                case 2 -> whole.group(suffix);
                case 3 -> whole.lot(suffix);
                default -> whole.sowing(suffix);
              };
            });
  }
}
