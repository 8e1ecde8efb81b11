package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A register in memory that never changes: what is true when a list of entries has been read.
 *
 * <p>Accepting an entry makes a new register and leaves this one as it is, at a cost in proportion
 * to the book; whoever keeps one for years wants a store.
 */
public final class Register implements RegisterView {

  private final RegisterTables tables;

  private Register(RegisterTables tables) {
    this.tables = tables;
  }

  /** A register as {@code tables} now stand; later changes to them do not show in it. */
  public static Register of(RegisterTables tables) {
    return new Register(new RegisterTables(tables));
  }

  /** An empty book. */
  public static Register empty() {
    return new Register(new RegisterTables());
  }

  /**
   * Reads a book from the beginning, checking every digest.
   *
   * @throws RegisterRefusal if an entry is not as it was sealed
   */
  public static Register replay(Iterable<Entry> entries) {
    RegisterTables tables = new RegisterTables();
    for (Entry entry : entries) {
      tables.apply(Clerk.of(tables).reread(entry));
    }
    return new Register(tables);
  }

  /**
   * A register and the entry it took last.
   *
   * @param register the register with the entry in it
   * @param accepted the entry and its warnings
   */
  public record Next(Register register, Accepted accepted) {}

  /**
   * The register that has accepted one more statement.
   *
   * @throws RegisterRefusal if a rule refuses it
   */
  public Next append(Statement statement, String by, Instant time) {
    Clerk.Outcome outcome = Clerk.of(this).accept(statement, by, time);
    RegisterTables next = new RegisterTables(tables);
    next.apply(outcome.delta());
    return new Next(new Register(next), outcome.accepted());
  }

  @Override
  public long size() {
    return tables.size();
  }

  @Override
  public Optional<Entry> entry(long number) {
    return tables.entry(number);
  }

  @Override
  public Optional<Statement> effective(long number) {
    return tables.effective(number);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return tables.entriesOn(subject);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return tables.entriesMentioning(subject);
  }

  @Override
  public List<String> keys(Subject.Kind kind) {
    return tables.keys(kind);
  }

  @Override
  public Optional<Item> taken(Code code) {
    return tables.taken(code);
  }

  @Override
  public Optional<Taxon> taxon(String key) {
    return tables.taxon(key);
  }

  @Override
  public Optional<TraitDeclared> trait(String key) {
    return tables.trait(key);
  }

  @Override
  public List<Code> codesUnder(Code whole) {
    return tables.codesUnder(whole);
  }

  @Override
  public Map<String, List<Code>> named(String beginning, int most) {
    return tables.named(beginning, most);
  }

  @Override
  public List<Code> codesBeginning(String text, int most) {
    return tables.codesBeginning(text, most);
  }

  @Override
  public long lastNumber(int year) {
    return tables.lastNumber(year);
  }

  @Override
  public long lastSuffix(Code whole, Item.Kind kind) {
    return tables.lastSuffix(whole, kind);
  }

  @Override
  public List<Item> items(Set<Item.Kind> kinds) {
    return tables.items(kinds);
  }

  @Override
  public List<Taxon> taxa() {
    return tables.taxa();
  }

  @Override
  public List<TraitDeclared> traits() {
    return tables.traits();
  }

  @Override
  public boolean isAllDiploid() {
    return tables.isAllDiploid();
  }
}
