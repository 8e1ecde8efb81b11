package dev.filial.cli.frame;

import dev.filial.core.answer.Cautions;
import dev.filial.core.answer.Finding;
import dev.filial.core.register.Accepted;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.store.Book;
import dev.filial.core.store.RegisterStore;
import dev.filial.core.store.SqliteStore;
import java.io.File;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Predicate;

/** The register a command works on: adds the options that name it, opens it and closes it again. */
public final class OpenRegister {

  private final RegisterOption file;
  private final AuthorOption author;

  private OpenRegister(RegisterOption file, AuthorOption author) {
    this.file = file;
    this.author = author;
  }

  /** For a command that only reads: adds {@code --register}. */
  public static OpenRegister toRead(Words words) {
    return new OpenRegister(new RegisterOption(words), AuthorOption.none());
  }

  /** For a command that records something: adds {@code --register} and {@code --by}. */
  public static OpenRegister toWrite(Words words) {
    return new OpenRegister(new RegisterOption(words), new AuthorOption(words));
  }

  /**
   * How the register names a file beside it: by its way from the register's folder where it lies
   * under that, so that both can be moved together; else by its full name.
   */
  public String relative(Path other, Bench bench) {
    Path folder = file.existingFile(bench).toAbsolutePath().normalize().getParent();
    Path full = other.toAbsolutePath().normalize();
    // A slash everywhere, so that the name means the same on another system.
    return folder != null && full.startsWith(folder)
        ? folder.relativize(full).toString().replace(File.separatorChar, '/')
        : full.toString();
  }

  /** The register's file, whether it is there or not, for a command that does not open it. */
  public Path file(Bench bench) {
    return file.file(bench);
  }

  /** The register's file, which is there, for a command that does not open it. */
  public Path existingFile(Bench bench) {
    return file.existingFile(bench);
  }

  /** Who writes, by what the command line or the environment says. */
  public Optional<String> author(Bench bench) {
    return author.name(bench);
  }

  /** Reads. */
  public <R> R read(Bench bench, Function<RegisterView, R> work) {
    return bench.registers().read(bench.registers().file(file, bench), work);
  }

  /** Works on the store as a whole: to verify it. */
  public <R> R store(Bench bench, Function<RegisterStore, R> work) {
    try (RegisterStore store = SqliteStore.open(file.existingFile(bench))) {
      return work.apply(store);
    }
  }

  /** What is done with a store, and in whose name. */
  @FunctionalInterface
  public interface Work<R> {
    /**
     * Does it.
     *
     * @param by who writes
     */
    R with(RegisterStore store, String by);
  }

  /** Works on the store as a whole in the name of who writes: to take in many entries at once. */
  public <R> R storeToWrite(Bench bench, Work<R> work) {
    try (RegisterStore store = SqliteStore.open(file.existingFile(bench))) {
      return work.with(store, author.name(bench).orElseGet(() -> Registers.grower(store)));
    }
  }

  /** Writes: all that {@code work} appends, or nothing when it fails. */
  public <R> R write(Bench bench, Function<Writing, R> work) {
    return bench
        .registers()
        .write(bench.registers().file(file, bench), author.name(bench), bench, work);
  }

  /**
   * Opens the register for several commands that work on it one after the other. All that they
   * wrote is kept together, or none of it.
   *
   * @param kept whether what was written is kept, by what {@code work} returned
   */
  public <R> R share(Bench bench, Function<SharedRegister, R> work, Predicate<R> kept) {
    Path existing = file.existingFile(bench);
    Instant time = bench.clock().instant();
    List<R> result = new ArrayList<>(1);
    try (RegisterStore store = SqliteStore.open(existing)) {
      String by = author.name(bench).orElseGet(() -> Registers.grower(store));
      return store.write(
          by,
          time,
          book -> {
            result.add(work.apply(new SharedRegister(existing, book, time)));
            if (!kept.test(result.get(0))) {
              throw new Discarded();
            }
            return result.get(0);
          });
    } catch (Discarded e) {
      return result.get(0);
    }
  }

  /** Ends a transaction of which nothing is kept. */
  private static final class Discarded extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Discarded() {
      super("nothing of this is kept");
    }
  }

  /** A register open for writing, which remembers what it was warned of. */
  public static final class Writing {
    private final Book book;
    private final LocalDate today;
    private final Function<Statement, Accepted> appending;
    private final Optional<BiConsumer<Accepted, Statement>> witness;
    private final List<String> warnings = new ArrayList<>();

    private Writing(
        Book book,
        LocalDate today,
        Function<Statement, Accepted> appending,
        Optional<BiConsumer<Accepted, Statement>> witness) {
      this.book = book;
      this.today = today;
      this.appending = appending;
      this.witness = witness;
    }

    static Writing in(Book book, LocalDate today) {
      return new Writing(book, today, book::append, Optional.empty());
    }

    /** The same, where somebody else than the book's writer writes. */
    Writing by(Optional<String> author, Instant time) {
      return author.isEmpty()
          ? this
          : new Writing(
              book,
              today,
              statement -> book.append(statement, author.orElseThrow(), time),
              witness);
    }

    /** The same as one of many, where {@code taker} is told of each entry and nobody else. */
    Writing amongMany(BiConsumer<Accepted, Statement> taker) {
      return new Writing(book, today, appending, Optional.of(taker));
    }

    /** Whether somebody is shown what is answered, and not only that it could be written. */
    public boolean isTold() {
      return witness.isEmpty();
    }

    /** The register as it stands, with what was appended so far. */
    public RegisterView view() {
      return book;
    }

    /** The one thing that {@code text} means: a code, a smudged code, the beginning of a name. */
    public Item find(String text) {
      return Finding.in(book).one(text);
    }

    /**
     * Appends an entry and remembers its warnings, what to mind with it, and that its day is still
     * to come.
     */
    public Accepted append(Statement statement) {
      Accepted accepted = appending.apply(statement);
      witness.ifPresent(taker -> taker.accept(accepted, statement));
      warnings.addAll(accepted.warnings());
      warnings.addAll(Cautions.of(book, accepted.entry(), statement));
      PartialDate date = statement.date();
      if (date != null && date.earliest().isAfter(today)) {
        warnings.add(date + " has not come yet; if that is a slip: filial undo");
      }
      return accepted;
    }

    /** Remembers a warning that is not the register's own. */
    public void note(String warning) {
      warnings.add(warning);
    }

    /** All warnings so far. */
    public List<String> warnings() {
      return List.copyOf(warnings);
    }
  }
}
