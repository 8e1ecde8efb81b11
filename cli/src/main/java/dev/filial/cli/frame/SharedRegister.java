package dev.filial.cli.frame;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.store.Book;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;

/** One register open for writing, which several commands work on one after the other. */
public final class SharedRegister implements Registers {

  private final Path file;
  private final Book book;
  private final Instant time;
  private BiConsumer<Accepted, Statement> witness = (accepted, statement) -> {};

  SharedRegister(Path file, Book book, Instant time) {
    this.file = file;
    this.book = book;
    this.time = time;
  }

  /** The register with all that was appended so far. */
  public RegisterView view() {
    return book;
  }

  /** Where the register lies. */
  public Path file() {
    return file;
  }

  /** Has {@code taker} told of each entry from now on. */
  public void tell(BiConsumer<Accepted, Statement> taker) {
    witness = taker;
  }

  @Override
  public Path file(RegisterOption meant, Bench bench) {
    return meant.isTyped() ? meant.existingFile(bench) : file;
  }

  @Override
  public <R> R read(Path other, Function<RegisterView, R> work) {
    requireThis(other);
    return work.apply(book);
  }

  @Override
  public <R> R write(Path other, Optional<String> author, Bench bench, Function<Writing, R> work) {
    requireThis(other);
    return work.apply(Writing.in(book, bench.today()).by(author, time).amongMany(witness));
  }

  private void requireThis(Path other) {
    if (!other.equals(file)
        && !other.toAbsolutePath().normalize().equals(file.toAbsolutePath().normalize())) {
      throw Trouble.usage(
          "this would be written into another register, " + other,
          "All of a batch goes into one register, " + file + ": leave --register out.");
    }
  }
}
