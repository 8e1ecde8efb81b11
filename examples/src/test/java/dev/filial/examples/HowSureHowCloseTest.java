package dev.filial.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class HowSureHowCloseTest {

  @Test
  void theProgramRunsAndSaysWhatItPromises() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    HowSureHowClose.print(new PrintStream(bytes, true, StandardCharsets.UTF_8));
    assertThat(bytes.toString(StandardCharsets.UTF_8))
        .isEqualToNormalizingNewlines(
            """
            backcross: 25.0 % Echeveria laui, s.d. 3.9; nine of ten between 19 and 32 %
            first cross × its sister: seedlings inbred by 25.0 %
            first cross × backcross: seedlings inbred by 37.5 %
            first cross × snow: seedlings inbred by 25.0 %
            """);
  }
}
