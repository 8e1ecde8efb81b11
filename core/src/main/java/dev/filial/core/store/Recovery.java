package dev.filial.core.store;

import dev.filial.core.register.Entry;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterRefusal;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A new register out of the entries of an old one: the old book again where it is whole, else what
 * is left of it.
 */
public final class Recovery {

  private Recovery() {}

  /**
   * What came of it.
   *
   * @param exact whether every entry is as it was, under its own number and digest
   * @param taken how many entries of the old book the new one has
   * @param leftOut those it does not have, and why; lost ones are not among them
   */
  public record Outcome(boolean exact, long taken, List<Reentry.LeftOut> leftOut) {
    /** Copies the list. */
    public Outcome {
      leftOut = List.copyOf(leftOut);
    }
  }

  /** Whether the entry that says whose register it was is there, as it was written. */
  public static boolean isOpened(List<Entry> entries) {
    return !entries.isEmpty()
        && entries.get(0).number() == 1
        && entries.get(0).isIntact(Entry.NO_DIGEST);
  }

  /**
   * Makes a register of {@code entries}, given in order of their numbers.
   *
   * @param opening whose register it is to be where the entry that said so is lost; null when it is
   *     not
   * @param time the time that entry carries
   * @throws RegisterRefusal if there is no entry, or that one is lost and {@code opening} is null
   * @throws StoreException if there is a file of that name already, or it cannot be written
   */
  public static Outcome into(
      Path file, List<Entry> entries, @Nullable RegisterOpened opening, Instant time) {
    if (entries.isEmpty()) {
      throw new RegisterRefusal("there is not one entry to make a register of");
    }
    if (Salvage.of(entries).isWhole()) {
      return new Outcome(true, SqliteStore.restore(file, entries), List.of());
    }
    Reentry.Outcome outcome =
        SqliteStore.create(
            file,
            entries.get(0).by(),
            time,
            book -> {
              if (!isOpened(entries) && opening != null) {
                book.append(opening, opening.grower(), time);
              }
              return Reentry.into(book, entries);
            });
    return new Outcome(false, outcome.taken(), outcome.leftOut());
  }
}
