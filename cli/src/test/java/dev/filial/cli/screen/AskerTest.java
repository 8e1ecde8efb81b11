package dev.filial.cli.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.Writer;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AskerTest {

  private final StringWriter err = new StringWriter();

  private Asker asker(String attached, String input) {
    return new Asker(
        Terminal.of(
            new PrintWriter(Writer.nullWriter()),
            new PrintWriter(err),
            new BufferedReader(new StringReader(input)),
            attached,
            null,
            Map.of()));
  }

  @Test
  void enterTakesWhatIsSuggested() {
    assertThat(asker("02", "\n").ask("Seed parent", "24-003H")).contains("24-003H");
    assertThat(err).hasToString("Seed parent [24-003H]: ");
  }

  @Test
  void withoutASuggestionTheQuestionIsPutAgain() {
    assertThat(asker("02", "\n  \n 24-007P \n").ask("Pollen parent", null)).contains("24-007P");
    assertThat(err).hasToString("Pollen parent: Pollen parent: Pollen parent: ");
  }

  @Test
  void whereNobodySitsNothingIsAsked() {
    Asker script = asker("", "24-007P\n");

    assertThat(script.canAsk()).isFalse();
    assertThat(script.ask("Pollen parent", null)).isEmpty();
    assertThat(script.confirm("Undo?", false)).isFalse();
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void whenTheInputEndsThereIsNoAnswer() {
    assertThat(asker("02", "").ask("Pollen parent", null)).isEmpty();
  }

  @Test
  void yesAndNoAreUnderstoodAndNothingElse() {
    assertThat(asker("02", "perhaps\nYES\n").confirm("Undo?", false)).isTrue();
    assertThat(err).hasToString("Undo? [y/N]: Answer y or n.\nUndo? [y/N]: ");
    assertThat(asker("02", "n\n").confirm("Undo?", true)).isFalse();
    assertThat(asker("02", "\n").confirm("Undo?", true)).isTrue();
  }
}
