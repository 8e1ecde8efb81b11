package dev.filial.core.answer;

import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.Optional;

/** Looks up what a question is about. */
final class Things {

  private Things() {}

  /**
   * What {@code code} stands for, read as the record it was joined with.
   *
   * @throws RegisterRefusal if the register has no such code, or its entry was struck
   */
  static Item required(RegisterView view, Code code) {
    Optional<Item> found = view.resolved(code);
    if (found.isPresent()) {
      return found.get();
    }
    Optional<Item> taken = view.taken(code);
    throw new RegisterRefusal(
        code.text()
            + (taken.isPresent()
                ? " was struck with entry " + taken.get().entry()
                : " is not in this register; record it first, or look at the tag again"));
  }
}
