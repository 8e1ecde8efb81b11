package dev.filial.cli.command;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.core.name.Code;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Several things named at once. */
final class Several {

  private Several() {}

  /** Their codes, each once however often it was named. */
  static List<Code> in(Writing writing, List<String> named) {
    return named.stream().map(text -> writing.find(text).code()).distinct().toList();
  }

  /** The code if there is but one. */
  static @Nullable Code only(List<Code> codes) {
    return codes.size() == 1 ? codes.get(0) : null;
  }
}
