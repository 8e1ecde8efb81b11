package dev.filial.cli.frame;

import java.util.regex.Pattern;

/** A command line that is shown to be typed. */
public final class CommandLine {

  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}_./:@%+,=~-]+");

  private CommandLine() {}

  /**
   * A word so that a shell takes it as one: as it is where nothing in it needs quotes, else in
   * single quotes, or in double quotes where it holds a single one.
   */
  public static String quoted(String word) {
    if (PLAIN.matcher(word).matches()) {
      return word;
    }
    return word.contains("'") && word.matches("[^\"$`\\\\!]*")
        ? "\"" + word + "\""
        : "'" + word.replace("'", "'\\''") + "'";
  }
}
