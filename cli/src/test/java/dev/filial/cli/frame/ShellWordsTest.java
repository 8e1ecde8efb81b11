package dev.filial.cli.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ShellWordsTest {

  private static List<String> words(String line) {
    return ShellWords.of(line).stream().map(ShellWords.Word::text).toList();
  }

  @Test
  void spacesAndTabsPartWords() {
    assertThat(words("  cross\tRosa  Lilo ")).containsExactly("cross", "Rosa", "Lilo");
    assertThat(words("")).isEmpty();
    assertThat(words("  # remark")).isEmpty();
    assertThat(words("note 24-007#2 # remark")).containsExactly("note", "24-007#2");
  }

  @Test
  void quotesKeepWhatStandsInThem() {
    assertThat(words("note \"O'Hara\" 'a \"b\" # c' \"\" ''"))
        .containsExactly("note", "O'Hara", "a \"b\" # c", "", "");
    assertThat(words("a\"b c\"d'e f'")).containsExactly("ab cde f");
    assertThat(words("\"\\\"x\\\" \\$ \\n\"")).containsExactly("\"x\" $ \\n");
    assertThat(words("a\\ b \\# \\'")).containsExactly("a b", "#", "'");
  }

  @Test
  void nothingElseMeansAnything() {
    assertThat(words("$HOME *.txt ~ a;b |x >y & `z`"))
        .containsExactly("$HOME", "*.txt", "~", "a;b", "|x", ">y", "&", "`z`");
  }

  @Test
  void onlyAWordWithoutQuotesIsBare() {
    assertThat(ShellWords.of("^ '^' \\^ x'^'"))
        .extracting(ShellWords.Word::bare)
        .containsExactly(true, false, false, false);
  }

  @ParameterizedTest
  @ValueSource(strings = {"note 'x", "note \"x", "note x\\", "note \"x\\\""})
  void whatIsNotClosedIsRefused(String line) {
    assertThatThrownBy(() -> ShellWords.of(line)).isInstanceOf(IllegalArgumentException.class);
  }

  /** A word written for a shell is read back as it was. */
  @ParameterizedTest
  @ValueSource(
      strings = {"Rosa", "24-007 P1", "O'Hara", "a\"b'c", "x\\y", "$a `b`", "# x", "'", "🌵 é"})
  void whatIsQuotedIsReadBack(String word) {
    assertThat(words(CommandLine.quoted(word))).containsExactly(word);
  }
}
