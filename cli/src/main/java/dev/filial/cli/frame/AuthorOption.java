package dev.filial.cli.frame;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/**
 * Who writes an entry: {@code --by}, else the variable {@code FILIAL_BY}. To be mixed into a
 * command that records something.
 */
public final class AuthorOption {

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description =
          "Who writes this; otherwise the name in FILIAL_BY, otherwise the register's grower.")
  private @Nullable String name;

  /** The name given, if any; where none is, the register's grower is the author. */
  public Optional<String> name(Bench bench) {
    return Optional.ofNullable(name)
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .or(() -> bench.variable("FILIAL_BY"));
  }
}
