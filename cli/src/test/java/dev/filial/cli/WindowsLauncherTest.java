package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The launcher of Windows, {@code cli/filial.cmd}, read beside that of the others. */
class WindowsLauncherTest {

  private static final Pattern OPTION = Pattern.compile("--?[DX][A-Za-z:.+-][A-Za-z0-9:.+-]*");

  /** What the script of the others finds out for the program, and this one leaves to it. */
  private static final Set<String> FOUND_BY_ITSELF =
      Set.of("-Dfilial.terminals", "-Dfilial.columns", "-Dfilial.input");

  /** What the program does for the script, and how a console is told from a pipe there. */
  private static final Set<String> ONLY_ON_WINDOWS =
      Set.of("-Dfilial.sources", "-Dfilial.built", "-Djdk.console");

  private static Set<String> options(String script) {
    Set<String> options = new TreeSet<>();
    for (String line : script.lines().toList()) {
      String code = line.strip();
      if (!code.startsWith("rem ") && !code.startsWith("#")) {
        OPTION.matcher(code).results().map(MatchResult::group).forEach(options::add);
      }
    }
    // Maven's, where the program is built.
    options.removeIf(option -> option.matches("-D(maven|spotless|jacoco|style)\\..*"));
    return options;
  }

  private static String bulkVerbs(String script, String pattern) {
    return Pattern.compile(pattern).matcher(script).results().findFirst().orElseThrow().group(1);
  }

  @Test
  void javaIsGivenTheSameOptionsOnWindows() throws IOException {
    Set<String> posix = options(Files.readString(Path.of("filial")));
    Set<String> windows = options(Files.readString(Path.of("filial.cmd")));
    assertThat(posix).contains("-XX:TieredStopAtLevel", "-Dorg.sqlite.lib.path");
    posix.removeAll(FOUND_BY_ITSELF);
    windows.removeAll(ONLY_ON_WINDOWS);
    assertThat(windows).isEqualTo(posix);
  }

  @Test
  void theSameVerbsGetTheOptimisingCompilerOnWindows() throws IOException {
    assertThat(bulkVerbs(Files.readString(Path.of("filial.cmd")), "for %%V in \\((.*)\\) do"))
        .isEqualTo(bulkVerbs(Files.readString(Path.of("filial")), "bulk_verbs=' (.*) '"));
  }

  @Test
  void everyLineEndsAsTheCommandShellOfWindowsWants() throws IOException {
    assertThat(Files.readString(Path.of("filial.cmd")).replace("\r\n", ""))
        .doesNotContain("\n")
        .doesNotContain("\r");
  }
}
