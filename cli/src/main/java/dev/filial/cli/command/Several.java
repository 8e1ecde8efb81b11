package dev.filial.cli.command;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.core.answer.Holdings;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Several things named at once. */
final class Several {

  private Several() {}

  /** Their codes, each once however often it was named. */
  static List<Code> in(Writing writing, List<String> named) {
    return named.stream().map(text -> writing.find(text).code()).distinct().toList();
  }

  /** The same, the one seed lot standing for a cross or packet that has only one. */
  static List<Code> inOrTheirSeed(Writing writing, List<String> named) {
    return named.stream()
        .map(writing::find)
        .map(item -> item.kind().isFamily() ? Holdings.in(writing.view()).lot(item) : item)
        .map(Item::code)
        .distinct()
        .toList();
  }

  /** The code if there is but one. */
  static @Nullable Code only(List<Code> codes) {
    return codes.size() == 1 ? codes.get(0) : null;
  }
}
