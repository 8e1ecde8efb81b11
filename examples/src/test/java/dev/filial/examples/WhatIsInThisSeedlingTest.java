package dev.filial.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class WhatIsInThisSeedlingTest {

  @Test
  void theProgramRunsAndSaysWhatItPromises() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    WhatIsInThisSeedling.print(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .isEqualToNormalizingNewlines(
            """
            backcross: Echeveria agavoides/Echeveria laui//Echeveria agavoides
              Echeveria agavoides 75 %, Echeveria laui 25 %
              BC1 to Echeveria agavoides, the other being Echeveria laui; the plant of the first cross again
              seed-parent line backcross <- offset <- first cross <- ruby (Echeveria agavoides)
            second generation: Echeveria agavoides/Echeveria laui//Echeveria agavoides/Echeveria laui
              Echeveria agavoides 50 %, Echeveria laui 50 %
              F2 of Echeveria agavoides × Echeveria laui, by selfing
              seed-parent line second generation <- first cross <- ruby (Echeveria agavoides)
            triploid: Echeveria gigantea/Echeveria laui
              Echeveria gigantea 66.67 %, Echeveria laui 33.33 %
              F1 of Echeveria gigantea × Echeveria laui
              seed-parent line triploid <- giant (Echeveria gigantea)
            doubtful: doubtful
              Echeveria laui 55 %, Echeveria agavoides 45 %
              90 % F1 of Echeveria laui × Echeveria agavoides; or 10 % pure Echeveria laui, raised from seed
              seed-parent line doubtful <- snow (Echeveria laui)
              90 % cross: Echeveria agavoides 50 %, Echeveria laui 50 %
              10 % selfing: Echeveria laui 100 %
            """);
  }
}
