package dev.filial.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/**
 * What the launcher runs once for each version of Java and of Filial: puts SQLite's library into
 * the current folder, then runs a few commands of each kind so that the classes a short command
 * needs are seen and can be put into an archive. What it prints is thrown away.
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

  /**
   * Does all that.
   *
   * @throws IOException if the library cannot be written, which the launcher takes for a sign that
   *     nothing can be kept here
   */
  public static void main(String[] args) throws IOException {
    SqliteLibrary.unpackInto(Path.of("").toAbsolutePath());
    COMMANDS.forEach(words -> Launch.run(words.toArray(String[]::new)));
  }
}
