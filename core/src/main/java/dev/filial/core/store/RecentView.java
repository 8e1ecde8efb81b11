package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.register.Change;
import dev.filial.core.register.Concerns;
import dev.filial.core.register.Delta;
import dev.filial.core.register.Entry;
import dev.filial.core.register.ForwardingView;
import dev.filial.core.register.Item;
import dev.filial.core.register.Ploidies;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import dev.filial.core.register.Taxon;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
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

  /** What is spoken of more often than this is looked up: its list would be copied each time. */
  private static final int LONGEST = 64;

  private final RegisterView below;
  private final Lately<Long, Optional<Statement>> statements = new Lately<>();
  private final Lately<Code, Optional<Item>> items = new Lately<>();
  private final Lately<Subject, List<Long>> subjects = new Lately<>();
  private final Lately<Subject, List<Long>> mentions = new Lately<>();
  private final Lately<String, Optional<Taxon>> taxa = new Lately<>();
  private final Lately<Subject, OptionalLong> firstMentions = new Lately<>();
  private final NewFamilies families = new NewFamilies();
  private final Map<Integer, Long> lastNumbers = new HashMap<>();
  private long size = -1;
  private @Nullable Entry last;
  private @Nullable SpokenOf spokenOf;

  /** Whether nothing here departs from two chromosome sets; null where that is not known. */
  private @Nullable Boolean allDiploid;

  RecentView(RegisterView below) {
    this.below = below;
  }

  /**
   * The change without the things that are after it what they were before, as a cross is when its
   * fruit is counted. For long writes: a short one would take longer to compare than to write.
   */
  Delta withoutUnchanged(Delta delta) {
    List<Item> changed = new ArrayList<>();
    for (Item item : delta.items()) {
      Optional<Item> known = item.entry() > size() ? null : items.known(item.code());
      if (known == null || known.isEmpty() || !known.get().equals(item)) {
        changed.add(item);
      }
    }
    return changed.size() == delta.items().size() ? delta : delta.withItems(changed);
  }

  /** Takes note of what was written. */
  void remember(Delta delta) {
    long before = delta.entries().isEmpty() ? size() : delta.entries().get(0).number() - 1;
    for (Change change : delta.changes()) {
      statements.put(change.entry(), change.after());
      if (change.entry() > before) {
        lengthen(change.entry(), change.concernedAfter());
      } else {
        forget(change.concernedBefore());
        forget(change.concernedAfter());
      }
      for (Subject subject : change.concernedAfter().subjects()) {
        if (subject.kind() == Subject.Kind.ENTRY) {
          spokenOf().add(Long.parseLong(subject.key()), before + delta.entries().size());
        }
      }
    }
    for (Entry entry : delta.entries()) {
      size = entry.number();
      last = entry;
    }
    remember(delta.items());
    for (Map.Entry<String, Optional<Taxon>> taxon : delta.taxa().entrySet()) {
      taxa.put(taxon.getKey(), taxon.getValue());
    }
    rememberSets(delta, before);
  }

  /** Keeps whether all is diploid, as long as that can be told from what changed. */
  private void rememberSets(Delta delta, long before) {
    Boolean known = allDiploid;
    if (known == null) {
      return;
    }
    if (!delta.taxa().isEmpty()) {
      allDiploid = null;
    } else {
      for (Item item : delta.items()) {
        if (known && !Ploidies.isDiploid(item)) {
          allDiploid = false;
        } else if (!known && item.entry() <= before) {
          allDiploid = null; // the one that departed may do so no more
        }
      }
    }
  }

  private void remember(Collection<Item> changed) {
    Set<Code> begun = new HashSet<>();
    for (Item item : changed) {
      if (item.code().isWhole() && isKnownToBeBeyond(item.code())) {
        families.begin(item);
        begun.add(item.code());
      }
    }
    for (Item item : changed) {
      Code code = item.code();
      items.put(code, Optional.of(item));
      if (!begun.contains(code)) {
        families.put(item);
      }
      Long known = lastNumbers.get(code.year());
      if (known != null && known < code.number()) {
        lastNumbers.put(code.year(), code.number());
      }
    }
  }

  /** Adds a new entry to the lists that are at hand, being the last in each. */
  private void lengthen(long entry, Concerns concerns) {
    for (Subject subject : concerns.subjects()) {
      List<Long> known = subjects.known(subject);
      if (known == null && subject.kind() == Subject.Kind.CODE && isNew(subject.key())) {
        known = List.of();
      }
      lengthen(subjects, subject, known, entry);
    }
    for (Subject subject : concerns.mentions()) {
      lengthen(mentions, subject, mentions.known(subject), entry);
      OptionalLong first = firstMentions.known(subject);
      if (first != null && first.isEmpty()) {
        firstMentions.put(subject, OptionalLong.of(entry));
      }
    }
  }

  private static void lengthen(
      Lately<Subject, List<Long>> lists, Subject subject, @Nullable List<Long> known, long entry) {
    if (known == null) {
      return;
    }
    if (known.size() >= LONGEST) {
      lists.forget(subject);
      return;
    }
    List<Long> longer = new ArrayList<>(known.size() + 1);
    longer.addAll(known);
    longer.add(entry);
    lists.put(subject, Collections.unmodifiableList(longer));
  }

  private void forget(Concerns concerns) {
    for (Subject subject : concerns.subjects()) {
      subjects.forget(subject);
    }
    for (Subject subject : concerns.mentions()) {
      mentions.forget(subject);
      firstMentions.forget(subject);
    }
  }

  /** Forgets all, because some of it was taken back. */
  void forget() {
    size = -1;
    last = null;
    statements.forget();
    items.forget();
    subjects.forget();
    mentions.forget();
    taxa.forget();
    firstMentions.forget();
    spokenOf = null;
    allDiploid = null;
    families.forget();
    lastNumbers.clear();
  }

  @Override
  protected RegisterView view() {
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
    return isUnheardOf(subject) ? List.of() : listed(subject, subjects, below::entriesOn);
  }

  @Override
  public List<Long> entriesMentioning(Subject subject) {
    return subject.kind() == Subject.Kind.CODE && isNew(subject.key())
        ? List.of()
        : listed(subject, mentions, below::entriesMentioning);
  }

  @Override
  public OptionalLong firstMention(Subject subject) {
    return firstMentions.get(subject, below::firstMention);
  }

  private SpokenOf spokenOf() {
    SpokenOf known = spokenOf;
    if (known == null) {
      known = new SpokenOf(size());
      spokenOf = known;
    }
    return known;
  }

  private static List<Long> listed(
      Subject subject, Lately<Subject, List<Long>> lately, Function<Subject, List<Long>> lookUp) {
    List<Long> entries = lately.get(subject, lookUp);
    if (entries.size() > LONGEST) {
      lately.forget(subject);
    }
    return entries;
  }

  /** Whether nothing was ever said of it, as far as can be told without looking it up. */
  private boolean isUnheardOf(Subject subject) {
    return switch (subject.kind()) {
      case CODE -> isNew(subject.key());
      case ENTRY -> spokenOf().isSurelyNot(Long.parseLong(subject.key()));
      case TAXON, TRAIT, LOCUS, FIELD_NUMBER, PLACE, INTERVAL, CAUTION -> false;
    };
  }

  private boolean isNew(String code) {
    try {
      return isNew(Code.parse(code));
    } catch (CodeException e) {
      return false;
    }
  }

  /** Whether a code was never given out, as far as can be said without looking it up. */
  private boolean isNew(Code code) {
    if (code.number() > lastNumber(code.year())) {
      return true;
    }
    Map<String, Item> family = code.isWhole() ? null : families.under(code);
    return family != null && !family.containsKey(code.text());
  }

  private boolean isKnownToBeBeyond(Code code) {
    Long known = lastNumbers.get(code.year());
    return known != null && known < code.number();
  }

  @Override
  public Optional<Item> taken(Code code) {
    return isNew(code) ? Optional.empty() : items.get(code, below::taken);
  }

  @Override
  public List<Code> codesUnder(Code whole) {
    if (isNew(whole)) {
      return List.of();
    }
    Map<String, Item> family = families.under(whole);
    return family == null
        ? below.codesUnder(whole)
        : family.values().stream().map(Item::code).toList();
  }

  @Override
  public long lastSuffix(Code whole, Item.Kind kind) {
    Map<String, Item> family = families.under(whole);
    return family == null
        ? below.lastSuffix(whole, kind)
        : family.values().stream()
            .filter(item -> item.kind() == kind)
            .mapToLong(item -> item.code().part().number())
            .max()
            .orElse(0);
  }

  @Override
  public boolean isAllDiploid() {
    Boolean known = allDiploid;
    if (known == null) {
      known = below.isAllDiploid();
      allDiploid = known;
    }
    return known;
  }

  @Override
  public Optional<Taxon> taxon(String key) {
    return taxa.get(key, below::taxon);
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
