package dev.filial.cli.wording;

import static org.assertj.core.api.Assertions.assertThat;

import dev.filial.core.trial.Fit;
import dev.filial.core.trial.GoodnessOfFit;
import dev.filial.core.trial.Ratio;
import org.junit.jupiter.api.Test;

/** How a test of counts is told. */
class FitWordsTest {

  @Test
  void anExactTestIsToldAsASentence() {
    // Of 4 seedlings all of one kind at 1:1: twice 1/16, the other end being as likely.
    Fit fit =
        GoodnessOfFit.of(Ratio.parse("1:1")).withMethod(Fit.Method.EXACT).test(new long[] {4, 0});

    assertThat(FitWords.tested(fit))
        .isEqualTo("Exact test (all outcomes no likelier than this one added up): p 0.13.");
  }
}
