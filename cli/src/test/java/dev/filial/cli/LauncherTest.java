package dev.filial.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher {@code cli/filial}, copied beside a stand-in for the program and run with stand-ins
 * for Java and Maven that say how they were called: what it decides is tested, not what they do.
 */
class LauncherTest {

  private static final Path SH = Path.of("/bin/sh");

  private record Outcome(int status, String out, String err) {}

  @TempDir private Path folder;
  private Path launcher;
  private Path jar;
  private Path java;

  @BeforeEach
  void layOut() throws IOException {
    assumeTrue(Files.isExecutable(SH), "there is no /bin/sh here, so its script cannot be run");
    folder = folder.toRealPath();
    launcher = folder.resolve("home of filial/cli/filial");
    Files.createDirectories(launcher.resolveSibling("src/main"));
    Files.createDirectories(launcher.resolveSibling("target"));
    Files.copy(Path.of("filial"), launcher);
    launcher.toFile().setExecutable(true);
    jar = Files.writeString(launcher.resolveSibling("target/filial.jar"), "program");
    java = javaHome("17.0.9");
    // Older than the program, as sources are after a build.
    age(launcher.resolveSibling("src/main"));
    script("tools/mvn", "echo called: mvn >&2; echo built > cli/target/filial.jar");
  }

  private Path javaHome(String version) throws IOException {
    Path home = folder.resolve("java-" + version);
    // Making an archive is the run that dumps it; any other is the program's.
    script(
        home.resolve("bin/java").toString(),
        "case \"$*\" in *-Xshare:dump*) echo archive > archive;; esac; printf '<%s>' \"$@\"");
    Files.writeString(
        home.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"" + version + "\"\n");
    return home;
  }

