package dev.filial.core.spreadsheet;

import dev.filial.core.name.Code;
import dev.filial.core.name.CodeException;
import dev.filial.core.register.Item;
import dev.filial.core.register.RegisterRefusal;
import dev.filial.core.register.RegisterView;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a cell of a table means: a code, or a name spelt in full. At a bench the beginning of a name
 * will do, since the answer is seen at once; among a thousand rows nobody would see it.
 */
final class NamedThings {

  private final RegisterView view;

  NamedThings(RegisterView view) {
    this.view = view;
  }

  /**
   * The one thing meant.
   *
   * @throws RegisterRefusal if there is none, or several are called so
   */
  Item one(String text) {
    Map<Code, Item> called = new LinkedHashMap<>();
    Code code = code(text);
    if (code != null) {
      var coded = view.resolved(code);
      if (coded.isPresent()) {
        return coded.get();
      }
    }
    for (Code bearer : view.called(text)) {
      view.resolved(bearer).ifPresent(item -> called.putIfAbsent(item.code(), item));
    }
    if (called.size() == 1) {
      return called.values().iterator().next();
    }
    if (called.isEmpty()) {
      throw new RegisterRefusal(
          code != null
              ? code.text() + " is not in this register, nor in a row above; enter it first"
              : "nothing in this register or in a row above is called \""
                  + RowReading.shortened(text)
                  + "\"; enter it first, or write its code");
    }
    throw new RegisterRefusal(
        "\""
            + text
            + "\" is what "
            + String.join(", ", called.keySet().stream().map(Code::text).limit(5).toList())
            + " are called; write the code of the one that is meant");
  }

  private static @org.jspecify.annotations.Nullable Code code(String text) {
    if (text.length() < 3 || !Character.isDigit(text.charAt(0))) {
      return null;
    }
    try {
      return Code.parse(text);
    } catch (CodeException e) {
      return null; // a number of the grower's own
    }
  }

  /** The things called so, in either case. */
  List<Code> called(String name) {
    return view.called(name);
  }
}
