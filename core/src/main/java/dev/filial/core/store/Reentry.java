package dev.filial.core.store;

import dev.filial.core.register.Amended;
import dev.filial.core.register.Doubted;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Parted;
import dev.filial.core.register.RegisterOpened;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Writes what is left of one book into another: each entry that still holds by itself, under a new
 * number, with its writer and time.
 *
 * <p>A book from which entries were lost cannot be kept as it was, since each entry is sealed onto
 * the one before. So what is left is said again, and the rules are asked again: an entry that leans
 * on a lost one is refused, and told with the reason.
 */
public final class Reentry {

  private final Book book;
  private final Map<Long, Long> numbers = new HashMap<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private long taken;

  private Reentry(Book book) {
    this.book = book;
  }

  /**
   * What came of it.
   *
   * @param taken how many entries were taken
   * @param leftOut those that were not
   */
  public record Outcome(long taken, List<LeftOut> leftOut) {
    /** Copies the list. */
    public Outcome {
      leftOut = List.copyOf(leftOut);
    }
  }

  /**
   * An entry that was not taken.
   *
   * @param entry its number in the old book
   * @param why the reason
   */
  public record LeftOut(long entry, String why) {}

  /**
   * Writes {@code entries}, given in order of their numbers, into {@code book}. Where the book is
   * not empty, their own opening entry is left out.
   *
   * @throws RegisterRefusal if the book is empty and the first of the entries does not open one
   */
  public static Outcome into(Book book, List<Entry> entries) {
    Reentry reentry = new Reentry(book);
    Optional<Entry> before = Optional.empty();
    for (Entry entry : entries) {
      reentry.take(entry, before);
      before = Optional.of(entry);
    }
    return new Outcome(reentry.taken, reentry.leftOut);
  }

  private void take(Entry entry, Optional<Entry> before) {
    Optional<String> previous =
        entry.number() == 1
            ? Optional.of(Entry.NO_DIGEST)
            : before.filter(it -> it.number() == entry.number() - 1).map(Entry::digest);
    if (previous.isPresent() && !entry.isIntact(previous.get())) {
      leaveOut(entry, "it is not as it was written; read it, and enter anew what is right");
      return;
    }
    try {
      Statement statement = entry.statement();
      if (book.size() == 0 && !(statement instanceof RegisterOpened)) {
        throw new RegisterRefusal(
            "the entry that says whose register this was is lost; say whose it is to be");
      }
      if (statement instanceof RegisterOpened && book.size() > 0) {
        numbers.put(entry.number(), 1L); // this book has one of its own
        return;
      }
      numbers.put(
          entry.number(),
          book.append(renumbered(statement), entry.by(), entry.time()).entry().number());
      taken++;
    } catch (RegisterRefusal | IllegalArgumentException e) {
      if (book.size() == 0) {
        throw e;
      }
      leaveOut(entry, String.valueOf(e.getMessage()));
    }
  }

  private void leaveOut(Entry entry, String why) {
    leftOut.add(new LeftOut(entry.number(), why));
  }

  private Statement renumbered(Statement statement) {
    if (statement instanceof Amended amended) {
      return new Amended(
          number(amended.entry()),
          amended.replacement() == null ? null : renumbered(amended.replacement()),
          amended.why());
    }
    if (statement instanceof Doubted doubted) {
      return new Doubted(number(doubted.entry()), doubted.by(), doubted.remark());
    }
    if (statement instanceof Parted parted) {
      return new Parted(
          parted.code(),
          parted.into(),
          parted.entries().stream().map(this::number).toList(),
          parted.determination(),
          parted.date(),
          parted.why());
    }
    return statement;
  }

  private long number(long old) {
    Long now = numbers.get(old);
    if (now == null) {
      throw new RegisterRefusal("entry " + old + ", which it speaks of, was not taken");
    }
    return now;
  }
}
