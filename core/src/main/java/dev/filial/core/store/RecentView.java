package dev.filial.core.store;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
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
import org.jspecify.annotations.Nullable;

/**
 * A register while it is written, remembering what it was last told, so that entry after entry does
 * not have to look up what the one before it wrote: how many entries there are, the last of them,
 * and the highest number given out in each year. A code beyond that was never given out, and
 * nothing was ever said of it.
 *
 * <p>Holds for one transaction, in which nobody else writes.
 */
final class RecentView extends ForwardingView {

  private final RegisterView below;
  private final Map<Integer, Long> lastNumbers = new HashMap<>();
  private long size = -1;
  private @Nullable Entry last;

  RecentView(RegisterView below) {
    this.below = below;
  }

  /** Takes note of what was written. */
  void remember(Delta delta) {
    for (Entry entry : delta.entries()) {
      size = entry.number();
      last = entry;
    }
    for (Item item : delta.items()) {
      Code code = item.code();
      Long known = lastNumbers.get(code.year());
      if (known != null && known < code.number()) {
        lastNumbers.put(code.year(), code.number());
      }
    }
  }

  /** Forgets all, because some of it was taken back. */
  void forget() {
    size = -1;
    last = null;
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
    return number > size() ? Optional.empty() : below.effective(number);
  }

  @Override
  public List<Long> entriesOn(Subject subject) {
    return isBeyond(subject) ? List.of() : below.entriesOn(subject);
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
    return isBeyond(code) ? Optional.empty() : below.taken(code);
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
