package dev.filial.core.name;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/**
 * Every slip on every code with a running number of three or four digits, gone through one by one.
 *
 * <p>The kinds of slip are those of Verhoeff, Error Detecting Decimal Codes, 1969.
 */
class EverySlipIsCaughtTest {

  @Test
  void everySlipOnEveryThreeDigitCodeIsRefusedWhenTyped() {
    // Through the reader itself for three years; the arithmetic for all years is below.
    for (int year : new int[] {3, 26, 99}) {
      for (int number = 1; number < 1000; number++) {
        String right = String.format(Locale.ROOT, "%02d%03d", year, number);
        char letter = Code.parse(right).letter();
        corrupted(
            right.toCharArray(),
            wrong -> {
              String typed = new String(wrong) + letter;
              assertThatThrownBy(() -> Code.parse(typed)).isInstanceOf(CodeException.class);
            });
      }
    }
  }

  @Test
  void everySlipOnAnyThreeDigitCodeChangesTheLetter() {
    assertThat(uncaught(1, 999, 100_000)).isZero();
  }

  @Test
  void everySlipOnAnyFourDigitCodeChangesTheLetterOrIsRefused() {
    assertThat(uncaught(1000, 9999, 1_000_000)).isZero();
  }

  /**
   * The one way in which the length of a number could have hidden a slip: 32-1000 misread as
   * 32-0000 or 32-0123 would, read as a three-digit number, be checked as a number of another
   * length. It is refused as it stands.
   */
  @Test
  void aFourDigitCodeWithItsFirstDigitMisreadAsZeroIsNotTakenForAThreeDigitOne() {
    Code misread = Code.of(32, 1123);
    assertThat(misread.letter()).isEqualTo(Code.of(32, 123).letter());
    assertThatThrownBy(() -> Code.parse("32-0123" + misread.letter()))
        .isInstanceOf(CodeException.class)
        .hasMessageContaining("does not begin with 0");
  }

  private static long uncaught(int from, int to, int tenth) {
    long[] counts = new long[2];
    for (int year = 0; year < 100; year++) {
      for (int number = from; number <= to; number++) {
        char[] right = Integer.toString(tenth + year * (tenth / 100) + number).toCharArray();
        char[] digits = Arrays.copyOfRange(right, 1, right.length);
        char letter = CheckLetter.FILIAL.letter(value(digits));
        corrupted(
            digits,
            wrong -> {
              counts[0]++;
              boolean refused = wrong.length > 5 && wrong[2] == '0';
              if (!refused && CheckLetter.FILIAL.matches(value(wrong), letter)) {
                counts[1]++;
              }
            });
      }
    }
    assertThat(counts[0]).isGreaterThan((to - from) * 100L * 45);
    return counts[1];
  }

  private static long value(char[] digits) {
    long value = 0;
    for (char digit : digits) {
      value = value * 10 + (digit - '0');
    }
    return value;
  }

  /** Hands each corrupted form to {@code each}; the array is the same one every time. */
  private static void corrupted(char[] digits, Consumer<char[]> each) {
    for (int i = 0; i < digits.length; i++) {
      char old = digits[i];
      boolean twin = i + 1 < digits.length && digits[i + 1] == old;
      boolean jumpTwin = i + 2 < digits.length && digits[i + 2] == old;
      for (char c = '0'; c <= '9'; c++) {
        if (c == old) {
          continue;
        }
        digits[i] = c;
        each.accept(digits);
        if (twin) {
          digits[i + 1] = c;
          each.accept(digits);
          digits[i + 1] = old;
        }
        if (jumpTwin) {
          digits[i + 2] = c;
          each.accept(digits);
          digits[i + 2] = old;
        }
        digits[i] = old;
      }
      for (int j = i + 1; j <= i + 2 && j < digits.length; j++) {
        char other = digits[j];
        if (other != old) {
          digits[i] = other;
          digits[j] = old;
          each.accept(digits);
          digits[i] = old;
          digits[j] = other;
        }
      }
    }
  }
}
