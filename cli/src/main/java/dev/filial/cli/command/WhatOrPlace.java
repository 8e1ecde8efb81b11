package dev.filial.cli.command;

import dev.filial.cli.frame.OpenRegister.Writing;
import dev.filial.cli.frame.Reading;
import dev.filial.cli.frame.Trouble;
import dev.filial.cli.frame.Words;
import dev.filial.core.answer.WhereQuestion;
import dev.filial.core.name.Code;
import dev.filial.core.register.Item;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/** With what something was done: things by their codes, or all that stands in a bag or tray. */
final class WhatOrPlace {

  private final Set<Item.Kind> kinds;
  private final Supplier<List<String>> what;
  private final Supplier<Optional<String>> place;

  /**
   * Adds the words.
   *
   * @param meaning what may be named
   * @param kinds what is meant of all that stands in a place
   */
  WhatOrPlace(Words words, String meaning, Set<Item.Kind> kinds) {
    this.kinds = kinds;
    what = words.arguments("WHAT", meaning, false, Reading.THING);
    place =
        words.option(
            "--in",
            "PLACE",
            "All of them that stand in this bag, tray or other place.",
            RecordReadings.LINE);
  }

  /**
   * The codes, each once.
   *
   * @throws Trouble if nothing was named
   */
  List<Code> codes(Writing writing) {
    if (what.get().isEmpty() && place.get().isEmpty()) {
      throw Trouble.usage(
          "WHAT is missing", "Name what it was done with, or where it stands: --in PLACE");
    }
    Set<Code> codes = new LinkedHashSet<>(Several.in(writing, what.get()));
    place.get().ifPresent(in -> codes.addAll(WhereQuestion.of(writing.view()).codesIn(in, kinds)));
    return new ArrayList<>(codes);
  }
}
