package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.register.Change;
import dev.filial.core.register.Concerns;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * A register while it is written and nobody else writes: what was read or written lately is at hand
 * and not looked up again, since most entries speak of what the entries just before them brought. A
 * code beyond the highest of its year was never given out, and nothing was ever said of it.
 *
 * <p>Every change has to be told to {@link #remember}; so it serves within one transaction only.
 */
final class RecentView extends ForwardingView {

  /** What is folded again with each entry about one thing has to fit, or all of it is looked up. */
  private static final int KEPT = 4096;

  /** What is spoken of more often than this is looked up: its list would be copied each time. */
  private static final int LONGEST = 64;

  private final RegisterView below;
  private final Lately<Long, Optional<Statement>> statements = new Lately<>();
  private final Lately<Code, Optional<Item>> items = new Lately<>();
  private final Lately<Subject, List<Long>> subjects = new Lately<>();
  private final Lately<Subject, List<Long>> mentions = new Lately<>();
  private final Map<Integer, Long> lastNumbers = new HashMap<>();
  private long size = -1;
  private @Nullable Entry last;

  RecentView(RegisterView below) {
    this.below = below;
  }

  /**
   * The newest of what was looked up. When there is too much of it, what was not asked for since
   * that was last so falls out: in two heaps, which costs less than keeping all of it in order.
   */
  private static final class Lately<K, V> {
    private Map<K, V> kept = new HashMap<>();
    private Map<K, V> older = new HashMap<>();

    V get(K key, Function<K, V> lookUp) {
      V value = kept.get(key);
      if (value == null) {
        value = older.get(key);
        if (value == null) {
          value = lookUp.apply(key);
        }
        put(key, value);
      }
      return value;
    }

    void put(K key, V value) {
      if (kept.size() == KEPT) {
        Map<K, V> oldest = older;
        older = kept;
        oldest.clear();
        kept = oldest;
      }
      kept.put(key, value);
    }

    void forget(K key) {
      kept.remove(key);
      older.remove(key);
    }

    void forget() {
      kept.clear();
      older.clear();
    }
  }

  /** Takes note of what was written. */
  void remember(Delta delta) {
    for (Entry entry : delta.entries()) {
      size = entry.number();
      last = entry;
    }
    for (Change change : delta.changes()) {
      statements.put(change.entry(), change.after());
      forget(change.concernedBefore());
      forget(change.concernedAfter());
    }
    for (Item item : delta.items()) {
      Code code = item.code();
      items.put(code, Optional.of(item));
      Long known = lastNumbers.get(code.year());
      if (known != null && known < code.number()) {
        lastNumbers.put(code.year(), code.number());
      }
    }
  }

  private void forget(Concerns concerns) {
    concerns.subjects().forEach(subjects::forget);
    concerns.mentions().forEach(mentions::forget);
  }

  /** Forgets all, because some of it was taken back. */
  void forget() {
    size = -1;
    last = null;
    statements.forget();
    items.forget();
    subjects.forget();
    mentions.forget();
    lastNumbers.clear();
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
    if (number > size()) {
      return Optional.empty();
    }
    return last != null && last.number() == number ? Optional.of(last) : below.entry(number);
  }

  @Override
  public Optional<Statement> effective(long number) {
    return number > size() ? Optional.empty() : statements.get(number, below::effective);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return isBeyond(subject) ? List.of() : listed(subject, subjects, below::entriesOn);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return listed(subject, mentions, below::entriesMentioning);
  }

  @Override
  public OptionalLong firstMention(Subject subject) {
    return below.firstMention(subject);
  }

  private static List<Long> listed(
      Subject subject, Lately<Subject, List<Long>> lately, Function<Subject, List<Long>> lookUp) {
    List<Long> entries = lately.get(subject, lookUp);
    if (entries.size() > LONGEST) {
      lately.forget(subject);
    }
    return entries;
  }

  private boolean isBeyond(Subject subject) {
    return switch (subject.kind()) {
      case CODE -> isBeyondCodes(subject.key());
      case ENTRY -> Long.parseLong(subject.key()) > size();
      case TAXON, TRAIT, LOCUS, FIELD_NUMBER, PLACE, INTERVAL, CAUTION -> false;
    };
  }

  private boolean isBeyondCodes(String code) {
    try {
      return isBeyond(Code.parse(code));
    } catch (CodeException e) {
      return false;
    }
  }

  private boolean isBeyond(Code code) {
    return code.number() > lastNumber(code.year());
  }

  @Override
  public Optional<Item> taken(Code code) {
    return isBeyond(code) ? Optional.empty() : items.get(code, below::taken);
  }

  @Override
  public long lastNumber(int year) {
    Long known = lastNumbers.get(year);
    if (known == null) {
      known = below.lastNumber(year);
      lastNumbers.put(year, known);
    }
    return known;
  }
}
