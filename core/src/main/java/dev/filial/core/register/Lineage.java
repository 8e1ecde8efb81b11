package dev.filial.core.register;

import dev.filial.core.name.Code;
import java.util.ArrayList;
import java.util.List;

/** One step towards the ancestors of a coded thing. */
public final class Lineage {

  private Lineage() {}

  /** The codes that {@code item} directly comes of, or is read as. */
  public static List<Code> next(Item item) {
    List<Code> next = new ArrayList<>();
    if (item.sameAs() != null) {
      next.add(item.sameAs());
      return next;
    }
    if (!item.code().isWhole()) {
      next.add(item.code().whole());
    }
    for (Descent descent : item.descent()) {
      next.add(descent.seed());
      if (descent.pollen() != null) {
        next.add(descent.pollen());
      }
    }
    return next;
  }
}
