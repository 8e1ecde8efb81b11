package dev.filial.cli.frame;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterView;
import dev.filial.core.store.RegisterStore;
import dev.filial.core.store.SqliteStore;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;

/**
 * How commands get at a register: each opens the file for itself, or several share one that is open
 * for writing, so that each sees what those before it wrote and all of it is kept or none.
 */
public interface Registers {

  /**
   * The file of the register that is meant, which is there.
   *
   * @throws Trouble if it is not
   */
  default Path file(RegisterOption meant, Bench bench) {
    return meant.existingFile(bench);
  }

  /** Reads. */
  <R> R read(Path file, Function<RegisterView, R> work);

  /**
   * Writes: all that {@code work} appends, or nothing when it fails.
   *
   * @param author who writes, where the command line or the environment says so
   */
  <R> R write(Path file, Optional<String> author, Bench bench, Function<Writing, R> work);

  /** Each command opens the file and closes it again. */
  static Registers onDisk() {
    return new Registers() {
      @Override
      public <R> R read(Path file, Function<RegisterView, R> work) {
        try (RegisterStore store = SqliteStore.open(file)) {
          return store.read(work);
        }
      }

      @Override
      public <R> R write(
          Path file, Optional<String> author, Bench bench, Function<Writing, R> work) {
        try (RegisterStore store = SqliteStore.open(file)) {
          return store.write(
              author.orElseGet(() -> grower(store)),
              bench.clock().instant(),
              book -> work.apply(Writing.in(book, bench.today())));
        }
      }
    };
  }

  /** Whose register it is, who writes where nobody else is named. */
  static String grower(RegisterView view) {
    return view.opening().map(RegisterOpened::grower).orElse("");
  }
}
