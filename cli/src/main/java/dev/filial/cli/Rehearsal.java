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
          onRegister("plant", "Echeveria pulvinata", "--date", "2026-01-01"),
          onRegister("plant", "Echeveria laui var. alba", "--date", "2026-01-01"),
          onRegister("plant", "Echeveria", "--name", "Mystery", "--date", "2026-01-01"),
          // One of each generation, so that the classes that stand for them are seen: F1, F2, BC1,
          // three-way, double cross, complex, and none.
          onRegister("cross", "26-001", "26-002", "--date", "2026-02-01"),
          onRegister("number", "26-006", "2"),
          onRegister("cross", "26-006-1", "26-006-2", "--date", "2026-03-01"),
          onRegister("cross", "26-006-1", "26-001", "--date", "2026-03-01"),
          onRegister("cross", "26-006-1", "26-003", "--date", "2026-03-01"),
          onRegister("cross", "26-003", "26-004", "--date", "2026-03-01"),
          onRegister("number", "26-010", "1"),
          onRegister("cross", "26-006-1", "26-010-1", "--date", "2026-04-01"),
          onRegister("number", "26-007", "1"),
          onRegister("number", "26-009", "2"),
          onRegister("cross", "26-009-1", "26-007-1", "--date", "2026-04-01"),
          onRegister("cross", "26-009-2", "26-005", "--date", "2026-04-01"),
          onRegister("ancestry", "26-007-1"),
          onRegister("ancestry", "26-008"),
          onRegister("ancestry", "26-011"),
          onRegister("ancestry", "26-012"),
          onRegister("ancestry", "26-013"),
          onRegister("ancestry", "26-012", "--json"),
          onRegister("plant", "Echeveria laui", "--field", "FO 12", "--date", "2026-01-01"),
          onRegister("plant", "Echeveria laui", "--field", "FO 14", "--date", "2026-01-01"),
          onRegister("cross", "26-014", "26-015", "--date", "2026-04-01"),
          onRegister("population", "FO 12", "FO 14"),
          onRegister("related", "26-007-1", "26-009-1"),
          onRegister("related", "26-007-1"),
          onRegister("founders"),
          onRegister("locality", "26-016"),
          onRegister("locality", "FO 12"),
          onRegister("locality"),
          onRegister("tag", "26-006"),
          onRegister("labels", "26-006", "--qr"),
          onRegister("show", "rosa"),
          onRegister("list"),
          onRegister("trait", "tips", "--states", "red,plain"),
          onRegister("gene", "tips", "T", "t"),
          onRegister("model", "tips", "T_=red", "*=plain"),
          onRegister("profile", "Echeveria laui", "tips=t"),
          onRegister("genotype", "26-006-1", "Tt"),
          onRegister("odds", "26-008", "--want", "tips=plain", "--germination", "18/25"),
          onRegister("harvest", "26-008", "9", "--date", "2026-04-01"),
          onRegister("sow", "26-008", "9", "--date", "2026-04-01"),
          onRegister("tally", "26-008", "tips", "red=6", "plain=3", "--date", "2026-04-02"),
          onRegister("fit", "26-008", "--trait", "tips"),
          onRegister("attached", "26-008", "--at-most", "20"),
          onRegister("germination", "26-008"),
          onRegister("carries", "26-006-1", "--trait", "tips", "--why"),
          onRegister("carries", "26-006-1", "26-006-2", "--trait", "tips"),
          onRegister("next", "--want", "tips=plain", "--seasons", "3"),
          onRegister("mistakes"),
          onRegister("flower", "26-001", "26-002", "--date", "2026-04-01"),
          onRegister("flowering", "--on", "2026-04-02"),
          onRegister("pairs", "--on", "2026-04-02"),
          onRegister("pollen", "26-001", "gathered", "--date", "2026-04-01"),
          onRegister("pollenbox"),
          onRegister("fruit", "26-008", "--set", "1", "--failed", "1"),
          onRegister("sets"),
          onRegister("harvest", "26-009", "20", "--date", "2026-04-03"),
          onRegister("store", "26-009", "--place", "tin"),
          onRegister("promise", "26-009", "--count", "2", "--to", "Lena"),
          onRegister("tin"),
          onRegister("note", "26-001", "seen"),
          onRegister("again", "code=26-002"),
          onRegister("sheet"),
          onRegister("photos"),
          onRegister("draw", "26-012"),
          onRegister("page", "26-012"),
          onRegister("index"),
          onRegister("show", "26-099"));

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
