package dev.filial.cli.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.filial.cli.screen.Terminal;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RegisterOptionTest {

  @TempDir private Path folder;

  private Bench bench(Map<String, String> env) {
    return new Bench(
        Terminal.of(
            new PrintWriter(Writer.nullWriter()),
            new PrintWriter(Writer.nullWriter()),
            new BufferedReader(Reader.nullReader()),
            "",
            null,
            env),
        env,
        Clock.systemUTC(),
        folder);
  }

  private static RegisterOption typed(Bench bench, String... words) {
    Words declared = new Words();
    RegisterOption option = new RegisterOption(declared);
    declared.read(List.of(words), bench);
    return option;
  }

  @Test
  void theOptionGoesBeforeTheVariableAndThatBeforeTheFolder() {
    Bench plain = bench(Map.of());
    Bench named = bench(Map.of("FILIAL_REGISTER", "balcony.register"));

    assertThat(typed(plain).file(plain)).isEqualTo(folder.resolve("filial.register"));
    assertThat(typed(named).file(named)).isEqualTo(folder.resolve("balcony.register"));
    assertThat(typed(named, "--register", "/a/b").file(named)).isEqualTo(Path.of("/a/b"));
  }

  @Test
  void whereThereIsNoneTheErrorSaysHowToMakeOne() {
    Bench bench = bench(Map.of());

    assertThatThrownBy(() -> typed(bench).existingFile(bench))
        .isInstanceOfSatisfying(
            Trouble.class,
            trouble -> {
              assertThat(trouble).hasMessage("there is no filial.register in " + folder);
              assertThat(trouble.remedy()).contains("filial start KB");
              assertThat(trouble.status()).isEqualTo(Status.FILE);
            });
  }

  @Test
  void aFolderIsNotARegister() {
    Bench bench = bench(Map.of("FILIAL_REGISTER", "."));

    assertThatThrownBy(() -> typed(bench).existingFile(bench)).hasMessageContaining("is a folder");
  }

  @Test
  void aFileThatIsThereIsFound() throws IOException {
    Bench bench = bench(Map.of());
    Path file = Files.createFile(folder.resolve("filial.register"));

    assertThat(typed(bench).existingFile(bench)).isEqualTo(file);
  }
}
