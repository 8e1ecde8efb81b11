package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SmudgedCodeTest {

  private static List<String> candidates(String pattern) {
    return SmudgedCode.parse(pattern).candidates(code -> true).stream().map(Code::text).toList();
  }

  @Test
  void withTheLetterOneDigitIsFoundWithoutTheRegister() {
    assertThat(candidates("26-0_3E")).containsExactly("26-013E");
    assertThat(candidates("2_-013E")).containsExactly("26-013E");
  }

  @Test
  void zerosOfANumberThatCanBeReadMayBeMissing() {
    assertThat(candidates("25-4-_")).hasSize(9).contains("25-004W-1", "25-004W-9");
    assertThat(candidates("2_-13E")).containsExactly("26-013E");
  }

  @Test
  void withoutTheLetterTheRegisterDecides() {
    Set<Code> registered = Set.of(Code.of(26, 13), Code.of(26, 43), Code.of(26, 14));
    assertThat(SmudgedCode.parse("26-0_3").candidates(registered::contains))
        .containsExactly(Code.of(26, 13), Code.of(26, 43));
  }

  @Test
  void theLastSmudgeMayBeTheLetterOrADigit() {
    assertThat(candidates("26-013_")).containsExactly("26-013E");
    assertThat(candidates("26-101_"))
        .hasSize(11)
        .startsWith(Code.of(26, 101).text(), Code.of(26, 1010).text());
  }

  @Test
  void aSmudgedSuffixIsAnyNumberOrKindThatFits() {
    assertThat(candidates("26-013E-_")).hasSize(9).contains("26-013E-1", "26-013E-9");
    assertThat(candidates("26-013E P_")).hasSize(9).contains("26-013E P3");
    assertThat(candidates("26-013E _3"))
        .hasSize(12)
        .contains("26-013E-13", "26-013E P3", "26-013E H3", "26-013E S3");
  }

  @Test
  void tooLittleToReadIsRefusedInWordsBeforeAnythingIsTried() {
    AtomicInteger asked = new AtomicInteger();
    SmudgedCode unreadable = SmudgedCode.parse("__-____");
    assertThatThrownBy(() -> unreadable.candidates(code -> asked.incrementAndGet() > 0))
        .isInstanceOf(CodeException.class)
        .hasMessageContaining("too little can be read")
        .hasMessageContaining("1,100,000 codes");
    assertThat(asked).hasValue(0);
    assertThat(unreadable.matches(Code.of(26, 1013))).isTrue();
    assertThat(unreadable.matches(Code.of(26, 13))).isTrue();
    assertThat(unreadable.matches(Code.of(26, 13).seedling(2))).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "26-_", "26-1_", "26-0*3", "_", "26-013E-", "26-013E __ _"})
  void whatCannotBeACodeIsRefused(String pattern) {
    assertThatThrownBy(() -> SmudgedCode.parse(pattern))
        .isInstanceOf(CodeException.class)
        .hasMessageContaining("one _ for each");
  }

  @Property
  void theSmudgedCodeIsAlwaysAmongTheCandidates(
      @ForAll @IntRange(max = 99) int year,
      @ForAll @IntRange(min = 1, max = 9999) int number,
      @ForAll @IntRange(min = 1, max = 99) int seedling,
      @ForAll @IntRange(max = 9) int first,
      @ForAll @IntRange(max = 9) int second) {
    Code code = Code.of(year, number).seedling(seedling);
    StringBuilder text = new StringBuilder(code.text());
    for (int at : new int[] {first, second}) {
      if (at < text.length() && text.charAt(at) != '-') {
        text.setCharAt(at, '_');
      }
    }
    SmudgedCode smudged = SmudgedCode.parse(text.toString());
    assertThat(smudged.candidates(any -> true))
        .contains(code)
        .allMatch(smudged::matches)
        .doesNotHaveDuplicates()
        .isSorted();
  }
}
