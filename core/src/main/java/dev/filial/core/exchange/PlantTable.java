package dev.filial.core.exchange;

import dev.filial.core.exchange.Accession.Arrival;
import dev.filial.core.exchange.Accession.Behind;
import dev.filial.core.exchange.Accession.Named;
import java.util.List;

/** Plants, a row each, under headers in a grower's words. */
public final class PlantTable implements TableForm<Accession> {

  private static final List<String> COLUMNS =
      List.of(
          "code",
          "other codes",
          "kind",
          "own names",
          "name",
          "cultivar",
          "cf. or aff.",
          "field number",
          "donor's code",
          "donor",
          "locality",
          "since",
          "state",
          "until",
          "seed parent",
          "pollen parent",
          "same plant as",
          "pedigree",
          "generation",
          "shares",
          "cytoplasm",
          "doubts");

  /** The form; it has no choices. */
  public PlantTable() {}

  @Override
  public List<String> columns() {
    return COLUMNS;
  }

  @Override
  public List<String> row(Accession plant) {
    Named named = plant.named();
    Arrival arrival = plant.arrival();
    Behind behind = plant.behind();
    return List.of(
        plant.code(),
        Cells.several(plant.otherCodes(), "; "),
        plant.kind().word(),
        Cells.several(named.own(), "; "),
        named.formula(),
        Cells.text(named.cultivar()),
        Cells.text(named.doubt()),
        Cells.text(arrival.fieldNumber()),
        Cells.text(arrival.donorCode()),
        Cells.text(arrival.donor()),
        Cells.text(arrival.locality()),
        Cells.text(arrival.day()),
        plant.state().words(),
        Cells.text(plant.state().until()),
        Cells.several(behind.seedParents(), "; "),
        Cells.several(behind.pollenParents(), "; "),
        Cells.several(behind.sameAs(), "; "),
        behind.pedigree(),
        behind.generation(),
        Cells.shares(behind.shares()),
        behind.cytoplasm(),
        Cells.several(plant.doubts(), "; "));
  }
}
