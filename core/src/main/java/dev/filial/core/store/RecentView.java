package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.register.Change;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;

/**
 * A register while one writes into it and nobody else does: what was read or written lately is at
 * hand and not asked for again. Most entries speak of what the entries just before them brought.
 *
 * <p>Every change has to be told to {@link #applied}; so it serves within one transaction only.
 */
final class RecentView extends ForwardingView {

  private static final int KEPT = 1024;

  /** What is spoken of more often than this is looked up: its list would be copied each time. */
  private static final int LONGEST = 64;

  private final RegisterView below;
  private final Lately<Long, Optional<Statement>> statements = new Lately<>();
  private final Lately<Code, Optional<Item>> items = new Lately<>();
  private final Lately<Subject, List<Long>> subjects = new Lately<>();
  private final Lately<Subject, List<Long>> mentions = new Lately<>();
  private Optional<Entry> last = Optional.empty();
  private long size = -1;

  RecentView(RegisterView below) {
    this.below = below;
  }

  /** The newest of what was looked up, the oldest falling out. */
  private static final class Lately<K, V> {
    private final Map<K, V> kept = new LinkedHashMap<>(KEPT * 2, 0.75f, true);

    V get(K key, Function<K, V> lookUp) {
      V value = kept.get(key);
      if (value == null) {
        value = lookUp.apply(key);
        put(key, value);
      }
      return value;
    }

    void put(K key, V value) {
      kept.put(key, value);
      if (kept.size() > KEPT) {
        kept.remove(kept.keySet().iterator().next());
      }
    }

    void forget(K key) {
      kept.remove(key);
    }
  }

  /** Takes note of what changed. */
  void applied(Delta delta) {
    for (Entry entry : delta.entries()) {
      last = Optional.of(entry);
      size = entry.number();
    }
    for (Change change : delta.changes()) {
      statements.put(change.entry(), change.after());
      change.before().ifPresent(this::forget);
      change.after().ifPresent(this::forget);
    }
    delta.items().forEach(item -> items.put(item.code(), Optional.of(item)));
  }

  private void forget(Statement statement) {
    statement.subjects().forEach(subjects::forget);
    statement.mentions().forEach(mentions::forget);
  }

  @Override
  RegisterView view() {
    return below;
  }

  @Override
  public long size() {
    if (size < 0) {
      size = below.size();
    }
    return size;
  }

  @Override
  public Optional<Entry> entry(long number) {
    return last.isPresent() && last.get().number() == number ? last : below.entry(number);
  }

  @Override
  public Optional<Statement> effective(long number) {
    return number > size() ? Optional.empty() : statements.get(number, below::effective);
  }

  @Override
  public Optional<Item> taken(Code code) {
    return items.get(code, below::taken);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return listed(subject, subjects, below::entriesOn);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return listed(subject, mentions, below::entriesMentioning);
  }

  private static List<Long> listed(
      Subject subject, Lately<Subject, List<Long>> lately, Function<Subject, List<Long>> lookUp) {
    List<Long> entries = lately.get(subject, lookUp);
    if (entries.size() > LONGEST) {
      lately.forget(subject);
    }
    return entries;
  }

  @Override
  public OptionalLong firstMention(Subject subject) {
    return below.firstMention(subject);
  }
}