  private void script(String name, String body) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, "#!/bin/sh\n" + body + "\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private static void age(Path path) throws IOException {
    Files.setLastModifiedTime(path, FileTime.from(Instant.now().minusSeconds(3600)));
  }

  private Outcome run(Path command, Map<String, String> more, String... args)
      throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(List.of(SH.toString(), command.toString()));
    line.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(line).directory(folder.toFile());
    Map<String, String> env = builder.environment();
    env.clear();
    env.put("PATH", folder.resolve("tools") + ":/usr/bin:/bin");
    env.put("HOME", folder.resolve("grower").toString());
    env.put("JAVA_HOME", java.toString());
    env.putAll(more);
    Path out = Files.createTempFile(folder, "out", null);
    Path err = Files.createTempFile(folder, "err", null);
    int status = builder.redirectOutput(out.toFile()).redirectError(err.toFile()).start().waitFor();
    return new Outcome(status, Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }

  private Outcome run(String... args) throws IOException, InterruptedException {
    return run(launcher, Map.of(), args);
  }

  @Test
  void argumentsReachTheProgramAsTheyWereTyped() throws Exception {
    Outcome outcome = run("show", "Echeveria laui", "", "*", "$HOME", "a\"b");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.out())
        .contains("<-cp><" + jar + "><dev.filial.cli.Filial>")
        .endsWith("<show><Echeveria laui><><*><$HOME><a\"b>");
  }

  @Test
  void aStandardInputThatIsClosedIsSaidToBe() throws Exception {
    Path closing = folder.resolve("tools/closing");
    script(closing.toString(), "exec '" + launcher + "' \"$@\" <&-");
    Path reading = folder.resolve("tools/reading");
    script(reading.toString(), "exec '" + launcher + "' \"$@\" </dev/null");

    assertThat(run(closing, Map.of(), "batch").out()).contains("<-Dfilial.input=closed>");
    assertThat(run(reading, Map.of(), "batch").out()).doesNotContain("filial.input");
  }

  @Test
  void linksToTheLauncherAreFollowed() throws Exception {
    Path far = folder.resolve("bin/filial");
    Files.createDirectories(far.getParent());
    Files.createSymbolicLink(folder.resolve("near"), launcher);
    Files.createSymbolicLink(far, Path.of("../near"));

    assertThat(run(far, Map.of(), "help").out()).contains("<" + jar + ">");
  }

  @Test
  void theArchiveIsMadeOnceAndKeptInTheCache() throws Exception {
    Outcome first = run("help");
    Outcome second = run("help");

    assertThat(first.err()).contains("preparing once").contains("17.0.9");
    assertThat(second.err()).isEmpty();
    Path cache = folder.resolve("grower/.cache/filial");
    try (Stream<Path> files = Files.walk(cache)) {
      assertThat(files.filter(Files::isRegularFile).map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrder("archive", "made-for");
    }
    assertThat(second.out()).contains("<-XX:SharedArchiveFile=" + cache);
  }

  @Test
  void anotherReleaseOfJavaInTheSamePlaceGetsAnArchiveOfItsOwn() throws Exception {
    run("help");
    Files.writeString(java.resolve("release"), "JAVA_VERSION=\"17.0.10\"\n");

    assertThat(run("help").err()).contains("preparing once").contains("17.0.10");
  }

  @Test
  void aCacheThatCannotBeWrittenDoesNotStandInTheWay() throws Exception {
    Path file = Files.writeString(folder.resolve("not-a-folder"), "");
    Outcome outcome = run(launcher, Map.of("XDG_CACHE_HOME", file.toString()), "help");

    assertThat(outcome.status()).isZero();
    assertThat(outcome.err()).isEmpty();
    assertThat(outcome.out()).endsWith("<dev.filial.cli.Filial><help>");
  }

  @Test
  void aMissingProgramIsBuiltOnce() throws Exception {
    Files.delete(jar);

    Outcome first = run("help");
    assertThat(first.status()).isZero();
    assertThat(first.err()).contains("building once").contains("called: mvn");
    assertThat(run("help").err()).doesNotContain("building once");
  }

  @Test
  void aChangedSourceIsBuilt() throws Exception {
    age(jar);
    Files.writeString(launcher.resolveSibling("src/main/Changed.java"), "");

    assertThat(run("help").err()).contains("building once");
    assertThat(launcher.resolveSibling("target/building")).doesNotExist();
  }

  @Test
  void aBuildThatFailsIsStatusThree() throws Exception {
    Files.delete(jar);
    script("tools/mvn", "echo no such luck >&2; exit 1");

    Outcome outcome = run("help");
    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err()).contains("no such luck").contains("the build failed");
    assertThat(launcher.resolveSibling("target/building")).doesNotExist();
  }

  @Test
  void theLockOfABuildThatDiedIsTakenOver() throws Exception {
    Files.delete(jar);
    Path lock = Files.createDirectories(launcher.resolveSibling("target/building"));
    Process gone = new ProcessBuilder("/bin/sh", "-c", "exit 0").start();
    gone.waitFor();
    Files.writeString(lock.resolve("pid"), gone.pid() + "\n");

    assertThat(run("help").err()).contains("building once");
  }

  @Test
  void aJavaTooOldIsNamed() throws Exception {
    java = javaHome("11.0.2");

    Outcome outcome = run("help");
    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err()).contains("11.0.2").contains("needs version 17");
  }

  @Test
  void aJavaHomeWithoutJavaIsNamed() throws Exception {
    Outcome outcome = run(launcher, Map.of("JAVA_HOME", "/nowhere"), "help");

    assertThat(outcome.status()).isEqualTo(3);
    assertThat(outcome.err()).contains("JAVA_HOME is /nowhere");
  }

  @Test
  void newerJavaIsToldThatTheNativeLibraryIsWanted() throws Exception {
    java = javaHome("25.0.1");

    assertThat(run("help").out()).contains("<--enable-native-access=ALL-UNNAMED>");
  }

  @Test
  void aLanguageThatIsNotInstalledLosesNoLetters() throws Exception {
    script(
        java.resolve("bin/java").toString(),
        "case \"$*\" in *-Xshare:dump*) echo archive > archive;; esac; echo \"$LC_ALL\"");
    for (String language : List.of("C", "de_DE.UTF-8", "de_DE.utf8")) {
      assertThat(run(launcher, Map.of("LANG", language), "list").out()).isEqualTo("C.UTF-8\n");
    }
    assertThat(run(launcher, Map.of("LC_ALL", "de_DE.ISO-8859-1"), "list").out())
        .isEqualTo("de_DE.ISO-8859-1\n");
  }
}
