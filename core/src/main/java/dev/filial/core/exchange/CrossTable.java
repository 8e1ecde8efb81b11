package dev.filial.core.exchange;

import dev.filial.core.exchange.Accession.Behind;
import java.util.List;

/** Crosses, a row each, under headers in a grower's words. */
public final class CrossTable implements TableForm<CrossMade> {

  private static final List<String> COLUMNS =
      List.of(
          "code",
          "name",
          "seed parent",
          "pollen parent",
          "pollination",
          "date",
          "flowers",
          "protection",
          "seeds",
          "seedlings numbered",
          "pedigree",
          "generation",
          "shares",
          "cytoplasm",
          "doubts");

  /** The form; it has no choices. */
  public CrossTable() {}

  @Override
  public List<String> columns() {
    return COLUMNS;
  }

  @Override
  public List<String> row(CrossMade cross) {
    Behind behind = cross.behind();
    return List.of(
        cross.code(),
        cross.formula(),
        Cells.several(behind.seedParents(), "; "),
        Cells.several(behind.pollenParents(), "; "),
        cross.pollination(),
        Cells.text(cross.date()),
        cross.flowers(),
        Cells.several(cross.protection(), "; "),
        cross.seeds(),
        Long.toString(cross.seedlings()),
        behind.pedigree(),
        behind.generation(),
        Cells.shares(behind.shares()),
        behind.cytoplasm(),
        Cells.several(cross.doubts(), "; "));
  }
}
