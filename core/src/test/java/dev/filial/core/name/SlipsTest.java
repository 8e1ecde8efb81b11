package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SlipsTest {

  private static Code code(String text) {
    return Code.parse(text);
  }

  @Test
  void swappedDigitsLeadBackToTheRegisteredCode() {
    Set<Code> registered = Set.of(code("26-013E"), code("26-014"), code("26-131"));
    assertThat(Slips.near("26-031E", registered::contains))
        .containsExactly(new Slip(code("26-013E"), Slip.Kind.NEIGHBOURS_SWAPPED));
  }

  @Test
  void theMostPlausibleSlipStandsFirst() {
    // Without the letter all of these are one slip from 26-113; 7 looks like 1, 4 does not like 3.
    Set<Code> registered =
        Set.of(code("26-114"), code("26-713"), code("26-131"), code("26-311"), code("26-003"));
    assertThat(Slips.near("26-113", registered::contains))
        .extracting(slip -> slip.code().digits() + " " + slip.kind())
        .containsExactly(
            "26-713 LOOK_ALIKE_DIGIT",
            "26-131 NEIGHBOURS_SWAPPED",
            "26-114 WRONG_DIGIT",
            "26-311 JUMP_SWAPPED",
            "26-003 TWINS");
  }

  @Test
  void theDigitsMayBeRightAndTheLetterWrong() {
    assertThat(Slips.near("26-013H", Set.of(code("26-013"))::contains))
        .containsExactly(new Slip(code("26-013E"), Slip.Kind.WRONG_LETTER));
  }

  @Test
  void theSuffixIsKept() {
    Code seedling = code("26-013E-7");
    assertThat(Slips.near("26-031E-7", seedling::equals))
        .extracting(Slip::code)
        .containsExactly(seedling);
    assertThat(Slips.near("26-031E-7", seedling.whole()::equals)).isEmpty();
  }

  @Test
  void aMisreadLeadingZeroIsFoundToo() {
    Code thousand = Code.of(32, 1123);
    assertThat(Slips.near("32-0123" + thousand.letter(), thousand::equals))
        .extracting(Slip::code)
        .containsExactly(thousand);
  }

  @Test
  void nothingIsProposedForWhatIsNoCode() {
    assertThat(Slips.near("agavoides", code -> true)).isEmpty();
    assertThat(Slips.near("26-013E", code -> true)).isEmpty();
  }

  @Property
  void aCodeWithOneDigitWrongIsAlwaysAmongTheProposals(
      @ForAll @IntRange(max = 99) int year,
      @ForAll @IntRange(min = 1, max = 9999) int number,
      @ForAll @IntRange(min = 1, max = 9) int step) {
    Code meant = Code.of(year, number);
    String text = meant.text();
    int last = text.length() - 2;
    char digit = (char) ('0' + (text.charAt(last) - '0' + step) % 10);
    String typed = text.substring(0, last) + digit + text.charAt(last + 1);
    assertThat(Slips.near(typed, meant::equals)).extracting(Slip::code).containsExactly(meant);
    assertThat(Slips.near(typed, code -> true))
        .allSatisfy(
            slip ->
                assertThat(
                        slip.kind() == Slip.Kind.WRONG_LETTER
                            || slip.code().letter() == meant.letter())
                    .isTrue());
  }
}
