package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.register.Determination;
import dev.filial.core.register.PlantAcquired;
import dev.filial.core.register.Provenance;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** A second program with the same register open: run as a process of its own by the tests. */
final class ChildWriter {

  private ChildWriter() {}

  /** {@code append FILE COUNT} or {@code hang FILE COUNT}. */
  public static void main(String[] args) throws Exception {
    Path file = Path.of(args[1]);
    int count = Integer.parseInt(args[2]);
    try (SqliteStore store = SqliteStore.open(file)) {
      if (args[0].equals("append")) {
        for (int i = 0; i < count; i++) {
          appendNext(store);
        }
        return;
      }
      store.write(
          "Klara",
          Bench.NOON,
          book -> {
            for (int i = 0; i < count; i++) {
              // Long remarks, so that SQLite cannot hold it all back in memory.
              book.append(
                  new PlantAcquired(
                      Code.of(25, i + 1),
                      Determination.UNKNOWN,
                      Provenance.UNKNOWN,
                      null,
                      List.of(),
                      false,
                      null,
                      "x".repeat(200_000)));
            }
            System.out.println("ready");
            System.out.flush();
            try {
              Thread.sleep(60_000); // killed long before
            } catch (InterruptedException e) {
              throw new IllegalStateException(e);
            }
            return null;
          });
    }
  }

  /** One cross under the next free code, taken inside the write. */
  static void appendNext(RegisterStore store) {
    store.write(
        "Klara",
        Bench.NOON,
        book ->
            book.append(
                Bench.cross(Code.of(26, book.lastNumber(26) + 1), Code.of(24, 1), Code.of(24, 2))));
  }

  /** Starts it. */
  static Process start(String what, Path file, int count) throws IOException {
    return start(ChildWriter.class, what, file.toString(), Integer.toString(count));
  }

  /** Starts a program of the tests. */
  static Process start(Class<?> program, String... words) throws IOException {
    Set<String> path = new LinkedHashSet<>(List.of("target/test-classes", "target/classes"));
    for (String property :
        List.of("surefire.test.class.path", "jdk.module.path", "java.class.path")) {
      path.addAll(List.of(System.getProperty(property, "").split(File.pathSeparator)));
    }
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                String.join(File.pathSeparator, path),
                program.getName()));
    command.addAll(List.of(words));
    return new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
  }
}
