package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class CheckLetterTest {

  @Test
  void thirteenthCrossOf2026HasTheLetterE() {
    // By hand: 17 × 1530 = 26010, remainder 3, and A C D E: the letter of 3 is E.
    assertThat(CheckLetter.FILIAL.letter(26013)).isEqualTo('E');
    assertThat(CheckLetter.FILIAL.matches(26013, 'e')).isTrue();
    assertThat(CheckLetter.FILIAL.matches(26013, 'C')).isFalse();
  }

  @Test
  void twentyThreeLettersReproduceAPublishedNationalScheme() {
    // The national identity document of Spain: number modulo 23; its public specimen is 12345678Z.
    CheckLetter national = new CheckLetter(23, "TRWAGMYFPDXBNJZSQVHLCKE");
    assertThat(national.letter(12_345_678)).isEqualTo('Z');
  }

  @Test
  void noLetterLooksLikeADigitOrMeansFilial() {
    assertThat(CheckLetter.FILIAL.alphabet()).hasSize(17).doesNotContain("O", "I", "S", "B", "F");
    assertThat(CheckLetter.FILIAL.isLetter('x')).isTrue();
    assertThat(CheckLetter.FILIAL.isLetter('F')).isFalse();
  }

  @Test
  void anAlphabetThatDoesNotFitItsModulusIsRefused() {
    assertThatThrownBy(() -> new CheckLetter(3, "AB")).hasMessageContaining("modulus 3");
    assertThatThrownBy(() -> new CheckLetter(3, "ABA")).hasMessageContaining("stands once");
    assertThatThrownBy(() -> new CheckLetter(2, "a1")).hasMessageContaining("A to Z");
    assertThatThrownBy(() -> CheckLetter.FILIAL.letter(-1)).hasMessageContaining("-1");
  }
}
