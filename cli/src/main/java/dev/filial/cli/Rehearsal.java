package dev.filial.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
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
          List.of("version", "--nothing"),
          onRegister("start", "KB", "--grower", "Klara"),
          onRegister("plant", "Echeveria laui", "--date", "2026-01-01"),
          onRegister("plant", "Echeveria agavoides", "--date", "2026-01-01", "--name", "Rosa"),
          onRegister("cross", "26-001", "26-002", "--date", "2026-02-01"),
          onRegister("number", "26-003", "2"),
          onRegister("ancestry", "26-003-1"),
          onRegister("ancestry", "26-003-1", "--json"),
          onRegister("tag", "26-003"),
          onRegister("show", "rosa"),
          onRegister("list"),
          onRegister("show", "26-009"));

  /**
   * A register of its own in the current folder: never the one that the grower's variable names.
   */
  private static List<String> onRegister(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add("--register");
    all.add("rehearsal.register");
    return List.copyOf(all);
  }

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
