package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Explains how a plant would come of itself. */
final class Loops {

  private Loops() {}

  /** The shortest way from {@code parents} back to {@code code}, by breadth-first search. */
  static String explain(RegisterView book, List<Code> parents, Code code) {
    Map<Code, @Nullable Code> cameFrom = new HashMap<>();
    Deque<Code> open = new ArrayDeque<>();
    for (Code parent : parents) {
      if (!cameFrom.containsKey(parent)) {
        cameFrom.put(parent, null);
        open.add(parent);
      }
    }
    while (!open.isEmpty()) {
      Code here = open.remove();
      if (here.equals(code) || (code.isWhole() && here.whole().equals(code))) {
        return told(cameFrom, here, code);
      }
      for (Code next : book.item(here).map(Lineage::next).orElse(List.of())) {
        if (!cameFrom.containsKey(next)) {
          cameFrom.put(next, here);
          open.add(next);
        }
      }
    }
    return code.text() + " comes of itself";
  }

  private static String told(Map<Code, @Nullable Code> cameFrom, Code end, Code code) {
    List<String> way = new ArrayList<>();
    for (Code here = end; here != null; here = cameFrom.get(here)) {
      way.add(here.text());
    }
    way.add(code.text());
    Collections.reverse(way);
    return String.join(" comes of ", way);
  }
}
