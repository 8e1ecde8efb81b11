package dev.filial.cli.frame;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Which register a command works on: {@code --register}, else the variable {@code FILIAL_REGISTER},
 * else {@code filial.register} in the current folder.
 */
public final class RegisterOption {

  /** The file looked for where none is named. */
  public static final String DEFAULT_NAME = "filial.register";

  private static final String VARIABLE = "FILIAL_REGISTER";

  private final Supplier<Optional<String>> named;

  /** Adds the option to a command that works on a register. */
  public RegisterOption(Words words) {
    named =
        words.option(
            "--register",
            "FILE",
            "The register to work on; otherwise the one named by FILIAL_REGISTER, otherwise"
                + " filial.register in this folder.");
  }

  /**
   * The register's file, whether it exists or not.
   *
   * @throws Trouble if the name cannot be the name of a file
   */
  public Path file(Bench bench) {
    String name = name(bench).orElse(DEFAULT_NAME);
    try {
      return bench.folder().resolve(name);
    } catch (InvalidPathException e) {
      throw Trouble.usage("\"" + name + "\" cannot be the name of a file", "Name another.");
    }
  }

  /**
   * The register's file, which is there.
   *
   * @throws Trouble if it is not, saying where it was looked for and how to make one
   */
  public Path existingFile(Bench bench) {
    Path file = file(bench);
    if (Files.isRegularFile(file)) {
      return file;
    }
    if (Files.isDirectory(file)) {
      throw Trouble.file(
          file + " is a folder, not a register",
          "Name the file in it: --register " + file.resolve(DEFAULT_NAME));
    }
    throw Trouble.file(
        name(bench).isPresent()
            ? "there is no register " + file
            : "there is no " + DEFAULT_NAME + " in " + bench.folder(),
        "Make one with: filial start KB --grower \"Your Name\". Or name the file: --register FILE,"
            + " or set FILIAL_REGISTER.");
  }

  /** Whether the command line names it. */
  boolean isTyped() {
    return named.get().isPresent();
  }

  private Optional<String> name(Bench bench) {
    return named.get().filter(name -> !name.isBlank()).or(() -> bench.variable(VARIABLE));
  }
}
