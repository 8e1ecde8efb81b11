package dev.filial.core.store;

import dev.filial.core.register.Entry;
import dev.filial.core.store.StoreException.Reason;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Reads the entries out of a register file that SQLite cannot or should not read: cut short,
 * overwritten in part, its first page gone.
 *
 * <p>The file itself is only copied. In the copy a journal left by a crash is played back if
 * possible; then every page is searched for rows of the entry table ({@link SqlitePages}), whatever
 * still leads to it. Of several rows of one number, as an undone write may leave behind, the one
 * counts that the entries before and after it are sealed with.
 */
public final class SqliteSalvage {

  private SqliteSalvage() {}

  /**
   * Reads what is left of {@code file}. Time in proportion to its size, memory to what is found. No
   * store of this program may have it open.
   *
   * @throws StoreException if the file is not there, or cannot be read or copied
   */
  public static Salvage read(Path file) {
    if (!Files.isRegularFile(file)) {
      throw new StoreException(Reason.MISSING, "there is no file " + file + "; name another");
    }
    try {
      Path folder = Files.createTempDirectory("filial-");
      try {
        Path copy = folder.resolve("copy");
        Files.copy(file, copy);
        Path journal = file.resolveSibling(file.getFileName() + "-journal");
        if (Files.exists(journal)) {
          Files.copy(journal, folder.resolve("copy-journal"));
          settle(copy);
        }
        return chained(SqlitePages.entries(copy));
      } finally {
        remove(folder);
      }
    } catch (IOException e) {
      throw new StoreException(
          Reason.FAILED,
          file
              + " cannot be read and copied to the folder for passing files: "
              + e.getMessage()
              + "; see its permissions, and whether there is room",
          e);
    }
  }

  private static void settle(Path copy) {
    try {
      SqliteFile.open(copy, false).close();
    } catch (StoreException e) {
      // Then what lies there is searched as it is.
      return;
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }

  /** Picks one row for each number, and says which numbers are missing or do not fit. */
  static Salvage chained(List<Entry> found) {
    NavigableMap<Long, List<Entry>> rows = new TreeMap<>();
    for (Entry entry : found) {
      List<Entry> same = rows.computeIfAbsent(entry.number(), any -> new ArrayList<>());
      if (!same.contains(entry)) {
        same.add(entry);
      }
    }
    List<Entry> entries = new ArrayList<>();
    List<Salvage.Range> lost = new ArrayList<>();
    List<Long> altered = new ArrayList<>();
    List<Long> unchecked = new ArrayList<>();
    long last = 0;
    Optional<String> previous = Optional.of(Entry.NO_DIGEST);
    for (Map.Entry<Long, List<Entry>> row : rows.entrySet()) {
      long number = row.getKey();
      if (number > last + 1) {
        lost.add(new Salvage.Range(last + 1, number - 1));
        previous = Optional.empty();
      }
      Pick pick = pick(row.getValue(), previous, rows.getOrDefault(number + 1, List.of()));
      if (previous.isEmpty()) {
        unchecked.add(number);
      } else if (!pick.intact()) {
        altered.add(number);
      }
      entries.add(pick.entry());
      last = number;
      previous = Optional.of(pick.entry().digest());
    }
    return new Salvage(entries, lost, altered, unchecked);
  }

  private record Pick(Entry entry, boolean intact) {}

  private static Pick pick(List<Entry> rows, Optional<String> previous, List<Entry> following) {
    List<Entry> intact =
        rows.stream().filter(row -> previous.isPresent() && row.isIntact(previous.get())).toList();
    for (Entry row : intact) {
      if (isSealedOnto(row, following)) {
        return new Pick(row, true);
      }
    }
    if (!intact.isEmpty()) {
      return new Pick(intact.get(0), true);
    }
    for (Entry row : rows) {
      if (previous.isPresent()) {
        // Perhaps it is its digest alone that was changed; the next entry remembers it.
        Entry sealed = Entry.seal(row.number(), row.time(), row.by(), row.body(), previous.get());
        if (isSealedOnto(sealed, following)) {
          return new Pick(sealed, true);
        }
      }
      if (isSealedOnto(row, following)) {
        return new Pick(row, false);
      }
    }
    return new Pick(rows.get(0), false);
  }

  private static boolean isSealedOnto(Entry row, List<Entry> following) {
    return following.stream().anyMatch(next -> next.isIntact(row.digest()));
  }
}
