package dev.filial.core.store;

import dev.filial.core.register.Accepted;
import dev.filial.core.register.Clerk;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Register;
import dev.filial.core.register.RegisterTables;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
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
  RegisterView view() {
    return tables;
  }

  @Override
  public <R> R write(String by, Instant time, Function<Book, R> work) {
    long before = tables.size();
    try {
      return work.apply(new Writing(by, time));
    } catch (RuntimeException e) {
      if (tables.size() > before) {
        List<Entry> kept = new ArrayList<>();
        for (long number = 1; number <= before; number++) {
          kept.add(tables.entry(number).orElseThrow());
        }
        tables = read(kept);
      }
      throw e;
    }
  }

  private final class Writing extends ForwardingView implements Book {
    private final String by;
    private final Instant time;

    Writing(String by, Instant time) {
      this.by = by;
      this.time = time;
    }

    @Override
    RegisterView view() {
      return tables;
    }

    @Override
    public Accepted append(Statement statement) {
      Clerk.Outcome outcome = Clerk.of(tables).accept(statement, by, time);
      tables.apply(outcome.delta());
      return outcome.accepted();
    }
  }

  @Override
  public Verification verify() {
    List<Entry> entries = new ArrayList<>();
    for (long number = 1; number <= tables.size(); number++) {
      entries.add(tables.entry(number).orElseThrow());
    }
    return new Verification(entries.size(), Differences.between(read(entries), tables));
  }

  @Override
  public void close() {}
}
