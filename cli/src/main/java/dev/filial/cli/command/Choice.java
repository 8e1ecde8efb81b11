package dev.filial.cli.command;

import dev.filial.cli.frame.Bench;
import dev.filial.cli.frame.OpenRegister;
import dev.filial.core.answer.Finding;
import dev.filial.core.answer.Holdings;
import dev.filial.core.register.Item;
import java.util.List;
import java.util.function.BiFunction;

/** Which lot or pot is meant by the code of a cross that has several. */
final class Choice {

  private Choice() {}

  /**
   * What was typed, or which of several was meant, where somebody can be asked. Asked before the
   * register is opened for writing, so that nobody else waits for the answer.
   */
  static String among(
      String typed,
      BiFunction<Holdings, Item, List<Item>> several,
      OpenRegister register,
      Bench bench) {
    if (!bench.asker().canAsk()) {
      return typed;
    }
    List<Item> items =
        register.read(bench, view -> several.apply(Holdings.in(view), Finding.in(view).one(typed)));
    if (items.size() < 2) {
      return typed;
    }
    return bench
        .asker()
        .ask("Which one: " + Holdings.list(items) + "?", items.get(0).code().text())
        .map(answer -> StatedCode.read(items.get(0).code(), answer).text())
        .orElse(typed);
  }
}
