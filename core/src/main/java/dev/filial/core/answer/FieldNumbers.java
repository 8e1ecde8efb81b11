package dev.filial.core.answer;

import dev.filial.core.register.Item;
import dev.filial.core.register.PopulationDeclared;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Subject;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;

/** The collectors' field numbers of a register, and which of them are one population. */
public final class FieldNumbers {

  /** How many are named. */
  private static final int NAMED = 12;

  private final RegisterView view;

  private FieldNumbers(RegisterView view) {
    this.view = view;
  }

  /** Those of {@code view}. */
  public static FieldNumbers in(RegisterView view) {
    return new FieldNumbers(view);
  }

  /**
   * Those under which a plant or a packet came, gone ones too; sorted. Looks at every acquisition.
   */
  public NavigableSet<String> borne() {
    NavigableSet<String> numbers = new TreeSet<>();
    for (Item item : view.items(EnumSet.of(Item.Kind.PLANT, Item.Kind.SEED))) {
      String number = item.fieldNumber();
      if (number != null && !number.isBlank()) {
        numbers.add(number.strip());
      }
    }
    return numbers;
  }

  /** The same, with those that were only declared to be of a population. */
  public NavigableSet<String> all() {
    NavigableSet<String> numbers = borne();
    numbers.addAll(view.keys(Subject.Kind.FIELD_NUMBER));
    return numbers;
  }

  /**
   * The number meant: the one spelt so, else the only one that differs from it in nothing but
   * capitals.
   */
  public Optional<String> find(String text) {
    String typed = text.strip();
    NavigableSet<String> all = all();
    if (all.contains(typed)) {
      return Optional.of(typed);
    }
    List<String> alike = all.stream().filter(typed::equalsIgnoreCase).toList();
    return alike.size() == 1 ? Optional.of(alike.get(0)) : Optional.empty();
  }

  /**
   * The same.
   *
   * @throws RegisterRefusal if there is none; the message names those there are
   */
  public String required(String text) {
    return find(text).orElseThrow(() -> unknown(text));
  }

  private RegisterRefusal unknown(String text) {
    NavigableSet<String> all = all();
    return new RegisterRefusal(
        "nothing here came under the field number \""
            + text.strip()
            + "\"; "
            + (all.isEmpty()
                ? "no plant or packet has one, and it is stated when one is entered"
                : "the numbers are " + first(all)));
  }

  private static String first(NavigableSet<String> all) {
    String named = String.join(", ", all.stream().limit(NAMED).toList());
    return all.size() > NAMED ? named + " and " + (all.size() - NAMED) + " more" : named;
  }

  /** The entries by which the numbers of a population are one, in order. */
  List<Said> declarations(NavigableSet<String> population) {
    NavigableSet<Long> entries = new TreeSet<>();
    for (String number : population) {
      for (long entry : view.entriesOn(Subject.fieldNumber(number))) {
        if (view.effective(entry).orElse(null) instanceof PopulationDeclared) {
          entries.add(entry);
        }
      }
    }
    List<Said> said = new ArrayList<>();
    entries.forEach(entry -> said.add(Said.of(view, entry)));
    return List.copyOf(said);
  }
}
