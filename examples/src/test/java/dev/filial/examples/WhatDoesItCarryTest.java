package dev.filial.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The example prints what it promises. */
class WhatDoesItCarryTest {

  /** By Bayes' rule: 2 to 1 beforehand, and six red halve it six times: 1 in 33. */
  @Test
  void sixRedSeedlingsLeaveLittleDoubt() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();

    WhatDoesItCarry.print(new PrintStream(out, true, StandardCharsets.UTF_8));

    assertThat(out.toString(StandardCharsets.UTF_8).lines())
        .containsExactly(
            "Looked at alone, dusk carries plain with a chance of 0.667",
            "With six red seedlings by a plain plant, dusk carries plain with a chance of 0.030");
  }
}
