package dev.filial.core.store;

import dev.filial.core.register.Clerk;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.ForwardingView;
import dev.filial.core.register.Register;
import dev.filial.core.register.RegisterTables;
import dev.filial.core.register.RegisterView;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * A register kept in memory, for programs that embed the library and keep their records elsewhere.
 *
 * <p>One entry costs what it touches; refusing a batch part of the way costs reading the book
 * again.
 */
public final class MemoryStore extends ForwardingView implements RegisterStore {

  private RegisterTables tables;
  private boolean writing;

  private MemoryStore(RegisterTables tables) {
    this.tables = tables;
  }

  /** An empty book. */
  public static MemoryStore empty() {
    return new MemoryStore(new RegisterTables());
  }

  /**
   * A store that holds the given entries.
   *
   * @throws dev.filial.core.register.RegisterRefusal if one is not as it was sealed
   */
  public static MemoryStore of(Iterable<Entry> entries) {
    return new MemoryStore(read(entries));
  }

  private static RegisterTables read(Iterable<Entry> entries) {
    RegisterTables tables = new RegisterTables();
    for (Entry entry : entries) {
      tables.apply(Clerk.of(tables).reread(entry));
    }
    return tables;
  }

  /** The register as it stands; what is written later does not show in it. */
  public Register snapshot() {
    return Register.of(tables);
  }

  @Override
  protected RegisterView view() {
    return tables;
  }

  @Override
  public <R> R read(Function<RegisterView, R> work) {
    return work.apply(this);
  }

  @Override
  public <R> R write(String by, Instant time, Function<Book, R> work) {
    if (writing) {
      throw new IllegalStateException("this store is being written; append to its book");
    }
    long before = tables.size();
    boolean done = false;
    writing = true;
    try (Writing book = new Writing(by, time)) {
      R result = work.apply(book);
      done = true;
      return result;
    } finally {
      writing = false;
      if (!done) {
        forgetAfter(before);
      }
    }
  }

  private void forgetAfter(long entry) {
    if (tables.size() > entry) {
      tables = read(entries().subList(0, Math.toIntExact(entry)));
    }
  }

  private List<Entry> entries() {
    List<Entry> entries = new ArrayList<>();
    for (long number = 1; number <= tables.size(); number++) {
      entries.add(tables.entry(number).orElseThrow());
    }
    return entries;
  }

  private final class Writing extends WritingBook {
    Writing(String by, Instant time) {
      super(by, time);
    }

    @Override
    protected RegisterView view() {
      return tables;
    }

    @Override
    void apply(Delta delta) {
      tables.apply(delta);
    }

    @Override
    public void attempt(Runnable work) {
      long before = tables.size();
      boolean done = false;
      try {
        work.run();
        done = true;
      } finally {
        if (!done) {
          forgetAfter(before);
        }
      }
    }
  }

  @Override
  public Verification verify() {
    List<Entry> entries = entries();
    return new Verification(entries.size(), Differences.between(read(entries), tables));
  }

  @Override
  public void close() {}
}
