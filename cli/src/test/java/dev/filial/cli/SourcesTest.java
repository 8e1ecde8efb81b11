package dev.filial.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourcesTest {

  @TempDir private Path root;

  @Test
  void onlyWhatIsBuiltFromMakesTheProgramOld() throws IOException {
    FileTime built = FileTime.from(Instant.now().plusSeconds(60));
    Path source = root.resolve("core/src/main/java/Plant.java");
    Files.createDirectories(source.getParent());
    Files.createDirectories(root.resolve("core/src/test"));
    Files.writeString(source, "");
    assertThat(Sources.newerThan(root, built)).isFalse();

    FileTime later = FileTime.from(built.toInstant().plusSeconds(60));
    Files.setLastModifiedTime(root.resolve("core/src/test"), later);
    assertThat(Sources.newerThan(root, built)).isFalse();

    Files.setLastModifiedTime(source, later);
    assertThat(Sources.newerThan(root, built)).isTrue();
  }
}
