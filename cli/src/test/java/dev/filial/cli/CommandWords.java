package dev.filial.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The words of a command line as a shell hands them over. */
final class CommandWords {

  private static final Pattern WORD = Pattern.compile("(?:[^\\s\"']+|\"[^\"]*\"|'[^']*')+");

  private CommandWords() {}

  /** What follows {@code filial}, up to where the output is sent elsewhere. */
  static List<String> of(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find() && !matcher.group().equals(">")) {
      words.add(matcher.group().replaceAll("[\"']", ""));
    }
    return words.subList(1, words.size());
  }
}
