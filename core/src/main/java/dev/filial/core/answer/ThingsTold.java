package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterView;
import dev.filial.core.register.Statement;
import dev.filial.core.register.Subject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The things of which a statement of one kind was made: the few that flowered of all the plants in
 * a book. Found by the kind of each entry, so the others are not looked at.
 */
final class ThingsTold {

  private ThingsTold() {}

  /** Those that are of the register, each once, in order of entry. */
  static List<Item> of(RegisterView view, Class<? extends Statement> kind) {
    Map<String, Item> told = new HashMap<>();
    for (long entry : view.entriesOf(Set.of(kind))) {
      for (Subject subject : view.effective(entry).map(Statement::subjects).orElse(Set.of())) {
        if (subject.kind() == Subject.Kind.CODE && !told.containsKey(subject.key())) {
          view.item(Code.parse(subject.key())).ifPresent(item -> told.put(subject.key(), item));
        }
      }
    }
    return told.values().stream().sorted(Item.IN_ORDER).toList();
  }
}
