package dev.filial.cli.frame;

import java.util.Optional;
import java.util.function.Supplier;

/** Who writes an entry: {@code --by}, else the variable {@code FILIAL_BY}. */
public final class AuthorOption {

  static final String NAME = "--by";

  private final Supplier<Optional<String>> name;

  private AuthorOption(Supplier<Optional<String>> name) {
    this.name = name;
  }

  /** For a command that records nothing, and so has no author. */
  static AuthorOption none() {
    return new AuthorOption(Optional::empty);
  }

  /** Adds the option to a command that records something. */
  public AuthorOption(Words words) {
    name =
        words.option(
            NAME,
            "NAME",
            "Who writes this; otherwise the name in FILIAL_BY, otherwise the register's grower.");
  }

  /** The name given, if any; where none is, the register's grower is the author. */
  public Optional<String> name(Bench bench) {
    return name.get()
        .map(String::strip)
        .filter(text -> !text.isEmpty())
        .or(() -> bench.variable("FILIAL_BY"));
  }
}
