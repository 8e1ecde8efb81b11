package dev.filial.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Random;
import org.junit.jupiter.api.Test;

class WrapTest {

  @Test
  void linesBreakAtSpacesAndRunsOfThemAreOne() {
    assertThat(Wrap.lines("one  two three", 8)).containsExactly("one two", "three");
    assertThat(Wrap.lines(" one ", 80)).containsExactly("one");
    assertThat(Wrap.lines("", 80)).containsExactly("");
  }

  @Test
  void lineBreaksAreKept() {
    assertThat(Wrap.lines("one\n\ntwo", 80)).containsExactly("one", "", "two");
  }

  @Test
  void whatANoBreakSpaceJoinsIsNotPartedAndIsPrintedWithAPlainSpace() {
    assertThat(Wrap.lines("in pot 26-013E\u00A0P3", 12)).containsExactly("in pot", "26-013E P3");
  }

  @Test
  void aWordWiderThanTheLineIsCutBetweenWholeCharacters() {
    assertThat(Wrap.lines("ab東京c", 3)).containsExactly("ab", "東", "京c");
    assertThat(Wrap.lines("xe\u0301e\u0301", 2)).containsExactly("xe\u0301", "e\u0301");
  }

  @Test
  void whatWouldSteerTheTerminalIsMadeHarmless() {
    assertThat(Wrap.lines("laui\u001B[2J\u0007\ttwo", 80))
        .containsExactly("laui\uFFFD[2J\uFFFD two");
  }

  @Test
  void noLineIsEverWiderAndNoWordIsLost() {
    Random random = new Random(7);
    String[] pieces = {"a", "bb", "Echeveria", "×", "東", "\uD83C\uDF35", " ", "  ", "\n"};
    for (int round = 0; round < 500; round++) {
      StringBuilder text = new StringBuilder();
      for (int i = random.nextInt(40); i > 0; i--) {
        text.append(pieces[random.nextInt(pieces.length)]);
      }
      int width = 2 + random.nextInt(30);
      assertThat(Wrap.lines(text.toString(), width))
          .allSatisfy(line -> assertThat(DisplayWidth.of(line)).isLessThanOrEqualTo(width));
      assertThat(String.join("", Wrap.lines(text.toString(), width)).replace(" ", ""))
          .isEqualTo(text.toString().replaceAll("[ \n]", ""));
    }
  }

  @Test
  void aWidthThatHoldsNothingIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Wrap.lines("a", 1));
  }
}
