package dev.filial.core.ancestry;

import dev.filial.core.pedigree.Founder;
import dev.filial.core.pedigree.Makeup;
import dev.filial.core.pedigree.Pedigree;
import java.util.IdentityHashMap;
import java.util.Objects;

/** Fills the rows of founders, many of which are of one statement: its row is worked out once. */
interface FounderRows {

  /** Works the row of a founder out. */
  void fill(int plant, Makeup makeup);

  /** Copies the row of one founder to that of another. */
  void copy(int from, int to);

  /** Does so for the founders from {@code from} to before {@code to}. */
  static void each(Pedigree pedigree, int from, int to, FounderRows rows) {
    IdentityHashMap<Founder, Integer> done = new IdentityHashMap<>();
    for (int plant = from; plant < to; plant++) {
      Founder founder = Objects.requireNonNull(pedigree.founder(plant), "level 0 is founders");
      Integer same = done.putIfAbsent(founder, plant);
      if (same != null) {
        rows.copy(same, plant);
      } else {
        rows.fill(plant, founder.makeup());
      }
    }
  }
}
