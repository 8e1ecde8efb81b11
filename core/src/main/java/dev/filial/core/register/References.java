package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.List;
import java.util.Optional;

/** Looks up what a statement refers to, and says what to do when it is not there. */
final class References {

  private References() {}

  /**
   * What {@code code} stands for.
   *
   * @throws RegisterRefusal if it was never given out or was struck
   */
  static Item thing(RegisterView book, Code code) {
    Optional<Item> item = book.taken(code);
    if (item.isEmpty()) {
      throw new RegisterRefusal(unknown(book, code));
    }
    if (item.get().struck()) {
      throw new RegisterRefusal(
          code.text()
              + (book.effective(item.get().entry()).isPresent()
                  ? " is not given out any more by entry "
                  : " is struck with entry ")
              + item.get().entry()
              + "; name another in its place");
    }
    return item.get();
  }

  private static String unknown(RegisterView book, Code code) {
    if (code.isSeedling() && book.item(code.whole()).isPresent()) {
      long last = book.lastSuffix(code.whole(), Item.Kind.SEEDLING);
      return code.text()
          + " was never given out: "
          + (last == 0
              ? "no seedling of " + code.whole().text() + " has a number yet"
              : "the seedlings of " + code.whole().text() + " go up to " + last);
    }
    List<Code> under =
        book.codesUnder(code.whole()).stream().filter(other -> !other.isWhole()).toList();
    return code.text()
        + " is not in this register"
        + (under.isEmpty()
            ? "; "
                + (code.isWhole() || book.item(code.whole()).isEmpty()
                    ? ""
                    : "nothing stands under " + code.whole().text() + ", so ")
                + "record it first, or look at the tag again"
            : "; under "
                + code.whole().text()
                + " stand "
                + String.join(", ", under.stream().limit(6).map(Code::text).toList()));
  }

  /**
   * The plant {@code code}.
   *
   * @throws RegisterRefusal if it is no single plant of this register
   */
  static Item plant(RegisterView book, Code code) {
    Item item = thing(book, code);
    if (!item.kind().isPlant()) {
      throw new RegisterRefusal(
          code.text()
              + " is a "
              + item.kind().word()
              + ", not a plant"
              + (item.kind().isFamily()
                  ? "; name one of its seedlings, as " + code.seedling(1).text()
                  : ""));
    }
    return item;
  }

  /**
   * A plant that can be a parent: a single one, or one out of a group.
   *
   * @throws RegisterRefusal if it is neither
   */
  static Item parent(RegisterView book, Code code) {
    Item item = thing(book, code);
    return item.kind() == Item.Kind.GROUP ? item : plant(book, code);
  }

  /**
   * The plant that {@code code} is read as.
   *
   * @throws RegisterRefusal if it, or the record it was joined with, was never given out or struck
   */
  static Item resolved(RegisterView book, Code code) {
    Item item = thing(book, code);
    while (item.sameAs() != null) {
      item = thing(book, item.sameAs());
    }
    return item;
  }

  /**
   * The locus of that name.
   *
   * @throws RegisterRefusal if nobody declared it
   */
  static LocusDeclared locus(RegisterView book, String name) {
    return locus(book, name, List.of());
  }

  /**
   * The same; if nobody declared it, some others are not proposed in its place.
   *
   * @throws RegisterRefusal if nobody declared it
   */
  static LocusDeclared locus(RegisterView book, String name, List<String> unlike) {
    return book.locus(name)
        .orElseThrow(
            () -> {
              List<String> known =
                  book.keys(Subject.Kind.LOCUS).stream()
                      .filter(other -> !unlike.contains(other))
                      .toList();
              return new RegisterRefusal(
                  "no gene is called \""
                      + name.strip()
                      + "\""
                      + (known.isEmpty()
                          ? "; declare it first"
                          : "; the genes are "
                              + String.join(", ", known)
                              + ", or declare it first"));
            });
  }

  /** Names a plant with what it is, for messages: its own name, or its taxon. */
  static String described(RegisterView book, Code code) {
    Optional<Item> item = book.item(code);
    if (item.isEmpty()) {
      return code.text();
    }
    Determination determination = item.get().determination();
    String what =
        !item.get().names().isEmpty()
            ? item.get().names().get(0)
            : determination.taxon() != null
                ? determination.taxon()
                : String.join(" × ", determination.makeup().keySet());
    return what.isEmpty() ? code.text() : code.text() + " (" + what + ")";
  }

  /** How many seeds went into a sowing or pot; empty when that was not a sowing. */
  static Optional<Count> seedsSown(RegisterView book, Code code, long entry) {
    if (book.effective(entry).orElse(null) instanceof Sown sown) {
      return sown.sowing().equals(code)
          ? Optional.of(sown.seeds())
          : sown.groups().stream()
              .filter(filled -> filled.group().equals(code))
              .map(Sown.Filled::seeds)
              .findFirst();
    }
    return Optional.empty();
  }
}
