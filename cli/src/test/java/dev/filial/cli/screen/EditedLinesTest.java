package dev.filial.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jline.terminal.impl.DumbTerminal;
import org.jline.terminal.impl.ExternalTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Keys pressed at a terminal of JLine's that is no window. */
class EditedLinesTest {

  private static final List<String> CODES = List.of("22-001E", "24-007E P1", "24-007E P2", "Rosa");

  private static EditedLines pressing(String keys) throws IOException {
    return new EditedLines(
        new DumbTerminal(
            "test",
            "ansi",
            new ByteArrayInputStream(keys.getBytes(StandardCharsets.UTF_8)),
            new ByteArrayOutputStream(),
            StandardCharsets.UTF_8));
  }

  private static List<String> codes(List<String> before, String begun) {
    return CODES.stream().filter(code -> code.startsWith(begun)).toList();
  }

  @Test
  void theTabKeyCompletesAWord() throws IOException {
    try (EditedLines lines = pressing("show Ro\t\n")) {
      assertThat(lines.words("filial> ", EditedLinesTest::codes)).isEqualTo("show Rosa ");
    }
  }

  @Test
  void aCodeWithASpaceIsPutInQuotesOrEscapedSoThatItIsOneWord() throws IOException {
    try (EditedLines lines = pressing("count 24-007E\t\t\n")) {
      String line = lines.words("filial> ", EditedLinesTest::codes);
      assertThat(line).startsWith("count ").contains("24-007E").contains(" P");
    }
  }

  @Test
  void aTextIsOneWordWhateverIsInIt() throws IOException {
    try (EditedLines lines = pressing("24-007E P1\nO'Hara \"x\"\n")) {
      assertThat(lines.text("CODE: ", TypedLines.Completion.NONE)).isEqualTo("24-007E P1");
      assertThat(lines.text("remark: ", TypedLines.Completion.NONE)).isEqualTo("O'Hara \"x\"");
    }
  }

  @Test
  void aTextIsCompletedAsAWhole() throws IOException {
    try (EditedLines lines = pressing("Ro\t\n")) {
      assertThat(lines.text("PLANT: ", EditedLinesTest::codes).strip()).isEqualTo("Rosa");
    }
  }

  @Test
  void whatWasTypedCanBeMendedAndHistoryEventsMeanNothing() throws IOException {
    // Ctrl-A goes to the beginning, Ctrl-E to the end, Ctrl-W takes a word away.
    try (EditedLines lines = pressing("ross Rosa Lili\u0001c\u0005\u0017Lilo\nnote Rosa !!\n")) {
      assertThat(lines.words("> ", TypedLines.Completion.NONE)).isEqualTo("cross Rosa Lilo");
      assertThat(lines.words("> ", TypedLines.Completion.NONE)).isEqualTo("note Rosa !!");
    }
  }

  @Test
  void controlDEndsTheSitting() throws IOException {
    try (EditedLines lines = pressing("\u0004")) {
      assertThat(lines.words("> ", TypedLines.Completion.NONE)).isNull();
    }
  }

  /** The keys are pressed when the prompt stands there; the terminal makes a signal of Ctrl-C. */
  @Test
  @Timeout(30)
  void controlCCancelsWhatWasBegun() throws IOException {
    PipedOutputStream keys = new PipedOutputStream();
    PipedInputStream pressed = new PipedInputStream(keys);
    OutputStream window =
        new OutputStream() {
          private boolean prompted;

          @Override
          public void write(int shown) throws IOException {
            if (shown == '>' && !prompted) {
              prompted = true;
              keys.write("cross Ro\u0003".getBytes(StandardCharsets.UTF_8));
              keys.flush();
            }
          }
        };
    try (EditedLines lines =
        new EditedLines(
            new ExternalTerminal("test", "ansi", pressed, window, StandardCharsets.UTF_8))) {
      assertThatThrownBy(() -> lines.words("filial> ", TypedLines.Completion.NONE))
          .isInstanceOf(TypedLines.Cancelled.class);
    }
  }
}
