package dev.filial.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is handed on meets a disk that is full: a real one of a few pages of memory. */
class FullDiskTest {

  /** Smaller than any form of the demo register, and larger than what is written at once. */
  private static final String DISK = "mount -t tmpfs -o size=8k none \"$1\" && ";

  private record Outcome(int status, String out, String err) {}

  @TempDir private Path folder;

  /** A process of its own, whose disks nobody else sees; it needs no more rights than ours. */
  private Outcome apart(String script) throws IOException, InterruptedException {
    Path disk = Files.createDirectories(folder.resolve("disk"));
    return run("unshare", "-Urm", "/bin/sh", "-c", script, "sh", disk.toString());
  }

  private Outcome run(String... command) throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process process =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    if (!process.waitFor(2, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("still running: " + List.of(command));
    }
    return new Outcome(
        process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }

  /** The program as a line of a script. */
  private static String filial(String words) {
    List<String> line = new ArrayList<>();
    line.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    line.add("-cp");
    line.add(
        System.getProperty("java.class.path")
            + File.pathSeparator
            + System.getProperty("jdk.module.path", ""));
    line.add("dev.filial.cli.Filial");
    return "'" + String.join("' '", line) + "' " + words;
  }

  private void assumeDiskCanBeMade() throws InterruptedException {
    boolean can;
    try {
      can = apart(DISK + "true").status() == 0;
    } catch (IOException e) {
      can = false;
    }
    assumeTrue(can, "this system lets nobody make a small disk of his own (unshare -Urm)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"plants", "graphml", "dot", "entries"})
  void whatDoesNotFitOnTheDiskIsSaidAndNothingIsLeftOfIt(String form) throws Exception {
    assumeDiskCanBeMade();
    DemoRegister.in(folder);

    Outcome outcome =
        apart(
            DISK
                + filial("export " + form + " --to \"$1/handed-on\"")
                + "; status=$?; ls -A \"$1\"; exit $status");

    assertThat(outcome.status()).as(outcome.err()).isEqualTo(3);
    assertThat(outcome.out()).as("nothing is said to be written, and no file is left").isEmpty();
    assertThat(outcome.err().replaceAll("\\s+", " "))
        .contains("handed-on", "No space left on device; nothing was left of it");
  }

  @Test
  void aFullDiskBehindStandardOutputIsSaidToo() throws Exception {
    assumeTrue(Files.isWritable(Path.of("/dev/full")), "there is no /dev/full here");
    DemoRegister.in(folder);

    Outcome outcome = run("/bin/sh", "-c", filial("export graphml") + " >/dev/full");

    assertThat(outcome.status()).as(outcome.err()).isEqualTo(3);
    assertThat(outcome.err()).contains("could not all be written", "disk full");
  }
}
