package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Optional;

/** A code is given out once, and never again even when its entry was struck. */
final class FreeCodes {

  private FreeCodes() {}

  /**
   * Whether each code that entry {@code number} gives out is free, or its own.
   *
   * @param book the register before the entry or with it
   * @throws RegisterRefusal if one is taken, naming the next free one
   */
  static void require(RegisterView book, long number, Statement statement) {
    for (Code code : Introduction.codes(statement)) {
      Optional<Item> item = book.taken(code);
      if (item.isPresent() && item.get().entry() != number) {
        throw taken(book, item.get());
      }
    }
  }

  private static RegisterRefusal taken(RegisterView book, Item item) {
    return new RegisterRefusal(
        item.code().text()
            + " is taken already (entry "
            + item.entry()
            + (item.struck() ? ", struck; a code is never used again" : "")
            + "); take the next number, "
            + next(book, item).text(),
        List.of(item.entry()));
  }

  private static Code next(RegisterView book, Item item) {
    Code code = item.code();
    Code whole = code.whole();
    if (code.isWhole()) {
      return Code.of(code.year(), book.lastNumber(code.year()) + 1);
    }
    int next = (int) Math.min(Code.HIGHEST, book.lastSuffix(whole, item.kind()) + 1);
    if (code.isSeedling()) {
      return whole.seedling(next);
    }
    if (code.isGroup()) {
      return whole.group(next);
    }
    return code.isLot() ? whole.lot(next) : whole.sowing(next);
  }
}
