package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Count;
import dev.filial.core.register.Item;
import dev.filial.core.register.PartialDate;
import dev.filial.core.register.Provenance;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** All that the register says of one thing. */
public final class CardQuestion {

  private final RegisterView view;

  private CardQuestion(RegisterView view) {
    this.view = view;
  }

  /** Asks {@code view}. */
  public static CardQuestion of(RegisterView view) {
    return new CardQuestion(view);
  }

  /**
   * What the register says of one thing.
   *
   * @param code its code
   * @param kind what it is, in a grower's words
   * @param what its taxon, or its parents
   * @param names its own names
   * @param readAs the code that was asked for, when that record was joined with this one; else null
   * @param fate what became of it; nothing for a cross or a packet, of which nothing becomes
   * @param since the day it came about or came here, or null
   * @param until the day it left, or null
   * @param count how many there are now, or null
   * @param place where it stands, or null
   * @param provenance where it came from, or null when it was raised here
   * @param under what else stands under its whole code
   * @param parentOf the crosses it took part in, the plants propagated from it
   * @param history what was said of it, oldest first
   */
  public record Card(
      Code code,
      String kind,
      String what,
      List<String> names,
      @Nullable Code readAs,
      String fate,
      @Nullable PartialDate since,
      @Nullable PartialDate until,
      @Nullable Count count,
      @Nullable String place,
      @Nullable Provenance provenance,
      List<Code> under,
      List<Code> parentOf,
      List<Said> history) {}

  /**
   * The card of one thing.
   *
   * @throws dev.filial.core.register.RegisterRefusal if the register has no such code
   */
  public Card ask(Code code) {
    Item item = Things.required(view, code);
    Set<Code> records = records(item);
    TreeSet<Long> entries = new TreeSet<>();
    records.forEach(record -> entries.addAll(view.entriesOn(Subject.of(record))));
    return new Card(
        item.code(),
        item.kind().word(),
        Describing.of(view, item),
        names(records),
        item.code().equals(code) ? null : code,
        Describing.fate(item),
        item.since(),
        item.until(),
        item.count(),
        item.place(),
        provenance(item),
        item.code().isWhole()
            ? view.codesUnder(item.code()).stream()
                .filter(under -> !under.isWhole() && view.item(under).isPresent())
                .sorted()
                .toList()
            : List.of(),
        Offspring.of(view, records),
        entries.stream().map(entry -> Said.of(view, entry)).toList());
  }

  /** The record and those that are read as it, over any number of joins. */
  private Set<Code> records(Item item) {
    Set<Code> records = new LinkedHashSet<>();
    Deque<Code> open = new ArrayDeque<>(List.of(item.code()));
    while (!open.isEmpty()) {
      Code record = open.remove();
      if (records.add(record)) {
        open.addAll(Offspring.joined(view, record));
      }
    }
    return records;
  }

  private List<String> names(Set<Code> records) {
    List<String> names = new ArrayList<>();
    records.forEach(record -> view.item(record).ifPresent(item -> names.addAll(item.names())));
    return names.stream().distinct().toList();
  }

  private @Nullable Provenance provenance(Item item) {
    Provenance found = Provenance.of(view.effective(item.entry()).orElse(null));
    return found.equals(Provenance.UNKNOWN) ? null : found;
  }
}
