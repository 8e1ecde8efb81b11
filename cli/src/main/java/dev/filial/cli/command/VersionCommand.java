package dev.filial.cli.command;

import dev.filial.cli.frame.Answer;
import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.BenchCommand;
import dev.filial.cli.frame.Words;
import dev.filial.cli.screen.Screen;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.Properties;
import org.sqlite.SQLiteJDBCLoader;

/** {@code filial version}. */
public final class VersionCommand implements BenchCommand {

  /**
   * The versions in use.
   *
   * @param filial this program
   * @param java the Java that runs it
   * @param sqliteDriver the SQLite driver, whose first three numbers are SQLite's own
   */
  record Versions(String filial, String java, String sqliteDriver) implements Answer {
    @Override
    public void show(Screen screen) {
      screen.field("Filial", filial).field("Java", java).field("SQLite driver", sqliteDriver);
    }
  }

  /** Declares its words, of which there are none of its own. */
  public VersionCommand(Words words) {
    words.example("filial version").example("filial --version");
  }

  @Override
  public Answer run(Bench bench) {
    return new Versions(
        filialVersion(),
        System.getProperty("java.version") + " (" + System.getProperty("java.vendor") + ")",
        SQLiteJDBCLoader.getVersion());
  }

  private static String filialVersion() {
    Properties build = new Properties();
    try (InputStream stream =
        Objects.requireNonNull(
            VersionCommand.class.getResourceAsStream("/dev/filial/cli/build.properties"))) {
      build.load(stream);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return build.getProperty("version");
  }
}
