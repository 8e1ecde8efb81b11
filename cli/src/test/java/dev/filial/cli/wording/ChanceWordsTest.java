package dev.filial.cli.wording;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.number.Fraction;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What chances are called when they are all there is. */
class ChanceWordsTest {

  private static List<String> words(Fraction... chances) {
    return ChanceWords.oneIn(List.of(chances));
  }

  /** 21/40 is 52.5 % and 19/40 is 47.5 %; rounded by themselves both go up, to 101 together. */
  @Test
  void twoHalvesAreNotBothRoundedUp() {
    assertThat(words(Fraction.of(21, 40), Fraction.of(19, 40)))
        .containsExactly("about 52.5 in 100", "about 47.5 in 100");
    // 52.25 and 47.75: 52 and 48 do.
    assertThat(words(Fraction.of(209, 400), Fraction.of(191, 400)))
        .containsExactly("about 52 in 100", "about 48 in 100");
    // 40.5, 30.25 and 29.25 are 41, 30 and 29, which is 100.
    assertThat(words(Fraction.of(81, 200), Fraction.of(121, 400), Fraction.of(117, 400)))
        .containsExactly("about 41 in 100", "about 30 in 100", "about 29 in 100");
  }

  @Test
  void whatIsSaidOtherwiseIsLeftAsItIs() {
    assertThat(words(Fraction.of(3, 4), Fraction.of(1, 4))).containsExactly("3 in 4", "1 in 4");
    // 33/100, 33/100 and 17/50 are 33, 33 and 34.
    assertThat(words(Fraction.of(33, 100), Fraction.of(33, 100), Fraction.of(17, 50)))
        .containsExactly("about 33 in 100", "about 33 in 100", "about 34 in 100");
    // Three that are nearly thirds add up to 99.9 and to 99.99.
    assertThat(words(Fraction.of(3333, 10000), Fraction.of(3333, 10000), Fraction.of(3334, 10000)))
        .containsExactly("about 33.33 in 100", "about 33.33 in 100", "about 33.34 in 100");
    assertThat(words(Fraction.of(999, 1000), Fraction.of(1, 1000)))
        .containsExactly("all but 1 in 1000", "1 in 1000");
    assertThat(ChanceWords.about("about 52.5 in 100")).isEqualTo("About 52.5 in 100");
  }
}
