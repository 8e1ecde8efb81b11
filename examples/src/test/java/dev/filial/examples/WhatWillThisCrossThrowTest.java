package dev.filial.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class WhatWillThisCrossThrowTest {

  @Test
  void theProgramRunsAndSaysWhatItPromises() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    WhatWillThisCrossThrow.print(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .isEqualToNormalizingNewlines(
            """
            not linked: 9:3:3:1
              red, blue 9/16
              red, bare 3/16
              green, blue 3/16
              green, bare 1/16
            linked, in coupling: 281:19:19:81
              red, blue 281/400
              red, bare 19/400
              green, blue 19/400
              green, bare 81/400
            both needed: 9:7
              pink 9/16
              white 7/16
            leaf edge green, wax blue, true-breeding for wax: 1/16
              seeds for two of them, 18 of 25 having germinated: 110
              after four more selfings of green ones: 31/64
            Mendel's peas against 9:3:3:1: CHI_SQUARE, p 0.9254
            """);
  }
}
