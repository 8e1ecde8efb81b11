package dev.filial.cli;

import java.util.List;

/**
 * Runs a few commands of each kind, so that the launcher can see which classes a short command
 * needs and put them into an archive. Works in the current folder, which is a passing one; what it
 * prints is thrown away.
 */
public final class Rehearsal {

  private static final List<List<String>> COMMANDS =
      List.of(
          List.of("help"),
          List.of("help", "completion"),
          List.of("version"),
          List.of("version", "--json"),
          List.of("versoin"),
          List.of("version", "--nothing"));

  private Rehearsal() {}

  /** Runs them. */
  public static void main(String[] args) {
    COMMANDS.forEach(words -> Launch.run(words.toArray(String[]::new)));
  }
}
